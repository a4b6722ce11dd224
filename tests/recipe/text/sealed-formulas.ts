// Percentage formulas and tables that were written down before their writer had seen the reader, and not changed since but where a comment says so.
import type { Case } from "./corpus-support.ts";

export const SEALED_PERCENT: readonly Case[] = [
  {
    text: "CIABATTA\nBread flour........100.00%\nWater...............80.00%\nOlive oil............3.00%\nSalt.................2.20%\nInstant yeast........0.45%\nTOTAL..............185.65%",
    title: "CIABATTA",
    rows: "Bread flour; flour; 100%\nWater; water; 80%\nOlive oil; fat; 3%\nSalt; salt; 2.2%\nInstant yeast; yeast; 0.45%",
    hydration: 0.8,
  },
  {
    text: "Hamburger bun, 120 pcs à 75 g\nWheat flour 100 %\nWater 48 %\nWhole egg 8 %\nSugar 10 %\nButter 8 %\nMilk powder 4 %\nSalt 1,8 %\nFresh yeast 4 %",
    title: "Hamburger bun",
    rows: "Wheat flour; flour; 100%\nWater; water; 48%\nWhole egg; egg; 8%\nSugar; sugar; 10%\nButter; fat; 8%\nMilk powder; dairy; 4%\nSalt; salt; 1.8%\nFresh yeast; yeast; 4%",
    yield: { pieces: 120, weight: 75 },
    dough: 9000,
  },
  {
    text: "Multigrain tin (on flour weight)\nBF 85\nWWF 15\nwater 66\nseed mix 18\nsalt 2.1\nIDY 0.9\nshortening 3\n---\n190",
    title: "Multigrain tin",
    rows: "bread flour; flour; 85%\nwhole wheat flour; flour; 15%\nwater; water; 66%\nseed mix; grain; 18%\nsalt; salt; 2.1%\ninstant yeast; yeast; 0.9%\nshortening; fat; 3%",
  },
  {
    text: "Flour (strong) 100.0% 12.000 kg\nWater 63.0% 7.560 kg\nSalt 2.0% 0.240 kg\nFresh yeast 2.5% 0.300 kg\nLard 2.0% 0.240 kg\nTotal 169.5% 20.340 kg",
    // Put right after the first run: what is in brackets belongs to the flour.
    rows: "Flour, strong; flour; 12000\nWater; water; 7560\nSalt; salt; 240\nFresh yeast; yeast; 300\nLard; fat; 240",
    dough: 20340,
    hydration: 0.63,
  },
  {
    text: "Total dough: 25 kg\n\nBread flour 70%\nSemolina 30%\nWater 66%\nSalt 2.2%\nOlive oil 1.8%\nYeast, instant 0.5%",
    rows: "Bread flour; flour; 70%\nSemolina; flour; 30%\nWater; water; 66%\nSalt; salt; 2.2%\nOlive oil; fat; 1.8%\nYeast, instant; yeast; 0.5%",
    yield: { total: 25000 },
    dough: 25000,
    hydration: 0.66,
  },
  {
    text: "65% hydration white\nFlour - 100% - 2000g\nWater - 65% - 1300g\nSalt - 1.9% - 38g\nADY - 0.8% - 16g",
    title: "65% hydration white",
    rows: "Flour; flour; 2000\nWater; water; 1300\nSalt; salt; 38\nactive dry yeast; yeast; 16",
    hydration: 0.65,
  },
  {
    text: "Water 60\nFlour 100\nYeast 3\nSalt 2\nSugar 6\nFat 4\nMilk powder 3\n(all percentages on flour)",
    rows: "Water; water; 60%\nFlour; flour; 100%\nYeast; yeast; 3%\nSalt; salt; 2%\nSugar; sugar; 6%\nFat; fat; 4%\nMilk powder; dairy; 3%",
  },
  {
    text: "Rye sour bread\nMedium rye flour 45%\nBread flour 55%\nWater 70%\nSalt 1.8%\nRye sour (80% hydration) 36%",
    title: "Rye sour bread",
    rows: "Medium rye flour; flour; 45%\nBread flour; flour; 55%\nWater; water; 70%\nSalt; salt; 1.8%\nRye sour; sour 80%; 36%",
    // 36 of sour are 20 of flour and 16 of water: 86 of 120
    hydration: 0.7167,
  },
  {
    text: "Pan de mie\nFlour 100% = 5 kg\nMilk 62% = 3.1 kg\nButter 8% = 400 g\nSugar 6% = 300 g\nSalt 2% = 110 g\nYeast 2.5% = 125 g",
    title: "Pan de mie",
    rows: "Flour; flour; 5000\nMilk; dairy; 3100\nButter; fat; 400\nSugar; sugar; 300\nSalt; salt; 110\nYeast; yeast; 125",
    asks: ["percent and weight differ"],
  },
  {
    text: "Shortcrust (% of flour)\nPastry flour 100\nButter 50\nSugar 25\nEgg 12\nSalt 1",
    title: "Shortcrust",
    rows: "Pastry flour; flour; 100%\nButter; fat; 50%\nSugar; sugar; 25%\nEgg; egg; 12%\nSalt; salt; 1%",
  },
];

