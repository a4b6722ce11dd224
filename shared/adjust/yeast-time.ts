// Yeast for another time and another room: low, middle and high, of which one is taken.
import { refuse } from "../base/refusal.ts";
import { showNumber, shownShare } from "../base/show.ts";
import { hours, toCelsius } from "../base/units.ts";
import { yeastForTime } from "../formula/yeast.ts";
import type { Change, Changed, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { amountOf, type Formula, ofKind, prefermented, shareOf } from "./formula.ts";
import { withPreferment } from "./preferment.ts";
import { mustHoldApart } from "./row-limits.ts";

export const EDGES = ["low", "middle", "high"] as const;

export const yeastTime: Change = {
  name: "time",
  group: "Time and temperature",
  label: "Proof in another time, or a warmer or cooler room",
  words: "proofs too fast slow yeast hours summer winter hot cold kitchen faster longer fermentation rise",
  fields: (formula): Field[] => [
    {
      name: "hours_now",
      label: "Hours now",
      start: hoursOf(formula),
      hint: "Bulk fermentation and final proof together.",
    },
    { name: "hours", label: "Hours wanted", start: "" },
    { name: "temp_now", label: `Dough now (°${formula.options.temperature})`, start: tempOf(formula) },
    { name: "temp", label: `Dough temperature wanted (°${formula.options.temperature})`, start: tempOf(formula) },
    { name: "edge", label: "Which figure", choices: EDGES, start: "middle" },
  ],
  apply: (formula, values) => {
    const input = fieldReader(yeastTime.fields(formula), values);
    const some = ofKind(formula.rows, "yeast");
    const isLevain = amountOf(some) <= 0;
    if (isLevain && prefermented(formula) <= 0)
      refuse("This formula has no yeast and no levain whose amount could follow the time. Put one in first.");
    const factors = factorsOf(formula, values);
    const factor = factors[EDGES.indexOf(input.choice("edge", EDGES))] ?? 1;
    return isLevain ? levainFor(formula, factors, factor) : yeastFor(formula, factors, factor, lineOf(formula, values));
  },
};

function factorsOf(formula: Formula, values: Readonly<Record<string, string>>): number[] {
  const { temperature: unit } = formula.options;
  const input = fieldReader(yeastTime.fields(formula), values);
  const now = input.number("hours_now", "hours such as 3", { above: 0, max: 200 });
  const wanted = input.number("hours", "hours such as 2", { above: 0, max: 200 });
  const degrees = (name: string) => input.numberOrBlank(name, "a temperature such as 24", { min: -30, max: 150 });
  const [before, after] = [degrees("temp_now"), degrees("temp")];
  const temps = {
    now: before === null ? null : toCelsius(before, unit),
    wanted: after === null ? null : toCelsius(after, unit),
    unit,
  };
  const words = { hours_now: "hours_now", hours_wanted: "hours", temp_now: "temp_now", temp_wanted: "temp" };
  return input.named(words, () => yeastForTime(1, hours(now), hours(wanted), temps));
}

function yeastFor(formula: Formula, factors: readonly number[], factor: number, line: string): Changed {
  const some = ofKind(formula.rows, "yeast");
  const edit = editOf(formula);
  for (const { id, amount } of some) edit.set(id, amount * factor);
  const now = shareOf(formula.rows, "yeast");
  const after = edit.done(formula);
  mustHoldApart(after);
  const [low = 1, middle = 1, high = 1] = factors;
  return {
    formula: after,
    line,
    rows: edit.moved(),
    parts: [],
    notes: [
      `Yeast: low ${shownShare(low * now)}, middle ${shownShare(middle * now)}, high ${shownShare(high * now)} of flour. These are estimates: bake one tray first.`,
      ...(formula.setApart === null || formula.setApart.sort === "levain"
        ? []
        : [`Yeast of the ${formula.setApart.sort} stays: only that of the final mix changes.`]),
    ],
    cautions: keptCold(formula),
  };
}

/** A levain's share follows the inverse rule as yeast does; nobody has measured how far that holds. */
function levainFor(formula: Formula, factors: readonly number[], factor: number): Changed {
  const now = prefermented(formula);
  const changed = withPreferment(formula, { share: now * factor });
  const [low = 1, middle = 1, high = 1] = factors;
  return {
    ...changed,
    line: `Levain ${shownShare(now, 1)} to ${shownShare(now * factor, 1)} of flour for another time`,
    notes: [
      `Estimate: prefermented flour low ${shownShare(low * now, 1)}, middle ${shownShare(middle * now, 1)}, high ${shownShare(high * now, 1)}. The rule is one for yeast, and a levain is more or less lively. Bake one tray first.`,
      ...changed.notes,
    ],
    cautions: keptCold(formula),
  };
}

const PERISHABLE = ["egg", "dairy"] as const;

/** Local rules decide how long such a dough may stand, and how warm. */
export const keptCold = ({ rows }: Formula): string[] =>
  ofKind(rows, ...PERISHABLE).some(({ amount }) => amount > 0)
    ? ["Keep dough with egg or dairy cold, and no longer than your local food rules allow."]
    : [];

function lineOf(formula: Formula, values: Readonly<Record<string, string>>): string {
  const input = fieldReader(yeastTime.fields(formula), values);
  const of = (name: string) => input.text(name);
  const unit = formula.options.temperature;
  const times = of("hours_now") === of("hours") ? "" : `${of("hours_now")} h to ${of("hours")} h`;
  const temps = of("temp_now") === of("temp") ? "" : `${of("temp_now")} °${unit} to ${of("temp")} °${unit}`;
  return `Yeast for ${[times, temps].filter((one) => one !== "").join(", ") || "the same time"}`;
}

const FERMENTS = /\b(rise|proof|prove|ferment|fermentation|bulk|floor time)\b/i;

/** What the method gives for rise and proof. */
export function hoursOf({ steps }: Formula): string {
  const total = steps.reduce((sum, { name, minutes }) => sum + (FERMENTS.test(name) ? (minutes ?? 0) : 0), 0);
  return total > 0 ? showNumber(total / 60) : "";
}

const tempOf = ({ temp }: Formula): string => (temp === null ? "" : showNumber(temp, 1));
