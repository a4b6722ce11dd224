import type { ColumnModel, SheetModel } from "../shared/sheet/model.ts";
import { BAKELOG_NAME } from "../shared/sheet/workbook-names.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";

const input = (name: string, head: string, unit: ColumnModel["unit"]): ColumnModel => ({
  name,
  head,
  unit,
  role: "input",
});
const computed = (name: string, head: string, unit: ColumnModel["unit"], formula: string): ColumnModel => ({
  name,
  head,
  unit,
  role: "computed",
  formula,
});
/** A loss of one row, where both its weights are there. */
const lost = (name: string, head: string, left: string, of: string) =>
  computed(name, head, "share", `=ARRAYFORMULA(IF(LEN(${left})*LEN(${of})=0;"";IF(${of}=0;"";1-${left}/${of})))`);
const both = (name: string, head: string, of: string, other: string) =>
  computed(name, head, "plain", `=ARRAYFORMULA(IF(LEN(${of})*LEN(${other})=0;"";${of}))`);
/** A column's sum over the rows of each product. A criterion of SUMIF would take "<5 seeds" or "Bun*" for a pattern. */
const ofEach = (of: string): string => `MMULT(IF(@product=TRANSPOSE(@off_product);1;0);IF(ISNUMBER(${of});${of};0))`;
/** The loss of one product over all its rows. */
const learned = (name: string, head: string, left: string, of: string) =>
  computed(
    name,
    head,
    "share",
    `=ARRAYFORMULA(IF(LEN(@product)=0;"";IF(${ofEach(of)}=0;"";1-${ofEach(left)}/${ofEach(of)})))`,
  );

/** What was mixed, divided, baked and sold, and each product's losses from it. */
export const bakeOffLog: SheetModel = {
  name: "bake-off-log",
  title: "Bake log",
  says: "Mixed, divided, baked and sold, one bake a row: each product's bake loss and handling loss, and what to mix.",
  widths: [92, 166, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84, 84],
  parts: [],
  defines: { name: BAKELOG_NAME, from: "off_product", to: "off_sold" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Bake log" }] },
          { cells: [{ at: 0, role: "remark", name: "shop", text: "" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Handling loss: dough mixed less dough divided. Bake loss: the same pieces weighed before and after baking.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Both losses are allowed for in turn. Rows with a blank are left out of that figure.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "products",
        left: 1,
        rows: 12,
        columns: [
          input("product", "Product", "text"),
          learned("product_handling", "Handling loss", "@off_divided_both", "@off_mixed_both"),
          learned("product_bake", "Bake loss", "@off_baked_both", "@off_raw_both"),
          learned("product_unsold", "Unsold", "@off_sold_both", "@off_made_both"),
          input("product_sold_at", "Baked weight ({weight})", "weight"),
          computed(
            "product_scaled",
            "Scaling weight ({weight})",
            "weight",
            '=ARRAYFORMULA(IF(LEN(@product_sold_at)=0;"";IF(LEN(@product_bake)=0;@product_sold_at;@product_sold_at/(1-@product_bake))))',
          ),
          input("product_wanted", "Pieces wanted", "count"),
          computed(
            "product_mix",
            "Dough to mix ({weight})",
            "weight",
            '=ARRAYFORMULA(IF(LEN(@product_scaled)=0;"";IF(LEN(@product_wanted)=0;"";IF(LEN(@product_handling)=0;@product_wanted*@product_scaled;@product_wanted*@product_scaled/(1-@product_handling)))))',
          ),
        ],
      },
    ],
    [
      {
        table: "off",
        left: 0,
        rows: 60,
        spare: 24,
        columns: [
          input("off_date", "Date", "date"),
          input("off_product", "Product", "text"),
          input("off_mixed", "Dough mixed ({weight})", "weight"),
          input("off_divided", "Dough divided ({weight})", "weight"),
          input("off_raw", "Pieces, raw ({weight})", "weight"),
          input("off_baked", "Same pieces, baked ({weight})", "weight"),
          input("off_made", "Pieces baked", "count"),
          input("off_sold", "Pieces sold", "count"),
          lost("off_handling", "Handling loss", "@off_divided", "@off_mixed"),
          lost("off_loss", "Bake loss", "@off_baked", "@off_raw"),
          lost("off_unsold", "Unsold", "@off_sold", "@off_made"),
          both("off_mixed_both", "mixed, counted", "@off_mixed", "@off_divided"),
          both("off_divided_both", "divided, counted", "@off_divided", "@off_mixed"),
          both("off_raw_both", "raw, counted", "@off_raw", "@off_baked"),
          both("off_baked_both", "baked, counted", "@off_baked", "@off_raw"),
          both("off_made_both", "made, counted", "@off_made", "@off_sold"),
          both("off_sold_both", "sold, counted", "@off_sold", "@off_made"),
        ],
      },
    ],
    [cautionsOf(CAUTIONS.guides)],
  ],
  sample: {
    title: "Bake log",
    shop: "Tern Quay Bakehouse",
    product: ["Quay pan loaf", "Ferry bun"],
    product_sold_at: [700, 60],
    product_wanted: [24, 120],
    off_date: [45962, 45962, 45963],
    off_product: ["Quay pan loaf", "Ferry bun", "Quay pan loaf"],
    off_mixed: [20000, 9000, 20000],
    off_divided: [19600, null, 19400],
    off_raw: [7870, 690, 7860],
    off_baked: [7000, 600, 7000],
    off_made: [24, 120, 24],
    off_sold: [23, 108, 22],
  },
  // By hand: 1 − 39 000 ÷ 40 000 = 2.5 %; 1 − 14 000 ÷ 15 730 = 10.998093 %; 1 − 45 ÷ 48 = 6.25 %; 700 × 15 730 ÷ 14 000 = 786.5 g;
  // 24 × 786.5 ÷ 0.975 = 19 360 g. The buns have no divided weight: 1 − 600 ÷ 690; 60 × 690 ÷ 600 = 69 g; × 120 = 8280 g.
  expects: {
    "off_handling/1": 0.02,
    "off_loss/2": 0.1304347826,
    "product_handling/1": 0.025,
    "product_handling/2": "",
    "product_bake/1": 0.1099809282,
    "product_unsold/1": 0.0625,
    "product_scaled/1": 786.5,
    "product_mix/1": 19360,
    "product_scaled/2": 69,
    "product_mix/2": 8280,
  },
};
