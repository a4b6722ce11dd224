// Programs of the computer's own that some tests need; nothing is downloaded.
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

function find(variable: string, names: readonly string[], places: readonly string[]): string | undefined {
  const folders = (process.env.PATH ?? "").split(delimiter);
  const paths = [
    process.env[variable] ?? "",
    ...names.flatMap((name) => folders.map((folder) => join(folder, name))),
    ...places,
  ];
  return paths.find((path) => path !== "" && existsSync(path));
}

/** A Chromium or Chrome, or undefined; GRAMWRIGHT_CHROMIUM names one that is elsewhere. */
export const findChromium = (): string | undefined =>
  find(
    "GRAMWRIGHT_CHROMIUM",
    ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome.exe", "msedge.exe"],
    [
      "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
      "/Applications/Chromium.app/Contents/MacOS/Chromium",
    ],
  );

/** What the tests drive: the same browser without windows where it is installed, which takes half the time for a page. */
export const findTestChromium = (): string | undefined =>
  find("GRAMWRIGHT_CHROMIUM", ["chromium-headless-shell"], []) ?? findChromium();

/** LibreOffice's command, or undefined; GRAMWRIGHT_OFFICE names one that is elsewhere. */
export const findOffice = (): string | undefined =>
  find(
    "GRAMWRIGHT_OFFICE",
    ["soffice", "libreoffice", "soffice.exe"],
    ["/Applications/LibreOffice.app/Contents/MacOS/soffice"],
  );

/** One line about what is left out for want of them; undefined where nothing is. */
export function leftOut(): string | undefined {
  const missing = [
    ...(findChromium() === undefined ? ["Chromium or Chrome (the pages)"] : []),
    ...(findOffice() === undefined ? ["LibreOffice (the saved .xlsx)"] : []),
  ];
  if (missing.length === 0) return undefined;
  return `Left out for want of ${missing.join(" and ")}; on Debian or Ubuntu: sudo apt-get install chromium libreoffice-calc; elsewhere install them, or name them in GRAMWRIGHT_CHROMIUM and GRAMWRIGHT_OFFICE.`;
}
