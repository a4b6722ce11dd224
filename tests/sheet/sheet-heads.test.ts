import { describe, expect, test } from "vitest";
import type { Options } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { APPEARANCES } from "../../shared/sheet/theme.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";
import { buildSheet } from "../templates/sheet-support.ts";

/** Half of the type's height is a fair mean of Arial's letters; a bold one is a little wider. From memory: 96 pixels are 72 points. */
const pixelsOf = (text: string, { size, weight }: { size: number; weight: string }) =>
  text.length * size * (96 / 72) * (weight === "bold" ? 0.54 : 0.5);

describe.each(TEMPLATES)("$title", (model) => {
  test.each([METRIC_UNITS, US_UNITS])("no text set to the right runs into what stands on its left: %j", (units) => {
    const options: Options = { ...units, parts: model.parts };
    const { values, aligned, appearances, widths } = plan(model, options, model.sample);
    const cut = values.flatMap((line, row) =>
      line.flatMap((text, column) => {
        const look = appearances[row]?.[column];
        // Heads of tables take a second line.
        if (
          typeof text !== "string" ||
          aligned[row]?.[column] !== "right" ||
          look === undefined ||
          look === APPEARANCES.head
        )
          return [];
        const isBeside = column > 0 && line[column - 1] !== "";
        return isBeside && pixelsOf(text, look) > (widths[column] ?? 0) - 4 ? [text] : [];
      }),
    );
    expect(cut).toEqual([]);
  });
});

test("a batter is called so beside the amount, and a dough with its fat too", async () => {
  const told = async (name: string, by: string) => {
    const model = TEMPLATES.find((one) => one.name === name);
    const parts = model?.parts.filter((part) => part !== "cost" && part !== "label") ?? [];
    const { value, type } = await buildSheet(model?.sample ?? {}, {
      ...(model === undefined ? {} : { model }),
      options: { ...METRIC_UNITS, parts },
    });
    type("by", by);
    return value("amount_of");
  };
  expect(await told("cake", "batter")).toBe("g of batter");
  expect(await told("cake", "tins")).toBe("tins");
  expect(await told("cake", "flour")).toBe("g of flour");
  expect(await told("laminated", "dough")).toBe("g of dough with its fat");
  expect(await told("cookie", "trays")).toBe("trays");
  expect(await told("cookie", "pieces")).toBe("only for trays, dough or flour");
});
