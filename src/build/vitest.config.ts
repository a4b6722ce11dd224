import { readdirSync, readFileSync } from "node:fs";
import { defineConfig } from "vitest/config";

/** Tests with a page in a real browser, which takes its time on a busy computer: what is wrong there fails every time. */
const inBrowser = readdirSync("tests", { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".test.ts"))
  .map((name) => `tests/${name}`)
  .filter((file) => /from "[^"]*\/(?:browser|page)\.ts"/.test(readFileSync(file, "utf8")));

export default defineConfig({
  test: {
    projects: [
      { test: { name: "browser", include: inBrowser, retry: 2 } },
      { test: { name: "rest", include: ["tests/**/*.test.ts"], exclude: inBrowser } },
    ],
  },
});
