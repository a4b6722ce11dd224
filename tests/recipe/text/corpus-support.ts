// Texts as bakers paste them, with what they say written down beside them, and how a description is held against it.

import { readFileSync } from "node:fs";
import { larder } from "../../../shared/larder/larder.ts";
import type { Corrections } from "../../../shared/recipe/text/corrections.ts";
import { NO_CORRECTIONS } from "../../../shared/recipe/text/corrections.ts";
import type { Described, Kitchen, Row } from "../../../shared/recipe/text/description.ts";
import { describeRecipe } from "../../../shared/recipe/text/reader.ts";

export type Case = {
  readonly text: string;
  readonly cups?: Kitchen["cups"];
  readonly title?: string;
  /**
   * A row a line: name; type; amount; stage. The amount is grams (500), a percentage (65%), a household measure with its food
   * number in SR28 ("2 cup 20081"), "takes" for a stage that it takes whole, or "-" where only a person can tell.
   */
  readonly rows: string;
  readonly yield?: {
    readonly pieces?: number;
    readonly weight?: number;
    readonly tins?: number;
    readonly total?: number;
  };
  /** Minutes and °C, null where the step names none. */
  readonly steps?: readonly (readonly [number | null, number | null])[];
  /** Reasons of the questions that this text demands. */
  readonly asks?: readonly string[];
  readonly pre?: { readonly kind?: string; readonly share: number; readonly hydration: number; readonly seed?: number };
  readonly hydration?: number;
  /** Grams of the whole dough. */
  readonly dough?: number;
  readonly parts?: readonly string[];
};

const csv = readFileSync(new URL("../../data/usda-sr28-bakery.csv", import.meta.url), "utf8");
/** Grams of one measure as SR28 prints it, read off its own table. */
function sr28(measure: string, ndb: string): number {
  const line = csv.split("\n").find((one) => one.startsWith(`${ndb},`));
  const found = new RegExp(`(?:^|["; ,])1 ${measure}(?:,[^=;]*| \\([^)]*\\))? = ([\\d.]+) g`).exec(line ?? "");
  if (found === null) throw new Error(`SR28 has no ${measure} of ${ndb}`);
  return Number(found[1]);
}

type Wanted = {
  name: string;
  type: string;
  grams: number | null;
  percent: number | null;
  takes: boolean;
  role: string;
};

export function wantedRows({ rows }: Case): Wanted[] {
  return rows
    .trim()
    .split("\n")
    .filter((line) => line.trim() !== "")
    .map((line) => {
      const [name = "", type = "", amount = "", role = "dough"] = line.split(";").map((part) => part.trim());
      const measure = /^([\d.]+) (\D+) (\d{5})$/.exec(amount);
      const grams = measure
        ? Number(measure[1]) * sr28(measure[2] ?? "", measure[3] ?? "")
        : /^[\d.]+$/.test(amount)
          ? Number(amount)
          : null;
      const percent = /^([\d.]+)%$/.exec(amount)?.[1];
      return {
        name,
        type,
        grams,
        percent: percent === undefined ? null : Number(percent),
        takes: amount === "takes",
        role,
      };
    });
}

const builtIn = larder(true).decode([], "larder", []);
export const builtInKitchen: Kitchen = { cups: "US", larder: builtIn };
export const described = ({ text, cups = "US" }: Case, corrections: Corrections = NO_CORRECTIONS): Described =>
  describeRecipe(text, { cups, larder: builtIn }, corrections);

const near = (one: number | null, other: number | null, within = 0.005): boolean =>
  one === null || other === null ? one === other : Math.abs(one - other) <= within * Math.abs(other) + 1e-9;

/** Spoons and cups are built from each other, and SR28 rounds its grams. */
const MEASURED = 0.04;

