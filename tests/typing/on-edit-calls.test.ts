// What the trigger asks of the service, and what is undone is not taken again.
import { describe, expect, test } from "vitest";
import type { Sheet } from "../../src/workbook/scripted.ts";
import { built, exact, log, near, ONE_FLOUR, percents, stands } from "./sheet-kit.ts";

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
