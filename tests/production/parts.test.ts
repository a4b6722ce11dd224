// Products put together from parts: ordering 240 filled buns plans their dough, their filling and their glaze. Worked out by hand.
import { beforeAll, expect, test } from "vitest";
import { amountsOf, takersFirst } from "../../shared/production/amounts.ts";
import type { Formula } from "../../shared/production/formula.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { bunAsked } from "../../templates/demo/bun.ts";
import { custardAsked } from "../../templates/demo/filled-bun.ts";
import { address, pageOf } from "./week-book.ts";

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
const glaze = {
  ask: "build",
  template: "cookie",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Quay glaze",
    by: "dough",
    amount: 1000,
    ingredient: ["Sugar", "Water"],
    kind: ["sugar", "water"],
    percent: [1, 1],
    boil_off: 0.1,
    left_over: 0.05,
  },
};
const filled = {
  ask: "build",
  template: "finished-product",
  options: { ...UNITS, parts: [] },
  values: {
    title: "Custard bun",
    pieces_made: 120,
    size_weight: 92,
    size_price: 1.6,
    ingredient: ["Ferry bun", "Quay custard", "Quay glaze", "Icing sugar", "Paper case"],
    kind: ["dough", "filling", "topping", "decoration", "packaging"],
    part_each: [78, 25, 6, 3, 1],
    part_unit: ["g", "g", "g", "g", "each"],
    part_waste: [0.02, 0.03, null, null, 0.05],
  },
};
const larder = {
  ask: "build",
  template: "larder",
  values: {
    ingredient: ["Whole milk", "Sugar", "Icing sugar", "Paper case"],
    price: [1.2, 11, 5, 12],
    pack: ["1 kg", "10 kg", "1 kg", "100 pieces"],
    supplier: ["Cove dairy", "Tern mill", "Tern mill", "Pier packing"],
  },
};
const DAY = "2026-12-05";

let book: WorkbookHost;
let production: string;
const sheets: Record<string, string> = {};
beforeAll(async () => {
  book = await openBook();
  for (const asked of [larder, bunAsked, custardAsked, glaze, filled]) book.answer(asked);
  const orders = [
    { sheet: "Custard bun", pieces: 200 },
    { sheet: "Custard bun", pieces: 40, customer: "Café Mole" },
    { sheet: "Ferry bun", size: "bun", pieces: 60 },
  ];
  ({ sheet: production } = book.answer({ ask: "day", day: DAY, orders }) as { sheet: string });
  for (const ask of ["purchases", "weighUp", "customers", "timetable", "cards"])
    sheets[ask] = (book.answer({ ask, sheet: production }) as { sheet: string }).sheet;
});

// Out of the sheets above: 78 ÷ 0.98 a bun; 25 ÷ 0.97 of custard, of which 8 % boil off and 3 % stay in the pan.
const CUSTARD = (240 * 25) / 0.97 / (0.92 * 0.97);
const GLAZE = (240 * 6) / (0.9 * 0.95);
const FILLED_DOUGH = (240 * 78) / 0.98;
/** What 60 buns take of the dough, as the formula sheet has its sizes and losses. */
const OWN_DOUGH = (60 * 70) / (1 - 0.1) / (1 - 0.02);

test("the dough, the filling and the glaze of 240 filled buns are planned, the dough with that of 60 plain ones", () => {
  const { shown, values } = pageOf(book, production);
  expect(shown[2]?.[0]).toBe("");
  const doughs = shown.findIndex((row) => row.includes("Mixed of it"));
  const mixed = shown[doughs]?.indexOf("Mixed, day 1") ?? -1;
  const of = (name: string) => Number(values.slice(doughs + 1).find((row) => row[0] === name)?.[mixed]);
  expect(of("Quay custard")).toBeCloseTo(CUSTARD, 6);
  expect(of("Quay glaze")).toBeCloseTo(GLAZE, 6);
  expect(of("Ferry bun")).toBeCloseTo(OWN_DOUGH + FILLED_DOUGH, 6);
  // A product of parts is not mixed.
  expect(of("Custard bun")).toBeNaN();
});

