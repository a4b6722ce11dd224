import { spawnSync } from "node:child_process";
import { build } from "../build.ts";
import { findChromium } from "../programs.ts";
import { median } from "./measure.ts";
import { pageTime } from "./page-start.ts";

const STARTS = 40;

/** Milliseconds of processor time, as start-once.mjs prints them. */
type StartTimes = Readonly<Record<"empty" | "code" | "firstCall" | "larderCall", number>>;

/** Times until the pushed files work: of Code.js, which every formula cell loads, and of the sidebar's page. */
export async function start(): Promise<void> {
  await build();
  const times = Array.from({ length: STARTS }, inOwnProcess);
  const middle = (of: (one: StartTimes) => number) => median(times.map(of)).toFixed(1);
  console.log(`Code.js, median of ${STARTS} fresh processes, milliseconds of processor time:`);
  console.log(`  compile and run, over an empty script: ${middle(({ code, empty }) => code - empty)} (wanted: 12)`);
  console.log(`  first call that needs the larder: ${middle(({ larderCall }) => larderCall)} (wanted: 5)`);
  console.log(`  first call of another function: ${middle(({ firstCall }) => firstCall)}`);
  const chromium = findChromium();
  if (chromium === undefined) console.log("The page was not measured: no Chromium was found.");
  else
    console.log(
      `sidebar.html until its tabs stand, over an empty page: ${(await pageTime(chromium)).toFixed(0)} ms (wanted: 200)`,
    );
}

function inOwnProcess(): StartTimes {
  const { stdout } = spawnSync(process.execPath, ["src/build/bench/start-once.mjs", "dist/Code.js"], {
    encoding: "utf8",
  });
  return JSON.parse(stdout) as StartTimes;
}
