import type { FormulaSummary } from "../shared/bench.ts";
import { isProblem } from "../shared/cell.ts";
import { acting } from "./act.ts";
import { pickedLarder } from "./day/larder.ts";
import { element } from "./element.ts";
import { type Form, goTo, newId, showTroubles, textField } from "./form.ts";
import { readQuantity } from "./make/quantity.ts";
import { section } from "./make/sections.ts";
import { type Trouble, trouble } from "./make/trouble.ts";
import { type Panel, SHOWN_AGAIN } from "./panel.ts";

/** Orders of a day to a day sheet, and the two logs that teach a shop its own figures. */
export const day: Panel = {
  name: "Day",
  heading: "Plan a day",
  open: () => {
    const body = element("div", {});
    const typed: Typed = { day: "", pieces: new Map() };
    let shownFor = "";
    const reading = acting(
      {
        question: "formulas",
        label: "Look again",
        asked: () => ({}),
        busy: () => "Reading the workbook …",
        done: ({ sheets }) => {
          const ready = sheets.filter(({ pieces, dough }) => (pieces ?? 0) > 0 && dough !== null);
          const read = JSON.stringify(ready);
          if (read !== shownFor) body.replaceChildren(...(ready.length === 0 ? [] : orderForm(ready, typed)));
          shownFor = read;
          return ready.length === 0
            ? "There is no formula sheet that makes pieces in this workbook yet. Build one under Make, then look again."
            : "";
        },
        silent: "Wait until the sheets are calculated, then look again.",
      },
      "quiet-button",
    );
    void reading.run();
    return element("div", { [SHOWN_AGAIN]: () => void reading.run() }, ...reading.nodes, body, logs(), money());
  },
};

/** What was typed, by formula sheet; it outlives another look at the workbook. */
type Typed = { day: string; readonly pieces: Map<string, string> };

function orderForm(sheets: readonly FormulaSummary[], typed: Typed): Node[] {
  const updates: (() => void)[] = [];
  let wanted = false;
  const form: Form = {
    changed: () => {
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  const id = newId();
  const date = element("input", {
    id,
    type: "date",
    input: () => {
      typed.day = date.value;
    },
  });
  date.value = typed.day;
  form.onChange(() => showTroubles(form, read(sheets, typed).troubles, wanted));
  const act = acting({
    question: "day",
    label: "Make the day sheet",
    asked: () => {
      const { orders, troubles } = read(sheets, typed);
      const [first] = troubles;
      wanted = first !== undefined;
      form.changed();
      if (first === undefined) return { day: date.value, orders };
      goTo(form, first.at);
      return null;
    },
    busy: () => "Making the day sheet …",
    done: ({ sheet, note }) =>
      `Made “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`} Type there what is in stock and what a pack holds.`,
    silent: "The sheet may still be on its way: look at the tabs under the grid before you ask again.",
  });
  const nodes = [
    section(
      "Orders",
      element("div", { class: "field inline" }, element("label", { class: "label", for: id }, "Day"), date),
      element("p", { class: "hint" }, "Pieces of each product; leave blank what is not made."),
      ...sheets.map(({ sheet }, at) =>
        textField(
          form,
          { at: () => `pieces/${at}`, label: () => sheet, numeric: true, inline: true },
          {
            get: () => typed.pieces.get(sheet) ?? "",
            set: (text) => {
              typed.pieces.set(sheet, text);
            },
          },
        ),
      ),
      ...act.nodes,
    ),
  ];
  form.changed();
  return nodes;
}

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;

function read(sheets: readonly FormulaSummary[], typed: Typed) {
  const troubles: Trouble[] = [];
  const orders = sheets.flatMap(({ sheet }, at) => {
    const pieces = readQuantity(typed.pieces.get(sheet) ?? "", "count", UNITS);
    if (isProblem(pieces)) troubles.push(trouble(`pieces/${at}`, `The number of pieces ${pieces.problem}.`));
    return pieces === null || isProblem(pieces) ? [] : [{ sheet, pieces }];
  });
  if (orders.length === 0 && troubles.length === 0)
    troubles.push(trouble("pieces/0", "Write how many pieces of at least one product you want.", true));
  return { orders, troubles };
}

type Beside = {
  readonly template: string;
  readonly label: string;
  readonly says: string;
  readonly parts?: readonly string[];
  /** Another way to the same sheet. */
  readonly or?: () => Node[];
};

const LOGS: readonly Beside[] = [
  {
    template: "mix-log",
    label: "Build a mix log",
    says: "Mixes and their temperatures: your mixer’s own friction factor.",
  },
  { template: "bake-off-log", label: "Build a bake-off log", says: "Scaled, baked, sold: each product’s own losses." },
];

const MONEY: readonly Beside[] = [
  {
    template: "larder",
    label: "Build a larder",
    says: "What you buy, with packs, prices, label names and allergens. Formula sheets built afterwards show cost and label.",
    or: pickedLarder,
  },
  {
    template: "prices",
    label: "Build a price sheet",
    says: "Every formula sheet with its cost and price in one table, and what one ingredient’s price does to all of them.",
    parts: ["products"],
  },
];

const logs = (): HTMLElement => sheetsBeside("Logs", "They are built in grams and °C, and filled in by hand.", LOGS);
const money = (): HTMLElement =>
  sheetsBeside("Larder and prices", "The larder first, then the formula sheets, then the prices.", MONEY);

function sheetsBeside(heading: string, hint: string, sheets: readonly Beside[]): HTMLElement {
  return section(
    heading,
    element("p", { class: "hint" }, hint),
    ...sheets.flatMap(({ template, label, says, parts = [], or = () => [] }) => [
      element("p", {}, says),
      ...acting(
        {
          question: "build",
          label,
          asked: () => ({ template, options: { ...UNITS, parts }, values: {} }),
          busy: () => "Building the sheet …",
          done: ({ sheet, note }) => `Built “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`}`,
          silent: "The sheet may still be on its way: look at the tabs under the grid.",
        },
        "quiet-button",
      ).nodes,
      ...or(),
    ]),
  );
}
