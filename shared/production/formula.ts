// A formula as the production plans with it.
import type { Dough } from "./doughs.ts";
import type { PlannedDough } from "./timetable.ts";

/** What takes of a dough, as weights of it mixed: a product by its pieces, or another dough by what is mixed of that. */
export type Use =
  | { readonly product: string; readonly size: string; readonly perPiece: number }
  | { readonly dough: string; readonly part: number };

export type Formula = Dough & {
  /** Part of the day at which it is to be ready. */
  readonly ready: number | null;
  readonly steps: PlannedDough["steps"];
  readonly mixStep: string;
  readonly ovenStep: string;
  /** Pieces on a tray, 1 where tins or pieces are counted. */
  readonly holds: number | null;
  readonly ovenTakes: number | null;
  readonly reload: number;
  readonly preferment: PlannedDough["preferment"];
  /** Levains it takes: the name of the chain each comes from, its part of the dough, and the step it goes into. */
  readonly levains: readonly { readonly from: string; readonly part: number; readonly step: string }[];
  /** What takes of it beside its own pieces; nothing where it is left out. */
  readonly uses?: readonly Use[];
};
