import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import exceljs from "exceljs";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { type LocalServer, serve } from "../../src/workbook/server.ts";
import { run } from "../../src/workbook/start.ts";
import { type Browser, openBrowser, skipWithoutChromium } from "../sidebar/browser.ts";
import { demoSheetsSeen } from "../templates/seen-sheets.ts";
import { pageJs } from "./local-page.ts";
import { PROBES } from "./support.ts";

const CODE = `${PROBES}
var SEEN = ${JSON.stringify(demoSheetsSeen())};
function onOpen(e) { SpreadsheetApp.getUi().createAddonMenu().addItem("Open the bench", "openBench").addItem("Stumble", "stumble").addToUi(); }
function openBench() { SpreadsheetApp.getUi().showSidebar(HtmlService.createHtmlOutputFromFile("sidebar").setTitle("Test bench")); }
function stumble() { throw new Error("the oven is cold"); }
function benchAsk(json) {
  try {
    var asked = JSON.parse(json);
    var seen = SEEN.filter(function (one) { return asked.words !== undefined || asked.sheet === one.name; });
    if (asked.ask === "look") return JSON.stringify({ ok: true, answer: { front: "", sheets: seen, names: [] } });
    if (asked.ask === "ingredients") return JSON.stringify({ ok: true, answer: { ingredients: [] } });
    if (asked.ask !== "make") throw new Error("say make");
    if (SpreadsheetApp.getActive().getSheetByName("Rye") !== null) return JSON.stringify({ ok: true, answer: { sheet: "Rye" } });
    var sheet = SpreadsheetApp.getActive().insertSheet("Rye");
    sheet.getRange("A1:A2").setNumberFormat("0.0%").setValues([[0.5], [0.25]]);
    sheet.getRange("B1").setNote("told in the status line");
    sheet.getRange("B2").setFormula("=SUM(A1:A2)");
    sheet.getRange("C1").setFormula("=PROBE_SHOW(A1:A2)");
    return JSON.stringify({ ok: true, answer: { sheet: "Rye" } });
  } catch (error) { return JSON.stringify({ ok: false, message: error.message }); }
}`;
const BENCH = `<!doctype html><html lang="en"><head><title>b</title></head><body><button id="go">Ask</button><p id="said"></p><script>
document.getElementById("go").onclick = function () {
  google.script.run.withSuccessHandler(function (text) { said.textContent = text; }).withFailureHandler(function (e) { said.textContent = e.message; }).benchAsk("{}");
};</script></body></html>`;

let root = "";
let server: LocalServer;
const port = () => Number(new URL(server.address).port);

beforeAll(async () => {
  root = mkdtempSync(join(tmpdir(), "gramwright-page-"));
  mkdirSync(join(root, "dist"));
  mkdirSync(join(root, "src"));
  symlinkSync(join(process.cwd(), "src/workbook"), join(root, "src/workbook"));
  symlinkSync(join(process.cwd(), "node_modules"), join(root, "node_modules"));
  writeFileSync(join(root, "dist/Code.js"), CODE);
  writeFileSync(join(root, "dist/sidebar.html"), BENCH);
  server = await serve({ root, pageJs: pageJs() });
});
afterAll(async () => {
  await server.close();
  rmSync(root, { recursive: true, force: true });
});

function ask(
  path: string,
  how: { method?: string; host?: string; origin?: string; body?: string } = {},
): Promise<{ status: number; type: string; body: Buffer }> {
  return new Promise((resolve, reject) => {
    const headers = { host: how.host ?? `127.0.0.1:${port()}`, ...(how.origin ? { origin: how.origin } : {}) };
    const sent = request({ host: "127.0.0.1", port: port(), path, method: how.method ?? "GET", headers }, (answer) => {
      const parts: Buffer[] = [];
      answer.on("data", (part: Buffer) => parts.push(part));
      answer.on("end", () =>
        resolve({
          status: answer.statusCode ?? 0,
          type: answer.headers["content-type"] ?? "",
          body: Buffer.concat(parts),
        }),
      );
    });
    sent.on("error", reject);
    sent.end(how.body);
  });
}

