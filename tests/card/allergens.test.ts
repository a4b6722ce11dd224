// What staff read of allergens before they eat: to the letter.
import { expect, test } from "vitest";
import { allergenLine } from "../../shared/card/allergens.ts";
import { NO_ALLERGENS } from "../../shared/label/allergens.ts";

const UNKNOWN =
  "Allergens: not worked out. Check every ingredient's label before anybody eats of it. Cross-contact is not assessed.";
const REFUSED =
  "Allergens: not worked out. The formula sheet was still calculating, or shows an error. Check every ingredient's label before anybody eats of it. Cross-contact is not assessed.";

test.each([
  ["no label on the sheet", null, UNKNOWN],
  ["no law chosen", "", UNKNOWN],
  ["a blank of spaces", "  ", UNKNOWN],
  ["an ingredient whose allergens nobody entered", "#ERROR!", REFUSED],
  ["without the add-on", "#NAME?", REFUSED],
  ["still calculating", "Loading...", REFUSED],
  [
    "none of the law's list",
    "no declarable allergens in the ingredients as entered; cross-contact is not assessed",
    "No declarable allergens in the ingredients as entered. Cross-contact is not assessed.",
  ],
  [
    "none of them, and what another law lists",
    `${NO_ALLERGENS}; not on the US list: rye`,
    "No declarable allergens in the ingredients as entered. Cross-contact is not assessed. Not on the US list: rye.",
  ],
  [
    "some",
    "cereals containing gluten (wheat, rye), milk, nuts (almonds)",
    "Contains: cereals containing gluten (wheat, rye), milk, nuts (almonds). Cross-contact is not assessed.",
  ],
  [
    "some, and what another law lists",
    "wheat; not on the US list since January 2025: coconut",
    "Contains: wheat; not on the US list since January 2025: coconut. Cross-contact is not assessed.",
  ],
])("%s", (_what, answer, line) => {
  expect(allergenLine(answer)).toBe(line);
});

test.each(["none", "None.", "no", "nothing", "-", "–", "n/a", "0", "free from nuts"])(
  "“%s” typed over it is no answer, and is never printed as one",
  (answer) => {
    const line = allergenLine(answer);
    expect(line).toMatch(/^Allergens: “.*” was entered on the formula sheet and not worked out\. Check every/);
    expect(line).toMatch(/ Cross-contact is not assessed\.$/);
  },
);

test("nuts are no word of nothing", () => {
  expect(allergenLine("nuts (almonds)")).toBe("Contains: nuts (almonds). Cross-contact is not assessed.");
});
