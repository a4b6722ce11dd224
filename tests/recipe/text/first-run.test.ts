import { test } from "vitest";
import { differences, wantedRows } from "./corpus-support.ts";
import { SEALED_PERCENT, SEALED_TABLES } from "./sealed-formulas.ts";
import { SEALED_HOUSEHOLD } from "./sealed-household.ts";
import { SECOND_FORMULAS, SECOND_HOUSEHOLD, SECOND_REST, SECOND_STAGES } from "./sealed-second.ts";
import { SEALED_STAGES } from "./sealed-stages.ts";
import { SEALED_PARTS, SEALED_WEB } from "./sealed-web.ts";

test("first run", () => {
  for (const [shape, cases] of Object.entries({
    SEALED_HOUSEHOLD,
    SEALED_PERCENT,
    SEALED_TABLES,
    SEALED_STAGES,
    SEALED_PARTS,
    SEALED_WEB,
    SECOND_HOUSEHOLD,
    SECOND_FORMULAS,
    SECOND_STAGES,
    SECOND_REST,
  })) {
    let right = 0,
      silent = 0,
      plain = 0,
      plainRight = 0,
      rows = 0;
    const out: string[] = [];
    for (const one of cases) {
      const d = differences(one);
      rows += wantedRows(one).length;
      if (d.all.length === 0) right++;
      if ((one.asks ?? []).length === 0) {
        plain++;
        if (d.all.length === 0) plainRight++;
      }
      silent += d.silent.length;
      if (d.all.length > 0)
        out.push(
          `   ${one.text.slice(0, 40).replace(/\n/g, " / ")}\n        ${d.all.map((x) => (d.silent.includes(x) ? "SILENT " : "") + x).join("\n        ")}`,
        );
    }
    console.log(
      `${shape}: ${right} of ${cases.length} wholly right; without question ${plainRight} of ${plain}; silent ${silent} of ${rows} rows\n${out.join("\n")}`,
    );
  }
});
