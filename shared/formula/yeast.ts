import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import {
  type Celsius,
  celsius,
  fromCelsius,
  type Hours,
  type TemperatureUnit,
  type Weight,
  weight,
} from "../base/units.ts";

/** Dry kinds are told apart: "dry" alone is neither. */
export const YEASTS = {
  fresh: ["fresh yeast", "compressed", "compressed yeast", "cake yeast", "cube"],
  "active dry": ["active dry yeast", "active dried", "active dried yeast", "ady"],
  instant: ["instant yeast", "instant dry", "instant dry yeast", "instant dried yeast", "idy", "fast acting"],
} as const;
export type Yeast = keyof typeof YEASTS;

/** Weight that does the work of one of fresh yeast: a bread textbook on ckbk (brea32715), believed to be Hamelman, Bread. */
const STRENGTH: Readonly<Record<Yeast, number>> = { fresh: 1, "active dry": 0.4, instant: 0.33 };

/** Yeast of the other kind, and the water that keeps the dough's weight where fresh yeast, mostly water, comes or goes. */
export function swapYeast(amount: Weight, from: Yeast, to: Yeast): { yeast: Weight; water: Weight } {
  const other = from === to ? amount : (amount * STRENGTH[to]) / STRENGTH[from];
  const balances = (from === "fresh") !== (to === "fresh");
  return { yeast: weight(other), water: weight(balances ? amount - other : 0) };
}

/**
 * Yeast × (time now ÷ time wanted)^k. k = 1 is the inverse rule. Little yeast ripens sooner than that, as its cells multiply:
 * published doughs at room temperature (King Arthur professional formulas; back-cafe-wedel), 0.1 to 2 % of fresh yeast, pair
 * up at k from 1.1 to 1.5, whence the middle; 1.7 as the outer edge is common practice, no source.
 */
export const TIME_POWERS = [1, 1.3, 1.7];
/** Yeast per °C colder: doubling per 10 °C (from memory), per 17 °F (artisanbreads123), and bakemag.com 836's tenth per °C. */
export const PER_DEGREE = [1.07, 1.08, 1.1];
/** The inverse rule is trusted for changes of half to three times: common practice, no source. */
export const MIN_CHANGE = 0.5;
export const MAX_CHANGE = 3;
/** Between a cool room and a warm proofer, °C; colder, the rule of degrees fails (back-cafe-wedel's fridge doughs). */
export const COOLEST = 15;
export const WARMEST = 32;

/** Dough temperatures; the unit is the one refusals speak in. */
type DoughTemps = { readonly now: Celsius | null; readonly wanted: Celsius | null; readonly unit: TemperatureUnit };

/** Low, middle and high amount of yeast for another time, and another temperature where both are given. */
export function yeastForTime(yeast: number, now: Hours, wanted: Hours, temps: DoughTemps): number[] {
  const change = now / wanted;
  refuseChange(change, wanted);
  const colder = degreesColder(temps);
  const byTime = sortNumbers(TIME_POWERS.map((power) => change ** power));
  const byDegrees = sortNumbers(PER_DEGREE.map((factor) => factor ** colder));
  return byTime.map((factor, index) => yeast * factor * (byDegrees[index] ?? 1));
}

export const sortNumbers = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b);

function refuseChange(change: number, wanted: Hours): void {
  if (!atMost(MIN_CHANGE, change)) {
    refuse(
      `is ${showNumber(wanted)}, ${shownApart(1 / change, 2, 2)} times hours_now. The rule holds up to twice. Keep the yeast and retard the dough, or go in two steps with a trial between`,
      "hours_wanted",
    );
  }
  if (!atMost(change, MAX_CHANGE)) {
    refuse(
      `is ${showNumber(wanted)}, hours_now divided by ${shownApart(change, 3, 2)}. The rule holds down to a third. Go in two steps with a trial between, or use a preferment`,
      "hours_wanted",
    );
  }
}

function degreesColder({ now, wanted, unit }: DoughTemps): number {
  if (now === null && wanted === null) return 0;
  if (now === null)
    return refuse("is blank though temp_wanted is given; enter both temperatures or neither", "temp_now");
  if (wanted === null)
    return refuse("is blank though temp_now is given; enter both temperatures or neither", "temp_wanted");
  refuseTemperature(now, unit, "temp_now");
  refuseTemperature(wanted, unit, "temp_wanted");
  return now - wanted;
}

export function refuseTemperature(temp: Celsius, unit: TemperatureUnit, argument: string): void {
  if (atMost(COOLEST, temp) && atMost(temp, WARMEST)) return;
  const at = (one: Celsius) => showNumber(fromCelsius(one, unit), 1);
  const fits = (limit: number) => fromCelsius(celsius(limit), "F");
  const meant = unit === "C" && temp >= fits(COOLEST) && temp <= fits(WARMEST) ? '; for °F choose "F" as the unit' : "";
  refuse(
    `is ${shownApart(fromCelsius(temp, unit), fromCelsius(celsius(temp > WARMEST ? WARMEST : COOLEST), unit), 1)} °${unit}, and the rule holds from ${at(celsius(COOLEST))} to ${at(celsius(WARMEST))} °${unit}; find the time of a colder or hotter dough by trial${meant}`,
    argument,
  );
}
