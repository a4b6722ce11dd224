import type { Block, CellModel, Line, Unit } from "../../shared/sheet/model.ts";
import { label } from "./line.ts";

/** The table's last four columns of numbers, from the share of all flour on. */
const FIRST = 4;
type Figure = { readonly name: string; readonly unit: Unit; readonly formula: string };

const readable = (formula: string) => `=IF(ISERROR(INDEX(@share;1;1));"";IF(SUM(@share)=0;"";${formula}))`;
const sum = (column: string, unit: Unit): Figure => ({
  name: `${column}_total`,
  unit,
  formula: readable(`SUM(@${column})`),
});
const perMix = (weight: string, needs: string) => `=IF(COUNT(@mixes;${needs})<2;"";IF(@mixes=0;"";${weight}/@mixes))`;
const TOTALS = [sum("share", "share"), sum("grams", "weight")] as const;

/** Water that is poured last, as the dough asks; its share of the water is typed beside its name. */
function heldLine(third: Figure): Line {
  const held = (formula: string) => `=IF(COUNT(@water;@held_share)<2;"";${formula})`;
  const weight = "@water*@held_share/@mixes";
  return {
    cells: [
      label("Water held back, of water"),
      { at: 2, role: "input", name: "held_share", unit: "share" },
      ...figures(
        { name: "held_of_flour", unit: "share", formula: held("IF(@flour=0;0;@water*@held_share/@flour)") },
        { name: "held_in_all", unit: "weight", formula: held("@water*@held_share") },
        third,
        {
          name: "held",
          unit: "weight",
          formula: `=IF(COUNT(@mixes;@water;@held_share)<3;"";IF(@mixes=0;"";IF(@step_coarse>0;ROUND(ROUND(${weight}/@step_coarse;9);0)*@step_coarse;${weight})))`,
        },
      ),
      { at: FIRST + 4, role: "remark", text: "Add it last, as the dough asks." },
    ],
  };
}

/** What the columns of the table come to; with a water row worth holding back, that comes last. */
export function underTable(how: { readonly held: boolean }): Block {
  const heldOfWhole: Figure = {
    name: "held_of_whole",
    unit: "share",
    formula: '=IF(COUNT(@held_in_all;@dough)<2;"";IF(@dough=0;"";@held_in_all/@dough))',
  };
  return {
    block: "under",
    left: 0,
    lines: [
      { cells: [label("Total"), ...figures(...TOTALS, sum("whole", "share"), sum("mix", "weight"))] },
      ...(how.held ? [heldLine(heldOfWhole)] : []),
    ],
  };
}

/** The same below stages: the preferment is no row of the table, and goes into each mix beside the rows. */
export function underStages(says: string, made: string): Block {
  const held: Figure = { name: "held_in_pre", unit: "weight", formula: '=IF(COUNT(@held_in_all)=0;"";0)' };
  return {
    block: "under",
    left: 0,
    lines: [
      { cells: [label("Total"), ...figures(...TOTALS, sum("pre", "weight"), sum("final", "weight"))] },
      {
        cells: [
          label(says),
          ...figures(
            {
              name: "pre_of_flour",
              unit: "share",
              formula: '=IF(COUNT(@pre_weight;@flour)<2;"";IF(@flour=0;"";@pre_weight/@flour))',
            },
            { name: "pre_in_all", unit: "weight", formula: '=IF(COUNT(@pre_weight)=0;"";@pre_weight)' },
            { name: "pre_made", unit: "weight", formula: perMix(made, "@pre_weight") },
            { name: "pre_mix", unit: "weight", formula: perMix("@pre_weight", "@pre_weight") },
          ),
        ],
      },
      heldLine(held),
    ],
  };
}

function figures(...each: readonly Figure[]): CellModel[] {
  return each.map((figure, place) => ({ at: FIRST + place, role: "computed", ...figure }));
}
