import { describe, expect, test } from "vitest";
import { TEMPLATES } from "../../templates/index.ts";
import { buildSheet, HANDOUT } from "./sheet-support.ts";

// Every test builds whole sheets.

const close = (actual: unknown, expected: number, within: number) => {
  expect(typeof actual, String(actual)).toBe("number");
  expect(Math.abs((actual as number) - expected), `${actual} against ${expected}`).toBeLessThanOrEqual(within);
};

test("changing the water's percentage changes every number that depends on it", async () => {
  const { value, type } = await buildSheet(HANDOUT);
  type("percent", "70%", 2);
  close(value("grams", 1), 28470 / 1.73, 1e-6);
  close(value("grams", 2), (28470 / 1.73) * 0.7, 1e-6);
  close(value("hydration"), 0.7, 1e-12);
  close(value("whole", 1), 1 / 1.73, 1e-12);
  close(value("mix", 2), 11520, 1e-9);
});

describe("rows", () => {
  const total = 28470;
  const oil = (built: Awaited<ReturnType<typeof buildSheet>>, row: number) => {
    const { book, sheet, at } = built;
    const line = Number(at("percent", row).replace(/\D/g, ""));
    for (const [column, text] of [
      ["A", "Oil"],
      ["B", "fat"],
      ["C", "3%"],
    ] as const)
      book.type(sheet, `${column}${line}`, text);
  };

  test.each([
    ["first", 1],
    ["in the middle", 3],
    ["last", 5],
  ])("inserted %s: every total follows", async (_, row) => {
    const built = await buildSheet(HANDOUT);
    const { book, sheet, at, value } = built;
    book.insertRows(sheet, Number(at("percent", row).replace(/\D/g, "")));
    oil(built, row);
    close(value("dough"), total, 1e-6);
    close(value("flour"), total / 1.73, 1e-6);
    close(value("grams", row), (total / 1.73) * 0.03, 1e-6);
  });

  test("the last of 16 rows is counted, and a row inserted below it too", async () => {
    const built = await buildSheet(HANDOUT);
    const { book, sheet, at, value } = built;
    oil(built, 16);
    close(value("flour"), total / 1.73, 1e-6);
    book.insertRows(sheet, Number(at("percent", 17).replace(/\D/g, "")));
    const line = Number(at("percent", 17).replace(/\D/g, ""));
    for (const [column, text] of [
      ["A", "Malt"],
      ["B", "sugar"],
      ["C", "1%"],
    ] as const)
      book.type(sheet, `${column}${line}`, text);
    close(value("flour"), total / 1.74, 1e-6);
  });

  test("the first deleted: the rest is counted", async () => {
    const built = await buildSheet({
      ...HANDOUT,
      ingredient: ["Oil", "Flour", "Water"],
      kind: ["fat", "flour", "water"],
      percent: [0.03, 1, 0.6],
    });
    const { book, sheet, at, value } = built;
    close(value("flour"), total / 1.63, 1e-6);
    book.deleteRows(sheet, Number(at("percent", 1).replace(/\D/g, "")));
    close(value("flour"), total / 1.6, 1e-6);
    close(value("grams", 1), total / 1.6, 1e-6);
  });

  test("sorted by name: totals stay, weights follow their rows", async () => {
    const { book, sheet, at, value } = await buildSheet(HANDOUT);
    book.sortRange(sheet, `${at("ingredient", 1)}:${at("weighed", 4)}`, "A");
    expect([1, 2, 3, 4].map((row) => value("ingredient", row))).toEqual(["Flour", "Salt", "Water", "Yeast"]);
    close(value("dough"), total, 1e-6);
    close(value("grams", 3), 11220.5294, 1e-3);
  });
});

describe("a wrong entry is told, with what to write", () => {
  test.each([
    [
      "65 in a cell that lost its percent format",
      "percent",
      2,
      65,
      "share",
      /percents row 3 is 65, which beside flour of 1 \(100%\) is 6500 %; enter 65%/,
    ],
    [
      "text in a weight",
      "weighed",
      2,
      "a cup",
      "share",
      /weights row 3 is "a cup", which is not a number; enter a weight/,
    ],
    [
      "a levain without its hydration",
      "kind",
      2,
      "levain",
      "share",
      /kinds row 3 is "levain" without its hydration; .*"levain 100%"/,
    ],
    ["a blank depth", "tin_size_3", undefined, "", "tin_capacity", /sizes have no depth: place 3 is blank/],
    ["text in the room's temperature", "room_temp", undefined, "warm", "water_temp", /temps row 2 is "warm"/],
  ])("%s", async (_, name, row, entry, where, sentence) => {
    const built = await buildSheet(TEMPLATES[0]?.sample ?? {});
    const { book, sheet, at, message } = built;
    if (typeof entry === "number") book.type(sheet, at(name, row), `=${entry}`);
    else built.type(name, entry, row);
    expect(message(where, where === "share" ? 0 : undefined)).toMatch(sentence);
    if (where === "share") expect(built.value("check")).toMatch(/point at the red cell/);
  });

  test("a water row far too dry is remarked beside it", async () => {
    const { value, type } = await buildSheet(HANDOUT);
    type("percent", "0.65%", 2);
    expect(value("remark", 2)).toBe("0.65 %: 65 % meant?");
    type("percent", "65%", 2);
    expect(value("remark", 2)).toBe("");
  });

  test("a mix below the mixer's least is remarked", async () => {
    const { value } = await buildSheet({ ...HANDOUT, mixer_limit: 25000, mixer_least: 20000 });
    expect(value("mixes")).toBe(2);
    expect(value("mixes_note")).toBe("below the least");
  });
});
