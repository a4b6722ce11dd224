// What a label is made from: ingredient list, allergens, the quantity to declare, and what stands on it besides.
import type { Block, CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { HELPERS } from "../formula-sheet/columns.ts";
import { after, type Labelled, OWN_PARTS, rowsOf, SHOP_ROWS } from "./label-needs.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";

/** Of the size that the label is for. */
const ofSize = (column: string) => `N(INDEX(${column};@piece_size+1;1))`;

/** Letters that fit between the label and the sheet's edge. */
const LINE_LETTERS = 96;
const LINES = [1, 2, 3, 4, 5];
const upTo = (text: string) =>
  `IF(LEN(${text})<=${LINE_LETTERS + 12};MID(${text};1;2000);LEFT(${text};FIND(" ";${text}&" ";${LINE_LETTERS})))`;
const from = (lines: readonly string[]) =>
  lines.length === 0 ? "@list" : `MID(@list;${lines.map((line) => `LEN(${line})+`).join("")}1;2000)`;

/** Lines of the list one below the other; the last takes all that is left. */
const listLines = (): Line[] =>
  LINES.map((at) => {
    const rest = from(LINES.slice(0, at - 1).map((before) => `@list_${before}`));
    return textLine("", `list_${at}`, `=IF(ISERROR(@list);"";${at === LINES.length ? rest : upTo(rest)})`);
  });

/** What is typed for a label. */
const typedLines = ({ sold, finished }: Labelled): Line[] => [
  inputLine("Labelling rules", "law", "text", { choices: ["EU", "UK", "US"], onSheet: true }),
  typed("Name on the label", "label_title"),
  ...(finished === undefined
    ? [inputLine("Size (row number)", "piece_size", "count", { value: 1, onSheet: true })]
    : []),
  ...(sold ? [] : [inputLine("Bake loss", "label_loss", "share", { onSheet: true })]),
  typed("Allergens on current label", "allergens_last"),
  typed("QUID ingredient (EU, UK)", "declare"),
  inputLine("Serving ({weight})", "serving", "graded", { onSheet: true }),
  inputLine("Shelf life (days)", "shelf_days", "count", { onSheet: true }),
  inputLine("Date on the label", "date_kind", "text", { choices: ["best before", "use by"], onSheet: true }),
  typed("Storage", "storage"),
];

export function labelBlock(costed: Labelled): Block {
  const { names, weights } = rowsOf(costed);
  const isReady = (call: string) => `=IF(LEN(@law)*COUNT(@baked)=0;"";IF(@baked=0;"";${call}))`;
  // Where there are costs, there is a table of formulas inside; a finished product always has one.
  const withOwn = (call: (shop: string) => string): Formula => [
    { ...(costed.finished === undefined ? { when: "cost" } : {}), formula: isReady(call(OWN_PARTS)) },
    { formula: isReady(call("")) },
  ];
  return {
    block: "label",
    left: 0,
    when: "label",
    lines: [
      headingLine("Label, an estimate", 9),
      ...typedLines(costed),
      computedLine("Piece, baked ({weight})", "piece", "graded", pieceWeight(costed)),
      computedLine("Batch, baked ({weight})", "baked", "weight", bakedWeight(costed)),
      {
        cells: [
          label("Ingredient list, to copy"),
          {
            at: 1,
            role: "computed",
            name: "list",
            unit: "text",
            formula: withOwn((shop) => `BAKE_LABELLIST(${names};${weights};${SHOP_ROWS};@law;@baked${after(1, shop)})`),
          },
          {
            at: 2,
            role: "remark",
            name: "list_length",
            unit: "text",
            formula:
              '=IF(LEN(@law)=0;"choose the labelling rules above: EU, UK or US";IF(ISERROR(@list);"still calculating, or see the red cell";IF(LEN(@list)>0;LEN(@list)&" characters";IF(COUNT(@baked)=0;"no weights yet, or no size in this row";""))))',
          },
        ],
      },
      ...listLines(),
      textLine(
        "Allergens",
        "allergens",
        withOwn((shop) => `BAKE_ALLERGENS(${names};${SHOP_ROWS};@law${after(2, shop)})`),
      ),
      withChange(
        textLine("Added since", "allergens_came", cellText("@change_came")),
        withOwn(
          (shop) =>
            `IF(LEN(@allergens_last)=0;"";BAKE_ALLERGENS(${names};${SHOP_ROWS};@law;@allergens_last${after(1, shop)}))`,
        ),
      ),
      textLine("Removed since", "allergens_gone", cellText("@change_gone")),
      textLine(
        "",
        "allergens_change",
        '=IF(ISERROR(@allergens);"";IF(LEN(@allergens)*LEN(@allergens_last)=0;"";IF(LEN(@allergens_came)+LEN(@allergens_gone)=0;"No change.";"CHANGED since the current label: check the label and everything it is printed on.")))',
      ),
      computedLine(
        "QUID %",
        "declared",
        "share",
        withOwn(
          (shop) =>
            `IF(LEN(@declare)=0;"";BAKE_LABELSHARE(@declare;${names};${weights};@baked;${SHOP_ROWS}${after(1, shop)}))`,
        ),
        { spills: ["declared_of"], worded: ["declared_of"] },
      ),
      textLine("", "not_assessed", '=IF(LEN(@law)=0;"";"Cross-contact is not assessed.")'),
    ],
  };
}

/** Beside the page stands the call that compares, and fills three cells. */
function withChange(line: Line, formula: Formula): Line {
  const cell: CellModel = {
    at: HELPERS,
    role: "helper",
    name: "change_now",
    unit: "plain",
    formula,
    spills: ["change_came", "change_gone"],
  };
  return { ...line, cells: [...line.cells, cell] };
}

/** A cell beside the page, where the call that fills it has an answer. */
const cellText = (cell: string) => `=IF(ISERROR(@change_now);"";IF(LEN(${cell})=0;"";${cell}))`;
const textLine = (text: string, name: string, formula: Formula): Line => computedLine(text, name, "text", formula);
const typed = (text: string, name: string): Line => inputLine(text, name, "text", { onSheet: true, wide: 6 });

/** What the whole batch weighs when all of it is baked as that size; a formula without sizes is not baked. */
function bakedWeight({ whole, sold, finished }: Labelled): Formula {
  if (finished !== undefined) return `=IF(COUNT(${finished})*COUNT(${whole})=0;"";${finished})`;
  if (!sold) return `=IF(COUNT(${whole})=0;"";${whole}*(1-@label_loss))`;
  const isOpen = `(COUNT(@piece_size)=0)+(${ofSize("@size_weight")}<=0)>0`;
  return `=IF(COUNT(${whole})=0;"";IF(SUM(@size_weight)=0;${whole};IFERROR(IF(${isOpen};"";${whole}*(1-${ofSize("@size_loss")}));"")))`;
}

function pieceWeight({ sold, each, finished }: Labelled): Formula {
  if (finished !== undefined) return `=IF(COUNT(${finished})=0;"";${finished})`;
  const weight = ofSize(sold ? "@size_weight" : each);
  return `=IF(COUNT(@piece_size)=0;"";IFERROR(IF(${weight}<=0;"";${weight}${sold ? "" : "*(1-@label_loss)"});""))`;
}

/** Where label and nutrition are read. */
export const labelCautions: readonly Line[] = [
  "The ingredient list, allergens and nutrition are estimates. Check them against your suppliers' specifications before anything is printed.",
  "An allergen list is only as good as the specifications behind it, and cross-contact is not assessed. Follow local labelling law; ask your enforcement authority or a qualified adviser.",
].map((text) => ({ when: "label", cells: [{ at: 0, role: "caution", text }] }));
