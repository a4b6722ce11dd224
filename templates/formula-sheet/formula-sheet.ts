// A formula sheet put together: what is typed and shown on the page, and beside it all that the sheet works with.
import type { Band, Block, SheetModel, Table } from "../../shared/sheet/model.ts";
import { labelBlock, labelCautions } from "../blocks/label.ts";
import type { Labelled } from "../blocks/label-needs.ts";
import { cautionsOf } from "../blocks/name.ts";
import { nutritionHeading, nutritionTable } from "../blocks/nutrition.ts";
import { checkSingles, errorSingles } from "./checks.ts";
import { ASIDE_PLACES, FOLDED_FROM, PAGE_WIDTHS, RIGHT } from "./columns.ts";
import { costSingles } from "./costs.ts";
import { ENRICHED_CALLS, ENRICHED_SINGLES, enrichedBlock } from "./enriched.ts";
import { formulaChecks, isCall, remarksOf, topsOf } from "./formula-check.ts";
import { type IngredientsSpec, ingredientsHelpers } from "./ingredient-helpers.ts";
import { ingredientsTable } from "./ingredients.ts";
import { levainBlock } from "./levain.ts";
import { withChecks } from "./line-checks.ts";
import { methodHelpers, methodSingles, methodTable, NO_METHOD, ovenBlock, readyBlock, TRAY_SINGLES } from "./method.ts";
import { NOTE_SINGLES, notesBlock } from "./notes.ts";
import { titleBlock, underBlock } from "./order.ts";
import { staleSingles } from "./outdated-figures.ts";
import { asIngredientSingles, ownTable } from "./own-formulas.ts";
import { NO_PREFERMENT, PREFERMENT_TIME, prefermentBlock, prefermentSingles } from "./preferment.ts";
import { ROLL_SINGLES, rollInBlock } from "./roll-in.ts";
import { ROUND_SINGLES, thicknessBlock } from "./rounds.ts";
import { MARK_SINGLES, marksOf, withMarks } from "./row-marks.ts";
import { costsBlock, setupBlock } from "./setup.ts";
import {
  hydrationWords,
  LARDER_SINGLES,
  only,
  orderSingles,
  resultSingles,
  type Single,
  single,
  singlesBlock,
} from "./singles.ts";
import { sizesHelpers, sizesTable } from "./sizes.ts";
import type { FormulaSheetSpec } from "./spec.ts";
import { TEMPERATURE_SINGLES, temperatureBlock } from "./temperature.ts";
import { NO_TIN, TIN_SINGLES, tinBlock } from "./tin.ts";

/** What a label is made from: the rows that count, and what is sold of them. */
const labelledOf = (spec: FormulaSheetSpec): Labelled => ({
  whole: spec.isRolled ? "@dough_in_all" : "@dough",
  each: "@size_scaled",
  sold: !spec.isRound,
  rows: { names: "@name_counted", kinds: "@kind_counted" },
  ...(spec.isRolled ? { extra: { name: "@roll_in_name", weight: "@roll_in", kind: "fat" } } : {}),
});

/** Beside the page, the helpers of the widest sheet. */
const HELPER_WIDTH = 76;
const HELPER_COLUMNS = 127;

export function formulaSheet(spec: FormulaSheetSpec): SheetModel {
  const { name, title, says, group, sample, expects } = spec;
  return {
    name,
    title,
    says,
    group,
    widths: [...PAGE_WIDTHS, ...Array<number>(HELPER_COLUMNS).fill(HELPER_WIDTH)],
    parts: [
      ...(spec.tin === undefined ? [] : ["tin"]),
      ...(spec.stage === undefined ? [] : ["preferment"]),
      ...(spec.isBread ? ["water"] : []),
      "steps",
      "cost",
      "label",
    ],
    frozen: 3,
    fillsFirst: ["size_pieces", spec.isRound ? "size_diameter" : "size_weight", "ingredient"],
    foldedFrom: FOLDED_FROM,
    mark: markOf(title),
    gap: 9,
    places: ASIDE_PLACES,
    bands: bandsOf(spec),
    sample,
    expects,
  };
}

/** Tables by whether a preferment is set apart, and whether there is a sheet of ingredients. */
function ingredientBands({ style, stage, mix, isRolled }: FormulaSheetSpec): Band[] {
  const common = { style, most: mix === "batter" ? 6 : 2, ...(isRolled ? { noted: "roll-in" as const } : {}) };
  const staged = stage === "levain" ? [{ stage, noted: stage }] : stage === undefined ? [] : [{ stage }];
  const specs: IngredientsSpec[] = [{}, ...staged].flatMap((one) =>
    [false, true].map((isPriced) => ({ ...common, ...one, isPriced })),
  );
  return specs.map((one) => [ingredientsTable(one), marksOf(ingredientsTable(one)), ...ingredientsHelpers(one)]);
}

