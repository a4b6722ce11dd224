import { refuse } from "../base/refusal.ts";
import { atMost } from "../base/scaling.ts";
import { oneOf, showNumber, shownApart } from "../base/show.ts";
import {
  type Centimetres,
  type CubicCentimetres,
  centimetres,
  cubicCentimetres,
  type LengthUnit,
  type SquareCentimetres,
  squareCentimetres,
  toCentimetres,
} from "../base/units.ts";

export const TIN_SHAPES = {
  box: ["loaf", "square", "rectangle", "rectangular", "loaf tin", "sheet"],
  round: ["circle", "circular", "cylinder"],
  ring: ["tube"],
  oval: ["ellipse", "elliptical"],
  dome: ["hemisphere", "half sphere", "bowl"],
  wreath: ["half torus", "savarin"],
  polygon: [],
  water: ["water to the brim", "brim"],
} as const;
export type TinShape = keyof typeof TIN_SHAPES;

/** The sizes of a shape in their order; those in `extra` go together and may be left out. */
type Sizes = { readonly needed: readonly string[]; readonly depthAt: number | null; readonly extra: readonly string[] };
export const TIN_SIZES: Readonly<Record<TinShape, Sizes>> = {
  box: { needed: ["length", "width", "depth"], depthAt: 2, extra: ["base length", "base width"] },
  round: { needed: ["diameter", "depth"], depthAt: 1, extra: ["base diameter"] },
  ring: { needed: ["diameter", "tube diameter", "depth"], depthAt: 2, extra: ["base diameter", "tube base diameter"] },
  oval: { needed: ["length", "width", "depth"], depthAt: 2, extra: ["base length", "base width"] },
  dome: { needed: ["diameter"], depthAt: null, extra: ["depth"] },
  wreath: { needed: ["outer diameter", "tube diameter"], depthAt: null, extra: [] },
  polygon: { needed: ["sides", "side length", "depth"], depthAt: 2, extra: [] },
  water: { needed: ["grams of water"], depthAt: null, extra: [] },
};

/** Density of water at 20 °C, g/cm³ (CIPM formula, Metrologia 38 (2001) 301: 0.998207). */
const WATER_DENSITY = 0.998207;

/** The smallest tins hold some 20 ml; less is most likely kilograms. */
const MIN_WATER = 20;

/** The longest trays and strapped tins measure some 100 cm; more is most likely millimetres. */
const MAX_LENGTH = 120;

type SizeCells = readonly (number | null)[];

/** Sizes by their place, checked: nothing needed is blank, extras come together, nothing is left over. */
function checked(shape: TinShape, sizes: SizeCells, depthNeeded: boolean): number[] {
  const { needed, depthAt, extra } = TIN_SIZES[shape];
  const order = [...needed, ...extra.map((name) => `[${name}]`)].join(", ");
  if (sizes.length > needed.length + extra.length) {
    refuse(`are ${sizes.length}, and a ${shape} tin takes ${order}`, "sizes");
  }
  needed.forEach((name, place) => {
    if ((sizes[place] ?? null) === null && (depthNeeded || place !== depthAt)) {
      refuse(`have no ${name}: place ${place + 1} is blank; a ${shape} tin takes ${order}`, "sizes");
    }
  });
  const sizesGiven = extra.filter((_, place) => (sizes[needed.length + place] ?? null) !== null);
  if (sizesGiven.length > 0 && sizesGiven.length < extra.length) {
    refuse(`have the ${sizesGiven[0]} without the rest; a ${shape} tin takes ${order}`, "sizes");
  }
  sizes.forEach((size, place) => {
    if (size === null) return;
    const name = [...needed, ...extra][place];
    if (size <= 0) refuse(`have ${showNumber(size)} as ${name}; it must be above 0`, "sizes");
    if (shape !== "water" && name !== "sides" && !atMost(size, MAX_LENGTH))
      refuse(
        `have a ${name} of ${shownApart(size, MAX_LENGTH, 2)} cm, more than any tin; enter it with its unit, such as "230 mm"`,
        "sizes",
      );
  });
  return sizes.map((size) => size ?? Number.NaN);
}

/** (A_top + A_base + 4 A_middle) × depth / 6, exact for straight and for evenly tapering walls (prismatoid formula). */
function prismatoid(depth: number, [l, w]: [number, number], [bl, bw]: [number, number]): number {
  return (depth / 6) * (l * w + bl * bw + (l + bl) * (w + bw));
}

/** Capacity to the brim. Sizes are inside sizes, for "water" grams of water; straight walls where no base is given. */
export function tinCapacity(shape: TinShape, sizes: readonly (Centimetres | null)[]): CubicCentimetres {
  const at = checked(shape, sizes, true);
  const [a = 0, b = 0, c = 0, d = a, e = b] = at;
  return cubicCentimetres(capacity(shape, at.length, a, b, c, d, e));
}

