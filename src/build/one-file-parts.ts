// What the pages that are one file are put together from: texts, styles and scripts that a browser reads as they were.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { fileFor } from "../workbook/http/files.ts";

/** The text behind an address of the local server. */
export function textOf(path: string): string {
  const file = fileFor(path);
  if (file === undefined) throw new Error(`The page names ${path}, which is no file of it`);
  return readFileSync(file, "utf8");
}

/** A text as JSON in an element that nothing runs: it comes out to the byte. */
export const jsonBlock = (id: string, text: string): string =>
  `<script type="application/json" id="${id}">${JSON.stringify(text).replace(/</g, "\\u003c")}</script>`;

/** A script as it is; one that the browser would end early, or read on from, is refused. */
export function scriptBlock(id: string, script: string): string {
  if (/<\/script/i.test(script)) throw new Error(`The script ${id} holds </script`);
  if (/<!--/.test(script) && /<script/i.test(script)) throw new Error(`The script ${id} holds both <!-- and <script`);
  return `<script id="${id}">${script}</script>`;
}

/** A style sheet with its one font in it; nothing else is asked for. */
export function styleText(path: string): string {
  const css = textOf(path).replace(/@font-face\{([^}]*)\}/g, (_, rule: string) => {
    const family = /font-family:\s*['"]?([^;'"]+)/.exec(rule)?.[1] ?? "";
    const font = readFileSync("node_modules/font-awesome/fonts/fontawesome-webfont.woff2").toString("base64");
    return `@font-face{font-family:"${family}";src:url(data:font/woff2;base64,${font}) format("woff2");font-weight:normal;font-style:normal}`;
  });
  const address = /url\(\s*['"]?(?!data:)([^'")]{1,60})/.exec(css)?.[1];
  if (address !== undefined) throw new Error(`${path} asks for ${address}`);
  if (/<\/style/i.test(css)) throw new Error(`${path} holds </style`);
  return css;
}

/** What stands in the page besides its own bundle. */
export const PACKAGES_IN_PAGE = ["@odoo/o-spreadsheet", "@odoo/owl", "bootstrap", "font-awesome", "fflate"] as const;
/** What comes with one of them in its own file, and is not seen in the bundle. */
const WITHIN: Readonly<Record<string, readonly string[]>> = { jszip: ["pako", "lie", "immediate", "setimmediate"] };

/** The licences of all that stands in the page, each with its text. */
export function licenceText(packages: readonly string[]): string {
  const all = [...new Set(packages.flatMap((name) => [name, ...(WITHIN[name] ?? [])]))];
  const licence = `Gramwright: MIT\n\n${readFileSync("LICENSE", "utf8")}`;
  const texts = ["LGPL-3.0.txt", "GPL-3.0.txt"].map((file) => readFileSync(`src/workbook/licences/${file}`, "utf8"));
  return [licence, ...all.map(licenceOf), ...texts].join(`\n\n${"=".repeat(72)}\n\n`);
}

/** What a package is, and its licence with its text. */
export function licenceOf(name: string): string {
  const folder = `node_modules/${name}`;
  const { version, license } = JSON.parse(readFileSync(`${folder}/package.json`, "utf8")) as Record<string, string>;
  return `${name} ${version}: ${license}\n\n${textFor(name, folder)}`;
}

/** A package's own file; where it brings none, the text that is kept here for it. */
function textFor(name: string, folder: string): string {
  const file = readdirSync(folder).find((one) => /^(licen[cs]e|copying)/i.test(one));
  if (file !== undefined) return readFileSync(`${folder}/${file}`, "utf8");
  const licence = `src/workbook/licences/${name}.txt`;
  if (existsSync(licence)) return readFileSync(licence, "utf8");
  throw new Error(`${name} brings no licence text, and none is kept for it in ${licence}`);
}
