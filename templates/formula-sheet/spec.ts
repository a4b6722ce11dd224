import type { StyleName } from "../../shared/review/bands.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";

/** What tells one formula sheet from another: everything else they have in common. */
export type FormulaSheetSpec = {
  readonly name: string;
  readonly title: string;
  readonly says: string;
  readonly group: string;
  /** Which product's usual figures the notes go by. */
  readonly style: StyleName;
  /** What is mixed. */
  readonly mix: "dough" | "batter";
  /** Whether hydration and the water's temperature matter. */
  readonly isBread: boolean;
  /** The tin that it fills, by the type of what goes into it. */
  readonly tin?: string;
  /** What goes into the oven at a time; trays can also be what the sheet is scaled to. */
  readonly bakedOn: "tins" | "pieces" | "trays";
  readonly isScaledToTrays?: true;
  /** Part of it may ripen before: with a little yeast, or built from a seed. */
  readonly stage?: "preferment" | "levain";
  /** Sizes go by their diameter and a weight per area. */
  readonly isRound?: true;
  /** Fat is rolled into it, and stays out of the mix. */
  readonly isRolled?: true;
  /** Eggs are counted. */
  readonly hasEggs?: true;
  /** Eggs, milk and butter bring a good part of its water. */
  readonly isEnriched?: true;
  readonly cautions: readonly string[];
  readonly sample: SheetModel["sample"];
  readonly expects: SheetModel["expects"];
};

/** What the sheet can be scaled to beside its pieces, what is mixed, and its flour. */
export const countedIn = (spec: Pick<FormulaSheetSpec, "tin" | "isScaledToTrays">): "tins" | "trays" | undefined =>
  spec.tin !== undefined ? "tins" : spec.isScaledToTrays ? "trays" : undefined;

/** All that is divided into pieces: the mix, with what is rolled into it. */
export const wholeOf = ({ isRolled }: Pick<FormulaSheetSpec, "isRolled">): string =>
  isRolled ? "@dough_all" : "@dough_exact";
