import type { FormulaNode, Library, Locale, Token } from "./library.ts";
import { withEngineNames } from "./places.ts";

// Two ways of writing one formula. Scripts write the dialect every locale of a sheet reads alike: `;` between
// arguments, no decimal literal, no horizontal array. The engine keeps the US form inside: `,` between arguments.

/** Functions that make a sheet work through a range cell by cell, whatever stands inside them. */
const ARRAY_CONTEXT = new Set(["ARRAYFORMULA", "SUMPRODUCT", "FILTER", "SORT", "SORTN", "MMULT"]);
const GIVES_ARRAY = new Set([
  "FILTER",
  "SORT",
  "SORTN",
  "UNIQUE",
  "TRANSPOSE",
  "SEQUENCE",
  "FLATTEN",
  "VSTACK",
  "HSTACK",
  "SPLIT",
]);
/** Take a range for every criterion, which the engine says of the first alone. */
const TAKES_RANGES = new Set(["SUMIFS", "COUNTIFS", "AVERAGEIFS", "MAXIFS", "MINIFS"]);
const TAKES_ONE_VALUE = new Set(["IF", "IFS", "IFERROR", "IFNA", "SWITCH"]);

/** A formula as a script gives it, checked, in the engine's form. Throws with the reason when a sheet would not take it. */
export function fromScript(library: Library, locale: Locale, formula: string): string {
  if (!formula.startsWith("=")) throw new Error(`A formula starts with "=": ${formula}`);
  const tokens = library.tokenize(formula, { ...locale, decimalSeparator: ".", formulaArgSeparator: ";" });
  const refuse = (why: string): never => {
    throw new Error(`${why}: ${formula}`);
  };
  tokens.forEach(({ type, value }, index) => {
    if (type === "UNKNOWN" && value === ",") refuse('A comma does not separate arguments in every locale; write ";"');
    if (type === "UNKNOWN" && value.trim() !== "") refuse(`"${value}" is not understood`);
    if (type === "NUMBER" && /[.,]/.test(value)) refuse(`${value} is a decimal literal, which not every locale reads`);
    if (type === "STRING" && tokens[index + 1]?.type === "STRING")
      refuse("A doubled quotation mark is not read here; write CHAR(34)");
    if (tokens[index + 2]?.value === "^" && isLeadingMinus(tokens, index))
      refuse("-x^y is read two ways; write brackets");
  });
  const canonical = withEngineNames(joinTokens(tokens, ","));
  checkNode(library, parsed(library, canonical, refuse), false, refuse);
  return canonical;
}

/** A formula of the engine in the dialect of scripts, as it was written. */
export function toDialect(library: Library, canonical: string): string {
  return library
    .tokenize(canonical)
    .map(({ type, value }) => (type === "ARG_SEPARATOR" ? ";" : value))
    .join("");
}

/** A formula as a person types it: `;` and, where the decimal sign is a point, `,` part the arguments. */
export function fromTyped(library: Library, locale: Locale, formula: string): string {
  const tokens = library.tokenize(formula, { ...locale, formulaArgSeparator: ";" });
  const numbers = tokens.map((token) =>
    token.type === "NUMBER" ? { ...token, value: token.value.replace(locale.decimalSeparator, ".") } : token,
  );
  return withEngineNames(joinTokens(numbers, ","));
}

/** `;` between arguments becomes the separator, `;` between the rows of an array literal stays. */
function joinTokens(tokens: readonly Token[], separator: string): string {
  const open: string[] = [];
  return tokens
    .map(({ type, value }) => {
      if (type === "LEFT_BRACE" || type === "LEFT_PAREN") open.push(type);
      if (type === "RIGHT_BRACE" || type === "RIGHT_PAREN") open.pop();
      return type === "ARG_SEPARATOR" && open[open.length - 1] !== "LEFT_BRACE" ? separator : value;
    })
    .join("");
}

function isLeadingMinus(tokens: readonly Token[], index: number): boolean {
  const before = tokens
    .slice(0, index)
    .filter(({ type }) => type !== "SPACE")
    .pop();
  return tokens[index]?.value === "-" && (before === undefined || /OPERATOR|LEFT|SEPARATOR/.test(before.type));
}

function parsed(library: Library, formula: string, refuse: (why: string) => never): FormulaNode {
  try {
    return library.parse(formula);
  } catch {
    return refuse("The formula cannot be read");
  }
}

function checkNode(library: Library, node: FormulaNode, inArray: boolean, refuse: (why: string) => never): void {
  const spread = (part: FormulaNode | undefined) => part !== undefined && !inArray && isSeveral(part);
  const name = node.type === "FUNCALL" ? String(node.value).toUpperCase() : "";
  if (node.type === "BIN_OPERATION" && (spread(node.left) || spread(node.right))) refuse(SEVERAL);
  if (node.type === "UNARY_OPERATION" && spread(node.operand)) refuse(SEVERAL);
  const registry = library.registries.functionRegistry;
  if (name !== "" && !registry.contains(name)) refuse(`${name} is not a function of the workbook`);
  const known = name === "" ? [] : registry.get(name).args;
  node.args?.forEach((argument, index) => {
    if (TAKES_RANGES.has(name)) return;
    const takes = known[Math.min(index, known.length - 1)];
    if (spread(argument) && (TAKES_ONE_VALUE.has(name) || takes?.acceptMatrix !== true)) refuse(SEVERAL);
  });
  const inside = inArray || ARRAY_CONTEXT.has(name);
  const rows = node.type === "ARRAY" && Array.isArray(node.value) ? (node.value as FormulaNode[][]).flat() : [];
  for (const part of [node.left, node.right, node.operand, ...(node.args ?? []), ...rows]) {
    if (part) checkNode(library, part, inside, refuse);
  }
}

const SEVERAL = "A range stands where a sheet takes one value unless ARRAYFORMULA is around it";

function isSeveral(node: FormulaNode): boolean {
  if (node.type === "ARRAY") return true;
  if (node.type === "FUNCALL") return GIVES_ARRAY.has(String(node.value).toUpperCase());
  if (node.type !== "REFERENCE") return false;
  const [from, to] = String(node.value).replace(/^.*!/, "").replace(/\$/g, "").toUpperCase().split(":");
  return to !== undefined && from !== to;
}
