import { spawn } from "node:child_process";
import { leftOut } from "./programs.ts";

/** Runs every test, on files that are built once, and ends with one line of counts. */
export async function run(args: string[]): Promise<void> {
  const missing = leftOut();
  if (missing !== undefined) {
    console.log(missing);
    if (process.env.CI === "true") process.exit(1);
  }
  const output = await vitest(["run", "--config=src/build/vitest.config.ts", ...args]);
  const counts = /Tests\s+(?:(\d+) failed)?[ |]*(?:(\d+) passed)?[ |]*(?:(\d+) skipped)?/.exec(plain(output.text));
  const [failed = "0", passed = "0", skipped = "0"] = [counts?.[1], counts?.[2], counts?.[3]];
  const failures = output.status === 0 ? failed : String(Math.max(1, Number(failed)));
  console.log(`${passed} passed, ${failures} failed${skipped === "0" ? "" : `, ${skipped} skipped`}`);
  process.exitCode = output.status;
}

/** Without colour codes. */
const plain = (text: string) => text.replace(new RegExp(`${String.fromCharCode(27)}\\[[0-9;]*m`, "g"), "");

function vitest(args: readonly string[]): Promise<{ status: number; text: string }> {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, ["node_modules/vitest/vitest.mjs", ...args], {
      stdio: ["ignore", "pipe", "inherit"],
    });
    let text = "";
    child.stdout.on("data", (chunk: Buffer) => {
      text += chunk.toString();
      process.stdout.write(chunk);
    });
    child.on("close", (status) => resolve({ status: status ?? 1, text }));
  });
}
