import { describe, expect, test } from "vitest";
import { changeFor, clashesOf, type Machine, machineFor } from "../../shared/production/clashes.ts";
import { type Clock, clockAt, clockOf, clockText, dayOf, type Moment } from "../../shared/production/clock.ts";
import { fedIn, type Levain, levainChain, unripe } from "../../shared/production/levain.ts";
import { firstStart, inShift, loadsOf, type PlannedDough, tasksOf } from "../../shared/production/timetable.ts";

const MONDAY = 46020;
const step = (name: string, minutes: number, temperature: number | null = null) => ({ name, minutes, temperature });
const loaf: PlannedDough = {
  id: "loaf",
  dough: "Quay loaf",
  ready: clockOf(MONDAY, 7 / 24),
  steps: [
    step("Autolyse", 30),
    step("Mix", 15),
    step("Bulk", 120),
    step("Divide", 15),
    step("Rest", 20),
    step("Shape", 20),
    step("Proof", 75),
    step("Bake", 40, 230),
    step("Cool", 60),
  ],
  mixes: 1,
  holders: null,
  ovenTakes: null,
  reload: 10,
  mixStep: "Mix",
  ovenStep: "Bake",
  preferment: null,
  mixer: "Spiral",
  oven: "Deck",
  earlier: 0,
};
const at = (moment: Moment | undefined | null) => clockText(clockAt(moment as Moment, []));

describe("timetable", () => {
  test("trade case: 395 minutes before 07:00 are 00:25", () => {
    expect(at(tasksOf(loaf)[0]?.start)).toBe("00:25");
  });

  test("trade case: ready 05:00 on Monday, a poolish 14 h before a dough of 5 h 30: 09:30 on Sunday", () => {
    const plan = {
      ...loaf,
      ready: clockOf(MONDAY, 5 / 24),
      steps: [step("Mix", 30), step("Rest", 300)],
      preferment: { name: "poolish", minutes: 14 * 60, step: "Mix" },
    };
    const [poolish] = tasksOf(plan);
    expect(poolish?.step).toBe("Mix the poolish");
    expect(at(poolish?.start)).toBe("09:30");
    expect(dayOf(clockAt(poolish?.start as Moment, []))).toBe(MONDAY - 1);
  });

  test("trade case: three loads of 40 min with 10 min to reload, the last out at 06:00: the first in at 03:40", () => {
    const plan = { ...loaf, ready: clockOf(MONDAY, 6 / 24), steps: [step("Bake", 40)], holders: 18, ovenTakes: 6 };
    expect(tasksOf(plan).map(({ start, load }) => [load, at(start)])).toEqual([
      [1, "03:40"],
      [2, "04:30"],
      [3, "05:20"],
    ]);
  });

  test("trade case: an army white dough of five stages takes 238 to 245 minutes", () => {
    const stages = (rest: number, bake: number) =>
      [120, 15, rest, 60, bake].map((minutes, one) => step(`Stage ${one}`, minutes));
    const length = (rest: number, bake: number) =>
      loaf.ready - (tasksOf({ ...loaf, steps: stages(rest, bake) })[0]?.start ?? 0);
    expect([length(8, 35), length(10, 40)]).toEqual([238, 245]);
  });

  test("a preferment is counted back from the step it goes into, also where that is not Mix", () => {
    const plan = { ...loaf, preferment: { name: "biga", minutes: 600, step: "autolyse" } };
    expect(at(tasksOf(plan)[0]?.start)).toBe("14:25");
  });

  test("mixes follow each other at the mixer and in the oven, and every mix has every step once", () => {
    const plan = { ...loaf, mixes: 3, holders: 30, ovenTakes: 6 };
    // 10 trays a mix in loads of 6: two loads, so a mix is 100 min ahead of the next one.
    expect(loadsOf(plan)).toEqual([2, 2, 2]);
    const tasks = tasksOf(plan);
    const mixing = tasks.filter((task) => task.step === "Mix");
    expect(mixing.map(({ start }) => at(start))).toEqual(["20:45", "22:25", "00:05"]);
    const baking = tasks.filter((task) => task.step === "Bake");
    expect(baking.map(({ mix, load }) => [mix, load])).toEqual([
      [1, 1],
      [1, 2],
      [2, 3],
      [2, 4],
      [3, 5],
      [3, 6],
    ]);
    expect(clashesOf(tasks, MACHINES)).toEqual([]);
    for (const mix of [1, 2, 3])
      expect(tasks.filter((task) => task.mix === mix && task.load < 2).length).toBeGreaterThanOrEqual(8);
  });

  test("a shift has what begins in it, over midnight", () => {
    const [from, to] = [clockOf(MONDAY - 1, 22 / 24), clockOf(MONDAY, 1 / 24)] as [Clock, Clock];
    expect(inShift(tasksOf(loaf), from, to).map(({ step }) => step)).toEqual(["Autolyse", "Mix"]);
    expect(inShift(tasksOf(loaf), to, to)).toEqual([]);
    // The mix begins at 00:55: in the shift that begins then, and not in the one that ends.
    const change = clockOf(MONDAY, 55 / 1440);
    expect(inShift(tasksOf(loaf), from, change).map(({ step }) => step)).toEqual(["Autolyse"]);
    expect(inShift(tasksOf(loaf), change, to).map(({ step }) => step)).toEqual(["Mix"]);
    expect(at(firstStart(tasksOf(loaf), "mix"))).toBe("00:55");
  });
});

