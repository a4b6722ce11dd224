import { describe, expect, test } from "vitest";
import type { Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { LOOKS } from "../../shared/sheet/theme.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { OLDER } from "../kit/older.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";

/** Half of the type's height is a fair mean of Arial's letters; a bold one is a little wider. From memory: 96 pixels are 72 points. */
const pixelsOf = (text: string, { size, weight }: { size: number; weight: string }) =>
  text.length * size * (96 / 72) * (weight === "bold" ? 0.54 : 0.5);

describe.each(TEMPLATES)("$title", (model) => {
  test.each([METRIC_UNITS, US_UNITS])("no text set to the right runs into what stands on its left: %j", (units) => {
    const options: Options = { ...units, parts: model.parts };
    const { values, aligned, looks, widths } = plan(model, options, model.sample);
    const cut = values.flatMap((line, row) =>
      line.flatMap((text, column) => {
        const look = looks[row]?.[column];
        // Heads of tables take a second line.
        if (typeof text !== "string" || aligned[row]?.[column] !== "right" || look === undefined || look === LOOKS.head)
          return [];
        const isBeside = column > 0 && line[column - 1] !== "";
        return isBeside && pixelsOf(text, look) > (widths[column] ?? 0) - 4 ? [text] : [];
      }),
    );
    expect(cut).toEqual([]);
  });
});

test("a batter is called so beside the amount to make, and a base dough too", async () => {
  const told = async (name: string, by: string) => {
    const model = TEMPLATES.find((one) => one.name === name);
    const parts = model?.parts.filter((part) => part !== "cost" && part !== "label") ?? [];
    const { value, type } = await buildSheet(model?.sample ?? {}, {
      ...(model === undefined ? {} : { model }),
      options: { ...METRIC_UNITS, parts },
    });
    type("by", by);
    return [value("of"), typeof value("dough")];
  };
  expect(await told("cake", "batter")).toEqual(["batter", "number"]);
  expect(await told("cake", "flour")).toEqual(["flour", "string"]); // none is typed
  expect(await told("laminated", "pieces")).toEqual(["base dough", "number"]);
  expect(await told("cookie", "pieces")).toEqual(["dough", "number"]);
});

describe.each(OLDER)("a long text in Last changes of the $title", (model) => {
  test("runs on over blank cells: no line at its side, and nothing beside it", () => {
    const said =
      'read in from a recipe text, US_UNITS cups; "For the poolish" rows 1 to 3, "For the dough" rows 4 to 9';
    const { values, looks, widths } = plan(
      model,
      { ...METRIC_UNITS, parts: model.parts },
      { ...model.sample, change_1: said },
    );
    const row = values.findIndex((line) => line.includes(said));
    const column = values[row]?.indexOf(said) ?? -1;
    let room = 0;
    for (let at = column; at < widths.length && looks[row]?.[at]?.ground !== looks[0]?.[0]?.ground; at++) {
      expect(looks[row]?.[at]?.border).not.toBe("box");
      if (at > column) expect(values[row]?.[at]).toBe("");
      room += widths[at] ?? 0;
    }
    expect(pixelsOf(said, { size: 10, weight: "normal" })).toBeLessThan(room);
  });
});
