import { expect, test } from "vitest";
import { recipeYield } from "../../shared/recipe/yield.ts";

test.each<[string, number | null]>([
  ["Makes 24", 24],
  ["Makes: 2 loaves", 2],
  ["makes about 18 rolls", 18],
  ["Yield: 60 pieces", 60],
  ["Yields two dozen buns", 24],
  ["Makes one and a half dozen", 18],
  ["Makes 1 large loaf", 1],
  ["Makes one 2 lb loaf", 1],
  ["Quay rolls (makes 12)", 12],
  ["MAKES TWENTY-FOUR", 24],
  ["Makes a dozen", 12],
  ["Makes a soft dough", null],
  ["Makes 18-20 rolls", null],
  ["Makes 18 to 20 rolls", null],
  ["Makes 2.5 kg of dough", null],
  ["Makes 900 g", null],
  ["Makes 4 cups", null],
  ["Yield: 8 servings", null],
  ["500 g flour", null],
  ["Mix for 8 minutes, which makes it smooth", null],
  ["", null],
])("%j: %j", (line, pieces) => expect(recipeYield(["Quay rolls", line])).toBe(pieces));

test("the first line that says it, and a long line does no harm", () => {
  expect(recipeYield(["Serves 4", "Makes 6", "Makes 12"])).toBe(6);
  expect(recipeYield(["makes ".repeat(20_000)])).toBeNull();
});
