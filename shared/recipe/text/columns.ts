// The headings of a table's columns, in any order and any spelling.

import { foldText, singularName } from "../../base/words.ts";
import type { Stage } from "./description.ts";
import { stageOf } from "./headings.ts";

export type UnitOfColumn = "g" | "kg" | "oz" | "lb" | "ml" | "l" | "";
export type Column =
  /** Which of several recipes a row belongs to. */
  | { readonly is: "recipe" }
  | { readonly is: "name" | "unit" | "stage" | "note" | "other" | "number" | "type" }
  | { readonly is: "percent"; readonly of: "flour" | "total" }
  /** One of several stages beside each other where `stage` is given. */
  | { readonly is: "weight"; readonly unit: UnitOfColumn; readonly head: string; readonly stage?: Stage };

const UNITS: readonly (readonly [UnitOfColumn, RegExp])[] = [
  ["kg", /\b(?:kg|kilo|kilogram)\b/],
  ["g", /\b(?:g|gr|gm|gram|gramm|gramme)\b/],
  ["lb", /\b(?:lb|pound)\b|#/],
  ["oz", /\b(?:oz|ounce)\b/],
  ["ml", /\b(?:ml|millilitre|milliliter)\b/],
  ["l", /\b(?:l|litre|liter)\b/],
];
export const unitIn = (text: string): UnitOfColumn => {
  const plain = singularName(text.replace(/[()[\]/.:,]/g, " "));
  return UNITS.find(([, words]) => words.test(plain))?.[0] ?? "";
};

const NAME =
  /^(?:raw |the )?(?:ingredient|item|material|name|component|zutat|rohstoff|description|what|ingredient name|ingrediente?)$/;
const WEIGHT =
  /\b(?:weight|wt|amount|quantity|qty|mass|gewicht|menge|poid|quantite|batch|per mix|per dough|small|large|medium|scaled|needed|dough|piece|loave|loaf|roll|bun|recipe|\d+ ?x|x ?\d+|single|double|triple|half|full|scale)\b/;
const PERCENT = /%|\bpercent(?:age)?\b|\bpct\b|\bbp\b|\bb%/;
const OF_TOTAL = /\b(?:total|whole|dough|formula|batch|true|all|weight|mix)\b/;
const OF_FLOUR = /\bbaker|\bflour\b|\bb%|\bbp\b|\bb\.?p\b/;

/** What a cell heads; undefined where it is no heading of a column. */
export function columnOf(cell: string): Column | undefined {
  const text = foldText(cell).replace(/['’]/g, "");
  if (text === "" || text.length > 40) return undefined;
  const plain = singularName(
    text
      .replace(/[()[\].:,*_-]/g, " ")
      .replace(/\s+/g, " ")
      .trim(),
  );
  if (/^(?:formula|recipe|product|bread|article)(?: name| no| number| code)?$/.test(plain)) return { is: "recipe" };
  if (NAME.test(plain)) return { is: "name" };
  if (/^(?:#|no|nr|line|row|pos|step no|nº)$/.test(plain)) return { is: "number" };
  if (/^(?:unit|uom|measure|einheit)$/.test(plain)) return { is: "unit" };
  if (/^(?:stage|phase|part|section|step|group|where|process|mix stage)$/.test(plain)) return { is: "stage" };
  if (
    /^(?:note|remark|comment|temp|temperature|lot|supplier|brand|code|sku|allergen|method|instruction)s?\b.*$/.test(
      plain,
    )
  )
    return { is: "note" };
  if (/^(?:type|kind|category|class)$/.test(plain)) return { is: "type" };
  if (/\b(?:price|cost|kcal|calorie|energy|protein|stock|order|margin)\b|[€$£]/.test(plain)) return { is: "other" };
  if (PERCENT.test(text)) {
    const ofTotal = OF_TOTAL.test(plain) && !OF_FLOUR.test(text);
    return { is: "percent", of: ofTotal ? "total" : "flour" };
  }
  const unit = unitIn(text);
  const isUnitAlone =
    unit !== "" &&
    /^\W*(?:kgs?|kilos?|kilograms?|gr?|gms?|grams?|lbs?|pounds?|oz|ounces?|ml|l|litres?|liters?|#)\W*$/.test(text);
  const stage = stageOf(cell.replace(/\((?:k?g|lbs?|oz|grams?|kilos?)\)|\b(?:kg|g|lb|oz)\b/gi, " ").trim(), -1, false);
  if (stage !== undefined && "stage" in stage && !stage.isUnsure && !/\b(?:weight|amount|batch)\b/.test(plain))
    return { is: "weight", unit, head: cell.trim(), stage: stage.stage };
  if (/^(?:total|sum|overall|gesamt)(?: (?:k?g|gram|kilo|lb|oz))?$/.test(plain))
    return { is: "weight", unit, head: cell.trim(), stage: OVERALL };
  if (isUnitAlone || WEIGHT.test(plain) || (unit !== "" && /[([]/.test(text)))
    return { is: "weight", unit, head: cell.trim() };
  if (/^\d+(?:\s*(?:x|kg|g|lb|pcs|st))?$/.test(plain)) return undefined;
  return undefined;
}

const OVERALL: Stage = { role: "overall", name: "Total", line: null, preferment: "", hours: null, temperature: null };

/** Headings in two rows: the stages above, and under each what its column holds. */
export function doubleHeader(upper: readonly string[], lower: readonly string[]): (Column | undefined)[] | undefined {
  if (headerOf(lower) === undefined || !upper.some((cell) => cell !== "")) return undefined;
  let last = "";
  // A heading over several columns stands in the first of them.
  const wide = lower.map((_, at) => {
    last = upper[at] || last;
    return last;
  });
  for (const heads of [upper, wide]) {
    const columns = headerOf(lower.map((cell, at) => (cell === "" ? "" : `${heads[at] ?? ""} ${cell}`.trim())));
    const staged = columns?.filter((column) => column?.is === "weight" && column.stage !== undefined) ?? [];
    if (columns !== undefined && staged.length >= 2) return columns;
  }
  return undefined;
}

/** "Component, material": the wider of two names says the part. */
function oneName(cells: readonly string[], columns: readonly (Column | undefined)[]): (Column | undefined)[] {
  const names = columns.flatMap((column, at) => (column?.is === "name" ? [at] : []));
  if (names.length < 2) return [...columns];
  const sure = names.find((at) => /ingredien|material|zutat|rohstoff/i.test(cells[at] ?? "")) ?? names[0];
  return columns.map((column, at) => {
    if (column?.is !== "name" || at === sure) return column;
    return { is: /component/i.test(cells[at] ?? "") ? "stage" : "other" };
  });
}

const AMOUNT_FIRST = /\d\s?(?:k?g|oz|lbs?|ml)\s+(?!batch|flour|dough|mix|lot|size|recipe)\p{L}{3}/iu;
const NAME_FIRST = /^(?!batch|mix|dough|for|total|recipe|size|make)[\p{L} :–-]{3,}\s\d[\d.,]*\s?(?:k?g|oz|lbs?|ml)$/iu;

/** A row of headings: at least two cells are known ones, and none holds a bare amount. */
export function headerOf(cells: readonly string[]): (Column | undefined)[] | undefined {
  if (cells.some((cell) => /^\s*[\d.,]+\s*(?:(?:%|k?g|lb|oz)?\s*$|%)/i.test(cell))) return undefined;
  // "Mix 8 minutes, dough 26 °C" is a step; "Poolish (12 h)" heads a column.
  if (cells.some((cell) => /\d\s?(?:min|h(?:ou)?rs?\b|h\b|[°º])/i.test(cell.replace(/[([].*?[)\]]/g, " "))))
    return undefined;
  // "50 g rye flour" is an ingredient, "50 kg batch" a heading.
  if (cells.some((cell) => AMOUNT_FIRST.test(cell)) || cells.filter((cell) => NAME_FIRST.test(cell)).length >= 2)
    return undefined;
  const columns = oneName(
    cells,
    cells.map((cell) => (cell.trim() === "" ? undefined : columnOf(cell))),
  );
  const known = columns.filter((column) => column !== undefined);
  const isHeader =
    known.length >= 2 &&
    known.length >= cells.filter((cell) => cell.trim() !== "").length - 1 &&
    known.some((column) => column?.is === "weight" || column?.is === "percent");
  return isHeader ? columns : undefined;
}
