// The steps of a production by the clock: what begins when, for which mix or load, and on what.

import { wrapText } from "../../shared/card/type-size.ts";
import type { Block, Line, SheetModel } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { CAUTIONS, cautionsOf } from "../blocks/name.ts";
import { linkName } from "./shape.ts";

export type TimetableRow = {
  readonly start: string;
  readonly end: string;
  readonly dough: string;
  readonly step: string;
  /** Such as "mix 1 of 2" or "load 3". */
  readonly which: string;
  readonly on: string;
  readonly at: number | null;
  readonly note: string;
};
export type TimetableShape = {
  readonly says: string;
  readonly days: readonly { readonly day: string; readonly rows: readonly TimetableRow[] }[];
  readonly clashes: readonly string[];
  readonly feeds: readonly (readonly string[])[];
  readonly facts: readonly string[];
  /** When it was made, and how it is renewed. */
  readonly asOf: string;
  /** How many figures are compared with those that were planned. */
  readonly compared: number;
};

const PAGE = 8;
const HEADS = ["Start", "End", "Dough", "Step", "Mix or load", "On", "At ({temperature})", "Note"];
const FEED_HEADS = ["Feed at", "Ripe", "Levain", "Seed, flour, water ({weight})", "", "", "", "For"];

export function timetableSheet(shape: TimetableShape): SheetModel {
  let count = 0;
  // What a person typed elsewhere goes in as it is: cells with names take it.
  const line = (cells: readonly string[]): Line => ({
    cells: cells.map((_, at) => ({
      at,
      role: "ruled",
      name: `t_${++count}`,
      unit: "text",
      ...(at === 6 ? { align: "center" as const } : {}),
    })),
  });
  const heads = (some: readonly string[]): Line => ({ cells: some.map((text, at) => ({ at, role: "label", text })) });
  return {
    name: "timetable",
    title: "Timetable",
    says: "The steps of every mix and oven load by the clock.",
    widths: [55, 55, 175, 175, 115, 95, 60, 185, ...Array<number>(1 + shape.compared).fill(100)],
    parts: [],
    frozen: 3,
    foldedFrom: PAGE,
    bands: [
      [titleBlock(shape), { block: "kept", left: PAGE + 1, lines: keptLines(shape.compared) }],
      ...(shape.clashes.length === 0 ? [] : [[textBlock("clashes", "Taken twice at once", shape.clashes)]]),
      ...shape.days.map(({ day, rows }, at): Block[] => [
        {
          block: `day_${at}`,
          left: 0,
          lines: [headingLine(day, PAGE), heads(HEADS), ...rows.map((row) => line(cellsOf(row)))],
        },
      ]),
      ...(shape.feeds.length === 0
        ? []
        : [
            [
              {
                block: "feeds",
                left: 0,
                lines: [
                  headingLine("Levain and starters", PAGE),
                  heads(FEED_HEADS),
                  ...shape.feeds.map((feed) => line(feed)),
                ],
              },
            ],
          ]),
      ...(shape.facts.length === 0 ? [] : [[textBlock("facts", "", shape.facts)]]),
      [cautionsOf(CAUTIONS.oven)],
    ],
    sample: {},
    expects: {},
  };
}

/** As many go on a line of the page. */
const LINE_LETTERS = 165;

function textBlock(block: string, heading: string, texts: readonly string[]): Block {
  return {
    block,
    left: 0,
    lines: [
      ...(heading === "" ? [] : [headingLine(heading, PAGE)]),
      ...texts
        .flatMap((text) => wrapText(text, LINE_LETTERS))
        .map((text): Line => ({ cells: [{ at: 0, role: "label", text }] })),
    ],
  };
}

const titleBlock = ({ says, compared }: TimetableShape): Block => ({
  block: "name",
  left: 0,
  lines: [
    { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "Timetable" }] },
    { cells: [{ at: 0, role: "result", text: says }] },
    {
      cells: [
        {
          at: 0,
          role: "check",
          name: "check",
          unit: "text",
          formula: `=IF(SUM(@other_1:@other_${compared})>0;"Orders, methods or machines have changed since this was made: build the timetable again.";"")`,
        },
      ],
    },
    { cells: [{ at: 0, role: "remark", name: "as_of", unit: "text" }] },
  ],
});

/** Beside the title, below each other: figures as they were planned, and whether they are others now. */
const keptLines = (compared: number): Line[] => {
  const places = Array.from({ length: compared }, (_, at) => at);
  return [
    { cells: places.map((at) => ({ at, role: "helper", name: `planned_${at + 1}`, unit: "plain" })) },
    {
      cells: places.map((at) => ({
        at,
        role: "helper",
        name: `other_${at + 1}`,
        unit: "plain",
        formula: `=IF(ABS([${linkName("now", at)}]-@planned_${at + 1})>1/2;1;0)`,
      })),
    },
  ];
};

/** The texts of its rows, by the names of their cells. */
export function timetableTexts({ days, feeds, asOf }: TimetableShape): Record<string, string> {
  const rows = [...days.flatMap(({ rows: some }) => some.map(cellsOf)), ...feeds];
  return { as_of: asOf, ...Object.fromEntries(rows.flat().map((text, at) => [`t_${at + 1}`, text])) };
}

const cellsOf = ({ start, end, dough, step, which, on, at, note }: TimetableRow): string[] => [
  start,
  end,
  dough,
  step,
  which,
  on,
  at === null ? "" : String(at),
  note,
];
