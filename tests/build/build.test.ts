import { readFileSync } from "node:fs";
import vm from "node:vm";
import * as esbuild from "esbuild";
import { beforeAll, describe, expect, test } from "vitest";
import { codeBundle, codeJs, outdatedDocuments } from "../../src/build/build.ts";
import { sidebarHtml } from "../../src/build/page.ts";
import { REFERENCE_FILE } from "../../src/build/print.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { expectCells, typed } from "../functions/support.ts";

let code = "";
let sidebar = "";
beforeAll(async () => {
  code = await codeJs();
  sidebar = await sidebarHtml();
});

/** A context with the language and nothing else: no timers, URL, TextEncoder, process, console. */
function bare(): vm.Context {
  const context = vm.createContext({});
  vm.runInContext(code, context);
  return context;
}

const callIn = (context: vm.Context, name: string, args: readonly unknown[]): unknown => {
  const words = args.map((arg) => (arg === undefined ? "undefined" : JSON.stringify(arg))).join(", ");
  const json = vm.runInContext(`JSON.stringify(${name}(${words}))`, context) as string;
  return JSON.parse(json);
};

describe("Code.js in a bare context", () => {
  test("has the language alone around it", () => {
    const names = ["setTimeout", "URL", "TextEncoder", "process", "fetch", "SpreadsheetApp", "console"];
    for (const name of names)
      expect(vm.runInContext(`typeof ${name}`, vm.createContext({})), name).toBe(
        name === "console" ? "object" : "undefined",
      );
  });

  test("answers every example and refuses every refusal", () => {
    const context = bare();
    for (const made of FUNCTIONS) {
      for (const { call, gives, within } of made.examples) expectCells(callIn(context, made.name, call), gives, within);
      for (const { call, because } of made.refusals) {
        let sentence = "answered";
        try {
          callIn(context, made.name, call);
        } catch (error) {
          sentence = (error as Error).message;
        }
        expect(sentence, typed(made.name, call)).toBe(because);
      }
    }
  });

  test("makes no other global than the documented ones", () => {
    const before = new Set(Object.getOwnPropertyNames(vm.runInContext("globalThis", vm.createContext({}))));
    const context = bare();
    const after = vm.runInContext("Object.getOwnPropertyNames(globalThis)", context) as string[];
    const documented = [
      "Gramwright",
      "onOpen",
      "onInstall",
      "onEdit",
      "openSidebar",
      "checkAddOn",
      "answerSidebar",
      "GRAMWRIGHT_PROBE",
      "GRAMWRIGHT_GIVE",
      // By these the script reads its own text; names that end in _ are no client's to call.
      "gramwrightBody_",
      "gramwrightCanary_",
      "gramwrightParts_",
      "gramwrightSums_",
      ...FUNCTIONS.map(({ name }) => name),
    ];
    expect(after.filter((name) => !before.has(name)).sort()).toEqual(documented.sort());
  });

  test("each stub is a top-level function with its help right above it and its parameters by name", () => {
    for (const made of FUNCTIONS) {
      const names = Object.keys(made.args);
      const at = code.indexOf(`\nfunction ${made.name}(${names.join(", ")}) {\n`);
      expect(at, made.name).toBeGreaterThan(0);
      const above = code.slice(code.lastIndexOf("/**", at), at);
      expect(above.endsWith(" */")).toBe(true);
      expect(above.match(/\*\//g)).toHaveLength(1);
      expect(above).toContain("@customfunction");
      expect([...above.matchAll(/@param \{[^}]+\} (\w+) \S/g)].map(([, name]) => name)).toEqual(names);
    }
  });

  test("uses no syntax after ES2020, and no module words", async () => {
    const [newest, safe] = await Promise.all(
      ["esnext", "es2020"].map((target) => esbuild.transform(code, { target, legalComments: "inline" })),
    );
    expect(safe?.code).toBe(newest?.code);
    expect(code).not.toMatch(
      /\bimport\s*\(|^export |\brequire\(|\.replaceAll\(|Object\.hasOwn\(|structuredClone|\.at\(-/m,
    );
  });

  test("holds no template and nothing that plans a sheet", async () => {
    const { sources } = await codeBundle();
    expect(
      Object.keys(sources).filter((source) =>
        /^(templates|sidebar|src\/planners)|shared\/sheet\/(plan|layout)\.ts$/.test(source),
      ),
    ).toEqual([]);
  });

  test("touches no service while it is loaded or while a formula is computed", () => {
    const touched: string[] = [];
    const trap = (name: string) =>
      new Proxy(() => undefined, {
        get: (_, member) => touched.push(`${name}.${String(member)}`),
        apply: () => touched.push(name),
      });
    const context = vm.createContext(
      Object.fromEntries(
        ["SpreadsheetApp", "LockService", "HtmlService", "PropertiesService"].map((name) => [name, trap(name)]),
      ),
    );
    vm.runInContext(code, context);
    for (const { name, examples } of FUNCTIONS) callIn(context, name, examples[0]?.call ?? []);
    expect(touched).toEqual([]);
  });
});

describe("sidebar.html", () => {
  test("is one file that asks nothing of anywhere", () => {
    expect(/<script[^>]+src|<link|@import|url\(|https?:\/\//i.exec(sidebar)?.[0]).toBeUndefined();
  });

  test("says in its first lines what it is and how it is made, and holds no other comment or scriptlet", () => {
    const [head = "", ...rest] = sidebar.split("-->");
    expect(head).toContain('run "npm run build"');
    const below = rest.join("-->");
    for (const sign of ["//", "/*", "<!--", "<?"]) expect(below.includes(sign), sign).toBe(false);
    expect(below.match(/<script/g)).toHaveLength(3);
  });
});

describe("the pushed files", () => {
  test.each(["Code.js", "sidebar.html"])(
    "%s is ASCII without control characters, in lines of about 500, where no list of words is longer",
    (name) => {
      const text = name === "Code.js" ? code : sidebar;
      const strange = [...text].find((sign) => sign !== "\n" && (sign < " " || sign > "~"));
      expect(strange).toBeUndefined();
      expect(Math.max(...text.split("\n").map(({ length }) => length))).toBeLessThan(1000);
    },
  );

  test("Code.js says in its first lines what it is and how it is made", () => {
    expect(code.slice(0, 300)).toMatch(/^\/\*\*\n \* Gramwright: [\s\S]*run "npm run build"[\s\S]*@OnlyCurrentDoc/);
  });

  test("Code.js read as Latin-1 answers the same names", () => {
    const context = vm.createContext({});
    vm.runInContext(Buffer.from(code, "utf8").toString("latin1"), context);
    expect(callIn(context, "BAKE_GRAMS", ["\u00bd cup honey"])).toBe(
      callIn(bare(), "BAKE_GRAMS", ["\u00bd cup honey"]),
    );
  });
});

test("the manifest asks for this spreadsheet and the sidebar, and is no card add-on", () => {
  const manifest = JSON.parse(readFileSync("src/add-on/appsscript.json", "utf8"));
  expect(manifest.oauthScopes).toEqual([
    "https://www.googleapis.com/auth/spreadsheets.currentonly",
    "https://www.googleapis.com/auth/script.container.ui",
  ]);
  expect(manifest.runtimeVersion).toBe("V8");
  expect(manifest).not.toHaveProperty("addOns");
});

test("the README's index and the reference are what the functions print", () => {
  expect(outdatedDocuments()).toEqual([]);
});

describe("the printed reference", () => {
  const text = readFileSync(REFERENCE_FILE, "utf8");

  test("has an entry for every function, and the README a line that leads to it", () => {
    const readme = readFileSync("README.md", "utf8");
    const headings = [...text.matchAll(/^### `(.+)`$/gm)].map(([, heading = ""]) => heading);
    const links = [...readme.matchAll(/^- \[`(BAKE_\w+)`\]\(src\/functions\/README\.md#([^)]+)\) — \S/gm)];
    expect(headings.map((heading) => heading.split("(")[0])).toEqual(FUNCTIONS.map(({ name }) => name));
    expect(links.map(([, name]) => name)).toEqual(FUNCTIONS.map(({ name }) => name));
    expect(links.map(([, , anchor]) => anchor)).toEqual(
      headings.map((heading) =>
        heading
          .toLowerCase()
          .replace(/[^a-z0-9_ -]/g, "")
          .replace(/ /g, "-"),
      ),
    );
  });

  test("shows a blank result as (blank)", () => {
    expect(text).toContain("**(blank)**");
    expect(text).not.toContain("****");
  });
});

test("nothing is needed at run time, and the lock file holds no addresses", () => {
  expect(JSON.parse(readFileSync("package.json", "utf8"))).not.toHaveProperty("dependencies");
  expect(readFileSync("package-lock.json", "utf8")).not.toMatch(/"resolved"/);
});
