// The line that says what is wrong: from the tables' own columns, from a cell beside each line of a block, and from the sheet's formulas.
import type { CellModel } from "../../shared/sheet/model.ts";
import { MESSAGES } from "./columns.ts";
import { messageRow } from "./line-checks.ts";
import { type Single, single } from "./singles.ts";
import { countedIn, type FormulaSheetSpec } from "./spec.ts";
import { outsideSingles } from "./stray-cells.ts";

/** The message of this place, by the rows of the page; in one row that at the left comes first. */
export function message(place: number): string {
  const nth = (side: "left" | "right") => `INDEX(@${side}_says;MATCH(SMALL(@both_rows;${place});@${side}_rows;0);1)`;
  const before = place === 1 ? "" : '" · "&';
  return `=IF(COUNT(@both_rows)<${place};"";${before}IFERROR(${nth("left")};${nth("right")}))`;
}

export const LETTER = (name: string) => `=SUBSTITUTE(ADDRESS(1;COLUMN(@${name}_top);4);"1";"")`;

export const checkSingles = (spec: FormulaSheetSpec): readonly Single[] => [
  single("First message", "first_says", message(1)),
  single("Second message", "second_says", message(2)),
  single("Third message", "third_says", message(3)),
  single("How many more", "more_says", '=IF(COUNT(@both_rows)>3;" · and "&COUNT(@both_rows)-3&" more. ";" ")'),
  single(
    "What is wrong with the amount",
    "amount_problem",
    `=IF(${waysOf(spec)}=0;"Scale to: choose from the list. ";IF(ISNUMBER(@amount)=FALSE();"Amount ("&ADDRESS(ROW(@amount);COLUMN(@amount);4)&"): enter a number. ";@amount_size))`,
  ),
  single(
    "Size of the amount",
    "amount_size",
    `=IF((@amount>=1)*(@amount<=10000000)=0;"Amount ("&ADDRESS(ROW(@amount);COLUMN(@amount);4)&")? ";${amountNeeds(spec)})`,
  ),
  single("Sizes that are wrong", "size_problems", '=IF(SUMPRODUCT((LEN(@size_says)>0)*1)>0;"yes";"")'),
  single("Column of percentages", "percent_letter", LETTER("percent")),
  single("Column of types", "type_letter", LETTER("kind")),
  ...outsideSingles({
    table: "formula",
    says: "rows",
    what: "An ingredient",
    many: "ingredients",
    typed: ["ingredient", "percent"],
    counted: "counts",
    // The label of the total and that of the next line.
    isClear: spec.isBread
      ? "COUNTA(@total_label:@held_share)-COUNTA(@held_share)=2"
      : "COUNTA(@total_label:@egg_weight)-COUNTA(@egg_weight)=2",
    figures: "cost_shown",
    below: ["total_label", `says_${underName(spec)}`],
    ends: `ROW(@${underName(spec)})`,
  }),
  ...outsideSingles({
    table: "sizes",
    says: "sizes",
    what: "A size",
    many: "sizes",
    typed: ["size_name", spec.isRound ? "size_diameter" : "size_loss"],
    counted: "size_counts",
    // The headings of the next table.
    isClear: `COUNTA(@size_name_top:@percent_top)-COUNTA(@size_name;@size_pieces;@${spec.isRound ? "size_diameter" : "size_weight"};@ingredient_top:@percent_top)=3`,
    figures: "wanted_shown",
    // The headings of the next table stand above its hidden row.
    below: ["size_name_top", "message_top"],
    ends: "ROW(@message_top)-1",
  }),
  single(
    "Flour",
    "flour_says",
    '=IF(@needs_no_flour=1;"";IF(@flour_added=0;"No flour row (a filling? Enter its boil-off). ";IF(ABS(@flour_base/@percent_base-1)>5/1000*(1+1/10^9);"Flours add up to "&ROUND(100*@flour_added/@percent_base;1)&" %, not 100 %. ";"")))',
  ),
];

