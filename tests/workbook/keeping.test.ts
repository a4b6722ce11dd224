// The local workbook between two runs: nothing typed is lost, nothing unreadable is written over.
import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as esbuild from "esbuild";
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import { type Keeper, openKeeper } from "../../src/workbook/file/keeper.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { IS_LONG } from "../kit/scale.ts";
import { type Built, buildSheet, files, HANDOUT } from "../templates/sheet-support.ts";

let folder = "";
let loaf: Built;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "gramwright-kept-"));
  loaf = await buildSheet(HANDOUT);
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** The least that is a workbook, with something in it by which it is known. */
const small = (n: number): WorkbookData => ({
  version: "19.3.7",
  sheets: [{ id: "s", name: "Sheet", colNumber: 1, rowNumber: 1, cells: { A1: String(n) } }],
  n,
});

const opens = async (): Promise<(data: WorkbookData) => void> => {
  const { codeJs } = await files();
  return (data) => void openWorkbook({ codeJs, data });
};

function saved(keeper: Keeper, data: WorkbookData, revision: string): string {
  const made = keeper.save(data, revision);
  if (!("revision" in made)) throw new Error(JSON.stringify(made));
  return made.revision;
}

describe("the file", () => {
  test("gives back a workbook with its formulas, names and looks", async () => {
    const { book, sheet, at, type } = loaf;
    type("percent", "71%", 2);
    const keeper = openKeeper(join(folder, "loaf", "workbook.json"), await opens());
    expect(keeper.load()).toEqual({ revision: "none" });
    saved(keeper, book.engine.data(), "none");
    const { data } = openKeeper(keeper.path, await opens()).load();
    const again = openWorkbook({ ...(await files()), ...(data === undefined ? {} : { data }) });
    const range = book.usedRange(sheet);
    expect(again.values(sheet, range)).toEqual(book.values(sheet, range));
    expect(again.formulas(sheet, range)).toEqual(book.formulas(sheet, range));
    expect(again.shownTexts(sheet, range)).toEqual(book.shownTexts(sheet, range));
    again.type(sheet, at("percent", 2), "67%");
    expect(again.cell(sheet, at("exact", 1)).value).toBeCloseTo(28470 / 1.7, 6);
  });

  test.each([
    ["cut off", (text: string) => text.slice(0, text.length / 2)],
    ["empty", () => ""],
    ["of another kind", () => '{"kind":"letter","data":{"sheets":[{}]}}'],
    ["without sheets", () => '{"kind":"gramwright workbook 1","data":{"sheets":[]}}'],
    ["with sheets that are none", () => '{"kind":"gramwright workbook 1","data":{"sheets":[5,{"id":7,"cells":"x"}]}}'],
    ["no JSON at all", () => "PK\x03\x04flour"],
  ])("when %s is set aside as it is, and said", async (name, spoil) => {
    const path = join(folder, `${name.replace(/ /g, "-")}.json`);
    const { book } = loaf;
    saved(openKeeper(path, await opens()), book.engine.data(), "none");
    const broken = spoil(readFileSync(path, "utf8"));
    writeFileSync(path, broken);
    const keeper = openKeeper(path, await opens());
    const { data, says, revision } = keeper.load();
    expect(data).toBeUndefined();
    expect(says).toMatch(/could not be read .*set aside as .*\.broken-1\.json, and the workbook starts again/);
    expect(readFileSync(path.replace(/\.json$/, ".broken-1.json"), "utf8")).toBe(broken);
    saved(keeper, book.engine.data(), revision);
    writeFileSync(path, broken);
    expect(openKeeper(path, await opens()).load().says).toMatch(/broken-2\.json/);
    expect(readFileSync(path.replace(/\.json$/, ".broken-1.json"), "utf8")).toBe(broken);
  });

  test("is not written where another window wrote it since", async () => {
    const path = join(folder, "two.json");
    const [one, other] = [openKeeper(path, () => {}), openKeeper(path, () => {})];
    const first = saved(one, small(1), "none");
    const second = saved(other, small(2), first);
    expect(one.save(small(3), first)).toMatchObject({
      stale: expect.stringMatching(/changed in another window/),
    });
    expect(one.load()).toMatchObject({ data: { n: 2 }, revision: second });
  });

  test("keeps the last whole state where a save fails", () => {
    const path = join(folder, "room.json");
    const keeper = openKeeper(path, () => {});
    const revision = saved(keeper, small(1), "none");
    const circular: Record<string, unknown> = small(2);
    circular.self = circular;
    expect(() => keeper.save(circular, revision)).toThrow();
    expect(keeper.load()).toMatchObject({ data: { n: 1 } });
    expect(() => openKeeper(folder, () => {})).toThrow(/is a folder; give a file name/);
  });
});

