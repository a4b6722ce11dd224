// A wrong number never stands beside a blank check line, whatever is typed into a formula sheet or over it.
import { describe, expect, test } from "vitest";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { verdict } from "./formula-sheet-page.ts";
import { contentSlip, oneOf, otherCells, overSlip, randomFrom } from "./formula-sheet-slips.ts";
import { KINDS, opened, outcome, trialOf, trySlips } from "./formula-sheet-trials.ts";

/** So many slips on one copy, before its list of what could be undone grows too long. */
const TOGETHER = 40;
const SEED = seedOf(19);

describe.each(KINDS)("$says", (kind) => {
  test("hostile contents and cells typed over", async () => {
    const trial = await trialOf(kind);
    const random = randomFrom(SEED + KINDS.indexOf(kind));
    const found = outcome();
    const wanted = tries(20);
    while (found.slips < wanted) {
      const tried = await opened(trial, oneOf(kind.ways, random));
      const { wrong, check } = verdict(tried);
      expect([check, ...wrong]).toEqual([""]);
      const cells = otherCells(tried);
      const many = Math.min(TOGETHER, wanted - found.slips);
      const slips = Array.from({ length: many }, () =>
        random(3) < 2 ? contentSlip(tried, random) : overSlip(cells, random),
      );
      trySlips(tried, slips, found);
    }
    if (IS_LONG) console.info(`${kind.says}: ${found.slips} slips, ${found.figures} figures, ${found.named} named`);
    expect(found.wrong).toEqual([]);
    // Most of what is hostile must be named: a sheet that never says anything would pass as well.
    expect(found.named).toBeGreaterThan(found.slips / 4);
  });
});