/** Of the line right under the total. */
const underName = ({ isBread }: FormulaSheetSpec) => (isBread ? "held_share" : "egg_weight");

/** 0 where none of the words to scale by stands there. */
function waysOf(spec: FormulaSheetSpec): string {
  const counted = countedIn(spec);
  return [...(counted === undefined ? [] : [counted]), spec.mix, "flour"].map((way) => `(@by="${way}")`).join("+");
}

function amountNeeds(spec: FormulaSheetSpec): string {
  const counted = countedIn(spec);
  if (counted === undefined) return '""';
  const says =
    counted === "tins" ? `Fill in the tin: its ${spec.mix} is not known. ` : "Fill in a size and pieces on a tray. ";
  return `IF((@by="${counted}")*(@tin_takes<=0)=1;"${says}";"")`;
}

/** Of each table: the first and the last of its columns beside the page, and one of those that the others count by. */
const TABLES = [
  ["size_message", "size_says", "size_counts"],
  ["message", "row_says", "counts"],
  ["step_message", "step_says", "minutes_count"],
] as const;
const errorsOf = (tables: readonly (typeof TABLES)[number][]): string =>
  tables.map(([first, last]) => `SUMPRODUCT(ISERROR(@${first}_top:@${last}_top)*1)`).join("+");

/** The hidden row must be the first of the columns' own range, or all that they show stands a row too low. */
function topsSay(tables: readonly (typeof TABLES)[number][]): string {
  const inPlace = tables.map(([, , counts]) => `(SUMPRODUCT(MIN(ROW(@${counts})))=ROW(@${counts}_top))`);
  return `=IF(${inPlace.join("*")}=1;"";"A hidden row was moved: undo. ")`;
}

/** Errors among the single figures are those that calls answer with, which show themselves; any other comes from a cell that is gone. */
function errorsTold(texts: readonly string[]): Single {
  const messages = (...calls: readonly string[]) =>
    `=${["0", ...[...calls, ...texts].map((name) => `ISERROR(@${name})`)].join("+")}`;
  const [water, tin] = [
    ["friction_guide", "water_advice"],
    ["tin_advice", "tin_says"],
  ] as const;
  return single("Errors that calls answer with", "errors_told", [
    { when: "water&tin", formula: messages(...water, ...tin) },
    { when: "water", formula: messages(...water) },
    { when: "tin", formula: messages(...tin) },
    { formula: messages() },
  ]);
}

/** `own` are the template's own calls among its single figures. */
export const errorSingles = (texts: readonly string[]): readonly Single[] => [
  errorsTold(texts),
  // Where a column is blocked its hidden row shows an error, and its other rows are blank: those that read them would take them for 0.
  single("Errors in hidden rows", "errors_tables", [
    { when: "steps", formula: `=${errorsOf(TABLES)}` },
    { formula: `=${errorsOf(TABLES.slice(0, 2))}` },
  ]),
  single("Hidden rows stand first", "tops_say", [
    { when: "steps", formula: topsSay(TABLES) },
    { formula: topsSay(TABLES.slice(0, 2)) },
  ]),
];

/** Beside the result, apart from the figures that it counts. */
export const formulasSayCell: CellModel = {
  at: MESSAGES.left,
  role: "helper",
  name: "formulas_say",
  unit: "plain",
  formula:
    '=IF(COUNTIF(@singles_upper;"typed over")+COUNTIF(@singles_lower;"typed over")=0;"";"A formula was typed over: undo. ")&@errors_say',
};

/** In the row of the check line. */
export const errorsSayCell: CellModel = {
  at: MESSAGES.left,
  role: "helper",
  name: "errors_say",
  unit: "plain",
  formula:
    '=IF(@errors_many+@errors_tables>@errors_told;IF(@errors_told>0;"Still calculating, or a";"A")&" formula beside the page shows an error: undo. ";"")',
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
    formula: messageRow("amount_says", "left"),
  },
];