const MACHINES: readonly Machine[] = [
  { name: "Spiral", kind: "mixer", number: 1, capacity: 40_000, temperature: null },
  { name: "Deck", kind: "oven", number: 1, capacity: 12, temperature: 230 },
];

describe("machines taken twice", () => {
  const bun: PlannedDough = { ...loaf, id: "bun", dough: "Ferry bun", ready: clockOf(MONDAY, 7 / 24 + 30 / 1440) };
  test("an oven taken twice is told with both doughs, and one earlier start ends it without another clash", () => {
    // The loaf bakes from 05:20 to 06:00, the bun from 05:50: ten minutes are taken twice.
    const tasks = [loaf, bun].flatMap((plan) => tasksOf(plan));
    const [clash, ...more] = clashesOf(tasks, MACHINES);
    expect(more).toEqual([]);
    expect([at(clash?.from), at(clash?.to), clash?.machine]).toEqual(["05:50", "06:00", "Deck"]);
    if (clash === undefined) throw new Error("no clash");
    const change = changeFor(clash, [loaf, bun], MACHINES);
    // The loaf out of the oven at 05:50 is ten minutes.
    expect(change).toEqual({ dough: "Quay loaf", earlier: 10 });
    const moved = [{ ...loaf, earlier: 10 }, bun].flatMap((plan) => tasksOf(plan));
    expect(clashesOf(moved, MACHINES)).toEqual([]);
  });

  test("a dough begins earlier on each of its days: a change that would be a new clash on another one is not offered", () => {
    const day = (plan: PlannedDough, days: number, minutes = 0): PlannedDough => ({
      ...plan,
      id: `${plan.id} ${days}`,
      ready: clockOf(MONDAY + days, 7 / 24 + minutes / 1440),
    });
    const rye = { ...loaf, id: "rye", dough: "Lantern rye" };
    // On Tuesday the rye is out of the oven at 05:20, just when the loaf goes in: ten minutes earlier it would wait.
    const plans = [day(loaf, 0), day(bun, 0, 30), day(loaf, 1), day(rye, 1, -40)];
    const tasks = plans.flatMap((plan) => tasksOf({ ...plan, mixer: "" }));
    const [clash, ...more] = clashesOf(tasks, MACHINES);
    expect(more).toEqual([]);
    if (clash === undefined) throw new Error("no clash");
    const ovens = plans.map((plan) => ({ ...plan, mixer: "" }));
    // So it is the bun that begins 70 minutes earlier, before the loaf; or what is planned with it says otherwise.
    expect(changeFor(clash, ovens, MACHINES)).toEqual({ dough: "Ferry bun", earlier: 70 });
    const never = changeFor(clash, ovens, MACHINES, [], ({ earlier }) => (earlier < 100 ? [clash] : []));
    expect(never?.earlier).toBeGreaterThanOrEqual(100);
  });

  test("two ovens of a name bake two loads at once; a third is a clash", () => {
    const three = ["a", "b", "c"].map((id) => ({ ...loaf, id, mixer: "" }));
    const deck = (number: number) => MACHINES.map((one) => ({ ...one, number }));
    expect(
      clashesOf(
        three.flatMap((plan) => tasksOf(plan)),
        deck(3),
      ),
    ).toEqual([]);
    expect(
      clashesOf(
        three.flatMap((plan) => tasksOf(plan)),
        deck(2),
      ),
    ).toHaveLength(1);
  });

  test("a machine is chosen by capacity and temperature, the smallest that takes it", () => {
    const small: Machine = { name: "Small", kind: "mixer", number: 1, capacity: 10_000, temperature: null };
    expect(machineFor("mixer", [...MACHINES, small], 9_000, null)?.name).toBe("Small");
    expect(machineFor("mixer", [...MACHINES, small], 12_000, null)?.name).toBe("Spiral");
    expect(machineFor("mixer", MACHINES, 50_000, null)).toBeNull();
    expect(machineFor("oven", MACHINES, 10, 180)).toBeNull();
    expect(machineFor("oven", MACHINES, 10, 225)?.name).toBe("Deck");
  });
});

