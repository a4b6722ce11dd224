import { expect, test } from "vitest";
import { exactFormat } from "../../shared/sheet/theme.ts";

// Common practice, no source: a figure on a step of a scale has the step's decimals; any other is read to three digits.
test.each([
  [6755, "#,##0"],
  [6.5, "#,##0.0"],
  [0.0625, "#,##0.0000"],
  [0.03125, "#,##0.00000"],
  [6.793416, "#,##0.00"],
  [83.206584, "#,##0.0"],
  [0.239138, "#,##0.000"],
  [1234.56789012, "#,##0"],
  [0.1 + 0.2, "#,##0.0"],
])("a figure of %s has the decimals of its step, or three digits", (value, format) => {
  expect(exactFormat(value)).toBe(format);
});
