import exceljs from "exceljs";
import { describe, expect, test } from "vitest";
import { isFault } from "../../shared/base/refusal.ts";
import { readTable } from "../../shared/larder/larder.ts";
import { columnsIn } from "../../shared/price-list/columns.ts";
import { AS_NEW, type Choice, decide, LEFT_OUT } from "../../shared/price-list/decide.ts";
import { leftUnread, linesIn, type SheetRow } from "../../shared/price-list/lines.ts";
import { packText, priceIn } from "../../shared/price-list/price-cell.ts";
import { type Table, tableOf } from "../../shared/price-list/table.ts";
import { workbookTable } from "../../shared/price-list/workbook-cells.ts";
import { decodeText, fileTable } from "../../sidebar/plan/price-file.ts";
import { refusalOf } from "../adjust/support.ts";

const SHEET: readonly SheetRow[] = [
  { name: "Strong white flour", price: 21.25, pack: "25 kg", supplier: "Mill" },
  { name: "Sea salt", price: 9, pack: "10 kg", supplier: "" },
  { name: "Unsalted butter", price: 86, pack: "10 kg", supplier: "Dairy" },
  { name: "Whole egg", price: 36, pack: "15 dozen", supplier: "" },
  { name: "Rye flour", price: null, pack: "", supplier: "" },
];
const LARDER = readTable([
  ["Ingredient", "Also called"],
  ...SHEET.map(({ name }) => [name, name === "Unsalted butter" ? "Sheet butter" : ""]),
]);

const decision = (table: Table, choices: readonly (readonly [number, Choice])[] = [], supplier = "") => {
  const columns = columnsIn(table);
  return decide(linesIn(table, columns, columns.places, LARDER), new Map(choices), SHEET, LARDER, supplier);
};

describe("a table out of a text", () => {
  test.each([
    [
      "tabs, as cells are copied",
      "a\tb\n1,5\tx\n",
      [
        ["a", "b"],
        ["1,5", "x"],
      ],
    ],
    [
      "semicolons, where commas stand in numbers",
      "a;b\r\n1,5;x",
      [
        ["a", "b"],
        ["1,5", "x"],
      ],
    ],
    [
      "commas and quotation marks (RFC 4180)",
      'a,"b, ""c"""\n"1\n2",3',
      [
        ["a", 'b, "c"'],
        ["1\n2", "3"],
      ],
    ],
    [
      "a byte order mark, no-break spaces and blank rows between",
      "\ufeffa\tb\n\nc\u00a0\td\n\n",
      [["a", "b"], [""], ["c", "d"]],
    ],
    ["one column", "a\nb", [["a"], ["b"]]],
    ["nothing", "", []],
  ])("%s", (_says, text, table) => expect(tableOf(text)).toEqual(table));

  test("a file of Windows is read as such, and one of Excel's Unicode text", () => {
    expect(decodeText(new Uint8Array([0x43, 0x72, 0xe8, 0x6d, 0x65]))).toBe("Crème");
    expect(decodeText(new TextEncoder().encode("Crème"))).toBe("Crème");
    expect(decodeText(new Uint8Array([0xff, 0xfe, 0x43, 0, 0xe8, 0]))).toBe("Cè");
    expect(decodeText(new Uint8Array([0xfe, 0xff, 0, 0x43, 0, 0xe8]))).toBe("Cè");
  });

  // How an older .xls, a .pdf and a picture (.png) begin.
  test.each([
    ["an older .xls", [0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, 0, 0]],
    ["a .pdf", [..."%PDF-1.7\n"].map((sign) => sign.charCodeAt(0))],
    ["a picture", [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a, 0, 0, 0, 13]],
  ])("%s is refused, with what to save it as", (_says, bytes) => {
    expect(refusalOf(() => fileTable(new Uint8Array(bytes)))).toMatch(/^This file is neither.*as \.xlsx or \.csv/);
  });
});

