// The README has a picture of each panel and each main sheet, and no other; `npm run pictures` takes them.
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { FOLDER, PANELS, SHEETS } from "../../src/build/pictures.ts";

const README = readFileSync("README.md", "utf8");
const files = [...SHEETS, ...PANELS].map(({ file }) => `${file}.png`).sort();

test("each panel and each main sheet has its picture, and the README leads to it", () => {
  expect(readdirSync(FOLDER).sort()).toEqual(files);
  for (const file of files) expect(README).toContain(`(src/build/pictures/${file})`);
});

test("a picture is whole: 1280 × 720, or the sidebar's part of it", () => {
  for (const file of files) {
    const bytes = readFileSync(`${FOLDER}/${file}`);
    // The width of a PNG stands at its 17th byte.
    expect([file, bytes.toString("latin1", 1, 4)]).toEqual([file, "PNG"]);
    expect([file, bytes.readUInt32BE(16)]).toEqual([file, file.startsWith("panel-") ? 300 : 1280]);
  }
});

test("every panel of the sidebar is among them", () => {
  const names = [...README.matchAll(/^\| \[\*\*([^*]+)\*\*\]/gm)].map(([, name]) => name);
  expect(names).toEqual(PANELS.map(({ name }) => name));
});