test("needs divide by what boils off, what is left over and what is wasted; what is counted is ordered by the piece", () => {
  const { values, shown } = pageOf(book, sheets.purchases ?? "");
  expect(shown[2]?.[0]).toBe("");
  const need = (name: string) => values.find(([one]) => one === name)?.[2];
  // Custard of 10 + 2.5 + 2.4 + 1 = 15.9 parts; glaze half of sugar.
  expect(need("Whole milk")).toBeCloseTo((CUSTARD * 10) / 15.9 + milkOf(), 6);
  expect(need("Icing sugar")).toBeCloseTo(720, 9);
  // 240 ÷ 0.95
  expect(need("Paper case")).toBeCloseTo(252.631579, 5);
  expect(shown.flat()).toContain("Counted (each)");
  for (const name of ["Ferry bun", "Quay custard", "Quay glaze"]) expect(need(name), name).toBeUndefined();
  // Three packs of 100 at 12 each.
  expect(values.find(([name]) => name === "Paper case")?.slice(9, 12)).toEqual([100, 3, 36]);
  const bought = values.filter(([name]) => name === "Sugar").length;
  expect(bought).toBe(1);
});

test("each supplier has its costs, and the day until which to order for its last delivery before the day", () => {
  const sheet = sheets.purchases ?? "";
  const page = () => pageOf(book, sheet);
  const head = page().shown.findIndex((row) => row[0] === "Delivers on (enter x)");
  const rowOf = (name: string) => page().shown.findIndex((row, at) => at > head && row[0] === name);
  const orderBy = (name: string) => page().shown[rowOf(name)]?.[11];
  // Ready on Saturday 5 December; nobody is known to deliver yet.
  expect(orderBy("Tern mill")).toBe("");
  const deliver = (name: string, ...days: number[]) => {
    for (const day of days) book.type(sheet, address(rowOf(name), 2 + day), "x");
  };
  // On Tuesdays and Fridays, two days after the order, which is wanted by two o'clock: Friday the 4th, so Wednesday the 2nd.
  deliver("Tern mill", 1, 4);
  book.type(sheet, address(rowOf("Tern mill"), 9), "2");
  book.type(sheet, address(rowOf("Tern mill"), 10), "14:00");
  expect(orderBy("Tern mill")).toBe("2026-12-02");
  expect(page().shown[rowOf("Tern mill")]?.[10]).toBe("14:00");
  // What comes on the Saturday itself is too late: the Saturday before.
  deliver("Cove dairy", 5);
  expect(orderBy("Cove dairy")).toBe("2026-11-28");
  deliver("Cove dairy", 0);
  expect(orderBy("Cove dairy")).toBe("2026-11-30");
  expect(orderBy("Pier packing")).toBe("");
  // Costs: whole packs of what each brings.
  const { values } = page();
  for (const [name, brings] of [
    ["Cove dairy", ["Whole milk"]],
    ["Tern mill", ["Sugar", "Icing sugar"]],
    ["Pier packing", ["Paper case"]],
  ] as const) {
    const cost = brings.reduce((sum, one) => sum + Number(values.find(([cell]) => cell === one)?.[11]), 0);
    expect(cost, name).toBeGreaterThan(0);
    expect(values[rowOf(name)]?.[1], name).toBeCloseTo(cost, 9);
  }
  // Ordered for a later day, or the production moved to one: the Friday before Monday the 7th, the Tuesday before Friday the 11th.
  book.type(sheet, "E5", "2026-12-07");
  expect(orderBy("Tern mill")).toBe("2026-12-02");
  expect(orderBy("Cove dairy")).toBe("2026-12-05");
  book.type(sheet, "E5", "");
  const day = pageOf(book, production).shown.findIndex((row) => row[0] === "Ready on");
  book.type(production, address(day, 3), "2026-12-11");
  expect(orderBy("Tern mill")).toBe("2026-12-06");
  book.type(production, address(day, 3), DAY);
});

/** Milk that the bun's own dough takes. */
function milkOf(): number {
  const { ingredient, percent } = (bunAsked as unknown as { values: { ingredient: string[]; percent: number[] } })
    .values;
  const all = percent.reduce((sum, one) => sum + one, 0);
  const at = ingredient.indexOf("Whole milk");
  return at < 0 ? 0 : ((OWN_DOUGH + FILLED_DOUGH) * (percent[at] ?? 0)) / all;
}

