// The line that says what is wrong: from the tables' own columns, from a cell beside each line of a block, and from the sheet's formulas.
import type { Band, Block, CellModel, Condition, Formula, Line, Table } from "../../shared/sheet/model.ts";
import { fraction, within } from "./bounds.ts";
import { MESSAGES, RIGHT } from "./columns.ts";
import { outsideSays } from "./outside.ts";
import { type Single, single } from "./singles.ts";

/** The message of this place, by the rows of the page; in one row that at the left comes first. */
function message(place: number): string {
  const nth = (side: "left" | "right") => `INDEX(@${side}_says;MATCH(SMALL(@both_rows;${place});@${side}_rows;0);1)`;
  const before = place === 1 ? "" : '" · "&';
  return `=IF(COUNT(@both_rows)<${place};"";${before}IFERROR(${nth("left")};${nth("right")}))`;
}

/** The row of a message; one at the right has half a row more, so that no two are the same. */
const rowOf = (name: string, side: "left" | "right"): string =>
  `=IF(LEN(@${name})=0;"";ROW(@${name})${side === "left" ? "" : "+1/2"})`;

const LETTER = (name: string) => `=SUBSTITUTE(ADDRESS(1;COLUMN(@${name}_top);4);"1";"")`;

export const CHECK_SINGLES: readonly Single[] = [
  single("First message", "first_says", message(1)),
  single("Second message", "second_says", message(2)),
  single("Third message", "third_says", message(3)),
  single("How many more", "more_says", '=IF(COUNT(@both_rows)>3;" · and "&COUNT(@both_rows)-3&" more. ";" ")'),
  single(
    "What is wrong with the amount",
    "amount_problem",
    '=IF((@by="tins")+(@by="dough")+(@by="flour")=0;"Scale to: choose from the list. ";IF(ISNUMBER(@amount)=FALSE();"Amount ("&ADDRESS(ROW(@amount);COLUMN(@amount);4)&"): enter a number. ";@amount_size))',
  ),
  single(
    "Size of the amount",
    "amount_size",
    '=IF((@amount>=1)*(@amount<=10000000)=0;"Amount ("&ADDRESS(ROW(@amount);COLUMN(@amount);4)&")? ";IF((@by="tins")*(@tin_takes<=0)=1;"Fill in the tin: its dough is not known. ";""))',
  ),
  single("Sizes that are wrong", "size_problems", '=IF(SUMPRODUCT((LEN(@size_says)>0)*1)>0;"yes";"")'),
  single("Column of percentages", "percent_letter", LETTER("percent")),
  single("Column of types", "type_letter", LETTER("kind")),
  single(
    "Rows of ingredients",
    "rows_say",
    outsideSays({
      table: "formula",
      what: "An ingredient",
      typed: ["ingredient", "percent"],
      counted: "counts",
      // The label of the total and that of the next line.
      isClear: "COUNTA(@total_label:@held_share)-COUNTA(@held_share)=2",
    }),
  ),
  single(
    "Rows of sizes",
    "sizes_say",
    outsideSays({
      table: "sizes",
      what: "A size",
      typed: ["size_name", "size_loss"],
      counted: "size_counts",
      // The headings of the next table.
      isClear:
        "COUNTA(@size_name_top:@percent_top)-COUNTA(@size_name;@size_pieces;@size_weight;@ingredient_top:@percent_top)=3",
    }),
  ),
  single(
    "Flour",
    "flour_says",
    '=IF(SUM(@share_typed)=0;"";IF(@flour_added=0;"No flour row. ";IF(ABS(@flour_base/@percent_base-1)>5/1000*(1+1/10^9);"Flours add up to "&ROUND(100*@flour_added/@percent_base;1)&" %, not 100 %. ";"")))',
  ),
];

/** Errors among the single figures are those that calls answer with, which show themselves; any other comes from a cell that is gone. */
const errorsBeside = (calls: readonly string[]): Single =>
  single(
    "Errors that calls answer with",
    "errors_told",
    `=${["0", ...calls.map((name) => `ISERROR(@${name})`)].join("+")}`,
  );

