// The rest of the fifth lot: stages, parts beside the dough, and texts from web pages, letters and specifications.
import type { Case } from "./corpus-support.ts";

export const FIFTH_STAGES: readonly Case[] = [
  {
    text: "Pain au levain\nRafraîchi (levain) : farine T80 400 g, eau 400 g, levain chef 80 g\nPétrissage : farine T65 1600 g, eau 1100 g, sel 40 g, levain 880 g",
    title: "Pain au levain",
    rows: "farine T80; flour; 400; preferment\neau; water; 400; preferment\nlevain chef; levain 100%; 80; preferment\nfarine T65; flour; 1600\neau; water; 1100\nsel; salt; 40\nlevain; ; takes",
    // 400 + 40 g of 2 040 g of flour
    pre: { kind: "levain", share: 0.2157, hydration: 1, seed: 0.2 },
    hydration: 0.7549,
    dough: 3620,
  },
  {
    text: "WHITE PAN BREAD - SPONGE & DOUGH\n                 Sponge   Dough\nFlour            70 lb    30 lb\nWater            42 lb    20 lb\nYeast            2.5 lb   -\nSalt             -        2 lb\nSugar            -        8 lb\nShortening       -        3 lb\nNFDM             -        2 lb",
    rows: "Flour; flour; 31751.5; preferment\nFlour; flour; 13607.8\nWater; water; 19050.9; preferment\nWater; water; 9071.85\nYeast; yeast; 1133.98; preferment\nSalt; salt; 907.18\nSugar; sugar; 3628.74\nShortening; fat; 1360.78\nNFDM; dairy; 907.18",
    pre: { kind: "sponge", share: 0.7, hydration: 0.6 },
    hydration: 0.62,
    dough: 81420,
  },
  {
    text: "Pizza alla pala con biga\nBiga: 500 g farina forte, 225 g acqua, 5 g lievito fresco\nImpasto: tutta la biga, 500 g farina 0, 525 g acqua, 25 g sale, 20 g olio",
    title: "Pizza alla pala con biga",
    rows: "farina forte; flour; 500; preferment\nacqua; water; 225; preferment\nlievito fresco; yeast; 5; preferment\nbiga; ; takes\nfarina 0; flour; 500\nacqua; water; 525\nsale; salt; 25\nolio; fat; 20",
    pre: { kind: "biga", share: 0.5, hydration: 0.45 },
    hydration: 0.75,
    dough: 1800,
  },
  {
    text: "Seeded rye\n\nSoaker\nSunflower seeds 8%\nLinseed 6%\nHot water 16%\nSalt 0.4%\n\nLevain (16 h, 24C)\nWhole rye 25%\nWater 25%\nStarter 2.5%\n\nFinal\nWhole rye 25%\nBread flour 50%\nWater 42%\nSalt 1.6%\nYeast 0.6%\nLevain all\nSoaker all",
    title: "Seeded rye",
    rows: "Sunflower seeds; grain; 8%; soaker\nLinseed; grain; 6%; soaker\nHot water; water; 16%; soaker\nSalt; salt; 0.4%; soaker\nWhole rye; flour; 25%; preferment\nWater; water; 25%; preferment\nStarter; levain 100%; 2.5%; preferment\nWhole rye; flour; 25%\nBread flour; flour; 50%\nWater; water; 42%\nSalt; salt; 1.6%\nYeast; yeast; 0.6%\nLevain; ; takes\nSoaker; ; takes",
  },
  {
    text: "Milk bread\nTangzhong\n25 g bread flour\n125 g milk\n\nMain dough\n350 g bread flour\n30 g milk powder\n55 g sugar\n6 g salt\n6 g instant yeast\n1 large egg\n100 g milk\n40 g butter\nAll of the tangzhong",
    title: "Milk bread",
    rows: "bread flour; flour; 25; soaker\nmilk; dairy; 125; soaker\nbread flour; flour; 350\nmilk powder; dairy; 30\nsugar; sugar; 55\nsalt; salt; 6\ninstant yeast; yeast; 6\negg; egg; 50\nmilk; dairy; 100\nbutter; fat; 40\ntangzhong; ; takes",
    dough: 787,
  },
  {
    text: "Poolish\nFlour 10 lb\nWater 10 lb\nYeast 1/4 oz\n\nDough\nPoolish 20 lb\nFlour 20 lb\nWater 10 lb 8 oz\nSalt 9.6 oz\nYeast 2.5 oz",
    rows: "Flour; flour; 4535.92; preferment\nWater; water; 4535.92; preferment\nYeast; yeast; 7.09; preferment\nPoolish; ; takes\nFlour; flour; 9071.85\nWater; water; 4762.72\nSalt; salt; 272.16\nYeast; yeast; 70.87",
    pre: { kind: "poolish", share: 0.3333, hydration: 1 },
    hydration: 0.6833,
  },
  {
    text: "Country loaf\nDough\n1800 g bread flour\n200 g rye flour\n1400 g water\n44 g salt\n400 g levain (see below)\n\nLevain\n200 g bread flour\n200 g water\n40 g mother",
    title: "Country loaf",
    rows: "bread flour; flour; 1800\nrye flour; flour; 200\nwater; water; 1400\nsalt; salt; 44\nlevain; ; takes\nbread flour; flour; 200; preferment\nwater; water; 200; preferment\nmother; levain 100%; 40; preferment",
    // 400 of 440 g, that is 200 g of 2 200 g of flour
    pre: { kind: "levain", share: 0.0909, hydration: 1, seed: 0.2 },
    hydration: 0.7273,
    dough: 3844,
  },
  {
    text: "Stage 1 – Refresher (5-6 h, 26 °C): rye flour 1 kg, water 1.5 kg, starter 100 g\nStage 2 – Basic sour (6-10 h, 24 °C): rye flour 4 kg, water 2.4 kg, refresher all\nStage 3 – Full sour (3 h, 30 °C): rye flour 5 kg, water 5 kg, basic sour all\nDough: rye flour 5 kg, wheat flour 5 kg, water 5.6 kg, salt 0.36 kg, full sour all",
    rows: "rye flour; flour; 1000; preferment\nwater; water; 1500; preferment\nstarter; levain 150%; 100; preferment\nrye flour; flour; 4000; preferment\nwater; water; 2400; preferment\nrefresher; ; takes; preferment\nrye flour; flour; 5000; preferment\nwater; water; 5000; preferment\nbasic sour; ; takes; preferment\nrye flour; flour; 5000\nwheat flour; flour; 5000\nwater; water; 5600\nsalt; salt; 360\nfull sour; ; takes",
    dough: 34960,
  },
];

