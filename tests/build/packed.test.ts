import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { packed, unpacked } from "../../sidebar/packed.ts";
import { tries } from "../scale.ts";

const TEXT = "const flour = (grams) => grams / 0.65; // 65 % Wasser, sel 2 %, 塩 🥖\n".repeat(40);

describe("a packed text", () => {
  test("is the text again, letter for letter", () => {
    for (const text of ["", "a", TEXT]) expect(unpacked(packed(text))).toBe(text);
    const texts = fc.string({ unit: "binary", maxLength: 300 }).filter((text) => !text.includes("\u0000"));
    fc.assert(
      fc.property(texts, (text) => unpacked(packed(text)) === text),
      { numRuns: tries(10) },
    );
  });

  test("has letters alone that neither a page nor a script takes for anything else", () => {
    expect(packed(TEXT)).toMatch(/^[!#$%()*+,.0-9:;=?@A-Z[\]^_a-z{|}~]+$/);
  });

  test("is short where the text repeats itself, and hardly longer than it in the worst case", () => {
    expect(packed(TEXT).length).toBeLessThan(TEXT.length / 10);
    // 6.4 bits a letter: 8 bits of chance are 1.25 letters.
    const chance = Array.from({ length: 3000 }, (_, at) =>
      String.fromCharCode(1 + ((at * at * 7919 + at * 31) % 127)),
    ).join("");
    expect(packed(chance).length).toBeLessThan(chance.length * 1.5);
  });

  test("is refused with a letter lost, added, changed or cut off", () => {
    const letters = packed(TEXT);
    const middle = Math.floor(letters.length / 2);
    const [before, after] = [letters.slice(0, middle), letters.slice(middle + 1)];
    for (const damaged of [before + after, `${letters}!`, `${before}"${after}`, letters.slice(0, -1), ""])
      expect(() => unpacked(damaged)).toThrow();
    const other = letters[middle] === "A" ? "B" : "A";
    expect(() => unpacked(`${before}${other}${after}`)).toThrow();
  });
});
