/** A custom function as the script file declares it: what a sheet's helper can show. */
export type Stub = {
  readonly name: string;
  readonly summary: string;
  readonly parameters: readonly { readonly name: string; readonly says: string }[];
};

const DECLARED = /\/\*\*((?:[^*]|\*(?!\/))*)\*\/\s*function\s+([A-Za-z_$][\w$]*)\s*\(([^)]*)\)/g;

/** Without a comment a function works when it is typed, though the helper does not list it (googleworkspace/apps-script-samples #181). */
const UNLISTED = /^function ([A-Z][A-Z0-9_]*[A-Z0-9])\(([^)]*)\)/gm;

/** The custom functions of a script: top-level declarations with `@customfunction` in the comment right above. */
export function findStubs(code: string): Stub[] {
  return Array.from(code.matchAll(DECLARED), ([, comment = "", name = "", names = ""]) => ({ comment, name, names }))
    .filter(({ comment }) => /@customfunction\b/.test(comment))
    .map(({ comment, name, names }) => ({ name: name.toUpperCase(), ...described(comment, names) }));
}

/** Those, and what else a formula finds: here only names in capitals, which no other function of a script has. */
export function findCallable(code: string): Stub[] {
  const stubs = findStubs(code);
  const known = new Set(stubs.map(({ name }) => name));
  const unlisted = Array.from(code.matchAll(UNLISTED), ([, name = "", names = ""]) => ({
    name,
    ...described("", names),
  }));
  return [...stubs, ...unlisted.filter(({ name }) => !known.has(name))];
}

function described(comment: string, names: string): Omit<Stub, "name"> {
  const lines = comment.split("\n").map((line) => line.replace(/^\s*\*?\s?/, "").trimEnd());
  const words = lines.join(" ").split(/\s(?=@\w+)|^(?=@\w+)/);
  const summary = (words[0] ?? "").startsWith("@") ? "" : (words[0] ?? "").replace(/\s+/g, " ").trim();
  const says = new Map(
    words.flatMap((part) => {
      const [, parameter, about = ""] = /^@param\s+(?:\{[^}]*\}\s*)?([\w$]+)\s*(.*)$/s.exec(part.trim()) ?? [];
      return parameter === undefined ? [] : [[parameter, about.replace(/\s+/g, " ").trim()] as const];
    }),
  );
  const columns = names
    .split(",")
    .map((one) => one.trim())
    .filter((one) => one !== "");
  return { summary, parameters: columns.map((name) => ({ name, says: says.get(name) ?? "" })) };
}
