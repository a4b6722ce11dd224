import type { Units } from "../new-formula/quantity.ts";
import type { Shop } from "../new-formula/shop.ts";
import type { Line } from "./lines.ts";

/** A pasted recipe as it stands in the panel. */
export type ReadDraft = {
  title: string;
  template: string;
  columns: "weighed" | "percent";
  units: Units;
  cups: string;
  /** The shop's settings, where the workbook has them; its units are those of the draft to begin with. */
  shop: Shop | null;
  /** Pieces that the recipe itself makes, and what the sheet is to make; where that is blank, as much as the recipe. */
  readonly make: { recipe: string; pieces: string; weight: string; loss: string };
  lines: Line[];
};
