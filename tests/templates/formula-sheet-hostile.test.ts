// A wrong number never stands beside a blank check line, whatever is typed into a formula sheet or over it.
import { describe, expect, test } from "vitest";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { type Tried, verdict } from "./formula-sheet-page.ts";
import { contentSlip, NAMES, NUMBERS, oneOf, otherCells, overSlip, put, randomFrom } from "./formula-sheet-slips.ts";
import { KINDS, type Kind, opened, outcome, trialOf, trySlips } from "./formula-sheet-trials.ts";

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

describe("every content that is tried, where a type or a percentage belongs", () => {
  test.each([KINDS[0], KINDS[2]] as Kind[])("$says", async (kind) => {
    const tried = await opened(await trialOf(kind), "dough");
    const found = outcome();
    const names = ["kind", "percent"].flatMap((name) => [2, 3, 4].map((row) => tried.sheet.at(name, row)));
    const slips = names.flatMap((at) =>
      (at.startsWith("B") ? NAMES : NUMBERS).map((text) => ({
        says: `${at} ${JSON.stringify(text)}`,
        at,
        act: (one: Tried) => put(one, at, text),
      })),
    );
    // All of them in a long run, otherwise those that a seed chooses.
    const random = randomFrom(SEED);
    trySlips(tried, IS_LONG ? slips : Array.from({ length: 8 }, () => oneOf(slips, random)), found);
    expect(found.wrong).toEqual([]);
  });
});

test("a type in the plural, with spaces and capitals is the type; with a percentage only a preferment is one", async () => {
  const tried = await opened(await trialOf(KINDS[2] as Kind));
  for (const [row, text] of [
    [4, "yeasts"],
    [4, " Sa\u00a0lt"],
    [5, "YEAST "],
    [3, "waters"],
    [2, "Flours"],
  ] as const) {
    put(tried, tried.sheet.at("kind", row), text);
    expect(verdict(tried)).toMatchObject({ check: "", wrong: [] });
  }
  put(tried, tried.sheet.at("kind", 3), "water 60%");
  expect(verdict(tried).check).toMatch(/“water 60%” is no type/);
});
