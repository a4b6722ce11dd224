// What no documentation says and only a live sheet can: each question is a formula over cells, its answer is copied.
import { a1 } from "../sheet/a1.ts";
import type { CheckCells, PlacedFormula } from "./self-check.ts";

/** Cells that arguments are read from, in row 2: blank, number, percent, currency, duration, date, tick, text, a blank that
 * is returned, an error. */
const CELLS = ["", 5, 0.65, 12.5, 0.0625, 45_000, true, "12"] as const;
const FORMATS = ["", "", "0%", "$#,##0.00", "hh:mm:ss", "yyyy-mm-dd", "", ""] as const;

const ARGUMENTS: readonly (readonly [asks: string, formula: string])[] = [
  ["left out in the middle", "=GRAMWRIGHT_PROBE(B2;;B2)"],
  ["left out at the end", "=GRAMWRIGHT_PROBE(B2;)"],
  ["a blank cell", "=GRAMWRIGHT_PROBE(A2)"],
  ["a range with a blank", "=GRAMWRIGHT_PROBE(A2:B2)"],
  ["a range of one cell", "=GRAMWRIGHT_PROBE(B2:B2)"],
  ["a percent", "=GRAMWRIGHT_PROBE(C2)"],
  ["a currency", "=GRAMWRIGHT_PROBE(D2)"],
  ["a duration", "=GRAMWRIGHT_PROBE(E2)"],
  ["a date", "=GRAMWRIGHT_PROBE(F2)"],
  ["a tick", "=GRAMWRIGHT_PROBE(G2)"],
  ["a number as text", "=GRAMWRIGHT_PROBE(H2)"],
  ["an error", "=GRAMWRIGHT_PROBE(J2)"],
  ["a range with an error", "=GRAMWRIGHT_PROBE(H2:J2)"],
  ['ISBLANK of a returned ""', "=ISBLANK(I2)"],
  ['LEN of a returned ""', "=LEN(I2)"],
  ['a returned "" times 2', "=I2*2"],
];

/** What a function may give back besides numbers and texts; each has room for two rows of two cells. */
const GIVEN = ["null", "undefined", "Infinity", "a date", "[[1], [2, 3]]", "[]", "[[]]", "true"] as const;
const GIVEN_DOWN = 4;
const givenPlace = (at: number) => ({ row: 2 + 3 * (at % GIVEN_DOWN), column: at < GIVEN_DOWN ? 4 : 7 });

/** Where a person types, as no script can; rows are counted from 1 here. */
const TYPED = ARGUMENTS.length + 4;
/** A function over the rows from its own row on, as the tables of a formula sheet have it. */
const ANCHOR = TYPED + 2;

export const PROBES: CheckCells = probeCells();
export const ANCHOR_ROW = ANCHOR;
export const typedAnswer = (values: Grid): string =>
  `0.65 typed into a percent cell: ${JSON.stringify(values[TYPED - 1]?.[0] ?? "")}`;
export const TYPED_CELL = a1({ row: TYPED - 1, column: 0 });

function probeCells(): CheckCells {
  const cells: (string | number | boolean)[][] = Array.from({ length: ANCHOR + 2 }, () => CELLS.map(() => ""));
  const formats: string[][] = cells.map((row) => row.map(() => ""));
  cells[0] = [...CELLS];
  formats[0] = [...FORMATS];
  [1, 2, 1].forEach((weight, down) => {
    const row = cells[ANCHOR - 2 + down];
    if (row) row[0] = weight;
  });
  const typed = formats[TYPED - 2];
  if (typed) typed[0] = "0%";
  const formulas: PlacedFormula[] = [
    { row: 1, column: 8, formula: "=BAKE_TRUEPCT(A2)" },
    { row: 1, column: 9, formula: "=B2/A2" },
    ...ARGUMENTS.map(([, formula], at) => ({ row: 2 + at, column: 1, formula })),
    ...GIVEN.map((_, at) => ({ ...givenPlace(at), formula: `=GRAMWRIGHT_GIVE(${at + 1})` })),
    { row: ANCHOR - 1, column: 1, formula: `=BAKE_TRUEPCT(A${ANCHOR}:A${ANCHOR + 3})` },
  ];
  return { cells, formats, formulas };
}

type Grid = readonly (readonly unknown[])[];

/** One line an answer. */
export const answersOf = (values: Grid): string[] =>
  ARGUMENTS.map(([asks], at) => `${asks}: ${JSON.stringify(values[2 + at]?.[1] ?? "")}`);

/** What each answer became in the cells: its own and the one beside it, with the two below. */
export const givenLines = (values: Grid): string[] =>
  GIVEN.map((asks, at) => {
    const { row, column } = givenPlace(at);
    const cells = [row, row + 1].map((down) => [column, column + 1].map((across) => values[down]?.[across] ?? ""));
    return `a function that gives ${asks}: ${JSON.stringify(cells)}`;
  });

/** After a row was put above the anchor. */
export function anchorAnswer(values: Grid, formulas: Grid): string {
  const anchors = [ANCHOR, ANCHOR + 1].map(
    (row) => `B${row} ${JSON.stringify(formulas[row - 1]?.[1] || values[row - 1]?.[1] || "")}`,
  );
  return `a row put above the anchor in B${ANCHOR}: ${anchors.join(", ")}`;
}
