import type { SheetModel } from "../shared/sheet/model.ts";
import { SETTINGS_NAME } from "../shared/sheet/workbook-names.ts";
import { CAUTIONS, cautionsOf } from "./blocks/name.ts";

/** How one shop weighs, mixes and bakes: what every new formula begins with, to be read and changed in its cells. */
export const settings: SheetModel = {
  name: "settings",
  title: "Bakery settings",
  says: "Units, mixer, scales and kitchen of the shop: what every new formula begins with.",
  widths: [220, 150, 320],
  parts: [],
  defines: { name: SETTINGS_NAME, from: "setting", to: "setting_value" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Bakery settings" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Every new formula begins with these. Type over a value; a blank one is left to each formula.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "Labelling rules are EU, UK or US. Prices have two decimals if blank. Existing sheets do not change.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "settings",
        left: 0,
        rows: 18,
        columns: [
          { name: "setting", head: "Setting", unit: "text", role: "input" },
          { name: "setting_value", head: "Value", unit: "text", role: "input" },
        ],
      },
    ],
    [cautionsOf(CAUTIONS.raw)],
  ],
  sample: {
    title: "Bakery settings",
    setting: [
      "Weights in",
      "Temperatures in",
      "Lengths in",
      "Shop",
      "Labelling rules",
      "Mixer capacity",
      "Flour temperature",
    ],
    setting_value: ["grams", "°C", "cm", "Tern Quay Bakehouse", "UK", "20 kg", "21 °C"],
  },
  expects: { "setting_value/6": "20 kg" },
};
