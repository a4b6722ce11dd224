import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { showNumber, shownShare, shownWeight } from "../base/show.ts";
import { type Ratio, type Weight, weight } from "../base/units.ts";
import { type FlourAndWater, flourAndWater } from "./preferment.ts";

export type Feed = FlourAndWater & { readonly starter: Weight; readonly total: Weight };
type Hydrations = { readonly now: Ratio; readonly wanted: Ratio };

/** Three a day for a week; longer plans start over from a spoonful. */
export const MAX_FEEDS = 21;

/** Feeds that each multiply the starter alike, from `start` to `final`; the first brings it to the hydration wanted. */
export function feedPlan(start: Weight, final: Weight, feeds: number, hydration: Hydrations): Feed[] {
  if (!Number.isInteger(feeds)) refuse(`is ${showNumber(feeds)}; enter a whole number`, "feeds");
  if (atMost(final, start)) {
    refuse(
      `is ${shownWeight(start)}, and a feed only adds to it; enter less than the ${shownWeight(final)} that the last feed makes`,
      "start",
    );
  }
  refuseUncorrectable(start, final, feeds, hydration);
  const times = (final / start) ** (1 / feeds);
  let starter = start;
  let inside = flourAndWater(start, hydration.now);
  return Array.from({ length: feeds }, (_, index): Feed => {
    const total = weight(index === feeds - 1 ? final : start * times ** (index + 1));
    const whole = flourAndWater(total, hydration.wanted);
    const feed = { starter, flour: added(whole.flour, inside.flour), water: added(whole.water, inside.water), total };
    starter = total;
    inside = whole;
    return feed;
  });
}

/** Never a hair below 0. */
const added = (whole: number, inside: number): Weight => weight(atMost(whole, inside) ? 0 : whole - inside);

/** A first feed that is too small cannot hold the flour, or the water, that the starter brings. */
function refuseUncorrectable(start: Weight, final: Weight, feeds: number, { now, wanted }: Hydrations): void {
  const [has, takes] = [flourAndWater(weight(1), now), flourAndWater(weight(1), wanted)];
  const least = Math.max(has.flour / takes.flour, has.water === 0 ? 0 : has.water / takes.water);
  const most = final / least ** feeds;
  if (atMost(start, most)) return;
  const fits = most > 0 ? `at most ${shownWeight(most, "at most")} fits` : "no dry feed does that";
  refuse(
    `is ${shownWeight(start)}, too much for the first feed to bring its hydration from ${shownShare(now)} to ${shownShare(wanted)}; ${fits}`,
    "start",
  );
}
