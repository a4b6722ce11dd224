import type { Band, Block, SheetModel, Table } from "../../shared/sheet/model.ts";
import { costBlock, costColumns, sizeCosts } from "./cost.ts";
import type { CostedCells } from "./costed-cells.ts";
import { labelBlock, labelCautions, nutritionBlock } from "./label.ts";

const EXTRA = { name: "@roll_in_name", weight: "@roll_in", kind: "fat" } as const;
/** The row below the upper edge. */
const isTins = '(@by="tins")*(COUNT(@size_scaled)=0)*(ROW(@size_scaled)-MIN(ROW(@size_scaled))=1)=1';
const TINS = {
  each: `IF(${isTins};@tin_dough;@size_scaled)`,
  names: `IF((LEN(@size_name)=0)*${isTins};"one tin";@size_name&"")`,
};
/** Beside the widest table of a formula sheet. */
const LEFT = 9;
const WIDTHS = [84, 84, 84];

/** A formula sheet with the parts that a larder makes possible: what it costs and what its label says. */
export function withCosting(model: SheetModel): SheetModel {
  const known = namesOf(model);
  const extra = known.has("roll_in") ? EXTRA : undefined;
  const whole = extra === undefined ? "@dough" : "@dough_in_all";
  const costed: CostedCells = {
    whole,
    sold: known.has("size_weight"),
    ...(extra === undefined ? {} : { extra }),
    ...(known.has("size_scaled")
      ? { each: "@size_scaled", names: '@size_name&""', ...(known.has("tins_dough") ? { tins: TINS } : {}) }
      : { each: "@tin_dough", names: '"one tin"', needs: "tin" }),
  };
  const bands = model.bands.map((band): Band => {
    const table = band.find((item): item is Table => "table" in item && item.table === "formula");
    return table === undefined ? band : [...band, costColumns(LEFT, table.rows)];
  });
  return {
    ...model,
    widths: [...model.widths, ...WIDTHS],
    parts: [...model.parts, "cost", "label"],
    bands: [
      ...bands.slice(0, -1),
      [costBlock(costed), sizeCosts(costed)],
      [labelBlock(costed)],
      [nutritionBlock(costed)],
      ...bands
        .slice(-1)
        .map((band) =>
          band.map((item) => ("lines" in item ? { ...item, lines: [...item.lines, ...labelCautions] } : item)),
        ),
    ],
  };
}

function namesOf({ bands }: SheetModel): Set<string> {
  const cells = (item: Block | Table) =>
    "table" in item
      ? item.columns.map(({ name }) => name)
      : item.lines.flatMap((line) => line.cells.map(({ name }) => name ?? ""));
  return new Set(bands.flat().flatMap(cells));
}
