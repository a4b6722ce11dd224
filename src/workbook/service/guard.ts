/** How much a script may do, as Apps Script grants it to an add-on. */
export type AuthMode = "NONE" | "LIMITED" | "CUSTOM_FUNCTION" | "FULL";

type Method = (...args: never[]) => unknown;
type Methods = Readonly<Record<string, Method>>;

/** Methods by what they cost: `free` ones touch no document, `reads` and `writes` are calls to the service. */
export type Shape = { readonly free?: Methods; readonly reads?: Methods; readonly writes?: Methods };

/**
 * Watches every call a script makes. Stricter than Google, so that what passes here passes there: members that the
 * stand-in lacks throw, and reading after a formula was written in the same run throws, because in a sheet such a read
 * waits until every custom function has answered.
 */
export class Guard {
  /** Calls that read or wrote the document since the workbook was opened. */
  calls = 0;
  /** Names of those calls of the latest run, in order. */
  trail: string[] = [];
  mode: AuthMode = "NONE";
  private failing: number | undefined;
  private isLasting = false;
  private formulaBy: string | undefined;

  /** The n-th call from now, counted from 1, throws once; `isLasting`: and so does every call after it. */
  failAt(call: number | undefined, isLasting = false): void {
    this.failing = call;
    this.isLasting = isLasting;
  }

  /** A script's run begins: nothing is written yet. */
  begin(): void {
    this.formulaBy = undefined;
    this.trail = [];
  }

  noteFormula(by: string): void {
    this.formulaBy = by;
  }

  /** The document itself is asked for. */
  open(name: string): void {
    if (this.mode === "NONE") this.forbid(name);
  }

  read(name: string): void {
    if (this.mode === "CUSTOM_FUNCTION")
      throw new Error(`${name}: a custom function of this project reads its arguments only`);
    this.open(name);
    if (this.formulaBy !== undefined) {
      throw new Error(`${name} after ${this.formulaBy}: a read waits for every custom function; write formulas last`);
    }
    this.count(name);
  }

  write(name: string): void {
    if (this.mode === "NONE" || this.mode === "CUSTOM_FUNCTION") this.forbid(name);
    this.count(name);
  }

  /** Menus are for everyone, sidebars and messages for a person who asked. */
  show(name: string): void {
    if (this.mode !== "FULL") this.forbid(name);
  }

  forbid(name: string): never {
    throw new Error(`You do not have permission to call ${name}`);
  }

  private count(name: string): void {
    this.calls += 1;
    this.trail.push(name);
    if (this.failing === undefined) return;
    this.failing -= 1;
    if (this.failing > 0) return;
    if (!this.isLasting) this.failing = undefined;
    throw new Error(`Service Spreadsheets failed while accessing document (${name})`);
  }

  /** An object for scripts; any other member than the given ones throws when it is touched. */
  made<T extends object>(kind: string, shape: Shape): T {
    const watch = (methods: Methods = {}, before: (name: string) => void): [string, Method][] =>
      Object.entries(methods).map(([name, method]) => [
        name,
        (...args: never[]) => {
          before(name);
          return method(...args);
        },
      ]);
    return strict(kind, {
      ...shape.free,
      ...Object.fromEntries(watch(shape.reads, (name) => this.read(name))),
      ...Object.fromEntries(watch(shape.writes, (name) => this.write(name))),
    }) as T;
  }
}

/** Members that languages and consoles ask any object for. */
const ASKED_OF_ALL = new Set([
  "then",
  "toJSON",
  "constructor",
  "valueOf",
  "toString",
  "nodeType",
  "asymmetricMatch",
  "$$typeof",
]);

/** An object whose unknown members throw; assignments throw too. */
export function strict<T extends object>(kind: string, members: T): T {
  return new Proxy(members, {
    get(target, name) {
      if (typeof name === "symbol" || name in target || ASKED_OF_ALL.has(name)) return Reflect.get(target, name);
      throw new Error(`${kind}.${name} is not in the stand-in`);
    },
    set(_target, name) {
      throw new Error(`${kind}.${String(name)} cannot be assigned`);
    },
  });
}
