import { layOut } from "../../../shared/sheet/layout.ts";
import type { Options, SheetModel } from "../../../shared/sheet/model.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { TEMPLATES } from "../../../templates/index.ts";
import { openWorkbook } from "../../workbook/host.ts";
import { codeJs } from "../build.ts";
import { formulasOf, longestChain } from "../chains.ts";
import { nodesOf, parseFormula } from "../formula-parser.ts";
import { isSheetFunction } from "../lint-tree.ts";
import { sidebarHtml } from "../page.ts";

const METRIC = { weight: "g", temperature: "C", length: "cm" } as const;

export async function calls(): Promise<void> {
  const code = await codeJs();
  const sidebar = await sidebarHtml();
  for (const model of TEMPLATES) callsOf(model, code, sidebar);
}

/** The model with another number of rows in its formula table. */
function withRows(model: SheetModel, rows: number): SheetModel {
  const bands = model.bands.map((band) =>
    band.map((item) => ("table" in item && item.table === "formula" ? { ...item, rows, spare: 0 } : item)),
  );
  return { ...model, bands };
}

function callsOf(model: SheetModel, codeText: string, sidebarText: string): void {
  const options: Options = { ...METRIC, parts: model.parts };
  for (const rows of [6, 24, 60]) {
    const longModel = withRows(model, rows);
    const formulas = formulasOf(longModel, options);
    let calls = 0;
    for (const { formula } of formulas.cells.values()) {
      const tree = parseFormula(formula);
      if (typeof tree !== "string") for (const node of nodesOf(tree)) calls += isSheetFunction(node) ? 1 : 0;
    }
    const chain = longestChain(formulas);
    const columns = longModel.bands
      .flat()
      .flatMap((item) => ("table" in item && item.table === "formula" ? item.columns : []));
    const perCell = calls - 2 + rows * columns.filter(({ role }) => role === "computed").length;
    const sheetPlan = plan(longModel, options, longModel.sample);
    const writes = sheetPlan.formulas.length;
    console.log(
      `${model.name}, ${rows} rows: ${calls} calls, longest chain ${"length" in chain ? chain.length : "circle"}, ${writes} rectangles of formulas; one formula a cell would be ${perCell} calls (${(perCell / calls).toFixed(1)} ×)`,
    );
  }
  const book = openWorkbook({ codeJs: codeText, sidebarHtml: sidebarText });
  book.answer({ ask: "build", template: model.name, options: { ...METRIC, parts: model.parts }, values: model.sample });
  console.log(
    `${model.name}: ${book.trail.length} service calls that read or write (16 rows; the number does not depend on the rows)`,
  );
  console.log(`${model.name}: ${layOut(model, options).rows} rows in the sheet`);
}
