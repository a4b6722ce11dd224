import { describe, expect, test } from "vitest";
import { Refusal } from "../../shared/base/refusal.ts";
import { KIND_WORDS } from "../../shared/larder/kind-words.ts";
import { KIND_CHOICES, kind, kindsOf } from "../../shared/larder/kinds.ts";
import { expectCells } from "../functions/support.ts";

// What a cell of a kinds column means, and what is told where it means nothing.

const read = (raw: unknown) => {
  const cell = kind().read(raw);
  if ("says" in cell) throw new Error("a kind waits for its row");
  return cell;
};
const told = (raw: unknown) => {
  const cell = read(raw);
  return "unread" in cell ? cell.unread : `read as ${JSON.stringify(cell)}`;
};
const parts = (raw: unknown) => {
  const cell = read(raw);
  if ("unread" in cell) throw new Error(cell.unread);
  return [cell.word, cell.flour, cell.water];
};

describe("a kind", () => {
  test.each(KIND_WORDS)("%s is itself, in any case and number", (word) => {
    const plain = [word, word === "flour" ? 1 : 0, word === "water" || word === "ice" ? 1 : 0];
    for (const raw of [word, ` ${word.toUpperCase()} `]) expect(parts(raw)).toEqual(plain);
    expect(kind().hint).toEqual({ of: "kind" });
  });
  test.each<[unknown, number]>([
    ["levain 100%", 1 / 2],
    ["Poolish 100 %", 1 / 2],
    ["biga 55%", 1 / 1.55],
    ["starters 62,5%", 1 / 1.625],
    ["sour 0%", 1],
    ["sourdough 500%", 1 / 6],
    [0.6, 0.6],
    ["0.6", 0.6],
    ["0,6", 0.6],
  ])("%j is a preferment with %d of flour, the rest water", (raw, flour) => {
    const [word, ofFlour, water] = parts(raw);
    expect(word).toBe("preferment");
    expectCells([ofFlour, water], [flour, 1 - flour]);
  });
  test("a tick is flour, none is other; so are the shares 1 and 0", () => {
    for (const raw of [true, 1, "1"]) expect(parts(raw)).toEqual(["flour", 1, 0]);
    for (const raw of [false, 0, "0"]) expect(parts(raw)).toEqual(["other", 0, 0]);
  });
  test("all that is offered can be read", () => {
    expect(KIND_CHOICES.map((one) => parts(one)[0])).toEqual([...KIND_WORDS, ...Array(3).fill("preferment")]);
  });
});

const WORDS = `one of ${KIND_WORDS.join(", ")}, or a preferment with its hydration such as "levain 100%"`;

test.each<[unknown, string]>([
  ["levain", 'is "levain" without its hydration; add its water as a share of its flour, such as "levain 100%"'],
  ["Levain 80", 'is "Levain 80" without its hydration; add its water as a share of its flour, such as "levain 80%"'],
  ["biga stiff", 'is "biga stiff" without its hydration; add its water as a share of its flour, such as "biga 100%"'],
  ["sour x%", 'is "sour x%" without its hydration; add its water as a share of its flour, such as "sour 100%"'],
  // The number is a share where it is no percentage of any preferment.
  ["levain 1", 'is "levain 1" without its hydration; add its water as a share of its flour, such as "levain 100%"'],
  ["biga 0.55", 'is "biga 0.55" without its hydration; add its water as a share of its flour, such as "biga 55%"'],
  [
    "starter 1:1",
    'is "starter 1:1" without its hydration; add its water as a share of its flour, such as "starter 100%"',
  ],
  ["sourdough starter 80%", 'is "sourdough starter 80%"; enter "sourdough 80%"'],
  ["levain-125%", 'is "levain-125%"; enter "levain 125%"'],
  [
    1.25,
    'is 1.25; for a starter of that hydration enter "starter 125%"; a number here is the flour\'s share, from 0 to 1',
  ],
  [7, "is 7; a number here is the flour's share, from 0 to 1"],
  ["levain 501%", 'is "levain 501%"; a hydration lies between 0 % and 500 %'],
  ["levain -1%", 'is "levain -1%"; a hydration lies between 0 % and 500 %'],
  [
    100,
    'is 100; for a starter of that hydration enter "starter 100%"; a number here is the flour\'s share, from 0 to 1',
  ],
  [-0.5, "is -0.5; a number here is the flour's share, from 0 to 1"],
  ["50%", `is "50%"; choose ${WORDS}`],
  ["fresh yeast", `is "fresh yeast"; perhaps "yeast"? Choose ${WORDS}`],
  ["ice water", `is "ice water"; perhaps "water" or "ice"? Choose ${WORDS}`],
  ["butter", `is "butter"; perhaps "fat"? Choose ${WORDS}`],
  ["flower", `is "flower"; perhaps "flour"? Choose ${WORDS}`],
  ["xyzzyxyzzy", `is "xyzzyxyzzy"; choose ${WORDS}`],
  ["#N/A", "holds the error #N/A; correct that cell first"],
  [{}, "is no type of ingredient"],
])("%j is told", (raw, says) => expect(told(raw)).toBe(says));

describe("a column of kinds beside amounts", () => {
  const beside = (amounts: readonly unknown[], kinds: readonly unknown[], names?: readonly (string | null)[]) => {
    const cells = kinds.map((raw) => (raw === null ? null : read(raw)));
    try {
      return kindsOf(amounts, cells, "kinds", names).map((one) => one?.word ?? null);
    } catch (error) {
      if (error instanceof Refusal) return error.message;
      throw error;
    }
  };
  test("counts where there is an amount, 0 included", () => {
    expect(beside([1000, 0, null, null], ["flour", "water", "salt", "rubbish"])).toEqual([
      "flour",
      "water",
      null,
      null,
    ]);
    expect(beside([1000, 5, 6], ["flour", "rubbish", null])).toBe(
      `kinds row 2 is "rubbish"; choose ${WORDS}; kinds row 3 is blank though the row has an amount. Choose ${WORDS}.`,
    );
  });
  test("a starter by its name is not all flour", () => {
    const names = ["rye levain", "Starters", "sourdough", "sourdough flour", "startered", null];
    const all = (word: string) => names.map(() => word);
    expect(beside(all("1"), all("flour"), names)).toBe(
      'kinds row 1 says that "rye levain" is all flour; enter "levain 100%" for equal flour and water; ' +
        'kinds row 2 says that "Starters" is all flour; enter "levain 100%" for equal flour and water; ' +
        'kinds row 3 says that "sourdough" is all flour; enter "levain 100%" for equal flour and water.',
    );
    expect(beside(all("1"), all("levain 100%"), names)).toEqual(all("preferment"));
    expect(beside(all("1"), all("flour"))).toEqual(all("flour"));
  });
});
