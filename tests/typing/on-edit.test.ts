// A weight typed over the sheet's: the percentages follow, it is what the sheet shows, and the formula stands again.
import { describe, expect, test } from "vitest";
import {
  ADDED,
  type By,
  built,
  exact,
  type How,
  LEVAIN,
  log,
  near,
  ONE_FLOUR,
  percents,
  shared,
  stands,
} from "./sheet-kit.ts";

const BYS: readonly By[] = ["pieces", "tins", "dough", "flour"];

describe.each(BYS)("scaled to %s", (by) => {
  test.each<[string, How, string, number]>([
    ["an ordinary row", {}, "weight", 3],
    ["one of two flours", {}, "weight", 1],
    ["the other flour", {}, "weight", 2],
    ["a levain whose flour counts", { recipe: LEVAIN }, "weight", 3],
    ["a flour beside such a levain", { recipe: LEVAIN }, "weight", 1],
    ["water beside such a levain", { recipe: LEVAIN }, "weight", 4],
    ["a levain whose flour does not count", { recipe: ADDED }, "weight", 3],
    ["a flour beside that", { recipe: ADDED }, "weight", 2],
    ["an ordinary row of a mix", {}, "per_mix", 3],
    ["a flour of a mix", {}, "per_mix", 1],
  ])("%s", async (_says, how, column, row) => {
    const sheet = await shared({ ...how, by });
    const mixes = Number(sheet.value("mixes"));
    const typed = Math.round(exact(sheet, row) * (row === 1 ? 0.97 : 1.04)) + 0.4;
    sheet.type(column, String(column === "weight" ? typed : typed / 2), row);
    if (column === "weight") near(exact(sheet, row), typed);
    else near(exact(sheet, row), (typed / 2) * Number(sheet.value("mixes")));
    expect(mixes).toBe(2);
    stands(sheet);
    expect(log(sheet.book)).toEqual([]);
  });
});

describe("the only flour", () => {
  test.each(["dough", "flour"] as const)("by %s the amount follows, no percentage does", async (by) => {
    const sheet = await built({ recipe: ONE_FLOUR, by });
    const before = percents(sheet);
    sheet.type("weight", "6500", 1);
    near(exact(sheet, 1), 6500);
    expect(percents(sheet)).toEqual(before);
    stands(sheet);
  });
  test.each(["pieces", "tins"] as const)("by %s it is put back, and a note says why", async (by) => {
    const sheet = await built({ recipe: ONE_FLOUR, by });
    const [before, weight] = [percents(sheet), sheet.value("weight", 1)];
    sheet.type("weight", "6500", 1);
    expect(percents(sheet)).toEqual(before);
    expect(sheet.value("weight", 1)).toBe(weight);
    expect(sheet.note("weight", 1)).toBe(
      "Gramwright put back 6500. Flour is 100 %. Change the order, or scale to flour.",
    );
    stands(sheet);
    sheet.type("weight", "6400", 1);
    expect(sheet.note("weight", 1)).toMatch(/put back 6400/);
    // The note goes at the next edit of its cell.
    sheet.book.clear(sheet.sheet, sheet.at("weight", 1));
    expect(sheet.note("weight", 1)).toBe("");
  });
});

test("a note goes when the next weight of its cell is taken", async () => {
  const sheet = await built({ by: "dough" });
  sheet.type("weight", "abc", 3);
  expect(sheet.note("weight", 3)).toBe("Gramwright cleared “abc”. Enter a weight in g, as a number from 0.");
  sheet.type("weight", "9000", 3);
  near(exact(sheet, 3), 9000);
  expect(sheet.note("weight", 3)).toBe("");
  stands(sheet);
});

test("on the steps of the scales a mix shows another weight, and a note says so", async () => {
  const sheet = await built({ by: "flour" });
  sheet.type("per_mix", "4002.5", 3);
  near(exact(sheet, 3), 8005);
  expect(sheet.value("per_mix", 3)).toBe(4005);
  expect(sheet.note("per_mix", 3)).toBe("Gramwright took 4002.5 g a mix. The scales show 4005 g.");
});

