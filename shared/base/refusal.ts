// What goes wrong has three names. A fault is one thing that a person entered and can correct. A refusal is an answer withheld for
// faults. A failure is anything else, of a service, a network or a file; `because` says of what.

/** With an argument, with one row of it, or with the question as a whole. */
export type Fault = {
  /** A word of a union, where something hangs on it. */
  readonly reason?: string;
  readonly argument?: string;
  /** Counted from the top of the range, the first row being 1. */
  readonly row?: number;
  /** After an argument a predicate (`is "abc"; write grams`), alone a whole sentence. */
  readonly says: string;
};

/** Whether what was read is no value but a fault: `is "abc"; enter a weight such as 350`. */
export const isFault = (value: unknown): value is Fault =>
  typeof value === "object" && value !== null && "says" in value;

/** The one error of the project: what a person reads when an answer is refused. */
export class Refusal extends Error {
  readonly faults: readonly Fault[];
  readonly reason: string | undefined;
  constructor(faults: readonly Fault[], name?: string) {
    super((name === undefined ? "" : `${name}: `) + sentence(faults));
    this.faults = faults;
    this.reason = faults[0]?.reason;
  }
}

/** Refuses for one reason. */
export function refuse(says: string, argument?: string, row?: number): never {
  throw new Refusal([fault(says, argument, row)]);
}

/** Refuses what only a broken or an outdated page asks. */
export const refuseUnread = (what: string): never =>
  refuse(`${what} could not be read. Close Gramwright and open it again.`);

export function fault(says: string, argument?: string, row?: number): Fault {
  return { says, ...(argument === undefined ? {} : { argument }), ...(row === undefined ? {} : { row }) };
}

/** Refuses when there is anything to refuse; several faults are told together. */
export function refuseAll(faults: readonly Fault[]): void {
  if (faults.length > 0) throw new Refusal(faults);
}

const TOLD_IN_FULL = 3;

function sentence(faults: readonly Fault[]): string {
  const clauses = faults.slice(0, TOLD_IN_FULL).map(clause).join("; ");
  const rest = faults.slice(TOLD_IN_FULL);
  if (rest.length === 0) return /[.?!]$/.test(clauses) ? clauses : `${clauses}.`;
  const rows = rest.slice(0, 20).map((one) => (one.row === undefined ? (one.argument ?? "") : `row ${one.row}`));
  const more = rest.length > 20 ? `, and ${rest.length - 20} others` : "";
  return `${clauses}; and ${rest.length} more of the kind (${rows.join(", ")}${more}).`;
}

function clause({ argument, row, says }: Fault): string {
  if (argument === undefined) return row === undefined ? says : `row ${row}: ${says}`;
  return row === undefined ? `${argument} ${says}` : `${argument} row ${row} ${says}`;
}

/** Whether it could be done; for what is worth no failure, or is told in another way. */
export function attempt(work: () => unknown): boolean {
  try {
    work();
    return true;
  } catch {
    return false;
  }
}

/** What failed, to be put into a sentence; an error of Google's services need be no Error of the script's own. */
export const becauseOf = (error: unknown): string =>
  String((error as { message?: unknown } | null)?.message ?? error).replace(/[.\s]+$/, "");
