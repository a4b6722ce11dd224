// The shop's settings: names and words in a sheet of the workbook, fields in the panel.
import type { Value, Values } from "../../shared/sheet/model.ts";
import { changeUnits, type Draft, FIELDS, type FieldName, USUAL_STEPS } from "./draft.ts";
import { readQuantity, type Units } from "./quantity.ts";
import { inOtherUnits, unitSign } from "./unit-change.ts";

export type Shop = {
  readonly name: string;
  readonly units: Units;
  /** Whose labelling rules it follows; "" where nobody said. */
  readonly law: string;
  /** As typed in the sheet; a blank one is left out. */
  readonly fields: Readonly<Partial<Record<FieldName, string>>>;
};
type Rows = readonly (readonly [name: string, value: string])[];

const SHOP = "Shop";
const LAW = "Labelling rules";
/** Printed under the list on a label; no form asks for it. */
const ADDRESS = "Business address";
/** A currency has two, unless somebody says so: yen have none, dinars three. */
const DECIMALS = "Decimals of prices";
const UNITS = {
  weight: { name: "Weights in", g: "grams", oz: "ounces" },
  temperature: { name: "Temperatures in", C: "°C", F: "°F" },
  length: { name: "Lengths in", cm: "cm", in: "inches" },
} as const;
/** What belongs to the shop and not to a formula: scales, mixer, bench and kitchen. */
const OF_THE_SHOP = [
  "step_coarse",
  "step_fine",
  "mixer_limit",
  "mixer_least",
  "handling_loss",
  "flour_temp",
  "room_temp",
  "tap_temp",
  "friction_own",
] as const satisfies readonly FieldName[];

/** What the sheet of settings is built with: numbers get their unit, so that they mean the same in other units. */
export function settingsOf(draft: Draft): Values {
  const { units, shop, fields } = draft;
  const rows: Rows = [
    [UNITS.weight.name, UNITS.weight[units.weight]],
    [UNITS.temperature.name, UNITS.temperature[units.temperature]],
    [UNITS.length.name, UNITS.length[units.length]],
    [SHOP, shop.trim()],
    [LAW, draft.law],
    [ADDRESS, ""],
    [DECIMALS, ""],
    ...OF_THE_SHOP.map((name) => [FIELDS[name].label, withUnit(name, fields[name].trim(), units)] as const),
  ];
  return { setting: rows.map(([name]) => name), setting_value: rows.map(([, value]) => value) };
}

function withUnit(name: FieldName, text: string, units: Units): string {
  const { quantity } = FIELDS[name];
  const sign = unitSign(quantity === "factor" ? "temperature" : quantity, units);
  return /^[\d.,]+$/.test(text) && sign !== "" ? `${text} ${sign}` : text;
}

/** The settings that stand in the sheet; names that are none of ours are somebody's own notes. */
export function readShop(rows: Rows): Shop {
  const plain = (text: string) => text.trim().toLowerCase();
  const textOf = (name: string) => rows.find(([one]) => plain(one) === plain(name))?.[1].trim() ?? "";
  const begins = (name: string, way: RegExp) => way.test(plain(textOf(name)).replace(/^(?:degrees|°)\s*/, ""));
  return {
    name: textOf(SHOP),
    law: ["EU", "UK", "US"].find((one) => plain(one) === plain(textOf(LAW))) ?? "",
    units: {
      weight: begins(UNITS.weight.name, /^o/) ? "oz" : "g",
      temperature: begins(UNITS.temperature.name, /^f/) ? "F" : "C",
      length: begins(UNITS.length.name, /^(?:i|")/) ? "in" : "cm",
    },
    fields: Object.fromEntries(
      OF_THE_SHOP.flatMap((name) => {
        const text = textOf(FIELDS[name].label);
        return text === "" ? [] : [[name, text]];
      }),
    ),
  };
}

/** A new formula in the units of the shop, with its scales, mixer and kitchen. What cannot be read is said at its field. */
export function beginWith(draft: Draft, shop: Shop): void {
  changeUnits(draft, shop.units, new Map());
  draft.shop = shop.name;
  draft.law = shop.law;
  Object.assign(draft.fields, shop.fields);
}

/** What a sheet gets of the settings without a form to show them in, in its own units; what cannot be read stays blank. */
export function shopValues(shop: Shop | null, to: Units): [name: string, value: Value][] {
  const numberOf = (field: FieldName, text: string, from: Units): [string, Value][] => {
    const { quantity } = FIELDS[field];
    const number = readQuantity(inOtherUnits(text, quantity, from, to) ?? text, quantity, to);
    return typeof number === "number" ? [[field, number]] : [];
  };
  const usual = USUAL_STEPS[to.weight];
  const scales = (Object.keys(usual) as FieldName[]).flatMap((field) => numberOf(field, usual[field] ?? "", to));
  if (shop === null) return scales;
  const { name, law, fields, units } = shop;
  const numbers = OF_THE_SHOP.flatMap((field) => {
    // A scale that is like most stays so in other units, as in the form.
    const isUsual = units.weight !== to.weight && fields[field] === USUAL_STEPS[units.weight][field];
    return isUsual ? [] : numberOf(field, fields[field] ?? "", units);
  });
  const words: [string, Value][] = [
    ["shop", name],
    ["law", law],
  ];
  const known = new Set(numbers.map(([field]) => field));
  return [...words.filter(([, text]) => text !== ""), ...numbers, ...scales.filter(([field]) => !known.has(field))];
}
