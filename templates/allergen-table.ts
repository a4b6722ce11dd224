// Products and the allergens of the law side by side, on one page: for the counter and for whoever packs.
import { type ColumnModel, type SheetModel, WORKED_OUT } from "../shared/sheet/model.ts";
import { PRINTED_NAME } from "../shared/sheet/workbook-names.ts";
import { headingLine, inputLine } from "./blocks/line.ts";
import { leftOutLine, ofProduct, productColumn, shownOf } from "./product-rows.ts";

/** Regulation (EU) 1169/2011, annex II, in its order, in words that fit a heading; the last column is for what no list has. */
const EU =
  "Gluten cereals,Crusta- ceans,Eggs,Fish,Peanuts,Soya,Milk,Nuts,Celery,Mustard,Sesame,Sulphites,Lupin,Molluscs,Not on the list";
/** The nine of the FDA's list, in its order. */
const US = "Milk,Eggs,Fish,Shellfish,Tree nuts,Peanuts,Wheat,Soybeans,Sesame,Not on the list";

const GROUPS = EU.split(",").map((eu, at) => ({ eu, us: US.split(",")[at] ?? "" }));
const nameOf = (at: number) => `group_${at + 1}`;

const groups: readonly ColumnModel[] = GROUPS.map(({ eu, us }, at) => ({
  name: nameOf(at),
  head: "",
  headFormula: `=IF(@law="US";"${us}";IF(LEN(@law)=0;"";"${eu}"))`,
  unit: "text",
  role: "computed",
  wraps: true,
  ...(at > 0
    ? {}
    : {
        formula: '=IF(LEN(@law)=0;"";BAKE_ALLERGENTABLE(@declared;@law;@printed_here))',
        spills: GROUPS.slice(1).map((_, after) => nameOf(after + 1)),
      }),
}));

/** In the order of the EU's groups; what is named one by one has more room. Together they leave the type its size on A4 and Letter; alike ones are one call of the service. */
const WIDTHS: readonly number[] = [70, 54, 54, 54, 54, 42, 42, 84, 54, 54, 54, 54, 54, 54, 54];
const ALLERGENS = ofProduct("allergens");
const TAB = "CHAR(9)";
const printedText = (product: string, allergens: string): string => `${product}&${TAB}&${allergens}`;
/** Products change their rows; what was printed of one is found by its name, and taken only where one alone has it. */
const OF_IT = `(LEFT(@printed;LEN(${ofProduct("title")})+1)=${printedText(ofProduct("title"), '""')})`;
const PRINTED_HERE = `IF(SUMPRODUCT(${OF_IT}*1)=1;ARRAYFORMULA(TEXTJOIN("";TRUE();IF(${OF_IT};MID(@printed;LEN(${ofProduct("title")})+2;5000);"")));"")`;
const ROWS = 12;
const LEFT = GROUPS.length + 1;
const remark = (text: string) => ({ cells: [{ at: 0, role: "remark" as const, text }] });

export const allergenTable: SheetModel = {
  name: "allergen-table",
  title: "Allergen table",
  says: "Every product and the allergens of your law on one page, with what changed since the last print.",
  widths: [108, ...WIDTHS, 66, 90, 200, 200, 200, 200],
  parts: ["listed"],
  defines: { name: PRINTED_NAME, from: "now", to: "printed" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Allergen table" }] },
          {
            cells: [
              { at: 0, role: "remark", name: "shop", text: "" },
              { at: 7, role: "label", text: "Date" },
              { at: 8, role: "input", name: "date", unit: "date" },
            ],
          },
          leftOutLine,
          {
            when: "!listed",
            cells: [
              {
                at: 0,
                role: "remark",
                text: "There is no formula sheet yet. Build an ingredient sheet, then formula sheets, then this sheet again.",
              },
            ],
          },
          inputLine("Labelling rules", "law", "text", { choices: ["EU", "UK", "US"] }),
          {
            cells: [
              {
                at: 0,
                role: "caution",
                text: "Cross-contact is not assessed. Blank: not known. A dash: not among the ingredients as entered.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "caution",
                text: "It is only as good as your suppliers' specifications. Follow local law; ask your enforcement authority or a qualified adviser.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "products",
        left: 0,
        when: "listed",
        rows: ROWS,
        spare: 0,
        tallHead: true,
        columns: [
          productColumn("product", "Product", shownOf("title"), { wraps: true }),
          ...groups,
          {
            name: "known",
            head: "",
            unit: "text",
            role: "remark",
            formula:
              '=ARRAYFORMULA(IF(LEN(@product)=0;"";IF(LEN(@declared)=0;"not known";IF(LEN(@printed_here)=0;"not printed yet";IF(@printed_here=@declared;"";"CHANGED since the print")))))',
          },
        ],
      },
      {
        table: "working",
        left: LEFT + 2,
        when: "listed",
        rows: ROWS,
        spare: 0,
        columns: [
          productColumn("declared", `${WORKED_OUT}: allergens now`, shownOf("allergens")),
          productColumn(
            "now",
            "With its product",
            `IF(LEN(${ALLERGENS})=0;"";${printedText(ofProduct("title"), ALLERGENS)})`,
          ),
          { name: "printed", head: "On the last print", unit: "text", role: "input" },
          productColumn("printed_here", "Of this product", PRINTED_HERE),
        ],
      },
    ],
    [
      {
        block: "after",
        left: 0,
        when: "listed",
        lines: [
          headingLine("After you print it", LEFT),
          remark(
            "Press “Mark as printed” under Labels in Plan once it hangs where it is read. Later changes are then marked.",
          ),
          remark(
            "NEW: came since the print. GONE: went since then. CHANGED: other species. Formulas that you build later come in by themselves.",
          ),
        ],
      },
    ],
  ],
  sample: { title: "Allergen table", shop: "Tern Quay Bakehouse", law: "UK" },
  // Without a formula list there is nothing to show; with one, a test of its own works it out.
  expects: { title: "Allergen table", law: "UK" },
};
