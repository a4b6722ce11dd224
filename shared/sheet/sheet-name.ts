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
