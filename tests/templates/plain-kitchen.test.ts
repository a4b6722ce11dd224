import { describe, expect, test } from "vitest";
import { expectSame, pairOf, templateNamed, typeBoth } from "./plain-support.ts";
import { HANDOUT } from "./sheet-support.ts";

const SHAPES: readonly (readonly [shape: string, ...sizes: string[]])[] = [
  ["box", "13", "4", "4"],
  ["box", "21", "11", "9", "19", "9"],
  ["box", "21", "11", "9", "19"],
  ["box", "21", "11"],
  ["box", "21", "-11", "9"],
  ["box", "21", "eleven", "9"],
  ["oval", "20", "12", "8"],
  ["oval", "20", "12", "8", "18", "10"],
  ["round", "20", "5"],
  ["round", "20", "5", "18"],
  ["round", "20", "25"],
  ["round", "20", "5", "3"],
  ["round", "20", "5", "18", "2"],
  ["ring", "24", "8", "7"],
  ["ring", "24", "8", "7", "20", "9"],
  ["ring", "8", "24", "7"],
  ["dome", "20"],
  ["dome", "20", "7"],
  ["dome", "20", "12"],
  ["wreath", "24", "6"],
  ["wreath", "24", "16"],
  ["polygon", "6", "9", "7"],
  ["polygon", "6.5", "9", "7"],
  ["polygon", "2", "9", "7"],
  ["water", "1900"],
  ["water", "1900", "3"],
];

/** Without sizes: what a tin takes is a cake. */
const { size_name: _, size_pieces: __, size_weight: ___, ...BATTER } = HANDOUT;

describe.each([["cm"], ["in"]] as const)("tins in %s", (length) => {
  test("every shape, with sizes that fit it and sizes that do not", async () => {
    const pair = await pairOf(
      templateNamed("cake"),
      { ...BATTER, by: "batter", tin_kind: "layer cake" },
      { length, parts: ["tin"] },
    );
    for (const [shape, ...sizes] of SHAPES) {
      typeBoth(pair, "tin_shape", shape);
      for (let place = 1; place <= 5; place++) typeBoth(pair, `tin_size_${place}`, sizes[place - 1] ?? "");
      expectSame(pair, [], `${shape} ${sizes.join(" ")}`);
      const fits = typeof pair.added.value("tin_capacity") === "number";
      expect(pair.plain.value("tin_says"), `${shape} ${sizes.join(" ")}`).toBe(
        fits ? "" : "sizes do not fit the shape",
      );
    }
  });
});

const KINDS =
  "lidded white;white;white wholesale;half wholemeal;wholemeal;rye and wheat;rye;enriched;layer cake;pound cake;muffin;sponge;brownie";

test.each([["g"], ["oz"]] as const)(
  "the sentence about a tin, for every kind of dough and many fills, in %s",
  async (weight) => {
    const tin = { tin_shape: "box", tin_size_1: 21, tin_size_2: 11, tin_size_3: 9 };
    const pair = await pairOf(
      templateNamed("cake"),
      { ...templateNamed("cake").sample, ...tin, by: "tins", tins: 2 },
      { weight, parts: ["tin"] },
    );
    for (const kind of KINDS.split(";")) {
      typeBoth(pair, "tin_kind", kind);
      for (const fill of ["", "0.2", "0.34", "0.45", "0.5", "0.57", "0.9"]) {
        typeBoth(pair, "tin_fill", fill);
        expectSame(pair, [], `${kind} ${fill}`);
      }
    }
  },
);

test.each([["C"], ["F"]] as const)(
  "every way of mixing, and water from ice-cold to scalding, in °%s",
  async (temperature) => {
    const pair = await pairOf(templateNamed("soft-bun"), templateNamed("soft-bun").sample, {
      temperature,
      parts: ["water"],
    });
    const all = (celsius: number) => String(temperature === "C" ? celsius : celsius * 1.8 + 32);
    const kitchen = { dough_target: 26, flour_temp: 21, room_temp: 23, tap_temp: 14 };
    for (const [name, celsius] of Object.entries(kitchen)) typeBoth(pair, name, all(celsius));
    for (const mixing of ["hand", "folds", "stand", "planetary", "spiral", "processor", ""]) {
      typeBoth(pair, "mixing", mixing);
      for (const minutes of ["8", ""]) {
        typeBoth(pair, "minutes", minutes);
        expectSame(pair, [], `${mixing} ${minutes}`);
      }
    }
    typeBoth(pair, "mixing", "hand");
    const seen = new Set<string>();
    for (const [dough, flour, room, tap] of [
      [26, 21, 23, 14],
      [26, 24, 30, 22],
      [24, 26, 30, 25],
      [20, 26, 30, 25],
      [14, 30, 32, 25],
      [26, 5, 10, 20],
      [30, 20, 19, 15],
      [26, 25, 28, 23.7],
      [34, 10, 12, 20],
    ] as const) {
      for (const yeast of ["fresh", "instant", "active dry", "none", ""]) {
        for (const [name, value] of Object.entries({
          dough_target: dough,
          flour_temp: flour,
          room_temp: room,
          tap_temp: tap,
        }))
          typeBoth(pair, name, all(value));
        typeBoth(pair, "yeast", yeast);
        expectSame(pair, [], `${dough} ${flour} ${room} ${tap} ${yeast}`);
        seen.add(String(pair.plain.value("water_note")).replace(/[\d.]+/g, "…"));
      }
    }
    // As it is, warmed, cooled, too much ice, too hot for three yeasts and for a dough, scalding.
    expect(seen.size).toBeGreaterThan(7);
  },
);
