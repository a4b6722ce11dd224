// A weight per area: what a round that is known to be right has on each square of its length.

import { tidy } from "../../shared/base/number.ts";
import { type Fault, isFault } from "../../shared/base/refusal.ts";
import { showNumber } from "../../shared/base/show.ts";
import { fromCentimetres, fromGrams, toCentimetres, toGrams, type Weight, weight } from "../../shared/base/units.ts";
import { number } from "../../shared/cells/cell.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";

/** The units that it is in. */
type Over = { readonly weight: "g" | "oz"; readonly length: "cm" | "in" };

/** What the template has of its own. */
type Inputs = { readonly number: (name: string) => number | null };

const BARE = number("a weight per area such as 0.40", { above: 0, max: 1000 }, { threeDecimals: true });
const PER_AREA = /^(.*?[\d½⅓⅔¼¾⅛⅜⅝⅞])\s*(g|oz)\s*\/\s*(cm|in)(?:²|2)\.?$/i;

export function readPerArea(text: string, units: Over): number | Fault {
  const [, bare = text, of = "", over = ""] = PER_AREA.exec(text.trim()) ?? [];
  const weight = BARE.read(bare);
  if (isFault(weight) || of === "") return weight;
  const from: Over = {
    weight: of.toLowerCase() === "g" ? "g" : "oz",
    length: over.toLowerCase() === "cm" ? "cm" : "in",
  };
  return tidy(perAreaIn(weight, from, units));
}

/** A length stands in it twice, under the line. */
export function perAreaIn(value: number, from: Over, to: Over): number {
  const one = fromCentimetres(toCentimetres(1, from.length), to.length);
  return fromGrams(toGrams(value, from.weight), to.weight) / one ** 2;
}

/** Asks for what is missing, and about two figures that contradict each other. */
export function askPerArea(inputs: Inputs, units: Over, faults: FieldFault[]): void {
  const [typed, of, across] = ["per_area", "known_weight", "known_diameter"].map(inputs.number);
  if (typed != null && of != null && across != null && Math.abs(of / area(across) / typed - 1) > 0.01) {
    const unit = `${units.weight}/${units.length}²`;
    const says = `That round has ${showNumber(of / area(across), 3)} ${unit}, and the weight per area says ${showNumber(typed, 3)}; clear one of the two.`;
    faults.push(fieldFault("known_weight", says));
  }
  if (perArea(inputs) !== null || faults.some(({ at }) => /^(?:per_area|known_)/.test(at))) return;
  const says = "Enter the weight per area, or weight and diameter of a round that is known to be right.";
  faults.push(fieldFault("per_area", says, true));
}

/** In the sheet's own unit of weight over its unit of length squared. */
function perArea(inputs: Inputs): number | null {
  const [typed, of, across] = ["per_area", "known_weight", "known_diameter"].map(inputs.number);
  if (typed != null) return typed;
  return of == null || across == null ? null : of / area(across);
}

/** What a round of a diameter is scaled at; null while that cannot be told. */
export function roundWeight(diameter: number | null, inputs: Inputs): Weight | null {
  const per = perArea(inputs);
  return diameter === null || per === null ? null : weight(area(diameter) * per);
}

const area = (diameter: number): number => (Math.PI / 4) * diameter ** 2;
