// What the doughs of a production need of each ingredient, beside the page.
import type { CellModel, Line, Table } from "../../shared/sheet/model.ts";
import { helper } from "../formula-sheet/column-kinds.ts";
import { linkName, textFormula } from "./shape.ts";
import { HELPERS, NEEDED, type ToOrderShape, USED } from "./to-order-helpers.ts";

/** Doughs and feeds that are wanted: of the days that are ordered for, and of those since the count. */
export function wantedLines({ products, feeds }: ToOrderShape): Line[] {
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
export function needTables({ products, feeds, stacked }: ToOrderShape): Table[] {
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
