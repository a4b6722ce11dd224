import { minutes } from "../../shared/base/units.ts";
import type { Formula } from "../../shared/sheet/model.ts";
import { MELTING, WATER_HEAT } from "../../shared/water/ice.ts";
import { frictionGuide, MIXINGS, type Mixing } from "../../shared/water/temperature.ts";
import { YEAST_LIMITS } from "../../shared/water/water-note.ts";
import type { Figure } from "./plain-steps.ts";

// Water and ice in the sheet's own sums, as shared/water/temperature.ts, ice.ts and water-note.ts have them.

type Scale = "C" | "F";
const byScale = (formula: (scale: Scale) => string): Formula => [
  { when: "F", formula: formula("F") },
  { formula: formula("C") },
];

/** A figure of few digits without a decimal sign. */
function fraction(figure: number): string {
  const parts = [1, 10, 100, 1000].find((one) => Number.isInteger(Number((figure * one).toPrecision(12)))) ?? 10_000;
  return parts === 1 ? String(figure) : `${Math.round(figure * parts)}/${parts}`;
}
const degrees = (celsius: number, scale: Scale) => fraction(scale === "C" ? celsius : (celsius * 9) / 5 + 32);
const difference = (kelvin: number, scale: Scale) => fraction(scale === "C" ? kelvin : (kelvin * 9) / 5);

/** A factor of a way of mixing: flat, or so much a minute. */
function guide(place: number, scale: Scale): string {
  const factors = (Object.keys(MIXINGS) as Mixing[]).map((mixing) => {
    const [one = 0, two = 0] = [1, 2].map((min) => frictionGuide(mixing, minutes(min))[place]);
    const factor = difference(one, scale);
    return `"${mixing}";${one === two ? factor : `IF(COUNT(@minutes)=0;"";@minutes*${factor})`}`;
  });
  return `=SWITCH(@mixing;${factors.join(";")};"")`;
}

export const PLAIN_FRICTION_GUIDE: readonly Formula[] = [0, 1, 2].map((place) =>
  byScale((scale) => guide(place, scale)),
);

export const PLAIN_WATER_TEMP: readonly Formula[] = [
  [
    '=IF(COUNT(@dough_target;@flour_temp;@room_temp;@friction)<4;"";IF((LEN(@preferment_temp)>0)*(COUNT(@preferment_temp)=0)=1;"";',
    "(1+COUNT(@flour_temp:@preferment_temp))*@dough_target-SUM(@flour_temp:@preferment_temp)-@friction))",
  ].join(""),
];

/** What cools a gram of water by melting, in degrees of water. */
const MELTS = `(${fraction(MELTING)})/(${fraction(WATER_HEAT)})`;
const share = (scale: Scale) =>
  scale === "C"
    ? `(@tap_temp-@water_temp)/(@tap_temp+${MELTS})`
    : `(@tap_temp-@water_temp)*5/9/((@tap_temp-32)*5/9+${MELTS})`;

export const WATER_FIGURES: readonly Figure[] = [
  {
    says: "Ice, of the water",
    name: "ice_share",
    when: "water",
    formula: byScale(
      (scale) =>
        `=IF(COUNT(@water_temp;@tap_temp)<2;"";IF(@tap_temp<${degrees(0, scale)};"";IF(@water_temp>=@tap_temp;0;${share(scale)})))`,
    ),
  },
];

const ofWater = (part: string) =>
  `=IF(COUNT(@ice_share;@water_mix)<2;"";IF(ROUND(@ice_share;9)>1;"";@water_mix*${part}))`;
export const PLAIN_ICE: readonly Formula[] = [ofWater("@ice_share"), ofWater("(1-@ice_share)")];

/** The sentence of waterNote() in shared/water/water-note.ts. */
function note(scale: Scale): string {
  const at = (cell: string) => `ROUND(${cell};1)&" °${scale}"`;
  const limits = Object.entries(YEAST_LIMITS)
    .map(([yeast, limit]) => `"${yeast}";${degrees(limit, scale)}`)
    .join(";");
  const limit = `SWITCH(@yeast;${limits};${degrees(YEAST_LIMITS.fresh, scale)})`;
  const scalds = `IF(ROUND(@water_temp;9)>=${degrees(49, scale)};" Water this hot scalds: pour and carry it with care.";"")`;
  return [
    '=IF(COUNT(@water_temp;@tap_temp)<2;"";',
    `IF(ROUND(@water_temp;9)>${limit};"Water of "&${at("@water_temp")}&" is "&IF(@yeast="none";"hotter than a dough should meet";"too hot for "&IF(LEN(@yeast)=0;"fresh";@yeast)&" yeast ("&${at(limit)}&" at most)")&": warm the flour or the room, or accept a cooler dough and a longer rise."&${scalds};`,
    `IF(ROUND(ABS(@water_temp-@tap_temp);9)<=${difference(0.5, scale)};"Use the tap's water as it is ("&${at("@tap_temp")}&")."&${scalds};`,
    `IF(@water_temp>@tap_temp;"Warm the water to "&${at("@water_temp")}&"."&${scalds};`,
    `IF(COUNT(@ice_share)=0;"";IF(ROUND(@ice_share;9)>1;"Water of "&${at("@water_temp")}&" is colder than ice alone can make it: cool the flour, mix for less time, or accept a warmer dough.";`,
    `"Cool the tap's water to "&${at("@water_temp")}&": about "&ROUND(100*@ice_share;0)&" % of it as ice"&`,
    'IF(@ice_share>1/2;". That is more than half: chill flour and water beforehand, use flake ice, and see that it melts before mixing ends.";", weighed as part of the water. Ice is food: clean water, clean scoop."',
    ")))))))",
  ].join("");
}

export const PLAIN_WATER_NOTE: readonly Formula[] = [byScale(note)];
