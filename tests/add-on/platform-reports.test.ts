// What went wrong in other people's add-ons, by public report; each is a test here or a reason why it cannot happen.
// Reports 1 to 29 are numbered as they were collected; owner/project #number is a thread on GitHub.
import { readFileSync } from "node:fs";
import vm from "node:vm";
import * as esbuild from "esbuild";
import exceljs from "exceljs";
import { beforeAll, describe, expect, test } from "vitest";
import { told } from "../../sidebar/kit/ask.ts";
import { lint } from "../../src/build/lint.ts";
import { asciiHelp } from "../../src/build/print.ts";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { findStubs } from "../../src/workbook/engine/stubs.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { expectCells, METRIC, refusal, run } from "../functions/support.ts";
import { buildSheet, files, HANDOUT, workbook } from "../templates/sheet-support.ts";

// A workbook takes a second each, more so on a busy computer.

let code = "";
let sidebar = "";
let script = "";
beforeAll(async () => {
  ({ codeJs: code, sidebarHtml: sidebar } = await files());
  script = /[\s\S]*<script>\n([\s\S]*)<\/script>/.exec(sidebar)?.[1] ?? "";
});
const readme = () => readFileSync("README.md", "utf8");
const manifest = () => JSON.parse(readFileSync("src/add-on/appsscript.json", "utf8")) as Record<string, unknown>;
const ALL = FUNCTIONS.flatMap((made) => made.examples.map((example) => ({ made, example })));

