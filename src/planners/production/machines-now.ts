// The mixers and ovens of a production sheet as it stands.
import { refuse } from "../../../shared/base/refusal.ts";
import type { Machine } from "../../../shared/production/clashes.ts";
import type { CellValue } from "../../../shared/protocol/look.ts";

/** Rows below the heading that are searched. */
const MAX_MACHINES = 40;

/** Rows of the table down to its end; one that was inserted and is blank yet is passed over. */
export function machineRows(values: readonly (readonly CellValue[])[]): number[] {
  const head = values.findIndex((row) => row[0] === "Name" && row[1] === "Kind");
  const rows: number[] = [];
  for (let row = head + 1; head >= 0 && row < head + MAX_MACHINES; row++) {
    const [name = "", kind = "", ...figures] = values[row] ?? [];
    if (kind === "mixer" || kind === "oven") {
      if (name !== "") rows.push(row);
      else
        refuse(
          `Row ${row + 1} of the production has ${kind === "oven" ? "an oven" : "a mixer"} without a name. Enter a name for it under “Mixers and ovens”.`,
        );
    } else if (figures.some((one) => typeof one === "number")) {
      refuse(
        `Row ${row + 1} of the production has a machine without a kind. Choose mixer or oven under “Mixers and ovens”.`,
      );
    } else if (name !== "") break;
  }
  return rows;
}

export function machinesNow(values: readonly (readonly CellValue[])[]): Machine[] {
  return machineRows(values).map((row): Machine => {
    const [name, kind, number, takes, at] = values[row] ?? [];
    return {
      name: String(name).trim(),
      kind: kind === "oven" ? "oven" : "mixer",
      number: typeof number === "number" ? number : 1,
      capacity: typeof takes === "number" && takes > 0 ? takes : null,
      temperature: typeof at === "number" ? at : null,
    };
  });
}
