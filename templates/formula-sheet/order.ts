import type { Block, CellModel, Line } from "../../shared/sheet/model.ts";
import { amountCheckCells, errorsCell, errorsSayCell, formulasSayCell } from "./checks.ts";
import { countedIn, type FormulaSheetSpec } from "./spec.ts";

/** Without these parts it is not known what a tin or a tray takes. */
const COUNT_NEEDS = { tins: "tin", trays: "steps" } as const;

/** Name, version and date; the result in words; what is wrong; and what the sheet is scaled to. */
export const titleBlock = (spec: FormulaSheetSpec): Block => ({
  block: "name",
  left: 0,
  lines: [
    {
      height: 30,
      cells: [
        { at: 0, role: "title", name: "title", text: spec.title },
        { at: 6, role: "label", text: "Version", align: "right" },
        { at: 7, role: "input", name: "version", unit: "text", value: "1" },
        { at: 8, role: "input", name: "date", unit: "date" },
        errorsCell,
      ],
    },
    {
      cells: [
        { at: 0, role: "result", name: "result", unit: "text", formula: "=@result_order&@result_more" },
        formulasSayCell,
      ],
    },
    { cells: [{ at: 0, role: "check", name: "check", unit: "text", formula: check(spec) }, errorsSayCell] },
    {
      cells: [
        { at: 0, role: "label", text: "Scale to" },
        { at: 1, role: "input", name: "by", unit: "text", ...waysOf(spec) },
        { at: 2, role: "label", text: "Amount", align: "right" },
        {
          at: 3,
          role: "input",
          name: "amount",
          unit: "amount",
          bounds: [1 / 10, 10_000_000],
          hint: "Leave it blank when you scale to pieces.",
        },
        {
          at: 4,
          role: "remark",
          name: "amount_of",
          unit: "text",
          formula: amountOf(spec),
        },
        ...amountCheckCells,
      ],
    },
  ],
});

function waysOf(spec: FormulaSheetSpec): Partial<CellModel> {
  const counted = countedIn(spec);
  return {
    // A batter is ordered by the tins that it fills.
    value: spec.mix === "batter" ? (counted ?? spec.mix) : "pieces",
    choices: ["pieces", ...(counted === undefined ? [] : [counted]), spec.mix, "flour"],
    ...(counted === undefined ? {} : { choicesNeed: { [counted]: COUNT_NEEDS[counted] } }),
  };
}

function amountOf(spec: FormulaSheetSpec): string {
  const counted = countedIn(spec);
  const ways = [...(counted === undefined ? [] : [`${counted},`]), spec.mix, "or flour"].join(" ");
  const weighed = spec.isRolled ? 'IF(@by="dough";"dough with its fat";@by)' : "@by";
  const many = counted === undefined ? "" : `IF(@by="${counted}";"${counted}";`;
  return `=IF(@by="pieces";"only for ${ways}";${many}"{weight} of "&${weighed})${counted === undefined ? "" : ")"}`;
}

/** The first three messages and how many more, then what is wrong with the sheet itself. */
const check = ({ isRolled, isRound }: FormulaSheetSpec): string =>
  `=IFERROR(TRIM(@first_says&@second_says&@third_says&@more_says&@tops_say&@alone_says&@rows_say&@formulas_say&@flour_says&@sizes_say&@steps_say&@oven_says&@friction_says&@fill_says&@pre_says${isRolled ? "&@roll_says" : ""}${isRound ? "&@area_says" : ""});"A formula of this sheet is damaged: undo the last change.")`;

/** Under the total: water that is kept back and poured last, and eggs by number. */
export const underBlock = (spec: FormulaSheetSpec): Block => ({
  block: "under",
  left: 0,
  lines: [...(spec.isBread ? [HELD_LINE] : []), ...(spec.hasEggs ? [EGGS_LINE] : [])],
});

const HELD_LINE: Line = {
  cells: [
    { at: 0, role: "label", text: "Hold back, of the water" },
    { at: 2, role: "input", name: "held_share", unit: "short rate", bounds: [0, 0.5], asks: "Held back" },
    ...heldCells(),
    { at: 5, role: "remark", text: "Add it last, as the dough needs it." },
  ],
};

const EGGS_LINE: Line = {
  cells: [
    { at: 0, role: "label", text: "One egg, shelled ({weight})" },
    {
      at: 2,
      role: "input",
      name: "egg_weight",
      unit: "graded",
      asks: "One egg, shelled",
      bounds: [
        { when: "oz", least: 0.5, most: 5 },
        { least: 15, most: 150 },
      ],
    },
    { at: 4, role: "strong", name: "eggs_shown", unit: "figure", formula: '=IF(LEN(@eggs)=0;"";ROUND(@eggs;1))' },
    { at: 5, role: "remark", text: "eggs a mix" },
  ],
};

function heldCells(): CellModel[] {
  return [
    {
      at: 3,
      role: "computed",
      name: "held_all",
      unit: "graded",
      formula: '=IF(@held=0;"";ROUND(@held_exact*@mixes_some;1))',
    },
    { at: 4, role: "strong", unit: "step", name: "held_shown", formula: '=IF(@held=0;"";@held)' },
  ];
}
