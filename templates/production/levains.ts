// Levains and machines of a production: typed once, and what the doughs take of each levain.
import type { Block, CellModel, Line } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { daysOf, linkName, type ProductionShape, pageColumns, textFormula } from "./shape.ts";

const input = (at: number, name: string, unit: CellModel["unit"], bounds: readonly [number, number]): CellModel => ({
  at,
  role: "input",
  name,
  unit: unit ?? "plain",
  bounds,
});
const head = (at: number, text: string): CellModel => ({
  at,
  role: "label",
  text,
  ...(at > 1 ? { align: "right" } : {}),
});

/** Heads of what is typed of a levain, from the fourth column of the page on: its flour has the room of two. */
const LEVAIN_HEADS = [
  "Hydration",
  "of mother",
  "Seed/flour",
  "Ripe from (h)",
  "Ripe to (h)",
  "Mother ({weight})",
  "To keep ({weight})",
] as const;

export function levainsBlock(shape: ProductionShape): Block {
  return {
    block: "levains",
    left: 0,
    lines: [
      headingLine("Levain and starters", pageColumns(shape)),
      {
        cells: [
          head(0, "Levain"),
          head(1, "Flour fed"),
          ...LEVAIN_HEADS.map((text, at) => head(at + 3, text)),
          // As a formula it goes out with what stands below it.
          { at: 10, role: "label", unit: "text", align: "right", formula: textFormula("In doughs ({weight})") },
        ],
      },
      ...shape.levains.map((_, index): Line => {
        const at = index + 1;
        return {
          cells: [
            { at: 0, role: "label", name: `levain_${at}`, unit: "text" },
            { at: 1, role: "input", name: `fed_${at}`, unit: "text", wide: 2 },
            input(3, `hydration_${at}`, "percent", [0.3, 2]),
            input(4, `mother_hydration_${at}`, "percent", [0.3, 2]),
            input(5, `seed_${at}`, "percent", [0.001, 5]),
            input(6, `ripe_from_${at}`, "plain", [0, 96]),
            input(7, `ripe_to_${at}`, "plain", [0, 96]),
            input(8, `mother_${at}`, "graded", [0, 1_000_000]),
            input(9, `keep_${at}`, "graded", [0, 1_000_000]),
            {
              at: 10,
              role: "strong",
              name: `levain_shown_${at}`,
              unit: "graded",
              formula: `=IF(@levain_all_${at}=0;"";@levain_all_${at})`,
            },
          ],
        };
      }),
    ],
  };
}

/** Beside a levain: what all doughs take of it, by their parts; flour and water that the feeds take, with the first seed as it was planned. */
export function levainHelpers(shape: ProductionShape): Line[] {
  const n = daysOf(shape).length;
  const cell = (at: number, name: string, formula?: string): CellModel => ({
    at,
    role: "helper",
    name,
    unit: "plain",
    ...(formula === undefined ? {} : { formula }),
  });
  return [
    { cells: [] },
    {
      cells: ["Levain in the doughs", "Flour to feed", "Water to feed", "First seed, as planned"].map((text, at) => ({
        at,
        role: "helper",
        unit: "text",
        formula: textFormula(text),
      })),
    },
    ...shape.levains.map(({ doughs }, index): Line => {
      const at = index + 1;
      const uses = doughs.map(
        (dough) =>
          `SUM(@t_${dough + 1}_1:@t_${dough + 1}_${n})*N([${linkName("levain_part", index * shape.doughs.length + dough)}])`,
      );
      const amount = `IF(@levain_all_${at}=0;0;@levain_all_${at}+N(@keep_${at}))`;
      return {
        cells: [
          cell(0, `levain_all_${at}`, `=${uses.length === 0 ? "0" : uses.join("+")}`),
          cell(3, `first_seed_${at}`),
          cell(
            1,
            `levain_flour_${at}`,
            `=MAX(0;${amount}/(1+N(@hydration_${at}))-IF(@levain_all_${at}=0;0;N(@first_seed_${at}))/(1+N(@mother_hydration_${at})))`,
          ),
          cell(
            2,
            `levain_water_${at}`,
            `=MAX(0;${amount}-IF(@levain_all_${at}=0;0;N(@first_seed_${at}))-@levain_flour_${at})`,
          ),
        ],
      };
    }),
  ];
}

export const MACHINE_HEADS = ["Kind", "How many", "Takes", "At ({temperature})"] as const;

export function machinesBlock(shape: ProductionShape): Block {
  return {
    block: "machines",
    left: 0,
    lines: [
      headingLine("Mixers and ovens", pageColumns(shape)),
      {
        cells: [
          {
            at: 0,
            role: "remark",
            text: "A mixer takes {weight} of dough, an oven trays, tins or pieces. Blank: anything. For another machine, insert a row between two.",
          },
        ],
      },
      {
        cells: [head(0, "Name"), ...MACHINE_HEADS.map((text, at) => head(at + 1, text))],
      },
      ...Array.from({ length: shape.machines }, (_, index): Line => {
        const at = index + 1;
        return {
          cells: [
            { at: 0, role: "input", name: `machine_${at}`, unit: "text" },
            { at: 1, role: "input", name: `machine_kind_${at}`, unit: "text", choices: ["mixer", "oven"] },
            input(2, `machine_number_${at}`, "count", [0, 50]),
            input(3, `machine_takes_${at}`, "graded", [0, 2_000_000]),
            input(4, `machine_at_${at}`, "temperature", [0, 1000]),
          ],
        };
      }),
    ],
  };
}
