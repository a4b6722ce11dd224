// What the live service does by public reports and its documentation, gathered in November 2026, and what each means here: a test, or the
// reason why there is none. Sections: 1 the page in its frame, 2 the script, 3 cells that are still calculating, 4 service calls,
// 5 formulas, 6 installing, 7 further reports; owner/project #number is a thread on GitHub.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { beforeAll, describe, expect, test } from "vitest";
import { isWaitingText } from "../../shared/protocol/waiting.ts";
import { packedFiles } from "../../src/build/pack.ts";
import { sourceArchive } from "../../src/build/source-archive.ts";
import { workspaceText } from "../../src/build/workspace.ts";
import { findStubs } from "../../src/workbook/engine/stubs.ts";
import { files, workbook } from "../templates/sheet-support.ts";
import { manifest, readme } from "./reports-kit.ts";

let code = "";
let sidebar = "";
let install = "";
beforeAll(async () => {
  ({ codeJs: code, sidebarHtml: sidebar } = await files());
  install = String((await packedFiles())["gramwright-install.html"]);
});

const ASCII = /^[\n\u0020-\u007e]*$/;
const SCOPES = ["spreadsheets.currentonly", "script.container.ui"].map(
  (name) => `https://www.googleapis.com/auth/${name}`,
);

/** A check by its number; a text is the reason why nothing can be checked here, or the test file that does. */
const ROWS: Readonly<Record<string, (() => void | Promise<void>) | string>> = {
  "1.1 the page needs no more of a policy than any inline script": () => {
    const below = sidebar.slice(sidebar.indexOf("-->"));
    expect(below).not.toMatch(/\beval\(|new Function|importScripts|document\.write/);
  },
  "1.2 the policy of the real frame": "nothing documents it, and nobody here could reach it",
  "1.3 the time until the page stands": "npm run bench measures it",
  "1.4 nothing looks like a comment (enuchi #157, #170)": () => {
    const below = sidebar.slice(sidebar.indexOf("-->") + 3);
    for (const sign of ["//", "/*", "<!--", "<?", "<%", "`"]) expect(below.includes(sign), sign).toBe(false);
  },
  "1.5 no control character (gimite/google-drive-ruby #270, #186)": () => {
    for (const file of [code, sidebar]) expect(ASCII.test(file)).toBe(true);
  },
  "1.6 the size of the page (google/clasp #771, #743)": () =>
    expect(readme()).toMatch(/a push of the page fails with a server error, use the install page/),
  "1.7 what is appended to the page": async () => {
    const book = await workbook();
    book.runMenu("Test this installation");
    expect(book.shown.sidebar?.added).toBe('<i id="check-now" hidden></i>');
  },
  "1.8 a frame that is interactive already": () =>
    expect(readFileSync("sidebar/main.ts", "utf8")).toContain('document.readyState === "loading"'),
  "1.9 nothing is packed so that a person could not read it": () => {
    for (const file of [code, sidebar]) expect(file).not.toMatch(/[A-Za-z0-9+/]{400}/);
  },
  "2.1 the script parses in a bare context": "tests/build/damage.test.ts opens it so, whole and damaged",
  "2.2 read as another encoding it is the same (Tampermonkey #720)": "tests/build/damage.test.ts",
  "2.3 the help stands right above each function": () => expect(findStubs(code).length).toBeGreaterThan(50),
  "2.4 limits of the script's size": "none is documented",
  "2.5 functions call no service": "tests/build/build.test.ts answers every example where there is none",
  "2.6 many calls at once on opening (clupasq/GoogleApps_SumByColor #4)": () =>
    expect(readme()).toMatch(/about 30 functions at a time/),
  "3 still calculating is an error value in a sheet":
    "tests/templates/still-calculating.test.ts and tests/sidebar/ask-again.test.ts",
  "4.1 the two scopes are enough": () => expect(manifest().oauthScopes).toEqual(SCOPES),
  "4.2 number formats, alignments, warnings, whole rows":
    "tests/add-on/service-calls.test.ts holds every call to what the stand-in takes, which is stricter",
  "4.3 a chart in front": "tests/add-on/outage.test.ts",
  "4.4 all permissions are asked for first": "tests/workbook/script-permissions.test.ts",
  "4.5 a cell that is still calculating": "as 3",
  "4.6 whole rows alone go into a table": "as 7.21",
  "5 formulas": "tests/build/lint.test.ts refuses every other function, order and literal",
  // tests/templates/logs.test.ts has products with such names.
  "5.1 a name that is a pattern in SUMIF: no criterion of a sheet is what a person typed": () => {
    const names = readdirSync("templates", { recursive: true, encoding: "utf8" }).filter((name) => /\.ts$/.test(name));
    expect(names.length).toBeGreaterThan(30);
    for (const name of names)
      expect(readFileSync(`templates/${name}`, "utf8")).not.toMatch(
        /\b(?:SUM|COUNT|AVERAGE|MAX|MIN)IFS?\([^;`"]*;(?!")/,
      );
  },
  "6.1 clasp's commands": "tests/build/installing.test.ts runs the one that needs no account",
  "6.2 the project's name is the menu's": () =>
    expect(install).toMatch(/<b>Untitled project<\/b>[\s\S]*<b>Gramwright<\/b>/),
  "6.3 every spreadsheet of a domain; one workbook and its copies": () => {
    expect(workspaceText("{}")).toMatch(/Private/);
    expect(readme()).toMatch(/One workbook and its copies/);
  },
  "6.4 a test deployment":
    "it is for people who may edit a standalone script, by file and by hand; nothing here uses one",
  "6.5 a library": "as 7.23",
  "7.1 mail stops script files, also in an archive": () => {
    expect(Object.keys(sourceArchive()).filter((name) => /\.js$/i.test(name))).toEqual([]);
    expect(readme()).toMatch(/mail programs block files with scripts/);
  },
  "7.2 a text program that shows a page as formatted text": () => expect(install).toMatch(/data-copy="sidebar-html"/),
  "7.3 a wrong encoding (Tampermonkey #720)": () => expect(ASCII.test(code)).toBe(true),
  "7.4 control characters (gimite/google-drive-ruby #270)": () => expect(ASCII.test(sidebar)).toBe(true),
  "7.5 the page made as a script (RitwikGA/FacebookReportingTool #2)": () =>
    expect(install).toMatch(/Missing ; before statement/),
  "7.6 permissions are ticked one by one": () => expect(install).toMatch(/two permissions\. Tick both/),
  "7.7 the menu must be chosen again": () =>
    expect(install).toMatch(/Choose the menu again[\s\S]*nothing opens by itself/),
  "7.8 This app is blocked (google-analytics-utilities #13, ericyd/gdrive-copy #193)": () => {
    expect(install).toMatch(/"This app is blocked"/);
    expect(readme()).toMatch(/only its Google Workspace administrator can lift that/);
  },
  "7.9 Sign in temporarily disabled (bradjasper/ImportJSON #141)": () => expect(manifest().oauthScopes).toHaveLength(2),
  "7.10 Loading is an error": "as 3",
  "7.11 a waiting cell is read as #N/A (burnash/gspread #164)": () => expect(isWaitingText("#N/A")).toBe(true),
  "7.12 a waiting cell is read as Loading (jsoma/tabletop #60)": () => expect(isWaitingText("Loading...")).toBe(true),
  "7.13 cut at // (enuchi #170)": "as 1.4",
  "7.14 an error at the push of a big page (google/clasp #771)": "as 1.6",
  "7.15 a push that an open editor does not see (google/clasp #507)": () =>
    expect(readme()).toMatch(/Close the script's tab while you push/),
  "7.16 clasp forbidden by an organisation (google/clasp #85, #972)": () =>
    expect(readme()).toMatch(/admin_policy_enforced/),
  "7.17 create overwrites the manifest (google/clasp #643)": () =>
    expect(readme().indexOf("clasp create-script")).toBeLessThan(readme().indexOf("npm run push")),
  "7.18 a bound script that is not found (google/clasp #208, #573)": () =>
    expect(readme()).toMatch(/signed in to another account/),
  "7.19 fifty calls at once on opening": "as 2.6",
  "7.20 big answers (nuadi/googlecrestscript #11, Blacksmoke16/GESI #27)":
    "tests/cells/long-text.test.ts and tests/functions/limits.test.ts bound them",
  "7.21 no cells put in over an array formula (node-google-spreadsheet #474)": () =>
    expect(readme()).toMatch(/Insert, delete and sort rows/),
  "7.22 a warning takes no editors (burnash/gspread #1437)": () =>
    expect(readFileSync("src/add-on/write.ts", "utf8")).not.toMatch(/addEditor|removeEditor|setDomainEdit/),
  "7.23 libraries have no functions in cells (oshliaer/lodashgs #2)": () => expect(manifest().dependencies).toEqual({}),
  "7.24 each copy is a script of its own (apps-script-oauth2 #222, getodk/central #1795)": () => {
    expect(readme()).toMatch(/as a script of its own/);
    expect(install).toMatch(/Gramwright \d+\.\d+\.\d+/);
    // Each sheet says which version built it: tests/sheet/built-by.test.ts.
    expect(readme()).toMatch(/the first row of each sheet names the version/);
  },
  "7.25 chips arrive as their text (node-google-spreadsheet #721, burnash/gspread #1576)":
    "an argument is a text then, which every function takes as one",
};

describe("the live service", () => {
  for (const [row, check] of Object.entries(ROWS)) if (typeof check === "function") test(row, check);

  test("every row has a test or a reason, and the tests that are named are there", () => {
    const numbers = Object.keys(ROWS).map((row) => row.split(" ")[0]);
    const rows = { 1: 9, 2: 6, 4: 6, 6: 5, 7: 25 };
    for (const [section, last] of Object.entries(rows))
      for (let row = 1; row <= last; row++) expect(numbers).toContain(`${section}.${row}`);
    expect(numbers).toEqual(expect.arrayContaining(["3", "5", "5.1"]));
    // What points to another row points to one that is there.
    for (const check of Object.values(ROWS))
      if (typeof check === "string" && check.startsWith("as ")) expect(numbers).toContain(check.slice(3));
    for (const check of Object.values(ROWS))
      for (const [path = ""] of typeof check === "string" ? check.matchAll(/tests\/[\w/.-]+\.test\.ts/g) : [])
        expect(existsSync(path), path).toBe(true);
    expect(readdirSync("src/add-on")).toContain("appsscript.json");
  });
});
