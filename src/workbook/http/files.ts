// The files that the page is made of.
import { extname, posix } from "node:path";

export const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
};

/** Addresses and the files behind them; folders end in "/". Nothing else is served. */
const FILES: Readonly<Record<string, string>> = {
  "/page.css": "src/workbook/page/page.css",
  "/Code.js": "dist/Code.js",
  "/engine/owl.js": "node_modules/@odoo/owl/dist/owl.iife.min.js",
  "/engine/o_spreadsheet.js": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js",
  "/engine/o_spreadsheet.xml": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.xml",
  "/engine/o_spreadsheet.css": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.css",
  "/engine/bootstrap.css": "node_modules/bootstrap/dist/css/bootstrap.min.css",
};
const FONTS = ["/engine/font-awesome/", "node_modules/font-awesome/"] as const;

/** The file behind an address, seen from the project's folder; undefined where there is none. */
export function fileFor(path: string): string | undefined {
  if (Object.hasOwn(FILES, path)) return FILES[path];
  const [prefix, folder] = FONTS;
  const isPlain = /^[\w./-]+$/.test(path) && posix.normalize(path) === path;
  if (!isPlain || !path.startsWith(prefix) || TYPES[extname(path)] === undefined) return undefined;
  return `${folder}${path.slice(prefix.length)}`;
}
