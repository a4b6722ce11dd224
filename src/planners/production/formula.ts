// What a formula sheet tells the production: its items, its doughs, and its cells as other sheets refer to them.

import type { Formula, Use } from "../../../shared/production/formula.ts";
import type { Links } from "../../../shared/sheet/model.ts";
import { linkName } from "../../../templates/production/shape.ts";
import { leftOut } from "../not-orderable.ts";
import { type Overview, type SizeRow, sizesOf, summary } from "../overview.ts";

/** Why nothing of it can be ordered, in a sentence; null where it can. */
export function notOrdered(sheet: Overview): string | null {
  if (sizesOf(sheet).length > 0 && sheet.number("dough") !== null && sheet.parts.length > 0) return null;
  return leftOut(summary(sheet));
}

const cell = (sheet: Overview, name: string): string => sheet.reference(name) ?? '""';
export const text = (words: string): string => `"${words.replace(/"/g, '""')}"`;

/** Dough of a piece with its handling loss, as formulas of other sheets work it out. */
export function eachLink(sheet: Overview, { row }: SizeRow): string {
  if (row === null) {
    const whole = sheet.number("dough_in_all") === null ? cell(sheet, "dough") : cell(sheet, "dough_in_all");
    return `IF(COUNT(${whole};${cell(sheet, "pieces")})<2;"";${whole}/${cell(sheet, "pieces")})`;
  }
  const scaled = sheet.row("size_scaled", row) ?? '""';
  return `IF(COUNT(${scaled})=0;"";${scaled}/(1-N(${cell(sheet, "handling")})))`;
}

/** What is mixed of all that is divided: fat that is rolled in comes later. */
export const mixedLink = (sheet: Overview): string =>
  sheet.number("dough_in_all") === null
    ? "1"
    : `IF(COUNT(${cell(sheet, "dough")};${cell(sheet, "dough_in_all")})<2;1;${cell(sheet, "dough")}/${cell(sheet, "dough_in_all")})`;

export const positiveLink = (sheet: Overview, name: string): string =>
  `IF(N(${cell(sheet, name)})>0;${cell(sheet, name)};"")`;

/** A levain that a formula builds itself, or one of its rows that has a formula sheet of its own. */
export type TakenLevain = {
  readonly from: string;
  readonly isBuilt: boolean;
  /** Its part of what is mixed, as a formula and as it is now. */
  readonly link: string;
  readonly part: number;
  /** Names of the rows, where it is no built one. */
  readonly row: string;
};

export function levainsOf(sheet: Overview, all: readonly Overview[]): TakenLevain[] {
  const dough = sheet.number("dough");
  if (dough === null || !(dough > 0)) return [];
  const built = sheet.zone("levain") === undefined ? null : sheet.number("pre_weight");
  const hydration = sheet.number("pre_hydration");
  const taken: TakenLevain[] = [];
  if (built !== null && built > 0 && hydration !== null)
    taken.push({
      from: `Levain, ${Math.round(hydration * 100)} %`,
      isBuilt: true,
      link: `IF(COUNT(${cell(sheet, "pre_weight")};${cell(sheet, "dough")})<2;0;${cell(sheet, "pre_weight")}/${cell(sheet, "dough")})`,
      part: built / dough,
      row: "",
    });
  for (const { name, kind } of sheet.parts) {
    const builder = all.find((one) => same(one.name, name) || same(one.title, name));
    if (!/^levain/i.test(kind) || builder === undefined || builder === sheet) continue;
    const names = cell(sheet, "ingredient");
    const rows = `SUMPRODUCT((LOWER(${names})=${text(name.toLowerCase())})*1;${cell(sheet, "grams")})`;
    taken.push({
      from: builder.name,
      isBuilt: false,
      link: `IF(COUNT(${cell(sheet, "dough")})=0;0;${rows}/${cell(sheet, "dough")})`,
      part: partOf(sheet, name),
      row: name,
    });
  }
  return taken;
}

const same = (one: string, other: string): boolean => one.trim().toLowerCase() === other.trim().toLowerCase();

/** Part of a row by name, as it is now: rows of one name count once. */
function partOf(sheet: Overview, name: string): number {
  const parts = sheet.figures("whole_part");
  const names = sheet.column("ingredient");
  return names.reduce((sum, one, at) => sum + (same(one, name) ? (parts[at] ?? 0) : 0), 0);
}

/** When it is to be ready, as a part of the day; sheets of an earlier Gramwright do not tell. */
function readyOf(sheet: Overview): number | null {
  const minutes = sheet.number("ready_minutes");
  return minutes === null ? null : minutes / 1440;
}

/** Step at the mixer: the one that says so. */
const MIXES = /^(?:mix|knead)/i;

/** The formula as the timetable and the chain of feeds plan with it. */
export function planned(sheet: Overview, all: readonly Overview[], uses: readonly Use[] = []): Formula {
  const names = sheet.column("step");
  const minutes = sheet.figures("step_minutes");
  const heat = sheet.figures("step_temp");
  const steps = names.flatMap((name, at) =>
    name === "" ? [] : [{ name, minutes: minutes[at] ?? 0, temperature: heat[at] ?? null }],
  );
  const tray = sheet.zone("tray_pieces") === undefined ? 1 : sheet.number("tray_pieces");
  const hours = sheet.number("pre_hours");
  const isBuilt = sheet.zone("levain") !== undefined;
  const hasPreferment = !isBuilt && (sheet.number("pre_weight") ?? 0) > 0 && hours !== null;
  const preStep = sheet.text("pre_step");
  const mixed = mixedOf(sheet);
  return {
    name: sheet.name,
    rows: [],
    sizes: sizesOf(sheet).map(({ size, scaling }) => ({ size, scaling: scaling * mixed })),
    handlingLoss: sizesOf(sheet).some(({ row }) => row === null) ? 0 : (sheet.number("handling") ?? 0),
    mixerLimit: sheet.number("mixer_limit"),
    scales: [sheet.number("coarse") ?? 1, sheet.number("fine") ?? 1],
    ready: readyOf(sheet),
    steps,
    mixStep: names.find((name) => MIXES.test(name)) ?? "",
    ovenStep: sheet.text("oven_step"),
    holds: tray,
    ovenTakes: sheet.number("oven_takes"),
    reload: sheet.number("oven_reload") ?? 0,
    preferment: hasPreferment
      ? { name: sheet.text("pre_kind") || "preferment", minutes: Math.round((hours ?? 0) * 60), step: preStep }
      : null,
    levains: levainsOf(sheet, all).map(({ from, part, isBuilt }) => ({
      from,
      part,
      step: isBuilt ? preStep : (names.find((name) => MIXES.test(name)) ?? ""),
    })),
    uses,
  };
}

/** What is mixed of all that is divided, as it is now. */
export function mixedOf(sheet: Overview): number {
  const [dough, whole] = [sheet.number("dough"), sheet.number("dough_in_all")];
  return dough === null || whole === null || !(whole > 0) ? 1 : dough / whole;
}

export const linksFor = (what: string, links: readonly string[]): Links =>
  Object.fromEntries(links.map((link, at) => [linkName(what, at), link]));
