import type { SheetModel } from "../shared/sheet/model.ts";
import { MIXLOG_NAME } from "../shared/sheet/workbook-names.ts";
import { headingLine, label } from "./blocks/line.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";

/** Temperatures that the factor method adds up: flour and room, and a preferment where there was one. */
const FACTORS = "(3+(LEN(@log_preferment)>0))";

const COMPLETE = "LEN(@log_minutes)*LEN(@log_flour)*LEN(@log_room)*LEN(@log_water)*LEN(@log_dough)";

/** One mixer's mixes: each has a friction factor, and together they are a line that formula sheets read. */
export const mixLog: SheetModel = {
  name: "mix-log",
  title: "Mix log",
  says: "Mixes of one mixer, one a row: their friction factor by minutes, which new formula sheets then use.",
  widths: [92, 166, 84, 84, 84, 84, 84, 84, 92, 60],
  parts: [],
  defines: { name: MIXLOG_NAME, from: "fit_zero", to: "fit_unit" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Mix log" }] },
          { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
          { cells: [{ at: 0, role: "label", name: "known_as", text: "" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "One row per mix. Measure before mixing and right after, with the mixer stopped. Keep one log per mixer.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        block: "fit",
        left: 0,
        lines: [
          headingLine("Results", 9),
          {
            cells: [
              label("Friction at 0 min", 2),
              label("per minute", 3),
              label("typical miss", 4),
              label("mixes read", 5),
              label("degrees", 6),
            ].map((cell) => ({ ...cell, align: "right" as const })),
          },
          {
            cells: [
              label("3-temperature method ({temperature})"),
              {
                at: 2,
                role: "computed",
                name: "fit_zero",
                unit: "figure",
                spills: ["fit_minute", "fit_miss"],
                formula: '=IF(SUM(@log_counts)<3;"";BAKE_FRICTIONFIT(@log_minutes;@log_friction))',
              },
              // Filled as those before it, but a count and not a temperature.
              { at: 5, role: "computed", name: "fit_mixes", unit: "count" },
              { at: 6, role: "computed", name: "fit_unit", unit: "text", formula: '="{temperature}"' },
            ],
          },
          {
            cells: [
              {
                at: 2,
                role: "remark",
                name: "fit_note",
                unit: "text",
                formula:
                  '=IF(SUM(@log_counts)<3;"Three complete rows are needed.";IF(SUM(@log_counts)<5;"With fewer than five mixes, one bad reading can skew it.";""))',
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "log",
        left: 0,
        rows: 60,
        spare: 24,
        columns: [
          { name: "log_date", head: "Date", unit: "date", role: "input" },
          { name: "log_product", head: "Product", unit: "text", role: "input" },
          { name: "log_minutes", head: "Mixing time (min)", unit: "figure", role: "input" },
          { name: "log_flour", head: "Flour ({temperature})", unit: "temperature", role: "input" },
          { name: "log_room", head: "Room ({temperature})", unit: "temperature", role: "input" },
          { name: "log_preferment", head: "Preferment ({temperature})", unit: "temperature", role: "input" },
          { name: "log_water", head: "Water ({temperature})", unit: "temperature", role: "input" },
          { name: "log_dough", head: "Dough ({temperature})", unit: "temperature", role: "input" },
          {
            name: "log_friction",
            head: "Friction factor",
            unit: "factor",
            role: "computed",
            // With a preferment there are four factors; all are told on three, so that one line holds them.
            formula: `=ARRAYFORMULA(IF(${COMPLETE}=0;"";(${FACTORS}*@log_dough-@log_flour-@log_room-@log_preferment-@log_water)*3/${FACTORS}))`,
          },
          {
            name: "log_counts",
            head: "Counts",
            unit: "count",
            role: "computed",
            formula: `=ARRAYFORMULA(IF(${COMPLETE}=0;"";1))`,
          },
        ],
      },
    ],
    [cautionsOf(CAUTIONS.raw)],
  ],
  sample: {
    title: "Mix log",
    shop: "Tern Quay Bakehouse",
    log_date: [45962, 45963, 45964, 45965, 45966],
    log_product: ["Quay pan loaf", "Quay pan loaf", "Harbour levain loaf", "Ferry bun", "Quay pan loaf"],
    log_minutes: [8, 8, 6, 10, 8],
    log_flour: [21, 20, 20, 22, 21],
    log_room: [23, 22, 22, 24, 23],
    log_preferment: [null, null, 24, null, null],
    log_water: [26, 28, 26, 18, 12],
    log_dough: [26, 26, 25, 25, 26],
  },
  // By hand: 78 − 21 − 23 − 26 = 8; 78 − 20 − 22 − 28 = 8; (100 − 20 − 22 − 24 − 26) × 3 ÷ 4 = 6; 75 − 22 − 24 − 18 = 11; the last
  // mix's 22 is a misread thermometer. Of each mix's slopes to mixes of other minutes the medians are 1.25, 1.25, 1.125, 1.375, 1.25;
  // what is left at 0 min is -2, -2, -1.5, -1.5, 12, and the distances from that line are 0.5, 0.5, 0, 0, 13.5.
  expects: {
    "log_friction/1": 8,
    "log_friction/2": 8,
    "log_friction/3": 6,
    "log_friction/4": 11,
    "log_friction/5": 22,
    fit_zero: -1.5,
    fit_minute: 1.25,
    fit_miss: 0.5,
    fit_mixes: 5,
  },
};
