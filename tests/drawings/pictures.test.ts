import { describe, expect, test } from "vitest";
import { readDuration, readTime, shownDuration, shownTime } from "../../shared/base/clock.ts";
import { minutes, weight } from "../../shared/base/units.ts";
import { barHeight, kindBar, kindParts } from "../../shared/drawings/kind-bar.ts";
import { stepBars } from "../../shared/drawings/step-bars.ts";
import { countedBack, ripeningBefore } from "../../shared/formula/steps.ts";
import { type Kind, kind } from "../../shared/larder/kinds.ts";

const kindsOf = (...words: string[]): Kind[] => words.map((word) => kind().read(word) as Kind);

describe("a formula as a bar", () => {
  const kinds = kindsOf("flour", "water", "salt", "yeast", "flour", "levain 100%");
  const weights = [600, 630, 20, 10, 400, 340].map(weight);
  const parts = kindParts(weights, kinds);

  test("rows of one kind are one part, flour first, salt and yeast last", () => {
    // 1000 of 2000; 340, 630, 20 and 10 of 2000
    expect(parts.map(({ word, share }) => [word, share])).toEqual([
      ["flour", 0.5],
      ["preferment", 0.17],
      ["water", 0.315],
      ["salt", 0.01],
      ["yeast", 0.005],
    ]);
  });

  test("its parts fill it, in proportion, and the labels keep apart in their order", () => {
    const height = barHeight(parts, 14, 120);
    const bar = kindBar(parts, height, 14);
    expect(bar[0]?.from).toBe(0);
    expect(bar[bar.length - 1]?.to).toBeCloseTo(height, 9);
    for (const [at, part] of bar.entries()) {
      expect((part.to - part.from) / height).toBeCloseTo(part.share, 9);
      const next = bar[at + 1];
      if (next === undefined) continue;
      expect(next.from).toBeCloseTo(part.to, 9);
      expect(next.label - part.label).toBeGreaterThanOrEqual(14 - 1e-9);
    }
    expect(bar.every(({ label }) => label >= 0 && label <= height)).toBe(true);
  });

  test("twelve kinds have room, and nothing is no bar", () => {
    const many = kindParts(
      Array.from({ length: 12 }, (_, at) => weight(at === 0 ? 10_000 : 1)),
      kindsOf("flour", "water", "salt", "yeast", "sugar", "fat", "egg", "dairy", "grain", "fruit", "ice", "other"),
    );
    expect(many).toHaveLength(12);
    const bar = kindBar(many, barHeight(many, 14, 120), 14);
    for (const [at, { label }] of bar.entries())
      if (at > 0) expect(label - (bar[at - 1]?.label ?? 0)).toBeCloseTo(14, 9);
    expect(kindParts([null, weight(0)], kindsOf("flour", "water"))).toEqual([]);
  });
});

describe("steps on a line of time", () => {
  const steps = [
    ["Mix", 20],
    ["Bulk fermentation", 700],
    ["Bake", 40],
    ["Cool", 60],
  ] as const;
  // Worked out by hand: 10 trays in loads of 6 are 40 + 10 + 40 = 90 minutes; 07:00 − 60 − 90 is 04:30; − 700 is 16:50 the day before.
  const timed = countedBack(
    steps.map(([name, long]) => ({ name, minutes: minutes(long) })),
    minutes(420),
    { step: "bake", count: 10, takes: 6, reload: minutes(10) },
  );

  test("starts are counted back across midnight", () => {
    expect(timed.map(({ name, start, minutes: long }) => [name, start, long])).toEqual([
      ["Mix", -450, 20],
      ["Bulk fermentation", -430, 700],
      ["Bake", 270, 90],
      ["Cool", 360, 60],
    ]);
    // 14 h before 16:30 of the day before: 02:30 of that day
    expect(ripeningBefore(timed, "mix", "Poolish ripens", 14)).toEqual({
      name: "Poolish ripens",
      minutes: 840,
      start: -1290,
    });
    expect(ripeningBefore(timed, "Fold", "Poolish ripens", 14)).toBeNull();
  });

  test("bars begin and end where their steps do, midnight between them", () => {
    const line = stepBars(timed, 261);
    if (line === null) throw new Error("there is no line");
    // 870 minutes on 261 units: 0.3 each
    expect(line.bars.map(({ left }) => Math.round(left * 1e6) / 1e6)).toEqual([0, 6, 216, 243]);
    expect(line.bars.map(({ width }) => Math.round(width * 1e6) / 1e6)).toEqual([6, 210, 27, 18]);
    expect(line.midnights.map((at) => Math.round(at * 1e6) / 1e6)).toEqual([135]);
    expect(line.says).toBe(
      "16:30 the day before Mix, 20 min; 16:50 the day before Bulk fermentation, 11 h 40 min; 04:30 Bake, 1 h 30 min; 06:00 Cool, 1 h; ready at 07:00.",
    );
    expect(stepBars([], 261)).toBeNull();
  });

  test("a step of a minute in days is still seen, and stays on the line", () => {
    const long = countedBack(
      [
        { name: "Rest", minutes: minutes(4000) },
        { name: "Bake", minutes: minutes(1) },
      ],
      minutes(60),
      { step: "", count: null, takes: null, reload: minutes(0) },
    );
    const line = stepBars(long, 200);
    expect(line?.bars[1]?.width).toBe(2);
    expect((line?.bars[1]?.left ?? 0) + 2).toBeLessThanOrEqual(200);
    expect(line?.midnights).toHaveLength(3);
    expect(line?.bars[0]).toMatchObject({ time: "06:19", day: "3 days before" });
  });
});

describe("times and durations as people type them", () => {
  test.each([
    ["7", "07:00"],
    ["7:00", "07:00"],
    ["06.30", "06:30"],
    ["5h20", "05:20"],
    ["6:30 pm", "18:30"],
    ["12 am", "00:00"],
    ["12:15 p.m.", "12:15"],
    ["23:59", "23:59"],
  ])("%s is %s", (text, shown) => {
    const read = readTime(text);
    expect(typeof read === "number" ? shownTime(read) : read).toBe(shown);
  });
  test.each(["24:00", "7:60", "13 pm", "0 am", "soon", "-1", ""])("%s is no time", (text) => {
    expect(readTime(text)).toMatchObject({ says: expect.stringContaining("no time of day") });
  });
  test.each([
    ["90", 90],
    ["90 min", 90],
    ["1,5 h", 90],
    ["12 h", 720],
    ["1 h 30", 90],
    ["1 h 30 min", 90],
    ["18 hours", 1080],
    ["1:30", 90],
    ["2 1/2 h", 150],
  ])("%s is %s minutes", (text, expected) => expect(readDuration(text)).toBe(expected));
  test.each(["long", "-5", "1 y", "99999 h"])("%s is no duration", (text) => {
    expect(readDuration(text)).toHaveProperty("says");
  });
  test.each([
    [0, "0 min"],
    [60, "1 h"],
    [750, "12 h 30 min"],
  ])("%s minutes are %s", (long, shown) => expect(shownDuration(minutes(long))).toBe(shown));
});
