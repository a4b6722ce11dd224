// How the product speaks: short sentences, the trade's words, and short labels.
import { expect, test } from "vitest";
import { SHEETS } from "../../templates/index.ts";
import { shownTexts, wordsOf } from "../kit/shown-texts.ts";

const TEXTS = shownTexts();

/** Lists of what can be chosen or typed, each a word or two. */
const LISTS = [/choose (?:"[^"]+", ){5,}/, /^lidded white, white/, /^In order\. box, oval:/];

test("a sentence has at most 20 words, a refusal 25", () => {
  expect(TEXTS.length).toBeGreaterThan(1000);
  const long = TEXTS.filter(({ says, isRefusal }) => wordsOf(says) > (isRefusal ? 25 : 20));
  const said = long.filter(({ says }) => !LISTS.some((list) => list.test(says)));
  expect(said.map(({ at, says }) => `${wordsOf(says)} ${at} ${says}`)).toEqual([]);
});

/** What a baker does not say, or a person would stumble over, and what stands in its place. */
const UNSAID: readonly (readonly [words: RegExp, instead: string])[] = [
  [/\bshare of (?:the )?(?:flour|whole)\b/i, "baker's percent, % of total"],
  [/\b(?:scale|divide|sold) at\b/i, "scaling weight, baked weight"],
  [/\bsells at\b|\bbefore tax\b/i, "selling price, excl. tax"],
  [/\blost in (?:the )?bowl\b|\bnot sold\b/i, "handling loss, unsold"],
  [/\btakes at most\b|\bneeds at least\b/i, "mixer capacity, smallest mix"],
  [/\bscale steps?\b/i, "scale reads to"],
  [/\bdough wanted\b/i, "desired dough temperature, dough to make"],
  [
    /\bfirst rise\b|\bdivide and rest\b|\bflour and water rest\b|\bcold proof\b/i,
    "bulk fermentation, bench rest, autolyse, retard",
  ],
  [/\bwater held back\b|\bheld back, of\b/i, "hold back"],
  [/\blayered dough\b/i, "laminated dough"],
  [/\bcost share\b|\bfull cost\b/i, "food cost, total cost"],
  [/\bquantity is declared\b/i, "QUID"],
  [/\blook again\b|\banew\b/i, "refresh, start again"],
  [/\bshall\b|\bis told\b|\bsomebody\b|\bpeople\b/i, "plain words"],
  [/\bremarks?\b/i, "note"],
];
/** What a cell may also say, and a class of the page. */
const ACCEPTED = new Set(["cost share", "food cost share", "remark worst"]);

test("no word that the trade does not use", () => {
  const said = TEXTS.filter(({ says }) => !ACCEPTED.has(says)).flatMap(({ at, says }) =>
    UNSAID.filter(([words]) => words.test(says)).map(([, instead]) => `${at} ${says} (${instead})`),
  );
  expect(said).toEqual([]);
});

test("a label on a sheet has at most 30 characters", () => {
  const long = SHEETS.flatMap(({ name, bands }) =>
    bands.flat().flatMap((item) => {
      const cells = "lines" in item ? item.lines.flatMap((line) => line.cells) : [];
      const labels = cells.flatMap(({ role, text }) => (role === "label" && text !== undefined ? [text] : []));
      const heads = "columns" in item ? item.columns.map(({ head }) => head) : [];
      return [...labels, ...heads].map((text) => [name, text.replace(/\{\w+\}/g, "°C")] as const);
    }),
  ).filter(([, text]) => text.length > 30);
  expect(long.map(([name, text]) => `${name}: ${text}`)).toEqual([]);
});

/** Said in two files still: each is to move into one that both may import. The list only ever gets shorter. */
const SAID_TWICE = new Set([
  "Build an ingredient sheet, then formula sheets, then this sheet again.",
  "Build one under New formula, then refresh.",
  "Choose other hours, or enter orders.",
  "Close Gramwright and open it again.",
  "Code.gs is not as it was packed.",
  "Enter 0 % where the law says so.",
  "Hide the sheet if it is in the way.",
  "Look at the sheet before you press it again.",
  "Look at “Price before” in Ingredients before you try again.",
  "Nothing is mixed in this shift.",
  "Open the script editor, empty Code.gs, paste all of the first text again, save, then reload.",
  "Reload the spreadsheet and open Gramwright again.",
  "Save the price list as .xlsx or .csv and choose it again.",
  "The prices could not all be written.",
  "The sheet may still be on its way: look at the tabs under the grid before you ask again.",
  "The shift ends before it begins.",
  "There is no formula sheet yet.",
  "There is no sheet … any more; it was renamed or deleted.",
  "This sheet has no roll-in fat.",
  "Wait until the sheets are calculated, then refresh.",
  "Wait until the sheets are calculated, then try again.",
  "… It took longer than Gramwright waited.",
  "… is a folder; give a file name.",
]);

test("a sentence is said in one file", () => {
  const files = new Map<string, Set<string>>();
  for (const { at, says } of TEXTS) {
    // What an argument is stands with its function, and sentences of a few words are phrases.
    if (at.startsWith("src/functions/") || wordsOf(says) < 6 || !/^[\p{Lu}…“(].*[.?!]$/u.test(says)) continue;
    files.set(says, (files.get(says) ?? new Set()).add(at.replace(/:\d+$/, "")));
  }
  const repeated = [...files].filter(([, places]) => places.size > 1).map(([says]) => says);
  expect(repeated.filter((says) => !SAID_TWICE.has(says))).toEqual([]);
  expect([...SAID_TWICE].filter((says) => !repeated.includes(says))).toEqual([]);
});
