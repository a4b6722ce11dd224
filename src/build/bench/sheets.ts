import type { Questions } from "../../../shared/protocol/questions.ts";
import { a1 } from "../../../shared/sheet/a1.ts";
import { layOut } from "../../../shared/sheet/layout.ts";
import type { Options } from "../../../shared/sheet/model.ts";
import { SHEETS, TEMPLATES } from "../../../templates/index.ts";
import { openWorkbook, type WorkbookHost } from "../../workbook/host.ts";
import { codeJs } from "../build.ts";
import { sidebarHtml } from "../page.ts";
import { median, once } from "./measure.ts";

const OPTIONS: Options = { weight: "g", temperature: "C", length: "cm", parts: [] };
/** 200 sheets are tried only while what was measured says that they are built in this time. */
const PATIENCE = 900_000;

/** A workbook of so many formula sheets with a price sheet and a day sheet over them. */
export async function sheets(): Promise<void> {
  const files = { codeJs: await codeJs(), sidebarHtml: await sidebarHtml() };
  let last = { many: 0, took: 0 };
  for (const many of [20, 50, 200]) {
    // Each sheet is built in a workbook that grows, so the whole grows with the square at worst.
    const expected = last.many === 0 ? 0 : last.took * (many / last.many) ** 2;
    if (expected > PATIENCE && many === 200) {
      console.log(`${many} formula sheets: left out, they may take ${Math.round(expected / 60_000)} minutes here`);
      continue;
    }
    let took = 0;
    took = once(() => console.log(of(files, many)));
    last = { many, took };
  }
}

function of(files: { codeJs: string; sidebarHtml: string }, many: number): string {
  const [model, prices] = [TEMPLATES[0], SHEETS.find(({ name }) => name === "prices")];
  if (model === undefined || prices === undefined) throw new Error("no templates");
  const book = openWorkbook(files);
  const names: string[] = [];
  const times = Array.from({ length: many }, (_, at) => {
    let isListDue: boolean | undefined;
    const took = once(() => {
      const values = { ...model.sample, title: `Loaf ${at + 1}` };
      const answer = book.answer({ ask: "build", template: model.name, options: OPTIONS, values });
      const { sheet, listDue } = answer as Questions["build"]["answer"];
      names.push(sheet);
      isListDue = listDue;
    });
    // As the bench does it.
    if (isListDue === true) book.answer({ ask: "list" });
    return took;
  });
  const first = names[0] ?? "";
  const weight = layOut(model, OPTIONS).names.get("size_weight");
  if (weight === undefined) throw new Error("no weight to edit");
  const edit = (grams: number) =>
    once(() => {
      book.type(first, a1({ row: weight.row + 1, column: weight.column }), String(grams));
      book.values(first, book.usedRange(first));
    });
  const alone = median([401, 402, 403].map(edit));
  const price = buildSheet(book, {
    ask: "build",
    template: "prices",
    options: { ...OPTIONS, parts: ["products"] },
    values: { title: "Costs and prices" },
  });
  const orders = names.slice(0, 60).map((sheet, at) => ({ sheet, pieces: 10 + at }));
  const day = buildSheet(book, { ask: "day", day: "2026-01-31", orders });
  const after = median([411, 412, 413].map(edit));
  const early = median(times.slice(0, 10));
  const late = median(times.slice(-10));
  return [
    `${many} formula sheets: the last ten take ${(late / early).toFixed(2)} × the first ten to build, ${Math.round(late)} ms each here`,
    `one edit is ${(after / alone).toFixed(2)} × with price and production sheet over them (${Math.round(after)} ms)`,
    `price sheet ${price.calls} BAKE_ calls, ${price.service} service calls in ${Math.round(price.took)} ms`,
    `production sheet of ${orders.length} products ${day.calls} BAKE_ calls, ${day.service} service calls in ${Math.round(day.took)} ms`,
  ].join("; ");
}

function buildSheet(book: WorkbookHost, request: unknown) {
  let sheet = "";
  const took = once(() => {
    sheet = (book.answer(request) as { sheet: string }).sheet;
  });
  const service = book.trail.length;
  const formulas = book.formulas(sheet, book.usedRange(sheet)).flat();
  const calls = formulas.reduce((sum, formula) => sum + (formula?.match(/BAKE_[A-Z]+\(/g)?.length ?? 0), 0);
  return { took, service, calls };
}
