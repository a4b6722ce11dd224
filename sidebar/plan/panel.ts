import { leftOut } from "../../src/planners/not-orderable.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { watchPrices } from "../kit/price-watch.ts";
import { section } from "../new-formula/sections.ts";
import { labels } from "./labels.ts";
import { pickedLarder } from "./larder.ts";
import { nightForm, type Productions } from "./night.ts";
import { nothingTyped, orderForm } from "./orders.ts";
import { priceList } from "./price-list.ts";
import { refresh } from "./refresh.ts";
import { SHEET_ON_ITS_WAY } from "./silence.ts";

/** Orders to a production, what its shifts need, and the two logs that teach a shop its own figures. */
export const day: Panel = {
  name: "Plan",
  heading: "Plan a production",
  open: () => {
    const body = element("div", {});
    const night = element("div", {});
    const news = element("div", {});
    const typed = nothingTyped();
    let shownFor = "";
    const showNight = (sheets: Productions) => night.replaceChildren(...(sheets.length === 0 ? [] : nightForm(sheets)));
    let productions: Productions = [];
    const reading = actionButton(
      {
        question: "formulas",
        label: "Refresh",
        request: () => ({}),
        busy: () => "Reading the workbook …",
        done: ({ sheets }) => {
          void watchPrices(news);
          const ready = sheets.filter((one) => leftOut(one) === null);
          const others = [
            ...sheets.flatMap((one) => leftOut(one) ?? []),
            ...sheets.flatMap(({ newer }) => newer ?? []),
          ];
          const contents = JSON.stringify([ready, others]);
          if (contents !== shownFor)
            body.replaceChildren(...(ready.length === 0 ? [] : orderForm(ready, others, typed, built)));
          shownFor = contents;
          const none =
            "There is no formula sheet that makes pieces in this workbook yet. Build one under New formula, then refresh.";
          return ready.length === 0 ? [none, ...others].join(" ") : "";
        },
        silent: "Wait until the sheets are calculated, then refresh.",
      },
      "quiet-button",
    );
    const built = (sheet: string, days: readonly string[]) => {
      productions = [{ sheet, days }, ...productions.filter((one) => one.sheet !== sheet)];
      showNight(productions);
    };
    const older = actionButton(
      {
        question: "productions",
        label: "Find the production sheets",
        request: () => ({}),
        busy: () => "Reading the workbook …",
        done: ({ sheets }) => {
          productions = sheets;
          showNight(productions);
          return sheets.length === 0
            ? "There is no production sheet yet. Build one from orders first."
            : sheets.flatMap(({ newer }) => newer ?? []).join(" ");
        },
        silent: "Wait until the sheets are calculated, then try again.",
      },
      "quiet-button",
    );
    void reading.run();
    return element(
      "div",
      { [SHOWN_AGAIN]: () => void reading.run() },
      ...reading.nodes,
      news,
      body,
      night,
      section(
        "Productions that are there",
        element("p", { class: "hint" }, "Weigh-up, timetable and lists of orders that were entered before."),
        ...older.nodes,
        ...regularOrders(),
      ),
      logs(),
      money(),
      refresh(),
      priceList(),
      labels(),
      all(),
    );
  },
};

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;

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
    says: "Records mixing times and temperatures, and works out your mixer’s friction factor.",
  },
  {
    template: "bake-off-log",
    label: "Build a bake log",
    says: "Records what was mixed, scaled, baked and sold, and works out each product’s losses.",
  },
];

const MONEY: readonly Beside[] = [
  {
    template: "larder",
    label: "Build an ingredient sheet",
    says: "What you buy, with packs, prices, label names and allergens. Formula sheets built afterwards show cost and label.",
    or: pickedLarder,
  },
  {
    template: "finished-product",
    label: "Build a finished product",
    says: "A product of parts: a dough, a filling, toppings and packaging, with its cost, margin and label. Its formulas come first.",
  },
  {
    template: "prices",
    label: "Build a price sheet",
    says: "Every formula sheet with cost and price in one table, and what one ingredient’s price does to all.",
    parts: ["products"],
  },
  {
    template: "price-lists",
    label: "Build price lists",
    says: "Wholesale and customers’ own prices beside the shop’s, each with its tax and margin.",
  },
];

const regularOrders = (): readonly Node[] =>
  actionButton(
    {
      question: "build",
      label: "Build a sheet of regular orders",
      request: () => ({ template: "regular-orders", options: { ...UNITS, parts: [] }, values: {} }),
      busy: () => "Building the sheet …",
      done: ({ sheet, note }) =>
        `Built “${sheet}”. Enter there what customers take each weekday.${note === undefined ? "" : ` ${note}`}`,
      silent: SHEET_ON_ITS_WAY,
    },
    "quiet-button",
  ).nodes;

const logs = (): HTMLElement => sheetsBeside("Logs", "Logs use grams and °C. You fill them in.", LOGS);
const money = (): HTMLElement =>
  sheetsBeside(
    "Ingredients and prices",
    "The ingredient sheet first, then the formula sheets, then the prices.",
    MONEY,
  );

const all = (): HTMLElement =>
  section(
    "Formula list",
    element(
      "p",
      {},
      "Every formula sheet with what it makes now, in one table. With the sixth formula Gramwright builds it by itself and adds each new one. A copy made by hand comes in when it is built again.",
    ),
    ...actionButton(
      {
        question: "list",
        label: "List all formulas",
        request: () => ({}),
        busy: () => "Building the sheet …",
        done: ({ sheet, note }) => `Built “${sheet}”.${note === undefined ? "" : ` ${note}`}`,
        silent: SHEET_ON_ITS_WAY,
      },
      "quiet-button",
    ).nodes,
  );

function sheetsBeside(heading: string, hint: string, sheets: readonly Beside[]): HTMLElement {
  return section(
    heading,
    element("p", { class: "hint" }, hint),
    ...sheets.flatMap(({ template, label, says, parts = [], or = () => [] }) => [
      element("p", {}, says),
      ...actionButton(
        {
          question: "build",
          label,
          request: () => ({ template, options: { ...UNITS, parts }, values: {} }),
          busy: () => "Building the sheet …",
          done: ({ sheet, note }) => `Built “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`}`,
          silent: SHEET_ON_ITS_WAY,
        },
        "quiet-button",
      ).nodes,
      ...or(),
    ]),
  );
}
