import { stockLimit } from "../../../shared/base/scaling.ts";
import type { Weight } from "../../../shared/base/units.ts";
import { column } from "../../../shared/cells/decoder.ts";
import { someWeight } from "../../../shared/cells/readers.ts";
import { define, down } from "../define.ts";

export const STOCKLIMIT = define({
  name: "BAKE_STOCKLIMIT",
  family: "Formula",
  summary: "How many batches your stock allows, and which ingredient runs out first.",
  args: {
    weights: {
      is: column(someWeight<Weight>()),
      says: "The column of what the formula takes of each ingredient, such as C5:C12, all in one unit.",
    },
    stock: {
      is: column(someWeight<Weight>()),
      says: "The column of what is in stock, such as D5:D12, in the same unit; blank rows do not limit.",
    },
  },
  returns: {
    shape: "row",
    cells: ["factor", "limiting row"],
    says: "Two cells: the factor, and the limiting row counted from the top.",
  },
  examples: [
    {
      call: [down(10, 6, 2), down(25, "", 4)],
      gives: [[2, 3]],
      origin: "derived",
      source: "derived: the lesser of 25 ÷ 10 and 4 ÷ 2",
    },
  ],
  refusals: [
    {
      call: [down(10, 6), down("", "")],
      because: "BAKE_STOCKLIMIT: stock is blank throughout; enter the stock of at least one ingredient.",
    },
  ],
  compute: ({ weights, stock }) => {
    const { factor, row } = stockLimit(weights, stock);
    return [factor, row];
  },
});
