// Texts with what web pages put around them, methods with times and temperatures, and yields that scale.
import type { Case } from "./corpus-support.ts";

export const WEB: readonly Case[] = [
  {
    text: "Jump to Recipe  Print Recipe\nHarbour white loaf\n★★★★★ 4.8 from 230 votes\nPrep Time: 20 mins\nCook Time: 35 mins\nTotal Time: 3 hrs\nServings: 12\nAuthor: Someone\nCourse: Bread\n\nIngredients\n1x 2x 3x\n▢ 500 g bread flour\n▢ 330 g water\n▢ 10 g salt\n▢ 5 g instant yeast\n\nInstructions\nMix the flour, water, salt and yeast and knead for 10 minutes.\nLet rise for 1 1/2 hours.\nShape, place in a tin and proof 50 minutes.\nBake at 450°F for 35 minutes.\n\nNutrition\nCalories: 180 kcal\nCarbohydrates: 36 g\nProtein: 6 g\n\nDid you make this recipe? Tag us on social media.\n12 comments\nLovely bread, I used 400 g flour!",
    title: "Harbour white loaf",
    rows: "bread flour; flour; 500\nwater; water; 330\nsalt; salt; 10\ninstant yeast; yeast; 5",
    steps: [
      [10, null],
      [90, null],
      [50, null],
      [35, 232.2],
    ],
  },
  {
    text: "I have been baking this bread for 20 years and my family loves it.\n\nTin bread\nYield: 2 loaves, 800 g each\n\n950 g flour\n600 g water\n19 g salt\n12 g instant yeast\n\nNotes\nUse 1 kg of flour for a bigger loaf.\nKeeps 3 days.",
    title: "Tin bread",
    rows: "flour; flour; 950\nwater; water; 600\nsalt; salt; 19\ninstant yeast; yeast; 12",
    yield: { pieces: 2, weight: 800 },
  },
  {
    text: "Equipment\nStand mixer\n9x5 inch loaf pan\n\nIngredients\n400 g flour\n260 g water\n8 g salt\n4 g yeast\n\nDirections\n1. Combine all ingredients. Knead 8 min on low, then 4 min on medium.\n2. Bulk ferment 2 hours at 24°C.\n3. Bench rest 20 min.\n4. Final proof: 60 min.\n5. Bake 30 min at 230 °C, cool 1 hour.",
    rows: "flour; flour; 400\nwater; water; 260\nsalt; salt; 8\nyeast; yeast; 4",
    steps: [
      [12, null],
      [120, 24],
      [20, null],
      [60, null],
      [90, 230],
    ],
  },
  {
    text: "Pizza dough\nFor 10 pieces of 270 g\nFlour 1600 g\nWater 1010 g\nSalt 45 g\nOil 40 g\nYeast 5 g\n\nDDT: 23 °C\nMix 10 min\nBulk 1 h\nDivide 270 g\nRetard overnight at 4 °C\nBake 350 °C 3 min",
    title: "Pizza dough",
    rows: "Flour; flour; 1600\nWater; water; 1010\nSalt; salt; 45\nOil; fat; 40\nYeast; yeast; 5",
    yield: { pieces: 10, weight: 270 },
    steps: [
      [null, 23],
      [10, null],
      [60, null],
      [null, null],
      [null, 4],
      [3, 350],
    ],
    asks: ["step time"],
  },
  {
    text: "Baps\nMakes about 16\nFlour 1 kg\nMilk 600 g\nLard 50 g\nSalt 20 g\nFresh yeast 30 g\nMethod: Mix 6 minutes. Rest 45 minutes. Scale at 100 g. Prove 40 minutes. Bake 12 minutes at 230C.",
    title: "Baps",
    rows: "Flour; flour; 1000\nMilk; dairy; 600\nLard; fat; 50\nSalt; salt; 20\nFresh yeast; yeast; 30",
    yield: { pieces: 16, weight: 100 },
    steps: [
      [6, null],
      [45, null],
      [40, null],
      [12, 230],
    ],
  },
  {
    text: "Batch: 10 kg dough\nFlour 100%\nWater 68%\nSalt 2%\nYeast 0.8%",
    rows: "Flour; flour; 100%\nWater; water; 68%\nSalt; salt; 2%\nYeast; yeast; 0.8%",
    yield: { total: 10000 },
    dough: 10000,
  },
  {
    text: "Boules\n3 × 750 g\nBread flour 1200 g\nWater 870 g\nSalt 24 g\nYeast 4 g",
    title: "Boules",
    rows: "Bread flour; flour; 1200\nWater; water; 870\nSalt; salt; 24\nYeast; yeast; 4",
    asks: ["yield differs"],
    yield: { pieces: 3, weight: 750 },
  },
  {
    text: "Makes 12 to 14 rolls\n600 g flour\n390 g water\n12 g salt\n8 g yeast",
    rows: "flour; flour; 600\nwater; water; 390\nsalt; salt; 12\nyeast; yeast; 8",
    asks: ["yield differs"],
  },
  {
    text: "Makes two 1 lb loaves\n600 g flour\n380 g water\n12 g salt\n8 g yeast\n\nPreheat the oven to 220°C/425°F. Bake for 30 to 35 minutes.",
    rows: "flour; flour; 600\nwater; water; 380\nsalt; salt; 12\nyeast; yeast; 8",
    yield: { pieces: 2, weight: 453.59 },
    asks: ["yield differs"],
    steps: [[32.5, 220]],
  },
  {
    text: "Challah – 6 loaves of 550 g\nFlour 2000 g\nWater 700 g\nEggs 400 g\nSugar 160 g\nOil 120 g\nSalt 36 g\nInstant yeast 20 g\nmix 8 min 2nd speed\nbulk 90 min\nproof 75 min at 28 C\nbake 28 min 180 C",
    title: "Challah",
    rows: "Flour; flour; 2000\nWater; water; 700\nEggs; egg; 400\nSugar; sugar; 160\nOil; fat; 120\nSalt; salt; 36\nInstant yeast; yeast; 20",
    yield: { pieces: 6, weight: 550 },
    steps: [
      [8, null],
      [90, null],
      [75, 28],
      [28, 180],
    ],
  },
  {
    text: "Scaling weight: 480 g\nPieces: 40\nFlour 12 kg\nWater 7.2 kg\nSalt 240 g\nYeast 180 g",
    rows: "Flour; flour; 12000\nWater; water; 7200\nSalt; salt; 240\nYeast; yeast; 180",
    yield: { pieces: 40, weight: 480 },
    dough: 19620,
  },
  {
    text: "2 loaf tins\n1 kg wholemeal flour\n750 g water\n20 g salt\n10 g yeast",
    rows: "wholemeal flour; flour; 1000\nwater; water; 750\nsalt; salt; 20\nyeast; yeast; 10",
    yield: { pieces: 2, tins: 2 },
  },
  {
    text: "Divide into 8 pieces of 120 g and shape.\n600 g flour\n360 g water\n10 g salt\n6 g yeast",
    rows: "flour; flour; 600\nwater; water; 360\nsalt; salt; 10\nyeast; yeast; 6",
    yield: { pieces: 8, weight: 120 },
    steps: [[null, null]],
  },
  {
    text: "Rye loaf\n500 g rye flour\n400 g water\n10 g salt\n5 g yeast\n\nMix 4 minutes on first speed and 6 minutes on second speed.\nFold every 30 minutes.\nProof for an hour and a half.\nBake 20 min at 250 C then 25 min at 210 C.",
    title: "Rye loaf",
    rows: "rye flour; flour; 500\nwater; water; 400\nsalt; salt; 10\nyeast; yeast; 5",
    steps: [
      [10, null],
      [null, null],
      [90, null],
      [45, 250],
    ],
    asks: ["step time"],
  },
];
