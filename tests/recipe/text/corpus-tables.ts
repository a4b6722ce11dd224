// Pasted tables: tabs, bars, semicolons, commas, aligned blanks; headings in any order, units in headings, totals.
import type { Case } from "./corpus-support.ts";

export const TABLES: readonly Case[] = [
  {
    text: "Ingredient\tBaker's %\tWeight (g)\nBread flour\t100\t8,210\nWater\t65\t5,337\nSalt\t2\t164\nInstant yeast\t1\t83\nTotal\t168\t13,794",
    rows: "Bread flour; flour; 8210\nWater; water; 5337\nSalt; salt; 164\nInstant yeast; yeast; 83",
    dough: 13794,
  },
  {
    text: "White pan\nkg\tIngredient\t%\n25.00\tFlour\t100\n15.50\tWater\t62\n0.50\tSalt\t2\n0.75\tFresh yeast\t3\n41.75\tTotal\t167",
    title: "White pan",
    rows: "Flour; flour; 25000\nWater; water; 15500\nSalt; salt; 500\nFresh yeast; yeast; 750",
    dough: 41750,
  },
  {
    text: "Zutat;Menge (g);%\nWeizenmehl;1.000;100\nWasser;650;65\nSalz;20;2\nHefe;12,5;1,25",
    rows: "Weizenmehl; flour; 1000\nWasser; water; 650\nSalz; salt; 20\nHefe; yeast; 12.5",
    hydration: 0.65,
  },
  {
    text: 'ingredient,grams,percent\n"Flour, bread",1000,100%\nWater,680,68%\nSalt,20,2%\nYeast,5,0.5%',
    rows: "Flour, bread; flour; 1000\nWater; water; 680\nSalt; salt; 20\nYeast; yeast; 5",
  },
  {
    text: "| Ingredient | Amount | Baker's % |\n|---|---|---|\n| Flour | 900 g | 90 % |\n| Rye flour | 100 g | 10 % |\n| Water | 720 g | 72 % |\n| Salt | 20 g | 2 % |",
    rows: "Flour; flour; 900\nRye flour; flour; 100\nWater; water; 720\nSalt; salt; 20",
    hydration: 0.72,
  },
  {
    text: "Milk rolls\n\nItem            Qty     Unit\nFlour           2       kg\nMilk            1.1     l\nButter          200     g\nSalt            36      g\nYeast           60      g",
    title: "Milk rolls",
    // a litre of the cup's 244 g in 236.588 ml
    rows: "Flour; flour; 2000\nMilk; dairy; 1134.5\nButter; fat; 200\nSalt; salt; 36\nYeast; yeast; 60",
  },
  {
    text: "Ingredients      10 loaves (g)   50 loaves (g)\nFlour            5000            25000\nWater            3250            16250\nSalt             100             500\nYeast            50              250",
    rows: "Flour; flour; 5000\nWater; water; 3250\nSalt; salt; 100\nYeast; yeast; 50",
    asks: ["which column"],
  },
  {
    text: "Ingredient\tlb\toz\nFlour\t10\t0\nWater\t6\t4\nSalt\t0\t3.2\nYeast\t0\t2.5",
    // 6 lb 4 oz is 100 oz
    rows: "Flour; flour; 4535.92\nWater; water; 2834.95\nSalt; salt; 90.72\nYeast; yeast; 70.87",
  },
  {
    text: "Ingredient\tGrams\tOunces\nFlour\t1000\t35.3\nWater\t650\t22.9\nSalt\t20\t0.7\nYeast\t10\t0.35",
    rows: "Flour; flour; 1000\nWater; water; 650\nSalt; salt; 20\nYeast; yeast; 10",
  },
  {
    text: "Flour\t1000\t100\nWater\t650\t65\nSalt\t20\t2\nYeast\t15\t1.5",
    rows: "Flour; flour; 100%\nWater; water; 65%\nSalt; salt; 2%\nYeast; yeast; 1.5%",
    asks: ["which unit"],
  },
  {
    text: "Flour\t100%\nWater\t63%\nSalt\t2%\nSugar\t4%\nYeast\t2%",
    rows: "Flour; flour; 100%\nWater; water; 63%\nSalt; salt; 2%\nSugar; sugar; 4%\nYeast; yeast; 2%",
  },
  {
    text: "Baker's %,Ingredient\n100,Flour\n60,Water\n2,Salt\n1.2,Instant yeast\n5,Sugar\n168.2,Total",
    rows: "Flour; flour; 100%\nWater; water; 60%\nSalt; salt; 2%\nInstant yeast; yeast; 1.2%\nSugar; sugar; 5%",
  },
  {
    text: "Ingredient\t%\nFlour\t1.00\nWater\t0.66\nSalt\t0.02\nYeast\t0.01",
    rows: "Flour; flour; 100%\nWater; water; 66%\nSalt; salt; 2%\nYeast; yeast; 1%",
  },
  {
    text: "Stage\tIngredient\tWeight (g)\nPoolish\tBread flour\t300\nPoolish\tWater\t300\nPoolish\tInstant yeast\t0.5\nFinal dough\tBread flour\t700\nFinal dough\tWater\t380\nFinal dough\tSalt\t20\nFinal dough\tInstant yeast\t3\nFinal dough\tPoolish\t600.5",
    rows: "Bread flour; flour; 300; preferment\nWater; water; 300; preferment\nInstant yeast; yeast; 0.5; preferment\nBread flour; flour; 700\nWater; water; 380\nSalt; salt; 20\nInstant yeast; yeast; 3\nPoolish; ; takes",
    pre: { kind: "poolish", share: 0.3, hydration: 1 },
    hydration: 0.68,
  },
  {
    text: "Ingredient\tPoolish (g)\tFinal dough (g)\tTotal (g)\nFlour\t200\t800\t1000\nWater\t200\t460\t660\nSalt\t\t20\t20\nYeast\t0.4\t6\t6.4\nPoolish\t\t400.4\t",
    rows: "Flour; flour; 200; preferment\nFlour; flour; 800\nFlour; flour; 1000; overall\nWater; water; 200; preferment\nWater; water; 460\nWater; water; 660; overall\nSalt; salt; 20\nSalt; salt; 20; overall\nYeast; yeast; 0.4; preferment\nYeast; yeast; 6\nYeast; yeast; 6.4; overall\nPoolish; ; takes",
    pre: { kind: "poolish", share: 0.2, hydration: 1 },
    hydration: 0.66,
  },
  {
    text: "Raw material\tType\tQuantity (kg)\tPrice\nFlour\tflour\t10\t6.20\nWater\twater\t6,4\t0\nSalt\tsalt\t0,2\t0.10\nYeast\tyeast\t0,3\t0.90",
    rows: "Flour; flour; 10000\nWater; water; 6400\nSalt; salt; 200\nYeast; yeast; 300",
  },
  {
    text: "Ingredient          Weight\nFlour               1,250 g\nWater                 800 g\nSalt                   25 g\nYeast                  12 g\nTotal               2,087 g",
    rows: "Flour; flour; 1250\nWater; water; 800\nSalt; salt; 25\nYeast; yeast; 12",
    dough: 2087,
  },
  {
    text: "No.\tIngredient\tWeight g\tNotes\n1\tFlour\t1000\t\n2\tWater\t600\tat 12 °C\n3\tSalt\t20\tlate\n4\tYeast\t8\t",
    rows: "Flour; flour; 1000\nWater; water; 600\nSalt; salt; 20\nYeast; yeast; 8",
  },
  {
    text: "500 g\tbread flour\n325 g\twater\n10 g\tsalt\n5 g\tinstant yeast",
    rows: "bread flour; flour; 500\nwater; water; 325\nsalt; salt; 10\ninstant yeast; yeast; 5",
  },
  {
    text: "Ingredient\tWeight\nFlour\t5\nWater\t3.1\nSalt\t0.1",
    rows: "Flour; flour; -\nWater; water; -\nSalt; salt; -",
    asks: ["which unit"],
  },
  {
    text: "Ingredient;Small batch g;Large batch g\nFlour;1000;12000\nWater;700;8400\nSalt;20;240",
    rows: "Flour; flour; 1000\nWater; water; 700\nSalt; salt; 20",
    asks: ["which column"],
  },
  {
    text: "Ingredient\tWeight (g)\nFlour\t13 200\nWater\t8 580\nSalt\t264\nYeast\t132\nTotal\t22 176",
    rows: "Flour; flour; 13200\nWater; water; 8580\nSalt; salt; 264\nYeast; yeast; 132",
    dough: 22176,
  },
  {
    text: "Ingredient\tWeight (g)\nFlour\t1000\nEggs\t6\nButter\t400\nSugar\t150\nSalt\t18",
    // a column says grams: six grams of egg are what it says
    rows: "Flour; flour; 1000\nEggs; egg; 6\nButter; fat; 400\nSugar; sugar; 150\nSalt; salt; 18",
  },
];