export const SEALED_TABLES: readonly Case[] = [
  {
    text: "Ingredient,%,grams\nBread flour,90,4500\nWholemeal,10,500\nWater,68,3400\nSalt,2,100\nFresh yeast,1.5,75\nTotal,171.5,8575",
    rows: "Bread flour; flour; 4500\nWholemeal; flour; 500\nWater; water; 3400\nSalt; salt; 100\nFresh yeast; yeast; 75",
    dough: 8575,
    hydration: 0.68,
  },
  {
    text: "DANISH ROLLS\nQty\tUOM\tItem\n2.500\tkg\tFlour\n1.250\tkg\tMilk\n0.250\tkg\tSugar\n0.250\tkg\tMargarine\n5\tea\tEggs\n45\tg\tSalt\n125\tg\tYeast, fresh",
    title: "DANISH ROLLS",
    rows: "Flour; flour; 2500\nMilk; dairy; 1250\nSugar; sugar; 250\nMargarine; fat; 250\nEggs; egg; 250\nSalt; salt; 45\nYeast, fresh; yeast; 125",
  },
  {
    text: "Name;Anteil %;Gewicht kg\nWeizenmehl 550;80;16,0\nRoggenmehl 1150;20;4,0\nWasser;65;13,0\nSalz;2;0,4\nHefe;2;0,4\nSumme;169;33,8",
    rows: "Weizenmehl 550; flour; 16000\nRoggenmehl 1150; flour; 4000\nWasser; water; 13000\nSalz; salt; 400\nHefe; yeast; 400",
    dough: 33800,
  },
  {
    text: "| Baker's % | Grams | Ingredient |\n| :---: | ---: | :--- |\n| 100% | 1,500 | High gluten flour |\n| 57% | 855 | Water |\n| 2.2% | 33 | Salt |\n| 4% | 60 | Barley malt syrup |\n| 0.6% | 9 | Instant yeast |",
    rows: "High gluten flour; flour; 1500\nWater; water; 855\nSalt; salt; 33\nBarley malt syrup; sugar; 60\nInstant yeast; yeast; 9",
    hydration: 0.57,
  },
  {
    text: "INGREDIENT            LBS     OZ      %\nBread flour            50      0     100\nWater                  31      0      62\nSalt                    1      0       2\nSugar                   2      8       5\nShortening              1      8       3\nYeast, compressed       1      4     2.5",
    // 1 lb 4 oz are 20 oz
    rows: "Bread flour; flour; 22679.6\nWater; water; 14061.4\nSalt; salt; 453.59\nSugar; sugar; 1133.98\nShortening; fat; 680.39\nYeast, compressed; yeast; 566.99",
  },
  {
    text: "ingredient\t1 mix (kg)\t3 mixes (kg)\nFlour\t20\t60\nWater\t12.4\t37.2\nSalt\t0.4\t1.2\nYeast\t0.5\t1.5",
    rows: "Flour; flour; 20000\nWater; water; 12400\nSalt; salt; 400\nYeast; yeast; 500",
    asks: ["which column"],
  },
  {
    text: "Component\tMaterial\tg\nBiga\tStrong flour\t1000\nBiga\tWater\t550\nBiga\tFresh yeast\t5\nDough\tStrong flour\t3000\nDough\tWater\t2290\nDough\tSalt\t80\nDough\tFresh yeast\t25\nDough\tBiga\t1555",
    rows: "Strong flour; flour; 1000; preferment\nWater; water; 550; preferment\nFresh yeast; yeast; 5; preferment\nStrong flour; flour; 3000\nWater; water; 2290\nSalt; salt; 80\nFresh yeast; yeast; 25\nBiga; ; takes",
    pre: { kind: "biga", share: 0.25, hydration: 0.55 },
    hydration: 0.71,
    dough: 6950,
  },
  {
    text: "Sponge cake\nIngredient | g\nEggs | 400\nSugar | 250\nCake flour | 200\nCornstarch | 50\nMelted butter | 60",
    title: "Sponge cake",
    rows: "Eggs; egg; 400\nSugar; sugar; 250\nCake flour; flour; 200\nCornstarch; other; 50\nMelted butter; fat; 60",
  },
  {
    text: "Item\tAmount\tSupplier\nBread flour\t5 kg\tNorth mill\nWater\t3,4 kg\t-\nSalt\t0,1 kg\tSalt works\nInstant yeast\t40 g\t-",
    rows: "Bread flour; flour; 5000\nWater; water; 3400\nSalt; salt; 100\nInstant yeast; yeast; 40",
  },
  {
    text: "Ingredients\tBaker %\tTotal formula g\tPoolish g\tFinal mix g\nBread flour\t100\t2000\t500\t1500\nWater\t67\t1340\t500\t840\nSalt\t2\t40\t\t40\nInstant yeast\t0.4\t8\t0.5\t7.5\nPoolish\t\t\t\t1000.5\nTotal\t169.4\t3388\t1000.5\t3388",
    rows: "Bread flour; flour; 2000; overall\nBread flour; flour; 500; preferment\nBread flour; flour; 1500\nWater; water; 1340; overall\nWater; water; 500; preferment\nWater; water; 840\nSalt; salt; 40; overall\nSalt; salt; 40\nInstant yeast; yeast; 8; overall\nInstant yeast; yeast; 0.5; preferment\nInstant yeast; yeast; 7.5\nPoolish; ; takes",
    pre: { kind: "poolish", share: 0.25, hydration: 1 },
    hydration: 0.67,
    dough: 3388,
  },
];
