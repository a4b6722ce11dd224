// A weight typed over the sheet's: the percentages follow, it is what the sheet shows, and the formula stands again.
import { describe, expect, test } from "vitest";
import { openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { templateOf } from "../sidebar/samples.ts";
import {
  ADDED,
  type By,
  built,
  exact,
  type How,
  LEVAIN,
  log,
  ONE_FLOUR,
  percents,
  shared,
  stands,
} from "./sheet-kit.ts";

const near = (value: number, wanted: number) => expect(Math.abs(value - wanted) / wanted).toBeLessThan(1e-9);
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

describe("what is no weight", () => {
  const cases: readonly (readonly [string, string, RegExp])[] = [
    ["text", "a cup", /cleared “a cup”/],
    ["a number as text", "'600", /cleared “600”/],
    ["a weight with its unit", "600 g", /cleared “600 g”/],
    ["an error", "=1/0", /cleared a formula/],
    ["an error that was pasted", "#N/A", /cleared “#N\/A”/],
    ["a truth value", "TRUE", /cleared “TRUE”/],
    ["a date that the cell shows as a number", "2026-11-30", /put back 46356/],
    ["less than nothing", "-5", /cleared -5/],
    ["a formula", "=2*300", /cleared a formula/],
    ["a formula over the weights", "=D18*2", /cleared a formula/],
  ];
  test.each(cases)("%s is cleared, with a note", async (_says, text, note) => {
    const sheet = await shared({ by: "dough" });
    const before = percents(sheet);
    sheet.type("weight", text, 3);
    expect(percents(sheet)).toEqual(before);
    expect(sheet.note("weight", 3)).toMatch(note);
    stands(sheet);
    expect(log(sheet.book)).toEqual([]);
  });

  test.each([
    ["of_whole", 3],
    ["cost_shown", 2],
    ["note", 2],
    ["weight", 7],
    ["scaled_shown", 1],
    ["dough_shown", 2],
    ["margin_shown", 1],
    ["start_shown", 2],
    ["exact", 2],
  ] as const)(
    "what is typed over %s, row %i, is cleared with a note, and its column stands again",
    async (name, row) => {
      const sheet = await built({ by: "pieces" });
      const last = name === "weight" ? sheet.rows("weight") - 1 : row;
      const before = sheet.value(name, last);
      sheet.type(name, "7", last);
      expect(sheet.value(name, last)).toBe(before);
      expect(sheet.note(name, last)).toMatch(/^Gramwright cleared (7|a date)\. This cell is worked out/);
      stands(sheet);
      expect(log(sheet.book)).toEqual([]);
    },
  );

  test("preferment and final mix follow: what is typed there is cleared, and the note says where to enter it", async () => {
    const values = { pre_kind: "poolish", pre_share: 0.3, pre_hydration: 1, pre_yeast: 0.002 };
    const sheet = await built({ template: "hearth-loaf", by: "dough", values });
    const before = sheet.value("pre_shown", 1);
    sheet.type("pre_shown", "900", 1);
    expect(sheet.value("pre_shown", 1)).toBe(before);
    expect(sheet.note("pre_shown", 1)).toMatch(/Enter the weight under Weight/);
    sheet.type("weight", "9000", 3);
    near(exact(sheet, 3), 9000);
  });

  test("levain and final mix follow, too", async () => {
    const { sample } = templateOf("levain-loaf");
    const sheet = await (await openBook()).build("levain-loaf", { ...sample, by: "dough", amount: 20_000 });
    const before = [sheet.value("pre_shown", 1), sheet.value("final_shown", 4)];
    sheet.type("pre_shown", "900", 1);
    sheet.type("final_shown", "900", 4);
    expect([sheet.value("pre_shown", 1), sheet.value("final_shown", 4)]).toEqual(before);
    for (const [name, row] of [["pre_shown", 1] as const, ["final_shown", 4] as const])
      expect(sheet.note(name, row)).toMatch(/Enter the weight under Weight/);
    sheet.type("weight", "8500", 4);
    near(exact(sheet, 4), 8500);
    stands(sheet);
  });

  test.each(["base", "finished", "flour"])(
    "fat rolled in as a share of %s: the dough with its fat stays what was ordered, and where all flour is typed the order follows",
    async (of) => {
      const values = { ...templateOf("laminated").sample, by: "dough", amount: 20_000, roll_in_of: of };
      const sheet = await (await openBook()).build("laminated", values);
      sheet.type("weight", "4000", 2);
      near(exact(sheet, 2), 4000);
      near(Number(sheet.value("dough_all")), 20_000);
      sheet.type("weight", "9000", 1);
      near(exact(sheet, 1), 9000);
      near(Number(sheet.value("dough_all")), Number(sheet.value("amount")));
      expect(sheet.value("percent", 1)).toBe(1);
      stands(sheet);
    },
  );

  test.each([
    ["cake", "batter", 16_000],
    ["cookie", "trays", 24],
  ] as const)("%s by %s: a pasted column of weights makes the recipe so", async (template, by, amount) => {
    const sheet = await (await openBook()).build(template, { ...templateOf(template).sample, by, amount });
    const rows = (templateOf(template).sample.ingredient as readonly string[]).length;
    const weights = Array.from({ length: rows }, (_, at) => 1000 / (at + 1) + 0.5);
    const ordered = sheet.value("dough_ordered");
    sheet.paste(
      "weight",
      weights.map((one) => [String(one)]),
      1,
    );
    const share = (row: number) => Number(sheet.value("percent", row)) / Number(sheet.value("percent", 1));
    weights.forEach((one, at) => {
      near(share(at + 1), one / (weights[0] ?? 0));
    });
    if (by === "batter") near(exact(sheet, 1), weights[0] ?? 0);
    else {
      expect(sheet.value("dough_ordered")).toBe(ordered);
      expect(sheet.note("weight", 1)).toMatch(/The order stays/);
    }
    stands(sheet);
  });

  test("a nought takes the row out, but not the only flour", async () => {
    const sheet = await built({ recipe: ONE_FLOUR, by: "dough" });
    sheet.type("weight", "0", 5);
    expect(sheet.value("percent", 5)).toBe(0);
    sheet.type("weight", "0", 1);
    expect(sheet.value("percent", 1)).toBe(1);
    expect(sheet.note("weight", 1)).toMatch(/needs a flour row/);
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

describe("undone", () => {
  const loaf = async (): Promise<[Sheet, unknown[], unknown]> => {
    const sheet = await built({ by: "dough" });
    return [sheet, percents(sheet), sheet.value("weight", 3)];
  };
  test("the add-on's change is one step, what was typed another; neither is taken again", async () => {
    const [sheet, old, weight] = await loaf();
    sheet.type("weight", "9000", 3);
    expect(percents(sheet)).not.toEqual(old);
    sheet.book.undo();
    expect(percents(sheet)).toEqual(old);
    expect(sheet.value("weight", 3)).toBe(9000);
    sheet.book.undo();
    expect(percents(sheet)).toEqual(old);
    expect(sheet.value("weight", 3)).toBe(weight);
    stands(sheet);
    // Typed again it is a new edit.
    sheet.type("weight", "9000", 3);
    near(exact(sheet, 3), 9000);
    stands(sheet);
  });
  test("any other edit forgets: what still stands there is taken", async () => {
    const [sheet] = await loaf();
    sheet.type("weight", "9000", 3);
    sheet.book.undo();
    sheet.type("title", "Another");
    expect(sheet.value("weight", 3)).toBe(9000);
    sheet.type("weight", "300", 4);
    near(exact(sheet, 4), 300);
    stands(sheet);
  });
  test("deleted before the trigger answers: nothing changes", async () => {
    const [sheet, old, weight] = await loaf();
    sheet.book.holdEdits();
    sheet.type("weight", "9000", 3);
    sheet.book.clear(sheet.sheet, sheet.at("weight", 3));
    sheet.book.answerEdits();
    expect(percents(sheet)).toEqual(old);
    expect(sheet.value("weight", 3)).toBe(weight);
    stands(sheet);
  });
});

describe("calls of the service", () => {
  const trail = (sheet: Sheet, act: () => void): readonly string[] => {
    act();
    return sheet.book.trail;
  };
  test("one read and at most three writes: percentages, amount, cleared cells", async () => {
    const sheet = await built({ by: "dough" });
    expect(trail(sheet, () => sheet.type("weight", "9000", 3))).toEqual(["getValues", "setValues", "clearContent"]);
    const one = await built({ recipe: ONE_FLOUR, by: "dough" });
    expect(trail(one, () => one.type("weight", "9000", 1))).toEqual(["getValues", "setValue", "clearContent"]);
  });
  test("none on another sheet, or left of what is worked out; one read elsewhere", async () => {
    const sheet = await built({ by: "dough" });
    const { book } = sheet;
    const calls = (act: () => void) => {
      const before = book.serviceCalls;
      act();
      return book.serviceCalls - before;
    };
    expect(calls(() => book.type("Sheet1", "D20", "5"))).toBe(0);
    expect(calls(() => sheet.type("kind", "other", 6))).toBe(0);
    expect(calls(() => sheet.type("amount", "26000"))).toBe(0);
    expect(calls(() => sheet.type("percent", "63%", 3))).toBe(1);
  });
  test("none before the add-on was used in the file, and none without it", async () => {
    const sheet = await built({ by: "dough" });
    const copy = sheet.book.copy().sheet(sheet.sheet);
    const before = copy.book.serviceCalls;
    copy.type("weight", "9000", 3);
    expect(copy.book.serviceCalls).toBe(before);
    expect(String(copy.value("check"))).toMatch(/clear what is typed over/);
    // The menu was used once: from now on it runs, and takes what stands there.
    copy.book.runMenu("Open Gramwright");
    copy.type("weight", "301", 4);
    near(exact(copy, 4), 301);
    stands(copy);
  });
  test("whatever fails, nobody is bothered, and what was typed stays for the next time", async () => {
    const sheet = await built({ by: "flour" });
    for (const call of [1, 2, 3]) {
      sheet.book.failAt(call);
      sheet.type("weight", String(9000 + call), 3);
      sheet.book.failAt(undefined);
    }
    sheet.book.session.lockIsTaken = true;
    sheet.type("weight", "9004", 3);
    sheet.book.session.lockIsTaken = false;
    expect(log(sheet.book).every((one) => /^log: onEdit: Service Spreadsheets failed/.test(one))).toBe(true);
    sheet.type("weight", "300", 4);
    near(exact(sheet, 3), 9004);
    stands(sheet);
  });
});
