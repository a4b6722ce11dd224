// What can be said of the formula sheet in front: what is wrong with it and what is unusual, the worst first, and its figures in sentences.

import { refuse } from "../../shared/base/refusal.ts";
import { oneOf, quote, showNumber, shownShare } from "../../shared/base/show.ts";
import type { Calculated, Call } from "../../shared/protocol/calculate.ts";
import type { SheetReview } from "../../shared/protocol/sheet-review.ts";
import { hydrationBand, STYLE_NAMES, type StyleName, styleNamed } from "../../shared/review/bands.ts";
import { UNREADABLE } from "../../shared/review/remark.ts";
import { a1 } from "../../shared/sheet/a1.ts";
import { BAKELOG_NAME, LARDER_NAME, MIXLOG_NAME } from "../../shared/sheet/workbook-names.ts";
import { typedOver } from "../../shared/typing/writes.ts";
import { sheetPictures } from "./check-pictures.ts";
import { flourFacts } from "./flour-facts.ts";
import { type FormulaSheet, mustBeCalculated, refuseOther, seenAs } from "./formula-sheet.ts";
import { learnedFacts } from "./learned-facts.ts";
import { changeableParts } from "./parts-on-sheet.ts";
import { sheetFaults } from "./sheet-faults.ts";
import { type NotedCell, sheetNotes } from "./sheet-notes.ts";
import { calculate, look, type Steps } from "./steps.ts";

const OWN_LARDER = { cells: LARDER_NAME } as const;

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
export function* reviewSheet(question: Readonly<Record<string, unknown>>): Steps<SheetReview> {
  const { sheets, names } = yield* look({ sheet: "", shown: true, cells: [LARDER_NAME, MIXLOG_NAME, BAKELOG_NAME] });
  const [seen] = sheets;
  const sheet = seen === undefined ? null : seenAs(seen);
  if (seen === undefined || sheet === null) return refuseOther(seen?.name ?? "");
  mustBeCalculated(sheet);
  const style = styleOf(question.style, sheet);
  const rows = sheet.rows.filter(({ weight }) => weight !== null);
  const column = <T>(cell: (row: (typeof rows)[number]) => T) => rows.map((row) => [cell(row)]);
  const [tin, water] = [tinCall(sheet), waterCall(sheet)];
  const hydrated: Call[] =
    rows.length === 0
      ? []
      : [
          {
            name: "BAKE_HYDRATION",
            args: [column(({ name }) => name), column(({ weight }) => weight), column(({ kind }) => kind), OWN_LARDER],
          },
        ];
  const calls = [...hydrated, ...tin, ...water];
  const results = calls.length === 0 ? [] : (yield* calculate(calls)).map(answerOf);
  const hydration = hydrated.length === 0 ? UNKNOWN : (results[0] ?? UNKNOWN);
  const after = results.slice(hydrated.length);
  const typed = typedOver(seen.values, null)?.weights ?? [];
  const notes = sheetNotes(sheet, style, names.find(({ name }) => name === LARDER_NAME)?.values);
  return {
    sheet: sheet.name,
    title: sheet.title,
    style,
    styles: STYLES,
    remarks: [
      ...(sheet.newer === "" ? [] : [{ cell: "A1", name: sheet.title, says: sheet.newer }]),
      ...worstFirst(sheetFaults(sheet, seen.values, new Set(typed.map(({ row }) => row))), notes.notes),
    ],
    typed: typed.map((spot) => a1(spot)),
    parts: changeableParts(sheet, seen.values),
    facts: [
      ...(notes.fault === "" ? [] : [{ label: "Notes", says: sentence(notes.fault) }]),
      ...hydrationFacts(hydration, style),
      ...flourFacts(sheet, rows),
      ...tin.map(() => tinFact(after[0] ?? UNKNOWN)),
      ...waterFact(sheet, after[tin.length]),
      ...learnedFacts(sheet, names),
    ],
    pictures: sheetPictures(sheet),
  };
}

/** What the sheet itself cannot work with comes before what is unusual, and is not said twice. */
function worstFirst(faults: SheetReview["remarks"], rowNotes: readonly NotedCell[]): SheetReview["remarks"] {
  const faulty = new Set(faults.map(({ name }) => name));
  const notes = rowNotes.filter(({ name, matters }) => matters < UNREADABLE || !faulty.has(name));
  const sorted = [...notes].sort((one, other) => other.matters - one.matters);
  return [...faults, ...sorted.map(({ cell, name, says }) => ({ cell, name, says: sentence(says) }))];
}

