// What to order: needs of the chosen days, stock in the same row, packs, cost and suppliers.
import type { Block, CellModel, Line, SheetModel, Table } from "../../shared/sheet/model.ts";
import { headingLine } from "../blocks/line.ts";
import { helper } from "../formula-sheet/column-kinds.ts";
import { linkName, plainText, textFormula } from "./shape.ts";

export type ToOrderShape = {
  readonly ingredients: readonly string[];
  /** How many of them, the last, are counted and not weighed. */
  readonly counted: number;
  readonly suppliers: readonly string[];
  /** Doughs and products that are wanted, and levains that are fed. */
  readonly products: number;
  readonly feeds: number;
  /** Rows that the ingredients of all formulas take below each other. */
  readonly stacked: number;
};

const COLUMNS = 12;
const HELPERS = COLUMNS + 1;
const WEEK = ["Mon", "Tue", "Wed", "Thu", "Fri", "Sat", "Sun"] as const;

const label = (at: number, text: string, align?: "right"): CellModel => ({
  at,
  role: "label",
  text,
  ...(align === undefined ? {} : { align }),
});
const typed = (at: number, name: string, unit: CellModel["unit"], most = 1e8): CellModel => ({
  at,
  role: "input",
  name,
  unit: unit ?? "plain",
  ...(unit === "date" || unit === "time" || unit === "text" ? {} : { bounds: [0, most] as const }),
});
const shown = (
  at: number,
  unit: CellModel["unit"],
  formula: string,
  role: CellModel["role"] = "computed",
): CellModel => ({
  at,
  role,
  unit: unit ?? "plain",
  formula,
});

export function toOrderSheet(shape: ToOrderShape): SheetModel {
  return {
    name: "to-order",
    title: "To order",
    says: "What the planned days need beyond what is in stock, in packs, by supplier.",
    // As wide as paper on its side, Letter, too.
    widths: [150, 120, ...Array<number>(COLUMNS + 21).fill(70)],
    parts: ["larder"],
    frozen: 3,
    foldedFrom: COLUMNS,
    fillsFirst: ["counted_1"],
    bands: [
      [titleBlock(shape), { block: "singles", left: HELPERS, lines: singles() }],
      [datesBlock],
      [listBlock(shape), { block: "list_helpers", left: HELPERS, lines: listHelpers(shape) }],
      ...(shape.suppliers.length === 0 ? [] : [[suppliersBlock(shape)]]),
      [{ block: "wanted", left: HELPERS, lines: wantedLines(shape) }],
      needTables(shape),
    ],
    sample: {},
    expects: {},
  };
}

function titleBlock({ ingredients }: ToOrderShape): Block {
  const n = ingredients.length;
  return {
    block: "name",
    left: 0,
    lines: [
      { height: 30, cells: [{ at: 0, role: "title", name: "title", text: "To order" }] },
      {
        cells: [
          {
            at: 0,
            role: "result",
            name: "result",
            unit: "text",
            formula: `=SUMPRODUCT((@missing_1:@missing_${n}>0)*1)&" ingredients to order"&IF(SUM(@cost_1:@cost_${n})=0;"";" · "&ROUND(SUM(@cost_1:@cost_${n});2)&" in all")`,
          },
        ],
      },
      {
        cells: [
          { at: 0, role: "check", name: "check", unit: "text", formula: "=TRIM(@needs_say&@rows_say&@packs_say)" },
        ],
      },
    ],
  };
}

/** Days from which use and need count. */
const datesBlock: Block = {
  block: "dates",
  left: 0,
  lines: [
    {
      cells: [
        label(0, "Stock counted on"),
        typed(1, "counted_on", "date"),
        label(2, "Order for days from"),
        typed(4, "order_from", "date"),
        { at: 5, role: "remark", text: "If blank, all days count. Days from the count to just before are use." },
      ],
    },
  ],
};

const HEADS = [
  "Ingredient",
  "Supplier",
  "Need",
  "Minimum",
  "Counted",
  "Used since",
  "Delivered",
  "In stock",
  "To order",
  "Pack",
  "Packs",
  "Cost",
];

/** What is counted stands below what is weighed. */
const COUNTED_LINE = headingLine("Counted (each)", COLUMNS);
function withCounted({ ingredients, counted }: ToOrderShape, lines: readonly Line[], between: Line): Line[] {
  const weighed = ingredients.length - counted;
  return counted === 0 ? [...lines] : [...lines.slice(0, weighed), between, ...lines.slice(weighed)];
}