describe("the server", () => {
  test("gives the next free port, or says that the wanted one is taken", async () => {
    const second = await serve({ root, pageJs: "" });
    expect(new URL(second.address).port).not.toBe(String(port()));
    expect(second.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    await second.close();
    await expect(serve({ root, pageJs: "", port: port() })).rejects.toThrow(
      `Port ${port()} is taken; give another with --port N.`,
    );
  });

  test.each([
    ["/", "text/html"],
    ["/page.js", "text/javascript"],
    ["/page.css", "text/css"],
    ["/Code.js", "text/javascript"],
    ["/engine/o_spreadsheet.xml", "text/xml"],
    ["/engine/font-awesome/fonts/fontawesome-webfont.woff2", "font/woff2"],
  ])("%s is served", async (path, type) => {
    const { status, type: given, body } = await ask(path);
    expect([status, given.split(";")[0]]).toEqual([200, type]);
    if (path !== "/page.js") expect(body.length).toBeGreaterThan(100);
  });

  test.each([
    "/package.json",
    "/dist/Code.js",
    "/engine/font-awesome/../../package.json",
    "/engine/font-awesome/%2e%2e/bootstrap/package.json",
    "/engine/font-awesome/",
    "/src/",
  ])("%s is not", async (path) => expect((await ask(path)).status).toBe(404));

  test("only this computer's own page may ask and save", async () => {
    expect((await ask("/", { host: "bakehouse.example:80" })).status).toBe(403);
    expect((await ask("/save", { method: "POST", origin: "http://elsewhere.example", body: "{}" })).status).toBe(403);
    expect((await ask("/save")).status).toBe(405);
    expect((await ask("/", { method: "DELETE" })).status).toBe(405);
  });

  test("the workbook's data come back as a file", async () => {
    const book = openWorkbook({ codeJs: CODE, sidebarHtml: BENCH });
    book.answer({ ask: "make" });
    book.type("Rye", "A1", "75%");
    const { status, type, body } = await ask("/save", { method: "POST", body: JSON.stringify(book.engine.data()) });
    expect([status, type]).toEqual([200, "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet"]);
    const file = new exceljs.Workbook();
    await file.xlsx.load(body as unknown as ArrayBuffer);
    expect(file.getWorksheet("Rye")?.getCell("B2")).toMatchObject({ formula: "SUM(A1:A2)", result: 1 });
    expect(file.getWorksheet("Rye")?.getCell("C1").value).toBe("[[[0.75],[0.25]]]");
  });
});

describe("npm start", () => {
  const folder = mkdtempSync(join(tmpdir(), "gramwright-save-"));
  const said: string[] = [];
  afterEach(() => {
    process.exitCode = undefined;
    said.length = 0;
    vi.restoreAllMocks();
    vi.unstubAllEnvs();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));
  const start = async (...args: string[]) => {
    vi.stubEnv("INIT_CWD", folder);
    vi.spyOn(console, "error").mockImplementation((text) => void said.push(String(text)));
    vi.spyOn(console, "log").mockImplementation((text) => void said.push(String(text)));
    await run(args);
    return { code: process.exitCode ?? 0, said: said.join("\n") };
  };

  test.each([
    [["--sing"], /^Unknown argument --sing\./],
    [["--save"], /^--save needs a file name that ends in \.xlsx/],
    [["--save", "loaf.csv"], /^The file name must end in \.xlsx: loaf\.csv$/],
    [["--save", "nowhere/loaf.xlsx"], /^There is no folder .*nowhere; make it first, or choose another\.$/],
    [["--save", "a.xlsx", "b"], /^Too many arguments: b\./],
    [["--port", "loaf"], /^--port needs a number from 1 to 65535\./],
    [["--port", "0"], /^--port needs a number/],
    [["--no-open", "--port", "0"], /^--port needs a number/],
    [["--no-open", "--sing"], /^Unknown argument --sing\./],
  ])("%j is answered with one line", async (args, line) => {
    const { code, said } = await start(...args);
    expect(code).toBe(1);
    expect(said).toMatch(line);
    expect(said).not.toContain("\n");
  });

  test("a folder of that name is not overwritten", async () => {
    mkdirSync(join(folder, "shelf.xlsx"));
    expect((await start("--save", "shelf.xlsx")).said).toMatch(/shelf\.xlsx is a folder; give a file name\.$/);
  });

  test("--save writes the demo workbook whole, beside no leftovers, and prints the sheet", {
    timeout: 60_000,
  }, async () => {
    writeFileSync(join(folder, "demo.xlsx"), "an older file");
    const { code, said } = await start("--save", "demo.xlsx");
    expect(said).toContain("saved to");
    expect(code).toBe(0);
    expect(readdirSync(folder).filter((file) => file.includes("part"))).toEqual([]);
    const file = new exceljs.Workbook();
    await file.xlsx.load(readFileSync(join(folder, "demo.xlsx")) as unknown as ArrayBuffer);
    const [sheet] = file.worksheets;
    expect(sheet?.actualRowCount).toBeGreaterThan(10);
    expect(said).toContain(String(sheet?.getCell("A1").value));
  });
});

describe.skipIf(skipWithoutChromium("the page"))("the page", () => {
  let browser: Browser;
  let page: Page;
  const problems: string[] = [];
  const hosts = new Set<string>();
  const status = () => page.textContent("#status");
  const goTo = async (a1: string) => {
    const box = page.locator(".o-named-range-selector-container input");
    await box.click();
    await box.fill(a1);
    await box.press("Enter");
    await page.waitForTimeout(100);
  };
  const typed = async (a1: string, text: string) => {
    await goTo(a1);
    await page.keyboard.type(text);
    await page.keyboard.press("Enter");
    await goTo(a1);
  };

  beforeAll(async () => {
    browser = await openBrowser(1280, 800);
    page = await browser.context.newPage();
    page.on("pageerror", (error) => problems.push(error.message));
    page.on("request", (one) => hosts.add(new URL(one.url()).hostname));
    // While the demo shop is built the page has little time for anybody else.
    page.setDefaultTimeout(110_000);
    await page.goto(server.address);
    await page.waitForSelector(".o-grid canvas");
    await page.waitForFunction(() => document.getElementById("status")?.textContent?.startsWith("Built"));
  });
  afterAll(async () => {
    await browser.close();
  });

  test("opens with the demo built and the bench beside it, and asks nobody else", async () => {
    expect(await status()).toBe("Built: Rye.");
    expect(await page.locator("#bench-title").textContent()).toBe("Test bench");
    expect(await page.locator("#menu button").allTextContents()).toEqual(["Open the bench", "Stumble"]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(1280);
    expect([...hosts]).toEqual(["127.0.0.1"]);
    expect(problems).toEqual([]);
  });

  test("a percent typed into a percent cell recalculates what reads it", async () => {
    await typed("A1", "80%");
    await goTo("C1");
    expect(await page.locator(".o-topbar-composer").textContent()).toContain("PROBE_SHOW(A1:A2)");
    const [download] = await Promise.all([page.waitForEvent("download"), page.click("#save")]);
    const file = new exceljs.Workbook();
    await file.xlsx.readFile(await download.path());
    expect(download.suggestedFilename()).toMatch(/\.xlsx$/);
    expect(file.getWorksheet("Rye")?.getCell("C1").value).toBe("[[[0.8],[0.25]]]");
    expect(file.getWorksheet("Rye")?.getCell("B2").result).toBe(1.05);
  });

  test("the status line tells an error's sentence and a note", async () => {
    await typed("E1", '=PROBE_THROW("weigh the flour")');
    await page.waitForFunction(() => document.getElementById("status")?.textContent === "weigh the flour");
    await goTo("B1");
    expect(await status()).toBe("told in the status line");
  });

  test("the helper shows each argument in words while typing", async () => {
    await goTo("E2");
    await page.keyboard.type("=PROBE_SHOW(");
    const help = page.locator(".o-formula-assistant");
    await help.waitFor();
    expect(await help.textContent()).toMatch(/Shows its arguments as JSON\.[\s\S]*The second one \(optional\)\./);
    await page.keyboard.press("Escape");
    await page.keyboard.press("Escape");
  });

  test("the bench asks the script, and a refusal comes back", async () => {
    const bench = page.frameLocator("#bench-frame");
    await bench.locator("#go").click();
    await bench.locator("#said:has-text('say make')").waitFor();
  });

  test("a failing menu item says why, and the bench closes and opens", async () => {
    await page.getByRole("button", { name: "Stumble" }).click();
    expect(await status()).toBe("the oven is cold");
    await page.getByRole("button", { name: "Close the bench" }).click();
    expect(await page.locator("#bench").isVisible()).toBe(false);
    await page.getByRole("button", { name: "Open the bench" }).click();
    await page.frameLocator("#bench-frame").locator("#go").waitFor();
  });

  test("F6 leads from the sheet to the bench, to the menu and back", async () => {
    await goTo("A2");
    const where = () =>
      page.evaluate(() => {
        const active = document.activeElement;
        return active?.id === "bench-frame"
          ? "bench"
          : active?.closest("#grid")
            ? "sheet"
            : (active?.textContent ?? "");
      });
    const seen = [await where()];
    for (let step = 0; step < 3; step++) {
      await page.keyboard.press("F6");
      seen.push(await where());
    }
    expect(seen).toEqual(["sheet", "bench", "Open the bench", "sheet"]);
    await page.keyboard.type("5%");
    await page.keyboard.press("Enter");
    await goTo("B2");
    await page.keyboard.press("Shift+F6");
    expect(await where()).toBe("Open the bench");
  });

  test("the script has no timers and no network of the browser", async () => {
    const found = await page.evaluate(() => {
      const frame = Array.from(document.querySelectorAll("iframe")).find(({ title }) => title === "Script");
      const scope = frame?.contentWindow as unknown as Record<string, unknown>;
      return ["setTimeout", "fetch", "URL", "navigator", "PROBE_SHOW"].map((name) => typeof scope[name]);
    });
    expect(found).toEqual(["undefined", "undefined", "undefined", "undefined", "function"]);
  });
});
