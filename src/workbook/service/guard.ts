/** How much a script may do, as Apps Script grants it to an add-on. */
export type AuthMode = "NONE" | "LIMITED" | "CUSTOM_FUNCTION" | "FULL";

type Method = (...args: never[]) => unknown;
type Methods = Readonly<Record<string, Method>>;

/** Methods by what they cost: `free` ones touch no document, `reads` and `writes` are calls to the service. They are made when one of them is wanted. */
export type Shape = { readonly [cost in Cost]?: Methods | (() => Methods) };
const COSTS = ["free", "reads", "writes"] as const;
type Cost = (typeof COSTS)[number];

/** `many` calls fail in a row; with `isDone` the first is carried out before it fails, as where its answer gets lost. */
type FailingHow = { readonly many?: number; readonly isDone?: boolean };
type Failing = { call: number; many: number; isDone: boolean };

const failed = (name: string): Error => new Error(`Service Spreadsheets failed while accessing document (${name})`);

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
  /** A person who may look at the document only. */
  isViewer = false;
  /** What the methods of each kind of object cost, as far as one of them was asked for. */
  private readonly costs = new Map<string, Cost>();
  /** Told of every read, before it is done. */
  onRead: ((name: string) => void) | undefined;
  private failing: Failing | undefined;
  private hand: { call: number; readonly act: () => void } | undefined;
  private late: string | undefined;
  private formulaBy: string | undefined;

  /** The n-th call from now, counted from 1, throws, and so do the next ones; undefined takes it back. */
  failAt(call: number | undefined, { many = 1, isDone = false }: FailingHow = {}): void {
    this.failing = call === undefined ? undefined : { call, many, isDone };
    this.late = undefined;
  }

  /** What another person does right before the n-th call from now. */
  beforeCall(call: number, act: () => void): void {
    this.hand = { call, act };
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
    this.onRead?.(name);
  }

  write(name: string): void {
    if (this.mode === "NONE" || this.mode === "CUSTOM_FUNCTION") this.forbid(name);
    this.count(name);
    if (this.isViewer) throw new Error("You do not have permission to perform that action.");
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
    const { hand, failing } = this;
    if (hand !== undefined && --hand.call <= 0) {
      this.hand = undefined;
      hand.act();
    }
    if (failing === undefined || --failing.call > 0) return;
    failing.many -= 1;
    if (failing.many <= 0) this.failing = undefined;
    if (!failing.isDone) throw failed(name);
    failing.isDone = false;
    this.late = name;
  }

  /** A call that was done, and whose answer got lost. */
  private lose(name: string): void {
    if (this.late !== name) return;
    this.late = undefined;
    throw failed(name);
  }

  /** An object for scripts; any other member than the given ones throws when it is touched. */
  made<T extends object>(kind: string, shape: Shape): T {
    const groups: { [cost in Cost]?: Methods } = {};
    const methodAt = (cost: Cost, name: string): Method | undefined => {
      const group = shape[cost];
      groups[cost] ??= typeof group === "function" ? group() : (group ?? {});
      return Object.hasOwn(groups[cost], name) ? groups[cost][name] : undefined;
    };
    const find = (name: string): Method | undefined => {
      const known = this.costs.get(`${kind}.${name}`);
      for (const cost of known === undefined ? COSTS : [known]) {
        const method = methodAt(cost, name);
        if (method === undefined) continue;
        this.costs.set(`${kind}.${name}`, cost);
        return cost === "free" ? method : this.watched(cost, name, method);
      }
      return undefined;
    };
    return strict<Record<string, Method>>(kind, {}, find) as T;
  }

  private watched(cost: "reads" | "writes", name: string, method: Method): Method {
    return (...args: never[]) => {
      if (cost === "reads") this.read(name);
      else this.write(name);
      const result = method(...args);
      this.lose(name);
      return result;
    };
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

/** An object whose unknown members throw; assignments throw too. Members may be made when they are first asked for. */
export function strict<T extends object>(kind: string, members: T, find?: (name: string) => T[keyof T] | undefined): T {
  return new Proxy(members, {
    get(target, name) {
      if (typeof name === "symbol" || name in target || ASKED_OF_ALL.has(name)) return Reflect.get(target, name);
      const member = find?.(name);
      if (member === undefined) throw new Error(`${kind}.${name} is not in the stand-in`);
      Reflect.set(target, name, member);
      return member;
    },
    set(_target, name) {
      throw new Error(`${kind}.${String(name)} cannot be assigned`);
    },
  });
}
