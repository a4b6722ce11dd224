// Imports point one way, type-only ones included, and every file lies in the folder of its topic.

import { existsSync, readdirSync, readFileSync } from "node:fs";
import { posix } from "node:path";
import { describe, expect, test } from "vitest";

/** What the files of a folder may import beside their own folder. */
const ALLOWED: Readonly<Record<string, readonly string[]>> = {
  shared: [],
  templates: ["shared"],
  "src/functions": ["shared"],
  "src/planners": ["shared", "templates"],
  "src/add-on": ["shared", "src/functions"],
  sidebar: ["shared", "templates", "src/planners"],
  "src/workbook": ["shared", "templates", "src/planners", "src/build"],
  "src/build": ["shared", "templates", "src/functions", "src/workbook", "sidebar"],
};

/** The topics of shared/: each may import those before it. */
const TOPICS = [
  "base",
  "cells",
  "sheet",
  "larder",
  "formula",
  "typing",
  "water",
  "tins",
  "enrichment",
  "recipe",
  "review",
  "label",
  "money",
  "price-list",
  "production",
  "card",
  "drawings",
  "adjust",
  "protocol",
];

type Imports = ReadonlyMap<string, readonly string[]>;

const filesIn = (folder: string): string[] =>
  readdirSync(folder, { recursive: true, encoding: "utf8" }).map((file) => `${folder}/${file.replaceAll("\\", "/")}`);
const isSource = (file: string) => file.endsWith(".ts") && !file.endsWith(".d.ts");

/** Statements that import or re-export, types as well as values, and `import("…")` within a line. */
const SPECIFIER = /^(?:import|export)\b[^"'`;()=]*"(\.[^"]+)"|\bimport\("(\.[^"]+)"\)/gm;

const importsOf = (file: string, source: string): string[] =>
  [...source.matchAll(SPECIFIER)].map(([, statement, inline]) =>
    posix.normalize(posix.join(posix.dirname(file), statement ?? inline ?? "")),
  );

/** Every circle as the files it runs through, the first named again at its end. */
function circles(imports: Imports): string[] {
  const found: string[] = [];
  const done = new Set<string>();
  const visit = (file: string, path: readonly string[]): void => {
    const start = path.indexOf(file);
    if (start >= 0) found.push([...path.slice(start), file].join(" → "));
    if (start >= 0 || done.has(file)) return;
    for (const next of imports.get(file) ?? []) visit(next, [...path, file]);
    done.add(file);
  };
  for (const file of imports.keys()) visit(file, []);
  return found;
}

const folderOf = (file: string) => file.split("/", file.startsWith("src/") ? 2 : 1).join("/");
const topicOf = (file: string) => file.split("/")[1] ?? "";

/** The imports that lead from a folder or topic to one that it may not know. */
function forbidden(imports: Imports): string[] {
  const isAllowed = (from: string, to: string) => {
    const [folder, other] = [folderOf(from), folderOf(to)];
    if (folder !== other) return ALLOWED[folder]?.includes(other) ?? false;
    return folder !== "shared" || TOPICS.indexOf(topicOf(to)) <= TOPICS.indexOf(topicOf(from));
  };
  return [...imports].flatMap(([from, to]) =>
    to.filter((one) => isSource(one) && !isAllowed(from, one)).map((one) => `${from} imports ${one}`),
  );
}

const SOURCES = Object.keys(ALLOWED).flatMap(filesIn).filter(isSource);
const IMPORTS: Imports = new Map(SOURCES.map((file) => [file, importsOf(file, readFileSync(file, "utf8"))]));

test("every relative import leads to a file, so that none escapes the checks below", () => {
  expect(IMPORTS.size).toBeGreaterThan(300);
  expect([...IMPORTS].flatMap(([from, to]) => to.filter((one) => !existsSync(one)).map((one) => [from, one]))).toEqual(
    [],
  );
});

test("no file imports itself by way of others", () => expect(circles(IMPORTS)).toEqual([]));

test("no folder imports one that it may not know, and no topic of shared/ a later one", () =>
  expect(forbidden(IMPORTS)).toEqual([]));

describe("the checks themselves", () => {
  test("imports of every form are read", () => {
    const source = [
      'import { a } from "./a.ts";',
      'import type { B } from "../b.ts";',
      'export { c } from "./c.ts";',
      'import "./d.ts";',
      'const e = await import("./e.ts");',
      'import fs from "node:fs";',
    ].join("\n");
    expect(importsOf("shared/x/y.ts", source)).toEqual([
      "shared/x/a.ts",
      "shared/b.ts",
      "shared/x/c.ts",
      "shared/x/d.ts",
      "shared/x/e.ts",
    ]);
  });

  test("a circle of three is found, a diamond is none", () => {
    expect(
      circles(
        new Map([
          ["a", ["b"]],
          ["b", ["c"]],
          ["c", ["a"]],
        ]),
      ),
    ).toEqual(["a → b → c → a"]);
    expect(
      circles(
        new Map([
          ["a", ["b", "c"]],
          ["b", ["d"]],
          ["c", ["d"]],
        ]),
      ),
    ).toEqual([]);
  });

  test.each([
    ["shared/base/words.ts", "shared/cells/cell.ts"],
    ["shared/recipe/read.ts", "shared/protocol/questions.ts"],
    ["shared/base/words.ts", "src/functions/call.ts"],
    ["templates/index.ts", "src/planners/planners.ts"],
    ["src/functions/call.ts", "src/add-on/server.ts"],
    ["src/add-on/server.ts", "src/planners/planners.ts"],
    ["sidebar/main.ts", "src/add-on/server.ts"],
    ["sidebar/main.ts", "tests/kit/scale.ts"],
  ])("%s may not import %s", (from, to) => {
    expect(forbidden(new Map([[from, [to]]]))).toEqual([`${from} imports ${to}`]);
  });
});

describe("folders", () => {
  const flat = (folder: string) =>
    readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [] : [one.name]));
  const folders = (folder: string) =>
    readdirSync(folder, { withFileTypes: true }).flatMap((one) => (one.isDirectory() ? [one.name] : []));

  test("shared/ is a folder for each topic, and no file lies beside them", () => {
    expect(folders("shared").sort()).toEqual([...TOPICS].sort());
    expect(flat("shared")).toEqual([]);
  });

  test("tests/ has the folders of what it tests, data and a kit, and no file but its tsconfig lies beside them", () => {
    const tested = [...TOPICS, ...Object.keys(ALLOWED).map((folder) => posix.basename(folder)), "data", "kit"];
    expect(folders("tests").filter((folder) => !tested.includes(folder))).toEqual([]);
    expect(flat("tests")).toEqual(["tsconfig.json"]);
  });
});
