// How the guide bands of a style of dough or batter are written down, percent of all flour.

/** Low, usual, high; one number v stands for a tenth below and above it. */
export type Printed = readonly [low: number, usual: number, high: number] | number;

/** How a style's dry yeast is printed: as one kind, or as either. */
export type DryYeast = { readonly as: "active dry" | "instant" | "either"; readonly band: Printed };

export type Style = {
  readonly also: readonly string[];
  readonly water: Printed;
  /** Liquid dairy counts with its whole weight, as the sources of these styles print it. */
  readonly liquidDairyByWeight?: true;
  readonly salt: Printed;
  readonly freshYeast?: Printed;
  readonly dryYeast?: DryYeast;
  readonly leavening?: { readonly of: "baking powder" | "baking soda"; readonly band: Printed };
  readonly sugar: Printed;
  readonly fat: Printed;
  readonly egg: Printed;
  readonly milkSolids: Printed;
};
