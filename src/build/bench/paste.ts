// Reading pasted recipes: ten thousand lines against splitting them, and a keystroke in the panel under two hundred lines.
import { readFileSync } from "node:fs";
import { chromium } from "playwright-core";
import { larder } from "../../../shared/larder/larder.ts";
import type { Kitchen } from "../../../shared/recipe/text/description.ts";
import { describeRecipe } from "../../../shared/recipe/text/reader.ts";
import { build } from "../build.ts";
import { findChromium } from "../programs.ts";
import { fastest, median } from "./measure.ts";

const LINES = 10_000;
const NAMES = [
  ...["bread flour", "whole wheat flour", "rye flour", "water", "salt", "instant yeast", "butter", "sugar", "milk"],
  ...["raisins", "honey", "olive oil"],
];
const MIXED = [
  ...["2 1/4 cups flour", "1 lb 4 oz butter", "3 large eggs", "1 tsp salt", "250 g water", "1 1/2 tbsp honey"],
  ...["2-3 tsp dry yeast", "1/2 cup sugar"],
];

export async function paste(): Promise<void> {
  lines();
  await build();
  const executablePath = findChromium();
  if (executablePath === undefined) console.log("Typing was not measured: no Chromium was found.");
  else await typing(executablePath);
}

function lines(): void {
  const kitchen: Kitchen = { cups: "US", larder: larder(true).decode([], "larder", []) };
  const ratio = (list: readonly string[]): string => {
    const text = `Loaf\n${list.join("\n")}`;
    const [read = 0, split = 1] = fastest(
      [() => describeRecipe(text, kitchen), () => list.map((line) => line.split(" "))],
      25,
    );
    return (read / split).toFixed(0);
  };
  const same = Array.from({ length: LINES }, (_, at) => MIXED[at % MIXED.length] ?? "");
  const other = Array.from({ length: LINES }, (_, at) => `${at + 1}.5 g ${NAMES[at % NAMES.length]}`);
  console.log(
    `${LINES} lines of a pasted text, × splitting them on spaces: ${ratio(same)}, ${ratio(other)} where no line comes twice (wanted: 30)`,
  );
}

const KEYS = 40;

/** Milliseconds from a keystroke until the panel stands again, laid out, under 200 lines. */
async function typing(executablePath: string): Promise<void> {
  const browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage({ viewport: { width: 300, height: 900 } });
    await page.setContent(readFileSync("dist/sidebar.html", "utf8"));
    await page.getByRole("button", { name: "Paste recipe" }).click();
    const list = Array.from({ length: 200 }, (_, at) => `${100 + at} g ${NAMES[at % NAMES.length]}`);
    await page.getByLabel("The recipe, as you have it").fill(`Loaf\n${list.join("\n")}`);
    const times = await page.evaluate((keys) => {
      const area = document.querySelector("textarea") as HTMLTextAreaElement;
      return Array.from({ length: keys }, (_, at) => {
        const from = performance.now();
        area.value += at % 2 === 0 ? "\n5 g sal" : "t";
        area.dispatchEvent(new Event("input", { bubbles: true }));
        document.body.getBoundingClientRect();
        return performance.now() - from;
      });
    }, KEYS);
    const most = Math.max(...times);
    console.log(
      `A keystroke under 200 lines: ${median(times).toFixed(0)} ms, ${most.toFixed(0)} at most, ${(most / 50).toFixed(2)} × the 50 ms that feel fluid`,
    );
  } finally {
    await browser.close();
  }
}