export const ERROR_SINGLES: readonly Single[] = [
  { ...errorsBeside(["friction_guide", "water_advice", "tin_advice", "tin_says"]), when: "water&tin" },
  { ...errorsBeside(["friction_guide", "water_advice"]), when: "water&!tin" },
  { ...errorsBeside(["tin_advice", "tin_says"]), when: "!water&tin" },
  { ...errorsBeside([]), when: "!water&!tin" },
];

/** As many as fit into one formula. */
const TOGETHER = 8;

type Named = { readonly name: string; readonly when?: Condition };

/** Whether cells still hold their formulas: each group has the part that its cells have. */
export function formulaChecks(cells: readonly Named[]): readonly Single[] {
  const conditions = [...new Set(cells.map(({ when = "" }) => when))];
  const groups = conditions.flatMap((when) => {
    const names = cells.flatMap((one) => ((one.when ?? "") === when ? [one.name] : []));
    return Array.from({ length: Math.ceil(names.length / TOGETHER) }, (_, at) => ({
      when,
      names: names.slice(at * TOGETHER, (at + 1) * TOGETHER),
    }));
  });
  const checks = groups.map(
    ({ when, names }, at): Single => ({
      ...single(
        "Formulas are there",
        `intact_${at + 1}`,
        `=IF(AND(${names.map((name) => `ISFORMULA(@${name})`).join(";")});"";"typed over")`,
      ),
      ...(when === "" ? {} : { when }),
    }),
  );
  return checks;
}

/** Beside the result, apart from the figures that it counts. */
export const formulasSayCell: CellModel = {
  at: MESSAGES.left,
  role: "helper",
  name: "formulas_say",
  unit: "plain",
  formula:
    '=IF(COUNTIF(@singles_upper;"typed over")+COUNTIF(@singles_lower;"typed over")=0;"";"A formula was typed over: undo. ")&IF(@errors_many>@errors_told;"A formula lost a cell that it needs: undo. ";"")',
};

/** In the row of the title. */
export const errorsCell: CellModel = {
  at: MESSAGES.left,
  role: "helper",
  name: "errors_many",
  unit: "plain",
  formula: "=SUMPRODUCT(ISERROR(@singles_upper)*1)+SUMPRODUCT(ISERROR(@singles_lower)*1)",
};

/** In the row of the amount: what the sheet is scaled to, and by how much. */
export const amountCheckCells: readonly CellModel[] = [
  {
    at: MESSAGES.left,
    role: "helper",
    name: "amount_says",
    unit: "plain",
    formula: `=IF(@by="pieces";IF((@sizes_dough>0)+(LEN(@size_problems)>0)>0;"";"Enter pieces and a baked weight. ");@amount_problem)`,
  },
  {
    at: MESSAGES.left + 1,
    role: "helper",
    unit: "plain",
    formula: rowOf("amount_says", "left"),
  },
];

/** The cells that hold the formulas of hidden rows. */
export function topsOf(bands: readonly Band[]): Named[] {
  return bands
    .flat()
    .filter((item): item is Table => "table" in item && item.hidden === true)
    .flatMap(({ columns, when }) =>
      columns.flatMap(({ name, formula }) =>
        formula === undefined ? [] : [{ name: `${name}_top`, ...(when === undefined ? {} : { when }) }],
      ),
    );
}

/** Remarks that a formula makes: whether it is there is seen with the others. */
export function remarksOf(bands: readonly Band[]): Named[] {
  const blocks = bands.flat().filter((item): item is Block => "block" in item);
  return blocks.flatMap(({ lines, when: ofBlock }) =>
    lines.flatMap(({ cells, when: ofLine }) =>
      cells.flatMap(({ name, role, formula, when: ofCell }) => {
        if (name === undefined || role !== "remark" || formula === undefined) return [];
        const when = [ofBlock, ofLine, ofCell].filter((one) => one !== undefined).join("&");
        return [{ name, ...(when === "" ? {} : { when }) }];
      }),
    ),
  );
}

