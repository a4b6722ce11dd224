import vm from "node:vm";
import { codeJs } from "../build.ts";
import { median, once } from "./measure.ts";

export async function start(): Promise<void> {
  const code = await codeJs();
  const stubsAt = code.indexOf("\nfunction onOpen");
  console.log(`Code.js: ${kilobytes(code.slice(0, stubsAt))} without stubs, ${kilobytes(code)} with`);
  const started = (source: string) => once(() => vm.runInContext(source, vm.createContext({})));
  const empty: number[] = [];
  const full: number[] = [];
  for (let round = 0; round < 200; round++) {
    empty.push(started(""));
    full.push(started(code));
  }
  console.log(
    `compile and run in a fresh context, median of 200: ${(median(full) - median(empty)).toFixed(2)} ms of processor time above an empty script`,
  );
}

const kilobytes = (text: string): string => `${(Buffer.byteLength(text) / 1000).toFixed(1)} KB`;
