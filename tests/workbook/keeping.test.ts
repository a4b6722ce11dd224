// The local workbook between two runs: nothing typed is lost, nothing unreadable is written over.
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as esbuild from "esbuild";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { type Keeper, openKeeper } from "../../src/workbook/keep.ts";
import { IS_LONG, PATIENCE } from "../kit/scale.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { buildSheet, files, HANDOUT } from "../templates/sheet-support.ts";
import { type LocalPage, openLocalPage } from "./local-page.ts";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "gramwright-kept-"));
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
    const { book, sheet, at, type } = await buildSheet(HANDOUT);
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
    expect(again.cell(sheet, at("flour")).value).toBeCloseTo(28470 / 1.7, 6);
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
    const { book } = await buildSheet(HANDOUT);
    saved(openKeeper(path, await opens()), book.engine.data(), "none");
    const broken = spoil(readFileSync(path, "utf8"));
    writeFileSync(path, broken);
    const keeper = openKeeper(path, await opens());
    const { data, says, revision } = keeper.load();
    expect(data).toBeUndefined();
    expect(says).toMatch(/could not be read .*set aside as .*\.broken-1\.json, and the workbook begins anew/);
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

describe("killed in the middle of a save", () => {
  test("the last good state opens, whatever the moment", async () => {
    const bundle = join(folder, "saver.mjs");
    await esbuild.build({
      stdin: {
        contents: `import { openKeeper } from "./src/workbook/keep.ts";
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

describe.skipIf(skipWithoutChromium("keeping in the page"))("the page", () => {
  let local: LocalPage;
  const path = () => join(folder, "page.json");
  beforeAll(async () => {
    local = await openLocalPage({ keeper: openKeeper(path(), await opens()) });
  });
  afterAll(async () => {
    await local?.close();
  });
  const cellText = async (a1: string) => {
    await local.goTo(a1);
    return local.page.locator(".o-topbar-composer").textContent();
  };
  // Cells of the sheet in front that hold nothing: the rows kept free below its last one.
  const [FREE, BELOW] = ["C123", "C124"];
  const quiet = () => local.page.waitForTimeout(1500);

  test("opens with what was typed before the reload, and builds no second demo", async () => {
    const { page } = local;
    await local.type(FREE, "kept rye");
    await vi.waitFor(() => expect(readFileSync(path(), "utf8")).toContain("kept rye"), {
      timeout: PATIENCE,
      interval: 200,
    });
    const tabs = await page.locator(".o-sheet-name").allTextContents();
    await page.reload();
    await page.waitForFunction(() => document.getElementById("status")?.textContent === "As it was left.");
    expect(await page.locator(".o-sheet-name").allTextContents()).toEqual(tabs);
    expect(await cellText(FREE)).toBe("kept rye");
    expect(existsSync(path())).toBe(true);
  });

  test("asks before it closes while a cell is still being typed, and not where all is kept", async () => {
    const tab = await local.page.context().newPage();
    const asked: string[] = [];
    tab.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.accept();
    });
    const ready = () => tab.waitForFunction(() => document.getElementById("status")?.textContent === "As it was left.");
    const select = () => tab.locator(".o-grid").click({ position: { x: 300, y: 300 } });
    await tab.goto(local.page.url());
    await ready();
    // A browser asks nobody who did nothing.
    await select();
    await tab.reload();
    await ready();
    expect(asked).toEqual([]);
    await select();
    await tab.keyboard.type("half a word");
    await tab.reload();
    await ready();
    expect(asked).toEqual(["beforeunload"]);
    await tab.close();
  });

  test("a program that wrote is not written over: the page says so", async () => {
    const { page } = local;
    const text = JSON.parse(readFileSync(path(), "utf8"));
    writeFileSync(path(), JSON.stringify({ ...text, other: 1 }));
    await page.getByRole("alert").getByText("This tab is behind").waitFor();
    await local.type(BELOW, "too late");
    await quiet();
    expect(JSON.parse(readFileSync(path(), "utf8")).other).toBe(1);
    await page.getByRole("button", { name: "Take the newer state" }).click();
    await page.waitForFunction(() => document.getElementById("status")?.textContent === "As it was left.");
  });

  test("moving about writes nothing", async () => {
    const { page } = local;
    await page.reload();
    await page.waitForFunction(() => document.getElementById("status")?.textContent === "As it was left.");
    await quiet();
    const before = readFileSync(path(), "utf8");
    let posts = 0;
    page.on("request", (request) => {
      if (request.method() === "POST") posts += 1;
    });
    await local.goTo("B3");
    await local.goTo("C9");
    await quiet();
    expect(posts).toBe(0);
    expect(readFileSync(path(), "utf8")).toBe(before);
  });

  test("a broken file is set aside and said in the page", async () => {
    const { page } = local;
    writeFileSync(path(), "half a");
    await page.reload();
    await page.waitForFunction(() => document.getElementById("status")?.textContent?.includes("was set aside as"));
    expect(readFileSync(path().replace(".json", ".broken-1.json"), "utf8")).toBe("half a");
  });
});
