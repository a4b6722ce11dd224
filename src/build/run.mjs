// The one plain-JavaScript file: what `npm start`, `npm test` and the other scripts run before anything is installed.
// It checks Node, installs what package-lock.json lists, then bundles and runs the task, which is TypeScript.
import { spawnSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath, pathToFileURL } from "node:url";

const root = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
process.chdir(root);

const [major = 0, minor = 0] = process.versions.node.split(".").map(Number);
if (major < 20 || (major === 20 && minor < 19) || major === 21 || (major === 22 && minor < 12)) {
  console.error(`Gramwright needs Node 20.19 or later, or 22.12 or later; this is Node ${process.versions.node}.`);
  process.exit(1);
}

/** @type {Record<string, string>} */
const tasks = {
  start: "src/workbook/start.ts",
  test: "src/build/test.ts",
  "test-long": "src/build/test-long.ts",
  check: "src/build/check.ts",
  build: "src/build/build.ts",
  bench: "src/build/bench.ts",
  push: "src/build/push.ts",
  pack: "src/build/pack.ts",
  mutate: "src/build/mutate.ts",
  pictures: "src/build/pictures.ts",
};
const [task = "", ...rest] = process.argv.slice(2);
const entry = tasks[task];
if (!entry) {
  console.error(`Unknown task "${task}"; there are ${Object.keys(tasks).join(", ")}.`);
  process.exit(1);
}

const lock = createHash("sha256").update(readFileSync("package-lock.json")).digest("hex");
const marker = join("node_modules", ".gramwright-lock");
if (!existsSync(marker) || readFileSync(marker, "utf8") !== lock) {
  console.log("Installing the packages that package-lock.json lists …");
  const npm = spawnSync("npm", ["ci", "--no-audit", "--no-fund", "--loglevel=error"], {
    stdio: ["ignore", "ignore", "inherit"],
    shell: process.platform === "win32",
  });
  if (npm.status !== 0) {
    console.error("npm could not install them; see the lines above, check the network, and run the command again.");
    process.exit(1);
  }
  writeFileSync(marker, lock);
}

const esbuild = await import("esbuild");
const cache = join("node_modules", ".cache", "gramwright");
mkdirSync(cache, { recursive: true });
const outfile = join(cache, `${task}.mjs`);
await esbuild.build({
  entryPoints: [entry],
  outfile,
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20",
  packages: "external",
  sourcemap: "inline",
  logLevel: "warning",
});
const module = await import(pathToFileURL(outfile).href);
await module.run(rest);