function capacity(shape: TinShape, many: number, a: number, b: number, c: number, d: number, e: number): number {
  switch (shape) {
    case "box":
      return prismatoid(c, [a, b], [d, e]);
    case "oval":
      return (Math.PI / 4) * prismatoid(c, [a, b], [d, e]);
    case "round": {
      const base = many > 2 ? c : a;
      const order = "the order is diameter, depth, base diameter";
      if (!atMost(b, a))
        refuse(`have a depth of ${shownApart(b, a, 2)} above the diameter of ${showNumber(a)}; ${order}`, "sizes");
      if (!atMost(a / 4, base))
        refuse(
          `have a base of ${shownApart(base, a / 4, 2)}, less than a quarter of the diameter of ${showNumber(a)}; ${order}`,
          "sizes",
        );
      return (Math.PI / 4) * prismatoid(b, [a, a], [base, base]);
    }
    case "ring":
      refuseWideTube(a, b, "diameter");
      refuseWideTube(d, e, "base diameter");
      return (Math.PI / 4) * (prismatoid(c, [a, a], [d, d]) - prismatoid(c, [b, b], [e, e]));
    case "dome": {
      const rim = a / 2;
      const depth = many > 1 ? b : rim;
      if (!atMost(depth, rim)) {
        refuse(
          `have a depth of ${shownApart(depth, rim, 2)} above half the diameter of ${showNumber(a)}; weigh such a tin with "water"`,
          "sizes",
        );
      }
      return ((Math.PI * depth) / 6) * (3 * rim ** 2 + depth ** 2);
    }
    case "wreath":
      if (!atMost(b, a / 2))
        refuse(
          `have a tube of ${shownApart(b, a / 2, 2)} above half the outer diameter of ${showNumber(a)}; the order is outer diameter, tube diameter`,
          "sizes",
        );
      return Math.PI ** 2 * ((a - b) / 2) * (b / 2) ** 2;
    case "polygon":
      return polygonArea(a, b) * c;
    case "water":
      if (!atMost(MIN_WATER, a))
        refuse(
          `have ${shownApart(a, MIN_WATER, 2)} g of water, less than any tin holds; for kilograms enter "${showNumber(a)} kg"`,
          "sizes",
        );
      return a / WATER_DENSITY;
  }
}

function refuseWideTube(outer: number, tube: number, name: string): void {
  if (atMost(outer, tube))
    refuse(
      `have a tube of ${showNumber(tube)} that fills the ${name} of ${showNumber(outer)}; the order is diameter, tube diameter, depth`,
      "sizes",
    );
}

function polygonArea(sides: number, side: number): number {
  if (!Number.isInteger(sides) || sides < 3)
    refuse(`have ${showNumber(sides)} as the number of sides; enter a whole number from 3`, "sizes");
  return (sides * side ** 2) / (4 * Math.tan(Math.PI / sides));
}

/** Area of the rim; the same sizes, and the depth may be left out. Ring and wreath: the ring alone. */
export function tinArea(shape: TinShape, sizes: readonly (Centimetres | null)[]): SquareCentimetres {
  if (shape === "water") {
    return refuse(
      `is "water", which gives a capacity but no area; choose ${oneOf(Object.keys(TIN_SHAPES).filter((one) => one !== "water"))}`,
      "shape",
    );
  }
  const [a = 0, b = 0] = checked(shape, sizes, false);
  switch (shape) {
    case "box":
      return squareCentimetres(a * b);
    case "oval":
      return squareCentimetres((Math.PI / 4) * a * b);
    case "round":
    case "dome":
      return squareCentimetres((Math.PI / 4) * a ** 2);
    case "ring":
      refuseWideTube(a, b, "diameter");
      return squareCentimetres((Math.PI / 4) * (a ** 2 - b ** 2));
    case "wreath":
      if (!atMost(b, a / 2))
        refuse(`have a tube of ${shownApart(b, a / 2, 2)} above half the outer diameter of ${showNumber(a)}`, "sizes");
      return squareCentimetres((Math.PI / 4) * (a ** 2 - (a - 2 * b) ** 2));
    case "polygon":
      return squareCentimetres(polygonArea(a, b));
  }
}

/** The grams of "water" and the number of a polygon's sides are no lengths. */
export const isLength = (shape: TinShape, place: number): boolean =>
  shape !== "water" && !(shape === "polygon" && place === 0);

/** What a size is called at its place. */
export const sizeName = (shape: TinShape, place: number): string | undefined =>
  [...TIN_SIZES[shape].needed, ...TIN_SIZES[shape].extra][place];

/** The sizes as typed, in centimetres. */
export function tinSizes(shape: TinShape, typed: readonly (number | null)[], unit: LengthUnit): (Centimetres | null)[] {
  return typed.map((size, place) => {
    if (size === null) return null;
    return isLength(shape, place) ? toCentimetres(size, unit) : centimetres(size);
  });
}
