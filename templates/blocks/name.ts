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
        "In the sheet's own formulas: a copy works where the add-on is missing. Kinds, shapes and the like are chosen from their lists.",
      ],
      [
        "plain&cost",
        "Only these cells still need the add-on: prices per {priced}, Ingredient list, Allergens, and In all of it under Nutrition. Where it is missing, delete their formulas and type.",
      ],
    ].map(([condition = "", text = ""]) => ({ when: condition, cells: [{ at: 0, role: "remark" as const, text }] })),
  ],
});

export const nameBlock: Block = nameBlockOf("Pan loaf");

export const CAUTIONS = {
  raw: "Raw flour, raw egg and raw dough are not for tasting. Keep hands and tools out of a running mixer. Hot water scalds; ice in dough is food.",
  guides:
    "Fill and friction figures are guides from published tins and mixers: measure your own. Sold weights and allergens follow your local rules and your suppliers' labels.",
  /** FDA, Key temperatures for egg safety in food service operations: cold holding at 5 °C (41 °F) or below. */
  egg: "Keep egg, milk and cream, and doughs and batters with them, at 5 °C (41 °F) or below until used. Bake them through. Your food code comes first.",
  oven: "Hot tins, trays and fat burn: dry cloths, and a clear way from the oven to the rack.",
} as const;

/** Cautions, where the work can hurt somebody. */
export const cautionsOf = (...texts: readonly string[]): Block => ({
  block: "cautions",
  left: 0,
  lines: texts.map((text) => ({ cells: [{ at: 0, role: "caution" as const, text }] })),
});