function styleOf(raw: unknown, sheet: FormulaSheet): StyleName {
  const usual = usualStyle(sheet.model.name);
  if (raw === undefined || raw === "") return usual;
  return STYLES.find((one) => one === raw) ?? refuse(`The style is ${quote(String(raw))}; it can be ${oneOf(STYLES)}.`);
}

type Result = { readonly answer: Extract<Calculated, { gives: unknown }>["gives"]; readonly fault: string };
const UNKNOWN: Result = { answer: null, fault: "" };

/** An answer, or the sentence of the refusal without the function's name. */
function answerOf(calculated: Calculated): Result {
  if ("gives" in calculated) return { answer: calculated.gives, fault: "" };
  const says = calculated.says.replace(/^BAKE_[A-Z]+: /, "").replace(/^[a-z]+ row (\d+)/, "row $1 of the formula");
  return { answer: null, fault: sentence(says) };
}

const sentence = (says: string): string => {
  const text = says.slice(0, 1).toUpperCase() + says.slice(1);
  return /[.?!]$/.test(text) ? text : `${text}.`;
};

function hydrationFacts({ answer, fault }: Result, style: StyleName): SheetReview["facts"] {
  const label = "Effective hydration";
  if (typeof answer !== "number") return [{ label, says: fault || "Not known yet." }];
  const says = `${shownShare(answer, 1)} of the flour, counting the water in eggs, milk, butter and fresh yeast as well as what is poured.`;
  return [
    { label, says },
    { label: "The dough's feel", says: meaning(answer, style) },
  ];
}

function tinCall(sheet: FormulaSheet): Call[] {
  const [dough, capacity, kind] = [sheet.number("tin_dough"), sheet.number("tin_capacity"), sheet.text("tin_kind")];
  if (dough === null || capacity === null || kind === "") return [];
  return [{ name: "BAKE_TINNOTE", args: [dough, capacity, kind, sheet.options.weight] }];
}

function tinFact({ answer, fault }: Result): SheetReview["facts"][number] {
  return { label: "Fill", says: sentence(Array.isArray(answer) ? String(answer[0]?.[0] ?? "") : fault) };
}

function waterCall(sheet: FormulaSheet): Call[] {
  const [water, tap] = [sheet.number("water_temp"), sheet.number("tap_temp")];
  if (water === null || tap === null) return [];
  return [{ name: "BAKE_WATERNOTE", args: [water, tap, sheet.text("yeast") || "fresh", sheet.options.temperature] }];
}

function waterFact(sheet: FormulaSheet, note: Result | undefined): SheetReview["facts"] {
  const water = sheet.number("water_temp");
  if (water === null) return [];
  if (note === undefined)
    return [{ label: "Water", says: `At ${showNumber(water, 1)} °${sheet.options.temperature}.` }];
  return [{ label: "Water", says: sentence(note.fault || String(note.answer)) }];
}

const BATTERS: readonly StyleName[] = ["muffin", "layer cake", "pound cake", "sponge"];
const SHORT: readonly StyleName[] = ["pie crust", "drop cookie"];

/** What more or less water than usual does; common practice, no source. */
function meaning(hydration: number, style: StyleName): string {
  const { low, high } = hydrationBand(styleNamed(style));
  const span = `${showNumber(low * 100, 0)} to ${shownShare(high, 0)}`;
  const [stiff, slack] = BATTERS.includes(style)
    ? ["a stiff batter that bakes dry and may crack", "a thin batter that needs its tin and may sink"]
    : SHORT.includes(style)
      ? ["a crumbly dough that breaks when it is shaped", "a slack dough that spreads, or bakes tough"]
      : [
          "a stiff dough: easy to shape, with a closer crumb and a shorter shelf life",
          "a slack dough that needs folds or a tin, with a more open, moister crumb",
        ];
  if (hydration < low) return `Hydration is low for ${style} (${span}): expect ${stiff}.`;
  if (hydration > high) return `Hydration is high for ${style} (${span}): expect ${slack}.`;
  return `Hydration is usual for ${style} (${span}).`;
}
