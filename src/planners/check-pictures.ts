// What the pictures of a checked sheet show, as its cells have it.

import { MINUTES_A_DAY, readTime } from "../../shared/base/clock.ts";
import { isFault, Refusal } from "../../shared/base/refusal.ts";
import { minutes, weight } from "../../shared/base/units.ts";
import { kindParts } from "../../shared/drawings/kind-bar.ts";
import { type TinView, tinView } from "../../shared/drawings/tin-view.ts";
import { ripeningBefore, sameStep, type TimedStep } from "../../shared/formula/steps.ts";
import { kind } from "../../shared/larder/kinds.ts";
import type { SheetPictures } from "../../shared/protocol/sheet-review.ts";
import { TIN_SHAPES, TIN_SIZES, type TinShape, tinSizes } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind } from "../../shared/tins/tin-guide.ts";
import type { FormulaSheet } from "./formula-sheet.ts";

export function sheetPictures(sheet: FormulaSheet): SheetPictures {
  const rowKinds = sheet.rows.map((row) => ({ weight: row.weight, kind: kind().read(row.kind) }));
  const known = rowKinds.flatMap((row) =>
    isFault(row.kind) || "unread" in row.kind
      ? []
      : [{ kind: row.kind, weight: row.weight === null ? null : weight(row.weight) }],
  );
  return {
    unit: sheet.options.weight,
    length: sheet.options.length,
    parts: kindParts(
      known.map((row) => row.weight),
      known.map((row) => row.kind),
    ),
    steps: stepsOf(sheet),
    tin: tinOf(sheet),
  };
}

/** The steps as the sheet has counted them back; those without a start are left out. */
function stepsOf(sheet: FormulaSheet): TimedStep[] {
  const timed = Array.from({ length: sheet.zone("step")?.rows ?? 0 }, (_, row): TimedStep | null => {
    const name = sheet.text("step", row);
    const start = readTime(sheet.shown("step_start", row));
    const day = sheet.number("step_day", row);
    const long = sameStep(name, sheet.text("oven_step")) ? sheet.number("oven_minutes") : null;
    const takes = long ?? sheet.number("step_minutes", row) ?? 0;
    if (isFault(start) || day === null) return null;
    return { name, minutes: minutes(takes), start: minutes(day * MINUTES_A_DAY + start) };
  }).filter((step) => step !== null);
  const [hours, share] = [sheet.number("pre_hours"), sheet.number("pre_share")];
  if (hours === null || share === null) return timed;
  const what = sheet.text("pre_kind") || "levain";
  const ripens = ripeningBefore(timed, sheet.text("pre_step"), `${capital(what)} ripens`, hours);
  return ripens === null ? timed : [ripens, ...timed];
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** The tin, where its sizes make one. */
function tinOf(sheet: FormulaSheet): TinView | null {
  const shape = sheet.text("tin_shape");
  if (!Object.keys(TIN_SHAPES).includes(shape)) return null;
  const { needed, extra } = TIN_SIZES[shape as TinShape];
  const typed = [...needed, ...extra].map((_, place) => sheet.number(`tin_size_${place + 1}`));
  while (typed.length > needed.length && typed[typed.length - 1] === null) typed.pop();
  const kind = sheet.text("tin_kind");
  const dough = sheet.number("tin_dough");
  try {
    return tinView(
      {
        shape: shape as TinShape,
        sizes: tinSizes(shape as TinShape, typed, sheet.options.length),
        kind: (Object.keys(TIN_DOUGH_KINDS).includes(kind) ? kind : "white") as TinDoughKind,
        dough: dough === null ? null : weight(dough),
      },
      sheet.options.weight,
    );
  } catch (error) {
    // Sizes that make no tin are told by the sheet's own cells.
    if (!(error instanceof Refusal)) throw error;
    return null;
  }
}
