import { expect, test } from "vitest";
import { badFormula, neededBy } from "../../shared/sheet/make-formulas.ts";

test("what formulas need is read around texts and the names of sheets", () => {
  const formulas = [`=SUM('O''Neill "x"'!$A$1;"'Not'!A1 gramwright_larder")`, "=COUNT(gramwright_mixlog)"];
  expect(neededBy(formulas)).toEqual({ sheets: [`O'Neill "x"`], names: ["gramwright_mixlog"] });
  expect(badFormula(`=IF(LEN('IMPORTXML(x)'!A1)=0;"IMAGE(";BAKE_DOUGHFOR(1;2))`)).toBe(false);
  expect(badFormula(`="a"&IMPORTXML("x";"y")`)).toBe(true);
});
