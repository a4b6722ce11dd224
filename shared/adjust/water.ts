// Hydration to a figure: what is poured follows, what eggs, milk, butter and preferments bring counts where it is asked for.
import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownShare } from "../base/show.ts";
import { ratio, weight } from "../base/units.ts";
import { hydrationOf, plainWater } from "../enrichment/enrichment.ts";
import type { Larder } from "../larder/larder.ts";
import type { Change, Field } from "./change.ts";
import { editOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { allFlour, amountOf, ofKind, plainHydration, type Row } from "./formula.ts";
import { mustHoldApart } from "./row-limits.ts";

export const PLAIN = "plain: water, and that of preferments";
const EFFECTIVE = "effective: with eggs, milk, butter";
const COUNTED = [PLAIN, EFFECTIVE] as const;

export const hydration: Change = {
  name: "hydration",
  group: "Water",
  label: "Hydration to …",
  words: "water wetter drier slack stiff softer firmer effective absorption weaker flour",
  fields: ({ rows }): Field[] => [
    {
      name: "counted",
      label: "What counts",
      choices: COUNTED,
      start: ofKind(rows, "egg", "dairy", "fat").length > 0 ? EFFECTIVE : PLAIN,
    },
    { name: "wanted", label: "Hydration wanted (%)", start: "" },
  ],
  apply: (formula, values, larder) => {
    const input = fieldReader(hydration.fields(formula), values);
    const wanted = input.share("wanted", { min: 0.2, max: 3 });
    const isPlain = input.choice("counted", COUNTED) === PLAIN;
    const { rows } = formula;
    const edit = editOf(formula);
    const now = isPlain ? plainHydration(rows) : effectiveHydration(rows, larder);
    if (!isPlain) mustLeaveRoom(wanted, rows, larder);
    const poured = amountOf(ofKind(rows, "water", "ice"));
    const needed = isPlain
      ? poured + (wanted - now) * allFlour(rows)
      : plainWater(...columns(rows), ratio(wanted), larder);
    edit.water(needed - poured, "That hydration");
    const after = edit.done(formula);
    mustHoldApart(after);
    const what = isPlain ? "Hydration" : "Effective hydration";
    return {
      formula: after,
      line: `${what} ${shownShare(now, 1)} to ${shownShare(wanted, 1)}`,
      rows: edit.moved(),
      parts: [],
      notes: isPlain
        ? []
        : ["Water in eggs, milk, butter, fresh yeast and preferments counts. Only the water that is poured changes."],
      cautions: [],
    };
  },
};

/** Where eggs, milk and preferments bring more than is wanted, no less water that is poured makes up for it. */
function mustLeaveRoom(wanted: number, rows: readonly Row[], larder: Larder): void {
  const brought = effectiveHydration(rows, larder) - amountOf(ofKind(rows, "water", "ice")) / allFlour(rows);
  if (atMost(brought, wanted)) return;
  refuse(
    `Eggs, milk, butter, fresh yeast and preferments bring ${shownShare(brought)} of water by themselves, more than ${shownShare(wanted)}. Enter a higher hydration, or use less of them.`,
  );
}

/** Names, weights and kinds of rows, as the functions take them. */
export const columns = (rows: readonly Row[]) =>
  [rows.map(({ name }) => name), rows.map(({ amount }) => weight(amount)), rows.map(({ kind }) => kind)] as const;

export const effectiveHydration = (rows: readonly Row[], larder: Larder): number =>
  hydrationOf(...columns(rows), larder);