describe("what Sheets finds in the pushed file", () => {
  test("1. every function is a top-level declaration with its help right above (labnol/apps-script-starter #28, fossamagna/gas-webpack-plugin #195, mahaker/esbuild-gas-plugin #20)", () => {
    const found = findStubs(code).map(({ name }) => name);
    expect(found.filter((name) => name.startsWith("BAKE_"))).toEqual(FUNCTIONS.map(({ name }) => name));
  });

  test("2. stubs carry the parameters, each with its words (enuchi/React-Google-Apps-Script #64, #216, #222)", () => {
    const stubs = new Map(findStubs(code).map((stub) => [stub.name, stub]));
    for (const { name, args, summary } of FUNCTIONS) {
      const stub = stubs.get(name);
      expect(stub?.summary, name).toBe(asciiHelp(summary));
      expect(stub?.parameters).toEqual(
        Object.entries(args).map(([one, { says }]) => ({ name: one, says: asciiHelp(says) })),
      );
    }
  });

  test("3. no comment of a function is malformed (kohjb/AmeritradeAPIwGoogleScripts #1)", () => {
    const comments = [...code.matchAll(/\n\/\*\*\n([\s\S]*?)\n \*\/\nfunction BAKE_\w+\(/g)].map(
      ([, body]) => body ?? "",
    );
    expect(comments).toHaveLength(FUNCTIONS.length);
    for (const body of comments) {
      const lines = body.split("\n");
      for (const line of lines)
        expect(line).toMatch(/^ \*( [^\s@{}<>].*| @param \{[^{}]+\} [a-z_]+ \S.*| @return \S.*| @customfunction)?$/);
      expect(lines.filter((line) => line === " * @customfunction")).toHaveLength(1);
      expect(body).not.toContain("/*");
    }
  });

  test("4. the manifest makes no card add-on, in which functions are not recognised (googleworkspace/apps-script-samples #195)", () => {
    expect(Object.keys(manifest())).not.toContain("addOns");
  });

  test("22. no class, static or private syntax, which makes the whole project unreadable (google/clasp #907, #935)", async () => {
    for (const source of [code, script]) {
      const [newest, old] = await Promise.all(
        ["esnext", "es2020"].map((target) =>
          esbuild.transform(source, { target, supported: { "class-static-blocks": target === "esnext" } }),
        ),
      );
      expect(old?.code).toBe(newest?.code);
    }
    expect(code.match(/\bclass\b[^{]{0,60}\{\s*(static|#)/g)).toBeNull();
  });

  test("23. one file of code, so that no order of files can leave a name unknown (google/clasp #850, #72)", () => {
    const build = readFileSync("src/build/build.ts", "utf8");
    expect([...build.matchAll(/writeFileSync\("dist\/([^"]+)"/g)].map(([, file]) => file)).toEqual([
      "Code.js",
      "sidebar.html",
      "appsscript.json",
    ]);
    const context = vm.createContext({});
    vm.runInContext(code, context);
    for (const { made, example } of ALL) {
      const args = example.call.map((arg) => (arg === undefined ? "undefined" : JSON.stringify(arg))).join(",");
      const answer = JSON.parse(vm.runInContext(`JSON.stringify(${made.name}(${args}))`, context));
      expectCells(answer, example.gives, example.within);
    }
  });

  test("29. the file ends plainly: an odd tail left cells loading for ever (curtacircuitos/octopart-google-app #8)", () => {
    expect(code.trimEnd().endsWith("\n}")).toBe(true);
    expect(code.slice(code.indexOf("\nfunction onOpen"))).not.toContain("};");
    expect(readme()).toMatch(/Loading/);
  });
});

describe("menu, sidebar and permissions", () => {
  test("5. in a new file the menu wakes the functions, and people are told (datacommonsorg/docsite PR #26, tomayac/wikipedia-tools-for-google-spreadsheets #38)", async () => {
    const book = await workbook();
    const [first] = book.menu();
    expect(first).toMatchObject({ caption: "Open the bench", functionName: "openBench" });
    book.runMenu("Open the bench");
    expect(book.shown.sidebar?.file).toBe("sidebar");
    expect(readme()).toMatch(/#NAME\?/);
    expect(readme()).toMatch(/menu once per file/i);
  });

  test("6. the add-on's own menu is made without permission, so that more than Help is in it (bplmp/metabase-google-sheets-add-on #7)", async () => {
    const touched: string[] = [];
    const menu = { addItem: () => menu, addSeparator: () => menu, addToUi: () => touched.push("addToUi") };
    const getUi = () => ({ createAddonMenu: () => touched.push("createAddonMenu") && menu });
    const context = vm.createContext({ SpreadsheetApp: { getUi } });
    vm.runInContext(code, context);
    vm.runInContext("onInstall({ authMode: 'FULL' }); onOpen({ authMode: 'NONE' });", context);
    expect(touched).toEqual(["createAddonMenu", "addToUi", "createAddonMenu", "addToUi"]);
  });

  test("18. no function reads a setting of the owner or of anybody: no store is named at all (ljay79/jira-tools #79, #188)", () => {
    expect(code).not.toMatch(/PropertiesService|CacheService|UrlFetchApp|DriveApp|Session\b/);
  });

  test("20. several accounts in one browser: the bench asks on loading, and a refusal says what to do (alexwforsythe/code-blocks #53, #167; Synthoid/ExportSheetData #116; enuchi/React-Google-Apps-Script #46)", () => {
    // What the page shows and when is in sidebar-troubles.test.ts; here: the sentences for a refusal and for silence.
    for (const message of [
      "PERMISSION_DENIED",
      "You do not have permission to call openBench",
      "Authorization is required to perform that action.",
    ])
      expect(told({ how: "failed", message })).toMatch(/signed in to one account only/);
    expect(told({ how: "silent", message: "" })).toMatch(/signed in to one account only/);
    expect(script).toMatch(/"ping"/);
    expect(readme()).toMatch(/several Google accounts/i);
  });

  test("21. nothing in the page's script reads like a comment, which was cut out (enuchi/React-Google-Apps-Script #157, tanaikech/A2UI-for-Google-Apps-Script #2)", () => {
    const [before, after] = [script, script.replace(/\/\*[\s\S]*?\*\//g, "").replace(/\/\/.*$/gm, "")];
    expect(after).toBe(before);
    expect(script).not.toContain("`");
    expect(sidebar).not.toMatch(/<\?|https?:\/\//);
  });

  test("24. the sidebar's scope is listed, and only a menu item shows it (oshliaer/google-apps-script-snippets #18)", async () => {
    expect(manifest().oauthScopes).toContain("https://www.googleapis.com/auth/script.container.ui");
    const book = await workbook();
    book.script.run("LIMITED", "onOpen", [{ authMode: "LIMITED" }]);
    expect(book.shown.sidebar).toBeUndefined();
  });

  test("28. a pushed function is unknown until the spreadsheet is loaded again, and the guide says so (google/clasp #108)", () => {
    expect(readme()).toMatch(/reload the spreadsheet after\s+each push/i);
  });
});

describe("what arrives in a function and what leaves it", () => {
  test("8. blank is neither 0 nor NaN, and a number with an unclear sign is refused (bradjasper/ImportJSON PR #60)", () => {
    expect(run("BAKE_TRUEPCT", [[""], [""]])).toBe("");
    expect(refusal("BAKE_TRUEPCT", [["1,234"], [500]])).toMatch(/weights row 1 is "1,234".*1234 or 1\.234/);
    expect(refusal("BAKE_DOUGHFOR", 10, "1295,84335x")).toMatch(/is not a number/);
    // A comma is a decimal sign where nothing else is possible, and never left out: 129584335 cannot come of it.
    expect(run("BAKE_DOUGHFOR", 1, "1295,84335")).toBeCloseTo(1295.84335, 9);
  });

  test("9. numbers stay numbers and texts stay texts, both ways (bradjasper/ImportJSON #27, scryfall/google-sheets #21, burnash/gspread #501, vlucas/sheetquery #20)", async () => {
    for (const { made, example } of ALL) {
      const [answer, expected] = [call(made, example.call), example.gives].map((one) =>
        (Array.isArray(one) ? one.flat() : [one]).map((cell) => typeof cell),
      );
      expect(answer, made.name).toEqual(expected);
    }
    const codes = ["01234", "22 34", "3/4", "1e5", "2026-11-25"];
    const { value } = await buildSheet({ ...HANDOUT, ingredient: codes, kind: ["flour"], percent: [1] });
    expect(codes.map((_, row) => value("ingredient", row + 1))).toEqual(codes);
    expect(typeof value("percent", 1)).toBe("number");
    expect(refusal("BAKE_TRUEPCT", [[100], ["a cup"]])).toMatch(/weights row 2 is "a cup"/);
  });

  test("15. a word without quotation marks arrives as #NAME? and is named (Blacksmoke16/GESI esi_client.ts)", () => {
    expect(refusal("BAKE_TINGUIDE", "#NAME?")).toMatch(/dough_kind holds the error #NAME\?; correct that cell first/);
  });

  test("19. no text grows beyond what a cell takes (qeet/IMPORTJSONAPI #10)", () => {
    const long = "ß".repeat(50_000);
    const rows = (text: string) => [[text], ["water"], ["salt"]];
    for (const made of FUNCTIONS) {
      for (const { call: args } of made.examples) {
        const stretched = args.map((arg) =>
          Array.isArray(arg) && arg.every(([one]) => typeof one === "string") ? rows(long) : arg,
        );
        let answer: unknown = "";
        try {
          answer = call(made, stretched);
        } catch (error) {
          answer = (error as Error).message;
        }
        for (const cell of [answer].flat(2)) expect(String(cell).length).toBeLessThanOrEqual(50_000);
      }
    }
  });

  test("13. blank rows below change nothing, as A2:A brings them (socialpoint-labs/sheetfu-apps-script PR #26, nithinmurali/pygsheets #329, grafana/google-sheets-datasource #249)", () => {
    for (const { made, example } of ALL) {
      const columns = example.call.filter((arg) => Array.isArray(arg) && arg.length > 1);
      const open = example.call.map((arg) =>
        Array.isArray(arg) && arg.length > 1
          ? [...arg, ...Array.from({ length: 1000 - arg.length }, () => arg[0].map(() => ""))]
          : arg,
      );
      if (columns.length > 0) expectCells(call(made, open), example.gives, example.within);
    }
  });

  test("17. the same cells always give the same answer, which a cache or a reload cannot hurt (0graph/yfinance #4, scryfall/google-sheets #19)", () => {
    const context = vm.createContext({});
    vm.runInContext("Math.random = Date.now = Date = function () { throw new Error('not pure'); };", context);
    vm.runInContext(code, context);
    const twice = (name: string, args: string) =>
      vm.runInContext(`[1, 2].map(function () { return JSON.stringify(${name}(${args})); })`, context) as string[];
    for (const { made, example } of ALL) {
      const [first, second] = twice(
        made.name,
        example.call.map((arg) => (arg === undefined ? "undefined" : JSON.stringify(arg))).join(","),
      );
      expect(second).toBe(first);
      const kept = JSON.stringify(example.call);
      call(made, example.call);
      expect(JSON.stringify(example.call), `${made.name} changes what it is given`).toBe(kept);
    }
  });
});

describe("many cells", () => {
  test("11. one formula a table, not one a row (dropseed/google-sheets-us-states #5, cardinalitypuzzles/cardboard #372)", async () => {
    for (const model of TEMPLATES) {
      const { book, sheet } = await buildSheet(model.sample, { model, options: { ...METRIC, parts: model.parts } });
      const formulas = book.formulas(sheet, book.usedRange(sheet)).flat().join("\n");
      expect(formulas.match(/BAKE_/g)?.length ?? 0, model.name).toBeLessThanOrEqual(18);
    }
    expect(readme()).toMatch(/one\s+formula does a whole table/i);
  });

  test("12. a thousand rows of 26 columns are answered or refused at once: nothing asks outside or waits, and npm run bench tells how quickly (rghuckins/robinhood-google-sheets #14, joseballester/muFunds #66)", () => {
    const block = Array.from({ length: 1000 }, (_, row) =>
      Array.from({ length: 26 }, (_, column) => row * 26 + column),
    );
    for (const made of FUNCTIONS) {
      const long =
        made.examples[0]?.call.map((arg) =>
          Array.isArray(arg) ? Array.from({ length: 1000 }, (_, row) => arg[row % arg.length]) : arg,
        ) ?? [];
      for (const args of [long, Object.keys(made.args).map(() => block)]) {
        try {
          call(made, args);
        } catch (error) {
          expect((error as Error).name).toBe("Error");
        }
      }
    }
  });

  test("14. what a formula fills is left free, and a blocked one recovers (Max-Makhrov/GoogleSheets #5)", async () => {
    for (const model of TEMPLATES)
      expect(lint(model, { ...METRIC, parts: model.parts }).join("\n")).not.toMatch(/both .* stand there/);
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    book.type(sheet, at("grams", 2), "999");
    expect(value("share", 0)).toBe("#REF!");
    book.type(sheet, at("grams", 2), "");
    expect(value("grams", 2)).toBeCloseTo(11220.529, 3);
  });

  test("16. nothing that is written or shown takes the time or a random number as argument (bradjasper/ImportJSON #4)", async () => {
    const volatile = /\b(NOW|TODAY|RAND|RANDBETWEEN|RANDARRAY)\(/;
    expect(readme()).not.toMatch(volatile);
    for (const model of TEMPLATES) {
      const { book, sheet } = await buildSheet(model.sample, { model });
      for (const formula of book.formulas(sheet, book.usedRange(sheet)).flat())
        expect(formula ?? "").not.toMatch(volatile);
    }
  });

  test("27. formulas are written last and nothing is read after them (tanaikech.github.io, 2022-08-31: reading waits for every function)", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const first = book.trail.indexOf("setFormulas");
    expect(first).toBeGreaterThan(0);
    expect(new Set(book.trail.slice(first))).toEqual(new Set(["setFormulas"]));
  });
});

describe("a built sheet", () => {
  test("10. its formulas read the same where the comma is the decimal sign (google-marketing-solutions/advanced-bidding-manager #1, ISA-tools/OntoMaton PR #37, diegomanuel/binance-to-google-sheets #78, #105)", async () => {
    // The numbers in such a workbook are in locale.test.ts, the rules of writing in lint.test.ts and workbook-sheets.test.ts.
    for (const model of TEMPLATES) {
      const german = openWorkbook({ ...(await files()), locale: "de_DE" });
      const { book, sheet } = await buildSheet(model.sample, { model, book: german });
      for (const formula of book.formulas(sheet, book.usedRange(sheet)).flat()) {
        expect((formula ?? "").replace(/"[^"]*"/g, "")).not.toMatch(/,|\d\.\d|\\/);
      }
    }
  });

  test("25. text that begins like a formula stays text (jamiewilson/form-to-google-sheets #3, cds-snc/platform-forms-client PR #2916, nithinmurali/pygsheets #373)", async () => {
    const starts = ["=1+1", "+1", "-1", "@home", "=IMPORTXML(A1)"];
    const { book, sheet, at, value } = await buildSheet({
      ...HANDOUT,
      ingredient: starts,
      kind: ["flour"],
      percent: [1],
    });
    starts.forEach((text, row) => {
      expect(value("ingredient", row + 1)).toBe(text);
      expect(book.cell(sheet, at("ingredient", row + 1)).formula).toBeUndefined();
    });
  });

  test("26. a name that is taken is seen before anything is written, and a failed build removes its sheet (burnash/gspread #85, mricon/ingress-fieldplan PR #27)", async () => {
    const book = await workbook();
    await buildSheet(HANDOUT, { book });
    const second = await buildSheet({ ...HANDOUT, title: "hand-OUT" }, { book });
    expect(second.sheet.toLowerCase()).not.toBe("hand-out");
    const before = book.sheetNames();
    book.failAt(12);
    expect(book.ask({ ask: "build", template: "pan-loaf", options: {}, values: HANDOUT }).ok).toBe(false);
    expect(book.sheetNames()).toEqual(before);
  });

  test("7. copied to where the add-on is not, the numbers stay: the saved file needs no function of ours (evepraisal/evepraisal-google-sheets #7, GoogleChrome/lighthouse #9939, cardinalitypuzzles/cardboard #169)", async () => {
    // On the live service a copy of the file asks for the add-on again; the README's trouble page says so.
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    const file = new exceljs.Workbook();
    await file.xlsx.load((await toXlsx(book.engine)) as unknown as ArrayBuffer);
    const formulas: string[] = [];
    file.getWorksheet(sheet)?.eachRow((row) => {
      row.eachCell((cell) => {
        if (cell.formula !== undefined) formulas.push(cell.formula);
      });
    });
    expect(formulas.length).toBeGreaterThan(0);
    expect(formulas.join("\n")).not.toMatch(/BAKE_/);
    expect(file.getWorksheet(sheet)?.getCell(at("grams", 2)).value).toBe(value("grams", 2));
    expect(readme()).toMatch(/a copy of the file/i);
  });
});
