import { expect, test } from "vitest";
import { unpackedLarder } from "../../shared/larder/larder-packing.ts";
import { larderLines } from "../../shared/larder/larder-rows.ts";
import { packedLarder } from "../../src/build/packed-larder.ts";

/** Without the number of its source, and figures as numbers: 0.10 is 0.1. */
const fieldsOf = (line: string) =>
  line
    .split("\t")
    .map((field, at) => (at === 2 ? "" : at >= 3 && at <= 12 && field !== "" ? String(Number(field)) : field));

test("the packed table is the table", () => {
  const { text, signs, entries, figures } = packedLarder(larderLines());
  expect(unpackedLarder(text, signs, entries, figures).map(fieldsOf)).toEqual(larderLines().map(fieldsOf));
});

test("it is half as long, which is what it is for", () => {
  const { text, signs, entries, figures } = packedLarder(larderLines());
  const long = Buffer.byteLength(larderLines().join("\n"));
  expect(Buffer.byteLength(text + signs + entries + figures)).toBeLessThan(long / 2);
});

test("blanks, zeros and the largest figures come back, and a figure finer than its column is refused", () => {
  const line = (water: string, sodium: string) =>
    [
      "oats, so called",
      "grain",
      "",
      water,
      "0",
      "",
      "0.001",
      "100",
      "0.01",
      "0.1",
      sodium,
      "900",
      "99.8",
      "~0.5",
      "cup 81",
      "a;b",
      "",
    ].join("\t");
  const lines = [line("100", "38758"), line("", "0"), line("0", "110464")];
  const { text, signs, entries, figures } = packedLarder(lines);
  expect(unpackedLarder(text, signs, entries, figures).map(fieldsOf)).toEqual(lines.map(fieldsOf));
  expect(() => packedLarder([line("1.234", "0")])).toThrow(/1\.234/);
});
