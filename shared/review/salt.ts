import { bandOf } from "./bands.ts";
import { ofKind, outside, type Row, sentence, sideOf, sumOf, type Told } from "./remark.ts";

/** The salt of all rows against the style's band. */
export function reviewSalt(rows: readonly Row[], told: Told): void {
  const salt = ofKind(rows, "salt");
  const band = bandOf(told.style.salt);
  const side = sideOf(sumOf(salt), band);
  if (side === null) return;
  const amount = sumOf(salt);
  const says = sentence("Salt", amount, side, band, told);
  const [first] = salt;
  const of = first === undefined ? "salt" : undefined;
  told.remark(first?.index ?? told.whole, says, outside(amount, side, band, "essential"), { of, topic: "salt", side });
}
