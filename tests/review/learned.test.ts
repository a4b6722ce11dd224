import { expect, test } from "vitest";
import { frictionSays, lossSays } from "../../shared/review/log-notes.ts";

const LINE = { zero: -1.5, perMinute: 1.25, miss: 0.5, mixes: 8, unit: "C" } as const;

test("a friction factor is told for the sheet's minutes, with how far the mixes lie off it", () => {
  // −1.5 + 8 × 1.25 = 8.5; with a preferment's temperature four thirds of it, 11.33
  expect(frictionSays(LINE, 8, 3)).toBe("8.5 °C at 8 min, from 8 mixes that lie 0.5 °C off it typically.");
  expect(frictionSays(LINE, 8, 4)).toBe("11.3 °C at 8 min, from 8 mixes that lie 0.7 °C off it typically.");
  expect(frictionSays(LINE, null, 3)).toMatch(/^-1\.5, and 1\.25 more for each minute of mixing, from 8 mixes/);
});

test("too few mixes, and mixes too far apart, are said", () => {
  expect(frictionSays({ ...LINE, mixes: 4 }, 8, 3)).toMatch(/ That is too few to go by: log 5 mixes\.$/);
  expect(frictionSays({ ...LINE, miss: 3.2 }, 8, 3)).toMatch(
    / They lie too far apart to go by: check the thermometers/,
  );
  expect(frictionSays({ ...LINE, miss: 3.2, unit: "F" }, 8, 3)).not.toMatch(/too far apart/);
});

test("a loss is the log's own, over all bakes, with the least and the most of one", () => {
  // 1 − (6945 + 7020 + 6990) ÷ (7850 + 7910 + 7825) = 11.1512 %; 11.529, 11.252 and 10.671 % alone.
  const bakes = [
    { before: 7850, after: 6945 },
    { before: 7910, after: 7020 },
    { before: 7825, after: 6990 },
  ];
  expect(lossSays(bakes)).toBe("11.2 % over 3 bakes, from 10.7 % to 11.5 %.");
  expect(lossSays(bakes.slice(0, 2))).toMatch(/^11\.4 % over 2 bakes, .* That is too few to go by: log 3 bakes\.$/);
  expect(lossSays(bakes.slice(0, 1))).toBe("11.5 % over one bake. That is too few to go by: log 3 bakes.");
  expect(lossSays([...bakes, { before: 7850, after: 6100 }])).toMatch(
    / They lie too far apart to go by: look for a slip/,
  );
  expect(lossSays([])).toBeNull();
});
