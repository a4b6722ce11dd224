// A formula of the list of formula sheets says which tab its row is about.
import { expect, test } from "vitest";
import { aboutTab, tabOf } from "../../shared/sheet/tab.ts";
import { TAB_FORMULA } from "../../src/planners/list-row.ts";

test.each([
  ["='Loaf'!$A$1", null],
  ["=ROWS('Loaf 1'!$A$1)*12", { name: "Loaf 1", id: 12 }],
  ["=ROWS(Loaf!$A$1)*0", { name: "Loaf", id: 0 }],
  ["=ROWS('Baker''s!'!$A$1)*7", { name: "Baker's!", id: 7 }],
  ["=ROWS(#REF!)*7", null],
  ["", null],
  [undefined, null],
])("%s is about %o", (formula, tab) => {
  expect(tabOf(formula)).toEqual(tab);
});

test.each(["Loaf", "Baker's", "it''s", "$A$1", "a!b"])("a row about %s tells its name and number again", (name) => {
  const formula = aboutTab(TAB_FORMULA, { name, id: 4 });
  expect(tabOf(formula)).toEqual({ name, id: 4 });
});
