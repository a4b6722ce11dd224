// What the tests of public reports read.
import { readFileSync } from "node:fs";
import { FUNCTIONS } from "../../src/functions/index.ts";

/** What people are told: the README, and the page on installing that it leads to. */
export const readme = () => readFileSync("README.md", "utf8") + readFileSync("src/build/install/README.md", "utf8");
export const manifest = () => JSON.parse(readFileSync("src/add-on/appsscript.json", "utf8")) as Record<string, unknown>;
/** Every example of every function. */
export const ALL = FUNCTIONS.flatMap((made) => made.examples.map((example) => ({ made, example })));
