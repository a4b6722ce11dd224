import { a1 } from "../../../shared/sheet/a1.ts";
import { larderSheet } from "../../../templates/larder-sheet.ts";
import { panLoaf } from "../../../templates/pan-loaf.ts";
import { openWorkbook, type WorkbookHost } from "../../workbook/host.ts";
import { codeJs } from "../build.ts";
import { sidebarHtml } from "../page.ts";
import { timeOf } from "./measure.ts";

const MANY = [6, 60, 200] as const;
const BY_HAND = "By hand";

/** A percentage typed into a formula sheet, beside the same in a table that somebody typed; and what keeping it takes then. */
export async function edits(): Promise<void> {
  const files = { codeJs: await codeJs(), sidebarHtml: await sidebarHtml() };
  const book = openWorkbook(files);
  typeByHand(book);
  let built = 0;
  let first: number | undefined;
  for (const many of MANY) {
    for (; built < many; built++) build(book, `Loaf ${built + 1}`);
    const sheet = `Loaf ${Math.ceil(many / 2)}`;
    const row = book.values(sheet, "A1:A60").findIndex(([name]) => name === "Water") + 1;
    let percent = 60;
    const typed = (on: string, cell: string) => () => {
      percent = percent === 79 ? 60 : percent + 1;
      book.type(on, cell, `${percent}%`);
    };
    const [inSheet, byHand] = [timeOf(typed(sheet, `C${row}`)), timeOf(typed(BY_HAND, "C3"))];
    first ??= inSheet;
    const keep = timeOf(() => {
      typed(sheet, `C${row}`)();
      book.engine.text();
    });
    const data = book.engine.data();
    const open = timeOf(() => openWorkbook({ ...files, data }), 3);
    console.log(
      `${many} formula sheets: an edit ${(inSheet / byHand).toFixed(1)} × one by hand, ${(inSheet / first).toFixed(2)} × among ${MANY[0]}; with what is kept then ${(keep / inSheet).toFixed(1)} × the edit; opened in ${(open / inSheet / many).toFixed(1)} × an edit a sheet`,
    );
  }
}

function build(book: WorkbookHost, title: string): void {
  const { name, sample } = panLoaf;
  const answer = book.answer({ ask: "build", template: name, options: {}, values: { ...sample, title } });
  if ((answer as { listDue?: boolean }).listDue === true) book.answer({ ask: "list" });
}

/** A price typed into Ingredients that all formula sheets go by: on its own sheet, on one more, and on the list of all of them. */
export async function priceEdits(): Promise<void> {
  const book = openWorkbook({ codeJs: await codeJs(), sidebarHtml: await sidebarHtml() });
  book.answer({ ask: "build", template: larderSheet.name, options: {}, values: larderSheet.sample });
  const rows = book.values("Ingredients", "A1:H60");
  const column = rows.find((row) => row.includes("Price"))?.indexOf("Price") ?? 0;
  const row = rows.findIndex(([name]) => name === "Strong white flour");
  const cell = a1({ row, column });
  let price = 20;
  let built = 0;
  let first: readonly number[] = [];
  for (const many of MANY) {
    for (; built < many; built++) build(book, `Loaf ${built + 1}`);
    const type = () => book.type("Ingredients", cell, String(price++));
    const seen = (sheet: string) => () => {
      type();
      book.values(sheet, "A1:F60");
    };
    const times = ["Ingredients", "Loaf 1", "Formula list"].map((sheet) => timeOf(seen(sheet)));
    if (first.length === 0) first = times;
    const [alone, one, all] = times.map((time, at) => (time / (first[at] ?? time)).toFixed(2));
    console.log(
      `${many} formula sheets, × among ${MANY[0]}: a price typed ${alone}, with one formula sheet read after it ${one}, with all ${all}`,
    );
  }
}

/** 16 ingredients with weights, shares and costs by plain formulas, one a cell. */
function typeByHand(book: WorkbookHost): void {
  book.renameSheet("Sheet1", BY_HAND);
  book.engine.together(() => {
    book.type(BY_HAND, "A1", "25000");
    for (let row = 2; row <= 17; row++) {
      const cells = [
        `Part ${row}`,
        row === 2 ? "flour" : "other",
        row === 2 ? "100%" : "5%",
        `=$A$1*C${row}/SUM($C$2:$C$17)`,
        `=C${row}/SUM($C$2:$C$17)`,
        "2",
        `=D${row}/1000*F${row}`,
        `=D${row}/2`,
      ];
      for (const [at, text] of cells.entries()) book.type(BY_HAND, `${"ABCDEFGH"[at]}${row}`, text);
    }
    for (const column of ["C", "D", "E", "G", "H"]) book.type(BY_HAND, `${column}18`, `=SUM(${column}2:${column}17)`);
  });
}
