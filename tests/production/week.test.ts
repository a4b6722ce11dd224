// The demo shop's week, from orders to what is weighed, ordered, timed and delivered; expected figures come from the typed tables and the formulas' percentages.
import { beforeAll, describe, expect, test } from "vitest";
import { asFormulaSheet, type FormulaSheet } from "../../src/planners/formula-sheet.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { address, DAYS, MONDAY, openWeek, orderedOn, pageOf, REGULAR, SHOP, WEEK } from "./week-book.ts";

let book: WorkbookHost;
let production: string;
let calls: number;
const made = new Map<string, { sheet: string; calls: number }>();
const sheetOf = (what: string): string => made.get(what)?.sheet ?? "";
const SATURDAY = 5;
const MAX_CALLS = 40;

beforeAll(async () => {
  ({ book, production, calls } = await openWeek());
  const shift = { from: `${WEEK[3]}T00:00`, to: `${WEEK[5]}T12:00` };
  for (const [what, asked] of [
    ["order", { ask: "purchases", sheet: production }],
    ["weigh", { ask: "weighUp", sheet: production, ...shift }],
    ["times", { ask: "timetable", sheet: production }],
    ["customers", { ask: "customers", sheet: production }],
    ["card", { ask: "cards", sheet: production, from: `${WEEK[4]}T20:00`, to: `${WEEK[5]}T02:00` }],
  ] as const) {
    const { sheet } = book.answer(asked) as { sheet: string };
    made.set(what, { sheet, calls: book.trail.length });
  }
});

const formula = (name: string): FormulaSheet => {
  const read = asFormulaSheet(name, book.values(name, book.usedRange(name)));
  if (read === null) throw new Error(`${name} is no formula sheet`);
  return read;
};
/** Baker's percentages by name, and their sum. */
function parts(name: string) {
  const sheet = formula(name);
  const rows = sheet.rows.map(({ name: one, index, kind }) => ({
    name: one,
    kind,
    percent: sheet.number("percent", index) ?? 0,
  }));
  return { rows, all: rows.reduce((sum, { percent }) => sum + percent, 0), sheet };
}
/** Dough of a product on a day: pieces × baked ÷ (1 − bake loss) ÷ (1 − handling loss). */
function dough(name: string, day: number, extra = new Map<string, number>()): number {
  const { sheet } = parts(name);
  let all = 0;
  for (let at = 0; at < (sheet.zone("size_name")?.rows ?? 0); at++) {
    const size = sheet.text("size_name", at);
    const pieces = (orderedOn(day).get(`${name}|${size}`) ?? []).reduce((sum, one) => sum + one.pieces, 0);
    const more = extra.get(`${name}|${size}|${day}`) ?? 0;
    all += ((pieces + more) * (sheet.number("size_weight", at) ?? 0)) / (1 - (sheet.number("size_loss", at) ?? 0));
  }
  return all / (1 - (sheet.number("handling_loss") ?? 0));
}
const NAMES = [
  "Quay pan loaf",
  "Quay hearth loaf",
  "Harbour levain loaf",
  "Ferry bun",
  "Lantern rye tin",
  "Quay levain",
];
const close = (found: unknown, wanted: number, what: string) =>
  expect(Math.abs(Number(found) - wanted), `${what}: ${found} against ${wanted}`).toBeLessThanOrEqual(
    1e-9 * Math.max(1, wanted),
  );

