import type { Block } from "../../shared/sheet/model.ts";

/** Name, shop, version, date and the last two changes. */
export const nameBlockOf = (title: string): Block => ({
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: title }] },
    {
      cells: [
        { at: 0, role: "remark", name: "shop", text: "" },
        { at: 4, role: "label", text: "Version" },
        { at: 5, role: "input", name: "version", unit: "text", value: "1" },
        { at: 7, role: "label", text: "Date" },
        { at: 8, role: "input", name: "date", unit: "date" },
      ],
    },
    {
      cells: [
        { at: 0, role: "label", text: "Last changes" },
        { at: 1, role: "input", name: "change_1", unit: "text", wide: 8 },
      ],
    },
    { cells: [{ at: 1, role: "input", name: "change_2", unit: "text", wide: 8 }] },
    ...[
      [
        "plain",
        "Built with standard functions: a copy works without Gramwright. Choose types and shapes from their lists.",
      ],
      [
        "plain&cost",
        "Only these cells still need the add-on: prices per {priced}, Ingredient list, Allergens, and In all of it under Nutrition. Without Gramwright, type over them.",
      ],
    ].map(([condition = "", text = ""]) => ({ when: condition, cells: [{ at: 0, role: "remark" as const, text }] })),
  ],
});

export const nameBlock: Block = nameBlockOf("Pan loaf");

export const CAUTIONS = {
  raw: "Do not taste raw flour, egg, dough or batter. Stop the mixer before you reach in or probe. Hot water scalds. Make ice from drinking water.",
  guides:
    "Fill and friction figures are guides: measure your own. For sold weights and allergens, local law and your supplier's specification outrank Gramwright.",
  /** FDA, Key temperatures for egg safety in food service operations: cold holding at 5 °C (41 °F) or below. */
  egg: "Keep egg, milk and cream, and doughs and batters with them, at 5 °C (41 °F) or below until used. Bake them through. Your food code comes first.",
  oven: "Hot tins, trays and fat burn: use dry oven cloths and keep the way to the rack clear.",
} as const;

/** Cautions, where the work can hurt somebody. */
export const cautionsOf = (...texts: readonly string[]): Block => ({
  block: "cautions",
  left: 0,
  lines: texts.map((text) => ({ cells: [{ at: 0, role: "caution" as const, text }] })),
});
