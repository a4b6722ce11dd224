import { bandOf } from "./bands.ts";
import { ofKind, outside, type ReviewSetting, type Row, sentence, sideOf, sumOf } from "./remark.ts";

/** The salt of all rows against the style's band. */
export function reviewSalt(rows: readonly Row[], setting: ReviewSetting): void {
  const salt = ofKind(rows, "salt");
  const band = bandOf(setting.style.salt);
  const side = sideOf(sumOf(salt), band);
  if (side === null) return;
  const amount = sumOf(salt);
  const says = sentence("Salt", amount, side, band, setting);
  const [first] = salt;
  const of = first === undefined ? "salt" : undefined;
  setting.remark(first?.index ?? setting.whole, says, outside(amount, side, band, "essential"), {
    of,
    topic: "salt",
    side,
  });
}
