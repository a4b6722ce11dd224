// The one-file page reminds a person daily of what no file holds yet.
import { expect, test } from "vitest";
import { isFileDue } from "../../src/workbook/page/browser-store.ts";

const at = (day: number, hour: number): number => new Date(2026, 11, day, hour).getTime();
const entry = (revision: string, filed?: { revision: string; at: number }) => ({
  id: "a",
  text: "",
  revision,
  at: at(1, 5),
  by: "0.1.0",
  ...(filed === undefined ? {} : { filed }),
});

test.each([
  ["never saved as a file", entry("second"), at(1, 6), true],
  ["saved as it is, the same day", entry("first", { revision: "first", at: at(1, 5) }), at(1, 6), false],
  ["changed since, the same day", entry("second", { revision: "first", at: at(1, 5) }), at(1, 23), false],
  ["changed since, on the day after", entry("second", { revision: "first", at: at(1, 23) }), at(2, 0), true],
  ["unchanged for a week", entry("first", { revision: "first", at: at(1, 5) }), at(8, 5), false],
])("%s", (_says, kept, now, isDue) => expect(isFileDue(kept, now)).toBe(isDue));
