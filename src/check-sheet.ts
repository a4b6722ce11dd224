// What can be said of the formula sheet in front: BAKE_REVIEW's remarks, and its figures in sentences.
import type { SheetReview } from "../shared/bench.ts";
import { LARDER_NAME } from "../shared/model.ts";
import { CellError, refuse } from "../shared/refusal.ts";
import { hydrationBand, STYLE_NAMES, type StyleName, styleNamed } from "../shared/review-bands.ts";
import { oneOf, quoted, shown, shownShare } from "../shared/show.ts";
import { call } from "./call.ts";
import { type FormulaSheet, readFormulaSheet } from "./formula-sheet.ts";
import { HYDRATION } from "./functions/enrichment/HYDRATION.ts";
import { REVIEW } from "./functions/formula/REVIEW.ts";
import { WATERNOTE } from "./functions/temperature/WATERNOTE.ts";
import { TINNOTE } from "./functions/tins/TINNOTE.ts";

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

type Answer = ReturnType<typeof call>;

/** Reviews the sheet in front for a style; "" takes the usual one of its template. Only reads. */
export function reviewSheet(asked: Readonly<Record<string, unknown>>): SheetReview {
  const larder = SpreadsheetApp.getActiveSpreadsheet().getRangeByName(LARDER_NAME)?.getValues();
  const sheet = readFormulaSheet("");
  const style = styleOf(asked.style, sheet);
  const rows = sheet.rows.filter(({ share }) => share !== null);
  const column = (cell: (row: (typeof rows)[number]) => unknown) => rows.map((row) => [cell(row)]);
  const [names, kinds] = [column(({ name }) => name), column(({ kind }) => kind)];
  const given = larder === undefined ? [] : [larder];
  const review = told(() => call(REVIEW, [names, kinds, column(({ share }) => share), style, ...given]));
  const hydration = told(() => call(HYDRATION, [names, column(({ weight }) => weight), kinds, ...given]));
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
      ...tinFact(sheet),
      ...waterFact(sheet),
    ],
    meaning: typeof hydration.answer === "number" ? meaning(hydration.answer, style) : "",
  };
}

function styleOf(raw: unknown, sheet: FormulaSheet): StyleName {
  const usual = USUAL[sheet.model.name] ?? "hearth";
  if (raw === undefined || raw === "") return usual;
  return (
    STYLES.find((one) => one === raw) ?? refuse(`The style is ${quoted(String(raw))}; it can be ${oneOf(STYLES)}.`)
  );
}

/** An answer, or the sentence of the refusal without the function's name. */
function told(ask: () => Answer): { readonly answer: Answer | null; readonly trouble: string } {
  try {
    return { answer: ask(), trouble: "" };
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    return {
      answer: null,
      trouble: sentence(
        error.message.replace(/^BAKE_[A-Z]+: /, "").replace(/^[a-z]+ row (\d+)/, "row $1 of the formula"),
      ),
    };
  }
}

const sentence = (says: string): string => {
  const text = says.slice(0, 1).toUpperCase() + says.slice(1);
  return /[.?!]$/.test(text) ? text : `${text}.`;
};

function hydrationFact({ answer, trouble }: ReturnType<typeof told>): SheetReview["facts"][number] {
  const label = "Effective hydration";
  if (typeof answer !== "number") return { label, says: trouble || "Not known yet." };
  return { label, says: `${shownShare(answer, 1)} of the flour: the water of everything, not only of the tap.` };
}

function tinFact(sheet: FormulaSheet): SheetReview["facts"] {
  const [dough, capacity, kind] = [sheet.number("tin_dough"), sheet.number("tin_capacity"), sheet.text("tin_kind")];
  if (dough === null || capacity === null || kind === "") return [];
  const { answer, trouble } = told(() => call(TINNOTE, [dough, capacity, kind, sheet.options.weight]));
  const says = Array.isArray(answer) ? String(answer[0]?.[0] ?? "") : trouble;
  return [{ label: "Fill", says: sentence(says) }];
}

function waterFact(sheet: FormulaSheet): SheetReview["facts"] {
  const [water, tap] = [sheet.number("water_temp"), sheet.number("tap_temp")];
  const unit = sheet.options.temperature;
  if (water === null) return [];
  if (tap === null) return [{ label: "Water", says: `At ${shown(water, 1)} °${unit}.` }];
  const { answer, trouble } = told(() => call(WATERNOTE, [water, tap, sheet.text("yeast") || "fresh", unit]));
  return [{ label: "Water", says: sentence(trouble || String(answer)) }];
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
