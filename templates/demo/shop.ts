// What an empty local workbook opens with: the Tern Quay Bakehouse, our invented shop, question by question as the sidebar asks.

import { bakeOffLogAsked } from "./bake-off-log.ts";
import { bunAsked } from "./bun.ts";
import { isoOf } from "./days.ts";
import { custardAsked, filledBunAsked } from "./filled-bun.ts";
import { hearthLoafAsked, levainLoafAsked } from "./hearth.ts";
import { cakeBatterAsked, icedCakeAsked, icingAsked } from "./iced-cake.ts";
import { larderAsked } from "./larder.ts";
import { mixLogAsked } from "./mix-log.ts";
import type { DemoQuestion } from "./question.ts";
import { regularAsked } from "./regular-orders.ts";
import { levainAsked, panLoafAsked, ryeTinAsked } from "./tins.ts";

const UNITS = { weight: "g", temperature: "C", length: "cm", parts: [] } as const;

/** The sheet that is in front when the workbook opens. */
export const DEMO_FRONT = "Quay pan loaf";

/**
 * The shop on a given day: a month is logged before it, orders are for the two days after. Larder and mix log come first,
 * because formula sheets read what is there when they are built.
 */
export const demoShop = (today: number): readonly DemoQuestion[] => [
  larderAsked,
  mixLogAsked(today),
  panLoafAsked,
  hearthLoafAsked,
  levainLoafAsked,
  bunAsked,
  ryeTinAsked,
  levainAsked,
  { ask: "list" },
  bakeOffLogAsked(today),
  {
    ask: "build",
    template: "prices",
    options: { weight: "g", temperature: "C", length: "cm", parts: ["products"] },
    values: { title: "Costs and prices", shop: "Tern Quay Bakehouse", tried: "Strong white flour", tried_price: 24 },
  },
  regularAsked,
  {
    ask: "day",
    day: isoOf(today + 1),
    days: [isoOf(today + 1), isoOf(today + 2)],
    orders: [
      { sheet: "Quay pan loaf", size: "large", pieces: 24, day: isoOf(today + 1) },
      { sheet: "Quay pan loaf", size: "small", pieces: 12, day: isoOf(today + 1) },
      { sheet: "Quay hearth loaf", size: "round", pieces: 40, day: isoOf(today + 1) },
      { sheet: "Harbour levain loaf", size: "large", pieces: 18, day: isoOf(today + 1) },
      { sheet: "Harbour levain loaf", size: "small", pieces: 16, day: isoOf(today + 1) },
      { sheet: "Ferry bun", size: "bun", pieces: 150, day: isoOf(today + 1) },
      { sheet: "Lantern rye tin", size: "tin", pieces: 24, day: isoOf(today + 1) },
      { sheet: "Quay pan loaf", size: "large", pieces: 24, day: isoOf(today + 2) },
      { sheet: "Harbour levain loaf", size: "large", pieces: 51, day: isoOf(today + 2) },
      // Less dough than the mixer's least.
      { sheet: "Ferry bun", size: "bun", pieces: 40, day: isoOf(today + 2) },
    ],
  },
  { ask: "card", sheet: "Quay pan loaf", kind: "values", by: "pieces", amount: 48, ingredient: "" },
  { ask: "card", sheet: "Ferry bun", kind: "living", by: "pieces", amount: 150, ingredient: "" },
  custardAsked,
  filledBunAsked,
  cakeBatterAsked,
  icingAsked,
  icedCakeAsked,
  // Dough, custard, batter and icing are priced by their own sheets.
  { ask: "link" },
  { ask: "build", template: "allergen-table", options: UNITS, values: { title: "Allergen table" } },
  { ask: "build", template: "label-text", options: UNITS, values: { title: "Label text", date: today } },
  {
    ask: "build",
    template: "price-lists",
    options: UNITS,
    values: {
      title: "Price lists",
      pays_customer: ["Café Mole", "Harbour inn"],
      pays_by: ["wholesale", "wholesale"],
      list_for: ["wholesale", "wholesale", "Café Mole"],
      list_product: ["Quay pan loaf", "Ferry bun", "Ferry bun"],
      list_size_name: ["large", "bun", "bun"],
      list_price: [2.9, 0.6, 0.55],
    },
  },
];
