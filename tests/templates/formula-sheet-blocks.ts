// What the blocks of a formula sheet must show: water, seed and method.

import { TIN_SIZES } from "./formula-sheet-bounds.ts";
import type { Cell, Page } from "./formula-sheet-sum.ts";
import { cleaned, isBlank } from "./formula-sheet-words.ts";

/** What is known of a page that is added up, and where to put what follows. */
export type Known = {
  readonly page: Page;
  readonly inputs: Readonly<Record<string, number | undefined>>;
  readonly of: (name: string) => number;
  readonly isKnown: boolean;
  readonly mixes: number;
  readonly coarse: number;
  readonly put: (name: string, is: number, decimals?: number) => unknown;
  readonly faults: string[];
  readonly number: (cell: Cell | undefined, least: number, most: number, where: string) => number | undefined;
};
type Waters = {
  readonly waterMix: number;
  readonly preWater: number;
  readonly allFlour: number;
  readonly rows: readonly { readonly flour: number; readonly percent: number; readonly word: string }[];
};

/** Degrees of water that melting ice takes: 333.55 kJ/kg over 4.186 kJ/kg·K. */
const MELTING = 333.55 / 4.186;

/** Water that is poured, kept back, tempered and iced. */
export function water(
  { page, inputs, of, isKnown, mixes, coarse, put }: Known,
  { waterMix, preWater, allFlour, rows }: Waters,
): void {
  const given = ["flour_temp", "room_temp", ...(page.isStaged ? ["preferment_temp"] : [])]
    .map((name) => inputs[name])
    .filter((one) => one !== undefined);
  const poured = Math.max(0, waterMix - preWater);
  if (isKnown) {
    put("water_final_shown", poured, poured >= 99.5 ? 0 : 1);
    put("held_all", poured * mixes * of("held_share"), 1);
    put("held_shown", Math.round(Number(((poured * of("held_share")) / coarse).toFixed(9))) * coarse);
    if (allFlour > 0) {
      const starters = rows.reduce((all, { flour, percent }) => all + (flour > 0 ? (1 - flour) * percent : 0), 0);
      const ices = rows.reduce((all, { word, percent }) => all + (word === "water" || word === "ice" ? percent : 0), 0);
      put("result: hydration", (100 * (starters + ices)) / allFlour, 1);
    }
  }
  const { dough_target: target, flour_temp, room_temp, friction_own: friction, tap_temp: tap } = inputs;
  const known = [target, flour_temp, room_temp, friction];
  if (target === undefined || friction === undefined || known.includes(undefined)) return;
  const wanted = (given.length + 1) * target - given.reduce((all, one) => all + one, 0) - friction;
  put("water_temp_shown", wanted);
  if (isKnown) put("result: water at", wanted, 1);
  if (isKnown) put("result: water", poured);
  if (tap === undefined || !isKnown) return;
  const [melts, takes] = page.isFahrenheit ? [32, MELTING * 1.8] : [0, MELTING];
  const share = wanted >= tap ? 0 : (tap - wanted) / (tap - melts + takes);
  const ice = share * poured;
  // Without ice it is one water.
  if (ice === 0) return;
  put("ice_shown", ice, ice >= 99.5 ? 0 : 1);
  put("tap_water_shown", poured - ice, poured - ice >= 99.5 ? 0 : 1);
}

/** The seed is of the flour that is fed: what it brings itself is not fed. */
export function seed({ page, inputs, of, isKnown, mixes, put, faults }: Known, preFlour: number): void {
  if (!page.isSeeded || !isKnown || preFlour === 0) return;
  const levain = preFlour * (1 + of("pre_hydration")) * mixes + of("keep");
  const shownAs = (name: string, is: number) => put(name, is, Math.abs(is) >= 99.5 ? 0 : 1);
  shownAs("levain_shown", levain);
  const flour = levain / (1 + of("pre_hydration"));
  const [hydration, share] = [inputs.seed_hydration, of("seed_share")];
  const isWeighed = of("seed_weight") > 0;
  if (isWeighed && share > 0) faults.push("the seed has a share and a weight");
  if (hydration === undefined || (!isWeighed && share <= 0)) return;
  // Flour fed plus the seed's own flour is the levain's: fed × (1 + share ÷ (1 + hydration)) = flour.
  const used = isWeighed ? of("seed_weight") : (share * flour) / (1 + share / (1 + hydration));
  const fed = flour - used / (1 + hydration);
  const poured = levain - used - fed;
  if (fed < -1e-9 || poured < -1e-9) faults.push("the seed is more than the levain takes");
  shownAs("feed_seed_shown", used);
  shownAs("feed_flour_shown", fed);
  shownAs("feed_water_shown", poured);
}

