// A formula sheet saved as .xlsx: LibreOffice calculates it as the local engine does, also after its order was changed there.
import exceljs from "exceljs";
import { strFromU8, unzipSync } from "fflate";
import { expect, test } from "vitest";
import { columnLetters } from "../../shared/sheet/a1.ts";
import { openBook } from "../../src/workbook/scripted.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { cellAt, type Tried } from "../templates/formula-sheet-page.ts";
import { builtIn, KINDS, type Kind, ONE_OF_EACH, opened, trialOf } from "../templates/formula-sheet-trials.ts";
import { asOfficeReads, asValue, hasOffice } from "./support.ts";

type Edit = readonly [name: string, row: number | undefined, value: number | string];
/** The order changed: how much, by what, what goes in, when. */
const EDITS: readonly Edit[] = [
  ["by", undefined, "dough"],
  ["amount", undefined, 20_500],
  ["percent", 3, 0.71],
  ["size_weight", 1, 612],
  ["ready", undefined, 0.3125],
  ["flour_temp", undefined, 24],
  ["step_minutes", 2, 75],
];
/** What may be wrong in a cell, named alike in both. */
const SLIPS: readonly Edit[] = [
  ["percent", 2, "65 %"],
  ["kind", 4, "yest"],
  ["room_temp", undefined, -40],
  ["step_minutes", 1, -5],
];

const fileOf = async (tried: Tried): Promise<exceljs.Workbook> => {
  const file = new exceljs.Workbook();
  await file.xlsx.load((await toXlsx(tried.book.engine)) as unknown as ArrayBuffer);
  return file;
};
const placeOf = ({ sheet }: Tried, [name, row]: Edit): string =>
  row === undefined ? sheet.at(name) : sheet.at(name, row);

/** A sheet, and what is changed on it in either program. */
type Changed = { readonly tried: Tried; readonly edits: readonly Edit[] };

/** The file as LibreOffice calculates it after the edits were made in it: all its sheets at once, because it is slow to start. */
async function inOffice(changed: readonly Changed[]): Promise<Record<string, string[][]>> {
  const file = await fileOf((changed[0] as Changed).tried);
  for (const { tried, edits } of changed) {
    const page = file.getWorksheet(tried.sheet.sheet) as exceljs.Worksheet;
    for (const edit of edits) page.getCell(placeOf(tried, edit)).value = edit[2];
  }
  file.calcProperties.fullCalcOnLoad = true;
  return asOfficeReads(Buffer.from(await file.xlsx.writeBuffer()));
}

function inEngine(tried: Tried, edits: readonly Edit[]): void {
  for (const edit of edits)
    tried.book.paste(
      tried.sheet.sheet,
      placeOf(tried, edit),
      typeof edit[2] === "number" ? String(edit[2]) : edit[2].replace(/^(?=\d)/, "'"),
    );
}

/** Cells that only a call fills keep what they held when the file was written. */
const isCalled = (tried: Tried, at: string): boolean =>
  tried.book.cell(tried.sheet.sheet, at).formula?.includes("BAKE_") ?? false;
const COLUMNS = 11;

function differences(tried: Tried, office: readonly (readonly string[])[]): string[] {
  const found: string[] = [];
  const last = tried.sheet.rowOf("mixer_limit") + 8;
  const note = tried.sheet.at("note", 0).replace(/\d+/, "");
  for (let row = 0; row < last; row++) {
    for (let column = 0; column < COLUMNS; column++) {
      const at = `${columnLetters(column)}${row + 1}`;
      if (columnLetters(column) === note || isCalled(tried, at) || isAdvice(tried, at)) continue;
      const own = cellAt(tried, at);
      const text = office[row]?.[column] ?? "";
      const theirs = dayOrTime(text);
      // Times come as words of whole seconds, cut off.
      const within = /:\d\d [AP]M$/.test(text) ? 1 / 86_400 : 1e-9;
      const isSame =
        typeof own === "number" && typeof theirs === "number"
          ? Math.abs(own - theirs) <= within * Math.max(1, Math.abs(own))
          : String(typeof own === "object" ? own.error : own).trim() === String(theirs).trim();
      if (!isSame) found.push(`${at}: ${JSON.stringify(own)} here, ${JSON.stringify(theirs)} there`);
    }
  }
  return found;
}

/** Days and times of day, which LibreOffice writes as words, as the numbers that they are. */
function dayOrTime(text: string): number | string {
  const [, hours, minutes, seconds, half] = /^(\d+):(\d+):(\d+) (AM|PM)$/.exec(text) ?? [];
  if (hours !== undefined)
    return ((Number(hours) % 12) + (half === "PM" ? 12 : 0) + Number(minutes) / 60 + Number(seconds) / 3600) / 24;
  const day = /^\d{4}-\d\d-\d\d$/.test(text) ? Date.parse(text) / 86_400_000 + 25_569 : undefined;
  return day ?? asValue(text);
}

/** Remarks that show what a call answered. */
const ADVICE = ["water_note", "tin_note", "friction_note", "capacity_note", "note_first", "note_second", "note_third"];
const isAdvice = ({ sheet }: Tried, at: string): boolean =>
  ADVICE.some((name) => sheet.names().includes(name) && sheet.at(name) === at);