/** What stands beside the dough's temperature. */
function besideBlock(spec: FormulaSheetSpec): readonly Block[] {
  const { tin, stage, mix } = spec;
  if (tin !== undefined) return [tinBlock(tin, mix, spec.isBread ? RIGHT : 0)];
  if (stage !== undefined) return [stage === "levain" ? levainBlock : prefermentBlock];
  if (spec.isEnriched) return [enrichedBlock];
  if (spec.isRolled) return [rollInBlock];
  return spec.isRound ? [thicknessBlock] : [];
}

const withBlocks = (...blocks: readonly Block[]): readonly Band[] =>
  blocks.length === 0 ? [] : [blocks.map(withChecks)];

function bandsOf(spec: FormulaSheetSpec): readonly Band[] {
  const temperature = spec.isBread ? [temperatureBlock(spec.stage !== undefined)] : [];
  const labelled = labelledOf(spec);
  const last: readonly Band[] = [[labelBlock(labelled)], [nutritionHeading], [nutritionTable(labelled)]];
  const blocks: readonly Band[] = [
    ...withBlocks(...temperature, ...besideBlock(spec)),
    ...withBlocks(notesBlock),
    ...withBlocks(readyBlock, ovenBlock(spec.bakedOn)),
    [methodTable, marksOf(methodTable), ...methodHelpers],
    [...[setupBlock, costsBlock].map(withChecks), ownTable],
  ];
  const tables: readonly Band[] = [
    [sizesTable(spec), marksOf(sizesTable(spec)), ...sizesHelpers(spec)],
    ...ingredientBands(spec),
  ];
  const top = titleBlock(spec);
  const cautions = cautionsOf(...spec.cautions);
  const end: Block = { ...cautions, lines: [...cautions.lines, ...labelCautions] };
  const singles = singlesBlock(singlesOf([[top], ...tables, ...blocks], spec));
  const below = [...blocks, ...last, [end]].map((band) => band.map(marked));
  return [[top, singles], ...tables, [withMarks(withChecks(underBlock(spec)), true)], ...below];
}

/** Two templates may look alike once a part is left out; this tells them apart. */
const markOf = (title: string) => `Built as ${title.toLowerCase()}`;

function stageSingles({ stage }: FormulaSheetSpec): readonly Single[] {
  if (stage === undefined) return NO_PREFERMENT;
  return [
    ...only("preferment", prefermentSingles(stage)),
    ...only("!preferment", NO_PREFERMENT),
    ...only("preferment&steps", PREFERMENT_TIME),
  ];
}

function ownSingles(spec: FormulaSheetSpec): readonly Single[] {
  return [
    ...(spec.isRound ? ROUND_SINGLES : []),
    ...(spec.isRolled ? ROLL_SINGLES : []),
    ...(spec.isEnriched ? ENRICHED_SINGLES : []),
    ...(spec.bakedOn === "trays" ? TRAY_SINGLES : []),
    ...(spec.tin === undefined ? [] : [...only("tin", TIN_SINGLES), ...only("!tin", NO_TIN)]),
  ];
}

const marked = (item: Block | Table): Block | Table => ("lines" in item ? withMarks(item) : item);

/** Every single figure; those of a part are there with it. Last come those that see whether all formulas are there. */
function singlesOf(bands: readonly Band[], spec: FormulaSheetSpec): readonly Single[] {
  const figures: readonly Single[] = [
    ...orderSingles(spec),
    ...ownSingles(spec),
    ...stageSingles(spec),
    ...costSingles(spec),
    ...asIngredientSingles(spec),
    ...only("cost", LARDER_SINGLES),
    ...only("steps", methodSingles(spec.bakedOn)),
    ...only("!steps", NO_METHOD),
    ...resultSingles(spec),
    ...(spec.isBread ? only("water", TEMPERATURE_SINGLES) : []),
    single("Result, hydration", "result_hydration", spec.isBread ? hydrationWords(spec) : '=""'),
    single("Result, all that follows", "result_more", [
      { when: "water", formula: "=@result_hydration&@result_water" },
      { formula: "=@result_hydration" },
    ]),
    single("What the notes say", "advice_says", ADVICE),
    ...NOTE_SINGLES,
    single(markOf(spec.title), "mark", `="${spec.style}"`),
    ...staleSingles(spec),
    ...checkSingles(spec),
    ...MARK_SINGLES,
    ...errorSingles(spec.isEnriched ? ENRICHED_CALLS : []),
  ];
  const computed = figures.filter(({ formula }) => formula !== undefined && !isCall(formula));
  const others = [...topsOf(bands), ...remarksOf(bands), ...computed, { name: "result" }, { name: "total_label" }];
  return [...figures, ...formulaChecks(others)];
}

const ADVICE =
  '=IF(ISERROR(@advice_top);IF(IFERROR(ERROR.TYPE(@advice_top);0)=5;"Notes need Gramwright";"Notes: still calculating, or point at "&ADDRESS(ROW(@advice_top);COLUMN(@advice_top);4));"")';