describe("a week of the demo shop", () => {
  test("no cell shows an error, every check line is blank, and only the needs call a function", () => {
    for (const sheet of [production, ...[...made.values()].map((one) => one.sheet)]) {
      const { shown, formulas } = pageOf(book, sheet);
      for (const text of shown.flat()) expect(text, sheet).not.toMatch(/^#|NaN|undefined/);
      if (sheet !== sheetOf("card")) expect(shown[2]?.[0], sheet).toBe("");
      const called = formulas().filter((one) => one.includes("BAKE_"));
      expect(called.length, sheet).toBe(sheet === sheetOf("order") ? 2 : 0);
    }
  });

  test(`each sheet takes at most ${MAX_CALLS} calls that read or write`, () => {
    expect(calls).toBeLessThanOrEqual(MAX_CALLS);
    // Three cards are three sheets.
    for (const [what, { calls: some }] of made)
      expect(some, what).toBeLessThanOrEqual(what === "card" ? 3 * MAX_CALLS : MAX_CALLS);
  });

  test("pieces: the shop's and the regular orders, two of them overruled", () => {
    const { values, shown, rowOf } = pageOf(book, production);
    const head = rowOf("To make (pieces)");
    for (const [at] of DAYS.entries())
      for (const [item, orders] of orderedOn(at)) {
        const [product, size] = item.split("|");
        const row = shown.findIndex((cells, place) => place > head && cells[0] === product && cells[1] === size);
        expect(values[row]?.[3 + at], `${item} on day ${at}`).toBe(orders.reduce((sum, { pieces }) => sum + pieces, 0));
      }
    expect(shown.flat()).toContain("6 · 6 · 6 · 6 · 8 · 12 · –");
  });

  test("needs are the sum over all orders, the levains' feeds in the place of the doughs' levain", () => {
    const expected = new Map<string, number>();
    const add = (name: string, amount: number) => expected.set(name, (expected.get(name) ?? 0) + amount);
    const crocks = new Map<string, number>();
    for (const name of NAMES) {
      const { rows, all, sheet } = parts(name);
      const whole = DAYS.reduce((sum, _, day) => sum + dough(name, day), 0);
      const share = sheet.zone("levain") === undefined ? 0 : (sheet.number("pre_share") ?? 0);
      const flours = rows.reduce((sum, { kind, percent }) => sum + (kind === "flour" ? percent : 0), 0);
      for (const { name: one, percent } of rows) {
        if (one === "Quay levain") crocks.set(one, (crocks.get(one) ?? 0) + (whole * percent) / all);
        else add(one, (whole * percent) / all);
      }
      if (share === 0) continue;
      // At 100 % as much water as flour is in the crock; the chosen flour gives it.
      const inCrock = ((share * flours) / all) * whole;
      crocks.set("Levain, 100 %", (crocks.get("Levain, 100 %") ?? 0) + 2 * inCrock);
      add("Strong white flour", -inCrock);
      add("Water", -inCrock);
    }
    // The demo shop keeps 1600 of its own levain; the first seed is what the plan took of the mother.
    const page = pageOf(book, production);
    const seeds = page.rowOf("First seed, as planned");
    const column = page.shown[seeds]?.indexOf("First seed, as planned") ?? -1;
    for (const [at, name] of ["Quay levain", "Levain, 100 %"].entries()) {
      const row = page.shown.findIndex((cells, place) => place > seeds && cells[0] === name);
      const seed = Number(page.values[row]?.[column]);
      expect(seed, `${at}`).toBeGreaterThan(0);
      const net = (crocks.get(name) ?? 0) + (name === "Quay levain" ? 0 : 1600) - seed;
      add("Strong white flour", net / 2);
      add("Water", net / 2);
    }
    const order = pageOf(book, sheetOf("order"));
    const names = order.rowOf("Needed");
    const needed = order.shown[names]?.indexOf("Needed") ?? -1;
    const found = new Map(
      order.values
        .slice(names + 1)
        .filter((row) => Number(row[needed + 1] ?? 0) > 0)
        .map((row) => [String(row[needed]), row[needed + 1]]),
    );
    expect([...found.keys()].sort()).toEqual([...expected.keys()].sort());
    for (const [name, amount] of expected) close(found.get(name), amount, name);
  });

  test("what is weighed is the dough of its orders, within the steps of the scales; Saturday's levain loaf is mixed before Saturday", () => {
    const { shown, values } = pageOf(book, sheetOf("weigh"));
    const heads = shown.flatMap((row, at) => (/^\d+\. /.test(row[0] ?? "") ? [at] : []));
    expect(heads.length).toBeGreaterThan(5);
    const titles = heads.map(
      (at) => `${shown[at]?.[0]?.replace(/^\d+\. /, "")} ${/ready \w+ (\d+)/.exec(shown[at + 1]?.[2] ?? "")?.[1]}`,
    );
    // 5 December is the Saturday; a cold proof of twelve hours.
    expect(titles).toContain("Harbour levain loaf 5");
    expect(new Set(titles).size).toBe(titles.length);
    for (const [place, at] of heads.entries()) {
      const [, name = "", date = ""] = /^(.*) (\d+)$/.exec(titles[place] ?? "") ?? [];
      const day = Number(date) + (MONDAY === 46356 && Number(date) < 20 ? 0 : -31);
      const whole = dough(name, day);
      const mixes = Number(/(\d+) mix/.exec(shown[at + 1]?.[0] ?? "")?.[1]);
      const { rows, all, sheet } = parts(name);
      expect(mixes, name).toBe(Math.max(1, Math.ceil((whole / (sheet.number("mixer_limit") ?? whole)) * (1 - 1e-9))));
      const share = sheet.zone("levain") === undefined ? 0 : (sheet.number("pre_share") ?? 0);
      const flours = rows.reduce((sum, { kind, percent }) => sum + (kind === "flour" ? percent : 0), 0);
      rows.forEach(({ name: one, percent }, row) => {
        const exact = (whole * percent) / all / mixes;
        const crock = ((share * flours) / all) * (whole / mixes);
        const isGiven = share > 0 && (one === "Strong white flour" || one === "Water");
        const weighed = Number(values[at + 3 + row]?.[2]);
        expect(shown[at + 3 + row]?.[1]).toBe(one);
        // Half a step of 5 g, and another for what is taken out of it.
        expect(Math.abs(weighed - (exact - (isGiven ? crock : 0))), `${name}, ${one}: ${weighed}`).toBeLessThanOrEqual(
          share > 0 ? 5 : 2.5,
        );
      });
    }
  });

  test("the timetable has every step of every mix and load once, in the order of the clock, and the oven that is taken twice", () => {
    const { shown } = pageOf(book, sheetOf("times"));
    const rows = shown.filter((row) => /^\d\d:\d\d$/.test(row[0] ?? "") && /^\d\d:\d\d$/.test(row[1] ?? ""));
    const days = shown.flatMap((row, at) => (row[0] === "Start" ? [at] : []));
    expect(days.length).toBeGreaterThan(6);
    for (const at of days) {
      let before = "00:00";
      for (let row = at + 1; /^\d\d:\d\d$/.test(shown[row]?.[0] ?? ""); row++) {
        expect((shown[row]?.[0] ?? "") >= before).toBe(true);
        before = shown[row]?.[0] ?? "";
      }
    }
    for (const name of NAMES) {
      const { sheet } = parts(name);
      const steps = Array.from({ length: sheet.zone("step")?.rows ?? 0 }, (_, at) => sheet.text("step", at)).filter(
        (one) => one !== "",
      );
      if (steps.length === 0) continue;
      let mixes = 0;
      for (const [at] of DAYS.entries()) {
        const whole = dough(name, at);
        if (whole > 0) mixes += Math.ceil((whole / (sheet.number("mixer_limit") ?? whole)) * (1 - 1e-9));
      }
      for (const step of steps) {
        const some = rows.filter((row) => row[2] === name && row[3] === step);
        const loads = some.filter((row) => /^load \d/.test(row[4] ?? ""));
        if (step === sheet.text("oven_step")) expect(loads.length, `${name}, ${step}`).toBeGreaterThanOrEqual(mixes);
        else expect(some.length, `${name}, ${step}`).toBe(mixes);
      }
    }
    expect(shown.flat()).toContain("Taken twice at once");
    expect(
      shown
        .flat()
        .some((text) => /^Oven, \w+ \d+ \w+ \d\d:\d\d to .*(Begin .* min (earlier|later)|No other start)/.test(text)),
    ).toBe(true);
  });

  test("the card of a dough of two mixes is the weigh-up's: weights, pieces, mixes, levain, times, and where it comes from", () => {
    const { shown, values } = pageOf(book, "QHL-261205 Quay hearth loaf");
    const weigh = pageOf(book, sheetOf("weigh"));
    // Saturday's hearth loaf: 40 of the shop, 16 of the inn, two mixes or more in a mixer of 20 kg.
    expect(shown[0]?.[0]).toBe("Quay hearth loaf");
    expect(shown[1]?.[0]).toMatch(
      /^QHL-261205 · mix at \d\d:\d\d on \w+ \d Dec · ready Sat 5 Dec · from “Production .*” and “Quay hearth loaf”$/,
    );
    const figure = (name: string, column = 2) => values.find((row) => row[0] === name || row[1] === name)?.[column];
    const whole = dough("Quay hearth loaf", SATURDAY);
    const mixes = Math.ceil((whole / 20_000) * (1 - 1e-9));
    expect(mixes).toBeGreaterThan(1);
    expect(figure("Mixes")).toBe(mixes);
    expect(figure("Pieces")).toBe(56);
    expect(figure("Pieces: round")).toBe(56);
    const heading = weigh.shown.findIndex(
      (row, at) => /Quay hearth loaf/.test(row[0] ?? "") && /QHL-261205/.test(weigh.shown[at + 1]?.[2] ?? ""),
    );
    parts("Quay hearth loaf").rows.forEach(({ name }, row) => {
      expect(figure(name, 3), name).toBe(weigh.values[heading + 3 + row]?.[2]);
    });
    expect(shown.flat().join(" ")).toMatch(/Levain from the feed at \d\d:\d\d on \w+ \d Dec \(Levain, 100 %\)\./);
    expect(shown.flat()).toContain("Contains: cereals containing gluten (wheat). Cross-contact is not assessed.");
    const scaled = weigh.values.slice(heading).find((row) => /^round: pieces/.test(String(row[1])));
    expect(figure("Scaling weight, round (g)")).toBe(scaled?.[3]);
    expect(shown.flat().join(" ")).not.toMatch(/Levain to build/);
    expect(shown.flat().join(" ")).not.toMatch(/labelling law|estimates/);
    const mixing = shown.find((row) => row.includes("Mix"));
    expect(mixing?.join(" ")).toMatch(/\d\d:\d\d, \d\d:\d\d/);
    const { pages } = book.answer({
      ask: "night",
      sheet: production,
      from: `${WEEK[4]}T20:00`,
      to: `${WEEK[5]}T02:00`,
    }) as {
      pages: { title: string; rows: { text: string }[][] }[];
    };
    expect(pages.map(({ title }) => title)).toContain("QHL-261205 Quay hearth loaf");
    expect(
      pages
        .find(({ title }) => title.startsWith("QHL"))
        ?.rows.flat()
        .some(({ text }) => text === String(figure("Water", 3))),
    ).toBe(true);
  });

  test("lots entered on the weigh-up are kept, a row for each mix, ingredient and lot, and none twice", () => {
    const weigh = pageOf(book, sheetOf("weigh"));
    const heading = weigh.shown.findIndex(
      (row, at) => /Quay hearth loaf/.test(row[0] ?? "") && /QHL-261205/.test(weigh.shown[at + 1]?.[2] ?? ""),
    );
    book.type(sheetOf("weigh"), address(heading + 3, 4), "W-117; W-118");
    book.type(sheetOf("weigh"), address(heading + 5, 4), "0117");
    const mixes = Math.ceil((dough("Quay hearth loaf", SATURDAY) / 20_000) * (1 - 1e-9));
    const shift = { from: `${WEEK[3]}T00:00`, to: `${WEEK[5]}T12:00` };
    const build = () => book.answer({ ask: "weighUp", sheet: production, ...shift }) as { note?: string };
    // The log is a sheet of its own, which is built before.
    expect(build).toThrow(
      `Lots are entered on “${sheetOf("weigh")}”, and there is no lot log yet. Press “Keep the lots”, then build it again.`,
    );
    expect(book.answer({ ask: "keepLots" })).toEqual({ sheet: "Lot log", added: 3 * mixes });
    expect(book.answer({ ask: "keepLots" })).toEqual({ sheet: "Lot log", added: 0 });
    const rows = pageOf(book, "Lot log").shown.filter((row) => row[1] === "QHL-261205");
    expect(rows).toHaveLength(3 * mixes);
    const [first = []] = rows.filter((row) => row[6] === "W-118");
    expect(first.slice(0, 5)).toEqual([
      "2026-12-05",
      "QHL-261205",
      "Quay hearth loaf",
      `mix 1 of ${mixes}`,
      "Strong white flour",
    ]);
    expect(rows.filter((row) => row[6] === "0117").map((row) => row[4])).toEqual(Array(mixes).fill("Water"));
    // A weigh-up that is built again takes the place of the one before, with what was entered on it.
    book.type(sheetOf("weigh"), address(weigh.rowOf("Room"), 4), "27");
    expect(build()).toMatchObject({ sheet: sheetOf("weigh"), note: expect.not.stringContaining("lot log") });
    // Its lots were read, and are known to be kept.
    expect(book.trail.length).toBeLessThanOrEqual(MAX_CALLS);
    // Nor do new ones take more.
    book.type(sheetOf("weigh"), address(heading + 4, 4), "R-9");
    expect(build().note).toContain(`${mixes} rows of lots went into the lot log.`);
    expect(book.trail.length).toBeLessThanOrEqual(MAX_CALLS);
    const renewed = pageOf(book, sheetOf("weigh"));
    expect(renewed.shown[heading + 3]?.[4]).toBe("W-117; W-118");
    expect(renewed.shown[heading + 5]?.[4]).toBe("0117");
    expect(renewed.values[weigh.rowOf("Room")]?.[4]).toBe(27);
    // The cards of the shift have the water of its weigh-up, for the temperatures that were entered there.
    const { pages } = book.answer({ ask: "night", sheet: production, ...shift }) as {
      pages: { title: string; rows: { text: string }[][] }[];
    };
    const hearth = pages
      .find(({ title }) => title.startsWith("QHL-261205"))
      ?.rows.flat()
      .map(({ text }) => text);
    const water = renewed.values.slice(heading).find((row) => /^Water at/.test(String(row[1])));
    const degrees = Math.round(10 * Number(water?.[2])) / 10;
    expect(hearth?.join(" ").replace(/\s+/g, " ")).toContain(`Water at ${degrees} °C. Room 27, flour`);
    // Cards are renewed likewise.
    const before = book.sheetNames();
    const night = { from: `${WEEK[4]}T20:00`, to: `${WEEK[5]}T02:00` };
    book.answer({ ask: "cards", sheet: production, ...night });
    expect(book.trail.length / book.trail.filter((call) => call === "insertSheet").length).toBeLessThanOrEqual(
      MAX_CALLS,
    );
    // So are the timetable and the delivery notes, without a change.
    for (const [what, asked] of [
      ["times", { ask: "timetable", sheet: production }],
      ["customers", { ask: "customers", sheet: production }],
    ] as const) {
      const was = pageOf(book, sheetOf(what)).shown;
      expect(book.answer(asked), what).toMatchObject({ sheet: sheetOf(what) });
      expect(book.trail.length, what).toBeLessThanOrEqual(MAX_CALLS);
      const isSame = (row: readonly string[], at: number) =>
        /^As of /.test(row[0] ?? "") || expect(row).toEqual(was[at]);
      pageOf(book, sheetOf(what)).shown.forEach(isSame);
    }
    expect([...book.sheetNames()].sort()).toEqual([...before].sort());
    // From the lot to the batch, from the batch to the customers.
    const customers = pageOf(book, sheetOf("customers")).shown.filter((row) => row[3] === "QHL-261205");
    expect(customers.map((row) => row[2])).toEqual(["16", "40"]);
    book.deleteSheet("Lot log");
  });

  test("by customer: every order once, with its batch, and the pieces tie to the orders", () => {
    const { shown, values } = pageOf(book, sheetOf("customers"));
    let all = 0;
    for (const [at, day] of DAYS.entries())
      for (const [item, orders] of orderedOn(at))
        for (const { customer, pieces } of orders) {
          all += pieces;
          const [product, size] = item.split("|");
          const date = day - MONDAY + 30;
          const heading = shown.findIndex((row) =>
            new RegExp(`^${customer || "Shop"} · \\w+ ${date > 30 ? date - 30 : date} `).test(row[0] ?? ""),
          );
          const row = shown.findIndex((cells, place) => place > heading && cells[0] === product && cells[1] === size);
          expect(values[row]?.[2], `${customer}, ${item}, day ${at}`).toBe(pieces);
          expect(shown[row]?.[3]).toMatch(/^[A-Z]+-26\d{4}$/);
        }
    expect(shown[1]?.[0]).toMatch(new RegExp(`^${all} pieces for \\d+ deliveries$`));
  });

  test("an order typed over changes mixes, weights and lists; a name that no formula has is named, and a blank takes the regular one", () => {
    const page = pageOf(book, production);
    const row = page.shown.findIndex((cells) => cells[0] === "Quay pan loaf" && cells[2] === "Café Mole");
    const cell = address(row, 3 + SATURDAY);
    const extra = new Map([["Quay pan loaf|large|5", 100 - (REGULAR[0].week[SATURDAY] ?? 0)]]);
    const weighed = () => pageOf(book, sheetOf("weigh")).shown.flat().join(" ");
    const before = weighed();
    book.type(production, cell, "100");
    const whole = dough("Quay pan loaf", SATURDAY, extra);
    const mixes = Math.ceil(whole / 20_000);
    const words = `${mixes} × ${Math.round(whole / mixes / 100) / 10}`;
    expect(
      pageOf(book, production).shown.find((cells) => cells[0] === "Quay pan loaf" && cells.includes(words)),
    ).toBeDefined();
    expect(weighed()).not.toBe(before);
    expect(pageOf(book, sheetOf("times")).shown[2]?.[0]).toMatch(/^Orders, methods or machines have changed/);
    expect(() => book.type(production, cell, "many")).toThrow(/violates/);
    book.type(production, cell, "");
    // For another order a row is inserted above the last of them: it counts like the others, under the name of a formula sheet.
    const last = page.shown.findIndex((cells, at) => at > row && cells[0] === "" && cells[1] === "") - 1;
    book.insertRows(production, last + 1);
    const added = (name: string) => {
      book.type(production, address(last, 0), name);
      book.type(production, address(last, 1), "large");
      book.type(production, address(last, 3 + SATURDAY), "7");
      return pageOf(book, production).shown;
    };
    expect(added("Quay pan loaves")[2]?.[0]).toBe(
      `row ${last + 1}: “Quay pan loaves, large” has no row under To make.`,
    );
    const loaves = (REGULAR[0].week[SATURDAY] ?? 0) + (SHOP[0].week[SATURDAY] ?? 0);
    const made = added("Quay pan loaf");
    expect(made[2]?.[0]).toBe("");
    const toMake = made.findIndex((cells) => cells[0] === "To make (pieces)");
    expect(made.slice(toMake).find((cells) => cells[0] === "Quay pan loaf")?.[3 + SATURDAY]).toBe(String(loaves + 7));
    book.deleteRows(production, last + 1);
    expect(pageOf(book, production).shown[2]?.[0]).toBe("");
    expect(weighed()).toBe(before);
  });

  test("the start that a timetable offers ends its clash once it is entered, and the next offer counts on from there", () => {
    const offers = () =>
      pageOf(book, sheetOf("times")).shown.flatMap(([text = ""]) => {
        const [, clash = "", dough = "", minutes, entered] =
          /^(.*?\d\d:\d\d to \d\d:\d\d): .*\. Begin (.*) (\d+) min earlier: enter (\d+) beside/.exec(text) ?? [];
        return minutes === undefined ? [] : [{ clash, dough, minutes: Number(minutes), entered: Number(entered) }];
      });
    const [offer] = offers();
    if (offer === undefined) throw new Error("no offer");
    expect(offer.entered).toBe(offer.minutes);
    const { shown } = pageOf(book, production);
    const head = shown.findIndex((row) => row.includes("Earlier (min)"));
    const column = shown[head]?.indexOf("Earlier (min)") ?? -1;
    const row = shown.findIndex((cells, at) => at > head && cells[0] === offer.dough);
    book.type(production, address(row, column), String(offer.entered));
    book.answer({ ask: "timetable", sheet: production });
    const later = offers();
    expect(later.map(({ clash }) => clash)).not.toContain(offer.clash);
    for (const { dough, minutes, entered } of later)
      expect(entered, dough).toBe(minutes + (dough === offer.dough ? offer.entered : 0));
    book.type(production, address(row, column), "");
  });
});
