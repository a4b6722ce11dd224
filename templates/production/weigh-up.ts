// What a shift weighs: each dough's ingredients for a mix on the scales' steps, preferment and final mix apart, water and ice.

import type { Block, Line, SheetModel } from "../../shared/sheet/model.ts";
import { CAUTIONS, cautionsOf } from "../blocks/name.ts";
import { textFormula } from "./shape.ts";
import { HELPERS, helperLines, PAGE, type WeighShape } from "./weigh-up-helpers.ts";
import { doughBlock, ENTRIES, titleLine } from "./weigh-up-lines.ts";

export const WEIGH_UP_MARK = "Weigh-up of a shift";
/** What stands beside the temperatures, one below the other. */
export const TEMPERATURES = { room: "Room", flour: "Flour", tap: "Tap water" } as const;
export type WeighUpShape = {
  readonly blocks: readonly WeighShape[];
  /** Lines on feeds, times and clocks. */
  readonly facts: readonly string[];
};

export function weighUpSheet({ blocks, facts }: WeighUpShape): SheetModel {
  const rowsBefore = blocks.map((_, at) => blocks.slice(0, at).reduce((sum, { rows }) => sum + rows, 0));
  return {
    name: "weigh-up",
    title: "Weigh-up",
    says: "What a shift weighs, dough by dough.",
    widths: [28, 250, ...Array<number>(17).fill(120)],
    parts: [],
    frozen: 3,
    foldedFrom: PAGE,
    fillsFirst: ["room"],
    bands: [
      [titleBlock(), { block: "says", left: HELPERS, lines: checkLines(blocks) }],
      [temperatures],
      ...blocks.map((block, at) => [
        doughBlock(block, at, rowsBefore[at] ?? 0),
        { block: `helpers_${at}`, left: HELPERS, lines: helperLines(block, at, rowsBefore[at] ?? 0) },
      ]),
      ...(facts.length === 0
        ? []
        : [
            [
              {
                block: "facts",
                left: 0,
                lines: facts.map((text): Line => ({ cells: [{ at: 0, role: "label", text }] })),
              },
            ],
          ]),
      [cautionsOf(CAUTIONS.raw)],
    ],
    sample: {},
    expects: {},
  };
}

function titleBlock(): Block {
  return {
    block: "name",
    left: 0,
    lines: [
      { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "Weigh-up" }] },
      { cells: [{ at: 0, role: "result", name: "result", text: "" }] },
      { cells: [{ at: 0, role: "check", name: "check", unit: "text", formula: "=TRIM(@parts_say&@more_says)" }] },
    ],
  };
}

function checkLines(blocks: readonly WeighShape[]): Line[] {
  const bad = blocks.map((_, at) => `(ABS(@parts_${at}-1)>1/10^6)`).join("+");
  return [
    { cells: [{ at: 0, role: "helper", text: WEIGH_UP_MARK }] },
    {
      cells: [
        {
          at: 0,
          role: "helper",
          name: "parts_say",
          unit: "text",
          formula: `=IF(1*${bad}>0;"A formula sheet has other rows now: build this sheet again before you weigh. ";"")`,
        },
        {
          at: 1,
          role: "helper",
          name: "more_says",
          unit: "text",
          formula: '=IF([more]>0;"A dough of this shift is ordered that is not here: build this sheet again. ";"")',
        },
      ],
    },
  ];
}

/** Typed once for all doughs, in the column of the lots: so all formulas of the page are written in one call. */
const temperatures: Block = {
  block: "temperatures",
  left: 0,
  lines: [
    titleLine(textFormula("Today's temperatures (°{temperature})")),
    ...Object.entries(TEMPERATURES).map(
      ([name, says], row): Line => ({
        cells: [
          ...(row === 0
            ? [{ at: 1, role: "label", unit: "text", formula: textFormula("Water and ice follow them.") } as const]
            : []),
          { at: ENTRIES - 1, role: "label", unit: "text", align: "right", formula: textFormula(says) },
          { at: ENTRIES, role: "input", name, unit: "temperature", wide: 1 },
        ],
      }),
    ),
  ],
};
