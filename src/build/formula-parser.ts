// Reads the formulas of templates, with `@name` for cells, into a tree that the lint walks.

export type Node =
  | { readonly is: "number" | "text"; readonly value: string }
  | { readonly is: "name"; readonly value: string }
  | { readonly is: "word"; readonly value: string }
  | { readonly is: "range"; readonly from: Node; readonly to: Node }
  | { readonly is: "call"; readonly value: string; readonly args: readonly Node[] }
  | { readonly is: "array"; readonly rows: readonly Node[] }
  | { readonly is: "operation"; readonly value: string; readonly parts: readonly Node[] };

type Token = { readonly is: "number" | "text" | "name" | "word" | "sign"; readonly value: string };

const TOKEN =
  /\s+|"(?:[^"]|"")*"|\d+(?:\.\d+)?|@[a-z_][a-z0-9_]*|[A-Za-z_$][A-Za-z0-9_$.]*|<>|<=|>=|[-+*/^&=<>(){};,:%\\]/gy;

/** Parts of a formula, or a complaint about what is none. */
function tokens(text: string): Token[] | string {
  const result: Token[] = [];
  TOKEN.lastIndex = 0;
  let at = 0;
  while (at < text.length) {
    TOKEN.lastIndex = at;
    const match = TOKEN.exec(text);
    if (match === null) return `cannot read ${text.slice(at, at + 10)}`;
    const [value] = match;
    at += value.length;
    if (value.trim() === "") continue;
    const first = value[0] ?? "";
    const is =
      first === '"'
        ? "text"
        : first === "@"
          ? "name"
          : /\d/.test(first)
            ? "number"
            : /[A-Za-z_$]/.test(first)
              ? "word"
              : "sign";
    result.push({ is, value });
  }
  return result;
}

const LEVELS: readonly (readonly string[])[] = [
  ["=", "<>", "<", ">", "<=", ">="],
  ["&"],
  ["+", "-"],
  ["*", "/"],
  ["^"],
];

/** Sheets repeat their formulas in every choice of units and parts. */
const known = new Map<string, Node | string>();

/** The tree of a formula, or a sentence saying what stands in the way. */
export function parseFormula(formula: string): Node | string {
  const read = known.get(formula) ?? treeOf(formula);
  known.set(formula, read);
  return read;
}

function treeOf(formula: string): Node | string {
  if (!formula.startsWith("=")) return "a formula begins with =";
  const lexemes = tokens(formula.slice(1));
  if (typeof lexemes === "string") return lexemes;
  const list = lexemes;
  let at = 0;
  const peek = () => list[at]?.value;
  const take = (wanted: string): void => {
    if (peek() !== wanted) throw new SyntaxError(`expects ${wanted} and finds ${peek() ?? "the end"}`);
    at++;
  };
  try {
    const tree = operation(0);
    return at < list.length ? `ends before ${peek()}` : tree;
  } catch (error) {
    if (error instanceof SyntaxError) return error.message;
    throw error;
  }

  function operation(level: number): Node {
    const signs = LEVELS[level];
    if (signs === undefined) return unary();
    let left = operation(level + 1);
    for (let sign = peek(); sign !== undefined && signs.includes(sign); sign = peek()) {
      at++;
      left = { is: "operation", value: sign, parts: [left, operation(level + 1)] };
    }
    return left;
  }

  function unary(): Node {
    const sign = peek();
    if (sign === "-" || sign === "+") {
      at++;
      return { is: "operation", value: `unary ${sign}`, parts: [unary()] };
    }
    const value = primary();
    if (peek() !== ":") return value;
    at++;
    return { is: "range", from: value, to: primary() };
  }

  function primary(): Node {
    const token = list[at++];
    if (token === undefined) throw new SyntaxError("ends too early");
    const { is, value } = token;
    if (is === "number" || is === "text" || is === "name") return { is, value: is === "name" ? value.slice(1) : value };
    if (is === "word") {
      if (peek() !== "(") return { is: "word", value };
      at++;
      return { is: "call", value: value.toUpperCase(), args: inside(")") };
    }
    if (value === "(") {
      const within = operation(0);
      take(")");
      return within;
    }
    if (value === "{") return { is: "array", rows: inside("}") };
    throw new SyntaxError(`does not expect ${value}`);
  }

  function inside(end: string): Node[] {
    const args: Node[] = [];
    if (peek() === end) {
      at++;
      return args;
    }
    for (;;) {
      args.push(peek() === ";" || peek() === end ? { is: "text", value: "" } : operation(0));
      if (peek() === end) {
        at++;
        return args;
      }
      take(";");
    }
  }
}

const parts = new WeakMap<Node, readonly Node[]>();

/** Every node of a tree, the tree itself first. */
export function nodesOf(node: Node): readonly Node[] {
  const all = parts.get(node) ?? [node, ...below(node).flatMap(nodesOf)];
  parts.set(node, all);
  return all;
}

function below(node: Node): readonly Node[] {
  if (node.is === "call") return node.args;
  if (node.is === "operation") return node.parts;
  if (node.is === "array") return node.rows;
  return node.is === "range" ? [node.from, node.to] : [];
}