describe("levain", () => {
  const moment = (minutes: number) => minutes as Moment;
  const white: Levain = {
    name: "Levain",
    hydration: 1,
    motherHydration: 1,
    seedShare: 0.2,
    seedWeight: 500,
    ripeFrom: 480,
    ripeTo: 720,
    mother: 500,
    keep: 500,
  };
  test("6 kg at 100 % with 0.5 kg in and 0.5 kg kept are 3 + 3 kg of flour and water, not 6 + 6", () => {
    const chain = levainChain(white, [{ at: moment(3000), weight: 6000, by: "loaf" }]);
    expect(fedIn(chain)).toEqual({ flour: 3000, water: 3000 });
    expect(chain.feeds).toHaveLength(1);
    expect(chain.feeds[0]).toMatchObject({ at: 2520, total: 6500, seed: 500, setAside: 500 });
    expect(chain.left).toBe(0);
  });

  test("a dough beyond the window gets a feed of its own, seeded from the one before", () => {
    const uses = [
      { at: moment(3000), weight: 2000, by: "loaf" },
      { at: moment(3200), weight: 1000, by: "bun" },
      { at: moment(3300), weight: 1500, by: "rye" },
    ];
    const { feeds, seedShort } = levainChain({ ...white, seedWeight: null, keep: 200 }, uses);
    expect(feeds.map(({ at, uses: some }) => [at, some.map(({ by }) => by)])).toEqual([
      [2520, ["loaf", "bun"]],
      [2820, ["rye"]],
    ]);
    // The second makes 1500 + 200: 850 of flour; seed of 0.2 ÷ 1.1 of it, 154.545.
    expect(feeds[1]?.seed).toBeCloseTo((850 * 0.2) / 1.1, 9);
    // The first makes 3000 and that seed.
    expect(feeds[0]?.total).toBeCloseTo(3000 + (850 * 0.2) / 1.1, 9);
    expect(seedShort).toBe(0);
    expect(unripe(feeds)).toEqual([]);
  });

  test("a mother too small is grown by feeds before; with a weight of seed too large for it the lack is told", () => {
    const uses = [{ at: moment(5000), weight: 20_000, by: "loaf" }];
    const { feeds, seedShort, left } = levainChain({ ...white, seedWeight: null, mother: 300 }, uses);
    // Seed of 20 500 is 0.0909 of it, 1 863.6 g, whose own seed is 169.4 g.
    expect(feeds.map(({ at }) => at)).toEqual([4040, 4520]);
    expect(feeds[0]?.seed).toBeCloseTo(20_500 / 121, 6);
    expect(seedShort).toBe(0);
    expect(left).toBeCloseTo(300 - 20_500 / 121, 6);
    expect(levainChain({ ...white, mother: 300 }, uses).seedShort).toBe(200);
  });

  test("a dough moved out of the window of its feed is told", () => {
    const [feed] = levainChain(white, [{ at: moment(3000), weight: 6000, by: "loaf" }]).feeds;
    if (feed === undefined) throw new Error("no feed");
    expect(unripe([{ ...feed, uses: [{ at: moment(3241), weight: 6000, by: "loaf" }] }])).toHaveLength(1);
    expect(unripe([{ ...feed, uses: [{ at: moment(3240), weight: 6000, by: "loaf" }] }])).toEqual([]);
  });
});
