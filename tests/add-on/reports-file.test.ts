// What went wrong in other people's add-ons, by public report; each is a test or a reason why it cannot happen.
// Reports 1 to 29 are numbered as they were collected; owner/project #number is a thread on GitHub.
// Here: the pushed file, the menu, the sidebar and permissions.
import { readFileSync } from "node:fs";
import vm from "node:vm";
import * as esbuild from "esbuild";
import { beforeAll, describe, expect, test } from "vitest";
import { failureSentence } from "../../sidebar/kit/ask.ts";
import { asciiHelp } from "../../src/build/print.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { findStubs } from "../../src/workbook/engine/stubs.ts";
import { expectCells } from "../functions/support.ts";
import { files, workbook } from "../templates/sheet-support.ts";
import { ALL, manifest, readme } from "./reports-kit.ts";

let code = "";
let sidebar = "";
let script = "";
beforeAll(async () => {
  ({ codeJs: code, sidebarHtml: sidebar } = await files());
  script = /[\s\S]*<script data-sum="[^"]*">\n([\s\S]*)<\/script>/.exec(sidebar)?.[1] ?? "";
});

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
    expect(first).toMatchObject({ caption: "Open Gramwright", functionName: "openSidebar" });
    book.runMenu("Open Gramwright");
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

  test("18. no function reads a setting of the owner or of anybody: the one store that is named is the document's (ljay79/jira-tools #79, #188)", () => {
    expect(code).not.toMatch(/CacheService|UrlFetchApp|DriveApp|Session\b|getUserProperties|getScriptProperties/);
    expect(code.match(/PropertiesService/g)).toHaveLength(1);
    expect(code).toMatch(/PropertiesService\.\s*getDocumentProperties\(\)/);
  });

  test("20. several accounts in one browser: the sidebar asks on loading, and a refusal says what to do (alexwforsythe/code-blocks #53, #167; Synthoid/ExportSheetData #116; enuchi/React-Google-Apps-Script #46)", () => {
    // What the page shows and when is in sidebar-faults.test.ts; here: the sentences for a refusal and for silence.
    for (const message of [
      "PERMISSION_DENIED",
      "You do not have permission to call openSidebar",
      "Authorization is required to perform that action.",
    ])
      expect(failureSentence({ how: "failed", message })).toMatch(/signed in to one account only/);
    expect(failureSentence({ how: "silent", message: "" })).toMatch(/signed in to one account only/);
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
