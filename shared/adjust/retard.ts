// Overnight in a retarder: a step in the cold and what the clock says. No rule gives the yeast for it, so none is given.
import { showNumber, shownShare } from "../base/show.ts";
import { celsius, fromCelsius, toCelsius } from "../base/units.ts";
import type { Change, Field } from "./change.ts";
import { fieldReader } from "./field-input.ts";
import { type Formula, type MethodStep, shareOf } from "./formula.ts";
import { keptCold } from "./yeast-time.ts";

/** Fridge doughs of published formulas stand 10 to 24 hours (back-cafe-wedel); longer is common practice, no source. */
const MIN_HOURS = 4;
const MAX_HOURS = 48;
/** A retarder stands at a few degrees: common practice, no source. Above 10 °C the dough goes on fermenting. */
const COLDEST = 1;
const WARMEST = 10;
const USUAL = 4;
const USUAL_HOURS = "12";

export const retard: Change = {
  name: "retard",
  group: "Time and temperature",
  label: "Make it overnight, in a retarder",
  words: "overnight cold retarder fridge refrigerator proof tomorrow morning night shift slow",
  fields: (formula): Field[] => {
    const { temperature } = formula.options;
    const names = namesOf(formula);
    return [
      { name: "hours", label: "Hours in the cold", start: USUAL_HOURS },
      {
        name: "temp",
        label: `Retarder (°${temperature})`,
        start: showNumber(fromCelsius(celsius(USUAL), temperature), 0),
      },
      ...(names.length === 0
        ? []
        : [{ name: "before", label: "Before the step", choices: names, start: names[likelyAt(names)] ?? "" }]),
    ];
  },
  apply: (formula, values) => {
    const { temperature: unit } = formula.options;
    const input = fieldReader(retard.fields(formula), values);
    const hours = input.number("hours", "hours such as 12", { min: MIN_HOURS, max: MAX_HOURS });
    const [least, most] = [COLDEST, WARMEST].map((temp) => fromCelsius(celsius(temp), unit));
    const temp = input.number("temp", "a temperature such as 4", { min: least ?? 0, max: most ?? 0 });
    const names = namesOf(formula);
    const at = names.length === 0 ? formula.steps.length : indexOf(formula, input.choice("before", names));
    const step: MethodStep = {
      name: "Retard",
      minutes: Math.round(hours * 60),
      temp,
      how: "Cover the pieces. Keep the cold at its temperature.",
    };
    const steps = formula.steps.filter(({ name }) => name !== step.name);
    const place = Math.min(at, steps.length);
    const yeast = shareOf(formula.rows, "yeast");
    return {
      formula: { ...formula, steps: [...steps.slice(0, place), step, ...steps.slice(place)] },
      line: `Retard ${showNumber(hours)} h at ${showNumber(temp, 0)} °${unit}`,
      rows: new Set(),
      parts: ["steps"],
      notes: [
        "Times only: no rule of degrees holds in the cold, so no yeast is worked out. Bake one tray first, then set the yeast.",
        ...(yeast > 0 ? [`The yeast stays at ${shownShare(yeast)} of flour.`] : []),
        ...(toCelsius(temp, unit) > 6 ? ["Above 6 °C the dough goes on rising: look at it after half the time."] : []),
      ],
      cautions: keptCold(formula),
    };
  },
};

const namesOf = ({ steps }: Formula): string[] => steps.map(({ name }) => name).filter((name) => name !== "Retard");
const indexOf = (formula: Formula, name: string): number => Math.max(0, namesOf(formula).indexOf(name));

/** Shaped pieces go into the cold before they proof, or else before the oven. */
function likelyAt(names: readonly string[]): number {
  const proof = names.findIndex((name) => /\b(final proof|proof|prove)\b/i.test(name));
  const bake = names.findIndex((name) => /\bbake\b/i.test(name));
  return proof >= 0 ? proof : bake >= 0 ? bake : names.length - 1;
}
