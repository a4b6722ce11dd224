// Single figures that the sheet works with, beside its first four rows: a name over each.
import type { Block, CellModel, Condition, Formula } from "../../shared/sheet/model.ts";
import { HELPERS } from "./columns.ts";
import { countedIn, type FormulaSheetSpec, wholeOf } from "./spec.ts";
import { typeWords } from "./words.ts";

/** One without a formula keeps what it was built with. */
export type Single = {
  readonly says: string;
  readonly name: string;
  readonly formula?: Formula;
  readonly when?: Condition;
};
export const single = (says: string, name: string, formula: Formula): Single => ({ says, name, formula });
export const storedSingle = (says: string, name: string): Single => ({ says, name });
/** Figures that are there with a part, or ("!part") without it. */
export const only = (when: Condition, some: readonly Single[]): readonly Single[] =>
  some.map((one) => ({ ...one, when: one.when === undefined ? when : `${when}&${one.when}` }));

/** Two above each other in every column. */
export function singlesBlock(singles: readonly Single[]): Block {
  const [upper, lower] = [0, 1].map((half) => singles.filter((_, at) => at % 2 === half)) as [Single[], Single[]];
  const heads = (some: readonly Single[]): CellModel[] =>
    some.map(({ says, when }, at) => ({ at, role: "helper", text: says, ...defined({ when }) }));
  const values = (some: readonly Single[]): CellModel[] =>
    some.map(({ name, formula, when }, at) => ({
      at,
      role: "helper",
      name,
      unit: "plain",
      ...defined({ formula, when }),
    }));
  return {
    block: "helpers",
    left: HELPERS,
    close: true,
    lines: [
      { cells: [...heads(upper), ...typeWords(upper.length)] },
      { cells: values(upper) },
      { cells: heads(lower) },
      { cells: values(lower) },
    ],
  };
}

/** Without what is undefined. */
const defined = <T extends object>(parts: T): { [K in keyof T]?: Exclude<T[K], undefined> } =>
  Object.fromEntries(Object.entries(parts).filter(([, part]) => part !== undefined)) as never;

const FLOUR = "(@flour_part=1)*1";
const of = (...words: readonly string[]) => words.map((word) => `(@type_word="${word}")`).join("+");
const ALL_WATER = `SUMPRODUCT((${of("water", "ice")})*1;@share_typed)+SUMPRODUCT((@flour_part>0)*(1-@flour_part);@share_typed)`;

