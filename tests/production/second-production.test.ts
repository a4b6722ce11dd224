// Two productions of one day, as of a shop and its wholesale: what is built of one never takes the place of what is built of the other.
import { expect, test } from "vitest";
import { openBook } from "../../src/workbook/scripted.ts";
import { METRIC_UNITS } from "../kit/units.ts";
import { HANDOUT } from "../templates/sheet-support.ts";
import { pageOf } from "./week-book.ts";

const METHOD = { step: ["Mix", "Bulk", "Bake"], step_minutes: [15, 120, 40], ready: 0.25 };

test("weigh-ups, timetables, cards and delivery notes of two productions of one day and shift", async () => {
  const book = await openBook();
  const values = { ...HANDOUT, ...METHOD };
  book.answer({ ask: "build", template: "pan-loaf", options: { ...METRIC_UNITS, parts: ["steps"] }, values });
  const build = (asked: object) => (book.answer(asked) as { sheet: string }).sheet;
  const production = (pieces: number, days: readonly string[]) =>
    build({ ask: "day", day: days[0], days, orders: days.map((day) => ({ sheet: "Hand-out", pieces, day })) });
  const productions = [
    production(100, ["2026-12-05"]),
    production(40, ["2026-12-05"]),
    production(10, ["2026-12-05", "2026-12-06"]),
  ];
  expect(productions).toEqual(["Production Sat 5 Dec", "Production Sat 5 Dec (2)", "Production 5 Dec to 6 Dec"]);
  const shift = { from: "2026-12-04T20:00", to: "2026-12-05T12:00" };
  const all = (sheet: string) =>
    ["weighUp", "timetable", "cards", "customers"].map((ask) => build({ ask, sheet, ...shift }));
  const names = productions.map(all);
  expect(names).toEqual([
    ["Weigh-up Fri 4 Dec 20.00", "Timetable Fri 4 Dec 20.00", "HO-261205 Hand-out", "By customer Sat 5 Dec"],
    [
      "Weigh-up Fri 4 Dec 20.00 (2)",
      "Timetable Fri 4 Dec 20.00 (2)",
      "HO-261205 Hand-out (2)",
      "By customer Sat 5 Dec (2)",
    ],
    [
      "Weigh-up Fri 4 Dec 20.00 (3)",
      "Timetable Fri 4 Dec 20.00 (3)",
      "HO-261205 Hand-out (3)",
      "By customer 5 Dec to 6 Dec",
    ],
  ]);
  // 390 g a piece, one mix each: 39, 15.6 and 3.9 kg.
  const mixed = ([weighUp = ""]: readonly string[]) =>
    pageOf(book, weighUp)
      .shown.flat()
      .find((text) => /mix of/.test(text));
  expect(names.map(mixed)).toEqual(["☐ 1 mix of 39 kg", "☐ 1 mix of 15.6 kg", "☐ 1 mix of 3.9 kg"]);
  const made = ([, , card = ""]: readonly string[]) =>
    pageOf(book, card).values.find((row) => row[0] === "Pieces")?.[2];
  expect(names.map(made)).toEqual([100, 40, 10]);
  // Built again, each takes the place of its own.
  const tabs = [...book.sheetNames()].sort();
  expect([1, 0].map((at) => all(productions[at] ?? ""))).toEqual([names[1], names[0]]);
  expect([...book.sheetNames()].sort()).toEqual(tabs);
  expect(names.map(made)).toEqual([100, 40, 10]);
  // What is entered on the third weigh-up stays on it, and nowhere else.
  const room = (weighUp = "") => {
    const { rowOf, shown } = pageOf(book, weighUp);
    return { cell: `E${rowOf("Room") + 1}`, text: shown[rowOf("Room")]?.[4] };
  };
  const third = names[2]?.[0] ?? "";
  book.type(third, room(third).cell, "31");
  expect(build({ ask: "weighUp", sheet: productions[2], ...shift })).toBe(third);
  expect(names.map(([weighUp]) => room(weighUp).text)).toEqual(["", "", "31.0"]);
  // A shift that ends later is the same one, and takes its place; one that begins later does not.
  const timetable = (other: object) => build({ ask: "timetable", sheet: productions[0], ...shift, ...other });
  expect(timetable({ to: "2026-12-05T13:00" })).toBe("Timetable Fri 4 Dec 20.00");
  expect(timetable({ from: "2026-12-04T21:00" })).toBe("Timetable Fri 4 Dec 21.00");
  // A production that somebody gave another name has delivery notes of that name.
  book.renameSheet(productions[1] ?? "", "Wholesale");
  expect(build({ ask: "customers", sheet: "Wholesale" })).toBe("By customer, Wholesale");
});
