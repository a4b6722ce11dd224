import type { Formula } from "../../shared/sheet/model.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind, tinGuide } from "../../shared/tins/tin-guide.ts";
import type { Figure } from "./plain-steps.ts";

// The tin in the sheet's own sums, as shared/tins/tin.ts and shared/tins/tin-guide.ts have it.

const KINDS = Object.keys(TIN_DOUGH_KINDS) as TinDoughKind[];
const BATTERS = ["layer cake", "pound cake", "muffin", "sponge", "brownie"] satisfies TinDoughKind[];
/** A fill of the guide without a decimal sign. */
const fraction = (fill: number) => `${Math.round(fill * 100)}/100`;

/** Low, usual and high fill of the kinds in the list. */
export const PLAIN_GUIDE: readonly Formula[] = [0, 1, 2].map(
  (place) =>
    `=SWITCH(@tin_kind;${KINDS.map((kind) => `"${kind}";${fraction(tinGuide(kind)[place] ?? 0)}`).join(";")};"")`,
);

const ALL = "@tin_size_1:@tin_size_5";
const [a, b, c] = ["@tin_size_1", "@tin_size_2", "@tin_size_3"];
const EXTRA = "COUNT(@tin_size_4;@tin_size_5)";
const TOP_AND_BASE = `(COUNT(${a};${b};${c})=3)*(${EXTRA}<>1)`;

/** 1 where the sizes are those the shape takes, none missing and none too many. */
const FITS: Readonly<Record<string, string>> = {
  box: TOP_AND_BASE,
  oval: TOP_AND_BASE,
  round: `(COUNT(${a};${b})=2)*(${EXTRA}=0)*(${b}<=${a})*(IF(COUNT(${c})=0;${a};${c})>=${a}/4)`,
  ring: `${TOP_AND_BASE}*(${b}<${a})*(@tin_base_2<@tin_base_1)`,
  dome: `(COUNT(${a})=1)*(COUNT(${c})+${EXTRA}=0)*(${b}<=${a}/2*(1+1/1000000000))`,
  wreath: `(COUNT(${a};${b})=2)*(COUNT(${c})+${EXTRA}=0)*(${b}<=${a}/2)`,
  polygon: `(COUNT(${a};${b};${c})=3)*(${EXTRA}=0)*(${a}>=3)*(INT(${a})=${a})`,
  water: `(COUNT(${a})=1)*(COUNT(${b};${c})+${EXTRA}=0)`,
};

const byShape = (each: Readonly<Record<string, string>>, otherwise: string) =>
  `SWITCH(@tin_shape;${Object.entries(each)
    .map(([shape, formula]) => `"${shape}";${formula}`)
    .join(";")};${otherwise})`;

/** Frustum rule: top, base, and four times the middle, over six. */
const frustum = (l: string, w: string, bl: string, bw: string) => `(${l}*${w}+${bl}*${bw}+(${l}+${bl})*(${w}+${bw}))/6`;
/** 1 in is 2.54 cm; 1 cm³ of water at 20 °C weighs 0.998207 g. */
const CAPACITY = (cubed: string): string => {
  const base = `IF(COUNT(${c})=0;${a};${c})`;
  const rim = `${a}/2`;
  const depth = `IF(COUNT(${b})=0;${a}/2;${b})`;
  const length: Readonly<Record<string, string>> = {
    box: `${c}*${frustum(a, b, "@tin_base_1", "@tin_base_2")}`,
    oval: `PI()/4*${c}*${frustum(a, b, "@tin_base_1", "@tin_base_2")}`,
    round: `PI()/4*${b}*${frustum(a, a, base, base)}`,
    ring: `PI()/4*${c}*(${frustum(a, a, "@tin_base_1", "@tin_base_1")}-${frustum(b, b, "@tin_base_2", "@tin_base_2")})`,
    dome: `PI()*${depth}/6*(3*(${rim})^2+${depth}^2)`,
    wreath: `PI()^2*(${a}-${b})/2*(${b}/2)^2`,
    polygon: `${a}*${b}^2/(4*TAN(PI()/${a}))*${c}`,
  };
  const cubic = Object.fromEntries(Object.entries(length).map(([shape, formula]) => [shape, `${formula}${cubed}`]));
  return `=IF(@tin_fits<>1;"";${byShape({ ...cubic, water: `${a}*1000000/998207` }, '""')})`;
};

