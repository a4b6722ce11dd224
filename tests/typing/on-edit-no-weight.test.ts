// What is typed over a formula and is no weight is cleared with a note, and the formula stands again.
import { describe, expect, test } from "vitest";
import { built, log, ONE_FLOUR, percents, shared, stands } from "./sheet-kit.ts";

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
