import type { Decoder } from "../../shared/cells/decoder.ts";

/** What a cell may hold, as a sheet passes it and as it takes it back. */
export type CellValue = number | string | boolean;
export type Argument = CellValue | readonly (readonly CellValue[])[] | undefined;
/** Answers inside the project: null is a blank cell. */
export type Answer = number | string | null;

// biome-ignore lint/suspicious/noExplicitAny: a list of decoders of any type; define() gives each its own
type AnyDecoder = Decoder<any>;
type Parts = Readonly<Record<string, { readonly is: AnyDecoder; readonly says: string }>>;
type Decoded<P extends Parts> = { readonly [K in keyof P]: P[K]["is"] extends Decoder<infer T> ? T : never };

/** The one class of the eight a function belongs to; the reference lists them in this order. */
export const FAMILIES = [
  "Formula",
  "Dough and mixes",
  "Tins",
  "Temperature",
  "Yeast and preferments",
  "Enrichment and flour",
  "Measures",
  "Money",
  "Planning and label",
] as const;
export type Family = (typeof FAMILIES)[number];

export type Returns =
  /** One cell. */
  | { readonly shape: "cell"; readonly says: string }
  /** Several cells side by side; `cells` names them in order. */
  | { readonly shape: "row"; readonly cells: readonly string[]; readonly says: string }
  /** One cell per row. */
  | { readonly shape: "column"; readonly says: string }
  /** Several cells per row. */
  | { readonly shape: "rows"; readonly cells: readonly string[]; readonly says: string };

type Shapes = { cell: Answer; row: readonly Answer[]; column: readonly Answer[]; rows: readonly (readonly Answer[])[] };

/**
 * Where an expected value comes from: printed in the source; worked out by hand from a rule or table that is not ours; common
 * practice; memory; or our own bounds and words. The last two are no check from outside (tests/functions/coverage.test.ts).
 */
export type Origin = "published" | "derived" | "practice" | "memory" | "own";

export type Example = {
  readonly call: readonly Argument[];
  readonly gives: CellValue | readonly (readonly CellValue[])[];
  readonly origin: Origin;
  /** The source by name, or how the value was derived. */
  readonly source: string;
  /** Largest difference allowed, where the source prints rounded figures; otherwise 1e-9 of the value. */
  readonly within?: number;
};
export type RefusalExample = { readonly call: readonly Argument[]; readonly because: string };

type Definition<P extends Parts, R extends Returns> = {
  /** Upper case, with the prefix; once published it is permanent. */
  readonly name: `BAKE_${string}`;
  readonly family: Family;
  /** One short sentence, as the sheet's helper shows it. */
  readonly summary: string;
  /** In the order of the arguments; once published the order is permanent. */
  readonly args: P;
  readonly returns: R;
  /** Every argument may be one cell or a column, and a row comes back per row. */
  readonly rowwise?: true;
  readonly examples: readonly [Example, ...Example[]];
  readonly refusals: readonly [RefusalExample, ...RefusalExample[]];
  readonly compute: (args: Decoded<P>) => Shapes[R["shape"]];
};

/** A sheet function as its readers see it: call, stub, reference, tests and help. */
export type SheetFunction = {
  readonly name: string;
  readonly family: Family;
  readonly summary: string;
  readonly args: Parts;
  readonly returns: Returns;
  readonly rowwise: boolean;
  readonly examples: readonly Example[];
  readonly refusals: readonly RefusalExample[];
  readonly compute: (
    args: Readonly<Record<string, unknown>>,
  ) => Answer | readonly Answer[] | readonly (readonly Answer[])[];
};

/** Checks the types of one sheet function and forgets them, so that a list can hold all. */
export function define<P extends Parts, R extends Returns>(definition: Definition<P, R>): SheetFunction {
  // The one cast: call() decodes exactly the arguments that P names.
  return { rowwise: false, ...definition } as unknown as SheetFunction;
}

/** A column of cells, for examples. */
export const down = (...cells: readonly CellValue[]) => cells.map((cell) => [cell]);
