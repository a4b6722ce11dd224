// What can be said of the formula sheet in front: BAKE_REVIEW's remarks, and its figures in sentences.

import { refuse } from "../../shared/base/refusal.ts";
import { oneOf, quoted, shown, shownShare } from "../../shared/base/show.ts";
import type { SheetReview } from "../../shared/protocol/bench.ts";
import type { Calculated, Call } from "../../shared/protocol/calculate.ts";
import { hydrationBand, STYLE_NAMES, type StyleName, styleNamed } from "../../shared/review/bands.ts";
import { LARDER_NAME } from "../../shared/sheet/model.ts";
import { sheetPictures } from "./check-pictures.ts";
import { type FormulaSheet, readFormulaSheet } from "./formula-sheet.ts";
import { calculate, type Steps } from "./steps.ts";

const STYLES = Object.keys(STYLE_NAMES) as StyleName[];

/** The style a template is most often for; another can be chosen. */
const USUAL: Readonly<Record<string, StyleName>> = {
  "pan-loaf": "pan bread",
  "hearth-loaf": "hearth",
  "levain-loaf": "hearth",
  "soft-bun": "bun",
  laminated: "laminated",
  "flat-round": "pizza",
  cake: "layer cake",
  cookie: "drop cookie",
};

export const usualStyle = (template: string): StyleName => USUAL[template] ?? "hearth";

/** Reviews the sheet in front for a style; "" takes the usual one of its template. Only reads. */
export function* reviewSheet(asked: Readonly<Record<string, unknown>>): Steps<SheetReview> {
  const sheet = yield* readFormulaSheet("", true);
  const style = styleOf(asked.style, sheet);
  const rows = sheet.rows.filter(({ share }) => share !== null);
  const column = <T>(cell: (row: (typeof rows)[number]) => T) => rows.map((row) => [cell(row)]);
  const [names, kinds] = [column(({ name }) => name), column(({ kind }) => kind)];
  const larder = { cells: LARDER_NAME } as const;
  const tin = tinCall(sheet);
  const water = waterCall(sheet);
  const told = (yield* calculate([
    { name: "BAKE_REVIEW", args: [names, kinds, column(({ share }) => share), style, larder] },
    { name: "BAKE_HYDRATION", args: [names, column(({ weight }) => weight), kinds, larder] },
    ...tin,
    ...water,
  ])).map(answerOf);
  const [review = UNKNOWN, hydration = UNKNOWN] = told;
  const remarks = Array.isArray(review.answer)
    ? review.answer.map((row) => String(row[0] ?? ""))
    : [String(review.answer ?? "")];
  return {
    sheet: sheet.name,
    title: sheet.title,
    style,
    styles: STYLES,
    remarks: rows.flatMap((row, at) => {
      const says = remarks[at] ?? "";
      const cell = sheet.at("percent", row.index) ?? sheet.at("ingredient", row.index) ?? "";
      return says === "" ? [] : [{ cell, name: row.name || row.kind, says: sentence(says) }];
    }),
    facts: [
      ...(review.trouble === "" ? [] : [{ label: "Remarks", says: review.trouble }]),
      hydrationFact(hydration),
      ...tin.map(() => tinFact(told[2] ?? UNKNOWN)),
      ...waterFact(sheet, told[2 + tin.length]),
    ],
    meaning: typeof hydration.answer === "number" ? meaning(hydration.answer, style) : "",
    pictures: sheetPictures(sheet),
  };
}

function styleOf(raw: unknown, sheet: FormulaSheet): StyleName {
  const usual = usualStyle(sheet.model.name);
  if (raw === undefined || raw === "") return usual;
  return (
    STYLES.find((one) => one === raw) ?? refuse(`The style is ${quoted(String(raw))}; it can be ${oneOf(STYLES)}.`)
  );
}

type Told = { readonly answer: Extract<Calculated, { gives: unknown }>["gives"]; readonly trouble: string };
const UNKNOWN: Told = { answer: null, trouble: "" };

/** An answer, or the sentence of the refusal without the function's name. */
function answerOf(calculated: Calculated): Told {
  if ("gives" in calculated) return { answer: calculated.gives, trouble: "" };
  const says = calculated.says.replace(/^BAKE_[A-Z]+: /, "").replace(/^[a-z]+ row (\d+)/, "row $1 of the formula");
  return { answer: null, trouble: sentence(says) };
}

const sentence = (says: string): string => {
  const text = says.slice(0, 1).toUpperCase() + says.slice(1);
  return /[.?!]$/.test(text) ? text : `${text}.`;
};

function hydrationFact({ answer, trouble }: Told): SheetReview["facts"][number] {
  const label = "Effective hydration";
  if (typeof answer !== "number") return { label, says: trouble || "Not known yet." };
  return { label, says: `${shownShare(answer, 1)} of the flour: the water of everything, not only of the tap.` };
}

function tinCall(sheet: FormulaSheet): Call[] {
  const [dough, capacity, kind] = [sheet.number("tin_dough"), sheet.number("tin_capacity"), sheet.text("tin_kind")];
  if (dough === null || capacity === null || kind === "") return [];
  return [{ name: "BAKE_TINNOTE", args: [dough, capacity, kind, sheet.options.weight] }];
}

function tinFact({ answer, trouble }: Told): SheetReview["facts"][number] {
  return { label: "Fill", says: sentence(Array.isArray(answer) ? String(answer[0]?.[0] ?? "") : trouble) };
}

function waterCall(sheet: FormulaSheet): Call[] {
  const [water, tap] = [sheet.number("water_temp"), sheet.number("tap_temp")];
  if (water === null || tap === null) return [];
  return [{ name: "BAKE_WATERNOTE", args: [water, tap, sheet.text("yeast") || "fresh", sheet.options.temperature] }];
}

function waterFact(sheet: FormulaSheet, note: Told | undefined): SheetReview["facts"] {
  const water = sheet.number("water_temp");
  if (water === null) return [];
  if (note === undefined) return [{ label: "Water", says: `At ${shown(water, 1)} °${sheet.options.temperature}.` }];
  return [{ label: "Water", says: sentence(note.trouble || String(note.answer)) }];
}

const BATTERS: readonly StyleName[] = ["muffin", "layer cake", "pound cake", "sponge"];
const SHORT: readonly StyleName[] = ["pie crust", "drop cookie"];

/** What more or less water than usual does; common practice, no source. */
function meaning(hydration: number, style: StyleName): string {
  const { low, high } = hydrationBand(styleNamed(style));
  const span = `${shownShare(low, 0)} to ${shownShare(high, 0)}`;
  const [firm, soft] = BATTERS.includes(style)
    ? ["a stiff batter that bakes dry and may crack", "a thin batter that needs its tin and may sink"]
    : SHORT.includes(style)
      ? ["a crumbly dough that breaks when it is shaped", "a soft dough that spreads, or bakes tough"]
      : [
          "a firm dough: easy to shape, with a closer crumb and a shorter life",
          "a soft dough: it wants folds or a tin, and bakes to a more open, moister crumb",
        ];
  if (hydration < low) return `Drier than usual for ${style} (${span}): ${firm}.`;
  if (hydration > high) return `Wetter than usual for ${style} (${span}): ${soft}.`;
  return `As wet as usual for ${style} (${span}): expect the dough the style is known for.`;
}
