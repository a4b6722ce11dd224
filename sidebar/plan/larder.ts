import { foundAs } from "../../shared/base/word-search.ts";
import type { StartIngredient } from "../../shared/larder/start-ingredients.ts";
import { actionButton } from "../kit/action-button.ts";
import { element, say } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import { SHEET_ON_ITS_WAY } from "./silence.ts";

/** A larder of the ingredients that are ticked, out of all that come with their figures. */
export function pickedLarder(): Node[] {
  const picker = element("div", { hidden: true });
  const opening = actionButton(
    {
      question: "ingredients",
      label: "Start with chosen ingredients",
      request: () => ({}),
      busy: () => "Reading the ingredients …",
      done: ({ ingredients }) => {
        // Pressed again, it forgets no tick.
        if (picker.hidden) picker.replaceChildren(...pick(ingredients));
        picker.hidden = false;
        return "";
      },
      silent: "Try once more, or build one of all and delete the rows that you do not need.",
    },
    "quiet-button",
  );
  return [...opening.nodes, picker];
}

function pick(ingredients: readonly StartIngredient[]): Node[] {
  const [id, hint] = [newId(), newId()];
  const ticked = new Set<string>();
  const count = element("p", { class: "hint", role: "status" });
  const missing = element("p", { class: "fault", id: newId(), hidden: true });
  const boxes = ingredients.map((ingredient) => {
    const { name } = ingredient;
    const also = element("span", { class: "hint", id: newId() });
    const box = element("input", {
      type: "checkbox",
      "aria-describedby": also.id,
      change: () => {
        if (box.checked) ticked.add(name);
        else ticked.delete(name);
        missing.hidden = true;
        tell();
      },
    });
    const line = element("div", { class: "pick" }, element("label", { class: "tick" }, box, name), also);
    return { ingredient, box, line, also };
  });
  const results = element("div", { class: "ticks", role: "group", "aria-label": "Ingredients" });
  const others = element("div", { class: "ticks", role: "group", "aria-label": "Ticked before" });
  const rest = element("div", {}, element("p", { class: "hint" }, "Ticked before:"), others);
  const search = element("input", {
    id,
    type: "search",
    autocomplete: "off",
    maxlength: 100,
    "aria-describedby": `${hint} ${missing.id}`,
    input: place,
  });
  const building = actionButton(
    {
      question: "build",
      label: "Build with the ticked ingredients",
      request: () => {
        missing.hidden = ticked.size > 0;
        say(missing, missing.hidden ? "" : "Tick at least one ingredient. Add your own on the sheet.");
        if (!missing.hidden) {
          search.focus();
          return null;
        }
        const ingredient = ingredients.flatMap(({ name }) => (ticked.has(name) ? [name] : []));
        const options = { weight: "g", temperature: "C", length: "cm", parts: [] } as const;
        return { template: "larder", options, values: { ingredient } };
      },
      busy: () => "Building the sheet …",
      done: ({ sheet, note }) => `Built “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`}`,
      silent: SHEET_ON_ITS_WAY,
    },
    "quiet-button",
  );
  place();
  return [
    element("label", { class: "label", for: id }, "Find an ingredient"),
    search,
    element(
      "p",
      { class: "hint", id: hint },
      "Any words of its name, its other names or its kind, such as rye, caster, dairy.",
    ),
    count,
    results,
    rest,
    missing,
    ...building.nodes,
  ];

  /** What fits, and below it what was ticked and does not. Only a search moves a box: it stays under the hand that ticks it. */
  function place(): void {
    const wanted = search.value.trim();
    const boxMatches = boxes.map((one) => ({ ...one, as: foundAs(one.ingredient, wanted) }));
    const fitting = boxMatches.filter(({ as }) => as !== null);
    const unticked = boxMatches.filter(({ as, ingredient }) => as === null && ticked.has(ingredient.name));
    for (const { as, also } of boxMatches) say(also, as === null || as === "" ? "" : `also ${as}`);
    results.replaceChildren(...fitting.map(({ line }) => line));
    others.replaceChildren(...unticked.map(({ line }) => line));
    results.hidden = fitting.length === 0;
    rest.hidden = unticked.length === 0;
    tell();
  }

  function tell(): void {
    const shown = results.childElementCount;
    const picked = ticked.size === 1 ? "1 ticked" : `${ticked.size} ticked`;
    say(count, `${shown === 0 ? "Nothing matches; try a shorter word" : `${shown} shown`}, ${picked}.`);
  }
}
