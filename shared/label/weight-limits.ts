import { refuse } from "../base/refusal.ts";
import { atMost, countUp } from "../base/scaling.ts";
import { type Grams, grams } from "../base/units.ts";
import type { LabelLaw } from "../enrichment/protein.ts";

/** The rule covers nominal quantities from 5 g to 10 kg (Directive 76/211/EEC, from memory). */
export const MIN_NOMINAL = 5;
export const MAX_NOMINAL = 10_000;

/**
 * Tolerable negative error by nominal weight up to `to` grams: a share of it or a fixed weight. From memory: Directive
 * 76/211/EEC, annex I; the UK's Weights and Measures (Packaged Goods) Regulations 2006 have the same table. The bands meet
 * at their ends.
 */
const TOLERANCES: readonly { readonly to: number; readonly share?: number; readonly fixed?: number }[] = [
  { to: 50, share: 0.09 },
  { to: 100, fixed: 4.5 },
  { to: 200, share: 0.045 },
  { to: 300, fixed: 9 },
  { to: 500, share: 0.03 },
  { to: 1000, fixed: 15 },
  { to: MAX_NOMINAL, share: 0.015 },
];

/** A tolerance that is a share is rounded up to the next tenth of a gram (the same table's note, from memory). */
function tolerance(nominal: number): number {
  const { share = 0, fixed } = TOLERANCES.find(({ to }) => atMost(nominal, to)) ?? {};
  return fixed ?? countUp(share * nominal * 10) / 10;
}

/**
 * The average-weight rule for packs of one nominal weight: the average to hold, the weight that at most one pack in forty
 * may fall below, and the weight that none may fall below.
 */
export function weightLimits(nominal: Grams, law: LabelLaw): { average: Grams; tolerance: Grams; absolute: Grams } {
  if (law === "US") {
    refuse(
      'is "US", whose rule is in NIST Handbook 133, table 2-5. The average must reach the label. Ask your weights and measures office',
      "law",
    );
  }
  const allowed = tolerance(nominal);
  return { average: nominal, tolerance: grams(nominal - allowed), absolute: grams(nominal - 2 * allowed) };
}