export const FIFTH_PARTS: readonly Case[] = [
  {
    text: "Hot cross buns x 36\nDough\n1 kg strong flour\n500 g milk\n120 g sugar\n120 g butter\n2 eggs\n18 g salt\n20 g dried yeast\n250 g currants\n\nCrossing paste\n100 g plain flour\n90 g water\n\nBun wash\n50 g sugar\n50 g water",
    title: "Hot cross buns",
    rows: "strong flour; flour; 1000\nmilk; dairy; 500\nsugar; sugar; 120\nbutter; fat; 120\neggs; egg; 100\nsalt; salt; 18\ndried yeast; yeast; 20\ncurrants; fruit; 250\nplain flour; flour; 100; topping\nwater; water; 90; topping\nsugar; sugar; 50; egg wash\nwater; water; 50; egg wash",
    yield: { pieces: 36 },
    dough: 2128,
    parts: ["topping", "egg wash"],
  },
  {
    text: "Sausage rolls (48)\n\nRough puff:\n1 kg plain flour\n750 g butter\n400 g cold water\n15 g salt\n\nFilling:\n2 kg sausage meat\n200 g onion, finely chopped\n20 g sage, chopped\n\nEgg wash:\n2 eggs",
    title: "Sausage rolls",
    rows: "plain flour; flour; 1000\nbutter; fat; 750\ncold water; water; 400\nsalt; salt; 15\nsausage meat; other; 2000; filling\nonion; fruit; 200; filling\nsage; other; 20; filling\neggs; egg; 100; egg wash",
    yield: { pieces: 48 },
    dough: 2165,
    parts: ["filling", "egg wash"],
  },
  {
    text: "Pizza Margherita, 10 x 280 g balls\nDough: 1700 g flour 00, 1070 g water, 48 g salt, 3 g fresh yeast\nSauce: 1000 g peeled tomatoes, 10 g salt, 30 g olive oil\nCheese: 900 g mozzarella",
    title: "Pizza Margherita",
    rows: "flour 00; flour; 1700\nwater; water; 1070\nsalt; salt; 48\nfresh yeast; yeast; 3\npeeled tomatoes; other; 1000; topping\nsalt; salt; 10; topping\nolive oil; fat; 30; topping\nmozzarella; dairy; 900; topping",
    yield: { pieces: 10, weight: 280 },
    dough: 2821,
    parts: ["topping", "topping"],
  },
  {
    text: "Éclairs\nChoux paste\nWater 500 g\nButter 200 g\nSalt 5 g\nFlour 300 g\nEggs 500 g\n\nPastry cream\nMilk 1000 g\nSugar 200 g\nYolks 160 g\nCornflour 80 g\nButter 100 g\n\nChocolate fondant\nFondant 600 g\nDark chocolate 150 g",
    cups: "UK",
    title: "Éclairs",
    rows: "Water; water; 500\nButter; fat; 200\nSalt; salt; 5\nFlour; flour; 300\nEggs; egg; 500\nMilk; dairy; 1000; filling\nSugar; sugar; 200; filling\nYolks; egg; 160; filling\nCornflour; other; 80; filling\nButter; fat; 100; filling\nFondant; sugar; 600; icing\nDark chocolate; other; 150; icing",
    dough: 1505,
    parts: ["filling", "icing"],
  },
  {
    text: "Blueberry crumble muffins\nYield: 12 muffins of 110 g\n\nBatter\n280 g plain flour\n200 g sugar\n12 g baking powder\n3 g salt\n2 eggs\n240 g buttermilk\n120 g vegetable oil\n200 g blueberries\n\nCrumble\n60 g flour\n50 g brown sugar\n40 g cold butter",
    title: "Blueberry crumble muffins",
    // 280 + 200 + 12 + 3 + 100 + 240 + 120 + 200 = 1155 g of batter, 165 g short of 12 × 110 with the crumble's 150 g apart
    rows: "plain flour; flour; 280\nsugar; sugar; 200\nbaking powder; other; 12\nsalt; salt; 3\neggs; egg; 100\nbuttermilk; dairy; 240\nvegetable oil; fat; 120\nblueberries; fruit; 200\nflour; flour; 60; topping\nbrown sugar; sugar; 50; topping\ncold butter; fat; 40; topping",
    yield: { pieces: 12, weight: 110 },
    dough: 1155,
    parts: ["topping"],
    asks: ["yield differs"],
  },
];

