// A card of values: every number worked out here, on the scale's steps.

import { countUp, onSteps } from "../base/scaling.ts";
import { ratio, weight } from "../base/units.ts";
import type { ColumnModel, Line } from "../sheet/model.ts";
import type { CardAmount, CardData } from "./data.ts";
import {
  block,
  type Drawn,
  eggsSay,
  FINE,
  head,
  type Into,
  labelCells,
  loadsSay,
  piecesSay,
  sizeSays,
  tidy,
  traysSay,
  weightColumn,
} from "./parts.ts";

const MAX_SHIFT = ratio(0.02);

export function valuesCard(data: CardData, amount: CardAmount, values: Into): Drawn {
  const times = amount.wanted / amount.base;
  const dough = data.dough * times;
  const mixes =
    amount.by === "mixes"
      ? countUp(amount.wanted)
      : data.mixerLimit === null || data.mixerLimit <= 0
        ? 1
        : Math.max(1, countUp(dough / data.mixerLimit));
  const whole = (value: number) => upOnSteps(value, data.steps);
  const onScale = (value: number | null) =>
    onSteps([value === null ? null : weight(value)], data.steps, MAX_SHIFT)[0] ?? null;
  const figure = (says: string, name: string, value: number | null, at = 2, tick = false): Line[] => {
    if (value === null) return [];
    values.set(name, value);
    const also =
      data.unit === "oz" && /^(?:all|each|added|size)/.test(name)
        ? [{ at: at + 1, role: "ruled" as const, text: poundsAndOunces(value), align: "right" as const }]
        : [];
    return [{ cells: [...labelCells(says, tick), { at, role: "figure", name, unit: "exact" }, ...also] }];
  };
  const pieces = data.pieces === null ? null : wholePieces(data.pieces * times);
  const make = block("make", [
    ...figure("Pieces", "pieces", pieces),
    ...figure(head(data, `${data.what} to make`), "all_dough", whole(dough)),
    ...figure("Mixes", "mixes", mixes),
    ...figure(head(data, `${data.what} in each mix`), "each_dough", whole(dough / mixes)),
  ]);
  const columns = data.stages.flatMap(({ head: says, weights }, stage): ColumnModel[] => {
    const scaled = (base: number | null) => (base === null ? null : onScale((base * times) / mixes));
    const before = data.stages[stage - 1]?.weights;
    const each = weights.map((base, row) => {
      const first = before?.[row] ?? null;
      if (base === null || first === null || !data.lastIsRest) return scaled(base);
      return tidy((scaled(base + first) ?? 0) - (scaled(first) ?? 0));
    });
    values.set(`weight_${stage}`, each);
    values.set(
      `also_${stage}`,
      each.map((one) => (one === null ? null : poundsAndOunces(one))),
    );
    return [
      { name: `weight_${stage}`, head: head(data, says), unit: "exact", role: "figure" },
      ...(data.unit === "oz"
        ? [{ name: `also_${stage}`, head: "as lb and oz", unit: "text", role: "ruled", align: "right" } as const]
        : []),
    ];
  });
  const below = [
    ...data.added.flatMap(({ says, base, fixed: fixedPart = 0, perMix, stage }, at) =>
      figure(
        head(data, says),
        `added_${at}`,
        onScale((base * times + fixedPart) / (perMix ? mixes : 1)),
        weightColumn(data, stage),
        true,
      ),
    ),
    ...(data.eggs === null
      ? []
      : figure(eggsSay(data), "eggs", tidy((data.eggs.weight * times) / mixes / data.eggs.each, 1))),
    ...data.sizes.flatMap(({ name, pieces: some }, at) =>
      some === null ? [] : figure(piecesSay(name), `pieces_${at}`, wholePieces(some * times)),
    ),
    ...ovenLines(data, pieces, figure),
    ...data.sizes.flatMap(({ name, weight: each }, at) => figure(sizeSays(data, name), `size_${at}`, whole(each))),
  ];
  return { make, columns, below, workings: [], bases: [] };
}

const wholePieces = (pieces: number): number => Math.floor(pieces + 1e-6);

/** The next weight upwards that the scale shows. */
export function upOnSteps(value: number, steps: readonly number[]): number {
  const step = steps.find((one) => value >= FINE * one) ?? steps[steps.length - 1] ?? 1;
  return tidy(countUp(value / step) * step);
}

/** Trays, and how often the oven is filled. */
function ovenLines(
  { oven }: CardData,
  pieces: number | null,
  figure: (says: string, name: string, value: number | null) => Line[],
): Line[] {
  if (oven === null || pieces === null) return [];
  const holders = countUp(pieces / oven.holds);
  return [
    ...(oven.on === "trays" ? figure(traysSay(oven), "trays", holders) : []),
    ...(oven.takes === null ? [] : figure(loadsSay(oven, oven.takes), "loads", countUp(holders / oven.takes))),
  ];
}

/** 16 oz are a pound (NIST SP 811, appendix B). */
export function poundsAndOunces(ounces: number): string {
  const all = tidy(ounces, 2);
  const pounds = Math.floor(all / 16);
  return `${pounds} lb ${tidy(all - 16 * pounds, 2)} oz`;
}
