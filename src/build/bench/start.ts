import { performance } from "node:perf_hooks";
import vm from "node:vm";
import { codeJs } from "../build.ts";
import { median } from "./measure.ts";

export async function start(): Promise<void> {
  const code = await codeJs();
  const stubsAt = code.indexOf("\nfunction onOpen");
  console.log(`Code.js: ${kilobytes(code.slice(0, stubsAt))} without stubs, ${kilobytes(code)} with`);
  const once = (source: string) => {
    const from = performance.now();
    vm.runInContext(source, vm.createContext({}));
    return performance.now() - from;
  };
  const empty: number[] = [];
  const full: number[] = [];
  for (let round = 0; round < 200; round++) {
    empty.push(once(""));
    full.push(once(code));
  }
  console.log(
    `compile and run in a fresh context, median of 200: ${(median(full) - median(empty)).toFixed(2)} ms above an empty script`,
  );
}

const kilobytes = (text: string): string => `${(Buffer.byteLength(text) / 1000).toFixed(1)} KB`;
