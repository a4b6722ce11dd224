// How much the random tests try: `npm test` a little, always the same; `npm run test:long` fifty times that, from a seed it prints.
const LONG_SEED = process.env.GRAMWRIGHT_LONG_SEED;

export const IS_LONG = LONG_SEED !== undefined;

/** So many tries in `npm test`, fifty times as many in a long run. */
export const tries = (count: number): number => (IS_LONG ? 50 * count : count);

/** Cases of one kind: every third, say, in `npm test`, and all in a long run. */
export const someOf = <T>(cases: readonly T[], step: number, first = 0): readonly T[] =>
  IS_LONG ? cases : cases.filter((_, at) => at % step === first % step);

/** The seed that a test keeps to in `npm test`, or the one of the long run. */
export const seedOf = (fixed: number): number => (LONG_SEED === undefined ? fixed : Number(LONG_SEED));

/** How long, in milliseconds, a test waits for what must happen: a busy computer takes its time. */
export const PATIENCE = 300_000;