describe("a table out of an .xlsx file", () => {
  test("texts, runs of looks, numbers, formulas, a tick and an error; an empty first sheet is passed over", async () => {
    const book = new exceljs.Workbook();
    book.addWorksheet("Cover");
    const sheet = book.addWorksheet("List & prices");
    sheet.addRow([]);
    sheet.addRow(["Product", "Price <net>", "Pack"]);
    sheet.addRow([{ richText: [{ text: "Sea " }, { text: "salt", font: { bold: true } }] }, 9.1, "10 kg"]);
    sheet.addRow(["“Crème” & co", { formula: "1+1", result: 2 }, true]);
    sheet.getCell("E5").value = "far";
    sheet.getCell("A6").value = { error: "#N/A" };
    const bytes = new Uint8Array(await book.xlsx.writeBuffer());
    expect(workbookTable(bytes)).toEqual([
      [],
      ["Product", "Price <net>", "Pack"],
      ["Sea salt", 9.1, "10 kg"],
      ["“Crème” & co", 2],
      ["", "", "", "", "far"],
    ]);
  });

  test("what is no workbook is refused", () => {
    expect(refusalOf(() => workbookTable(new Uint8Array([1, 2, 3])))).toMatch(/^This file is no \.xlsx workbook/);
    expect(refusalOf(() => workbookTable(new TextEncoder().encode("Product;Price")))).toMatch(/Save the price list as/);
  });
});

describe("columns", () => {
  test("are told by their headings, below a letterhead", () => {
    const { above, places, unclear } = columnsIn(
      tableOf(
        "Harbour Wholesale\t\t\nvalid from 1 December\n\nCode\tDescription\tPack size\tPrice £\tOld price\n1\tx\ty\t2\t3",
      ),
    );
    expect([above, places, unclear]).toEqual([4, { ingredient: 1, price: 3, pack: 2, supplier: null }, []]);
  });

  test.each([
    ["no headings: all are asked", "Flour\t12\nSalt\t3", ["ingredient", "price", "pack"]],
    ["two prices: which one is asked", "Item\tPrice A\tPrice B\nFlour\t1\t2", ["price"]],
    ["two packs", "Item\tPack\tSize\tPrice\nFlour\t1\t2\t3", ["pack"]],
  ])("%s", (_says, text, unclear) => expect(columnsIn(tableOf(text)).unclear).toEqual(unclear));
});

describe("prices and packs as lists write them", () => {
  test.each([
    ["18.50", 18.5, null],
    ["€ 18,50", 18.5, null],
    ["18.50 EUR", 18.5, null],
    ["£1,250.00", 1250, null],
    ["1.250,50 €", 1250.5, null],
    ["4.20 / kg", 4.2, "1 kg"],
    ["$2.10 per lb", 2.1, "1 lb"],
    ["0.25 each", 0.25, "1 piece"],
    ["12.00 excl. VAT", 12, null],
  ])("%s", (text, price, pack) => expect(priceIn(text)).toEqual({ price, pack }));

  test.each(["", "on request", "1,250", "-3", "0"])("“%s” is asked", (text) =>
    expect(isFault(priceIn(text))).toBe(true),
  );

  test("a pack as the sheet's own formula reads it", () => {
    expect(["25KG", "10 kgs", "500 Gr.", "5lbs", "12 x 750 ml", "kg", "Each"].map(packText)).toEqual([
      "25 kg",
      "10 kg",
      "500 g",
      "5 lb",
      "12 x 750 ml",
      "1 kg",
      "1 piece",
    ]);
  });
});

