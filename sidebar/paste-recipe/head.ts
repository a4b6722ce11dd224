// The first line of a recipe may hold its name and what it makes: two lines to the reading, which knows both.

/** Marks that set a name off in plain text: "* Name *", "## Name". */
const MARKS = /^[*_#=~\s]+(.*?)[*_#=~\s]*$/;
const MADE = /^(.*\p{L}.*?)[\s,;:*_–—-]*[([]?\s*\b((?:makes|serves|yields?)\b[^()[\]]*)[)\]]?[*_.\s]*$/iu;
const NUMBER = "\\d|an?\\s+dozen\\b|half\\b|one|two|three|four|five|six|eight|ten|twelve|fifteen|sixteen|twenty";
/** "high-yield flour" makes nothing. */
const COUNTED = new RegExp(
  `^(?:makes|serves|yields?)[\\s:]+(?:about|around|approx(?:imately|\\.)?|roughly|ca\\.?|~)?\\s*(?:${NUMBER})`,
  "i",
);
/** An amount; "80 % rye" belongs to a name. */
const AMOUNT = /\d(?![\d.,]*\s*%)/;

/** The lines, a first one that is a name without its marks, and parted in two where it says what it makes. */
export function partedHead(lines: readonly string[]): string[] {
  const [first = "", ...rest] = lines;
  const [, name = "", makes = ""] = MADE.exec(first) ?? [];
  if (rest.length > 0 && COUNTED.test(makes) && !AMOUNT.test(name)) return [unmarked(name), makes.trim(), ...rest];
  const isName = /^#|[*_=~]$/.test(first) && /\p{L}/u.test(first) && !AMOUNT.test(first);
  return isName ? [unmarked(first), ...rest] : [...lines];
}

const unmarked = (name: string): string => MARKS.exec(name)?.[1] ?? name;
