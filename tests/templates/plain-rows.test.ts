import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seedOf, tries } from "../kit/scale.ts";
import { expectSame, type Pair, pairOf, templateNamed, typeBoth } from "./plain-support.ts";

const cookie = templateNamed("cookie");
const softBun = templateNamed("soft-bun");
/** Rows 1 to 6 of the table and how much is made, all typed anew. */
type Typed = {
  readonly by: string;
  readonly amount: string;
  readonly rows: readonly (readonly [kind: string, percent: string, weight: string])[];
};

/** "flour|100%|": kind, percentage and weight. */
function rowOf(text: string): [kind: string, percent: string, weight: string] {
  const [kind = "", percent = "", weight = ""] = text.split("|");
  return [kind, percent, weight];
}

function typeRows(pair: Pair, { by, amount, rows }: Typed): string {
  const { book, added, plain } = pair;
  for (const { sheet, at } of [added, plain]) {
    for (let row = 1; row <= 6; row++) {
      const [kind, percent, weight] = rows[row - 1] ?? ["", "", ""];
      book.type(sheet, at("kind", row), kind);
      book.type(sheet, at("percent", row), percent);
      book.type(sheet, at("weighed", row), weight);
    }
  }
  typeBoth(pair, "by", by);
  typeBoth(pair, by === "flour" ? "flour_wanted" : "dough_wanted", amount);
  return JSON.stringify({ by, amount, rows });
}

/** Every case types all six rows anew. */
let made: Promise<Pair> | undefined;
const shared = () => {
  made ??= pairOf(cookie, START, { parts: [] });
  return made;
};

const START = { title: "Rows", by: "dough", step_coarse: 5, step_fine: 1 };

describe("rows told in every way", () => {
  test.each([
    ["dough", "5000", "flour|100|; water|65|; salt|2|"],
    ["flour", "1000", "flour|80%|; levain 100%|40%|; water|50%|"],
    ["dough", "900", "flours|100%|; starter 60%|32%|; water|50%|"],
    ["dough", "", "flour||1000; water|65%|; salt||20"],
    ["dough", "5000", "flour||1000; water|65%|; salt||20"],
    ["flour", "700", "flour||600; flour|40%|; water|70%|"],
    ["dough", "", "flour|100%|; water|65%|700; salt|2%|"],
    ["dough", "2000", "flour|100%|; water|65%|; salt||20"],
    ["flour", "2000", "flour|70|; poolish 100%|60|; water|40|"],
    ["dough", "", "levain 80%||500; water||100"],
    // Refused by the add-on, each with its sentence.
    ["dough", "5000", "flour|90%|; water|65%|"],
    ["dough", "5000", "flour|1|; water|65|"],
    ["dough", "5000", "flour|100|; water|0.65|; salt|0.02|"],
    ["dough", "5000", "|100%|; water|65%|"],
    ["dough", "5000", "flour|100%|; wetter|65%|"],
    ["dough", "5000", "flour|100%|; levain|65%|"],
    ["dough", "5000", "flour|100%|; water|a lot|"],
    ["dough", "5000", "flour|100%|; water||a cup"],
    ["dough", "5000", "flour|100%|; water|-65%|"],
    ["dough", "", "flour|100%|; water|65%|"],
    ["dough", "", "flour|100%|1000; water|65%|700"],
    ["dough", "900", "flour|100%|; water||950"],
    ["dough", "900", "water|65%|; salt||20"],
    ["dough", "0", "flour|100%|; water|65%|"],
  ])("by %s, %s: %s", async (by, amount, rows) => {
    const pair = await shared();
    const told = typeRows(pair, { by, amount, rows: rows.split("; ").map(rowOf) });
    expectSame(pair, [], told);
    // What the add-on refuses is not weighed out by the plain form.
    if (pair.added.value("check") !== "") expect(pair.plain.value("grams", 1)).toBe("");
  });

  test("as chance has them", async () => {
    const pair = await shared();
    const kind = fc.constantFrom("water", "water", "sugar", "fat", "other", "egg", "levain 100%", "biga 55%");
    const amounts = fc.constantFrom("", "3000", "5000", "5000");
    const weight = fc.constantFrom("", "", "", "", "", "250");
    const percent = fc.constantFrom("2%", "4.5%", "10%", "30%", "50%", "65%", "");
    let told = 0;
    fc.assert(
      fc.property(
        fc.record({
          by: fc.constantFrom("dough", "flour"),
          amount: amounts,
          rows: fc.array(fc.tuple(kind, percent, weight), { minLength: 1, maxLength: 5 }),
          lead: fc.constantFrom(["100%", ""], ["100%", ""], ["100%", "1000"], ["", "1000"], ["60%", ""]),
        }),
        ({ by, amount, rows, lead: [percent = "", weight = ""] }) => {
          const says = typeRows(pair, { by, amount, rows: [["flour", percent, weight], ...rows] });
          if (expectSame(pair, [], says) > 12) told += 1;
          if (pair.added.value("check") !== "") expect(pair.plain.value("grams", 1), says).toBe("");
        },
      ),
      { numRuns: tries(50), seed: seedOf(7) },
    );
    expect(told).toBeGreaterThan(15);
  });
});

describe("the list of water", () => {
  test("a name that is not in it is told, and a row of its own mends it", async () => {
    const pair = await pairOf(softBun, softBun.sample);
    const { plain } = pair;
    for (const { type } of [pair.added, plain]) {
      type("ingredient", "Sour cream", 9);
      type("kind", "dairy", 9);
      type("percent", "5%", 9);
    }
    expect(plain.value("plain_water")).toBe("");
    expect(plain.value("liquid_says")).toBe("not in the list of water: 1");
    plain.type("moist_name", "Sour cream", 6);
    // USDA SR28 01056, sour cream: 73.07 g of water in 100 g.
    plain.type("moist_water", "73.07%", 6);
    expectSame(pair);
  });

  test("more water than wanted is told", async () => {
    const pair = await pairOf(softBun, softBun.sample);
    typeBoth(pair, "effective_wanted", "20%");
    expect(pair.plain.value("liquid_says")).toBe("too wet without plain water");
    expect(pair.plain.value("plain_water")).toBe("");
  });
});
