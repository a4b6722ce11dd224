// What a broken page or another program might ask of the formula history: a sentence, and nothing else.
import { describe, expect, test } from "vitest";
import { contentText, readContent } from "../../shared/adjust/content.ts";
import { Refusal } from "../../shared/base/refusal.ts";
import { readHistoryAnswer, readHistoryAsk, readReviseAnswer, readReviseAsk } from "../../shared/protocol/history.ts";

const WHOLE = {
  sheet: "Loaf",
  id: 7,
  seen: 1,
  title: "Loaf",
  when: "2026-11-30 06:05 +01:00",
  day: 46_356,
  before: "{}",
  beforeLine: "Edited by hand",
  after: "{}",
  line: "Salt 2 % to 1.8 %",
  inserts: [{ after: 3, many: 1 }],
  writes: [{ row: 3, column: 0, cells: [["Salt"], [0.02]] }],
  stamps: [{ row: 0, column: 8, is: "number" }],
};
const HOSTILE = [
  null,
  undefined,
  [],
  {},
  "x".repeat(400_000),
  -1,
  1.5,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  true,
  [[]],
  [{}],
  { row: -1 },
];

function mustRefuse(work: () => unknown): void {
  try {
    work();
  } catch (error) {
    expect(error).toBeInstanceOf(Refusal);
    expect((error as Error).message).toMatch(/could not be read\. Close Gramwright and open it again\.$/);
  }
}

describe("a change of a formula", () => {
  test("goes through whole, as it was planned", () => expect(readReviseAsk(WHOLE)).toEqual(WHOLE));

  test.each(Object.keys(WHOLE))("with anything else as its %s is refused in a sentence", (name) => {
    for (const value of HOSTILE) mustRefuse(() => readReviseAsk({ ...WHOLE, [name]: value }));
  });

  test.each([
    ["a cell that is an object", { writes: [{ row: 0, column: 0, cells: [[{}]] }] }],
    ["a cell that is no number", { writes: [{ row: 0, column: 0, cells: [[Number.NaN]] }] }],
    ["a row above the sheet", { writes: [{ row: -1, column: 0, cells: [[1]] }] }],
    ["a stamp of something else", { stamps: [{ row: 0, column: 0, is: "owner" }] }],
    ["a thousand rows", { inserts: [{ after: 0, many: 1000 }] }],
  ])("%s", (_says, part) => expect(() => readReviseAsk({ ...WHOLE, ...part })).toThrow(Refusal));

  test("answers of an add-on that is another version are refused", () => {
    for (const raw of HOSTILE) {
      expect(() => readHistoryAnswer(raw)).toThrow(Refusal);
      expect(() => readReviseAnswer(raw)).toThrow(Refusal);
    }
    expect(readHistoryAsk({}).id).toBeNull();
    expect(() => readHistoryAsk({ id: "7" })).toThrow(Refusal);
  });
});

describe("what is kept of a formula", () => {
  const content = {
    template: "pan-loaf",
    units: { weight: "g", temperature: "C", length: "cm" },
    tables: {
      rows: [
        ["=Rye", "flour", 1],
        [null, null, null],
        ["007", "water", 0.1 + 0.2],
      ],
      sizes: [
        ["large", 700, 0.11, null],
        [null, null, null, null],
      ],
      steps: [["1/2", 20, null, 'Mix, "well"']],
    },
    cells: { pre_share: null, tin_shape: "box", tin_size_1: 21 },
  } as const;

  test("is the same text however many blank rows there are, and reads back equal", () => {
    const text = contentText(content);
    const blanks = [...content.tables.rows, [null, "", null]] as const;
    expect(contentText({ ...content, tables: { ...content.tables, rows: blanks } })).toBe(text);
    expect(contentText(readContent(text))).toBe(text);
    // A version from when the area of a size was kept behind it.
    expect(contentText(readContent(text.replace("0.11,null]", "0.11,null,49]")))).toBe(text);
    expect(readContent(text).tables.rows).toEqual([
      ["=Rye", "flour", 1],
      ["007", "water", 0.3],
    ]);
  });

  test("a version that somebody typed into is refused, not guessed", () => {
    for (const text of [
      "",
      "x",
      "[]",
      "{}",
      '{"template":"a"}',
      contentText(content).replace("0.3", "{}"),
      contentText(content).slice(1),
    ])
      expect(() => readContent(text), text).toThrow(/The version in the formula history could not be read/);
  });
});
