// From pieces to doughs, equal mixes and what is weighed for each, on the steps of the scales.
import { countUp, onSteps } from "../base/scaling.ts";
import { ratio, type Weight, weight } from "../base/units.ts";

export type DoughRow = {
  readonly name: string;
  /** Part of the dough, of 1 in all. */
  readonly part: number;
  /** Part of this row that goes into the preferment. */
  readonly inPreferment: number;
  /** Part of it that comes out of a levain's chain of feeds, 0 unless told otherwise. */
  readonly fromChain?: number;
};

/** What a formula sheet tells of its dough. */
export type Dough = {
  readonly name: string;
  readonly rows: readonly DoughRow[];
  readonly sizes: readonly { readonly size: string; readonly scaling: number }[];
  readonly handlingLoss: number;
  readonly mixerLimit: number | null;
  /** What they read to: coarse and fine. */
  readonly scales: readonly number[];
};

export type WeighedRow = {
  readonly name: string;
  /** Of one mix, as the formula has it. */
  readonly exact: Weight;
  /** Of one mix, as the scales show it. */
  readonly perMix: Weight;
  readonly preferment: Weight;
  readonly finalMix: Weight;
};
export type Batch = {
  readonly dough: Weight;
  readonly mixes: number;
  readonly each: Weight;
  readonly rows: readonly WeighedRow[];
};

/** A weight is moved by 2 % at most where a scale's coarse step is used. */
const MAX_SHIFT = ratio(0.02);

/** Sizes of one dough share its mixes. `pieces` are made of each size, in their order. */
export function batchOf(dough: Dough, pieces: readonly number[]): Batch {
  const scaled = dough.sizes.reduce((sum, { scaling }, at) => sum + scaling * (pieces[at] ?? 0), 0);
  return batchFrom(dough, scaled / (1 - dough.handlingLoss));
}

export function batchFrom(dough: Dough, all: number): Batch {
  const { mixerLimit, rows, scales } = dough;
  const mixes = all <= 0 ? 0 : mixerLimit === null || mixerLimit <= 0 ? 1 : Math.max(1, countUp(all / mixerLimit));
  const each = mixes === 0 ? 0 : all / mixes;
  const onScale = (value: number) => onSteps([weight(value)], scales, MAX_SHIFT)[0] ?? weight(value);
  return {
    dough: weight(all),
    mixes,
    each: weight(each),
    rows: rows.map(({ name, part, inPreferment }) => {
      const exact = part * each;
      const [perMix, preferment] = [onScale(exact), onScale(exact * inPreferment)];
      // What is weighed adds up: the final mix is the mix on the scale less the preferment on the scale.
      const finalMix = weight(Number((perMix - preferment).toFixed(9)));
      return { name, exact: weight(exact), perMix, preferment, finalMix };
    }),
  };
}
