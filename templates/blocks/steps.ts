import type { Block, Table } from "../../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";

/** Minutes of the step in the oven follow from the loads; the others are as typed. Below, the sum from each step to the last. */
const MINUTES_LEFT =
  "ROUND(MMULT((TRANSPOSE(ROW(@step_minutes))>=ROW(@step_minutes))*1;@step_minutes+(@step=@oven_step)*(LEN(@step)>0)*(@oven_minutes-@step_minutes));0)";
const fromReady = (value: string) =>
  `=IF(COUNT(@ready)=0;"";ARRAYFORMULA(IF(LEN(@step)+LEN(@step_minutes)=0;"";${value})))`;

/** The work in order, each start counted back from the time it must be ready; -1 is the day before. */
export const stepsTable: Table = {
  table: "steps",
  left: 0,
  when: "steps",
  rows: 12,
  columns: [
    { name: "step", head: "Step", unit: "text", role: "input" },
    { name: "step_minutes", head: "Minutes", unit: "minutes", role: "input" },
    {
      name: "step_start",
      head: "Starts at",
      unit: "time",
      role: "computed",
      formula: fromReady(`MOD(ROUND(1440*@ready;0)-${MINUTES_LEFT};1440)/1440`),
    },
    {
      name: "step_day",
      head: "Day",
      unit: "day",
      role: "computed",
      formula: fromReady(`INT((ROUND(1440*@ready;0)-${MINUTES_LEFT})/1440)`),
    },
  ],
};

const BAKING = "SUMIF(@step;@oven_step;@step_minutes)";
const FIRST_IN = "INDEX(@step_start;MATCH(@oven_step;@step;0);1)";
const TRAYS = "ROUNDUP(@pieces/@tray_pieces;0)";
const onTrays = (formula: string) => `=IF(COUNT(@pieces;@tray_pieces)<2;"";IF(@pieces*@tray_pieces=0;"";${formula}))`;
const inOven = (formula: string) => `=IF(COUNT(@ready)*COUNTIF(@step;@oven_step)=0;"";${formula})`;

export type OvenSpec = {
  /** What stands in the oven: trays with pieces on them, or tins. */
  readonly on: "trays" | "tins";
  readonly left?: number;
  /** Trays may be what is asked for. */
  readonly wanted?: boolean;
};

/** When it must be ready, and what the oven takes at a time. */
export function ovenBlockOf({ on, left = 4, wanted = false }: OvenSpec): Block {
  const trays = on === "trays";
  const count = trays ? "@trays" : "@pieces";
  return {
    block: "oven",
    left,
    when: "steps",
    lines: [
      headingLine("Ready and oven", 5),
      {
        cells: [
          label("Ready at"),
          { at: 2, role: "input", name: "ready", unit: "time", hint: "Every step's start is counted back from it." },
          { at: 3, role: "remark", text: "on day 0; -1 is the day before" },
        ],
      },
      inputLine("Step in the oven", "oven_step", "text", { value: "Bake", among: "step" }, 2),
      ...(trays ? [inputLine("Pieces on a tray", "tray_pieces", "count", {}, 2)] : []),
      inputLine(trays ? "Trays in an oven load" : "Tins in an oven load", "oven_takes", "count", {}, 2),
      inputLine("Minutes to reload", "oven_reload", "minutes", {}, 2),
      ...(wanted
        ? [
            inputLine("Trays wanted", "trays_wanted", "count", {}, 2),
            computedLine(
              "Dough for those trays ({weight})",
              "trays_dough",
              "weight",
              '=IF(LEN(@trays_wanted)*LEN(@tray_pieces)=0;"";IF(LEN(INDEX(@size_scaled;2;1))=0;"";@trays_wanted*@tray_pieces*INDEX(@size_scaled;2;1)/(1-@handling_loss)))',
              {},
              2,
            ),
          ]
        : []),
      ...(trays
        ? [
            {
              cells: [
                label("Trays, pieces on the last"),
                { at: 2, role: "computed", name: "trays", unit: "count", formula: onTrays(TRAYS) },
                {
                  at: 3,
                  role: "computed",
                  name: "tray_last",
                  unit: "count",
                  formula: onTrays(`@pieces-@tray_pieces*(${TRAYS}-1)`),
                },
              ],
            } as const,
          ]
        : []),
      {
        cells: [
          label("Oven loads, minutes for all"),
          {
            at: 2,
            role: "computed",
            name: "oven_loads",
            unit: "count",
            formula: `=IF(COUNT(${count};@oven_takes)<2;"";IF(@oven_takes=0;"";ROUNDUP(${count}/@oven_takes;0)))`,
          },
          {
            at: 3,
            role: "computed",
            name: "oven_minutes",
            unit: "minutes",
            formula: `=${BAKING}+IF(COUNT(@oven_loads)=0;0;IF(@oven_loads<2;0;(@oven_loads-1)*(${BAKING}+@oven_reload)))`,
          },
        ],
      },
      {
        cells: [
          label("First load in, last load out"),
          { at: 2, role: "computed", name: "first_in", unit: "time", formula: inOven(FIRST_IN) },
          {
            at: 3,
            role: "computed",
            name: "last_out",
            unit: "time",
            formula: inOven(`MOD(ROUND(1440*${FIRST_IN};0)+@oven_minutes;1440)/1440`),
          },
        ],
      },
    ],
  };
}

/** The start of a step less some hours, as a time of day and as a day before or after. */
export function hoursBefore(hours: string, step: string): { time: string; day: string } {
  const place = `MATCH(${step};@step;0)`;
  const minutes = `ROUND(1440*(INDEX(@step_day;${place};1)+INDEX(@step_start;${place};1));0)-ROUND(60*${hours};0)`;
  const known = (formula: string) => `=IF(LEN(${hours})*COUNT(@ready)*COUNTIF(@step;${step})=0;"";${formula})`;
  return { time: known(`MOD(${minutes};1440)/1440`), day: known(`INT((${minutes})/1440)`) };
}