describe("several at once", () => {
  test("three weights typed before the trigger answers are all taken, though the service keeps two events", async () => {
    const sheet = await built({ by: "flour" });
    sheet.book.holdEdits();
    sheet.type("weight", "9001", 3);
    sheet.type("weight", "300", 4);
    sheet.type("weight", "210.5", 5);
    expect(String(sheet.value("check"))).toMatch(/clear what is typed over/);
    sheet.book.answerEdits();
    near(exact(sheet, 3), 9001);
    near(exact(sheet, 4), 300);
    near(exact(sheet, 5), 210.5);
    stands(sheet);
  });

  test.each(["dough", "flour"] as const)("a pasted column of 16 weights makes the recipe so, by %s", async (by) => {
    const recipe = Array.from(
      { length: 16 },
      (_, at) => [`Part ${at + 1}`, at < 2 ? "flour" : "other", at < 2 ? 0.5 : 0.01] as const,
    );
    const sheet = await built({ recipe, by });
    const weights = Array.from({ length: 16 }, (_, at) => 5000 / (at + 1) + 0.25);
    sheet.paste(
      "weight",
      weights.map((one) => [String(one)]),
      1,
    );
    weights.forEach((one, at) => {
      near(exact(sheet, at + 1), one);
    });
    const flour = (weights[0] ?? 0) + (weights[1] ?? 0);
    near(Number(sheet.value("percent", 1)), (weights[0] ?? 0) / flour);
    near(Number(sheet.value("amount")), by === "flour" ? flour : weights.reduce((sum, one) => sum + one, 0));
    stands(sheet);
  });

  test("a recipe pasted where the order is pieces: the percentages follow, the order stays, and a note says so", async () => {
    const sheet = await built({ by: "pieces" });
    const dough = sheet.value("dough");
    sheet.paste("weight", [["900"], ["100"], ["650"], ["20"], ["10"], ["30"]], 1);
    expect(percents(sheet, 6)).toEqual([0.9, 0.1, 0.65, 0.02, 0.01, 0.03]);
    expect(sheet.value("dough")).toBe(dough);
    expect(sheet.note("weight", 1)).toMatch(/The order stays/);
    stands(sheet);
  });

  test("a weight filled down is taken in every row that has an ingredient, and cleared in those that have none", async () => {
    const sheet = await built({ by: "flour" });
    sheet.book.holdEdits();
    sheet.type("weight", "300", 4);
    const first = sheet.at("weight", 4);
    sheet.book.fillDown(sheet.sheet, first, sheet.rowOf("weight", 8));
    sheet.book.answerEdits();
    for (const row of [4, 5, 6]) near(exact(sheet, row), 300);
    for (const row of [7, 8]) {
      expect(sheet.value("percent", row)).toBe("");
      expect(sheet.note("weight", row)).toMatch(/Enter the ingredient and its type first/);
    }
    stands(sheet);
  });

  test("of a weight and that of a mix in one row the whole dough's is taken", async () => {
    const sheet = await built({ by: "flour" });
    sheet.paste("weight", [["9000", "1"]], 3);
    near(exact(sheet, 3), 9000);
    stands(sheet);
  });
});

test("pounds and ounces as people write them", async () => {
  const sheet = await built({
    by: "flour",
    weight: "oz",
    values: { amount: 500, mixer_limit: 800, step_coarse: 0.5, step_fine: 0.1 },
  });
  sheet.type("weight", "1 lb 6 oz", 6);
  near(exact(sheet, 6), 22);
  sheet.type("weight", "320", 3);
  near(exact(sheet, 3), 320);
  sheet.type("weight", "a cup", 3);
  expect(sheet.note("weight", 3)).toMatch(/Enter a weight in oz/);
});
