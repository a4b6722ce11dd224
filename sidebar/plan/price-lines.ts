// The lines of a price list as a person sees them: what is asked, what is taken, what is left.
import { ROLES, type Role } from "../../shared/price-list/columns.ts";
import { AS_NEW, type Choice, type Decision, LEFT_OUT, type Open } from "../../shared/price-list/decide.ts";
import type { Line } from "../../shared/price-list/lines.ts";
import { element } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";
import { pressButton } from "../kit/work-in-progress.ts";
import { section } from "../new-formula/sections.ts";
import { type Reading, unread } from "./price-reading.ts";
import { rememberTick, takenTable } from "./taken-prices.ts";

const ROLE_LABELS: Readonly<Record<Role, string>> = {
  ingredient: "Column with the ingredient",
  price: "Column with the price",
  pack: "Column with the pack",
  supplier: "Column with the supplier",
};
const NONE = "none";

/** Open where a column cannot be told. */
export function columnFields(reading: Reading, changed: () => void): HTMLElement {
  const { names, unclear } = reading.columns;
  const node = element(
    "details",
    unclear.length > 0 ? { open: true } : {},
    element("summary", {}, "Columns of the list"),
    ...(unclear.length > 0
      ? [element("p", { class: "fault" }, "Choose the columns: the list does not tell them by itself.")]
      : []),
    ...ROLES.map((role) => {
      const options = [
        { value: NONE, text: role === "ingredient" || role === "price" ? "choose" : "none" },
        ...names.map((text, at) => ({ value: String(at), text })),
      ];
      return choice(ROLE_LABELS[role], options, String(reading.places[role] ?? NONE), (value) => {
        reading.places = { ...reading.places, [role]: value === NONE ? null : Number(value) };
        reading.choices.clear();
        changed();
      });
    }),
  );
  return node;
}

type Option = { readonly value: string; readonly text: string };

/** A list without a form: the part around it is made anew at each change. */
function choice(label: string, options: readonly Option[], value: string, set: (value: string) => void): HTMLElement {
  const id = newId();
  const select = element(
    "select",
    { id, change: () => set(select.value) },
    ...options.map((one) => element("option", { value: one.value }, one.text)),
  );
  select.value = value;
  return element("div", { class: "field" }, element("label", { class: "label", for: id }, label), select);
}

const MAX_SHOWN = 60;

export function lineNodes(
  reading: Reading,
  { taken, open, same, others, unnamed }: Decision,
  changed: () => void,
): HTMLElement[] {
  const choose = (line: Line, more: Choice): void => {
    reading.choices.set(line.row, { ...reading.choices.get(line.row), ...more });
  };
  // A list that is gone through by keys changes with each key: only the button says that an answer is one.
  const use = (label: string): HTMLElement => pressButton(label, "quiet-button", changed);
  const counted = (many: number, one: string, several: string) => `${many} ${many === 1 ? one : several}`;
  return [
    ...(open.length === 0
      ? []
      : [
          section(
            counted(open.length, "line to answer", "lines to answer"),
            ...open.slice(0, MAX_SHOWN).map((one) => openNode(one, reading, choose)),
            ...(open.length > MAX_SHOWN ? [element("p", { class: "hint" }, "More follow as you answer these.")] : []),
            use("Use these answers"),
          ),
        ]),
    ...(taken.length === 0
      ? []
      : [
          section(
            counted(taken.length, "price to take", "prices to take"),
            takenTable(taken),
            rememberTick(reading, taken, changed),
          ),
        ]),
    element(
      "p",
      { class: "hint", role: "status" },
      [
        counted(same.length, "line is as on the sheet", "lines are as on the sheet"),
        counted(unnamed.length, "ingredient is not in the list", "ingredients are not in the list"),
      ]
        .join(", ")
        .concat("."),
    ),
    ...unread(reading).map((says) => element("p", { class: "hint" }, says)),
    ...(others.length === 0 ? [] : [othersNode(others, reading, choose, use("Use these choices"))]),
  ];
}

function openNode({ line, at, says }: Open, reading: Reading, choose: (line: Line, more: Choice) => void): HTMLElement {
  const leave = { value: LEFT_OUT, text: "Leave it out" };
  const about = element("p", {}, says);
  const group = { class: "remark", role: "group", "aria-label": says };
  if (at === "of")
    return element(
      "div",
      group,
      about,
      choice(
        `Ingredient of row ${line.row}`,
        ingredientOptions(line, reading),
        reading.choices.get(line.row)?.of ?? line.of ?? "",
        (of) => choose(line, { of }),
      ),
    );
  if (at === "sure") {
    const options = [{ value: "", text: "choose" }, { value: "yes", text: "Take it" }, leave];
    return element(
      "div",
      group,
      about,
      choice(`Row ${line.row}`, options, "", (value) =>
        choose(line, value === "yes" ? { isSure: true } : { of: value }),
      ),
    );
  }
  const id = newId();
  const input = element("input", {
    id,
    type: "text",
    autocomplete: "off",
    maxlength: 60,
    class: "words",
    change: () => choose(line, at === "price" ? { price: input.value } : { pack: input.value }),
  });
  input.value = reading.choices.get(line.row)?.[at] ?? line[at];
  const options = [{ value: "", text: "Keep it" }, leave];
  return element(
    "div",
    group,
    about,
    element("label", { class: "label", for: id }, `${at === "price" ? "Price" : "Pack"} of row ${line.row}`),
    input,
    choice("or", options, "", (of) => choose(line, { of })),
  );
}

/** What is near stands first. */
function ingredientOptions({ near }: Line, { sheet }: Reading): Option[] {
  const rest = sheet.rows.map(({ name }) => name).filter((name) => !near.includes(name));
  return [
    { value: "", text: "choose" },
    ...near.map((name) => ({ value: name, text: name })),
    { value: LEFT_OUT, text: "Leave it out" },
    { value: AS_NEW, text: "Add it as a new ingredient" },
    ...rest.map((name) => ({ value: name, text: name })),
  ];
}

function othersNode(
  others: readonly Line[],
  reading: Reading,
  choose: (line: Line, more: Choice) => void,
  use: HTMLElement,
): HTMLElement {
  return element(
    "details",
    {},
    element("summary", {}, `Not on your sheet: ${others.length}`),
    element("p", { class: "hint" }, "They are left out, unless you choose an ingredient."),
    ...others
      .slice(0, MAX_SHOWN)
      .map((line) =>
        choice(`Row ${line.row}: ${line.name}`, ingredientOptions(line, reading), "", (of) => choose(line, { of })),
      ),
    ...(others.length > MAX_SHOWN
      ? [
          element(
            "p",
            { class: "hint" },
            `The first ${MAX_SHOWN} are shown. Add an ingredient on the sheet to have its line found.`,
          ),
        ]
      : []),
    use,
  );
}
