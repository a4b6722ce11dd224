// Every text of the corpus against what was written down beside it; figures by shape are printed.
import { describe, expect, test } from "vitest";
import { SHAPES } from "./corpus.ts";
import { type Case, differences } from "./corpus-support.ts";

const demandsNone = ({ asks }: Case): boolean => (asks ?? []).length === 0;

test("there are at least 160 texts, 60 of them sealed", () => {
  const many = (of: RegExp) =>
    Object.entries(SHAPES).reduce((all, [shape, cases]) => all + (of.test(shape) ? cases.length : 0), 0);
  expect(many(/./)).toBeGreaterThanOrEqual(160);
  expect(many(/sealed/)).toBe(60);
});

describe.each(Object.entries(SHAPES))("%s", (shape, cases) => {
  const read = cases.map((one) => ({ one, ...differences(one) }));

  test("no row is wrong without a question", () => {
    const silent = read.filter((each) => each.silent.length > 0);
    expect(silent.map(({ one, silent: wrong }) => `${one.text.slice(0, 60)} … ${wrong.join("; ")}`)).toEqual([]);
  });

  test("what demands no question is read without one, nine in ten at least", () => {
    const plain = read.filter(({ one }) => demandsNone(one));
    const right = plain.filter(({ all }) => all.length === 0);
    const asked = read.filter(({ one }) => !demandsNone(one));
    const askedRight = asked.filter(({ all }) => all.length === 0);
    console.info(
      `${shape}: ${right.length} of ${plain.length} wholly right, ${askedRight.length} of ${asked.length} that demand a question`,
    );
    const wrong = read.filter(({ all }) => all.length > 0);
    expect(
      right.length / plain.length,
      wrong.map(({ one, all }) => `${one.text.slice(0, 60)} … ${all.join("; ")}`).join("\n"),
    ).toBeGreaterThanOrEqual(0.9);
    expect(
      askedRight.length,
      wrong.map(({ one, all }) => `${one.text.slice(0, 60)} … ${all.join("; ")}`).join("\n"),
    ).toBe(asked.length);
  });
});
