import type { Argument, CellValue, Example, SheetFunction } from "../functions/define.ts";

/** A call as a person types it in a sheet. */
export function formulaText(name: string, args: readonly Argument[]): string {
  return `=${name}(${args.map(literal).join("; ")})`;
}

function literal(arg: Argument): string {
  if (arg === undefined) return "";
  if (typeof arg === "object") return `{${arg.map((row) => row.map(value).join(", ")).join("; ")}}`;
  return arg === "" ? "" : value(arg);
}

const value = (cell: CellValue): string => (typeof cell === "string" ? `"${cell}"` : String(cell).toUpperCase());

/** `BAKE_MIXES(dough; mixer_limit; [mixer_least])`. */
export function signature({ name, args }: SheetFunction): string {
  const parts = Object.entries(args).map(([arg, { is }]) => (is.optional && is.shape !== "column" ? `[${arg}]` : arg));
  return `${name}(${parts.join("; ")})`;
}

/** Help as the pushed file holds it: a comment cannot escape a letter, so these are spelled in ASCII. */
export const asciiHelp = (words: string): string =>
  words
    .replace(/ ?°([CF])/g, " degrees $1")
    .replace(/²/g, "2")
    .replace(/³/g, "3")
    .replace(/[“”]/g, '"')
    .replace(/[‘’]/g, "'")
    .replace(/[–—]/g, "-")
    .replace(/×/g, "x")
    .replace(/÷/g, "/");

/** The top-level function that Apps Script sees, its help right above it. */
export function stub(sheetFunction: SheetFunction): string {
  const args = Object.entries(sheetFunction.args);
  const lines = [
    sheetFunction.summary,
    "",
    ...args.map(
      ([name, { is, says }]) => `@param {${typeOf(is.hint.of, is.shape, sheetFunction.rowwise)}} ${name} ${says}`,
    ),
    `@return ${sheetFunction.returns.says}`,
    "@customfunction",
  ];
  const names = args.map(([name]) => name).join(", ");
  return [
    "/**",
    ...lines.map((line) => ` * ${asciiHelp(line)}`.trimEnd()),
    " */",
    `function ${sheetFunction.name}(${names}) {`,
    `  return Gramwright.call("${sheetFunction.name}", arguments);`,
    "}",
  ].join("\n");
}

function typeOf(hint: string, shape: string, rowwise: boolean): string {
  const one = hint === "number" || hint === "percent" ? "number" : "string";
  if (shape === "cell") return rowwise ? `${one}|Array<Array<${one}>>` : one;
  return `Array<Array<${one}>>`;
}

/** Where the whole reference is printed; the README's index links into it. */
export const REFERENCE_FILE = "src/functions/README.md";

/** People's sheets hold the names: what `frozen.txt` beside the functions lists stays. */
const FROZEN = `Names and the order of arguments are frozen from 2026-11-30: a formula in a sheet goes on working. Only optional last arguments are ever
added.`;

const REFERENCE_HEAD = `# Function reference

Printed by \`npm run build\` from the functions beside it; never edited by hand. Arguments in brackets may be left out. An argument that holds
several values takes a column; a row is read as one. The weights of one call share one unit. Figures are rounded to four decimals here.

${FROZEN}`;

/** The reference of all sheet functions, a whole Markdown file. */
export function reference(functions: readonly SheetFunction[]): string {
  return `${[REFERENCE_HEAD, ...byFamily(functions, "##", (some) => some.map(printEntry).join("\n\n"))].join("\n\n")}\n`;
}

/** One line a function, under its family, linked to its entry in the reference. */
export function functionIndex(functions: readonly SheetFunction[]): string {
  return byFamily(functions, "###", (some) => some.map(indexLine).join("\n")).join("\n\n");
}

function indexLine(sheetFunction: SheetFunction): string {
  return `- [\`${sheetFunction.name}\`](${REFERENCE_FILE}#${anchor(signature(sheetFunction))}) — ${sheetFunction.summary}`;
}

/** The anchor that Markdown viewers give a heading: small letters, spaces as hyphens, punctuation dropped. */
const anchor = (heading: string): string =>
  heading
    .toLowerCase()
    .replace(/[^\w\- ]/g, "")
    .replace(/ /g, "-");

function byFamily(
  functions: readonly SheetFunction[],
  level: string,
  section: (some: readonly SheetFunction[]) => string,
): string[] {
  const families = [...new Set(functions.map(({ family }) => family))];
  return families.map((family) => `${level} ${family}\n\n${section(functions.filter((one) => one.family === family))}`);
}

function printEntry(sheetFunction: SheetFunction): string {
  const args = Object.entries(sheetFunction.args).map(([name, { says }]) => `- \`${name}\` — ${says}`);
  const [example] = sheetFunction.examples;
  const [refusal] = sheetFunction.refusals;
  return [
    `### \`${signature(sheetFunction)}\``,
    `${sheetFunction.summary} ${sheetFunction.returns.says}${sheetFunction.rowwise ? " Every argument may be one cell or a column." : ""}`,
    args.join("\n"),
    [
      example ? `\`${formulaText(sheetFunction.name, example.call)}\` gives ${resultText(example)}.` : "",
      refusal ? `\`${formulaText(sheetFunction.name, refusal.call)}\` is refused: “${refusal.because}”` : "",
    ].join("<br>\n"),
  ].join("\n\n");
}

function resultText({ gives }: Example): string {
  if (typeof gives !== "object") return `**${shownCell(gives)}**`;
  return gives.map((row) => row.map((cell) => `**${shownCell(cell)}**`).join(" and ")).join("; ");
}

function shownCell(cell: CellValue): string {
  if (cell === "") return "(blank)";
  return typeof cell === "number" ? String(Math.round(cell * 1e4) / 1e4) : String(cell);
}
