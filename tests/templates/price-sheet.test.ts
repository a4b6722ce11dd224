// Costs and prices: a row for every product and size, live, and what another price or wage does to all of them.
import { beforeAll, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { finishedProduct } from "../../templates/finished-product.ts";
import { METRIC } from "../functions/support.ts";
import { callsOn, costed, larderOf, modelNamed, priceSheet, pricesOf, SLOW } from "../money/costing-support.ts";
import { type Built, buildSheet, workbook } from "./sheet-support.ts";

const cookie = modelNamed("cookie");

describe("a shop of a loaf, a filling and a bun that holds both", () => {
  let book: WorkbookHost;
  let [larder, loaf, prices]: Built[] = [];
  const formula = (title: string, rows: readonly [string, string, number][], more = {}) =>
    costed(
      book,
      {
        title,
        by: "dough",
        amount: 1000,
        ingredient: rows.map(([name]) => name),
        kind: rows.map(([, kind]) => kind),
        percent: rows.map(([, , grams]) => grams / 1000),
        ...more,
      },
      cookie,
    );
  /** A row of the table by product and size. */
  const row = (product: string, size = "") => {
    const at = Array.from({ length: 20 }, (_, index) => index + 1).find(
      (one) => prices?.value("product", one) === product && prices.value("piece", one) === size,
    );
    if (at === undefined) throw new Error(`no row of ${product}`);
    return (name: string) => prices?.value(name, at);
  };
  const order = () => [1, 2, 3, 4, 5].map((at) => prices?.value("product", at)).filter((name) => name !== "");
  beforeAll(async () => {
    book = await workbook();
    larder = await larderOf(book, {
      ingredient: ["Flour", "Almonds", "Sugar", "Box"],
      supplier: ["Lantern Mill", "Saltmarsh", "Saltmarsh", "Pier packing"],
      price: [1, 12, 2, 3],
      pack: ["1 kg", "1 kg", "1 kg", "100 pieces"],
    });
    // 500 g a piece: 0.50; sold at 2.00, 75 % wanted and reached.
    loaf = await formula("Loaf", [["Flour", "flour", 1000]], {
      by: "pieces",
      amount: null,
      size_name: ["large", "small"],
      size_pieces: [10, 20],
      size_weight: [500, 250],
      size_price: [2, 0.8],
      margin_wanted: 0.75,
    });
    await formula(
      "Filling",
      [
        ["Almonds", "other", 500],
        ["Sugar", "sugar", 500],
      ],
      { boil_off: 0.1, left_over: 0.05 },
    );
    await buildSheet(
      {
        title: "Bun",
        pieces_made: 100,
        size_price: 1.1,
        labour_mix: 60,
        labour_rate: 20,
        tax: 0.1,
        ingredient: ["Flour", "Filling", "Box"],
        kind: ["dough", "filling", "packaging"],
        part_each: [60, 40, 1],
        part_unit: ["g", "g", "each"],
      },
      { book, model: finishedProduct, options: { ...METRIC, parts: [] } },
    );
    book.answer({ ask: "link" });
    prices = await pricesOf(book);
  }, SLOW);

  // By hand: the filling is 7.00 in 0.855 kg, so 8.187135 a kilogram. A bun: 0.06 + 0.04 × 8.187135 = 0.387485, and 20 of wages
  // over 100 pieces, and a box of 0.03: 0.617485. 1.10 with 10 % tax is 1.00.
  const BUN = 0.06 + (0.04 * 7) / 0.855 + 0.23;

  test("each has its row, the one below the wanted margin first; formulas without pieces have none", () => {
    expect(book.sheetNames()).toContain("Formula list");
    expect(callsOn(prices as Built)).toBe(1);
    // The small loaf: 1 − 0.25 ÷ 0.80 = 68.75 %, below 75 %.
    expect(order()).toEqual(["Loaf", "Loaf", "Bun"]);
    expect(prices?.value("piece", 1)).toBe("small");
    const large = row("Loaf", "large");
    expect(large("full_cost")).toBeCloseTo(0.5, 9);
    expect(large("margin")).toBeCloseTo(0.75, 9);
    expect(large("wanted")).toBeCloseTo(2, 9);
    expect(large("sold")).toBe(10);
    expect(large("contribution")).toBeCloseTo(10 * 1.5, 9);
    expect(row("Loaf", "small")("contribution")).toBeCloseTo(20 * 0.55, 9);
    expect(large("counted")).toBe("Cost of ingredients");
    const bun = row("Bun");
    expect(bun("full_cost")).toBeCloseTo(BUN, 9);
    expect(bun("margin")).toBeCloseTo(1 - BUN, 9);
    expect(bun("counted")).toBe("Total cost");
    expect(bun("contribution")).toBeCloseTo(100 * (1 - BUN + 0.2), 9);
    expect(bun("price_bar")).toHaveLength(11);
    expect(large("price_bar")).toHaveLength(20);
  });

  test("almonds at 18: through the filling into the bun, at today's price; then it is so, and costs that", () => {
    prices?.type("tried", "Almonds");
    prices?.type("tried_price", "18");
    expect(prices?.value("tried_now")).toBe(12);
    // 0.04 × (0.5 × 18 + 0.5 × 2) ÷ 0.855.
    const then = 0.06 + (0.04 * 10) / 0.855 + 0.23;
    expect(row("Bun")("new_cost")).toBeCloseTo(then, 9);
    expect(row("Bun")("new_margin")).toBeCloseTo(1 - then, 9);
    expect(row("Loaf", "large")("new_cost")).toBeCloseTo(0.5, 9);
    larder?.type("price", "18", 2);
    prices?.type("tried_price", "");
    expect(row("Bun")("full_cost")).toBeCloseTo(then, 9);
    larder?.type("price", "12", 2);
  });

  test("a supplier a tenth dearer, and wages a fifth", () => {
    prices?.type("tried", "Saltmarsh");
    prices?.type("tried_change", "10%");
    expect(row("Bun")("new_cost")).toBeCloseTo(0.06 + (0.04 * 7.7) / 0.855 + 0.23, 9);
    prices?.type("labour_change", "20%");
    expect(row("Bun")("new_cost")).toBeCloseTo(0.06 + (0.04 * 7.7) / 0.855 + 0.27, 9);
    prices?.type("tried", "");
    expect(row("Bun")("new_cost")).toBeCloseTo(BUN + 0.04, 9);
    prices?.type("labour_change", "");
    prices?.type("tried_change", "");
    expect(row("Bun")("new_cost")).toBe("");
  });

  test("a price that cannot be tried is said to be none, and nothing is worked out with it", () => {
    const tried = (what: string, price: string, change: string) => {
      for (const [name, entry] of [
        ["tried", what],
        ["tried_price", price],
        ["tried_change", change],
      ] as const)
        prices?.type(name, entry);
      return [prices?.value("check"), row("Bun")("new_cost")];
    };
    const NO_PRICE = "A new price needs an ingredient with a price now: enter its name as it stands in Ingredients. ";
    // A supplier has no pack, "Almond" is not the name there, and a sign is no pattern.
    for (const name of ["Saltmarsh", "Almond", "Alm*"])
      expect(tried(name, "18", ""), name).toEqual([expect.stringContaining(NO_PRICE), ""]);
    expect(tried("", "18", "")).toEqual(["Enter an ingredient or a supplier. ", ""]);
    expect(tried(" almonds", "18", "10%")[0]).toBe("Enter a new price or a change, not both. ");
    expect(tried(" almonds", "18", "")).toEqual(["", expect.closeTo(0.06 + (0.04 * 10) / 0.855 + 0.23, 9)]);
    // A box is counted, at 0.03: half of that more, also where whoever sells it is tried.
    for (const name of ["Box", "Pier packing"])
      expect(tried(name, "", "50%"), name).toEqual(["", expect.closeTo(BUN + 0.015, 8)]);
    expect(row("Loaf", "large")("new_cost")).toBeCloseTo(0.5, 9);
    expect(tried("", "", "")).toEqual(["", ""]);
  });

  test("what falls below the wanted margin only then moves up", () => {
    prices?.type("tried", "Flour");
    prices?.type("tried_change", "50%");
    // Both loaves are below 75 % then: 0.75 of 2.00, 0.375 of 0.80.
    expect(prices?.value("piece", 1)).toBe("large");
    expect(prices?.value("new_margin", 1)).toBeCloseTo(1 - 0.75 / 2, 9);
    prices?.type("tried", "");
    prices?.type("tried_change", "");
  });

  test("a formula built later, and a size typed later, come in by themselves", async () => {
    await formula("Late loaf", [["Flour", "flour", 1000]], {
      by: "pieces",
      amount: null,
      size_name: ["one"],
      size_pieces: [5],
      size_weight: [1000],
      size_price: [4],
    });
    expect(row("Late loaf", "one")("full_cost")).toBeCloseTo(1, 9);
    for (const [name, entry] of [
      ["size_name", "mini"],
      ["size_pieces", "40"],
      ["size_weight", "100"],
      ["size_loss", "0%"],
    ] as const)
      loaf?.type(name, entry, 3);
    expect(row("Loaf", "mini")("full_cost")).toBeCloseTo(0.1, 9);
    expect(callsOn(prices as Built)).toBe(1);
  });

  test("a formula of seven sizes has a row for each", async () => {
    await formula("Seven", [["Flour", "flour", 1000]], {
      by: "pieces",
      amount: null,
      size_name: ["1", "2", "3", "4", "5", "6", "seventh"],
      size_pieces: [1, 1, 1, 1, 1, 1, 1],
      size_weight: [100, 200, 300, 400, 500, 600, 700],
      size_price: [1, 1, 1, 1, 1, 1, 1],
    });
    expect(prices?.value("check")).toBe("More sizes than there is room for: build this sheet again. ");
    prices = await pricesOf(book);
    expect(prices?.value("check")).toBe("");
    [1, 2, 3, 4, 5, 6].forEach((size) => {
      expect(row("Seven", String(size))("full_cost")).toBeCloseTo(size / 10, 9);
    });
    expect(row("Seven", "seventh")("margin")).toBeCloseTo(1 - 0.7, 9);
  });

  test("what was sold comes from the bake log where it counts a product, and the contribution with it", async () => {
    await buildSheet(
      {
        title: "Bake log",
        off_product: ["LOAF ", "Loaf", "Loaf", "Bun"],
        off_made: [20, 20, 10, 10],
        off_sold: [18, 14, null, null],
      },
      { book, model: modelNamed("bake-off-log"), options: { ...METRIC, parts: [] } },
    );
    prices = await pricesOf(book);
    // 32 of 40 were sold: of 10 large ones 8, whose ingredients are paid for 10.
    expect([row("Loaf", "large")("sold"), row("Loaf", "large")("sold_by")]).toEqual([8, "bake log"]);
    expect(row("Loaf", "large")("contribution")).toBeCloseTo(8 * 2 - 10 * 0.5, 9);
    expect(row("Loaf", "small")("sold")).toBe(16);
    expect([row("Bun")("sold"), row("Bun")("sold_by")]).toEqual([100, "formula sheet"]);
    expect(row("Bun")("contribution")).toBeCloseTo(100 * (1 - BUN + 0.2), 9);
  });

  test("an ingredient that nobody sells is said to be none, and nothing is worked out with it", () => {
    prices?.type("tried", "Saffron");
    prices?.type("tried_change", "10%");
    expect(prices?.value("check")).toBe(
      "Still calculating, or enter an ingredient or a supplier that stands in Ingredients. ",
    );
    expect(row("Bun")("full_cost")).toBeCloseTo(BUN, 9);
    prices?.type("tried_change", "");
    prices?.type("tried", "");
    expect(prices?.value("check")).toBe("");
  });

  test("no cell of its page shows an error", () => {
    const shown = book.shownTexts(prices?.sheet ?? "", "A1:P60").flat();
    expect(shown.filter((text) => /^#/.test(text))).toEqual([]);
  });
});

test("its headings reach over every column of the products", () => {
  const blocks = priceSheet.bands.flat().flatMap((item) => ("lines" in item ? item.lines : []));
  const headings = blocks.map(({ cells }) => cells.filter(({ role }) => role === "heading").length).filter(Boolean);
  const table = priceSheet.bands.flat().find((item) => "table" in item && item.table === "products");
  expect(headings).toEqual([table !== undefined && "table" in table ? table.columns.length : 0]);
});

test("a workbook without ingredients says what to do", async () => {
  const empty = await buildSheet({}, { model: priceSheet, options: METRIC });
  expect(empty.book.shownTexts(empty.sheet, "A1:A8").flat().join(" ")).toMatch(
    /Build an ingredient sheet, then formula sheets/,
  );
});
