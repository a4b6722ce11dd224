import { cell, optional } from "../../../shared/cells/decoder.ts";
import { capacityCell, count, weightUnit } from "../../../shared/cells/readers.ts";
import { fillCell, tinDough } from "../../../shared/tins/tin-guide.ts";
import { define } from "../define.ts";

export const TINDOUGH = define({
  name: "BAKE_TINDOUGH",
  family: "Tins",
  summary: "Dough weight for a tin, from g of dough per cm³ or the usual figure for a kind of dough.",
  args: {
    capacity: { is: cell(capacityCell()), says: "What the tin holds, in cm³." },
    fill: {
      is: cell(fillCell()),
      says: "Dough per capacity in g/cm³, such as 0.34, or a kind of dough such as lidded white.",
    },
    tins: {
      is: optional(count<number>("a number of tins such as 12"), 1),
      says: "(optional) How many tins; 1 when left out.",
    },
    unit: { is: optional(weightUnit(), "g"), says: '(optional) Unit of the dough: "g" (default), "kg", "oz" or "lb".' },
  },
  returns: { shape: "cell", says: "The dough, in the unit." },
  rowwise: true,
  examples: [
    {
      call: [3408.5, 0.34],
      gives: 1158.89,
      origin: "derived",
      source: "derived: 3408.5 × 0.34",
    },
    {
      call: [3408.5, "lidded white"],
      gives: 1154,
      origin: "published",
      source: "a King Arthur pain de mie quoted at yumarama.com/3919: 40.7 oz (1154 g) in a lidded 13 × 4 × 4 inch tin",
      within: 5,
    },
    {
      call: [3408.51, "dense rye", 1, "lb"],
      gives: 4.4,
      origin: "published",
      source: "The Fresh Loaf node/22023: 4.4 lb of dense rye with whole berries in 13 × 4 × 4 inches",
      within: 0.15,
    },
  ],
  refusals: [
    {
      call: [3408, 34],
      because: "BAKE_TINDOUGH: fill is 34; it lies between 0.05 and 2 g of dough per cm³ of tin: enter 0.34, say.",
    },
    {
      call: [1900, ""],
      because: "BAKE_TINDOUGH: fill is blank; enter a fill in g/cm³ such as 0.34, or a kind of dough.",
    },
  ],
  compute: ({ capacity, fill, tins, unit }) => tinDough(capacity, fill, tins, unit),
});
