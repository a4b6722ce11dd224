// What is set apart to ripen comes out of the rows: they must hold as much.
import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { shownShare } from "../base/show.ts";
import { type Formula, shareOf } from "./formula.ts";

/** Refuses a formula whose flour, water or yeast no longer reaches for the preferment that is set apart. */
export function mustHoldApart({ rows, setApart }: Formula): void {
  if (setApart === null) return;
  const { sort, share, hydration, yeast } = setApart;
  mustReach(share, shareOf(rows, "flour"), `The ${sort} takes`, "flour", "Choose a smaller share");
  mustReach(
    share * hydration,
    shareOf(rows, "water"),
    `The ${sort} takes`,
    "water",
    "Choose a smaller share, or a stiffer preferment",
  );
  if (sort !== "levain")
    mustReach(share * yeast, shareOf(rows, "yeast"), `The ${sort} takes`, "yeast", "Choose less yeast for it");
}

/** Refuses where more is taken than is there; both over all flour. */
export function mustReach(taken: number, there: number, who: string, what: string, way: string): void {
  if (atMost(taken, there)) return;
  refuse(`${who} ${shownShare(taken, 2)} of ${what}, and the formula has ${shownShare(there, 2)}. ${way}.`);
}
