// Percentage formulas, with weights and without, with totals that agree and totals that do not; shorthand.
import type { Case } from "./corpus-support.ts";

export const PERCENT: readonly Case[] = [
  {
    text: "Flour 100%\nWater 65%\nSalt 2%\nYeast 1%\nTotal 168%",
    rows: "Flour; flour; 100%\nWater; water; 65%\nSalt; salt; 2%\nYeast; yeast; 1%",
    hydration: 0.65,
  },
  {
    text: "Tin bread\n100 % strong flour\n62 % water\n3 % butter\n2 % salt\n1,5 % fresh yeast",
    title: "Tin bread",
    rows: "strong flour; flour; 100%\nwater; water; 62%\nbutter; fat; 3%\nsalt; salt; 2%\nfresh yeast; yeast; 1.5%",
    hydration: 0.62,
  },
  {
    text: "Baguette\nBread flour - 100\nWater - 68\nSalt - 2\nInstant yeast - 0.4",
    title: "Baguette",
    rows: "Bread flour; flour; 100%\nWater; water; 68%\nSalt; salt; 2%\nInstant yeast; yeast; 0.4%",
  },
  {
    text: "Flour 100, water 58, salt 2, yeast 3, oil 4",
    rows: "Flour; flour; 100%\nwater; water; 58%\nsalt; salt; 2%\nyeast; yeast; 3%\noil; fat; 4%",
  },
  {
    text: "Country bread\nBread flour 80% 8 kg\nWhole wheat flour 20% 2 kg\nWater 72% 7.2 kg\nSalt 2% 0.2 kg\nInstant yeast 0.3% 0.03 kg\nTotal 174.3% 17.43 kg",
    title: "Country bread",
    rows: "Bread flour; flour; 8000\nWhole wheat flour; flour; 2000\nWater; water; 7200\nSalt; salt; 200\nInstant yeast; yeast; 30",
    hydration: 0.72,
    dough: 17430,
  },
  {
    text: "Burger bun\nFlour (100%) 5000 g\nMilk (55%) 2750 g\nEgg (10%) 500 g\nButter (10%) 500 g\nSugar (8%) 400 g\nSalt (1.8%) 90 g\nIDY (1.2%) 60 g\nTotal 9,304 g",
    title: "Burger bun",
    rows: "Flour; flour; 5000\nMilk; dairy; 2750\nEgg; egg; 500\nButter; fat; 500\nSugar; sugar; 400\nSalt; salt; 90\ninstant yeast; yeast; 60",
    asks: ["total differs"],
    dough: 9300,
  },
  {
    text: "Flour 100%, 20 lb\nWater 60%, 12 lb\nSalt 2%, 6.4 oz\nYeast 1.5%, 4.8 oz",
    rows: "Flour; flour; 9071.85\nWater; water; 5443.11\nSalt; salt; 181.44\nYeast; yeast; 136.08",
  },
  {
    text: "Rye 40\nRye flour 40%\nBread flour 60%\nWater 74%\nSalt 2%\nYeast 1%\nCaraway 0.5%\n\n2 x 900 g loaves",
    title: "Rye 40",
    rows: "Rye flour; flour; 40%\nBread flour; flour; 60%\nWater; water; 74%\nSalt; salt; 2%\nYeast; yeast; 1%\nCaraway; other; 0.5%",
    yield: { pieces: 2, weight: 900 },
    dough: 1800,
  },
  {
    text: "AP fl 10#\nwtr 6.5#\nslt 3.2 oz\nIDY 1.5 oz",
    rows: "all-purpose flour; flour; 4535.92\nwater; water; 2948.35\nsalt; salt; 90.72\ninstant yeast; yeast; 42.52",
  },
  {
    text: "WW fl 30%\nBF 70%\nwtr 70%\nslt 2%\nyst 1.2%",
    rows: "whole wheat flour; flour; 30%\nbread flour; flour; 70%\nwater; water; 70%\nsalt; salt; 2%\nyeast; yeast; 1.2%",
  },
  {
    text: "Brioche\nFlour 100%\nEggs 50%\nButter 50%\nMilk 10%\nSugar 12%\nSalt 2%\nFresh yeast 4%\nScale at 60 g, makes 40",
    title: "Brioche",
    rows: "Flour; flour; 100%\nEggs; egg; 50%\nButter; fat; 50%\nMilk; dairy; 10%\nSugar; sugar; 12%\nSalt; salt; 2%\nFresh yeast; yeast; 4%",
    yield: { pieces: 40, weight: 60 },
    dough: 2400,
  },
  {
    text: "Sandwich loaf formula (% of total)\nFlour 57.8%\nWater 35.84%\nSalt 1.16%\nButter 2.89%\nYeast 2.31%\nTotal 100%",
    // 57.8 of flour are 100; 35.84 ÷ 57.8 = 62 %
    rows: "Flour; flour; 57.8%\nWater; water; 35.84%\nSalt; salt; 1.16%\nButter; fat; 2.89%\nYeast; yeast; 2.31%",
    hydration: 0.62,
  },
  {
    text: "Flour 95%\nWater 65%\nSalt 2%\nYeast 1%",
    rows: "Flour; flour; 95%\nWater; water; 65%\nSalt; salt; 2%\nYeast; yeast; 1%",
    asks: ["flour is not 100 %"],
  },
  {
    text: "Flour 100% 1000g\nWater 70% 650g\nSalt 2% 20g\nYeast 1% 10g",
    rows: "Flour; flour; 1000\nWater; water; 650\nSalt; salt; 20\nYeast; yeast; 10",
    asks: ["percent and weight differ"],
  },
  {
    text: "Pizza base\nFlour 1000 g\nWater 62%\nSalt 2.5%\nOlive oil 2%\nFresh yeast 0.5%",
    title: "Pizza base",
    rows: "Flour; flour; 1000\nWater; water; 62%\nSalt; salt; 2.5%\nOlive oil; fat; 2%\nFresh yeast; yeast; 0.5%",
    dough: 1670,
    hydration: 0.62,
  },
  {
    text: "Bagels – 24 pcs @ 0.110 kg\nHigh-gluten flour 100%\nWater 54%\nMalt syrup 2%\nSalt 2%\nIDY 0.5%",
    title: "Bagels",
    rows: "High-gluten flour; flour; 100%\nWater; water; 54%\nMalt syrup; sugar; 2%\nSalt; salt; 2%\ninstant yeast; yeast; 0.5%",
    yield: { pieces: 24, weight: 110 },
    dough: 2640,
  },
  {
    text: "Milk loaf\nFlour 100%\n2% milk 62%\nSalt 2%\nYeast 2%\nSugar 5%",
    title: "Milk loaf",
    rows: "Flour; flour; 100%\n2% milk; dairy; 62%\nSalt; salt; 2%\nYeast; yeast; 2%\nSugar; sugar; 5%",
  },
  {
    text: "100% whole wheat flour 600 g\n2% milk 420 g\nsalt 12 g\nhoney 30 g\nyeast 9 g",
    rows: "whole wheat flour; flour; 600\n2% milk; dairy; 420\nsalt; salt; 12\nhoney; sugar; 30\nyeast; yeast; 9",
  },
  {
    text: "Flour 1000\nWater 640\nSalt 20\nYeast 12",
    rows: "Flour; flour; -\nWater; water; -\nSalt; salt; -\nYeast; yeast; -",
    asks: ["which unit"],
  },
  {
    text: "All weights in grams\nflour: 1000\nwater: 620\neggs: 120\nsalt: 20\nyeast: 15",
    rows: "flour; flour; 1000\nwater; water; 620\neggs; egg; 120\nsalt; salt; 20\nyeast; yeast; 15",
  },
  {
    text: "White dough (kg)\nFlour 25\nWater 15.5\nSalt 0.5\nYeast 0.5\nFat 0.25",
    title: "White dough",
    rows: "Flour; flour; 25000\nWater; water; 15500\nSalt; salt; 500\nYeast; yeast; 500\nFat; fat; 250",
  },
  {
    text: "Levain bread\nBread flour 90%\nRye flour 10%\nWater 68%\nLevain (100% hydration) 30%\nSalt 2.1%",
    title: "Levain bread",
    rows: "Bread flour; flour; 90%\nRye flour; flour; 10%\nWater; water; 68%\nLevain; levain 100%; 30%\nSalt; salt; 2.1%",
    // (68 + 15) of (100 + 15)
    hydration: 0.7217,
  },
  {
    text: "Sourdough tin\nFlour 1000 g\nWater 600 g\nSourdough starter 200 g\nSalt 20 g",
    title: "Sourdough tin",
    rows: "Flour; flour; 1000\nWater; water; 600\nSourdough starter; ; 200\nSalt; salt; 20",
    asks: ["hydration"],
  },
];
