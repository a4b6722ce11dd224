// Runs once before all tests: they share the three files that would be pushed, and the script of the local page.

import { build } from "./build.ts";
import { localPage } from "./local-page.ts";

export async function setup(): Promise<void> {
  await Promise.all([build(), localPage()]);
  process.env.GRAMWRIGHT_BUILT = "dist";
}
