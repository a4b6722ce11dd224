// A workbook in a program's hands: saved, opened again, with and without the functions.
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { unzipSync } from "fflate";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openBook, openFile } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { someOf } from "../kit/scale.ts";
import { FLOUR, LOAF, loaf, weights } from "./scripted-loaf.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "gramwright-scripted-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

test("functions are taken away and given back", () => {
  const sheet = loaf();
  const { book } = sheet;
  const own = book.sheet("Sheet1");
  own.type("Z1", `=ERROR.TYPE('${sheet.sheet}'!${sheet.at("advice", 0)})`);
  own.type("Z3", "=ERROR.TYPE(1/0)");
  expect([own.value("Z1"), own.value("Z3")]).toEqual(["#N/A", 2]);
  book.removeFunctions();
  expect(sheet.value("advice", 0)).toBe("#NAME?");
  expect(own.value("Z1")).toBe(5);
  own.type("Z2", "=BAKE_TINDOUGH(1)");
  expect(own.value("Z2")).toBe("#NAME?");
  book.restoreFunctions();
  expect(weights(sheet)[0]).toBe(FLOUR);
  expect(own.value("Z2")).toBe("#ERROR!");
});

describe("a workbook", () => {
  test("answers the sidebar's questions and lists its sheets", () => {
    const { book } = loaf();
    expect(book.sheetNames()).toEqual(["Sheet1", "Quay test loaf"]);
    const { sheet } = book.answer({
      ask: "day",
      day: "2026-01-31",
      orders: [{ sheet: "Quay test loaf", pieces: 20 }],
    }) as { sheet: string };
    expect(book.sheet(sheet).names()).not.toEqual([]);
    expect(() => book.answer({ ask: "weather" })).toThrow();
  });

  test("saved as .json and opened again is the same, names as well", async () => {
    const sheet = loaf();
    sheet.insertRows(1, 2);
    sheet.type("percent", "71%", 2);
    const path = join(folder, "loaf.json");
    await sheet.book.save(path);
    await sheet.book.save(path);
    const again = await openFile(path);
    expect(again.engine.data()).toEqual(sheet.book.engine.data());
    const other = again.sheet("Quay test loaf");
    for (const name of sheet.names())
      expect([name, other.at(name), other.value(name)]).toEqual([name, sheet.at(name), sheet.value(name)]);
  });

  test("saved as .xlsx is a whole file with its sheet in it", async () => {
    const path = join(folder, "loaf.xlsx");
    await loaf().book.save(path);
    const parts = unzipSync(readFileSync(path));
    expect(new TextDecoder().decode(parts["xl/workbook.xml"])).toContain('name="Quay test loaf"');
    expect(readdirSync(folder).filter((name) => name.endsWith(".part"))).toEqual([]);
  });

  test("is saved under no other ending, and never half", async () => {
    const { book } = loaf();
    await expect(book.save(join(folder, "loaf.ods"))).rejects.toThrow(/\.xlsx or \.json/);
    await expect(book.save(join(folder, "none", "loaf.xlsx"))).rejects.toThrow(/could not be written/);
    expect(existsSync(join(folder, "none"))).toBe(false);
  });

  test("that is missing, or no kept workbook, is not opened", async () => {
    await expect(openFile(join(folder, "missing.json"))).rejects.toThrow(/could not be opened/);
    const path = join(folder, "list.json");
    writeFileSync(path, "[]");
    await expect(openFile(path)).rejects.toThrow(/it is no kept workbook/);
  });

  test("kept without names is read by the words beside its cells", async () => {
    const kept = loaf();
    const { cellNames, ...data } = kept.book.engine.data();
    expect(cellNames).toHaveLength(kept.names().length);
    const sheet = (await openBook({ data })).sheet("Quay test loaf");
    for (const name of ["title", "ingredient", "percent", "grams", "hydration", "dough"])
      expect([name, sheet.at(name)]).toEqual([name, kept.at(name)]);
    sheet.insertRows(1);
    expect(sheet.value("title")).toBe("Quay test loaf");
  });

  test("counts in the units of its locale", async () => {
    const sheet = (await openBook({ locale: "de_DE" })).build("pan-loaf", LOAF);
    sheet.type("percent", "66,5%", 2);
    expect(sheet.value("hydration")).toBeCloseTo(0.665, 12);
  });
});

test.each(someOf(TEMPLATES, 3).map(({ name, sample }) => [name, sample] as const))(
  "%s: every name is a cell of its sheet",
  (name, sample) => {
    const sheet = loaf().book.build(name, sample);
    for (const one of sheet.names()) expect(sheet.at(one)).toMatch(/^[A-Z]+\d+$/);
    expect(sheet.value("title")).toBe(sample.title);
  },
);

test("the lines that DEVELOPERS.md shows run", async () => {
  const [, shown = ""] =
    /```ts\n(const book = await openBook[\s\S]*?)```/.exec(readFileSync("DEVELOPERS.md", "utf8")) ?? [];
  const path = join(folder, "pier-loaf.xlsx");
  const lines = shown.replace('"pier-loaf.xlsx"', JSON.stringify(path));
  const told: unknown[] = [];
  const run = new Function("openBook", "console", `return (async () => {${lines}})()`);
  await run(openBook, { log: (...all: unknown[]) => told.push(...all) });
  // 0.68 × 5000 g / 1.68 is 2023.8 g of water, in the row below the one that was put in.
  expect(told[0]).toMatch(/^2,?02[34]/);
  expect(told.slice(1)).toEqual([undefined, ["Sheet1", "Pier loaf"]]);
  expect(existsSync(path)).toBe(true);
});
