import type { Block } from "../../shared/model.ts";

/** Name, shop, version, date and the last two changes. */
export const nameBlock: Block = {
  block: "name",
  left: 0,
  lines: [
    { cells: [{ at: 0, role: "title", name: "title", text: "Pan loaf" }] },
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
        { at: 1, role: "input", name: "change_1", unit: "text" },
      ],
    },
    { cells: [{ at: 1, role: "input", name: "change_2", unit: "text" }] },
  ],
};

/** Cautions, where the work can hurt somebody. */
export const cautionsBlock: Block = {
  block: "cautions",
  left: 0,
  lines: [
    "Raw flour, raw egg and raw dough are not for tasting. Keep hands and tools out of a running mixer. Hot water scalds; ice in dough is food.",
    "Fill and friction figures are guides from published tins and mixers: measure your own. Sold weights and allergens follow your local rules and your suppliers' labels.",
  ].map((text) => ({ cells: [{ at: 0, role: "caution" as const, text }] })),
};
