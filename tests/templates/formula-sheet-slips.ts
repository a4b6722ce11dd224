// What people do to a formula sheet by mistake: contents of cells, and changes to rows and columns.
import { columnLetters, columnNumber } from "../../shared/sheet/a1.ts";
import type { FormulaCell } from "../../src/workbook/engine/engine.ts";
import type { Sheet } from "../../src/workbook/scripted.ts";
import { type Tried, TYPED_COLUMNS, TYPED_SINGLES } from "./formula-sheet-page.ts";

/** Typed or pasted where a number belongs. A leading apostrophe makes a text of it. */
export const NUMBERS: readonly string[] = [
  ..."'600 '65% '0.65 '1,5 '12.5 -1 -65% 0 0% 1 2 7 1e12 1e-9 99999999 '-5 TRUE FALSE =1/0 =NA() x ? - 2026-11-30".split(
    " ",
  ),
  ...'06:30 600g \'600g 600kg 5lb ½ \'１２ \'١٢ 1/2 3-4 20-30 ~5 >5 =TRUE() ="" ="600" 0.001 0.5 1.5 150 5000'.split(
    " ",
  ),
  ...[
    "600 g",
    "'600 ",
    "' 600",
    "'6 00",
    "'600\u00a0",
    "'\u2009600",
    "'6\u202f000",
    "'600\u200b",
    "' ",
    "'\u00a0",
    "'\u200b",
  ],
  ...["a cup", "12 x 750 ml", "about 5", "1 1/2", "", "30 °C", "1:100"],
];
/** Typed or pasted where a name belongs. */
export const NAMES: readonly string[] = [
  ...[
    "'>5 grain",
    "Hand*",
    "'=Rye",
    "a~b",
    "a~~b",
    "?",
    "*",
    "<>",
    "'=",
    "'<1",
    "fl*",
    "Water",
    "water ",
    " Water",
    "Wa\u00a0ter",
  ],
  ...[
    "Water\u200b",
    "\u2009Water",
    "Bake",
    " Bake",
    "Bake ",
    "BAKE",
    "Bake\u00a0",
    "Mix ",
    "=1/0",
    "5",
    "TRUE",
    "",
    "'",
    "' ",
    "'\u00a0",
  ],
  ...[
    "flour",
    "flours",
    "FLOUR",
    " flour",
    "flour ",
    "fl our",
    "flour\u00a0",
    "\u202fflour",
    "\u200bflour",
    "flower",
    "flour 50%",
  ],
  ...[
    "levain 100%",
    "Levain (100 %)",
    "levain, 100% hydration",
    "100% levain",
    "levain",
    "levain 62.5%",
    "levain 12,5%",
    "66.7% levain",
    "levain, 66,7 %",
    "levain 66.67%",
    "levain,5%",
    "levain 0.5%",
    "100%, levain",
    "levain -50%",
  ],
  ...[
    "levain 0%",
    "levain 1000%",
    "levain\u00a0100\u00a0%",
    "LEVAIN\u2009100%",
    "levain100%",
    "biga 5%",
    "sour 1e2%",
    "water 60%",
  ],
  ...[
    "ice",
    "salt",
    "yeasts",
    "error",
    "pieces",
    "Pieces",
    " pieces",
    "dough",
    "DOUGH ",
    "tins",
    "flour,",
    "box",
    "round",
    "cube",
  ],
  ...[
    "'100%",
    "[flour]",
    "flour;",
    "Strong white flour",
    "strong white flour ",
    "Sea salt",
    "'-",
    "'+1",
    "'@x",
    "\u00adflour",
    "\ufeffflour",
  ],
];

export type Random = (below: number) => number;
/** A row of numbers that a seed decides (mulberry32). */
export function randomFrom(seed: number): Random {
  let state = seed >>> 0;
  return (below) => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), state | 1);
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61);
    return (((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32) * below;
  };
}
export const oneOf = <T>(some: readonly T[], random: Random): T => some[Math.floor(random(some.length))] as T;

