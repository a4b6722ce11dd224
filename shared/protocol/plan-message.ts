// A planned sheet as it travels, with what it is called and what is answered: grids of few different things are sent as those
// things and a number for each cell.
import * as v from "valibot";
import { refuse } from "../base/refusal.ts";
import type { SheetPlan } from "../sheet/sheet-plan.ts";
import type { Tab } from "../sheet/tab.ts";
import type { LotRow } from "./lots.ts";
import { messageReader, type Read } from "./message.ts";

/** What is written of a plan. */
export type Writable = Omit<SheetPlan, "names" | "builtBy">;
/** A grid whose cells say which of `kinds` they are. */
type Palette<T> = { readonly kinds: readonly T[]; readonly cells: readonly (readonly number[])[] };
const PALETTES = ["formats", "appearances", "aligned", "validations"] as const;
type Palettes = { readonly [K in (typeof PALETTES)[number]]: Palette<SheetPlan[K][number][number]> };

/** Words at the beginning of a cell that tell a sheet of the same title as an older one of the same kind. */
export type Renews = {
  readonly cell: "A1" | "A2";
  readonly begins: string;
  /** And at its end, where words there tell it from others of its kind. */
  readonly ends?: string;
  /** The number of one that was read already: to look again is a call. */
  readonly known?: number;
};

/** What is done beside writing the sheet. */
export type Beside = {
  /** An older sheet of the same title gives its name to the new one and goes: nothing on it was entered, or it is kept. */
  readonly renews?: Renews | null;
  /** Its row in the list of formula sheets, if there is one. */
  readonly row?: readonly string[];
  /** Lots that were entered on the sheet whose place this one takes: they are in the lot log before it goes. */
  readonly lots?: readonly LotRow[];
  /** The sheet that was in front stays there. */
  readonly behind?: boolean;
};
export type MakeAsk = Omit<Writable, (typeof PALETTES)[number]> &
  Palettes & {
    readonly title: string;
    /** Sheets that the formulas read, by the names they should have. */
    readonly tabs: readonly Tab[];
  } & Beside;

/** A sheet's name takes less. */
export const MAX_TITLE_LENGTH = 500;

/** A plan as it travels. */
export function makeAsk(
  { names: _, builtBy: __, ...plan }: SheetPlan,
  title: string,
  tabs: readonly Tab[] = [],
  beside: Beside = {},
): MakeAsk {
  const { formats, appearances, aligned, validations } = plan;
  return {
    ...plan,
    ...beside,
    title: title.slice(0, MAX_TITLE_LENGTH),
    tabs,
    formats: palette(formats),
    appearances: palette(appearances),
    aligned: palette(aligned),
    validations: palette(validations),
  };
}

function palette<T>(grid: readonly (readonly T[])[]): Palette<T> {
  const kinds: T[] = [];
  const known = new Map<string, number>();
  const cells = grid.map((row) =>
    row.map((cell) => {
      const key = JSON.stringify(cell);
      const at = known.get(key) ?? kinds.push(cell) - 1;
      known.set(key, at);
      return at;
    }),
  );
  return { kinds, cells };
}

/** The grid again. */
export const gridOf = <T>({ kinds, cells }: Palette<T>): T[][] => cells.map((row) => row.map((at) => kinds[at] as T));

/** Sheets of one name are told apart by a number. */
export const numbered = (name: string, count: number): string => (count === 1 ? name : `${name} (${count})`);

/** What a sheet of this title is called, unless another one is called so; letters that sheets do not take become spaces. */
export function sheetName(title: string): string {
  const plain = title
    .replace(/[\\/?*[\]:\p{Cc}]/gu, " ")
    .replace(/\s+/g, " ")
    .replace(/'/g, "’")
    .slice(0, 80)
    .trim();
  return plain === "" || plain.toLowerCase() === "history" ? "Formula sheet" : plain;
}

/** The answer that a sheet is built: its name, and what a person should know of it. */
export const readMakeAnswer = messageReader(
  () => refuse("The sheet is there, but its name could not be read. Look at the tabs before you build it again."),
  () =>
    v.object({
      sheet: v.string(),
      /** What could not be done beside it. */
      note: v.exactOptional(v.string()),
    }),
);
export type NewSheet = Read<typeof readMakeAnswer>;
