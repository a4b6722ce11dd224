// The lines of a dough on a weigh-up.
import type { Block, CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { linkName, quoted, textFormula } from "./shape.ts";
import { PAGE, sumOf, upwards, type WeighShape } from "./weigh-up-helpers.ts";

const TICK = "☐";
/** The column in which lots are entered, and the day's temperatures. */
export const ENTRIES = 4;
export const titleLine = (title: Formula): Line => ({
  cells: Array.from({ length: PAGE }, (_, at) => ({
    at,
    role: "heading" as const,
    ...(at === 0 ? { unit: "text" as const, formula: title } : {}),
  })),
});
const weighed = (at: number, from: string): CellModel => ({
  at,
  role: "figure",
  unit: "step",
  formula: `=IF(@${from}=0;"";@${from})`,
});

const total = (at: number, sum: string): CellModel => ({ at, role: "figure", unit: "step", formula: `=${sum}` });

export function doughBlock(shape: WeighShape, index: number, before: number): Block {
  const { title, says, rows, stage, preferment, hasWater, sizes } = shape;
  const head = (at: number, text: string): CellModel => ({
    at,
    role: "label",
    unit: "text",
    formula:
      text.startsWith(preferment) && preferment !== "" ? `${quoted(preferment)}&" ({weight})"` : textFormula(text),
    ...(at > 1 ? { align: "right" } : {}),
  });
  const isBoth = stage === "whole" && preferment !== "";
  const heads =
    stage === "preferment"
      ? [`${preferment} ({weight})`]
      : stage === "final"
        ? ["Final mix ({weight})"]
        : isBoth
          ? [`${preferment} ({weight})`, "Final mix ({weight})"]
          : ["Per mix ({weight})"];
  return {
    block: `dough_${index}`,
    left: 0,
    lines: [
      titleLine(quoted(title)),
      {
        cells: [
          { at: 0, role: "strong", unit: "text", formula: mixesSay(index) },
          { at: 2, role: "label", unit: "text", formula: quoted(says) },
        ],
      },
      {
        cells: [
          head(1, "Ingredient"),
          ...heads.map((text, at) => head(2 + at, text)),
          // As words: with formulas in their column, lots that were entered before part the formulas into many calls.
          { at: ENTRIES, role: "label", text: "Lot number" },
        ],
      },
      ...Array.from({ length: rows }, (_, row): Line => {
        const at = before + row;
        const columns =
          stage === "preferment"
            ? ["pre_scale"]
            : stage === "final"
              ? ["final"]
              : isBoth
                ? ["pre_scale", "final"]
                : ["mix_scale"];
        return {
          cells: [
            { at: 0, role: "ruled", unit: "text", formula: textFormula(TICK) },
            { at: 1, role: "ruled", unit: "text", formula: `=[${linkName("name", at)}]&""` },
            ...columns.map((name, which) => weighed(2 + which, `${name}_${at}`)),
            { at: ENTRIES, role: "input", name: `lot_${at}`, unit: "text", wide: 1 },
          ],
        };
      }),
      // Ruled like the lines above it: borders of another kind are a call of the service.
      {
        cells: [
          {
            at: 1,
            role: "figure",
            unit: "text",
            formula: textFormula(stage === "preferment" ? "Preferment of a mix" : "A mix"),
          },
          total(2, totalOf(shape, before)),
          ...(isBoth ? [total(3, sumOf("final", before, rows))] : []),
        ],
      },
      ...(stage === "final" && preferment !== "" ? [fromPreferment(preferment, index)] : []),
      ...(hasWater && stage !== "preferment" ? waterLines(index) : []),
      ...(stage === "preferment" ? [] : sizes.map((name, at): Line => sizeLine(name, index, at))),
    ],
  };
}
const totalOf = ({ stage, rows, preferment }: WeighShape, before: number) =>
  sumOf(
    stage === "preferment" || (stage === "whole" && preferment !== "")
      ? "pre_scale"
      : stage === "final"
        ? "final"
        : "mix_scale",
    before,
    rows,
  );

/** Boxes to tick, one a mix. */
const mixesSay = (index: number): Formula => {
  const words = (weight: string) =>
    `=IF(@mixes_${index}=0;"Nothing is ordered of it now.";MID("☐☐☐☐☐☐☐☐☐☐☐☐";1;MIN(12;@mixes_${index}))&" "&@mixes_${index}&IF(@mixes_${index}=1;" mix of ";" mixes of ")&${weight})`;
  return [
    { when: "oz", formula: words(`ROUND(@each_${index}/16;2)&" lb"`) },
    { formula: words(`ROUND(@each_${index}/1000;2)&" kg"`) },
  ];
};

const fromPreferment = (preferment: string, index: number): Line => ({
  cells: [
    { at: 0, role: "ruled", unit: "text", formula: textFormula(TICK) },
    { at: 1, role: "ruled", unit: "text", formula: quoted(`${preferment}, ready`) },
    weighed(2, `pre_mix_${index}`),
  ],
});

function waterLines(index: number): Line[] {
  const figure = (at: number, name: string, unit: CellModel["unit"]): CellModel => ({
    at,
    role: "figure",
    unit: unit ?? "plain",
    formula: `=IF(LEN(@${name}_${index})=0;"";@${name}_${index})`,
  });
  const line = (text: string, ...cells: CellModel[]): Line => ({
    cells: [{ at: 1, role: "ruled", unit: "text", formula: textFormula(text) }, ...cells],
  });
  const noIce = `=IF(LEN(@ice_scale_${index})>0;@ice_scale_${index};IF(LEN(@water_at_${index})=0;"";"no ice"))`;
  return [
    line(
      "Water at (°{temperature}), hold back ({weight})",
      figure(2, "water_at", "temperature"),
      figure(3, "held_scale", "step"),
    ),
    line(
      "Of the water: ice, tap water ({weight})",
      { ...figure(2, "ice_scale", "step"), formula: noIce },
      figure(3, "tap_scale", "step"),
    ),
  ];
}

const sizeLine = (name: string, index: number, at: number): Line => ({
  cells: [
    {
      at: 1,
      role: "ruled",
      unit: "text",
      formula:
        name === ""
          ? textFormula("Pieces, scaling weight ({weight})")
          : `${quoted(name)}&": pieces, scaling weight ({weight})"`,
    },
    { at: 2, role: "figure", unit: "count", formula: `=[${linkName("pieces", 10 * index + at)}]` },
    { at: 3, role: "figure", unit: "step", formula: upwards(`[${linkName("scaling", 10 * index + at)}]`, index) },
  ],
});
