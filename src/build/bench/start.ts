import { spawnSync } from "node:child_process";
import { build } from "../build.ts";
import { findChromium } from "../programs.ts";
import { loopTime, median } from "./measure.ts";
import { pageTime } from "./page-start.ts";

const STARTS = 40;

/** Milliseconds of processor time, as start-once.mjs prints them. */
type StartTimes = Readonly<Record<"empty" | "code" | "firstCall" | "larderCall", number>>;

/** Times until the pushed files work: of Code.js, which every formula cell loads, and of the sidebar's page. */
export async function start(): Promise<void> {
  await build();
  const times = Array.from({ length: STARTS }, inOwnProcess);
  const loop = loopTime();
  const shown = (of: (one: StartTimes) => number): string => {
    const time = median(times.map(of));
    return `${time.toFixed(1)} ms, ${(time / loop).toFixed(2)} × the loop`;
  };
  console.log(
    `Code.js, each time another text, median of ${STARTS} fresh processes, processor time, beside ten million turns of a loop that multiplies and adds:`,
  );
  console.log(`  compile and run, over an empty script: ${shown(({ code, empty }) => code - empty)} (wanted: 12 ms)`);
  console.log(`  first call that needs the larder: ${shown(({ larderCall }) => larderCall)} (wanted: 5 ms)`);
  console.log(`  first call of another function: ${shown(({ firstCall }) => firstCall)}`);
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
