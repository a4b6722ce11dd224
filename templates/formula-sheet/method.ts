import type { Block, Bounds, Table } from "../../shared/sheet/model.ts";
import { headingLine, label } from "../blocks/line.ts";
import { figureOf, figures, input } from "./block-lines.ts";
import { cleanText, helper, numbers, outOf, shownColumn, typedColumn, typedOver } from "./column-kinds.ts";
import { HELPERS, MESSAGES, RIGHT } from "./columns.ts";
import { only, type Single, single } from "./singles.ts";
import type { FormulaSheetSpec } from "./spec.ts";
import { outsideSingles } from "./stray-cells.ts";
import { SCALED_FIRST } from "./tin.ts";

/** From a retarder to a deck oven. */
const WORK: Bounds = [
  { when: "F", least: -22, most: 932 },
  { least: -30, most: 500 },
];

const ROWS = 6;
const SPARE = 2;

/** The work in order. Each start is counted back from the time it must be ready; -1 is the day before. */
export const methodTable: Table = {
  table: "steps",
  left: 0,
  when: "steps",
  rows: ROWS,
  spare: SPARE,
  hidden: true,
  columns: [
    typedColumn("step", "Step", "text"),
    typedColumn("step_minutes", "Minutes", "minutes", { bounds: [0, 10_080] }),
    shownColumn("start_shown", "Starts at", "time", '=ARRAYFORMULA(IF(LEN(@step_start)=0;"";@step_start))', {
      role: "strong",
    }),
    shownColumn("day_shown", "Day", "day", '=ARRAYFORMULA(IF(LEN(@step_day)=0;"";@step_day))'),
    typedColumn("step_temp", "At ({temperature})", "temperature", { bounds: WORK, onSheet: true }),
    typedColumn("step_how", "What to do", "text", { wide: 6, onSheet: true }),
  ],
};

const MESSAGE = [
  helper("step_message", "What is wrong", '=ARRAYFORMULA(IF(LEN(@step_says)=0;"";IFERROR(@step&" ";"")&@step_says))'),
  helper("step_message_row", "In row", '=ARRAYFORMULA(IF(LEN(@step_message)=0;"";ROW(@step_message)))'),
];

const STEPS = [
  numbers(
    "minutes_count",
    "Minutes that count",
    "=ARRAYFORMULA(IF(ISNUMBER(@step_minutes)*(ROW(@step_minutes)>MIN(ROW(@step_minutes)))=1;@step_minutes;0))",
  ),
  numbers("bakes", "Is the step in the oven", `=ARRAYFORMULA((${cleanText("@step")}=@oven_name)*(LEN(@oven_name)>0))`),
  numbers(
    "minutes_now",
    "Minutes with all oven loads",
    "=ARRAYFORMULA(@minutes_count+@bakes*@loads_again*(@minutes_count+@reload))",
  ),
  numbers(
    "minutes_left",
    "Minutes to the end",
    "=ARRAYFORMULA(ROUND(MMULT((TRANSPOSE(ROW(@minutes_now))>=ROW(@minutes_now))*1;@minutes_now);0))",
  ),
  helper(
    "step_start",
    "Start",
    '=ARRAYFORMULA(IF((IFERROR(LEN(@step);0)=0)+(COUNT(@ready)=0)>0;"";MOD(ROUND(1440*N(@ready);0)-@minutes_left;1440)/1440))',
    { unit: "time" },
  ),
  helper(
    "step_day",
    "On day",
    '=ARRAYFORMULA(IF((IFERROR(LEN(@step);0)=0)+(COUNT(@ready)=0)>0;"";INT((ROUND(1440*N(@ready);0)-@minutes_left)/1440)))',
    { unit: "day" },
  ),
  numbers("step_over", "Typed over", typedOver(["start_shown", "day_shown"])),
  outOf("minutes_wrong", "Minutes that are wrong", "step_minutes", "minutes", [0, 10_080]),
  outOf("temp_wrong", "Temperature that is wrong", "step_temp", "temperature", WORK),
  helper(
    "step_says",
    "All that is wrong",
    '=ARRAYFORMULA(@minutes_wrong&@temp_wrong&IF(ISERROR(@step);"row "&ROW(@step)&": an error. ";"")&IF(@step_over>0;"clear what is typed over a formula in row "&ROW(@step);""))',
  ),
];

export const methodHelpers: readonly Table[] = [
  {
    table: "steps_messages",
    left: MESSAGES.left,
    when: "steps",
    rows: ROWS,
    spare: SPARE,
    hidden: true,
    columns: MESSAGE,
  },
  { table: "steps_helpers", left: HELPERS, when: "steps", rows: ROWS, spare: SPARE, hidden: true, columns: STEPS },
];