function listBlock(shape: ToOrderShape): Block {
  const { ingredients, counted } = shape;
  return {
    block: "list",
    left: 0,
    lines: [
      headingLine("Ingredients ({weight})", COLUMNS),
      { cells: HEADS.map((text, at) => label(at, text, at > 1 ? "right" : undefined)) },
      ...withCounted(
        shape,
        ingredients.map((_, index): Line => {
          const at = index + 1;
          const amount = index < ingredients.length - counted ? "graded" : "count";
          const filled = (column: number, helperName: string, unit: CellModel["unit"] = amount) =>
            shown(column, unit, `=IF(@${helperName}_${at}=0;"";@${helperName}_${at})`);
          return {
            cells: [
              { at: 0, role: "ruled", name: `ingredient_${at}`, unit: "text" },
              { ...shown(1, "text", `=@supplier_${at}`, "ruled") },
              filled(2, "need"),
              { ...typed(3, `minimum_typed_${at}`, amount), when: "!larder" },
              { ...filled(3, "minimum"), when: "larder" },
              typed(4, `counted_${at}`, amount),
              filled(5, "used"),
              typed(6, `delivered_${at}`, amount),
              filled(7, "stock"),
              { ...filled(8, "missing"), role: "strong" },
              { ...typed(9, `pack_typed_${at}`, amount), when: "!larder" },
              { ...filled(9, "pack"), when: "larder" },
              shown(10, "count", `=IF((@missing_${at}=0)+(@pack_${at}=0)>0;"";@packs_${at})`, "strong"),
              filled(11, "cost", "money"),
            ],
          };
        }),
        COUNTED_LINE,
      ),
    ],
  };
}

