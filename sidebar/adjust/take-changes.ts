import type { TakeChangesAnswer } from "../../shared/protocol/adjust.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type Form, textField } from "../kit/fields.ts";
import { section } from "../new-formula/sections.ts";
import type { Work } from "./work.ts";

const SILENT = "Look at the sheet and at Formula history before you press it again.";

/** Takes what was added: into the sheet as a new version, or into a new formula sheet. */
export function takeSection(work: Work, form: Form, done: (says: string) => void): HTMLElement {
  let title = "";
  const { sheet, id, seen } = work.data;
  const same = { sheet, id, seen };
  const taken = ({ sheet: name, number, wasEdited }: TakeChangesAnswer): string =>
    `“${name}” is version ${number} now.${wasEdited ? " What stood there before is in the history, too." : ""}`;
  const version = actionButton({
    question: "takeChanges",
    label: "Take as a new version",
    request: () => ({ ...same, wishes: work.added, title: null }),
    busy: () => "Writing the version …",
    done: (answer) => {
      const says = taken(answer);
      done(says);
      return says;
    },
    silent: SILENT,
  });
  const sheetNew = actionButton(
    {
      question: "takeChanges",
      label: "Build a new sheet",
      request: () => ({
        ...same,
        wishes: work.added,
        title: title.trim() === "" ? `${work.data.title}, changed` : title,
      }),
      busy: () => "Building the sheet …",
      done: ({ sheet: name }) => {
        const says = `Built “${name}” with these changes. “${sheet}” stays as it was.`;
        done(says);
        return says;
      },
      silent: SILENT,
    },
    "quiet-button",
  );
  const field = textField(
    form,
    { at: () => "title", label: () => "Name of the new sheet", hint: `If blank: ${work.data.title}, changed` },
    {
      get: () => title,
      set: (text) => {
        title = text;
      },
    },
  );
  const node = section(
    "Take it",
    element(
      "p",
      { class: "hint" },
      "Each version is kept in the sheet Formula history, with the day and what changed.",
    ),
    ...version.nodes,
    field,
    ...sheetNew.nodes,
  );
  form.onChange(() => {
    node.hidden = work.added.length === 0;
  });
  return node;
}
