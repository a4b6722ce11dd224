// A fourth lot of texts, written after the reader was known, and tried as they were written.
import type { Case } from "./corpus-support.ts";

export const FOURTH: readonly Case[] = [
  {
    text: "Potato flake rolls\nPreparation: 30 minutes\nBaking: 15 minutes\nMakes 18\n\nYou'll need:\n500 g bread flour\n60 g potato flakes\n320 g milk\n1 egg (50 g)\n60 g butter\n40 g sugar\n10 g salt\n8 g instant yeast",
    title: "Potato flake rolls",
    rows: "bread flour; flour; 500\npotato flakes; other; 60\nmilk; dairy; 320\negg; egg; 50\nbutter; fat; 60\nsugar; sugar; 40\nsalt; salt; 10\ninstant yeast; yeast; 8",
    yield: { pieces: 18 },
  },
  {
    text: "SOUR RYE (40/60)\n1st stage - Sour: rye flour 8 kg, water 6.4 kg, sour starter 0.4 kg\n2nd stage - Dough: rye flour 4 kg, wheat flour 8 kg, water 7.2 kg, salt 0.4 kg, sour 14.8 kg",
    title: "SOUR RYE (40/60)",
    rows: "rye flour; flour; 8000; preferment\nwater; water; 6400; preferment\nsour starter; levain 80%; 400; preferment\nrye flour; flour; 4000\nwheat flour; flour; 8000\nwater; water; 7200\nsalt; salt; 400\nsour; ; takes",
    dough: 34400,
  },
  {
    text: "Sugar cookies\nButter 1 lb\nSugar 1 lb\nEggs 4\nVanilla 1 Tbsp\nCake flour 2 lb\nBaking powder 1 oz\nSalt ¼ oz",
    title: "Sugar cookies",
    rows: "Butter; fat; 453.59\nSugar; sugar; 453.59\nEggs; egg; 200\nVanilla; other; 13\nCake flour; flour; 907.18\nBaking powder; other; 28.35\nSalt; salt; 7.09",
  },
  {
    text: "Pretzel rolls\n\nDough:\n  Flour ............. 1000 g\n  Water ............. 540 g\n  Lard .............. 40 g\n  Salt .............. 20 g\n  Malt powder ....... 10 g\n  Yeast ............. 25 g\n\nLye bath:\n  Water ............. 1000 g\n  Lye ............... 40 g",
    title: "Pretzel rolls",
    rows: "Flour; flour; 1000\nWater; water; 540\nLard; fat; 40\nSalt; salt; 20\nMalt powder; other; 10\nYeast; yeast; 25\nWater; water; 1000; part\nLye; other; 40; part",
    dough: 1635,
  },
  {
    text: "| | Total | Levain | Dough |\n|---|---|---|---|\n| Bread flour | 900 | 100 | 800 |\n| Rye flour | 100 | | 100 |\n| Water | 700 | 100 | 600 |\n| Salt | 20 | | 20 |\n| Levain | | | 200 |",
    rows: "Bread flour; flour; -; overall\nBread flour; flour; -; preferment\nBread flour; flour; -\nRye flour; flour; -; overall\nRye flour; flour; -\nWater; water; -; overall\nWater; water; -; preferment\nWater; water; -\nSalt; salt; -; overall\nSalt; salt; -\nLevain; ; takes",
    asks: ["which unit"],
  },
  {
    text: "Anadama bread: water 500 g; cornmeal 80 g; molasses 80 g; butter 30 g; bread flour 720 g; salt 14 g; yeast 9 g",
    rows: "water; water; 500\ncornmeal; grain; 80\nmolasses; sugar; 80\nbutter; fat; 30\nbread flour; flour; 720\nsalt; salt; 14\nyeast; yeast; 9",
    title: "Anadama bread",
  },
  {
    text: "Wholemeal rolls\nServes 12\n\n650g/1lb 7oz strong wholemeal flour\n2 tsp salt\n50g/2oz butter\n400ml/14fl oz tepid milk\n7g sachet fast-action yeast\n1 tbsp clear honey",
    cups: "UK",
    title: "Wholemeal rolls",
    // 400 ml × 244 ÷ 236.588; the tablespoon of 15 ml
    rows: "strong wholemeal flour; flour; 650\nsalt; salt; 12.2\nbutter; fat; 50\ntepid milk; dairy; 412.5\nfast-action yeast; yeast; 7\nclear honey; sugar; 21.3",
  },
  {
    text: "Formula: Olive ciabatta\nFlour 100.0\nWater 82.0\nOlives 25.0\nOlive oil 4.0\nSalt 2.0\nYeast 0.6\nTotal 213.6\nDough required: 12.5 kg",
    title: "Olive ciabatta",
    rows: "Flour; flour; 100%\nWater; water; 82%\nOlives; other; 25%\nOlive oil; fat; 4%\nSalt; salt; 2%\nYeast; yeast; 0.6%",
    yield: { total: 12500 },
    dough: 12500,
  },
  {
    text: "Lemon loaf cake\n225g unsalted butter, at room temperature\n225g caster sugar\n4 large eggs\n225g self-raising flour\nfinely grated zest of 1 lemon\nFor the drizzle topping\njuice of 1½ lemons\n85g caster sugar",
    cups: "US",
    title: "Lemon loaf cake",
    rows: "unsalted butter; fat; 225\ncaster sugar; sugar; 225\neggs; egg; 200\nself-raising flour; flour; 225\nfinely grated zest of; other; -\nlemons juice; fruit; 72; icing\ncaster sugar; sugar; 85; icing",
    asks: ["unclear amount"],
  },
  {
    text: "Product: Milk bun\nWeight per piece: 0,065 kg\nNumber: 200\n\nMehl 6,500 kg\nMilch 3,900 kg\nZucker 0,650 kg\nButter 0,650 kg\nSalz 0,120 kg\nHefe 0,325 kg",
    cups: "EU",
    title: "Milk bun",
    rows: "Mehl; flour; 6500\nMilch; dairy; 3900\nZucker; sugar; 650\nButter; fat; 650\nSalz; salt; 120\nHefe; yeast; 325",
    yield: { pieces: 200, weight: 65 },
    // 13 kg of pieces out of 12.145 kg: put right after the first run.
    asks: ["yield differs"],
  },
  {
    text: "Baguettes, straight dough\nT55 flour — 10 kg\nWater — 6.5 l\nSalt — 0.18 kg\nYeast — 0.15 kg\nAscorbic acid — 0.2 g\nYield — 45 pieces of 350 g",
    title: "Baguettes, straight dough",
    rows: "T55 flour; flour; 10000\nWater; water; 6500\nSalt; salt; 180\nYeast; yeast; 150\nAscorbic acid; other; 0.2",
    yield: { pieces: 45, weight: 350 },
  },
  {
    text: "Overnight oats bread\nfor the soaker\n100 g rolled oats\n200 g boiling water\nfor the dough\n400 g strong flour\n180 g water\nall the soaker\n9 g salt\n5 g instant yeast",
    title: "Overnight oats bread",
    rows: "rolled oats; grain; 100; soaker\nboiling water; water; 200; soaker\nstrong flour; flour; 400\nwater; water; 180\nsoaker; ; takes\nsalt; salt; 9\ninstant yeast; yeast; 5",
    dough: 894,
    hydration: 0.95,
  },
];