/** Columns of the Ingredients sheet, by their headings. */
function singles(): Line[] {
  const column = (heads: readonly string[]): CellModel["formula"] => [
    {
      when: "larder",
      formula: `=${heads.map((head) => `IFERROR(MATCH("${head}";INDEX(gramwright_larder;1;0);0);`).join("")}0${")".repeat(heads.length)}`,
    },
    { formula: "=0" },
  ];
  const cells = [
    { says: "Supplier, in column", name: "supplier_column", heads: ["Supplier"] },
    { says: "Also called, in column", name: "also_column", heads: ["Also called", "also called"] },
    { says: "Price, in column", name: "price_column", heads: ["Price"] },
    { says: "Price by weight, in column", name: "each_column", heads: ["Price per kg", "Price per lb"] },
    { says: "Price each, in column", name: "piece_column", heads: ["Price each"] },
    { says: "Minimum stock, in column", name: "minimum_column", heads: ["Minimum stock (kg)", "Minimum stock (lb)"] },
  ];
  return [
    { cells: cells.map(({ says }, at) => ({ at, role: "helper", unit: "text", formula: textFormula(says) })) },
    {
      cells: [
        ...cells.map(
          ({ name, heads }, at): CellModel => ({
            at,
            role: "helper",
            name,
            unit: "plain",
            formula: column(heads) ?? "=0",
          }),
        ),
        {
          at: 6,
          role: "helper",
          name: "weight_of_priced",
          unit: "plain",
          // 1 lb is 0.45359237 kg (international yard and pound agreement, 1959).
          formula: [
            {
              when: "larder&oz",
              formula: '=IF(IFERROR(MATCH("Price per lb";INDEX(gramwright_larder;1;0);0);0)>0;16;16*10^8/45359237)',
            },
            {
              when: "larder",
              formula: '=IF(IFERROR(MATCH("Price per lb";INDEX(gramwright_larder;1;0);0);0)>0;45359237/10^5;1000)',
            },
            { formula: "=1000" },
          ],
        },
      ],
    },
    {
      cells: [
        {
          at: 0,
          role: "helper",
          name: "needs_say",
          unit: "text",
          formula:
            '=IF(ISERROR(INDEX(@need_name;1;1));"The needs are not worked out: they need Gramwright, and a name for every ingredient. ";"")',
        },
        {
          at: 1,
          role: "helper",
          name: "rows_say",
          unit: "text",
          formula:
            '=IF(ISERROR(INDEX(@need_name;1;1));"";IF(ABS(SUM(@need_weight)-@needed_here)>1/100;"An ingredient that is needed has no row here: build this sheet again. ";""))',
        },
        { at: 2, role: "helper", name: "packs_say", unit: "text", formula: '=""' },
      ],
    },
  ];
}

const listOf = (column: string, at: number) =>
  `IF(@larder_row_${at}*@${column}_column=0;0;N(INDEX(gramwright_larder;@larder_row_${at};@${column}_column)))`;

/** Days that are ordered for, and those from the count to just before them. */
const NEEDED = "([days]>=N(@order_from))";
const USED = "([days]>=@counted_on)*([days]<@order_from)";
const countOn = (index: number, when: string): string => {
  const all = `SUMPRODUCT(${when}*([${linkName("count", index)}]))`;
  return when === NEEDED ? `=${all}` : `=IF(N(@counted_on)*N(@order_from)=0;0;${all})`;
};

/** Beside an ingredient: everything that its row shows. */
function listHelpers(shape: ToOrderShape): Line[] {
  const { ingredients, counted } = shape;
  const heads = [
    "Name",
    "Row in Ingredients",
    "Supplier",
    "Need",
    "Used since",
    "Minimum",
    "Stock",
    "Missing",
    "Pack",
    "Packs",
    "Cost",
  ];
  const weighed = ingredients.length - counted;
  return [
    {
      cells: [
        { at: 0, role: "helper", unit: "text", formula: textFormula("Needed in these rows") },
        { at: 1, role: "helper", name: "needed_here", unit: "plain", formula: `=SUM(@need_1:@need_${weighed})` },
      ],
    },
    { cells: heads.map((text, at) => ({ at, role: "helper", unit: "text", formula: textFormula(text) })) },
    ...withCounted(
      shape,
      ingredients.map((_, index): Line => {
        const at = index + 1;
        const isCounted = index >= weighed;
        const [times, each] = isCounted ? ["1", "piece"] : ["@weight_of_priced", "each"];
        const cell = (place: number, name: string, formula: NonNullable<CellModel["formula"]>): CellModel => ({
          at: place,
          role: "helper",
          name: `${name}_${at}`,
          unit: "plain",
          formula,
        });
        const ofList = (names: string, weights: string) =>
          `=IF(ISERROR(INDEX(@${names};1;1));0;SUMPRODUCT((${plainText(`@${names}`)}=@plain_${at})*1;@${weights}))`;
        const either = (larder: string, without: string) => [{ when: "larder", formula: larder }, { formula: without }];
        return {
          cells: [
            cell(0, "plain", `=${plainText(`@ingredient_${at}`)}`),
            cell(
              1,
              "larder_row",
              either(
                `=ARRAYFORMULA(IFERROR(MATCH(1;(${plainText("INDEX(gramwright_larder;0;1)")}=@plain_${at})+ISNUMBER(FIND(";"&@plain_${at}&";";";"&SUBSTITUTE(LOWER(INDEX(gramwright_larder;0;MAX(1;@also_column)));"; ";";")&";"));0);0))`,
                "=0",
              ),
            ),
            {
              ...cell(
                2,
                "supplier",
                either(
                  `=IF(@larder_row_${at}*@supplier_column=0;"";INDEX(gramwright_larder;@larder_row_${at};@supplier_column)&"")`,
                  '=""',
                ),
              ),
              unit: "text",
            },
            cell(3, "need", isCounted ? countOn(index, NEEDED) : ofList("need_name", "need_weight")),
            cell(4, "used", isCounted ? countOn(index, USED) : ofList("used_name", "used_weight")),
            // A minimum is entered by weight there, and as a number of what is counted.
            cell(5, "minimum", either(`=${listOf("minimum", at)}*${times}`, `=N(@minimum_typed_${at})`)),
            cell(6, "stock", `=MAX(0;N(@counted_${at})-@used_${at}+N(@delivered_${at}))`),
            cell(
              7,
              "missing",
              `=IF(@need_${at}+@minimum_${at}-@stock_${at}>MAX(1;@need_${at})/10^9;@need_${at}+@minimum_${at}-@stock_${at};0)`,
            ),
            cell(
              8,
              "pack",
              either(
                `=IF(${listOf(each, at)}=0;0;${listOf("price", at)}/${listOf(each, at)}*${times})`,
                `=N(@pack_typed_${at})`,
              ),
            ),
            cell(9, "packs", `=IF(@pack_${at}=0;0;ROUNDUP(@missing_${at}/@pack_${at}*(1-1/10^9);0))`),
            cell(10, "cost", either(`=@packs_${at}*${listOf("price", at)}`, "=0")),
          ],
        };
      }),
      { cells: [] },
    ),
  ];
}

/** When each supplier comes next for the days from which is ordered, and until when to order. */
function suppliersBlock({ suppliers, ingredients }: ToOrderShape): Block {
  const n = ingredients.length;
  return {
    block: "suppliers",
    left: 0,
    lines: [
      headingLine("Suppliers", COLUMNS),
      {
        cells: [
          label(0, "Delivers on (enter x)"),
          label(1, "Costs", "right"),
          ...WEEK.map((day, at) => label(2 + at, day, "right")),
          label(9, "Days before", "right"),
          label(10, "By", "right"),
          label(11, "Order by", "right"),
        ],
      },
      ...suppliers.map((_, index): Line => {
        const at = index + 1;
        const delivered = `@on_${at}_1:@on_${at}_7`;
        // The last day of delivery up to the first day that is ordered for, as days before it.
        const early = `MIN(ARRAYFORMULA(IF(LEN(${delivered})>0;MOD(MOD(@first_day-2;7)-COLUMN(${delivered})+COLUMN(@on_${at}_1);7);99)))`;
        return {
          cells: [
            { at: 0, role: "ruled", name: `supplier_name_${at}`, unit: "text" },
            shown(
              1,
              "money",
              `=SUMPRODUCT((@supplier_1:@supplier_${n}=@supplier_name_${at})*@cost_1:@cost_${n})`,
              "ruled",
            ),
            ...WEEK.map(
              (_, day): CellModel => ({
                at: 2 + day,
                role: "input",
                name: `on_${at}_${day + 1}`,
                unit: "text",
                align: "center",
              }),
            ),
            typed(9, `before_${at}`, "count", 30),
            typed(10, `by_${at}`, "time"),
            shown(11, "date", `=IF((@first_day=0)+(${early}=99)>0;"";@first_day-${early}-N(@before_${at}))`, "strong"),
          ],
        };
      }),
      {
        cells: [
          { at: 0, role: "remark", text: "Order by: the day for the last delivery that comes in time." },
          {
            at: 13,
            role: "helper",
            name: "first_day",
            unit: "plain",
            formula: "=IF(N(@order_from)>0;@order_from;[first_day])",
          },
        ],
      },
    ],
  };
}

/** Doughs and feeds that are wanted: of the days that are ordered for, and of those since the count. */
function wantedLines({ products, feeds }: ToOrderShape): Line[] {
  const cell = (at: number, name: string, formula: string, unit: CellModel["unit"] = "plain"): CellModel => ({
    at,
    role: "helper",
    name,
    unit,
    formula,
  });
  const line = (index: number, wanted: string, used: string): Line => {
    const name = `=[${linkName("wanted", index)}]`;
    return {
      cells: [
        cell(0, `wanted_${index + 1}`, name, "text"),
        cell(1, `wanted_weight_${index + 1}`, wanted),
        cell(2, `since_${index + 1}`, name, "text"),
        cell(3, `since_weight_${index + 1}`, used),
      ],
    };
  };
  return [
    {
      cells: ["Wanted", "Weight", "Used", "Weight"].map((text, at) => ({
        at,
        role: "helper",
        unit: "text",
        formula: textFormula(text),
      })),
    },
    ...Array.from({ length: products }, (_, index) => {
      const [whole, bought] = [`[${linkName("whole", index)}]`, `[${linkName("bought", index)}]`];
      return line(
        index,
        `=SUMPRODUCT(${NEEDED}*${whole})*${bought}`,
        `=IF(N(@counted_on)*N(@order_from)=0;0;SUMPRODUCT(${USED}*${whole})*${bought})`,
      );
    }),
    ...Array.from({ length: feeds }, (_, index) => line(products + index, `=[${linkName("fed", index)}]`, "=0")),
  ];
}

/** The one call for the needs, and the same for what was used since the count. */
function needTables({ products, feeds, stacked }: ToOrderShape): Table[] {
  const last = products + feeds;
  const call = (from: string) =>
    `=IF(SUM(@${from}_weight_1:@${from}_weight_${last})=0;"";BAKE_RAWNEEDS(@${from}_1:@${from}_weight_${last};@stack_table))`;
  const filled = (name: string, head: string) => ({ name, head, unit: "plain", role: "helper" }) as const;
  return [
    {
      table: "stack",
      left: HELPERS,
      rows: stacked,
      list: true,
      columns: [
        helper("stack_product", "Product", "=[products]"),
        helper("stack_name", "Ingredient", "=[names]"),
        helper("stack_weight", "Weight", "=[weights]"),
      ],
    },
    {
      table: "needs",
      left: HELPERS + 3,
      rows: stacked,
      list: true,
      columns: [
        helper("need_name", "Needed", call("wanted"), { spills: ["need_weight"] }),
        filled("need_weight", "Weight needed"),
        helper("used_name", "Used since", call("since"), { spills: ["used_weight"] }),
        filled("used_weight", "Weight used"),
      ],
    },
  ];
}
