// What each dough comes to by day: for its own pieces, and for all that other products take of it.
import type { Formula } from "./formula.ts";
import type { Item } from "./orders.ts";

export type Taken = { readonly by: string; readonly pieces: number | null; readonly weight: number };
export type DoughAmount = {
  /** Of each size on that day, in their order. */
  readonly pieces: readonly number[];
  /** Mixed of it in all. */
  readonly all: number;
  /** What of that goes into other products. */
  readonly taken: readonly Taken[];
};

/** Doughs before what goes into them; a formula that is made of itself stands where it is. */
export function takersFirst(formulas: readonly Formula[]): Formula[] {
  const done: Formula[] = [];
  const visit = (formula: Formula, path: readonly Formula[]): void => {
    if (done.includes(formula) || path.includes(formula)) return;
    for (const use of formula.uses ?? []) {
      const taker = "dough" in use ? formulas.find(({ name }) => name === use.dough) : undefined;
      if (taker !== undefined) visit(taker, [...path, formula]);
    }
    done.push(formula);
  };
  for (const formula of formulas) visit(formula, []);
  return done;
}

/** `made` tells the pieces of an item on each of so many days. Amounts stand by the name of the formula, a day each. */
export function amountsOf(
  formulas: readonly Formula[],
  piecesOf: (item: Item) => readonly number[],
  days: number,
): ReadonlyMap<string, readonly DoughAmount[]> {
  const amounts = new Map<string, readonly DoughAmount[]>();
  for (const { name, sizes, handlingLoss, uses = [] } of takersFirst(formulas)) {
    amounts.set(
      name,
      Array.from({ length: days }, (_, day): DoughAmount => {
        const pieces = sizes.map(({ size }) => piecesOf({ product: name, size })[day] ?? 0);
        const forPieces =
          sizes.reduce((sum, { scaling }, at) => sum + scaling * (pieces[at] ?? 0), 0) / (1 - handlingLoss);
        const taken = uses.flatMap((use): Taken[] => {
          if ("dough" in use) {
            const weight = use.part * (amounts.get(use.dough)?.[day]?.all ?? 0);
            return weight > 0 ? [{ by: use.dough, pieces: null, weight }] : [];
          }
          const many = piecesOf(use)[day] ?? 0;
          return many > 0 && use.perPiece > 0 ? [{ by: use.product, pieces: many, weight: use.perPiece * many }] : [];
        });
        return { pieces, all: taken.reduce((sum, { weight }) => sum + weight, forPieces), taken };
      }),
    );
  }
  return amounts;
}
