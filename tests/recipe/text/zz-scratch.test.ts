import { test } from "vitest";
import { SHAPES } from "./corpus.ts";
import { differences, wantedRows } from "./corpus-support.ts";

test("x", () => {
  let rows = 0,
    sil = 0;
  for (const [shape, cases] of Object.entries(SHAPES)) {
    if (!/fifth|sixth/.test(shape)) continue;
    let r = 0,
      s = 0,
      ok = 0;
    let out = "";
    for (const one of cases) {
      const d = differences(one);
      r += wantedRows(one).length;
      s += d.silent.length;
      if (d.all.length === 0) ok++;
      else
        out += `\n## ${one.text.slice(0, 50).replace(/\n/g, "|")}\n   ${d.all.map((x) => (d.silent.includes(x) ? "SILENT " : "") + x).join("\n   ")}`;
    }
    rows += r;
    sil += s;
    console.info(`=== ${shape}: ${ok} of ${cases.length}, silent ${s} of ${r} rows${out}`);
  }
  console.info(`${sil} of ${rows}`);
});
