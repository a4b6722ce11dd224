// Measured as ratios: what is printed here holds on any machine, near enough. One section a file.
import { spawnSync } from "node:child_process";
import { calls } from "./bench/calls.ts";
import { edits, priceEdits } from "./bench/edits.ts";
import { growth } from "./bench/growth.ts";
import { memory } from "./bench/memory.ts";
import { needs } from "./bench/needs.ts";
import { paste } from "./bench/paste.ts";
import { sheets } from "./bench/sheets.ts";
import { start } from "./bench/start.ts";
import { work } from "./bench/work.ts";

const SECTIONS: Readonly<Record<string, { readonly title: string; readonly run: () => void | Promise<void> }>> = {
  calls: { title: "Calls of each built sheet, for 6, 24 and 60 ingredient rows", run: calls },
  start: { title: "Start: what every formula cell pays", run: start },
  work: { title: "Work: rows in, rows out", run: work },
  needs: { title: "Raw ingredients of a large day", run: needs },
  growth: { title: "Growth: time per row at 10 000 rows against 1 000", run: growth },
  paste: { title: "Pasted recipes: reading and typing", run: paste },
  sheets: { title: "Sheets: many formula sheets in one workbook", run: sheets },
  edits: { title: "Edits: a number typed, × the same in a table typed by hand", run: edits },
  prices: { title: "A price typed over, × the same among six formula sheets", run: priceEdits },
  memory: { title: "Memory", run: memory },
};

/** Runs the sections that are named; without a name all of them, each in a process of its own, because one leaves the next a full heap. */
export async function run(names: readonly string[] = []): Promise<void> {
  const unknown = names.find((name) => !(name in SECTIONS));
  if (unknown !== undefined) {
    throw new Error(`There is no section "${unknown}"; there are ${Object.keys(SECTIONS).join(", ")}.`);
  }
  if (names.length === 0) {
    for (const name of Object.keys(SECTIONS))
      spawnSync(process.execPath, ["src/build/run.mjs", "bench", name], { stdio: "inherit" });
    return;
  }
  for (const [name, section] of Object.entries(SECTIONS)) {
    if (!names.includes(name)) continue;
    // Memory runs itself again in a process that can collect, and that one says the title.
    if (name !== "memory" || globalThis.gc !== undefined) {
      console.log(`\n${section.title}\n${"-".repeat(section.title.length)}`);
    }
    await section.run();
  }
}
