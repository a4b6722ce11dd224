// Where the recipe is pasted, and its lines.
import { LONGEST_LINE, MOST_LINES } from "../../shared/protocol/read-in.ts";
import { element, say } from "../kit/element.ts";
import { type Form, messageLine, newId } from "../kit/fields.ts";
import { partedHead } from "./head.ts";

export function pasteField(form: Form) {
  const id = newId();
  const message = messageLine();
  const area = element("textarea", {
    id,
    rows: 8,
    spellcheck: "false",
    "aria-describedby": message.id,
    placeholder: "Quay rolls\n500 g flour\n1 1/4 cups milk\n2 tsp salt …",
  });
  form.places.add({ at: () => "text", control: area as unknown as HTMLInputElement, message });
  return {
    node: element(
      "div",
      { class: "field" },
      element("label", { class: "label", for: id }, "The recipe, as you found it"),
      area,
      message,
    ),
    say: (text: string) => {
      say(message, text);
      message.hidden = text === "";
      area.setAttribute("aria-invalid", String(text !== ""));
      if (text !== "") area.focus();
    },
    lines: (): { lines: string[]; trouble: string } => {
      const pasted = area.value
        .split(/\r\n?|\n|\u2028/)
        .map((line) => line.replace(/\t+/g, ", ").trim())
        .filter((line) => line !== "");
      const lines = partedHead(pasted);
      if (lines.length === 0)
        return { lines, trouble: "Paste a recipe first: one ingredient a line, with its amount." };
      if (lines.length > MOST_LINES)
        return {
          lines,
          trouble: `That is ${lines.length} lines; paste one recipe at a time, ${MOST_LINES} lines at most.`,
        };
      const long = lines.findIndex((line) => line.length > LONGEST_LINE);
      return { lines, trouble: long < 0 ? "" : `Line ${long + 1} is too long for a line of a recipe; part it.` };
    },
  };
}
