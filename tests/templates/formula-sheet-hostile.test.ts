// A wrong number never stands beside a blank check line, whatever is typed into a formula sheet or over it.
import { describe, expect, test } from "vitest";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { type Tried, verdict } from "./formula-sheet-page.ts";
import {
  contentSlip,
  keeping,
  NAMES,
  NUMBERS,
  oneOf,
  otherCells,
  overSlip,
  put,
  randomFrom,
} from "./formula-sheet-slips.ts";
import {
  KINDS,
  type Kind,
  ONE_OF_EACH,
  opened,
  outcome,
  TRIED_KINDS,
  trialOf,
  trySlips,
} from "./formula-sheet-trials.ts";

/** So many slips on one copy, before its list of what could be undone grows too long. */
const TOGETHER = 40;
const SEED = seedOf(19);
const all = outcome();

describe.each(TRIED_KINDS)("$says", (kind) => {
  test("hostile contents and cells typed over", async () => {
    const trial = await trialOf(kind);
    const random = randomFrom(SEED + KINDS.indexOf(kind));
    const found = outcome();
    const wanted = tries(4);
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
    all.slips += found.slips;
    all.named += found.named;
  });
});

test("much of what is hostile is named: a sheet that never says anything would pass as well", () => {
  expect(all.named).toBeGreaterThanOrEqual(all.slips / 3);
});

describe("every content that is tried, where a type or a percentage belongs", () => {
  test.each(IS_LONG ? ONE_OF_EACH : ONE_OF_EACH.filter((_, at) => at % 2 === 1))("$says", async (kind) => {
    const tried = await opened(await trialOf(kind), kind.model.name === "cake" ? "batter" : "dough");
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
  for (const text of ["levain 62,54%", "levain 62.54%", "levain 1.2.5%"]) {
    put(tried, tried.sheet.at("kind", 3), text);
    expect(verdict(tried).check).toContain(`“${text}” is no type`);
  }
  for (const text of ["levain 62,5%", "62.5 % levain"]) {
    put(tried, tried.sheet.at("kind", 3), text);
    expect(tried.sheet.value("flour_part", 3)).toBeCloseTo(1 / 1.625, 12);
  }
  put(tried, tried.sheet.at("kind", 3), "water 60%");
  expect(verdict(tried).check).toMatch(/“water 60%” is no type/);
});

/** Cells of the page that only show, each in a row of its table or by itself. */
const SHOWN_CELLS = [
  "weight",
  "of_whole",
  "cost_shown",
  "scaled_shown",
  "dough_shown",
  "cost_each",
  "margin_shown",
  "start_shown",
  "day_shown",
];

describe.each(IS_LONG ? ONE_OF_EACH : ONE_OF_EACH.filter((_, at) => at % 2 === 0))(
  "a slip costs no more than its own: $says",
  (kind) => {
    test("scaled to flour, whatever cannot be read leaves all other figures right", async () => {
      const tried = await opened(await trialOf(kind, kind.model.name === "cookie" ? TWO_SIZES : {}), "flour");
      const typed = [
        "percent",
        "price_typed",
        "size_pieces",
        "size_weight",
        "size_loss",
        "size_diameter",
        "size_price",
        "step_minutes",
        "step_temp",
      ];
      const singles = [
        "room_temp",
        "tap_temp",
        "minutes",
        "held_share",
        "ready",
        "oven_takes",
        "tax",
        "labour_rate",
        "overhead_labour",
      ];
      const isThere = (name: string) => tried.sheet.names().includes(name);
      const cells = [
        ...typed.filter(isThere).map((name) => [name, 2] as const),
        ...singles.filter(isThere).map((name) => [name, undefined] as const),
      ];
      for (const [name, row] of cells) {
        const at = row === undefined ? tried.sheet.at(name) : tried.sheet.at(name, row);
        // An error in a single cell shows itself in all that is worked out from it.
        for (const text of row === undefined ? ["'12 x"] : ["'12 x", "=1/0"]) {
          const takeBack = keeping(tried, at);
          put(tried, at, text);
          const { check, off, blank } = verdict(tried);
          expect(check, `${name} ${text}`).not.toBe("");
          expect([...off, ...blank.filter((one) => !MAY_BE_BLANK.test(one))], `${name} ${text}`).toEqual([]);
          tried.book.engine.together(takeBack);
        }
      }
      expect(verdict(tried).check).toBe("");
    });

    test("typed over, a column shows its typed cell alone, and all others go on", async () => {
      const tried = await opened(await trialOf(kind), kind.model.name === "cake" ? "batter" : "dough");
      for (const name of [...SHOWN_CELLS, ...(kind.isStaged ? ["pre_shown", "final_shown"] : ["per_mix"])]) {
        const place = SIZE_CELLS.includes(name) ? lastSize(kind) : 2;
        const at = tried.sheet.at(name, place);
        put(tried, at, "0.5");
        const { check, off, blank } = verdict(tried);
        const row = tried.sheet.rowOf(name, place);
        expect(check, name).toMatch(new RegExp(`typed over .*row ${row}`));
        expect(
          off.every((one) => one.startsWith(`${name}@`)),
          off.join("; "),
        ).toBe(true);
        expect(blank.filter((one) => !one.startsWith(`${name}@`) && !MAY_BE_BLANK.test(one))).toEqual([]);
        tried.sheet.type(at, "");
        expect(verdict(tried)).toMatchObject({ check: "", wrong: [] });
      }
    });
  },
);

const SIZE_CELLS = ["scaled_shown", "dough_shown", "cost_each", "margin_shown"];
/** In ounces. */
const TWO_SIZES = {
  size_name: ["cookie", "bite"],
  size_pieces: [200, 90],
  size_weight: [2.1, 1],
  size_loss: [0.12, 0.1],
};
/** The last size that is filled in: a slip in the first one takes what a tray or a tin holds with it. */
const lastSize = ({ model }: Kind): number =>
  Math.max(1, (model.sample.size_name as string[] | undefined)?.length ?? 2);

/** Blank where the figure is 0 or nothing was typed. */
const MAY_BE_BLANK = /^(price_shown|pre_|tin_dough_shown|held_|water_final)/;
