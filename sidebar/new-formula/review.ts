// What BAKE_REVIEW will say of water and salt, told while the formula is typed. The page has no larder.

import { weight } from "../../shared/base/units.ts";
import { saysItsWater } from "../../shared/enrichment/enrichment.ts";
import { isFlour } from "../../shared/larder/kinds.ts";
import { styleNamed } from "../../shared/review/bands.ts";
import { notesInto, type Row, type RowNote } from "../../shared/review/remark.ts";
import { reviewSalt } from "../../shared/review/salt.ts";
import { reviewWater } from "../../shared/review/water.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { usualStyle } from "../../src/planners/check-sheet.ts";
import { type FormulaRows, readRows, weighRows } from "./formula.ts";
import { startFrom } from "./start.ts";

const designRemarks = new Map<string, readonly string[]>();

/** What the template's own formula is by design. */
function ofTemplate(model: SheetModel): readonly string[] {
  const known = designRemarks.get(model.name);
  if (known !== undefined) return known;
  const { rows, units } = startFrom(model);
  const formula = readRows(rows, { units, weighed: false, blankWater: "yes" }, []);
  const designed = formula === null ? [] : remarks(formula, model.name);
  designRemarks.set(model.name, designed);
  return designed;
}

/** Remarks for the style that the template is most often for, but those on its own formula; none while its rows cannot be read. */
export const unusual = (formula: FormulaRows | null, model: SheetModel): string[] =>
  formula === null ? [] : remarks(formula, model.name).filter((says) => !ofTemplate(model).includes(says));

/** None while a row's share cannot be told. */
function remarks(formula: FormulaRows, template: string): string[] {
  const batch = weighRows(formula, weight(1000), "flour", []);
  if (batch === null) return [];
  const rows = batch.weights.flatMap((each, index): Row[] => {
    const kind = batch.kinds[index];
    if (each === null || kind === undefined) return [];
    return [{ index, names: [formula.ingredient[index] ?? ""], kind, share: each / batch.flour, ingredient: null }];
  });
  const styleName = usualStyle(template);
  const whole = rows.find(({ kind }) => isFlour(kind))?.index ?? 0;
  const water: RowNote[] = [];
  const whom = { whole, styleName, style: styleNamed(styleName) };
  reviewWater(rows, { ...whom, remark: notesInto(water) });
  // Milk, butter and eggs bring water that is not known here: what is above a band without it is so with it.
  const hidden = rows.filter(({ kind, share }) => share > 0 && kind.word !== "yeast" && !saysItsWater(kind));
  const isWhole = ({ topic }: RowNote) =>
    hidden.length === 0 || (topic === "water" && !hidden.some(({ kind }) => kind.word === "dairy"));
  // What is on neither side of a range is that a row's water is not counted.
  const sided = water.filter(({ side }) => side !== undefined);
  const salt: RowNote[] = [];
  reviewSalt(rows, { ...whom, remark: notesInto(salt) });
  return [
    ...sided.map((one) => (isWhole(one) ? one.says : one.says.replace(/ is (?=\d)/, " is at least "))),
    ...salt.map(({ says }) => says),
  ].map((says) => `${says}.`);
}
