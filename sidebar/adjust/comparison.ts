// Before and after, side by side, while a change is being chosen.
import type { Compared } from "../../shared/adjust/comparison.ts";
import { inUnit, showNumber, shownShare } from "../../shared/base/show.ts";
import { element } from "../kit/element.ts";
import { section } from "../new-formula/sections.ts";
import { formulaPicture } from "../pictures/formula.ts";
import { picturePlace } from "../pictures/place.ts";

type Sides = readonly [before: string, after: string];
export const NOW_AND_THEN: Sides = ["Before", "After"];

/** Rows, figures and steps of two formulas; what is another is marked by a sign, not by its weight alone. */
export function besideNodes({ rows, figures, steps }: Compared, unit: "g" | "oz", sides: Sides): HTMLElement[] {
  const percent = (value: number | null) => (value === null ? "–" : shownShare(value, value < 0.1 ? 2 : 1));
  const weighs = (value: number | null) => (value === null ? "" : inUnit(value, unit));
  return [
    tableOf(
      ["Ingredient", ...sides],
      rows.map(({ name, percents, weights, isChanged }) => ({
        name,
        cells: [0, 1].map((side) => [percent(percents[side] ?? null), weighs(weights[side] ?? null)]),
        isChanged,
      })),
    ),
    ...(steps.length === 0
      ? []
      : [
          tableOf(
            ["Step", ...sides],
            steps.map(({ name, minutes }) => ({
              name,
              cells: minutes.map((value) => [value === null ? "–" : `${showNumber(value, 0)} min`]),
              isChanged: minutes[0] !== minutes[1],
            })),
          ),
        ]),
    tableOf(
      ["Figure", ...sides],
      figures.map(({ label, before, after }) => ({
        name: label,
        cells: [[before], [after]],
        isChanged: before !== after,
      })),
    ),
  ];
}

/** A cell has a line or two. */
type Row = { readonly name: string; readonly cells: readonly (readonly string[])[]; readonly isChanged: boolean };

function tableOf(heads: readonly string[], rows: readonly Row[]): HTMLElement {
  return element(
    "table",
    { class: "beside-table" },
    element("thead", {}, element("tr", {}, ...heads.map((head) => element("th", { scope: "col" }, head)))),
    element(
      "tbody",
      {},
      ...rows.map(({ name, cells, isChanged }) =>
        element(
          "tr",
          isChanged ? { class: "changed" } : {},
          element("th", { scope: "row" }, isChanged ? `${name} ●` : name),
          ...cells.map((lines) => element("td", {}, ...lines.map((line) => element("div", {}, line)))),
        ),
      ),
    ),
  );
}

/** What comes and goes beside the figures, in sentences; `printed` is what a label lists, "" for nothing to say. */
export function saysOf({ remarks, allergens, order: [was, now] }: Compared, printed: readonly string[]): string[] {
  const list = (words: string, items: readonly string[]) =>
    items.length === 0 ? [] : [`${words} ${items.join(", ")}.`];
  return [
    ...remarks.comes.map((one) => `New: ${one}`),
    ...remarks.goes.map((one) => `No more: ${one}`),
    ...list("Allergens that come in:", allergens.comes),
    ...list("Allergens that go:", allergens.goes),
    ...(was.join() === now.join()
      ? []
      : [`Ingredients by weight, then: ${now.join(", ")}. Check what the label says.`]),
    ...printed,
    ...(allergens.comes.length + allergens.goes.length === 0
      ? []
      : ["Check your suppliers' specifications. Cross-contact is not assessed."]),
  ];
}

export function barsSection({ parts }: Compared, unit: "g" | "oz", sides: Sides): HTMLElement | null {
  if (parts.some((one) => one.length === 0)) return null;
  return section(
    "The formula as two bars",
    ...parts.flatMap((one, at) => {
      const place = picturePlace(`${sides[at] ?? ""}, the formula as a bar`);
      place.append(formulaPicture(one, unit));
      return [element("h3", {}, sides[at] ?? ""), place];
    }),
  );
}
