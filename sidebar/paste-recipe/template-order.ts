// The templates in the order in which they are likely to fit a recipe.

import type { Described } from "../../shared/recipe/text/description.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";

const NAMES: readonly (readonly [template: string, words: RegExp])[] = [
  ["laminated", /\b(?:croissants?|danish|puff|laminated|pain au chocolat|kouign)\b/i],
  [
    "flat-round",
    /\b(?:pizzas?|flat ?breads?|naan|pitas?|focaccia|pinsa|margherita|neapolitan|napoletana|tortillas?|lavash)\b/i,
  ],
  ["cookie", /\b(?:cookies?|biscuits?|shortbread|sablés?|snaps)\b/i],
  ["cake", /\b(?:cakes?|muffins?|brownies?|sponge|cupcakes?|batter|madeleines?|gingerbread|banana (?:loaf|bread))\b/i],
  [
    "soft-bun",
    /\b(?:buns?|rolls?|brioche|baps?|doughnuts?|donuts?|challah|teacakes?|burger|milk bread|babka|stollen)\b/i,
  ],
  ["levain-loaf", /\b(?:sourdough|levain|rye sour|miche)\b/i],
  [
    "hearth-loaf",
    /\b(?:baguettes?|ciabatta|boules?|batards?|hearth|country|campagne|ficelles?|bloomer|cob|poolish|biga)\b/i,
  ],
  ["pan-loaf", /\b(?:tin|pan|sandwich|toast|pullman|farmhouse)\b/i],
];
const LEVAIN = /^(?:levain|starter|sourdough|sour)\b/;

/** How much speaks for a template. */
function pointsFor(name: string, described: Described): number {
  const { formula, stages, title, steps } = described;
  const share = (type: string) =>
    formula.rows.reduce((all, row) => all + (row.type === type ? (row.percent ?? 0) : 0), 0);
  const hasYeast =
    share("yeast") > 0 || formula.preferments.length > 0 || formula.rows.some(({ type }) => LEVAIN.test(type));
  const isRich = share("sugar") + share("fat") + share("egg") >= 15;
  const hasRollIn = stages.some(({ role }) => role === "roll-in");
  const isLevain =
    formula.preferments.some(({ kind }) => LEVAIN.test(kind)) || formula.rows.some(({ type }) => LEVAIN.test(type));
  const isPoolish = formula.preferments.some(({ kind }) => !LEVAIN.test(kind));
  const text = `${title} ${steps.map((step) => step.text).join(" ")}`;
  let points = 0;
  for (const [template, words] of NAMES) {
    if (template !== name) continue;
    if (words.test(title)) points += 6;
    else if (words.test(text)) points += 1;
  }
  if (name === "laminated" && hasRollIn) points += 12;
  if (name === "levain-loaf" && isLevain) points += 7;
  // Only these take a preferment apart.
  if (name === "hearth-loaf" && isPoolish) points += 12;
  if (name === "hearth-loaf" && isLevain) points += 2;
  if (name === "soft-bun" && hasYeast && isRich) points += 4;
  if (name === "cake" && !hasYeast && share("sugar") >= 40) points += 4;
  if (name === "cookie" && !hasYeast && share("fat") >= 35 && share("egg") + share("water") + share("dairy") < 35)
    points += 4;
  if (name === "pan-loaf") points += 1.5;
  return points;
}

export function likelyTemplates(models: readonly SheetModel[], described: Described): SheetModel[] {
  const points = new Map(models.map((model) => [model, pointsFor(model.name, described)]));
  return [...models].sort((one, other) => (points.get(other) ?? 0) - (points.get(one) ?? 0));
}
