// Every text of the product's sources that a person may see, as it stands in the code: what a template puts in is "…".
import { readdirSync, readFileSync } from "node:fs";
import { parseAst } from "vitest/node";

/** A sentence, or a label, and where it stands; a refusal is worded to go on after the name of an argument or a cell. */
export type ShownText = { readonly at: string; readonly says: string; readonly isRefusal: boolean };

const FOLDERS = ["shared", "sidebar", "templates", "src/functions", "src/planners", "src/add-on", "src/workbook"];
/** Tables of names and patterns that are read, never shown; what the stand-in tells a programmer. */
const UNSHOWN =
  /^shared\/(?:larder\/larder-rows|sheet\/sheet-calls|larder\/kind-words)|^sidebar\/functions\/(?:trade-words|help)|^src\/workbook\/(?:engine|service|xlsx)\//;
/** Where a figure comes from is for readers of the code. */
const UNSHOWN_KEYS = new Set(["source", "formula", "gives"]);

type Node = { readonly type: string; readonly start: number; readonly [key: string]: unknown };
const isNode = (value: unknown): value is Node => typeof value === "object" && value !== null && "type" in value;

/** Words that the recipe reader knows, parted by blanks. */
const isWordList = (node: Node): boolean => {
  if (node.type !== "CallExpression") return false;
  const { name, property } = node.callee as { name?: string; property?: { name?: string } };
  return name === "words" || property?.name === "split";
};

function* textsOf(node: unknown, key = ""): Generator<{ readonly start: number; readonly text: string }> {
  if (Array.isArray(node)) for (const one of node) yield* textsOf(one, key);
  if (!isNode(node) || /^(?:Import|Export.*From|TSLiteralType|TSImport)/.test(node.type)) return;
  if (node.type === "Property") {
    const name = (node.key as { name?: string }).name ?? "";
    if (!UNSHOWN_KEYS.has(name)) yield* textsOf(node.value, name);
    return;
  }
  if (isWordList(node)) return;
  if (node.type === "Literal" && typeof node.value === "string") yield { start: node.start, text: node.value };
  if (node.type === "TemplateLiteral") {
    const parts = node.quasis as { value: { cooked: string } }[];
    yield { start: node.start, text: parts.map(({ value }) => value.cooked).join("…") };
  }
  for (const [name, value] of Object.entries(node)) if (name !== "type") yield* textsOf(value, name);
}

/** Formulas, patterns, marks of pages and styles, and single words are no sentences. */
const isProse = (text: string): boolean =>
  /[a-z]{2,} [a-z]{2,}/i.test(text) && !/^=|[{}<>]{1}|=>|\bvar\(|@[a-z_]+|^[.#]|;"|\(\?[:=!]|\w\|\w/.test(text);

/** All of them, sentence by sentence. */
export function shownTexts(): ShownText[] {
  const files = FOLDERS.flatMap((folder) =>
    readdirSync(folder, { recursive: true, encoding: "utf8" }).map((name) => `${folder}/${name.replaceAll("\\", "/")}`),
  ).filter((file) => /(?<!\.d)\.ts$/.test(file) && !UNSHOWN.test(file));
  return files.flatMap((file) => {
    const source = readFileSync(file, "utf8");
    return [...textsOf(parseAst(source, { lang: "ts" }).body)]
      .filter(({ text }) => isProse(text))
      .flatMap(({ start, text }) => {
        const at = `${file}:${source.slice(0, start).split("\n").length}`;
        const isRefusal = /^(?:BAKE_|[a-z…])/.test(text);
        return text
          .split(/(?<=[.!?:][”"’)]?)\s+(?=[\p{Lu}…“])|\n/u)
          .map((says) => ({ at, says: says.trim(), isRefusal }));
      });
  });
}

export const wordsOf = (says: string): number => says.split(/\s+/).filter((word) => /[\p{L}\p{N}…]/u.test(word)).length;