/** An edit in words, how it is done, and the cell that it changes where it is one alone. */
export type Slip = { readonly says: string; readonly act: (tried: Tried) => void; readonly at?: string };

/** Puts a text into a cell as a paste does, past every validation. */
export function put({ book, sheet }: Tried, a1: string, text: string): void {
  book.paste(sheet.sheet, a1, text);
}

/** Cells that a person types into: the single ones, and those of tables' columns from their hidden rows to their ends. */
export function typedCells({ sheet }: Tried): { readonly name: string; readonly at: string }[] {
  const names = new Set(sheet.names());
  const singles = [...TYPED_SINGLES, "mixing", "yeast", "tin_kind", "pre_kind"].filter((name) => names.has(name));
  const columns = [...TYPED_COLUMNS, "step_temp"].filter((name) => names.has(name));
  return [
    ...singles.map((name) => ({ name, at: sheet.at(name) })),
    ...columns.flatMap((name) =>
      Array.from({ length: sheet.rows(name) }, (_, row) => ({ name: `${name}/${row}`, at: sheet.at(name, row) })),
    ),
  ];
}

/** Every other cell that holds or shows something: formulas, what they fill, labels and helpers. */
export function otherCells(tried: Tried): string[] {
  const { book, sheet } = tried;
  const typed = new Set(typedCells(tried).map(({ at }) => at));
  const values = book.values(sheet.sheet, book.usedRange(sheet.sheet));
  const formulas = book.formulas(sheet.sheet, book.usedRange(sheet.sheet));
  return values.flatMap((line, row) =>
    line.flatMap((value, column) => {
      const at = `${columnLetters(column)}${row + 1}`;
      return (value !== "" || formulas[row]?.[column] !== undefined) && !typed.has(at) ? [at] : [];
    }),
  );
}

/** A hostile content in a cell that is typed. */
export function contentSlip(tried: Tried, random: Random): Slip & { readonly at: string } {
  const { name, at } = oneOf(typedCells(tried), random);
  const text = oneOf(random(2) < 1 ? NUMBERS : NAMES, random);
  return { says: `${name} (${at}) ${JSON.stringify(text)}`, act: (one) => put(one, at, text), at };
}

/** Something typed over a cell that shows, or the cell emptied. */
export function overSlip(cells: readonly string[], random: Random): Slip & { readonly at: string } {
  const at = oneOf(cells, random);
  const text = oneOf(["7", "0", "x", "600", ""], random);
  return {
    says: `over ${at} ${JSON.stringify(text)}`,
    act: (one) => (text === "" ? empty(one, at) : put(one, at, text)),
    at,
  };
}

function placeOf(at: string): { readonly col: number; readonly row: number } {
  const [, letters = "A", digits = "1"] = /^([A-Z]+)(\d+)$/.exec(at) ?? [];
  return { col: columnNumber(letters), row: Number(digits) - 1 };
}

function empty({ book, sheet }: Tried, at: string): void {
  const { col, row } = placeOf(at);
  const target = [{ left: col, right: col, top: row, bottom: row }];
  book.engine.run("DELETE_CONTENT", { sheetId: book.sheetId(sheet.sheet), target });
}

/** Brings back what a cell holds now. */
export function keeping({ book, sheet }: Tried, at: string): () => void {
  const place = { sheetId: book.sheetId(sheet.sheet), ...placeOf(at) };
  const cell = book.engine.get<(FormulaCell & { readonly content: string }) | undefined>("getCell", place);
  const content = cell?.isFormula ? cell.compiledFormula.toFormulaString(book.engine.model.getters) : cell?.content;
  const format = cell?.format ?? "";
  return () => {
    empty({ book, sheet } as Tried, at);
    book.engine.run("UPDATE_CELL", { ...place, ...(content === undefined ? {} : { content }), format });
  };
}

