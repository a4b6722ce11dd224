import type { FormulaNode, Library } from "../engine/library.ts";

// Functions that a spreadsheet program reading .xlsx knows under the same name with the same meaning.
const SAME = new Set(
  (
    "ABS ADDRESS AND AVERAGE AVERAGEIF AVERAGEIFS CEILING CHAR CHOOSE CODE COLUMN COLUMNS COUNT COUNTA COUNTBLANK COUNTIF COUNTIFS DATE DAY " +
    "ERROR.TYPE EVEN EXACT EXP FALSE FIND FLOOR GCD HLOOKUP HOUR IF IFERROR INDEX INDIRECT INT ISBLANK ISERROR ISEVEN ISLOGICAL ISNA ISNUMBER ISODD " +
    "ISTEXT LARGE LCM LEFT LEN LN LOG LOOKUP LOWER MATCH MAX MEDIAN MID MIN MINUTE MMULT MOD MONTH MROUND N NA NOT ODD OFFSET OR PI " +
    "POWER PRODUCT PROPER QUOTIENT RANK REPLACE REPT RIGHT ROUND ROUNDDOWN ROUNDUP ROW ROWS SEARCH SECOND SIGN SMALL SQRT SUBSTITUTE " +
    "SUBTOTAL SUM SUMIF SUMIFS SUMPRODUCT SUMSQ T TAN TEXT TIME TRANSPOSE TRIM TRUE TRUNC TYPE UPPER VALUE VLOOKUP YEAR"
  ).split(" "),
);
/** Functions of later versions of the format (ECMA-376 extensions), which a file names with this prefix. */
const NEWER = new Set("CONCAT IFNA IFS ISFORMULA MAXIFS MINIFS SWITCH TEXTJOIN UNICHAR XOR".split(" "));

export type Portable =
  | { readonly kind: "formula" | "array"; readonly text: string }
  /** A function that no other program has stands in it: its value is what can be kept. */
  | { readonly kind: "value"; readonly because: string };

/** A formula in the engine's form as another program can calculate it, without its "=". */
export function portable(library: Library, canonical: string): Portable {
  const root = library.parse(canonical);
  const names = functionsIn(root);
  const foreign = names.find((name) => name !== "ARRAYFORMULA" && !SAME.has(name) && !NEWER.has(name));
  if (foreign !== undefined) return { kind: "value", because: foreign };
  if (hasStack(root)) return { kind: "value", because: "a stack of ranges" };
  if (hasOpenRange(root)) return { kind: "value", because: "a range without an end" };
  const text = withoutWrapper(library, canonical);
  return { kind: names.includes("ARRAYFORMULA") ? "array" : "formula", text };
}

/** The same, where a formula that cannot be read (a person's slip) keeps its error. */
export function readable(library: Library, canonical: string): Portable {
  try {
    return portable(library, canonical);
  } catch {
    return { kind: "value", because: "a formula that cannot be read" };
  }
}

/** Whether no other program calculates it again. */
export const isKeptValue = (library: Library, canonical: string): boolean =>
  readable(library, canonical).kind === "value";

/** Drops ARRAYFORMULA and its own bracket pair, and gives later functions their prefix. */
function withoutWrapper(library: Library, canonical: string): string {
  const open: boolean[] = [];
  let wrapperNext = false;
  return library
    .tokenize(canonical)
    .slice(1)
    .map(({ type, value }) => {
      const name = value.toUpperCase();
      if (type === "SYMBOL" && name === "ARRAYFORMULA") {
        wrapperNext = true;
        return "";
      }
      if (type === "LEFT_PAREN") {
        open.push(wrapperNext);
        wrapperNext = false;
      }
      if (type === "RIGHT_PAREN") open.pop();
      return type === "SYMBOL" && NEWER.has(name) ? `_xlfn.${name}` : value;
    })
    .join("");
}

export function functionsIn(node: FormulaNode): string[] {
  const ownName = node.type === "FUNCALL" ? [String(node.value).toUpperCase()] : [];
  return [...ownName, ...partsOf(node).flatMap(functionsIn)];
}

/** Braces of the file format hold constants alone. */
function hasStack(node: FormulaNode): boolean {
  const constants = new Set(["NUMBER", "STRING", "BOOLEAN", "UNARY_OPERATION"]);
  const rows = node.type === "ARRAY" && Array.isArray(node.value) ? (node.value as FormulaNode[][]).flat() : [];
  return rows.some(({ type }) => !constants.has(type)) || partsOf(node).some(hasStack);
}

function hasOpenRange(node: FormulaNode): boolean {
  const reference = node.type === "REFERENCE" ? String(node.value).replace(/^.*!/, "").replace(/\$/g, "") : "";
  const [from = "", to] = reference.split(":");
  const digits = (corner: string) => /\d/.test(corner);
  return (to !== undefined && digits(from) !== digits(to)) || partsOf(node).some(hasOpenRange);
}

function partsOf({ left, right, operand, args, type, value }: FormulaNode): FormulaNode[] {
  const rows = type === "ARRAY" && Array.isArray(value) ? (value as FormulaNode[][]).flat() : [];
  return [left, right, operand, ...(args ?? []), ...rows].filter((part): part is FormulaNode => part !== undefined);
}
