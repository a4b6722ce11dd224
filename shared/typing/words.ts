// The words by which the trigger finds cells of a formula sheet: it runs with every edit, and carries no sheet models.

/** Headings of the table of ingredients; {weight} is g or oz. */
export const HEADS = {
  ingredient: "Ingredient",
  kind: "Type",
  percent: "Baker's %",
  weight: "Weight ({weight})",
  per_mix: "Per mix ({weight})",
  pre_shown: "Preferment ({weight})",
  levain_shown: "Levain ({weight})",
  final_shown: "Final mix ({weight})",
} as const;

/** Headings beside the page, in the same row. */
export const BESIDE = { counts: "Row counts", flour_part: "Flour in it" } as const;
/** Heads the first column beside every table. */
export const MESSAGE = "What is wrong";

/** Single figures beside the page, each below its words. */
export const SINGLES = {
  dough_ordered: "Ordered",
  coarse: "Coarse step",
  fine: "Fine step",
  /** Only where something is rolled into the dough. */
  roll_part: "Fat, of the base dough",
} as const;

/** Inputs of the page, each so many columns to the right of its words. */
export const INPUTS = {
  by: { says: "Scale to", across: 1 },
  amount: { says: "Amount", across: 1 },
  mixer_limit: { says: "Mixer capacity ({weight})", across: 2 },
  roll_in_of: { says: "Share of", across: 3 },
} as const;

/** Begins the label under the table. */
export const TOTAL = "Total, ";

/** No sheet of ours is narrower, and no cell of its tables that is worked out stands further left or above. */
export const MIN_COLUMNS = 60;
export const FIRST_COLUMN = 2;
export const FIRST_ROW = 6;