function rowDiffers(
  row: Row | undefined,
  wanted: Wanted | undefined,
  got: Described,
  text: string,
): string | undefined {
  if (wanted === undefined) return `more: ${row?.name} ${row?.grams ?? row?.percent}`;
  if (row === undefined) return `missing: ${wanted.name}`;
  const role = got.stages[row.stage]?.role ?? "";
  const isMeasure = / \d{5}/.test(text) || row.amountOf === "measure";
  const differs: string[] = [];
  if (row.name.toLowerCase() !== wanted.name.toLowerCase()) differs.push(`name ${row.name}`);
  if ((row.takes !== null) !== wanted.takes) differs.push(`takes ${row.takes}`);
  if (!wanted.takes && row.type !== wanted.type) differs.push(`type ${row.type}`);
  if (!wanted.takes && wanted.grams !== null && !near(row.grams, wanted.grams, isMeasure ? MEASURED : 0.005))
    differs.push(`grams ${row.grams}`);
  if (!wanted.takes && wanted.percent !== null && !near(row.percent, wanted.percent))
    differs.push(`percent ${row.percent}`);
  if (!wanted.takes && wanted.grams === null && wanted.percent === null && (row.grams !== null || row.percent !== null))
    differs.push(`amount ${row.grams ?? row.percent}`);
  if (role !== wanted.role) differs.push(`stage ${role}`);
  return differs.length === 0 ? undefined : `${wanted.name}: ${differs.join(", ")}`;
}

/** Everything in which the description is not what the text says; `silent` are wrong rows that nothing asks about. */
export function differences(one: Case): { all: string[]; silent: string[] } {
  const got = described(one);
  const all: string[] = [];
  const silent: string[] = [];
  const wanted = wantedRows(one);
  const lines = one.rows
    .trim()
    .split("\n")
    .filter((line) => line.trim() !== "");
  const isAsked = (line: number | undefined) =>
    got.questions.some((question) => question.line === line || (question.isOpen && question.line === null));
  // A row that is missing stands in a line that the reader asks about.
  const isLeftOut = got.questions.some(({ reason }) => reason === "left out" || reason === "no ingredient");
  for (let at = 0; at < Math.max(wanted.length, got.rows.length); at++) {
    const row = got.rows[at];
    const differs = rowDiffers(row, wanted[at], got, lines[at] ?? "");
    if (differs === undefined) continue;
    all.push(differs);
    const isSilent = row === undefined ? !isLeftOut : !isAsked(row.line);
    if (isSilent) silent.push(differs);
  }
  if (one.title !== undefined && got.title !== one.title) all.push(`title "${got.title}"`);
  const made = one.yield ?? {};
  const said = {
    pieces: got.yield.pieces,
    weight: got.yield.pieceWeight,
    tins: got.yield.tins,
    total: got.yield.total,
  };
  for (const [name, value] of Object.entries(said)) {
    const expected = made[name as keyof typeof made] ?? null;
    if (!near(value, expected)) {
      all.push(`yield ${name} ${value}`);
      silent.push(`yield ${name} ${value}`);
    }
  }
  if (one.steps !== undefined) {
    const steps = got.steps.map(({ minutes, temperature }) => `${minutes} ${temperature}`).join(" | ");
    const expected = one.steps.map(([minutes, temperature]) => `${minutes} ${temperature}`).join(" | ");
    if (steps !== expected) all.push(`steps ${steps}`);
  }
  const reasons = new Set(got.questions.map(({ reason }) => reason as string));
  for (const reason of one.asks ?? []) if (!reasons.has(reason)) all.push(`not asked: ${reason}`);
  for (const { reason, line, about } of got.questions) {
    if (!(one.asks ?? []).includes(reason)) all.push(`asked: ${reason} line ${line} ${about.join(", ")}`);
  }
  const { formula } = got;
  if (one.pre !== undefined) {
    const [only] = formula.preferments;
    const points = (a: number | undefined, b: number) => a !== undefined && Math.abs(a - b) <= 0.001 + 1e-9;
    if (!points(only?.share, one.pre.share)) all.push(`share ${only?.share}`);
    if (!points(only?.hydration, one.pre.hydration)) all.push(`preferment's hydration ${only?.hydration}`);
    if (one.pre.seed !== undefined && !points(only?.seed, one.pre.seed)) all.push(`seed ${only?.seed}`);
    if (one.pre.kind !== undefined && only?.kind !== one.pre.kind) all.push(`kind ${only?.kind}`);
  }
  if (one.hydration !== undefined && Math.abs((formula.hydration ?? -1) - one.hydration) > 0.001)
    all.push(`hydration ${formula.hydration}`);
  if (one.dough !== undefined && !near(formula.dough, one.dough)) all.push(`dough ${formula.dough}`);
  if (one.parts !== undefined) {
    const parts = formula.parts.map(({ stage }) => got.stages[stage]?.role).join(", ");
    if (parts !== one.parts.join(", ")) all.push(`parts ${parts}`);
  }
  return { all, silent };
}
