import { spawnSync } from "node:child_process";
import { call } from "../../functions/call.ts";
import { FUNCTIONS } from "../../functions/index.ts";
import { longer } from "./measure.ts";

const TARGET = 64;

/** Heap that stays after 10 000 rows went through every function; in a process of its own, which can collect on demand. */
export function memory(): void {
  const collect = globalThis.gc;
  if (collect === undefined) {
    spawnSync(process.execPath, ["--expose-gc", "src/build/run.mjs", "bench", "memory"], { stdio: "inherit" });
    return;
  }
  const heap = (): number => {
    collect();
    return process.memoryUsage().heapUsed;
  };
  const before = heap();
  let measured = 0;
  let peak = 0;
  for (const sheetFunction of FUNCTIONS) {
    const args = longer(sheetFunction, 10_000);
    if (args === undefined) continue;
    const answer = call(sheetFunction, args);
    measured += 1;
    peak = Math.max(peak, heap() - before);
    if (answer === undefined) throw new Error(`${sheetFunction.name} answered nothing`);
  }
  const megabytes = (bytes: number): string => (bytes / 1e6).toFixed(1);
  console.log(
    `heap above the start, ${measured} functions × 10 000 rows: ${megabytes(heap() - before)} MB after them all, ${megabytes(peak)} MB at most with the arguments and the answer of one held (target ${TARGET} MB)`,
  );
}
