import { expect, test } from "vitest";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { SHEETS } from "../../templates/index.ts";
import { METRIC } from "../functions/support.ts";
import { asOfficeReads, hasOffice } from "../workbook/support.ts";
import { callsOn, expectSame, officeDifferences, type Pair, pairOf, templateNamed, typeBoth } from "./plain-support.ts";
import { buildSheet, workbook } from "./sheet-support.ts";

/** Calls that stay in the plain form: what needs the larder's packs, allergens and composition. */
const STAY = ["BAKE_COSTS", "BAKE_LABELLIST", "BAKE_ALLERGENS", "BAKE_CONTENT"];
const COSTS = {
  labour_minutes: 90,
  labour_rate: 22,
  overhead: 0.4,
  other_costs: 3,
  packaging: 0.06,
  unsold: 0.05,
  price_by: "cost share",
  price_share: 0.3,
  price_tax: 0.07,
  price_step: 0.05,
  law: "EU",
};

async function costed(name: string): Promise<Pair> {
  const book = await workbook();
  const larder = SHEETS.find((one) => one.name === "larder");
  if (larder === undefined) throw new Error("no larder");
  await buildSheet(larder.sample, { book, model: larder, options: METRIC });
  const model = templateNamed(name);
  return pairOf(model, { ...model.sample, ...COSTS }, { book, parts: model.parts });
}

test.each([["cookie"], ["laminated"], ["cake"]])(
  "cost, price and label of %s are the same in both forms",
  async (name) => {
    const pair = await costed(name);
    const calls = callsOn(pair.plain);
    expect(calls.filter((call) => !STAY.includes(call))).toEqual([]);
    expect(calls.length).toBeLessThanOrEqual(5);
    expect(expectSame(pair)).toBeGreaterThan(80);
    // Named in a remark on the sheet itself.
    const { book, plain } = pair;
    const words = book.shownTexts(plain.sheet, book.usedRange(plain.sheet)).flat().join(" ");
    for (const said of ["prices per kg", "Ingredient list", "Allergens", "In all of it"]) expect(words).toContain(said);
    for (const [cell, text] of [
      ["price_by", "margin"],
      ["price_share", "35%"],
      ["price_step", ""],
      ["price_by", "markup"],
      ["price_from", "ingredients"],
      ["price_tax", ""],
      ["price_step", "0.1"],
      ["price_by", "margin"],
      ["price_share", "100%"],
      ["price_share", ""],
      ["declare", "Sea salt"],
      ["declare", "No such thing"],
      ["law", "US"],
    ] as const) {
      typeBoth(pair, cell, text);
      expectSame(pair, [], `${cell} ${text}`);
    }
    if (name === "laminated") {
      typeBoth(pair, "declare", "Sheet butter");
      expectSame(pair, [], "of what is rolled in");
    }
  },
);

test.skipIf(!hasOffice)("LibreOffice calculates the costed plain sheet from the .xlsx", async () => {
  const pair = await costed("cookie");
  const { differ, same } = officeDifferences(pair, asOfficeReads(await toXlsx(pair.book.engine)));
  expect(differ).toEqual([]);
  expect(same).toBeGreaterThan(80);
});
