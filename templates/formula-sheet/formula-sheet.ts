// A formula sheet put together: what is typed and shown on the page, and beside it all that the sheet works with.
import type { Band, Block, SheetModel, Table } from "../../shared/sheet/model.ts";
import type { CostedCells } from "../blocks/costed-cells.ts";
import { labelBlock, labelCautions, nutritionBlock } from "../blocks/label.ts";
import { CAUTIONS, cautionsOf } from "../blocks/name.ts";
import { CHECK_SINGLES, ERROR_SINGLES } from "./checks.ts";
import { FOLDED_FROM, HELPERS, MESSAGES, PAGE_WIDTHS } from "./columns.ts";
import { type IngredientsSpec, ingredientsHelpers, ingredientsTable } from "./ingredients.ts";
import { formulaChecks, isCall, remarksOf, topsOf } from "./intact.ts";
import { withChecks } from "./line-checks.ts";
import { MARK_SINGLES, marksOf, withMarks } from "./marks.ts";
import { METHOD_SINGLES, methodHelpers, methodTable, NO_METHOD, ovenBlock, readyBlock } from "./method.ts";
import { heldBlock, sizesHelpers, sizesTable, titleBlock } from "./order.ts";
import { NO_PREFERMENT, PREFERMENT_SINGLES, PREFERMENT_TIME, prefermentBlock } from "./preferment.ts";
import { costsBlock, setupBlock } from "./setup.ts";
import {
  COST_SINGLES,
  HYDRATION_WORDS,
  LARDER_SINGLES,
  ORDER_SINGLES,
  only,
  RESULT_SINGLES,
  type Single,
  single,
  singlesBlock,
} from "./singles.ts";
import { STALE_SINGLES } from "./stale.ts";
import { notesBlock, TEMPERATURE_SINGLES, temperatureBlock } from "./temperature.ts";
import { NO_TIN, TIN_SINGLES, tinBlock } from "./tin.ts";

export type FormulaSheetSpec = {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly group: string;
  /** Which bread's usual figures the notes go by. */
  readonly style: string;
  /** What it is baked in: a tin that it fills, of this type of dough; or on the oven's floor. */
  readonly tin?: string;
  /** A preferment may be set apart. */
  readonly hasPreferment: boolean;
  readonly sample: SheetModel["sample"];
  readonly expects: SheetModel["expects"];
};

/** What a label is made from: the rows that count, and what is sold of them. */
const LABELLED: CostedCells = {
  whole: "@dough",
  each: "@size_scaled",
  names: "@cost_of",
  sold: true,
  rows: { names: "@name_counted", kinds: "@kind_counted" },
};

/** Beside the page, the helpers of the widest sheet. */
const HELPER_WIDTH = 76;
const HELPER_COLUMNS = 120;

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
      ...(spec.hasPreferment ? ["preferment"] : []),
      "water",
      "steps",
      "cost",
      "label",
    ],
    frozen: 3,
    fillsFirst: ["size_pieces", "size_weight", "ingredient"],
    foldedFrom: FOLDED_FROM,
    mark: markOf(spec.style),
    gap: 9,
    places: [
      ...(["left", "right"] as const).flatMap((side) => [
        { name: `${side}_says`, row: 3, column: MESSAGES[side], columns: 1 },
        { name: `${side}_rows`, row: 3, column: MESSAGES[side] + 1, columns: 1 },
      ]),
      { name: "both_rows", row: 3, column: MESSAGES.left + 1, columns: 3 },
      { name: "singles_upper", row: 1, column: HELPERS, rows: 1 },
      { name: "singles_lower", row: 3, column: HELPERS, rows: 1 },
    ],
    bands: bandsOf(spec),
    sample,
    expects,
  };
}

/** Tables by whether a preferment is set apart, and whether there is a sheet of ingredients. */
function ingredientBands(spec: FormulaSheetSpec): Band[] {
  const specs: IngredientsSpec[] = (spec.hasPreferment ? [false, true] : [false]).flatMap((isStaged) =>
    [false, true].map((isPriced) => ({ style: spec.style, isStaged, isPriced })),
  );
  return specs.map((one) => [ingredientsTable(one), marksOf(ingredientsTable(one)), ...ingredientsHelpers(one)]);
}

function bandsOf(spec: FormulaSheetSpec): readonly Band[] {
  const { tin, hasPreferment, title } = spec;
  const right: readonly Block[] = tin === undefined ? (hasPreferment ? [prefermentBlock] : []) : [tinBlock(tin)];
  const blocks: readonly Band[] = [
    [temperatureBlock(hasPreferment), ...right].map(withChecks),
    [withChecks(notesBlock)],
    [readyBlock, ovenBlock(tin === undefined ? "pieces" : "tins")].map(withChecks),
    [methodTable, marksOf(methodTable), ...methodHelpers],
    [setupBlock, costsBlock].map(withChecks),
    [labelBlock(LABELLED)],
    [nutritionBlock(LABELLED)],
  ];
  const tables: readonly Band[] = [[sizesTable, marksOf(sizesTable), ...sizesHelpers], ...ingredientBands(spec)];
  const top = titleBlock(title, { hasTins: tin !== undefined });
  const cautions = cautionsOf(CAUTIONS.raw, CAUTIONS.guides, CAUTIONS.oven);
  const last: Block = { ...cautions, lines: [...cautions.lines, ...labelCautions] };
  const singles = singlesBlock(singlesOf([[top], ...tables, ...blocks.slice(0, -2)], spec.style));
  const below = [...blocks, [last]].map((band) => band.map(marked));
  return [[top, singles], ...tables, [withMarks(withChecks(heldBlock), true)], ...below];
}

const marked = (item: Block | Table): Block | Table => ("lines" in item ? withMarks(item) : item);

/** Every single figure; those of a part are there with it. Last come those that see whether all formulas are there. */
const markOf = (style: string) => `Notes are for ${style}`;

function singlesOf(bands: readonly Band[], style: string): readonly Single[] {
  const figures: readonly Single[] = [
    ...ORDER_SINGLES,
    ...only("tin", TIN_SINGLES),
    ...only("!tin", NO_TIN),
    ...only("preferment", PREFERMENT_SINGLES),
    ...only("!preferment", NO_PREFERMENT),
    ...COST_SINGLES,
    ...only("cost", LARDER_SINGLES),
    ...only("steps", METHOD_SINGLES),
    ...only("!steps", NO_METHOD),
    ...only("preferment&steps", PREFERMENT_TIME),
    ...RESULT_SINGLES,
    ...only("water", TEMPERATURE_SINGLES),
    single("Result, hydration", "result_hydration", HYDRATION_WORDS),
    single("Result, all that follows", "result_more", [
      { when: "water", formula: "=@result_hydration&@result_water" },
      { formula: "=@result_hydration" },
    ]),
    single("What the notes say", "advice_says", ADVICE),
    // Two templates may look alike once a part is left out; this tells them apart.
    single(markOf(style), "style", `="${style}"`),
    ...STALE_SINGLES,
    ...CHECK_SINGLES,
    ...MARK_SINGLES,
    ...ERROR_SINGLES,
  ];
  const computed = figures.filter(({ formula }) => formula !== undefined && !isCall(formula));
  const others = [...topsOf(bands), ...remarksOf(bands), ...computed, { name: "result" }, { name: "total_label" }];
  return [...figures, ...formulaChecks(others)];
}

const ADVICE =
  '=IF(ISERROR(@advice_top);IF(ERROR.TYPE(@advice_top)=5;"Notes need Gramwright";"Notes: point at "&ADDRESS(ROW(@advice_top);COLUMN(@advice_top);4));"")';
