// What a number in a formula sheet may be, said a second time: these are not the templates' own.
import type { Page } from "./formula-sheet-sum.ts";

/** The least and the most of every cell that is a number. */
const BOUNDS: Readonly<Record<string, readonly [number, number]>> = {
  held_share: [0, 0.5],
  minutes: [0, 120],
  tin_fill: [0.05, 2],
  tin_own: [10, 200_000],
  tray_pieces: [1, 10_000],
  seed_hydration: [0.3, 2],
  seed_share: [0.001, 5],
  effective_wanted: [0.2, 3],
  roll_in_share: [0, 2],
  roll_price_typed: [0, 1_000_000],
  blocks: [1, 1000],
  fold_1: [1, 9],
  fold_2: [1, 9],
  fold_3: [1, 9],
  pre_share: [0, 1],
  pre_hydration: [0.3, 2],
  pre_yeast: [0, 0.1],
  pre_hours: [0, 72],
  ready: [0, 1],
  oven_takes: [1, 100_000],
  oven_reload: [0, 600],
  handling_loss: [0, 0.3],
  step_coarse: [0.01, 500],
  step_fine: [0.001, 100],
  margin_wanted: [0, 0.99],
  tax: [0, 1],
  packaging: [0, 10_000],
  broken: [0, 0.9],
  boil_off: [0, 0.9],
  left_over: [0, 0.9],
  unsold: [0, 0.9],
  reduced_sales: [0, 10_000_000],
  labour_mix: [0, 100_000],
  labour_pieces: [0, 100_000],
  labour_rate: [0, 100_000],
  overhead_labour: [0, 100_000],
  overhead_oven: [0, 100_000],
  other_costs: [0, 10_000_000],
};
const TEMPERATURES = ["dough_target", "flour_temp", "room_temp", "preferment_temp", "tap_temp"];
export const TIN_SIZES = [1, 2, 3, 4, 5].map((at) => `tin_size_${at}`);

export function boundsOf(
  name: string,
  { isOunces, isFahrenheit, isInches }: Page,
): readonly [number, number] | undefined {
  if (TEMPERATURES.includes(name)) {
    const [least, most] = name === "dough_target" ? [0, 45] : [-10, 60];
    return isFahrenheit ? [32 + least * 1.8, 32 + most * 1.8] : [least, most];
  }
  if (name === "friction_own") return isFahrenheit ? [-60, 180] : [-30, 100];
  if (name === "mixer_limit" || name === "mixer_least") return isOunces ? [1, 100_000] : [10, 2_000_000];
  if (TIN_SIZES.includes(name)) return isInches ? [0.4, 60] : [1, 150];
  if (name === "known_diameter") return isInches ? [1, 60] : [3, 150];
  if (name === "known_weight") return isOunces ? [0.2, 700] : [5, 20_000];
  if (name === "per_area") return isOunces ? (isInches ? [0.01, 2] : [0.001, 0.4]) : isInches ? [0.3, 60] : [0.05, 10];
  if (name === "seed_weight" || name === "keep") return isOunces ? [0.01, 50_000] : [0.1, 1_000_000];
  if (name === "egg_weight") return isOunces ? [0.5, 5] : [15, 150];
  return BOUNDS[name];
}
