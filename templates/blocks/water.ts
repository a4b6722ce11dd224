import type { Block } from "../../shared/sheet/model.ts";
import { MIXINGS } from "../../shared/water/temperature.ts";
import { YEAST_LIMITS } from "../../shared/water/water-note.ts";
import { PLAIN_TIN_NOTE } from "./plain-tin.ts";
import { PLAIN_FRICTION_GUIDE, PLAIN_ICE, PLAIN_WATER_NOTE, PLAIN_WATER_TEMP } from "./plain-water.ts";

/** A factor is told for three temperatures; a preferment's is the fourth. */
const FACTORS = "IF(COUNT(@preferment_temp)=0;1;4/3)";
const GUIDE = `IF(LEN(@friction_usual)=0;"";@friction_usual*${FACTORS})`;

/** Water temperature by the factor method, and the ice in it; `water` is what goes into the mixes as such. */
export const waterBlockOf = (said: string, water: string): Block => ({
  block: "water",
  left: 4,
  when: "water",
  lines: [
    {
      cells: [
        { at: 0, role: "heading", text: "Water" },
        ...[1, 2, 3, 4].map((at) => ({ at, role: "heading" as const })),
      ],
    },
    ...waterInput("Dough wanted at ({temperature})", "dough_target", "temperature"),
    ...waterInput("Flour is at ({temperature})", "flour_temp", "temperature"),
    ...waterInput("Room is at ({temperature})", "room_temp", "temperature"),
    ...waterInput("Preferment is at, if any", "preferment_temp", "temperature"),
    ...waterInput("Tap water is at ({temperature})", "tap_temp", "temperature"),
    {
      cells: [
        { at: 0, role: "label", text: "Mixing" },
        { at: 2, role: "input", name: "mixing", unit: "text", choices: Object.keys(MIXINGS) },
      ],
    },
    ...waterInput("Minutes of mixing", "minutes", "minutes"),
    ...waterInput("Your own friction factor", "friction_own", "factor"),
    {
      cells: [
        { at: 0, role: "label", text: "Yeast it touches" },
        {
          at: 2,
          role: "input",
          name: "yeast",
          unit: "text",
          value: "fresh",
          choices: Object.keys(YEAST_LIMITS),
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Guide factor, low to high" },
        {
          at: 2,
          role: "computed",
          name: "friction_low",
          unit: "factor",
          spills: ["friction_usual", "friction_high"],
          formula: '=IF(LEN(@mixing)=0;"";BAKE_FRICTIONGUIDE(@mixing;@minutes;"{temperature}"))',
          plain: PLAIN_FRICTION_GUIDE,
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Factor used" },
        {
          at: 2,
          role: "computed",
          name: "friction",
          unit: "factor",
          formula: [
            // The log's line may be in other degrees; with too few mixes it is blank, and the guide stands in.
            {
              when: "mixlog",
              formula: `=IF(LEN(@friction_own)>0;@friction_own;IF(LEN(@minutes)*(COUNT(gramwright_mixlog)>3)>0;(INDEX(gramwright_mixlog;1;1)+INDEX(gramwright_mixlog;1;2)*@minutes)*IF(INDEX(gramwright_mixlog;1;5)="{temperature}";1;IF("{temperature}"="C";5/9;9/5))*${FACTORS};${GUIDE}))`,
            },
            { formula: `=IF(LEN(@friction_own)>0;@friction_own;${GUIDE})` },
          ],
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Water at ({temperature})" },
        {
          at: 2,
          role: "computed",
          name: "water_temp",
          unit: "temperature",
          formula:
            '=IF(LEN(@dough_target)*LEN(@flour_temp)*LEN(@room_temp)*LEN(@friction)=0;"";BAKE_WATERTEMP(@dough_target;@flour_temp:@preferment_temp;@friction))',
          plain: PLAIN_WATER_TEMP,
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: said },
        {
          at: 2,
          role: "computed",
          name: "water_mix",
          unit: "weight",
          formula: `=IF(COUNT(@mixes)=0;"";IF(@mixes=0;0;(${water})/@mixes))`,
        },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "of it ice, and from the tap" },
        {
          at: 2,
          role: "computed",
          name: "ice",
          unit: "weight",
          spills: ["tap_water"],
          formula:
            '=IF(LEN(@water_temp)*LEN(@tap_temp)*LEN(@water_mix)=0;"";BAKE_ICE(@water_mix;@tap_temp;@water_temp;"{temperature}"))',
          plain: PLAIN_ICE,
        },
      ],
    },
  ],
});

const ALL_WATER = 'SUMIF(@kind;"water*";@grams)';
export const waterBlock: Block = waterBlockOf("Water per mix ({weight})", ALL_WATER);
/** Where a preferment has taken its part already. */
export const finalWaterBlock: Block = waterBlockOf(
  "Water, final mix ({weight})",
  `${ALL_WATER}-IF(COUNT(@pre_water)=0;0;@pre_water)`,
);

/** What tin and water mean, in sentences. */
export const notesBlock: Block = {
  block: "notes",
  left: 0,
  lines: [
    {
      when: "tin",
      cells: [
        {
          at: 0,
          role: "remark",
          name: "tin_note",
          unit: "text",
          formula:
            '=IF(LEN(@tin_dough)*LEN(@tin_capacity)*LEN(@tin_kind)=0;"";INDEX(BAKE_TINNOTE(@tin_dough;@tin_capacity;@tin_kind;"{weight}");1;1))',
          plain: PLAIN_TIN_NOTE,
        },
      ],
    },
    {
      when: "water",
      cells: [
        {
          at: 0,
          role: "remark",
          name: "water_note",
          unit: "text",
          formula:
            '=IF(LEN(@water_temp)*LEN(@tap_temp)=0;"";BAKE_WATERNOTE(@water_temp;@tap_temp;@yeast;"{temperature}"))',
          plain: PLAIN_WATER_NOTE,
        },
      ],
    },
  ],
};

function waterInput(text: string, name: string, unit: "temperature" | "minutes" | "factor") {
  return [
    {
      cells: [
        { at: 0, role: "label" as const, text },
        { at: 2, role: "input" as const, name, unit },
      ],
    },
  ];
}
