import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { STYLE_NAMES } from "../../shared/review/bands.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { SHEETS, TEMPLATES } from "../../templates/index.ts";
import { down, run } from "./support.ts";

// Sources stand in the code beside what rests on them; nobody's name, site or brand reaches a cell or a screen.

const AUTHORS =
  /Hamelman|Gisslen|Figoni|Lehmann|Friberg|Reinhart|Forkish|\bSuas\b|Pyler|Cauvain|Calvel|Kinne|Cooley|Siegel|Çengel/;
const SITES =
  /King Arthur|Fresh Loaf|Wild Yeast|Pizza Today|Treatise on|Cook's Illustrated|Mumsnet|US Army|breadtopia|yumarama/i;
const ADDRESSES = /\b(?!google\b|gstatic\b|googleapis\b)[a-z0-9-]{3,}\.(?:com|net|fr|de|blog)\b/i;
const BRANDS =
  /Diamond Crystal|\bMorton|Hobart|Kitchen ?Aid|Pyrex|Nutella|Philadelphia|Crisco|Fleischmann|Red Mill|Gold Medal|Tabasco|\bOreos?\b/;
const NAMES = [AUTHORS, SITES, BRANDS, ADDRESSES];

const clean = (text: string, where: string, lists = NAMES) => {
  for (const names of lists) expect(names.exec(text)?.[0], where).toBeUndefined();
};

test("the lists find what they are for", () => {
  for (const text of ["see Gisslen", "The Fresh Loaf node/1", "bakemag.com 836", "Morton's kosher"])
    expect(NAMES.some((names) => names.test(text))).toBe(true);
});

test.each(FUNCTIONS)("$name: its help, its arguments, its answers and its refusals", (made) => {
  const { name, summary, args, returns, examples, refusals } = made;
  const said = [
    summary,
    returns.says,
    ...Object.values(args).map(({ says }) => says),
    ...examples.map(({ gives }) => JSON.stringify(gives)),
    ...refusals.map(({ because }) => because),
  ];
  for (const text of said) clean(text, `${name}: ${text}`);
});

test.each(Object.keys(STYLE_NAMES))("every remark of a review of %s", (style) => {
  const rows = ["flour", "water", "salt", "fresh yeast", "sugar", "butter", "egg", "nonfat dry milk", "baking powder"];
  const kinds = down("flour", "water", "salt", "yeast", "sugar", "fat", "egg", "dairy", "other");
  for (const amount of [0, 0.1, 45, 190]) {
    const percents = down(100, ...rows.slice(1).map(() => amount));
    clean(JSON.stringify(run("BAKE_REVIEW", down(...rows), kinds, percents, style)), style);
  }
});

describe("sheets and files", () => {
  test("every template and sheet", () => {
    for (const model of [...TEMPLATES, ...SHEETS]) clean(JSON.stringify(model), model.name);
  });
  test("src/functions/README.md", () => {
    clean(readFileSync("src/functions/README.md", "utf8"), "src/functions/README.md");
  });
  // Above the stubs stand the functions whole, with the sources of their examples, which no cell and no screen shows.
  test("the help that dist/Code.js gives in a cell", () => {
    const code = readFileSync("dist/Code.js", "utf8");
    clean(code.slice(code.indexOf("\nfunction onOpen")), "dist/Code.js");
  });
  test("dist/sidebar.html, whose script may hold anything that looks like an address", () => {
    clean(readFileSync("dist/sidebar.html", "utf8"), "dist/sidebar.html", [AUTHORS, SITES, BRANDS]);
  });
});