/** What may be typed into a row by mistake. */
const ROWS = ["Extra\tsugar\t0.05", "Extra\t10\t500\t0.1", "Extra\t10", "\t5", "\t\t0.05", "Bake\t20"];

/** Rows inserted, filled, deleted, moved and sorted; cells cut; columns inserted, deleted and hidden. */
export function rowSlip({ sheet }: Tried, random: Random): Slip {
  const last = sheet.rowOf("mixer_limit") - 1;
  const row = () => 4 + Math.floor(random(last - 3));
  const column = () => Math.floor(random(12));
  const [at, to, text] = [row(), row(), oneOf(ROWS, random)];
  const slips: readonly Slip[] = [
    { says: `a row before ${at}`, act: (one) => one.sheet.insertRows(at) },
    {
      says: `a row before ${at}, filled ${JSON.stringify(text)}`,
      act: (one) => {
        one.sheet.insertRows(at);
        put(one, `A${at}`, text);
      },
    },
    { says: `row ${at} filled ${JSON.stringify(text)}`, act: (one) => put(one, `A${at}`, text) },
    { says: `row ${at} deleted`, act: (one) => one.sheet.deleteRows(at) },
    { says: `row ${at} before ${to}`, act: (one) => (to < at || to > at + 1) && one.sheet.moveRows(at, 1, to) },
    {
      says: `rows ${at} and ${at + 1} before ${to}`,
      act: (one) => (to < at || to > at + 2) && one.sheet.moveRows(at, 2, to),
    },
    sortSlip(sheet, random),
    cutSlip(sheet, random),
    columnSlip(column(), oneOf(["ADD_COLUMNS_ROWS", "REMOVE_COLUMNS_ROWS", "HIDE_COLUMNS_ROWS"] as const, random)),
  ];
  return oneOf(slips, random);
}

/** Rounds go by their diameter. */
const lastOfSizes = (sheet: Sheet) => (sheet.names().includes("size_loss") ? "size_loss" : "size_diameter");

function sortSlip(sheet: Sheet, random: Random): Slip {
  const [first, last] = oneOf(
    [
      ["ingredient", "percent"],
      ["size_name", lastOfSizes(sheet)],
      ["step", "step_minutes"],
    ] as const,
    random,
  );
  // Now and then the hidden row or the row of the total is caught as well.
  const [from, to] = [oneOf([1, 1, 1, 0], random), sheet.rows(first) - oneOf([2, 2, 3, 1], random)];
  const range = `${sheet.at(first, from)}:${sheet.at(last, to)}`;
  const by = /[A-Z]+/.exec(sheet.at(oneOf([first, last], random), 0))?.[0] ?? "A";
  const up = random(2) < 1;
  return { says: `${range} sorted by ${by}`, act: (one) => one.sheet.sortRows(range, by, up) };
}

function cutSlip(sheet: Sheet, random: Random): Slip {
  const [first, last] = oneOf(
    [
      ["ingredient", "percent"],
      ["kind", "percent"],
      ["percent", "percent"],
      ["size_pieces", lastOfSizes(sheet)],
    ] as const,
    random,
  );
  const at = 1 + Math.floor(random(sheet.rows(first) - 2));
  const range = `${sheet.at(first, at)}:${sheet.at(last, at)}`;
  const to = sheet.at(oneOf([first, "ingredient", "size_name", "step"], random), 1 + Math.floor(random(4)));
  return { says: `${range} cut and pasted at ${to}`, act: (one) => one.sheet.moveCells(range, to) };
}

function columnSlip(column: number, command: "ADD_COLUMNS_ROWS" | "REMOVE_COLUMNS_ROWS" | "HIDE_COLUMNS_ROWS"): Slip {
  return {
    says: `${command} ${columnLetters(column)}`,
    act({ book, sheet }) {
      const on = { sheetId: book.sheetId(sheet.sheet), sheetName: sheet.sheet, dimension: "COL" };
      book.engine.run(command, { ...on, position: "before", base: column, quantity: 1, elements: [column] });
    },
  };
}
