// A weight typed over the sheet's where a template has more than one recipe, or another way to be scaled.
import { describe, expect, test } from "vitest";
import { openBook } from "../../src/workbook/scripted.ts";
import { templateOf } from "../sidebar/samples.ts";
import { built, exact, near, stands } from "./sheet-kit.ts";

describe("a weight typed on", () => {
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
});
