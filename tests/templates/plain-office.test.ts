import { expect, test } from "vitest";
import { toXlsx } from "../../src/workbook/xlsx/xlsx.ts";
import { OLDER } from "../kit/older.ts";
import { asOfficeReads, hasOffice } from "../workbook/support.ts";
import { officeDifferences, pairOf } from "./plain-support.ts";
import { workbook } from "./sheet-support.ts";

test.skipIf(!hasOffice)("LibreOffice calculates every number of every plain sheet from the .xlsx", async () => {
  const book = await workbook();
  const pairs = [];
  for (const model of OLDER) pairs.push(await pairOf(model, model.sample, { book }));
  const office = asOfficeReads(await toXlsx(book.engine));
  for (const pair of pairs) {
    const { differ, same } = officeDifferences(pair, office);
    expect(differ).toEqual([]);
    expect(same, pair.plain.sheet).toBeGreaterThan(45);
  }
});
