import { isOnlySpaces } from "../base/words.ts";

/** What a number is an amount of, where its cell may carry the unit: a length or a weight of water for a tin's sizes. */
export type Measure = "weight" | "grams" | "size" | "grams of water" | "capacity" | "minutes" | "hours" | "degrees";

/** Amounts of one `group` are in one unit; `at` is the column of a table that holds them; `counted` may be "3 large" too. */
export type Measured = {
  readonly measure?: Measure;
  readonly group?: string;
  readonly at?: number;
  readonly counted?: boolean;
};

/** What a reader takes, for the help texts and for tests that make arguments up. */
export type Hint =
  | ({
      readonly of: "number";
      readonly what: string;
      readonly min?: number;
      readonly max?: number;
      readonly above?: number;
    } & Measured)
  | { readonly of: "word"; readonly words: readonly string[] }
  | ({ readonly of: "text" | "kind" | "percent" | "any" } & Measured);

export const isBlank = (raw: unknown): boolean =>
  raw === undefined || raw === null || (typeof raw === "string" && isOnlySpaces(raw));
