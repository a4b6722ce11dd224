import type { Block } from "../../shared/sheet/model.ts";
import { computedLine, headingLine, inputLine, label } from "./line.ts";

const FOLDS = ["fold_1", "fold_2", "fold_3"];

/** The fat that is rolled into the dough, kept out of the mix. */
export const rollInBlock: Block = {
  block: "roll-in",
  left: 0,
  lines: [
    headingLine("Roll-in", 3),
    inputLine("Fat to roll in", "roll_in_name", "text"),
    {
      cells: [
        label("Share of the base dough"),
        { at: 1, role: "input", name: "roll_in_share", unit: "share" },
        // Published school and trade formulas: 32.8 % (eoibakery.com.au), 28 % (sweetnapa), 26.0 % (bakefromscratch).
        { at: 2, role: "remark", text: "usual 25 to 33 %" },
      ],
    },
    inputLine("Blocks of dough", "blocks", "count"),
    {
      cells: [
        label("Folds (3 single, 4 double)"),
        ...FOLDS.map((name, at) => ({
          at: at + 1,
          role: "input" as const,
          name,
          unit: "count" as const,
          align: "center" as const,
          asks: `Fold ${at + 1} (3 single, 4 double)`,
        })),
      ],
    },
    computedLine("Base dough ({weight})", "base_dough", "weight", '=IF(COUNT(@dough)=0;"";@dough)'),
    computedLine(
      "Fat to roll in ({weight})",
      "roll_in",
      "weight",
      '=IF(COUNT(@dough;@roll_in_share)<2;"";@dough*@roll_in_share)',
    ),
    computedLine(
      "as a share of all flour",
      "roll_in_of_flour",
      "share",
      '=IF(COUNT(@roll_in;@flour)<2;"";@roll_in/@flour)',
    ),
    computedLine(
      "Dough with the fat ({weight})",
      "dough_in_all",
      "weight",
      '=IF(COUNT(@dough)=0;"";@dough*(1+@roll_in_share))',
    ),
    {
      cells: [
        label("One block: dough, fat ({weight})"),
        { at: 1, role: "computed", name: "block_dough", unit: "weight", formula: perBlock("@dough") },
        { at: 2, role: "computed", name: "block_fat", unit: "weight", formula: perBlock("@roll_in") },
      ],
    },
    computedLine(
      "Layers of fat",
      "layers",
      "count",
      `=IF(COUNT(@fold_1:@fold_3)=0;"";${FOLDS.map((name) => `IF(@${name}>0;@${name};1)`).join("*")})`,
    ),
  ],
};

function perBlock(weight: string): string {
  return `=IF(COUNT(${weight};@blocks)<2;"";IF(@blocks=0;"";${weight}/@blocks))`;
}
