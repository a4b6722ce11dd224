import { describe, expect, test } from "vitest";
import type { Options } from "../shared/model.ts";
import { plan } from "../shared/plan.ts";
import { LOOKS } from "../shared/theme.ts";
import { TEMPLATES } from "../templates/index.ts";

const METRIC = { weight: "g", temperature: "C", length: "cm" } as const;
const US = { weight: "oz", temperature: "F", length: "in" } as const;
/** Half of the type's height is a fair mean of Arial's letters; a bold one is a little wider. From memory: 96 pixels are 72 points. */
const pixelsOf = (text: string, { size, weight }: { size: number; weight: string }) =>
  text.length * size * (96 / 72) * (weight === "bold" ? 0.54 : 0.5);

describe.each(TEMPLATES)("$title", (model) => {
  test.each([METRIC, US])("no text set to the right runs into what stands on its left: %j", (units) => {
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
