// What an empty local workbook opens with: sheets of the Tern Quay Bakehouse, our invented shop.
import type { Order } from "../shared/bench.ts";
import { panLoaf } from "./pan-loaf.ts";

export const DEMO: readonly Order[] = [
  {
    template: panLoaf.name,
    options: { weight: "g", temperature: "C", length: "cm", parts: panLoaf.parts },
    values: panLoaf.sample,
  },
];
