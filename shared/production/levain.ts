// Levain and starters: a chain of feeds, each ripe in a window, each seeding the next, counted back from the doughs.
import type { Moment } from "./clock.ts";

export type Levain = {
  readonly name: string;
  /** Water on flour, 1 being 100 %; of what is built and of the mother that begins the chain. */
  readonly hydration: number;
  readonly motherHydration: number;
  /** Seed on the flour that is fed, or its weight; the weight wins. */
  readonly seedShare: number;
  readonly seedWeight: number | null;
  /** Ripe from so many to so many minutes after it was fed. */
  readonly ripeFrom: number;
  readonly ripeTo: number;
  /** Mother that is there, and what is to be left for the next time. */
  readonly mother: number;
  readonly keep: number;
};
/** A dough takes so much of it at a moment. */
export type LevainUse = { readonly at: Moment; readonly weight: number; readonly by: string };

export type Feeding = {
  readonly at: Moment;
  readonly ripeFrom: Moment;
  readonly ripeTo: Moment;
  readonly seed: number;
  readonly flour: number;
  readonly water: number;
  readonly total: number;
  readonly uses: readonly LevainUse[];
  /** What is set aside of it: the seed of the next feed, or the mother that is kept. */
  readonly setAside: number;
};
export type Chain = {
  readonly feeds: readonly Feeding[];
  /** Mother that the first feed does not take. */
  readonly left: number;
  /** Seed that the first feed wants beyond the mother; 0 where there is enough. */
  readonly seedShort: number;
};

const MAX_GROWING = 8;

/**
 * The fewest feeds that have every dough in a ripe window. Each feed is as late as its first dough allows; the last one also
 * makes what is kept. Where the mother is smaller than the first seed, feeds come before that grow it.
 */
export function levainChain(levain: Levain, uses: readonly LevainUse[]): Chain {
  const groups = windows(levain, uses);
  if (groups.length === 0) return { feeds: [], left: levain.mother, seedShort: 0 };
  const feeds: Feeding[] = [];
  let aside = levain.keep;
  for (let at = groups.length - 1; at >= 0; at--) {
    const uses = groups[at] ?? [];
    const first = uses[0] as LevainUse;
    const isFirst = at === 0;
    const feed = feeding(levain, later(first.at, -levain.ripeFrom), uses, aside, isFirst);
    feeds.unshift(feed);
    aside = feed.seed;
  }
  return grown(levain, feeds);
}

/** Doughs that one feed serves: all within its window from the first of them. */
function windows({ ripeFrom, ripeTo }: Levain, uses: readonly LevainUse[]): LevainUse[][] {
  const groups: LevainUse[][] = [];
  const long = Math.max(0, ripeTo - ripeFrom);
  for (const use of [...uses].sort((a, b) => a.at - b.at)) {
    const group = groups[groups.length - 1];
    if (group !== undefined && use.at <= (group[0]?.at ?? 0) + long) group.push(use);
    else groups.push([use]);
  }
  return groups;
}

const later = (at: Moment, minutes: number) => (at + minutes) as Moment;

function feeding(
  levain: Levain,
  at: Moment,
  uses: readonly LevainUse[],
  setAside: number,
  fromMother: boolean,
): Feeding {
  const { hydration, seedShare, seedWeight } = levain;
  const seedHydration = fromMother ? levain.motherHydration : hydration;
  const total = uses.reduce((sum, { weight }) => sum + weight, 0) + setAside;
  const allFlour = total / (1 + hydration);
  // The share is of the flour fed, so the flour inside the seed comes off first.
  const seed = seedWeight ?? (allFlour * seedShare) / (1 + seedShare / (1 + seedHydration));
  const flour = allFlour - seed / (1 + seedHydration);
  return {
    at,
    ripeFrom: later(at, levain.ripeFrom),
    ripeTo: later(at, levain.ripeTo),
    seed,
    flour,
    water: total - seed - flour,
    total,
    uses,
    setAside,
  };
}

/** Feeds that make the first seed out of a mother that is smaller. */
function grown(levain: Levain, feeds: Feeding[]): Chain {
  for (let more = 0; more < MAX_GROWING; more++) {
    const first = feeds[0] as Feeding;
    // Without a mother there is nothing to grow.
    if (levain.mother <= 0 || levain.seedWeight !== null || first.seed <= levain.mother * (1 + 1e-9)) break;
    // The feed that was the first is seeded from a feed now, which has the levain's own hydration.
    const next = feeding(levain, first.at, first.uses, first.setAside, false);
    const grow = feeding(levain, later(first.at, -levain.ripeFrom), [], next.seed, true);
    if (!(grow.seed < next.seed)) break;
    feeds[0] = next;
    feeds.unshift(grow);
  }
  const seed = feeds[0]?.seed ?? 0;
  const short = seed - levain.mother;
  return { feeds, left: Math.max(0, -short), seedShort: short > 1e-9 * Math.max(1, seed) ? short : 0 };
}

/** Doughs that no feed has ripe for them, of feeds that were moved or doughs that were: each with when it is ripe. */
export function unripe(feeds: readonly Feeding[]): { readonly use: LevainUse; readonly feed: Feeding }[] {
  return feeds.flatMap((feed) =>
    feed.uses.flatMap((use) => (use.at < feed.ripeFrom || use.at > feed.ripeTo ? [{ use, feed }] : [])),
  );
}

/** Flour and water that a chain takes, which stand in the needs in the place of the doughs' levain. */
export const fedIn = ({ feeds }: Chain): { readonly flour: number; readonly water: number } => ({
  flour: feeds.reduce((sum, { flour }) => sum + flour, 0),
  water: feeds.reduce((sum, { water }) => sum + water, 0),
});