const isWrong = (side: "left" | "right") => (side === "left" ? MESSAGES.left : MESSAGES.right);
const CELL = (name: string) => `ADDRESS(ROW(@${name});COLUMN(@${name});4)`;

/** Every line of a block says beside the page what is wrong in it: an input that is no number within its bounds, or a formula typed over. */
export function withChecks(block: Block): Block {
  const side = block.left >= RIGHT ? "right" : "left";
  return { ...block, lines: block.lines.map((line) => checkedLine(line, block.left, side)) };
}

function checkedLine(line: Line, left: number, side: "left" | "right"): Line {
  const text = line.cells.find(({ role }) => role === "label")?.text ?? "";
  const label = text.replace(/ \([^)]*\)$/, "");
  const checks = checksOf(line.cells, label);
  if (checks.length === 0) return line;
  const first = checks.map(({ name }) => name)[0] ?? "";
  const name = `says_${first}`;
  const at = isWrong(side) - left;
  const formula = joined(checks.map(({ formula: one }) => one));
  return {
    ...line,
    cells: [
      ...line.cells,
      { at, role: "helper", name, unit: "plain", formula },
      { at: at + 1, role: "helper", unit: "plain", formula: rowOf(name, side) },
    ],
  };
}

type Check = {
  readonly name: string;
  readonly formula: readonly { readonly when?: string; readonly formula: string }[];
};

/** Several inputs side by side with the same bounds are checked together. */
function checksOf(cells: readonly CellModel[], label: string): Check[] {
  const inputs = cells.filter(({ role, bounds }) => role === "input" && bounds !== undefined);
  const [first, last] = [inputs[0], inputs[inputs.length - 1]];
  if (first?.name === undefined || last?.name === undefined || first === last)
    return cells.flatMap((cell) => checkOf(cell, label));
  const others = cells.filter((cell) => !inputs.includes(cell)).flatMap((cell) => checkOf(cell, label));
  const range = `@${first.name}:@${last.name}`;
  const together = within(first.bounds ?? []).map(({ when, least, most }) => ({
    ...(when === undefined ? {} : { when }),
    formula: `IF(IFERROR((COUNTA(${range})=0)+(COUNT(${range})=COUNTA(${range}))*(MIN(${range})>=${fraction(least)})*(MAX(${range})<=${fraction(most)});0)>0;"";"${label || "Sizes"} in row "&ROW(@${first.name})&"? ")`,
  }));
  return [{ name: first.name, formula: together }, ...others];
}

function checkOf(cell: CellModel, label: string): Check[] {
  const { name, role, bounds, formula } = cell;
  if (name === undefined) return [];
  if (formula !== undefined && role !== "helper" && role !== "remark")
    return [{ name, formula: [{ formula: typedOverCheck(name) }] }];
  if (role !== "input" || bounds === undefined) return [];
  return [
    { name, formula: within(bounds).map((one) => ({ ...one, formula: boundCheck(name, cell.asks ?? label, one) })) },
  ];
}

function boundCheck(
  name: string,
  label: string,
  { least, most }: { readonly least: number; readonly most: number },
): string {
  const within = `(LEN(@${name})=0)+ISNUMBER(@${name})*(@${name}>=${fraction(least)})*(@${name}<=${fraction(most)})`;
  return `IF(IFERROR(${within};0)>0;"";"${label} ("&${CELL(name)}&")? ")`;
}

const typedOverCheck = (name: string): string => `IF(ISFORMULA(@${name});"";"Row "&ROW(@${name})&": typed over. ")`;

/** One formula for each unit that the checks differ by. */
function joined(formulas: readonly Check["formula"][]): Formula {
  const units = [...new Set(formulas.flatMap((one) => one.map(({ when }) => when ?? "")))].sort().reverse();
  return units.map((when) => {
    const parts = formulas.map(
      (one) => (one.find((each) => (each.when ?? "") === when) ?? one[one.length - 1])?.formula,
    );
    return { ...(when === "" ? {} : { when }), formula: `=${parts.join("&")}` };
  });
}
