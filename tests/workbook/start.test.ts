import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import exceljs from "exceljs";
import { afterAll, afterEach, beforeAll, describe, expect, test, vi } from "vitest";
import { openWorkbook } from "../../src/workbook/host.ts";
import { type LocalServer, serve } from "../../src/workbook/server.ts";
import { run } from "../../src/workbook/start.ts";
import { pageJs } from "./local-page.ts";
import { sameAsRead } from "./office-reads.ts";
import { asOfficeReads, hasOffice } from "./support.ts";
import { BENCH, CODE, testRoot } from "./test-sidebar.ts";

let root = "";
let server: LocalServer;
const port = () => Number(new URL(server.address).port);

beforeAll(async () => {
  root = testRoot();
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
    const headers = {
      host: how.host ?? `127.0.0.1:${port()}`,
      ...(how.origin ? { origin: how.origin } : {}),
      ...(how.body ? { "content-type": "application/json" } : {}),
    };
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

  test("--save writes the demo workbook whole, beside no leftovers, and prints the sheet; LibreOffice shows the same", async () => {
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
    if (!hasOffice) return;
    const read = asOfficeReads(readFileSync(join(folder, "demo.xlsx")));
    expect(Object.keys(read)).toHaveLength(file.worksheets.length);
    expect(file.worksheets.length).toBeGreaterThan(12);
    sameAsRead(file, read);
  });
});