/** Those of the edits that a sheet has cells for. */
const editsOn = ({ sheet }: Tried, { model }: Kind, edits: readonly Edit[]): Edit[] =>
  edits
    .filter(([name]) => sheet.names().includes(name))
    .map((edit) => (edit[0] === "by" ? ["by", undefined, model.name === "cake" ? "batter" : "dough"] : edit));

/** Each template with its order changed; two of them also as they were written and with slips, all of them in a long run. */
const ASKED = ONE_OF_EACH.flatMap((kind, at) =>
  (IS_LONG || at < 2 ? [EDITS, [], SLIPS] : [EDITS]).map((edits) => ({ kind, edits })),
);

test.skipIf(!hasOffice)(
  "each template in LibreOffice: as it was written, after its order was changed there, and with slips in it",
  async () => {
    const book = await openBook();
    const changed = ASKED.map(({ kind, edits }) => {
      const sheet = builtIn(book, kind);
      const tried: Tried = { book, sheet, units: kind.units, ways: kind.ways };
      return { kind, tried, edits: editsOn(tried, kind, edits) };
    });
    const office = await inOffice(changed);
    const found = changed.flatMap(({ tried, edits, kind }) => {
      inEngine(tried, edits);
      const says = `${kind.says} with ${edits.length} edits`;
      return differences(tried, office[tried.sheet.sheet] ?? []).map((one) => `${says}: ${one}`);
    });
    expect(found).toEqual([]);
    expect(new Set(changed.map(({ kind }) => kind.model.name)).size).toBe(TEMPLATES.length);
  },
);

test("hidden rows, folded columns and the top rows stay as they are, helpers stay off the paper", async () => {
  const tried = await opened(await trialOf(KINDS[0] as Kind));
  const page = (await fileOf(tried)).getWorksheet(tried.sheet.sheet) as exceljs.Worksheet;
  const hidden = ["size_name", "ingredient", "step"].map((name) => tried.sheet.rowOf(name, 0));
  const isHidden = (row: number) => page.getRow(row).hidden === true;
  expect(hidden.filter(isHidden)).toEqual(hidden);
  expect(isHidden((hidden[0] as number) + 1)).toBe(false);
  // Rows to spare are folded, so that they do not print; the last row of a table is its end or its total.
  const spare = ["size_name", "ingredient", "step"].flatMap((name) => {
    const rows = Array.from({ length: tried.sheet.rows(name) - 2 }, (_, at) => at + 1);
    const [filled, blank] = [true, false].map((is) =>
      rows.filter((at) => (cellAt(tried, tried.sheet.at(name, at)) !== "") === is),
    ) as [number[], number[]];
    expect(filled.filter((at) => isHidden(tried.sheet.rowOf(name, at)))).toEqual([]);
    return blank.map((at) => tried.sheet.rowOf(name, at));
  });
  expect(spare.length).toBeGreaterThan(4);
  expect(spare.filter((row) => isHidden(row) && page.getRow(row).outlineLevel === 1)).toEqual(spare);
  expect(page.getColumn(COLUMNS + 1).hidden).toBe(true);
  expect(page.getColumn(COLUMNS + 1).outlineLevel).toBe(1);
  expect(page.getColumn(COLUMNS).hidden).toBe(false);
  expect(page.views[0]).toMatchObject({ state: "frozen", ySplit: 3 });
  expect(page.pageSetup.printArea).toMatch(/^A1:K\d+$/);
  const formulas = Array.from({ length: page.rowCount }, (_, row) => page.getRow(row + 1)).flatMap((row) =>
    Array.from({ length: page.columnCount }, (_, column) => row.getCell(column + 1).formula ?? ""),
  );
  expect(formulas.some((formula) => formula.includes("_xlfn.ISFORMULA("))).toBe(true);
  expect(formulas.filter((formula) => /(?<!_xlfn\.)ISFORMULA\(/.test(formula))).toEqual([]);
});

test.each([
  [KINDS[0] as Kind, 9],
  [KINDS[1] as Kind, 1],
])("$says prints on the paper of its country, and its method begins a page", async (kind, paperSize) => {
  const tried = await opened(await trialOf(kind));
  const page = (await fileOf(tried)).getWorksheet(tried.sheet.sheet) as exceljs.Worksheet;
  expect(page.pageSetup).toMatchObject({ paperSize, orientation: "landscape", fitToWidth: 1, fitToHeight: 0 });
  // exceljs does not read breaks.
  const files = unzipSync(new Uint8Array(await toXlsx(tried.book.engine)));
  const sheets = Object.entries(files).filter(([name]) => /worksheets\/sheet\d+\.xml$/.test(name));
  const breaks = sheets.flatMap(([, xml]) =>
    [...strFromU8(xml).matchAll(/<brk id="(\d+)"/g)].map(([, id]) => Number(id)),
  );
  expect(breaks).toHaveLength(1);
  expect(page.getRow(Number(breaks[0]) + 1).getCell(1).value).toBe("Method");
});
