import type { Block, Bounds, CellModel, Line, Unit } from "../../shared/sheet/model.ts";
import { MELTING, WATER_HEAT } from "../../shared/water/ice.ts";
import { MIXINGS } from "../../shared/water/temperature.ts";
import { YEAST_LIMITS } from "../../shared/water/water-note.ts";
import { headingLine, label } from "../blocks/line.ts";
import { type Single, single } from "./singles.ts";

/** A kitchen, from an open door in winter to the bread of a hot summer; what is colder or hotter is a slip. */
const KITCHEN: Bounds = [
  { when: "F", least: 14, most: 140 },
  { least: -10, most: 60 },
];
const DOUGH: Bounds = [
  { when: "F", least: 32, most: 113 },
  { least: 0, most: 45 },
];
const FACTOR: Bounds = [
  { when: "F", least: -60, most: 180 },
  { least: -30, most: 100 },
];

const AT = 2;
const thousandths = (value: number) => `(${Math.round(value * 1000)}/1000)`;
const MELTS = `${thousandths(MELTING)}/${thousandths(WATER_HEAT)}`;

function input(text: string, name: string, unit: Unit, more: Partial<CellModel> = {}): Line {
  return { cells: [label(text), { at: AT, role: "input", name, unit, ...more }] };
}

function result(text: string, name: string, unit: Unit, formula: string, role: CellModel["role"] = "strong"): Line {
  return { cells: [label(text), { at: AT, role, name, unit, formula }] };
}

function withIce(name: string): string {
  return `=IF(N(@ice)<=0;"";ROUND(@${name};IF(@${name}>=100;0;1)))`;
}

/** Water by the factor method, and the ice in it. */
export const temperatureBlock = (isStaged: boolean): Block => ({
  block: "water",
  left: 0,
  when: "water",
  lines: [
    headingLine("Dough temperature", 4),
    input("Dough temperature ({temperature})", "dough_target", "temperature", { bounds: DOUGH }),
    input("Flour ({temperature})", "flour_temp", "temperature", { bounds: KITCHEN }),
    input("Room ({temperature})", "room_temp", "temperature", { bounds: KITCHEN }),
    ...(isStaged
      ? [
          {
            ...input("Preferment ({temperature})", "preferment_temp", "temperature", { bounds: KITCHEN }),
            when: "preferment",
          },
        ]
      : []),
    input("Tap water ({temperature})", "tap_temp", "temperature", { bounds: KITCHEN }),
    {
      cells: [
        label("Mixer, minutes"),
        { at: 1, role: "input", name: "mixing", unit: "text", choices: Object.keys(MIXINGS) },
        { at: AT, role: "input", name: "minutes", unit: "minutes", bounds: [0, 120] },
      ],
    },
    {
      cells: [
        label("Friction factor"),
        { at: AT, role: "input", name: "friction_own", unit: "factor", bounds: FACTOR },
        { at: 3, role: "remark", name: "friction_note", unit: "text", formula: FRICTION_NOTE },
      ],
    },
    input("Yeast in the water", "yeast", "text", { value: "fresh", choices: Object.keys(YEAST_LIMITS) }),
    result("Water at ({temperature})", "water_temp_shown", "temperature", '=IF(LEN(@water_temp)=0;"";@water_temp)'),
    result(
      "Water of a mix ({weight})",
      "water_final_shown",
      "graded",
      '=IF(@weighable*@water_final=0;"";ROUND(@water_final;IF(@water_final>=100;0;1)))',
    ),
    // Without ice all of it is one water.
    result("of which ice ({weight})", "ice_shown", "graded", withIce("ice")),
    result("of which tap water ({weight})", "tap_water_shown", "graded", withIce("tap_water")),
  ],
});

const FRICTION_NOTE =
  '=IF(ISERROR(@friction_guide);IF(ERROR.TYPE(@friction_guide)=5;"guide needs Gramwright";@friction_guide);IF(COUNT(@friction_guide)=0;"";"guide "&ROUND(@friction_guide;1)))';

const KNOWN = "COUNT(@dough_target;@flour_temp;@room_temp;@friction_own)=4";
/** What stands there must be a temperature. */
const PREFERMENT_FITS = "*((LEN(@preferment_temp)=0)+(COUNT(@preferment_temp)=1)>0)";

const waterBy = (dough: string, fits: string) =>
  `=IF((${KNOWN})*1${fits}=1;(COUNT(${dough})+1)*@dough_target-SUM(${dough})-@friction_own;"")`;
const guideTimes = (times: string) =>
  `=IF(LEN(@mixing)=0;"";MEDIAN(BAKE_FRICTIONGUIDE(@mixing;@minutes;"{temperature}"))${times})`;

/** Three temperatures, or four with the preferment's: target × (their count + 1) less all of them and the friction. */
export const TEMPERATURE_SINGLES: readonly Single[] = [
  single("Water temperature", "water_temp", [
    { when: "preferment", formula: waterBy("@flour_temp;@room_temp;@preferment_temp", PREFERMENT_FITS) },
    { formula: waterBy("@flour_temp;@room_temp", "") },
  ]),
  // Melting a gram of ice cools as much water by so many degrees.
  single("Ice takes so many degrees", "ice_degrees", [
    { when: "F", formula: `=9/5*${MELTS}` },
    { formula: `=${MELTS}` },
  ]),
  single("Ice is at", "ice_at", [{ when: "F", formula: "=32" }, { formula: "=0" }]),
  single(
    "Ice, of the water",
    "ice_share",
    '=IF(COUNT(@water_temp;@tap_temp)<2;"";IF(@tap_temp<@ice_at;"";IF(@water_temp>=@tap_temp;0;(@tap_temp-@water_temp)/(@tap_temp-@ice_at+@ice_degrees))))',
  ),
  single(
    "Ice of a mix",
    "ice",
    '=IF((COUNT(@ice_share)=0)+(@weighable=0)>0;"";IF(@ice_share>1;"";@ice_share*@water_final))',
  ),
  single("Tap water of a mix", "tap_water", '=IF(COUNT(@ice)=0;"";@water_final-@ice)'),
  single(
    "Note on the water",
    "water_advice",
    '=IF(COUNT(@water_temp;@tap_temp)<2;"";BAKE_WATERNOTE(@water_temp;@tap_temp;@yeast;"{temperature}"))',
  ),
  single("Guide to friction", "friction_guide", [
    // A factor is told for three temperatures; a preferment's is the fourth.
    { when: "preferment", formula: guideTimes("*IF(COUNT(@preferment_temp)=0;1;4/3)") },
    { formula: guideTimes("") },
  ]),
  single(
    "Result, second half",
    "result_water",
    '=IF((LEN(@water_temp)=0)+(@weighable=0)>0;"";" · water at "&ROUND(@water_temp;1)&" °{temperature}, "&@water_words&" a mix")',
  ),
  single("Water in words", "water_words", [
    { when: "oz", formula: '=IF(@water_final<16;ROUND(@water_final;1)&" oz";ROUND(@water_final/16;2)&" lb")' },
    { formula: '=IF(@water_final<1000;ROUND(@water_final;0)&" g";ROUND(@water_final/1000;2)&" kg")' },
  ]),
];
