import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { readRecipeLine } from "../../shared/recipe/line.ts";
import { tokensOf } from "../../shared/recipe/tokens.ts";
import { run } from "../functions/support.ts";
import { seedOf, tries } from "../kit/scale.ts";

const SEED = seedOf(20_261_125);

const PIECES = [
  ...["1", "½", "1/2", "1,250", "1.2.3", "(", ")", "[", "plus", "to", "-", "of", "x", "a", "half", "and", "each", "="],
  ...[
    "cups",
    "g",
    "tsp",
    "fl oz",
    "can",
    "large",
    "heaped",
    "flour",
    "eggs",
    "=IMPORTXML(",
    "__proto__",
    "constructor",
  ],
  ...[
    "\u202f",
    "\u00a0",
    "\u200b",
    "\ud83c\udf5e",
    "\ud800",
    "e\u0301",
    "\u0000",
    "½½",
    "%",
    "°F",
    ":",
    ",",
    ".",
    "/",
    "//",
  ],
];
const HOSTILE = fc.oneof(
  fc.string({ unit: "binary", maxLength: 300 }),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 120 }).map((pieces) => pieces.join(" ")),
  fc.array(fc.constantFrom(...PIECES), { maxLength: 120 }).map((pieces) => pieces.join("")),
  fc
    .tuple(fc.constantFrom(...PIECES), fc.integer({ min: 1, max: 50_000 }))
    .map(([piece, length]) => piece.repeat(length).slice(0, length)),
);

describe("hostile text", () => {
  test("is read, left blank or refused; nothing else is thrown", () => {
    fc.assert(
      fc.property(HOSTILE, HOSTILE, (line, name) => {
        for (const args of [[line], [line, name], [`2 cups ${line}`], ["2 cups", line]]) {
          const [least, most, remark] = (
            run("BAKE_GRAMSPAN", ...args.map((one) => (/^(#|loading)/i.test(one.trim()) ? "x" : one))) as unknown[][]
          )[0] ?? [""];
          if (typeof least === "number") expect(most).toBeGreaterThanOrEqual(least);
          else expect([least, most ?? "", typeof (remark ?? "")]).toEqual(["", "", "string"]);
          try {
            run("BAKE_GRAMS", ...args);
          } catch (error) {
            expect(error).toBeInstanceOf(Refusal);
            expect((error as Refusal).message.length).toBeLessThan(700);
          }
        }
      }),
      { numRuns: tries(400), seed: SEED },
    );
  });
  test("is walked once: every sign belongs to one piece, and a text that is no line is not read at all", () => {
    for (const piece of PIECES.filter((one) => !/[\s\u200b]/.test(one) && one.normalize("NFC") === one)) {
      const text = piece.repeat(50_000).slice(0, 50_000);
      const expected = text.replace(/[xX*]/g, "x");
      expect(
        tokensOf(text)
          .map((token) => token.text)
          .join("")
          .replace(/[xX*]/g, "x").length,
      ).toBe(expected.length);
      expect(readRecipeLine(text)).toEqual({
        is: "unclear",
        says: "50000 characters are no line; give each ingredient a cell of its own",
      });
    }
  });
  test("a line of plain letters is cut into the same pieces as one with an accent behind it", () => {
    const PLAIN = fc.array(fc.constantFrom(..."aT5xz0 1.,/-(&%", "1,250", "T55", "1lb4oz"), {
      maxLength: 30,
    });
    fc.assert(
      fc.property(PLAIN, (pieces) => {
        const line = pieces.join("");
        const accented = tokensOf(`${line} \u00e9`);
        expect(accented.pop()?.text).toBe("\u00e9");
        expect(tokensOf(line)).toEqual(accented);
      }),
      { numRuns: tries(2000), seed: SEED },
    );
  });
});