/** When each step starts, counted back, and what the oven takes. */
/** Answers the minutes that the oven is in use. */
export function method({ page, inputs, of, isKnown, put, faults, number }: Known, pieces: number): number {
  const oven = cleaned(page.inputs.oven_step);
  const isOnTrays = "tray_pieces" in page.inputs;
  const trays = of("tray_pieces") > 0 ? Math.ceil((pieces / of("tray_pieces")) * (1 - 1e-9)) : 0;
  const baked = isOnTrays ? trays : pieces;
  if (isOnTrays && isKnown && trays > 0) {
    put("trays_shown", trays);
    put("tray_last_shown", pieces - of("tray_pieces") * (trays - 1));
  }
  const loads =
    of("oven_takes") > 0 && baked > 0 && isKnown ? Math.ceil((baked / of("oven_takes")) * (1 - 1e-9)) : undefined;
  const steps = page.steps.map(({ row, cells }) => {
    const minutes = number(cells.step_minutes, 0, 10_080, `minutes ${row}`) ?? 0;
    const isBaking = oven !== "" && cleaned(cells.step) === oven;
    const again = isBaking && loads !== undefined ? (loads - 1) * (minutes + of("oven_reload")) : 0;
    if (typeof cells.step === "object") faults.push(`step ${row}`);
    return { row, isNamed: !isBlank(cells.step), isBaking, minutes: minutes + again };
  });
  if (loads !== undefined && loads > 1 && oven !== "" && !steps.some(({ isBaking }) => isBaking))
    faults.push(`no step is called ${oven}`);
  if (loads !== undefined) put("loads_shown", loads);
  const baking = steps.reduce((all, { isBaking, minutes }) => all + (isBaking ? minutes : 0), 0);
  if (baking > 0) put("oven_minutes_shown", baking);
  if (inputs.ready === undefined) return baking;
  const ready = Math.round(1440 * inputs.ready);
  const before = cleaned(page.inputs.pre_step);
  let isDone = false;
  steps.forEach(({ row, isNamed }, at) => {
    const start = ready - Math.round(steps.slice(at).reduce((all, { minutes }) => all + minutes, 0));
    if (isNamed) {
      put(`start_shown@${row}`, (((start % 1440) + 1440) % 1440) / 1440);
      put(`day_shown@${row}`, Math.floor(start / 1440));
    }
    const isStep = before !== "" && cleaned(page.steps[at]?.cells.step) === before;
    if (isDone || !isStep || inputs.pre_hours === undefined || !page.isStaged) return;
    isDone = true;
    const mixed = start - Math.round(60 * of("pre_hours"));
    put("pre_start", (((mixed % 1440) + 1440) % 1440) / 1440);
    put("pre_day", Math.floor(mixed / 1440));
  });
  return baking;
}

/** 1 in³ (international yard and pound agreement, 1959). */
const CUBIC_INCH = 16.387064;

/** Cubic centimetres that a box or a round tin holds, by its sizes or as it is typed. */
export function capacityOf(shape: string, inputs: Known["inputs"], isInches: boolean): number {
  if ((inputs.tin_own ?? 0) > 0) return inputs.tin_own ?? 0;
  const [one, two, three, four, five] = TIN_SIZES.map((name) => inputs[name]);
  const times = isInches ? CUBIC_INCH : 1;
  if (shape === "box" && one && two && three && (four === undefined) === (five === undefined)) {
    const [length, width] = [four ?? one, five ?? two];
    // Simpson's rule is exact here: ends and middle.
    const middle = ((one + length) / 2) * ((two + width) / 2);
    return (three / 6) * (one * two + length * width + 4 * middle) * times;
  }
  if (shape === "round" && one && two && four === undefined && five === undefined) {
    const [top, bottom] = [one / 2, (three ?? one) / 2];
    return ((Math.PI * two) / 3) * (top ** 2 + top * bottom + bottom ** 2) * times;
  }
  return 0;
}
