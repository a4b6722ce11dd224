// What a build says of sheets that it left in the workbook, or may have left.

/** A sheet that can be neither finished nor removed. */
export const halfMade = (sheet: string): string =>
  `The half-made sheet “${sheet}” is left: delete it, then build again.`;

/** Sheets that the service may have added without saying so; "" for none. */
export function emptySheets(names: readonly string[]): string {
  if (names.length === 0) return "";
  const quotedNames = names.map((name) => `“${name}”`).join(" and ");
  if (names.length > 1)
    return `Empty sheets ${quotedNames} may be left: delete them, unless another person added them.`;
  return `An empty sheet ${quotedNames} may be left: delete it, unless another person added it.`;
}

/** Whether a sentence of the add-on says so. */
export const tellsOfLeftOver = (sentence: string): boolean =>
  /The half-made sheet “.*” is left: delete it|mpty sheets? “.*” may be left: delete/s.test(sentence);
