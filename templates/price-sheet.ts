import {
  type Block,
  type ColumnModel,
  type Formula,
  type SheetModel,
  type Unit,
  WORKED_OUT,
} from "../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine } from "./blocks/line.ts";

/** A column of the larder, wherever it stands there. */
const larder = (head: string) => `INDEX(gramwright_larder;0;MATCH("${head}";INDEX(gramwright_larder;1;0);0))`;
const ofTried = (head: string) =>
  `=IF(LEN(@tried)=0;"";IFERROR(INDEX(${larder(head)};MATCH(@tried;${larder("ingredient")};0);1);"not in Ingredients"))`;

const top: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Costs and prices" }] },
    { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
    {
      when: "!products",
      cells: [
        {
          at: 0,
          role: "remark",
          text: "No formula sheet shows a cost yet. Build an ingredient sheet, then formula sheets, then this sheet again.",
        },
      ],
    },
    {
      when: "products",
      cells: [
        {
          at: 0,
          role: "remark",
          text: "Every figure follows its formula sheet. A formula sheet built later comes in when this sheet is built again.",
        },
      ],
    },
  ],
};

const trial: Block = {
  block: "trial",
  left: 0,
  when: "products",
  lines: [
    headingLine("One ingredient at another price", 10),
    inputLine("Ingredient, as in Ingredients", "tried", "text"),
    computedLine("Its pack", "tried_pack", "text", ofTried("pack")),
    computedLine("Price of a pack now", "tried_now", "money", ofTried("price")),
    inputLine("and if it were", "tried_price", "money"),
    {
      cells: [
        {
          at: 0,
          role: "remark",
          name: "check",
          unit: "text",
          formula:
            '=ARRAYFORMULA(IF(ROWS(gramwright_larder)+1>ROWS(@trial_ingredient);"The larder has grown: build this sheet again.";IF([all]>MAX(@number);"A formula sheet has grown: build this sheet again.";IF(ISERROR(INDEX(@retold;1;1));"Still calculating, or the larder cannot be read at that price: point at the red cell below.";""))))',
        },
      ],
    },
  ],
};

const linked = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "linked",
  formula,
});
const computed = (name: string, head: string, unit: Unit, formula: Formula): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula,
});

/** A blank cell would come over as 0. */
const shown = (cell: string) => `=IF(LEN(${cell})=0;"";${cell})`;

const products: readonly ColumnModel[] = [
  linked("product", "Product", "text", "=[title]"),
  linked("piece", "One piece", "text", shown("[size]")),
  linked("ingredients", "Ingredients", "unit_cost", shown("[ingredients]")),
  linked("full_cost", "Full cost", "unit_cost", shown("[cost]")),
  linked("price", "Sells at", "money", shown("[price]")),
  linked("margin", "Margin", "rate", shown("[margin]")),
  linked(
    "change",
    "Ingredients +/−",
    "rate",
    '=ARRAYFORMULA(IF(LEN(@tried)*COUNT(@tried_price)*(LEN(@check)=0)*COUNT([total])*ISNUMBER([cost])*ISERROR(SEARCH("prices typed";[unpriced]))=0;"";IF([total]=0;"";SUMIFS(@retold;@number;">"&([before]);@number;"<="&([before]+[rows]))*[factor]/[total]-1)))',
  ),
  computed(
    "new_cost",
    "Full cost then",
    "unit_cost",
    '=ARRAYFORMULA(IF(LEN(@change)*LEN(@full_cost)*LEN(@ingredients)=0;"";@full_cost+@ingredients*@change))',
  ),
  computed(
    "new_margin",
    "Margin then",
    "rate",
    '=ARRAYFORMULA(IF(LEN(@new_cost)*LEN(@margin)*LEN(@full_cost)=0;"";IF(@full_cost=0;"";1-(1-@margin)*@new_cost/@full_cost)))',
  ),
  linked(
    "remark",
    "Remark",
    "text",
    '=SUBSTITUTE(SUBSTITUTE([unpriced];"without a price";"unpriced");"without";"unpriced")',
  ),
];

const copied = (name: string, head: string): ColumnModel =>
  computed(name, "", "text", `=ARRAYFORMULA(IFERROR(IF(LEN(${larder(head)})=0;"";${larder(head)});""))`);

/** All rows of all formula sheets below each other, and the larder with the one price changed: one call reads both. */
const working: readonly ColumnModel[] = [
  { name: "number", head: "Row", unit: "plain", role: "remark" },
  {
    ...computed(
      "retold",
      "Cost then",
      "money",
      '=IF(LEN(@tried)*COUNT(@tried_price)=0;"";BAKE_COSTS([names];[weights];@trial_table;"g"))',
    ),
    spills: ["retold_note"],
  },
  { name: "retold_note", head: "", unit: "text", role: "remark" },
];

const larderThen: readonly ColumnModel[] = [
  copied("trial_ingredient", "ingredient"),
  copied("trial_names", "also called"),
  copied("trial_measures", "measures"),
  computed(
    "trial_price",
    "",
    "text",
    `=ARRAYFORMULA(IFERROR(IF(LEN(@trial_ingredient)=0;"";IF((@trial_ingredient=@tried)*COUNT(@tried_price)=1;@tried_price;IF(LEN(${larder("price")})=0;"";${larder("price")})));""))`,
  ),
  copied("trial_pack", "pack"),
  copied("trial_usable", "usable"),
];

/** Every product of the workbook with its cost and price, and what one ingredient's price does to all of them. */
export const priceSheet: SheetModel = {
  name: "prices",
  title: "Costs and prices",
  says: "Every formula sheet in one table: cost, price and margin, and what one ingredient's price does to all of them.",
  widths: [166, 166, ...Array<number>(8).fill(92)],
  parts: ["products"],
  bands: [
    [top],
    [trial],
    [{ table: "products", left: 0, when: "products", rows: 4, spare: 4, columns: products }],
    [
      {
        block: "working_heading",
        left: 0,
        when: "products",
        lines: [headingLine(`${WORKED_OUT}: nothing to type, nothing to print`, 10)],
      },
    ],
    [
      { table: "working", left: 0, when: "products", rows: 20, spare: 0, columns: working },
      { table: "trial", left: 3, when: "products", rows: 20, spare: 0, list: true, columns: larderThen },
    ],
  ],
  sample: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
  // Without a formula sheet there is nothing to add up; with some, a test of its own works the figures out.
  expects: { title: "Costs and prices", shop: "Tern Quay Bakehouse" },
};