/** From the order and the percentages to grams, mixes and what may be shown. */
export const orderSingles = (spec: FormulaSheetSpec): readonly Single[] => [
  single("Handling loss", "handling", "=IF(ISNUMBER(@handling_loss);MAX(0;MIN(@handling_loss;3/10));0)"),
  single("Coarse step", "coarse", [
    { when: "oz", formula: "=IF(N(@step_coarse)>0;@step_coarse;1/10)" },
    { formula: "=IF(N(@step_coarse)>0;@step_coarse;1)" },
  ]),
  single("Fine step", "fine", "=IF(N(@step_fine)>0;@step_fine;@coarse)"),
  // A weight may be moved by 2 %, as BAKE_SCALEROUND has it.
  single("A step may move by", "shift", "=1/50*(1+1/10^9)"),
  single("Flour added", "flour_added", `=SUMPRODUCT(${FLOUR};@share_typed)`),
  single("All flour", "flour_all", "=SUMPRODUCT(@flour_part;@share_typed)"),
  // What boils down, or stays in the pan, is a filling or an icing that other formulas use: it may do without flour.
  single(
    "Needs no flour",
    "needs_no_flour",
    "=IF((SUM(@share_typed)=0)+(COUNT(@boil_off;@left_over)>0)*(@flour_all=0)>0;1;0)",
  ),
  single("100 % is typed as", "percent_base", "=IF((@flour_all>10)+@needs_no_flour*(SUM(@share_typed)>10)>0;100;1)"),
  single(
    "Flour that is 100 %",
    "flour_base",
    "=IF(ABS(@flour_all-@percent_base)<ABS(@flour_added-@percent_base);@flour_all;@flour_added)",
  ),
  single("Dough of the sizes", "sizes_dough", "=SUM(@size_exact)"),
  ...doughSingles(spec),
  // One size that cannot be read would shift the shares of all others, and by pieces the dough itself.
  single("Sizes that cannot be read", "bad_sizes", "=SUMPRODUCT((LEN(@size_needs)>0)*1)"),
  single(
    "Times the sizes",
    "sizes_times",
    `=IF(@by="pieces";1;IF((@sizes_dough>0)*(@bad_sizes=0)=1;${wholeOf(spec)}/MAX(@sizes_dough;1/10^9);0))`,
  ),
  single("Weight of a typed 1", "per_percent", "=IF(SUM(@share_typed)>0;@dough_exact/MAX(SUM(@share_typed);1/10^9);0)"),
  single(
    "Mixes, at least 1",
    "mixes_some",
    "=IF(N(@mixer_limit)>0;MAX(1;ROUNDUP(@dough_exact/MAX(N(@mixer_limit);1/10^9)*(1-1/10^9);0));1)",
  ),
  single("Rows that cannot be read", "bad_rows", "=SUMPRODUCT((LEN(@number_says)>0)*1)"),
  single("Types that are not known", "bad_types", "=SUMPRODUCT((LEN(@type_says)>0)*1)"),
  single(
    "May be weighed",
    "weighable",
    '=IF((@dough_exact>0)*(SUM(@share_typed)>0)*IF(@by="flour";@bad_types=0;@bad_rows=0)*((@by<>"pieces")+(@bad_sizes=0)>0)=1;1;0)',
  ),
  single("Dough, or blank", "dough", '=IF(@weighable=1;@dough_exact;"")'),
  single("Mixes", "mixes", '=IF(@weighable=1;@mixes_some;"")'),
  single("Pieces", "pieces", piecesFormula(spec)),
  single("Hydration", "hydration", `=IF((@flour_all>0)*@weighable=1;(${ALL_WATER})/MAX(@flour_all;1/10^9);"")`),
  single("Water poured", "water_all", `=SUMPRODUCT((${of("water")})*1;@exact)`),
  single("Water of a mix", "water_mix", "=@water_all/@mixes_some"),
  single("Yeast of a mix", "yeast_mix", `=SUMPRODUCT((${of("yeast")})*1;@exact)/@mixes_some`),
  ...(spec.isBread ? HELD_SINGLES : []),
  ...(spec.hasEggs ? EGG_SINGLES : []),
  single("Least piece", "size_least", [{ when: "oz", formula: "=1/5" }, { formula: "=5" }]),
  single("Largest piece", "size_most", [{ when: "oz", formula: "=700" }, { formula: "=20000" }]),
];

const HELD_SINGLES: readonly Single[] = [
  single("Held back of a mix", "held_exact", "=@water_final*N(@held_share)*@weighable"),
  single("Held back, on the scale", "held", "=ROUND(ROUND(@held_exact/@coarse;9);0)*@coarse"),
];

/** A mix's eggs by number. */
const EGG_SINGLES: readonly Single[] = [
  single("Egg of a mix", "egg_mix", `=SUMPRODUCT((${of("egg")})*1;@exact)/@mixes_some`),
  single("Eggs of a mix", "eggs", '=IF((@weighable=1)*(@egg_mix>0)*(N(@egg_weight)>0)=1;@egg_mix/@egg_weight;"")'),
];

/** By flour it follows from the flour; otherwise it is what is ordered, less what is rolled in later. */
function doughSingles(spec: FormulaSheetSpec): readonly Single[] {
  const counted = countedIn(spec);
  const byFlour = "N(@amount)*SUM(@share_typed)/MAX(@flour_base;1/10^9)";
  const byCount = counted === undefined ? "0" : `IF(@by="${counted}";N(@amount)*@tin_takes/(1-@handling);0)`;
  const ordered = `IF(@by="pieces";@sizes_dough;IF(@by="${spec.mix}";N(@amount);${byCount}))`;
  const less = spec.isRolled ? "/(1+@roll_part)" : "";
  return [
    single("Ordered", "dough_ordered", `=${ordered}`),
    single("All that is mixed", "dough_exact", `=IF(@by="flour";IF(@flour_base>0;${byFlour};0);@dough_ordered${less})`),
  ];
}

