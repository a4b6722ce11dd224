import { createRequire } from "node:module";
import { join } from "node:path";
import type { Library } from "./library.ts";

let loaded: Library | undefined;

/** The engine in Node; loaded once, when it is first wanted. */
export function loadLibrary(): Library {
  // From the working folder: a bundled task lies elsewhere, and both npm start and npm test run in the project's root.
  loaded ??= createRequire(join(process.cwd(), "package.json"))("@odoo/o-spreadsheet") as Library;
  return loaded;
}