describe("line by line beside the sheet", () => {
  const HEADS = "Product\tPack\tPrice";
  const listOf = (...lines: string[]) => tableOf([HEADS, ...lines].join("\n"));

  test("what is clear is taken, what stands there already is left, what nobody asked for is told apart", () => {
    const { taken, open, same, others, unnamed } = decision(
      listOf(
        "Strong white flour 25kg\t25KG\t22.10",
        "sea salts\t10 kg\t9",
        "Sheet butter\t10 kg\t90",
        "Paper napkins\t500\t12",
      ),
    );
    expect(taken.map(({ line, now, offer }) => [line.row, now?.name, offer.price, offer.pack])).toEqual([
      [2, "Strong white flour", 22.1, "25 kg"],
      [4, "Unsalted butter", 90, "10 kg"],
    ]);
    expect(taken[0]?.offer.times).toBeCloseTo(22.1 / 21.25, 12);
    expect([open, same.map(({ name }) => name), others.map(({ name }) => name)]).toEqual([
      [],
      ["sea salts"],
      ["Paper napkins"],
    ]);
    expect(unnamed).toEqual(["Whole egg", "Rye flour"]);
  });

  test("what is not read is said: a price without a name, and rows beyond those that are read", () => {
    const said = (table: Table) => {
      const columns = columnsIn(table);
      return leftUnread(table, columns, columns.places);
    };
    expect(said(listOf("Sea salt\t10 kg\t9", "Dry goods\t\t", "\t\tPrice"))).toEqual([]);
    expect(said(listOf("Sea salt\t10 kg\t9", "\t5 kg\t8"))).toEqual([
      "Row 3: a price without a name, which is left out.",
    ]);
    expect(said(listOf(...Array<string>(7).fill(" \t5 kg\t8")))).toEqual([
      "Rows 2, 3, 4, 5, 6 and 2 more: a price without a name, which is left out.",
    ]);
    expect(said(listOf(...Array<string>(3001).fill("Sea salt\t10 kg\t9")))).toEqual([
      expect.stringMatching(/^Rows below 3001 are not read, and the list has 3002\./),
    ]);
  });

  test.each([
    [
      "a name that may be one of the sheet's",
      "Salt, fine\t10 kg\t9",
      "of",
      /^Row 2, "Salt, fine" is not on your sheet\. Is it "Sea salt"\?/,
    ],
    [
      "a price of two readings",
      "Sea salt\t10 kg\t1,250",
      "price",
      /"1,250", which could be 1250 or 1\.25; enter the one you mean\./,
    ],
    ["a price on request", "Sea salt\t10 kg\ton request", "price", /is no price/],
    ["a pack that says nothing", "Sea salt\t1 case\t9.50", "pack", /its pack is "1 case"/],
    ["no pack, here and there", "Rye flour\t\t20", "pack", /its pack is not said/],
    [
      "a price that is more than half as high again",
      "Sea salt\t10 kg\t13.6",
      "sure",
      /9 for 10 kg becomes 13\.6 for 10 kg, 1\.51 times as much by weight\. Is that right\?/,
    ],
    ["one of less than half", "Sea salt\t10 kg\t4.4", "sure", /0\.49 times/],
    ["a tenth of the pack at nearly its price (9 ÷ 10 and 8.5 ÷ 1)", "Sea salt\t1 kg\t8.5", "sure", /9\.44 times/],
  ])("%s is asked", (_says, line, at, says) => {
    const { taken, open } = decision(listOf(line));
    expect([taken, open.map((one) => one.at)]).toEqual([[], [at]]);
    expect(open[0]?.says).toMatch(says);
  });

  test.each([
    ["half as high again", "Sea salt\t10 kg\t13.5"],
    ["half", "Sea salt\t10 kg\t4.5"],
    ["half the pack at half the price", "Sea salt\t5 kg\t4.5"],
    ["the first price of all", "Rye flour\t25 kg\t24.5"],
  ])("%s is taken", (_says, line) => expect(decision(listOf(line)).taken).toHaveLength(1));

  test("two lines of one ingredient are asked about, until one is left out", () => {
    const table = listOf("Sea salt\t10 kg\t9.2", "Sea Salt\t10 kg\t9.4");
    expect(decision(table).open.map(({ says }) => says)).toEqual([
      'Row 2, "Sea salt" and row 3 both mean "Sea salt". Leave one of them out.',
      'Row 3, "Sea Salt" and row 2 both mean "Sea salt". Leave one of them out.',
    ]);
    expect(decision(table, [[2, { of: LEFT_OUT }]]).taken.map(({ line }) => line.row)).toEqual([3]);
  });

  test("what was answered is taken: another name, a price and a pack put right, yes to a jump, a new ingredient", () => {
    const table = listOf(
      "Salt, fine\t10 kg\t9.5",
      "Strong white flour\t1 bag\t1,250",
      "Unsalted butter\t10 kg\t900",
      "Spelt flour\t25 kg\t40",
    );
    const { taken, open } = decision(
      table,
      [
        [2, { of: "Sea salt" }],
        [3, { price: "21.5", pack: "25 kg" }],
        [4, { isSure: true }],
        [5, { of: AS_NEW }],
      ],
      "Harbour Wholesale",
    );
    expect(open).toEqual([]);
    expect(
      taken.map(({ now, line, offer }) => [now?.name ?? `new: ${line.name}`, offer.price, offer.supplier]),
    ).toEqual([
      ["Sea salt", 9.5, "Harbour Wholesale"],
      ["Strong white flour", 21.5, "Harbour Wholesale"],
      ["Unsalted butter", 900, "Harbour Wholesale"],
      ["new: Spelt flour", 40, "Harbour Wholesale"],
    ]);
  });

  test("a price per kilogram is one, whatever it is sold in", () => {
    const table = tableOf("Product\tSold in\tPrice per kg\nSea salt\t25 kg\t0.95");
    expect(decision(table).taken[0]?.offer).toMatchObject({
      price: 0.95,
      pack: "1 kg",
      times: expect.closeTo(0.95 / 0.9, 12),
    });
  });
});