export const PLAIN_CAPACITY: readonly Formula[] = [
  [{ when: "in", formula: CAPACITY("*(254/100)^3") }, { formula: CAPACITY("") }],
];
export const PLAIN_CAPACITY_NOTE = `=IF(COUNTIF(${ALL};"<>")=0;"";IF(@tin_fits=1;"";"sizes do not fit the shape"))`;

export const TIN_FIGURES: readonly Figure[] = [
  { says: "Tin: base length or diameter", name: "tin_base_1", formula: base("@tin_size_4", a), when: "tin" },
  { says: "Tin: base width or tube", name: "tin_base_2", formula: base("@tin_size_5", b), when: "tin" },
  {
    says: "Tin: 1 where its sizes fit",
    name: "tin_fits",
    formula: `=IF((COUNTIF(${ALL};"<>")=COUNT(${ALL}))*(COUNT(${ALL})>0)*(COUNTIF(${ALL};"<=0")=0)=0;0;${byShape(FITS, "0")})`,
    when: "tin",
  },
  {
    says: "Tin: dough over capacity",
    name: "tin_fill_now",
    when: "tin",
    formula: [{ when: "oz", formula: filled("*28349523125/1000000000") }, { formula: filled("") }],
  },
];

function base(typed: string, top: string): string {
  return `=IF(COUNT(${typed})=0;IF(COUNT(${top})=0;"";${top});${typed})`;
}

function filled(inGrams: string): string {
  return `=IF(COUNT(@tin_dough;@tin_capacity)<2;"";@tin_dough${inGrams}/@tin_capacity)`;
}

const RANGE = '"("&@guide_low&" to "&@guide_high&")"';
const IS_BATTER = `(${BATTERS.map((kind) => `(@tin_kind="${kind}")`).join("+")})>0`;
/** Half a hundredth of g/cm³ counts as on the guide. */
const STEP = "5/1000";

/** The sentence of tinNote() in shared/tins/tin-guide.ts. */
function note(unit: "g" | "oz"): string {
  const weight = (guide: string) =>
    unit === "g"
      ? `ROUND(${guide}*@tin_capacity;0)&" g"`
      : `ROUND(${guide}*@tin_capacity*1000000000/28349523125;2)&" oz"`;
  return [
    '=IF(COUNT(@tin_fill_now;@guide_low)<2;"";IF((@tin_fill_now<5/100)+(@tin_fill_now>2)>0;',
    '"Fill "&ROUND(@tin_fill_now;2)&" g/cm³ is no dough in a tin: look at the sizes and the weight.";',
    '"Fill "&ROUND(@tin_fill_now;2)&" g/cm³, "&',
    `IF(@tin_fill_now>@guide_high+${STEP};"above the guide for "&@tin_kind&" "&${RANGE}&": "&IF(${IS_BATTER};"it may run over the rim and sink";"expect a dense, under-proofed loaf, or dough over the rim");`,
    `IF(@tin_fill_now<@guide_low-${STEP};"below the guide for "&@tin_kind&" "&${RANGE}&": expect a low "&IF(${IS_BATTER};"cake that dries out";"loaf that does not fill the tin");`,
    `IF(ABS(@tin_fill_now-@guide_usual)<=${STEP};"the usual one for "&@tin_kind&" "&${RANGE};`,
    `"within the guide for "&@tin_kind&" "&${RANGE}&", "&IF(@tin_fill_now>@guide_usual;"on the full side";"on the light side"))))`,
    `&"; usual here is "&${weight("@guide_usual")}&" ("&${weight("@guide_low")}&" to "&${weight("@guide_high")}&")."))`,
  ].join("");
}

export const PLAIN_TIN_NOTE: readonly Formula[] = [[{ when: "oz", formula: note("oz") }, { formula: note("g") }]];
