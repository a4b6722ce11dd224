// How a row of the list of formula sheets says which tab it is about: in a formula, because the spreadsheet keeps the names in those.

/** A sheet as formulas name it, and the number that it keeps. */
export type Tab = { readonly name: string; readonly id: number };

/** Stands in a formula for a sheet whose name and number are not known yet; no sheet can be called so. */
export const THIS_SHEET = "'?'!";
export const THIS_NUMBER = "*?";

export const quotedTab = (name: string): string => `'${name.replace(/'/g, "''")}'!`;

/** A formula about a sheet that is made now. */
export const aboutTab = (formula: string, { name, id }: Tab): string =>
  // The number first: a name may have its sign in it.
  formula.replace(THIS_NUMBER, `*${id}`).split(THIS_SHEET).join(quotedTab(name));

/** Those that the formulas of a list are about. */
export const tabsOf = (formulas: readonly (readonly unknown[])[]): Tab[] =>
  formulas.flat().flatMap((formula) => tabOf(formula) ?? []);

/** Which tab it is about, and what it is called now; null for any other formula, as for one whose tab was deleted. */
export function tabOf(formula: unknown): Tab | null {
  // A spreadsheet leaves out quotation marks that it does not need, and moves the cell where rows come in above it.
  const [, quoted, bare, id] =
    /^=ROWS\((?:'((?:[^']|'')+)'|([^'!]+))!\$[A-Z]+\$\d+\)\*(\d+)$/.exec(String(formula)) ?? [];
  const name = unquote(quoted) ?? bare;
  return name === undefined ? null : { name, id: Number(id) };
}

/** The name that stands between quotation marks in a formula. */
export const unquote = (name: string | undefined): string | undefined => name?.replace(/''/g, "'");