test("each of them is weighed, timed and has a card; the delivery note leads to the lots of its parts", () => {
  const weigh = pageOf(book, sheets.weighUp ?? "");
  const titles = weigh.shown.flatMap((row) => (/^\d+\. /.test(row[0] ?? "") ? [row[0]?.replace(/^\d+\. /, "")] : []));
  expect(titles.sort()).toEqual(["Ferry bun", "Quay custard", "Quay glaze"]);
  expect(weigh.shown.flat().join(" ")).toMatch(/ready Sat 5 Dec, also for Custard bun · FB-261205/);
  // Half of it is sugar, 842.1 g, on steps of 5 g.
  const sugar = weigh.values.findIndex((row) => /Quay glaze/.test(String(row[0])));
  expect(weigh.values[sugar + 3]?.[2]).toBe(840);
  expect(pageOf(book, sheets.timetable ?? "").shown.some((row) => row[2] === "Ferry bun")).toBe(true);
  const card = pageOf(book, "FB-261205 Ferry bun");
  const figure = (name: string) => card.values.find((row) => row[0] === name)?.[2];
  expect(figure("Pieces")).toBe(300);
  expect(figure("Pieces: Custard bun")).toBe(240);
  expect(figure("Scaling weight, Custard bun (g)")).toBe(78);
  const notes = pageOf(book, sheets.customers ?? "").shown.filter((row) => row[0] === "Custard bun");
  expect(notes.map((row) => [row[2], row[3]])).toEqual([
    ["40", "CB-261205, FB-261205, QC-261205, QG-261205"],
    ["200", "CB-261205, FB-261205, QC-261205, QG-261205"],
  ]);
});

test("money has the decimals of the bakery's currency: three packs at 12 cost 36.00, and 36 in yen; 1.60 a bun is 2", () => {
  const cost = (sheet: string) => pageOf(book, sheet).shown.find(([name]) => name === "Paper case")?.[11];
  const notes = (sheet: string) =>
    pageOf(book, sheet)
      .shown.find(([name]) => name === "Custard bun")
      ?.slice(4, 7);
  expect(cost(sheets.purchases ?? "")).toBe("36.00");
  expect(notes(sheets.customers ?? "")).toEqual(["1.60", "excl.", "64.00"]);
  book.answer({
    ask: "build",
    template: "settings",
    values: { setting: ["Decimals of prices"], setting_value: ["0"] },
  });
  const [toOrder = "", delivery = ""] = ["purchases", "customers"].map(
    (ask) => (book.answer({ ask, sheet: production }) as { sheet: string }).sheet,
  );
  expect(cost(toOrder)).toBe("36");
  expect(notes(delivery)).toEqual(["2", "excl.", "64"]);
  // A finished product that is built now says its cost so, and its result line too.
  const { sheet } = book.answer({ ...filled, values: { ...filled.values, title: "Yen bun" } }) as { sheet: string };
  const [, [result = ""] = []] = pageOf(book, sheet).shown;
  expect(result).toMatch(/^120 pieces · \d\.\d\d? each/);
});

const formula = (name: string, more: Partial<Formula> = {}): Formula => ({
  name,
  rows: [],
  sizes: [],
  handlingLoss: 0,
  mixerLimit: null,
  scales: [1],
  ready: 0.5,
  steps: [],
  mixStep: "Mix",
  ovenStep: "",
  holds: null,
  ovenTakes: null,
  reload: 0,
  preferment: null,
  levains: [],
  ...more,
});

test("a part of a part follows to any depth, whatever the order of the sheets", () => {
  const soaker = formula("Soaker", { uses: [{ dough: "Dough", part: 0.1 }] });
  const dough = formula("Dough", {
    sizes: [{ size: "", scaling: 100 }],
    handlingLoss: 0.2,
    uses: [{ product: "Filled", size: "", perPiece: 50 }],
  });
  const amounts = amountsOf([soaker, dough], ({ product }) => (product === "Dough" ? [8] : [4]), 1);
  // 8 × 100 ÷ 0.8 + 4 × 50, and a tenth of that.
  expect(amounts.get("Dough")?.[0]).toMatchObject({ all: 1200, taken: [{ by: "Filled", pieces: 4, weight: 200 }] });
  expect(amounts.get("Soaker")?.[0]?.all).toBeCloseTo(120, 12);
  expect(takersFirst([soaker, dough]).map(({ name }) => name)).toEqual(["Dough", "Soaker"]);
});
