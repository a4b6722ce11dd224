import { number, word } from "../../../shared/cells/cell.ts";
import { cell, column, optional } from "../../../shared/cells/decoder.ts";
import { lengthUnit } from "../../../shared/cells/readers.ts";
import { sizedReader, sizesTable } from "../../../shared/tins/size-reader.ts";
import { TIN_SHAPES } from "../../../shared/tins/tin.ts";
import { matchTins, TIN_MEASURES } from "../../../shared/tins/tin-match.ts";
import { define, down } from "../define.ts";

export const TINMATCH = define({
  name: "BAKE_TINMATCH",
  family: "Tins",
  summary: "Which of your tins fits: each tin's capacity or area against the recipe's, and the nearest tin.",
  args: {
    wanted: {
      is: cell(
        sizedReader(number<number>("a capacity in cm³ or an area in cm², such as 1900", { above: 0, max: 1e9 })),
      ),
      says: "What the recipe's tin holds, in cm³, or the area of its rim, in cm²; or either with its unit.",
    },
    shapes: {
      is: column(word(TIN_SHAPES)),
      says: "The column of shapes, such as A2:A9: box, round, ring, oval, dome, wreath, polygon or water.",
    },
    sizes: {
      is: sizesTable(),
      says: "The table of sizes, such as B2:E9, a row for each tin, in BAKE_TINCAPACITY's order.",
    },
    by: {
      is: optional(word(TIN_MEASURES), "capacity"),
      says: '(optional) What is compared: "capacity" (default), or "area" for a layer of the same depth.',
    },
    unit: { is: optional(lengthUnit(), "cm"), says: '(optional) Unit of the sizes: "cm" (default), "mm" or "in".' },
  },
  returns: {
    shape: "rows",
    cells: ["of what is wanted", "nearest row"],
    says: "A row for each tin: its capacity or area over what is wanted. Beside the first stands the row of the nearest tin.",
  },
  examples: [
    {
      call: [
        729.66,
        down("round", "round", "round"),
        [
          [8, 3],
          [9, 3],
          [16, 3],
        ],
        "area",
        "in",
      ],
      gives: [
        [4 / 9, 2],
        [0.5625, ""],
        [16 / 9, ""],
      ],
      within: 1e-5,
      origin: "published",
      source: "Mumsnet 1769010: a 9 inch round is 0.5625 of a 12 inch one (729.66 cm²) at the same depth",
    },
    {
      call: [
        3408.5,
        down("box", "", "round"),
        [
          [13, 4, 4],
          ["", "", ""],
          [9, 4, ""],
        ],
        "",
        "in",
      ],
      gives: [
        [(208 * 16.387064) / 3408.5, 1],
        ["", ""],
        [(Math.PI * 81 * 16.387064) / 3408.5, ""],
      ],
      origin: "derived",
      source: "derived: 208 and 81 π cubic inches of 16.387064 cm³ (NIST SP 811)",
    },
    {
      call: [
        "2 l",
        down("round", "water"),
        [
          ["9 in", "2 in"],
          ["1.5 kg", ""],
        ],
      ],
      gives: [
        [(Math.PI * 40.5 * 16.387064) / 2000, 1],
        [1500 / 0.998207 / 2000, ""],
      ],
      origin: "derived",
      source: "derived: 40.5 π cubic inches of 16.387064 cm³ (NIST SP 811); 1500 g ÷ 0.998207 g/cm³ at 20 °C",
    },
  ],
  refusals: [
    {
      call: [
        1900,
        down("box", "round"),
        [
          [23, 13, ""],
          [20, 5, ""],
        ],
      ],
      because:
        "BAKE_TINMATCH: sizes row 1 have no depth: place 3 is blank; a box tin takes length, width, depth, [base length], [base width].",
    },
    {
      call: [1900, down("round"), [["9 kg", 5]]],
      because: 'BAKE_TINMATCH: sizes row 1 have "9 kg" as diameter; enter it such as "23 cm".',
    },
    {
      call: [
        1900,
        down("box"),
        [
          [23, 13, 7],
          [20, 5, ""],
        ],
      ],
      because: "BAKE_TINMATCH: shapes row 2 is blank though the row has sizes; enter a shape such as box or round.",
    },
  ],
  compute: ({ wanted, shapes, sizes, by, unit }) => {
    const { ratios, nearest } = matchTins(wanted, shapes, sizes, by, unit);
    return ratios.map((ratio, index) => [ratio, index === 0 ? nearest : null]);
  },
});