export const FIFTH_WEB: readonly Case[] = [
  {
    text: "Jump to Recipe\nPrint\nRate this recipe ★★★★★ 4.8 from 312 votes\nRosemary Focaccia\nPrep Time 20 minutes\nCook Time 25 minutes\nTotal Time 3 hours\nServings 12\nIngredients\n▢ 4 cups all-purpose flour (500 g)\n▢ 2 teaspoons salt (12 g)\n▢ 2¼ teaspoons instant yeast (7 g)\n▢ 2 cups warm water (480 g)\n▢ 2 tablespoons olive oil\nInstructions\n1. Mix flour, salt and yeast. Add water and stir for 2 minutes.\n2. Cover; leave to rise for 1½ hours.\n3. Bake at 425°F (220°C) for 25 minutes.\nNutrition\nCalories: 210kcal | Carbohydrates: 33g | Protein: 5g\nDid you make this? Tag us!",
    title: "Rosemary Focaccia",
    rows: "all-purpose flour; flour; 500\nsalt; salt; 12\ninstant yeast; yeast; 7\nwarm water; water; 480\nolive oil; fat; 27",
    steps: [
      [2, null],
      [90, null],
      [25, 220],
    ],
  },
  {
    text: "Hey all, here's my go-to:\n- 500g flour\n- 375g water\n- 10g salt\n- 100g starter\nMix, bulk 5h at 26C, shape, fridge overnight, bake 45min at 240.\nLet me know how it goes :)",
    rows: "flour; flour; 500\nwater; water; 375\nsalt; salt; 10\nstarter; ; 100",
    // nobody says how wet it is
    asks: ["hydration"],
  },
  {
    text: "PRODUCT: Sandwich tin 800 g\nBATCH: 60 loaves\nSCALING WT: 920 g\n\nFLOUR 33.0 KG\nWATER 20.0 KG\nSALT 0.66 KG\nYEAST 0.80 KG\nFAT 0.33 KG\nIMPROVER 0.33 KG\n\nMIX: 10 MIN\nDOUGH TEMP: 27C\nINTERMEDIATE PROOF 10 MIN\nFINAL PROOF 55 MIN @ 38C\nBAKE 230C 28 MIN",
    rows: "FLOUR; flour; 33000\nWATER; water; 20000\nSALT; salt; 660\nYEAST; yeast; 800\nFAT; fat; 330\nIMPROVER; other; 330",
    yield: { pieces: 60, weight: 920 },
    dough: 55120,
    steps: [
      [10, null],
      [null, 27],
      [10, null],
      [55, 38],
      [28, 230],
    ],
  },
  {
    text: "Hi,\nfor Saturday we need the oat loaf, 24 x 650g.\n\nOat loaf\nFlour 8 kg\nOats 1 kg\nWater 6.2 kg\nSalt 180 g\nYeast 120 g\nHoney 300 g\n\nThanks and see you at five",
    title: "Oat loaf",
    rows: "Flour; flour; 8000\nOats; grain; 1000\nWater; water; 6200\nSalt; salt; 180\nYeast; yeast; 120\nHoney; sugar; 300",
    yield: { pieces: 24, weight: 650 },
    dough: 15800,
  },
];
