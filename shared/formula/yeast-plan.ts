import { fault, refuse, refuseAll } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownApart } from "../base/show.ts";
import { type Celsius, celsius, fromCelsius, type Hours, type TemperatureUnit } from "../base/units.ts";
import { sum } from "./formula.ts";
import {
  COOLEST,
  MAX_CHANGE,
  MIN_CHANGE,
  PER_DEGREE,
  refuseTemperature,
  sortNumbers,
  TIME_POWERS,
  WARMEST,
} from "./yeast.ts";

/** Hours at a temperature; row is the one it was typed in, from 1. */
export type Rest = { readonly hours: Hours; readonly temp: Celsius; readonly row: number };
/** How the dough ferments now; the unit is the one refusals speak in. */
export type Now = { readonly hours: Hours; readonly temp: Celsius; readonly unit: TemperatureUnit };

/**
 * What a rest below 15 °C counts for the low, the middle and the high amount of yeast. How fast dough ferments by
 * temperature is estimated between a tenth more per °C (a trade article on the science of fermentation, bakemag.com) and
 * twice per 17 °F (an oven maker's dough guide, fornobravo.com); whether either holds in the cold is open, so that such a
 * rest counts between all that the exponential says and nothing.
 */
const COLD_COUNTS = [1, 0.5, 0] as const;
/** Colder, dough begins to freeze and its yeast rests: common practice, no source. */
const FREEZING = 1;
/** Where rests below this decide, the schedule is one of the retarder, and nothing of the rule is left. */
const RETARDER = 10;
const MAX_OF_WORK = 0.5;

/**
 * Low, middle and high yeast for a schedule of rests: yeast × (hours now ÷ hours of all rests)^k ÷ their mean rate, the
 * rate being 1 at the temperature now. With one rest it is yeastForTime.
 */
export function yeastForPlan(yeast: number, now: Now, rests: readonly Rest[]): number[] {
  refuseTemperature(now.temp, now.unit, "temp_now");
  refuseTemperatures(rests, now.unit);
  if (!(sum(rests.map(({ hours }) => hours)) > 0))
    refuse("add up to 0; enter how long each rest takes, such as 2", "hours");
  refuseColdWork(now, rests);
  refuseChanges(now, rests);
  return COLD_COUNTS.map((counts, edge) => {
    const worked = rests.map((rest) => ({ rest, hours: rest.hours * (isCold(rest) ? counts : 1) }));
    const total = sum(worked.map(({ hours }) => hours));
    const byTime = sortNumbers(TIME_POWERS.map((power) => (now.hours / total) ** power));
    const byDegrees = sortNumbers(
      PER_DEGREE.map(
        (factor) => total / sum(worked.map(({ rest, hours }) => hours * factor ** (rest.temp - now.temp))),
      ),
    );
    return yeast * (byTime[edge] ?? 1) * (byDegrees[edge] ?? 1);
  });
}

const isCold = ({ temp }: Rest): boolean => !atMost(COOLEST, temp);

/** Hours at the temperature now that do what a rest does, by the middle estimate. */
const asNow = ({ hours, temp }: Rest, now: Now): number => hours * (PER_DEGREE[1] ?? 1) ** (temp - now.temp);

function refuseTemperatures(rests: readonly Rest[], unit: TemperatureUnit): void {
  const at = (temp: number) => `${showNumber(fromCelsius(celsius(temp), unit), 1)} °${unit}`;
  // Nothing above 89.6 is a dough in °C; from 59 on it is one in °F.
  const meant = (temp: number) => (unit === "C" && temp >= 59 && temp <= 89.6 ? '; for °F choose "F" as the unit' : "");
  refuseAll(
    rests.flatMap(({ temp, row }) => {
      if (!atMost(FREEZING, temp))
        return [
          fault(
            `is ${shownApart(fromCelsius(celsius(temp), unit), fromCelsius(celsius(FREEZING), unit), 1)} °${unit}; below ${at(FREEZING)} dough begins to freeze and its yeast stops, so find the yeast by trial`,
            "temps",
            row,
          ),
        ];
      if (!atMost(temp, WARMEST))
        return [
          fault(
            `is ${at(temp)}, and the rule holds up to ${at(WARMEST)}; find the time of a hotter dough by trial${meant(temp)}`,
            "temps",
            row,
          ),
        ];
      return [];
    }),
  );
}

function refuseColdWork(now: Now, rests: readonly Rest[]): void {
  const work = (some: readonly Rest[]) => sum(some.map((rest) => asNow(rest, now)));
  const cold = rests.filter(({ temp }) => !atMost(RETARDER, temp));
  if (atMost(work(cold), MAX_OF_WORK * work(rests))) return;
  const limit = `${showNumber(fromCelsius(celsius(RETARDER), now.unit))} °${now.unit}`;
  refuse(
    `hold rests below ${limit} that do more than half of the work. No rule of degrees holds there. Keep the yeast and find the time in the cold by trial`,
    "temps",
  );
}

/** YEASTTIME's limits: by the hours of the warm rests, and with what the cold ones add to them. */
function refuseChanges(now: Now, rests: readonly Rest[]): void {
  const warm = sum(rests.filter((rest) => !isCold(rest)).map(({ hours }) => hours));
  const cold = sum(rests.filter(isCold).map((rest) => asNow(rest, now)));
  const limit = `${showNumber(fromCelsius(celsius(COOLEST), now.unit))} °${now.unit}`;
  const which = cold > 0 ? `of ${limit} or more ` : "";
  if (!atMost(now.hours / MAX_CHANGE, warm)) {
    refuse(
      `${which}add up to ${showNumber(warm)}, and hours_now is ${showNumber(now.hours)}. The rule holds down to a third of that. Go in two steps with a trial between, or use a preferment`,
      "hours",
    );
  }
  if (!atMost(MIN_CHANGE * (warm + cold), now.hours)) {
    const inAll = cold > 0 ? `do the work of ${showNumber(warm + cold)} at temp_now` : `add up to ${showNumber(warm)}`;
    refuse(
      `${inAll}, and hours_now is ${showNumber(now.hours)}. The rule holds up to twice that. Keep the yeast and retard the dough, or go in two steps with a trial between`,
      "hours",
    );
  }
}
