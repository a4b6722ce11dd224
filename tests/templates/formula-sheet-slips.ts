// What people do to a formula sheet by mistake: contents of cells, and changes to rows and columns.
import { columnLetters } from "../../shared/sheet/a1.ts";
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

/** An edit in words, and how it is done; what the grid refuses changes nothing. */
export type Slip = { readonly says: string; readonly act: () => void };

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