function piecesFormula(spec: FormulaSheetSpec): string {
  const counted = countedIn(spec);
  const counts =
    counted === undefined ? "" : `IF(@by="${counted}";N(@amount)${counted === "trays" ? "*@tray_holds" : ""};`;
  return `=IF(@weighable=0;"";${counts}IF(SUM(@pieces_now)>0;SUM(@pieces_now);"")${counts === "" ? "" : ")"})`;
}

/** Where the sheet of ingredients has its names and prices. */
export const LARDER_SINGLES: readonly Single[] = [
  single(
    "Prices, in column",
    "larder_price",
    '=IFERROR(MATCH("Price per kg";INDEX(gramwright_prices;1;0);0);MATCH("Price per lb";INDEX(gramwright_prices;1;0);0))',
  ),
  single("Names, in column", "larder_names", '=MATCH("Ingredient";INDEX(gramwright_labels;1;0);0)'),
  single("Other names, in column", "larder_also", '=MATCH("Also called";INDEX(gramwright_labels;1;0);0)'),
  // 1 lb is 0.45359237 kg (international yard and pound agreement, 1959).
  single("Prices, times", "larder_factor", [
    { when: "oz", formula: '=IF(INDEX(gramwright_prices;1;@larder_price)="Price per lb";1;45359237/10^8)' },
    { formula: '=IF(INDEX(gramwright_prices;1;@larder_price)="Price per kg";1;10^8/45359237)' },
  ]),
];

const kilos = (weight: string): Formula => [
  { when: "oz", formula: `=IF(${weight}<16;ROUND(${weight};1)&" oz";ROUND(${weight}/16;2)&" lb")` },
  { formula: `=IF(${weight}<1000;ROUND(${weight};0)&" g";ROUND(${weight}/1000;2)&" kg")` },
];

/** The result in words. */
export const resultSingles = (spec: FormulaSheetSpec): readonly Single[] => [
  single("All of it in words", "dough_words", kilos(wholeOf(spec))),
  single("A mix in words", "mix_words", kilos("@dough_exact/@mixes_some")),
  single("Left over", "left_exact", `=MAX(0;${wholeOf(spec)}-SUMPRODUCT(@pieces_now;@scaling)/(1-@handling))`),
  single("Left over in words", "left_words", kilos("@left_exact")),
  single("How many, in words", "many_words", manyWords(countedIn(spec))),
  single(
    "Result, first half",
    "result_order",
    `=IF(@weighable=0;"";@many_words&@dough_words&" ${spec.isRolled ? "dough with its fat" : spec.mix}"&IF(@mixes_some>1;", "&@mixes_some&" mixes of "&@mix_words;"")&@left_over_says)`,
  ),
  single(
    "Left over, if any",
    "left_over_says",
    '=IF((@by="pieces")+(@left_exact<1)+(SUM(@pieces_now)=0)>0;"";" · "&@left_words&" left over")',
  ),
];

function manyWords(counted: "tins" | "trays" | undefined): string {
  const pieces = 'IF(COUNT(@pieces)=0;"";@pieces&IF(@pieces=1;" piece · ";" pieces · "))';
  return counted === undefined ? `=${pieces}` : `=IF(@by="${counted}";@amount&" ${counted} · ";${pieces})`;
}

/** Where eggs and milk bring water, what is poured is not the dough's hydration. */
export const hydrationWords = ({ isEnriched }: FormulaSheetSpec): string =>
  `=IF((@weighable=0)+(COUNT(@hydration)=0)>0;"";" · ${isEnriched ? "plain water" : "hydration"} "&ROUND(100*@hydration;1)&" %")`;