/** When it must be ready. */
export const readyBlock: Block = {
  block: "ready",
  left: 0,
  when: "steps",
  lines: [
    headingLine("Method", 4),
    {
      cells: [
        label("Ready at"),
        {
          at: 2,
          role: "input",
          name: "ready",
          unit: "time",
          bounds: [0, 1],
          hint: "Every start is counted back from it.",
        },
      ],
    },
  ],
};

const TAKES = {
  tins: "Tins in an oven load",
  pieces: "Pieces in an oven load",
  trays: "Trays in an oven load",
} as const;

/** What the oven takes at a time, beside it. */
export const ovenBlock = (on: FormulaSheetSpec["bakedOn"]): Block => ({
  block: "oven",
  left: RIGHT,
  when: "steps",
  lines: [
    headingLine("Oven", 6),
    input("Baking step", "oven_step", "text", { value: "Bake", among: "step" }),
    ...(on === "trays" ? [input("Pieces on a tray", "tray_pieces", "count", { bounds: [1, 10_000] })] : []),
    input(TAKES[on], "oven_takes", "count", { bounds: [1, 100_000] }),
    input("Time to reload (min)", "oven_reload", "minutes", { bounds: [0, 600] }),
    ...(on === "trays"
      ? [figures("Trays; pieces on the last", figureOf("trays", "count"), figureOf("tray_last", "count"))]
      : []),
    figures(
      "Oven loads; total minutes",
      { name: "loads_shown", unit: "count", formula: '=IF(LEN(@oven_loads)=0;"";@oven_loads)' },
      { name: "oven_minutes_shown", unit: "minutes", formula: '=IF(@oven_minutes=0;"";@oven_minutes)' },
    ),
  ],
});

const TRAYS: readonly Single[] = [
  single(
    "Trays",
    "trays",
    '=IF((COUNT(@pieces)=0)+(N(@tray_pieces)<=0)>0;"";ROUNDUP(@pieces/@tray_pieces*(1-1/10^9);0))',
  ),
  single("Pieces on the last tray", "tray_last", '=IF(COUNT(@trays)=0;"";@pieces-@tray_pieces*(@trays-1))'),
];

/** Without a method nothing is known of trays. */
export const TRAY_SINGLES: readonly Single[] = [
  ...only("steps", [
    single("Scaling weight of the first size", "scaled_first", SCALED_FIRST),
    single("A tray holds", "tray_holds", "=N(@tray_pieces)"),
    single("Dough of a tray", "tin_takes", "=@tray_holds*@scaled_first"),
  ]),
  ...only("!steps", [single("A tray holds", "tray_holds", "=0"), single("Dough of a tray", "tin_takes", "=0")]),
];

export const methodSingles = (on: FormulaSheetSpec["bakedOn"]): readonly Single[] => [
  ...(on === "trays" ? TRAYS : []),
  single("Baking step", "oven_name", `=${cleanText("@oven_step")}`),
  single("Oven loads", "oven_loads", loadsOf(on === "trays" ? "@trays" : "@pieces")),
  single("Loads after the first", "loads_again", "=IF(COUNT(@oven_loads)=0;0;MAX(0;@oven_loads-1))"),
  single("Time to reload (min)", "reload", "=IF(COUNT(@oven_reload)=0;0;@oven_reload)"),
  single("Ready at, minutes", "ready_minutes", '=IF(COUNT(@ready)=0;"";ROUND(1440*@ready;0))'),
  single("Minutes of all loads", "oven_minutes", "=SUMPRODUCT(@bakes;@minutes_now)"),
  ...outsideSingles({
    table: "steps",
    says: "steps",
    what: "A step",
    many: "the method",
    typed: ["step", "step_minutes"],
    counted: "minutes_count",
    // The heading and the first label of the block below.
    isClear: "COUNTA(@step_minutes_top:@limit_label)-COUNTA(@step;@step_minutes)=2",
    figures: "step_temp",
    // The heading of the block below stands above its first line.
    below: ["step_top", "mixes_note"],
    ends: "ROW(@limit_label)-1",
  }),
  single(
    "Step in the oven is there",
    "oven_says",
    '=IF((@loads_again>0)*(LEN(@oven_name)>0)*(SUM(@bakes)=0)=1;"No step is called “"&@oven_name&"”. ";"")',
  ),
];

function loadsOf(many: string): string {
  return `=IF((COUNT(${many})=0)+(COUNT(@oven_takes)=0)>0;"";IF(@oven_takes>0;ROUNDUP(${many}/@oven_takes*(1-1/10^9);0);""))`;
}

/** Where a sheet has no method. */
export const NO_METHOD: readonly Single[] = [
  single("Rows of the method", "steps_say", '=""'),
  single("Step in the oven is there", "oven_says", '=""'),
];
