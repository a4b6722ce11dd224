// References in formulas whose cells moved, each worked out by hand.
import { expect, test } from "vitest";
import { type Moves, skeleton, withMoved, withoutDecimals } from "../../shared/sheet/moved-references.ts";

/** Row 9 is gone, and all from row 10 on stands five rows higher. */
const up: Moves = (zone) => (zone.row === 8 ? null : { ...zone, row: zone.row >= 9 ? zone.row - 5 : zone.row });

test.each([
  ["=C10*2", "=C5*2"],
  ["=SUM($C$10:C$12)", "=SUM($C$5:C$7)"],
  ["=C9+A1", "=#REF!+A1"],
  ["='Other'!C10+Sheet1!C10", "='Other'!C10+Sheet1!C10"],
  ["='Quay loaf'!C10", "='Quay loaf'!C5"],
  ["=\"C10 and 5 'Quay loaf'!C10\"&C10", "=\"C10 and 5 'Quay loaf'!C10\"&C5"],
  ["=LOG10(C10)+BAKE_X10(1)+some_C10+AC10X", "=LOG10(C5)+BAKE_X10(1)+some_C10+AC10X"],
  ["=ROWS(C:C)+SUM(10:12)", "=ROWS(C:C)+SUM(10:12)"],
])("on the sheet itself %s is %s", (formula, now) => {
  expect(withMoved(formula, "Quay loaf", up, true)).toBe(now);
});

test.each([
  ["=C10*2", "=C10*2"],
  ["='Quay loaf'!C10*2", "='Quay loaf (2)'!C5*2"],
  ["='It''s a loaf'!C10", "='It''s a loaf'!C10"],
  ["=COUNT('Quay loaf'!C9:C9)", "=COUNT(#REF!)"],
])("on another sheet %s is %s", (formula, now) => {
  expect(withMoved(formula, "Quay loaf", up, false, "Quay loaf (2)")).toBe(now);
});

test("a name with an apostrophe, and one that needs no quotation marks", () => {
  expect(withMoved("='Ada''s loaf'!C10", "Ada's loaf", up, false)).toBe("='Ada''s loaf'!C5");
  expect(withMoved("=Loaf!C10", "Loaf", up, false)).toBe("='Loaf'!C5");
});

test("formulas that differ by their places alone are alike", () => {
  expect(skeleton('=SUM(C1:C9)&"C1"')).toBe(skeleton('=SUM($D$4:D7) & "C1"'));
  expect(skeleton("=SUM(C1:C9)")).not.toBe(skeleton("=MAX(C1:C9)"));
});

test("decimals become fractions, in no text", () => {
  expect(withoutDecimals("=C1*0.65+.5%&\"1.5\"&'v 1.2'!A1")).toBe("=C1*(65/100)+(5/10)%&\"1.5\"&'v 1.2'!A1");
  expect(withoutDecimals("=A1+12")).toBe("=A1+12");
});
