// A week of an invented shop out of random numbers: formulas, customers, regular orders, machines and levains.
import type { Machine } from "../../shared/production/clashes.ts";
import type { Formula, Use } from "../../shared/production/formula.ts";
import type { Levain } from "../../shared/production/levain.ts";
import { itemKey, type Making, type OrderLine, type RegularOrder } from "../../shared/production/orders.ts";

export type Week = {
  readonly days: number[];
  readonly formulas: Formula[];
  readonly typed: OrderLine[];
  readonly regular: RegularOrder[];
  readonly making: Map<string, Making>;
  readonly machines: Machine[];
  readonly levains: Levain[];
  readonly earlier: Map<string, number>;
};

/** Numbers from 0 to below 1 that a seed repeats (a linear congruential generator, constants of Numerical Recipes). */
export function dice(seed: number) {
  let state = seed >>> 0;
  const next = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
  const whole = (least: number, most: number) => least + Math.floor(next() * (most - least + 1));
  const pick = <T>(some: readonly T[]): T => some[whole(0, some.length - 1)] as T;
  return { next, whole, pick, chance: (part: number) => next() < part };
}
type Dice = ReturnType<typeof dice>;

const CUSTOMERS = ["", "Café Mole", "Harbour inn", "Pier school"];
const NAMES = ["Quay loaf", "Ferry bun", "Rye tin", "Slipway croissant", "Pier loaf", "Mole roll"];

export function randomWeek(seed: number): Week {
  const die = dice(seed);
  const days = Array.from({ length: die.whole(1, 7) }, (_, at) => 46000 + at);
  const levains = Array.from({ length: die.whole(0, 2) }, (_, at) => randomLevain(die, `Levain ${at + 1}`));
  const formulas: Formula[] = [];
  for (const name of NAMES.slice(0, die.whole(1, 6)))
    formulas.push({
      ...randomFormula(die, name, levains),
      uses: formulas.flatMap((taker) => randomUses(die, taker)),
    });
  const items = formulas.flatMap(({ name, sizes }) => sizes.map(({ size }) => ({ product: name, size })));
  const regular = items.flatMap((item): RegularOrder[] =>
    CUSTOMERS.slice(1).flatMap((customer) =>
      die.chance(0.4)
        ? [{ ...item, customer, week: Array.from({ length: 7 }, () => (die.chance(0.7) ? die.whole(0, 40) : null)) }]
        : [],
    ),
  );
  const typed = items.flatMap((item) =>
    CUSTOMERS.flatMap((customer) =>
      days.flatMap((day): OrderLine[] =>
        die.chance(0.3) ? [{ ...item, customer, day, pieces: die.pick([null, 0, die.whole(1, 60)]) }] : [],
      ),
    ),
  );
  const making = new Map(
    items.map((item) => [
      itemKey(item),
      { spares: die.whole(0, 4), stock: die.pick([0, 0, die.whole(1, 60)]), multiple: die.pick([1, 6, 12]) },
    ]),
  );
  const machines: Machine[] = [
    { name: "Spiral", kind: "mixer", number: die.whole(1, 2), capacity: die.whole(20, 60) * 1000, temperature: null },
    { name: "Deck", kind: "oven", number: die.whole(1, 2), capacity: null, temperature: null },
  ];
  const earlier = new Map<string, number>();
  return { days, formulas, typed, regular, making, machines, levains, earlier };
}

/** What a product that stands before it takes of a dough: so much for a piece of each size, or a part of what is mixed of it. */
function randomUses(die: Dice, { name, sizes }: Formula): Use[] {
  if (die.chance(0.15)) return [{ dough: name, part: die.whole(2, 30) / 100 }];
  return die.chance(0.2) ? sizes.map(({ size }): Use => ({ product: name, size, perPiece: die.whole(5, 90) })) : [];
}

function randomLevain(die: Dice, name: string): Levain {
  const ripeFrom = die.whole(3, 12) * 60;
  const hydration = die.pick([0.5, 0.6, 1, 1.25]);
  return {
    name,
    hydration,
    motherHydration: die.pick([hydration, 1]),
    seedShare: die.pick([0.05, 0.1, 0.2, 0.5]),
    seedWeight: null,
    ripeFrom,
    ripeTo: ripeFrom + die.whole(0, 6) * 60,
    mother: die.whole(100, 3000),
    keep: die.whole(50, 1500),
  };
}

function randomFormula(die: Dice, name: string, levains: readonly Levain[]): Formula {
  const flour = 100;
  const water = die.whole(50, 80);
  const hasPreferment = die.chance(0.4);
  const levain = die.chance(0.5) ? levains[die.whole(0, 1)] : undefined;
  const inLevain = levain === undefined ? 0 : die.whole(5, 30) / 100;
  // Water of the levain on the dough's water.
  const wet = levain === undefined ? 0 : Math.min(1, (inLevain * flour * levain.hydration) / water);
  const part = levain === undefined && hasPreferment ? 0.3 : inLevain;
  const waterPart = levain === undefined && hasPreferment ? Math.min(1, (0.3 * flour) / water) : wet;
  const all = flour + water + 3;
  const step = (name: string, minutes: number) => ({ name, minutes, temperature: null });
  const steps = [
    step("Mix", die.whole(8, 25)),
    step("Bulk", die.whole(40, 180)),
    step("Shape", die.whole(10, 40)),
    step("Proof", die.whole(30, 900)),
    step("Bake", die.whole(10, 50)),
    step("Cool", die.whole(0, 60)),
  ];
  return {
    name,
    rows: [
      { name: "Flour", part: flour / all, inPreferment: part, fromChain: inLevain },
      { name: "Water", part: water / all, inPreferment: waterPart, fromChain: wet },
      { name: "Salt", part: 2 / all, inPreferment: 0 },
      { name: "Yeast", part: 1 / all, inPreferment: levain === undefined && hasPreferment ? 0.2 : 0 },
    ],
    sizes: Array.from({ length: die.whole(1, 2) }, (_, at) => ({
      size: ["large", "small"][at] ?? "",
      scaling: die.whole(50, 1000),
    })),
    handlingLoss: die.pick([0, 0.02, 0.03]),
    mixerLimit: die.pick([null, die.whole(8, 30) * 1000]),
    scales: die.pick([[5, 1], [1], [10, 0.5]]),
    ready: die.whole(3 * 12, 10 * 12) / (24 * 12),
    steps,
    mixStep: "Mix",
    ovenStep: "Bake",
    holds: die.whole(4, 24),
    ovenTakes: die.pick([null, die.whole(3, 12)]),
    reload: die.pick([0, 5, 10]),
    preferment:
      levain === undefined && hasPreferment
        ? { name: "poolish", minutes: die.whole(8, 16) * 60, step: die.pick(["Mix", "bulk"]) }
        : null,
    levains:
      levain === undefined ? [] : [{ from: levain.name, part: (flour * inLevain + water * wet) / all, step: "Mix" }],
  };
}