describe("the copies", () => {
  afterEach(() => void vi.useRealTimers());
  test("are of the last ten days of work, each of what the file held before that day", () => {
    mkdirSync(join(folder, "days"));
    const path = join(folder, "days", "workbook.json");
    const keeper = openKeeper(path, () => {});
    let revision = saved(keeper, small(0), "none");
    for (let day = 1; day <= 12; day++) {
      for (const hour of [6, 7]) {
        vi.useFakeTimers({ now: new Date(2026, 0, day, hour), toFake: ["Date"] });
        revision = saved(keeper, small(day), revision);
      }
    }
    const copies = readdirSync(join(folder, "days")).filter((name) => name !== "workbook.json");
    expect(copies.sort()).toEqual(
      ["03", "04", "05", "06", "07", "08", "09", "10", "11", "12"].map((day) => `workbook.2026-01-${day}.json`),
    );
    const held = copies.map((name) => JSON.parse(readFileSync(join(folder, "days", name), "utf8")).data.n);
    expect(held).toEqual([2, 3, 4, 5, 6, 7, 8, 9, 10, 11]);
  });
});

describe("killed in the middle of a save", () => {
  test("the last good state opens, whatever the moment", async () => {
    const bundle = join(folder, "saver.mjs");
    await esbuild.build({
      stdin: {
        contents: `import { openKeeper } from "./src/workbook/file/keeper.ts";
          const keeper = openKeeper(process.argv[2], () => {});
          let revision = keeper.load().revision;
          const filler = "x".repeat(3_000_000);
          for (let n = 1; ; n++) {
            revision = keeper.save({ version: "1", sheets: [{ id: "s", name: "S", colNumber: 1, rowNumber: 1, cells: {}, n, filler, end: n }] }, revision).revision;
            process.stdout.write(n + "\\n");
          }`,
        resolveDir: process.cwd(),
        loader: "ts",
      },
      bundle: true,
      platform: "node",
      format: "esm",
      outfile: bundle,
    });
    const path = join(folder, "killed.json");
    const kills = IS_LONG ? 40 : 2;
    let parts = 0;
    let last = 0;
    for (let round = 0; round < kills; round++) {
      const said = await killedAfter(
        spawn(process.execPath, [bundle, path], { stdio: ["ignore", "pipe", "inherit"] }),
        40 + (round % 15) * 7,
      );
      parts += readdirSync(folder).filter((name) => name.endsWith(".part")).length;
      const keeper = openKeeper(path, () => {});
      const { data, says } = keeper.load();
      expect(says).toBeUndefined();
      expect(readdirSync(folder).filter((name) => name.endsWith(".part") || name.includes("killed.broken"))).toEqual(
        [],
      );
      if (data === undefined) continue;
      const [state] = (data as { sheets: { n: number; end: number; filler: string }[] }).sheets;
      expect(state?.end).toBe(state?.n);
      expect(state?.filler).toHaveLength(3_000_000);
      // What the run said it had saved is there, or the one after it.
      if (said > 0) expect([said, said + 1]).toContain(state?.n);
      last = Math.max(last, state?.n ?? 0);
    }
    expect(last).toBeGreaterThan(0);
    if (IS_LONG) expect(parts, "so many kills must hit a save").toBeGreaterThan(0);
  });

  /** Kills this child, by its own handle, so long after its first save; the last number it said. */
  function killedAfter(child: ChildProcess, milliseconds: number): Promise<number> {
    return new Promise((resolve) => {
      let text = "";
      child.stdout?.on("data", (chunk: Buffer) => {
        if (text === "") setTimeout(() => child.kill("SIGKILL"), milliseconds);
        text += chunk.toString();
      });
      child.on("close", () => resolve(Number(text.trim().split("\n").pop() ?? 0)));
    });
  }
});
