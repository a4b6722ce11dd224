// A wrong number never stands beside a blank check line when rows and columns are inserted, deleted, moved, sorted and hidden.
import { describe, expect, test } from "vitest";
import { IS_LONG, seedOf, tries } from "../kit/scale.ts";
import { type Tried, verdict } from "./formula-sheet-page.ts";
import { oneOf, put, randomFrom, rowSlip, type Slip } from "./formula-sheet-slips.ts";
import { KINDS, type Kind, opened, outcome, TRIED_KINDS, trialOf, trySlip } from "./formula-sheet-trials.ts";

const SEED = seedOf(20);
/** What the grid does not do at all. */
const REFUSED = /refused|cannot be moved|is not in/;

describe.each(TRIED_KINDS)("$says", (kind) => {
  test("rows and columns moved about", async () => {
    const trial = await trialOf(kind);
    const random = randomFrom(SEED + KINDS.indexOf(kind));
    const found = outcome();
    const wanted = tries(2);
    for (let at = 0; at < wanted; at++) {
      const tried = await opened(trial, oneOf(kind.ways, random));
      const slip = rowSlip(tried, random);
      try {
        trySlip(tried, slip, found);
      } catch (error) {
        expect(String(error), slip.says).toMatch(REFUSED);
      }
    }
    if (IS_LONG) console.info(`${kind.says}: ${found.slips} slips, ${found.figures} figures, ${found.named} named`);
    expect(found.wrong).toEqual([]);
  });
});

describe("each way of losing or misplacing a row", () => {
  test.each([
    ["a row under the headings", (one) => one.sheet.insertRows(one.sheet.rowOf("percent", 0))],
    ["a row in the middle", (one) => insertFilled(one, one.sheet.rowOf("percent", 3))],
    ["a row above the total", (one) => insertFilled(one, one.sheet.rowOf("total_label"))],
    ["a row below the total", (one) => insertFilled(one, one.sheet.rowOf("total_label") + 1)],
    ["the hidden row deleted", (one) => one.sheet.deleteRows(one.sheet.rowOf("percent", 0))],
    ["the total deleted", (one) => one.sheet.deleteRows(one.sheet.rowOf("total_label"))],
    ["the headings deleted", (one) => one.sheet.deleteRows(one.sheet.rowOf("percent", 0) - 1)],
    ["an ingredient deleted", (one) => one.sheet.deleteRows(one.sheet.rowOf("percent", 4))],
    ["a size below the sizes", (one) => put(one, `A${one.sheet.rowOf("formula_table") - 1}`, "long\t10\t500\t0.1")],
    ["a step under the headings", (one) => insertFilled(one, one.sheet.rowOf("step", 0))],
    [
      "a step below the method",
      (one) => put(one, `A${one.sheet.rowOf("step", 0) + one.sheet.rows("step")}`, "Rest\t20"),
    ],
    ["a margin below the sizes", (one) => put(one, below(one, "wanted_shown", one.sheet.rowOf("formula_table")), "7")],
    ["a weight below the total", (one) => put(one, below(one, "weight", one.sheet.rowOf("total_label") + 2), "7")],
    ["a cost below the total", (one) => put(one, below(one, "cost_shown", one.sheet.rowOf("total_label") + 2), "7")],
    ["a time below the method", (one) => put(one, below(one, "start_shown", one.sheet.rowOf("limit_label") - 1), "7")],
    ["a day below the method", (one) => put(one, below(one, "day_shown", one.sheet.rowOf("limit_label") - 1), "7")],
    ["typed into the hidden row", (one) => put(one, one.sheet.at("percent", 0), "0.5")],
    ["typed into a hidden formula", (one) => put(one, one.sheet.at("weight", 0), "5")],
    [
      "the total moved up",
      (one) => one.sheet.moveRows(one.sheet.rowOf("total_label"), 1, one.sheet.rowOf("percent", 4)),
    ],
    [
      "the hidden row moved down",
      (one) => one.sheet.moveRows(one.sheet.rowOf("percent", 0), 1, one.sheet.rowOf("percent", 3)),
    ],
  ] satisfies readonly (readonly [string, Slip["act"]])[])("%s", async (says, act) => {
    // All of them in a long run, otherwise another one each time.
    const another = TRIED_KINDS[says.length % TRIED_KINDS.length] as Kind;
    for (const kind of IS_LONG ? KINDS : [another]) {
      const found = outcome();
      trySlip(await opened(await trialOf(kind), "dough"), { says, act }, found);
      expect(found.wrong).toEqual([]);
    }
  });
});

describe("a row dragged into a table that it is no part of", () => {
  const tables = ["size_name", "ingredient", "step"] as const;
  test.each([0, 2] as const)("kind %i", async (which) => {
    const kind = KINDS[which] as Kind;
    const trial = await trialOf(kind);
    const random = randomFrom(SEED + 100 + which);
    const found = outcome();
    for (let at = 0; at < tries(4); at++) {
      const one = await opened(trial, oneOf(kind.ways, random));
      const table = oneOf(tables, random);
      const rows = [...ownRows(one.sheet)].filter((row) => row !== one.sheet.rowOf(table, 0));
      const [from, many] = [oneOf(rows, random), oneOf([1, 1, 2], random)];
      const to = one.sheet.rowOf(table, 1 + Math.floor(random(one.sheet.rows(table) - 2)));
      if (to >= from && to <= from + many) continue;
      trySlip(one, { says: `${many} from ${from} before ${to}`, act: () => one.sheet.moveRows(from, many, to) }, found);
    }
    expect(found.named).toBe(found.slips);
    expect(found.wrong).toEqual([]);
  });
});

/** Rows that have a place of their own: those of blocks, of headings and of hidden formulas. */
function ownRows(sheet: Tried["sheet"]): ReadonlySet<number> {
  const marks = sheet.names().filter((name) => /_mark_(left|right)_(\d+|top)$/.test(name));
  return new Set(marks.map((name) => sheet.rowOf(name)));
}

test("blank rows dragged through the tables change nothing", async () => {
  const kind = KINDS[2] as Kind;
  for (const table of ["size_name", "ingredient", "step"]) {
    const one = await opened(await trialOf(kind));
    const before = verdict(one);
    const spare = one.sheet.rowOf(table, one.sheet.rows(table) - 3);
    one.sheet.moveRows(spare, 1, one.sheet.rowOf(table, 1));
    const { check, wrong, blank, figures } = verdict(one);
    expect([table, check, wrong]).toEqual([table, "", []]);
    expect([figures, blank.length]).toEqual([before.figures, before.blank.length]);
  }
});

/** The cell of a column in the row above another one. */
const below = ({ sheet }: Tried, column: string, row: number) =>
  `${/^[A-Z]+/.exec(sheet.at(column, 0))?.[0]}${row - 1}`;

function insertFilled(one: Tried, row: number): void {
  one.sheet.insertRows(row);
  put(one, `A${row}`, "Extra\tsugar\t0.05");
}

test("a row in the middle and one above the total count at once", async () => {
  const kind = KINDS[0] as Kind;
  const tried = await opened(await trialOf(kind), "flour");
  insertFilled(tried, tried.sheet.rowOf("percent", 3));
  insertFilled(tried, tried.sheet.rowOf("total_label"));
  const { check, wrong, blank } = verdict(tried);
  expect([check, ...wrong, ...blank.filter((name) => !name.startsWith("price_shown"))]).toEqual([""]);
});
