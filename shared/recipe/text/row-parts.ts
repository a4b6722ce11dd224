// Parts of a row's line: "30 g oil, plus 50 g for the tin" is two rows, "flour (sponge) 6 kg" one of a stage.

import { grams } from "../../base/units.ts";
import { prefermentIn } from "../kinds.ts";
import { IN_DOUGH, type Stage, type StageRole } from "./description.ts";
import { headingCore, prefermentWordIn, stageOf } from "./headings.ts";
import { readRow } from "./row.ts";
import type { Reading, RowRead } from "./row-context.ts";
import { roleBeside } from "./rows-in-line.ts";

export type PartRow = { readonly row: RowRead; readonly role: StageRole | undefined };

const NUMBER = "(?:\\d[\\d.,]*(?:\\s\\d/\\d)?|[½¼¾⅓⅔])[½¼¾⅓⅔]?(?:/\\d)?";
const SIDE = `(${NUMBER}(?:\\s?(?:k?g|oz|lbs?|ml|cl|dl|l|cups?|tsps?|tbsps?|tbs|tablespoons?|teaspoons?|el|tl|%))?)`;
const MORE = new RegExp(
  `^(.*?\\d.*?)\\s*[,;(]*\\s*(?:\\bplus|\\band|\\+|&|\\bund|\\bet)\\s*(?:another |a further |an? (?:extra|additional) |extra |about )?${SIDE}\\s*(?:more |extra |of it )*(?:\\p{L}+ )?((?:for|to|für|pour|per|zum|til|till)\\s.+?)\\)?$`,
  "iu",
);
const OF_WHICH = new RegExp(
  `^(.*?\\d.*?)\\s*[,;(]+\\s*(?:of which|including|incl\\.?|davon|dont|di cui)\\s+(?:about )?${SIDE}\\s*(?:is |are |goes |go )?((?:for|to|für|pour|per|zum)\\s.+?)\\)?$`,
  "iu",
);

/** The dough's amount, and more of it or a part of it that is used beside the dough; undefined where a line says neither. */
export function rowAndBeside(text: string, reading: Reading): PartRow[] | undefined {
  const more = MORE.exec(text);
  const match = more ?? OF_WHICH.exec(text);
  const [, first = "", amount = "", use = ""] = match ?? [];
  const role = match === null ? undefined : roleBeside(use);
  if (role === undefined || roleBeside(first) !== undefined) return undefined;
  const main = readRow(first.replace(/[\s,;(]+$/, ""), reading);
  const isBare = /^[\d.,½¼¾⅓⅔/ ]+$/.test(amount);
  const beside = readRow(isBare ? `${main.name}, ${amount}` : `${amount} ${main.name}`, reading);
  const sizeOf = (one: RowRead) => one.grams ?? one.percent ?? one.bare;
  if (main.name === "" || sizeOf(main) === null || sizeOf(beside) === null) return undefined;
  const side = { ...beside, text: text.slice(first.length), type: main.type, name: main.name, readName: main.readName };
  if (more !== null)
    return [
      { row: main, role: undefined },
      { row: side, role },
    ];
  if (main.grams === null || beside.grams === null || beside.grams > main.grams) return undefined;
  return [
    { row: { ...main, grams: grams(main.grams - beside.grams) }, role: undefined },
    { row: side, role },
  ];
}

const TAG =
  /\s*[([]\s*(?:for |in |to )?(?:the )?(\p{L}[\p{L} -]{2,24})[)\]]|,?\s+for (?:the )?(\p{L}[\p{L} -]{2,24}?)(?=$|[\s:,.=–-]+\d)/iu;
const DOUGH_TAG = /^(?:(?:final|main) )?(?:dough|mix)$|^final$/;

/** The stage that a row names beside its ingredient: "flour (sponge)", "water for the poolish"; and the row without it. */
export function stageTagged(text: string, reading: Reading): { row: RowRead; stage: Stage } | undefined {
  const match = TAG.exec(text);
  const tag = match?.[1] ?? match?.[2] ?? "";
  if (tag === "") return undefined;
  const heading = stageOf(tag, -1, false);
  if (heading === undefined || !("stage" in heading) || heading.isUnsure || !IN_DOUGH.has(heading.stage.role))
    return undefined;
  const core = headingCore(tag);
  if (heading.stage.role === "dough" && !DOUGH_TAG.test(core)) return undefined;
  const row = readRow(
    text
      .replace(match?.[0] ?? "", " ")
      .replace(/\s+/g, " ")
      .trim(),
    reading,
  );
  // "Cream (sour)" and "cherries (sour)" go into no sour.
  if (core === "sour" && !/^(?:flour|water|yeast|salt)$/.test(row.type)) return undefined;
  const isIngredient = row.type !== "" && prefermentIn(row.name) === undefined && prefermentWordIn(row.name) === "";
  return isIngredient ? { row: { ...row, text }, stage: { ...heading.stage, line: null } } : undefined;
}
