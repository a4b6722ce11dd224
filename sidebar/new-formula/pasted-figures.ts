// Several figures typed or pasted into one field.

/** "9x5x2.75", "9 by 5 in": the sizes one after the other, each with the unit that stood at the end; null for one size. */
export function splitSizes(text: string): string[] | null {
  const parts = text
    .trim()
    .split(/\s*(?:[x×*]|\bby\b)\s*/i)
    .map((part) => part.trim());
  if (parts.length < 2 || parts.some((part) => !/^[\d½⅓⅔¼¾⅛⅜⅝⅞]/.test(part))) return null;
  const unit = /[\d½⅓⅔¼¾⅛⅜⅝⅞]\s*([a-z"″]+\.?)$/i.exec(parts[parts.length - 1] ?? "")?.[1] ?? "";
  return parts.map((part) => (unit !== "" && /[\d½⅓⅔¼¾⅛⅜⅝⅞]$/.test(part) ? `${part} ${unit}` : part));
}

/** "100/67/2/1": percentages one below the other; null for a single one (two could be a fraction). */
export function splitPercents(text: string): string[] | null {
  const parts = text.split("/").map((part) => part.trim());
  return parts.length >= 3 && parts.every((part) => /^\d/.test(part)) ? parts : null;
}
