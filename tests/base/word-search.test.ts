import { expect, test } from "vitest";
import { foundAs } from "../../shared/base/word-search.ts";

const flour = { name: "bread flour", kind: "flour", also: ["strong flour", "strong white flour", "T65"] };

test.each([
  ["", ""],
  ["bread", ""],
  ["FLOUR  bread", ""],
  ["flours", ""],
  ["white strong", "strong white flour"],
  ["t65", "T65"],
  ["bread strong", "strong flour"],
  ["rye", null],
  ["bread rye", null],
])("%j finds it as %j", (search, as) => expect(foundAs(flour, search)).toBe(as));
