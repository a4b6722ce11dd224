// What a preferment and a levain are both asked.
import type { Line } from "../../shared/sheet/model.ts";
import { label } from "../blocks/line.ts";
import { AT, input } from "./block-lines.ts";

/** The only flour that goes in, where not all do. */
export const flourFromLine: Line = input("Flour, if only one goes in", "pre_from", "text", {
  among: "ingredient",
  hint: "If blank, of every flour.",
});

/** Hours, and the step that it must be ripe for. */
export const hoursLine: Line = {
  cells: [
    label("Hours to ripen, before step"),
    { at: AT, role: "input", name: "pre_hours", unit: "plain", bounds: [0, 72], asks: "Hours to ripen" },
    {
      at: AT + 1,
      role: "input",
      name: "pre_step",
      unit: "text",
      value: "Mix",
      when: "steps",
      asks: "Ripe for the step",
      among: "step",
    },
  ],
};

/** When it is begun. */
export const readyLines = (says: string): readonly Line[] => [
  {
    when: "steps",
    cells: [
      label(says),
      {
        at: AT,
        role: "computed",
        name: "pre_start",
        unit: "time",
        formula: '=IF(COUNT(@pre_minutes)=0;"";MOD(@pre_minutes;1440)/1440)',
      },
      {
        at: AT + 1,
        role: "computed",
        name: "pre_day",
        unit: "day",
        formula: '=IF(COUNT(@pre_minutes)=0;"";INT(@pre_minutes/1440))',
      },
    ],
  },
];
