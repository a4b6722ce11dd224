// A second lot of texts, written down before their writer had seen the reader, and tried only once the first lot had been put right.
import type { Case } from "./corpus-support.ts";

export const SECOND_HOUSEHOLD: readonly Case[] = [
  {
    text: "Skillet cornbread\n1 cup cornmeal\n1 cup all purpose flour\n1 Tbsp. baking powder\n1/2 tsp. salt\n1/4 cup sugar\n1 cup milk\n1 egg, beaten\n1/4 cup vegetable oil",
    title: "Skillet cornbread",
    rows: "cornmeal; grain; 1 cup 20022\nall purpose flour; flour; 125\nbaking powder; other; 13.8\nsalt; salt; 3\nsugar; sugar; 50\nmilk; dairy; 244\negg; egg; 50\nvegetable oil; fat; 54.5",
  },
  {
    text: "Olive bread - makes one large loaf\n\n• strong white flour (450 g)\n• wholemeal flour (50 g)\n• salt (8 g)\n• dried yeast (5 g)\n• water, hand-hot (340 g)\n• black olives, pitted (120 g)",
    title: "Olive bread",
    rows: "strong white flour; flour; 450\nwholemeal flour; flour; 50\nsalt; salt; 8\ndried yeast; yeast; 5\nwater; water; 340\nblack olives; other; 120",
    yield: { pieces: 1 },
  },
  {
    text: "2 ½ cups (312 g) flour\n1 Tbs sugar\n1 tsp. fine sea salt\n1 cup (2 sticks/226 g) cold butter\n6 to 8 Tbs ice water",
    rows: "flour; flour; 312\nsugar; sugar; 12.6\nfine sea salt; salt; 5.5\ncold butter; fat; 226\nice water; water; 103.5",
  },
  {
    text: "Ingredients (24 cookies)\n225 g butter; 200 g brown sugar; 100 g white sugar; 2 eggs; 350 g flour; 5 g baking soda; 6 g salt; 340 g dark chocolate",
    rows: "butter; fat; 225\nbrown sugar; sugar; 200\nwhite sugar; sugar; 100\neggs; egg; 100\nflour; flour; 350\nbaking soda; other; 5\nsalt; salt; 6\ndark chocolate; other; 340",
    yield: { pieces: 24 },
  },
  {
    text: "Naan\nStrong flour 500 grams\nYoghurt 150 grams\nWarm water 180 mls\nSalt 1 teaspoon\nSugar 1 dessertspoon\nDried yeast 7 grams\nGhee 50 grams",
    cups: "UK",
    title: "Naan",
    // a dessertspoon of 10 ml: 200 × 10 ÷ 236.588
    rows: "Strong flour; flour; 500\nYoghurt; dairy; 150\nWarm water; water; 180\nSalt; salt; 6\nSugar; sugar; 8.45\nDried yeast; yeast; 7\nGhee; fat; 50",
  },
  {
    text: "Bagels (8)\n500g bread flour\n290g water\n10g salt\n15g honey\n5g instant dry yeast\n\nFor boiling\n2 L water\n30 g honey",
    title: "Bagels",
    rows: "bread flour; flour; 500\nwater; water; 290\nsalt; salt; 10\nhoney; sugar; 15\ninstant dry yeast; yeast; 5\nwater; water; 2000; part\nhoney; sugar; 30; part",
    yield: { pieces: 8 },
    dough: 820,
  },
  {
    text: "Plum cake\n½ lb. butter\n½ lb. sugar\n5 eggs\n10 oz. flour\n¾ lb. currants\n½ lb. sultanas\n1 gill milk",
    cups: "UK",
    title: "Plum cake",
    // a gill is 142 ml: × 244 ÷ 236.588; eggs of 60 g, the large ones of the country (51 g before the first run)
    rows: "butter; fat; 226.8\nsugar; sugar; 226.8\neggs; egg; 300\nflour; flour; 283.5\ncurrants; fruit; 340.19\nsultanas; fruit; 226.8\nmilk; dairy; 146.5",
  },
];

export const SECOND_FORMULAS: readonly Case[] = [
  {
    text: "French bread\nIngredients | Baker's percent\nHard flour | 100\nWater | 60\nSalt | 2\nShortening | 1\nYeast | 2.5\nTotal | 165.5",
    title: "French bread",
    rows: "Hard flour; flour; 100%\nWater; water; 60%\nSalt; salt; 2%\nShortening; fat; 1%\nYeast; yeast; 2.5%",
  },
  {
    text: "Flour: 100 %\nHydration: 72 %\nSalt: 2 %\nYeast: 0.7 %",
    rows: "Flour; flour; 100%\nHydration; water; 72%\nSalt; salt; 2%\nYeast; yeast; 0.7%",
    hydration: 0.72,
  },
  {
    text: "Dinner roll formula - 500 pieces @ 45 g\n\nPatent flour     100.0\nWater             52.0\nSugar             12.0\nShortening        10.0\nWhole eggs         5.0\nNFDM               4.0\nSalt               1.8\nCompressed yeast   4.0",
    title: "Dinner roll formula",
    rows: "Patent flour; flour; 100%\nWater; water; 52%\nSugar; sugar; 12%\nShortening; fat; 10%\nWhole eggs; egg; 5%\nNFDM; dairy; 4%\nSalt; salt; 1.8%\nCompressed yeast; yeast; 4%",
    yield: { pieces: 500, weight: 45 },
    dough: 22500,
  },
  {
    text: "100 bread flour\n75 water\n2 salt\n1 instant yeast\n5 olive oil",
    rows: "bread flour; flour; 100%\nwater; water; 75%\nsalt; salt; 2%\ninstant yeast; yeast; 1%\nolive oil; fat; 5%",
  },
  {
    text: "Pound cake\nCake flour ... 100%\nButter ... 80%\nSugar ... 100%\nEggs ... 90%\nBaking powder ... 1%\nVanilla ... 1%\nBatter weight: 8 kg",
    title: "Pound cake",
    rows: "Cake flour; flour; 100%\nButter; fat; 80%\nSugar; sugar; 100%\nEggs; egg; 90%\nBaking powder; other; 1%\nVanilla; other; 1%",
    yield: { total: 8000 },
    dough: 8000,
  },
  {
    text: "Wheat flour 60 %\nRye flour 40 %\nWater 70 %\nSalt 2 %\nYeast 1.5 %\nTotal 173.5 %\nFlour used: 10 kg",
    rows: "Wheat flour; flour; 60%\nRye flour; flour; 40%\nWater; water; 70%\nSalt; salt; 2%\nYeast; yeast; 1.5%",
    dough: 17350,
  },
  {
    text: "Ingredient;kg;g\nFlour;10;0\nWater;6;200\nSalt;0;200\nYeast;0;150",
    rows: "Flour; flour; 10000\nWater; water; 6200\nSalt; salt; 200\nYeast; yeast; 150",
  },
  {
    text: "Formula code\tFR-12\nDescription\tFruit loaf\n\nIngredient\tkg\nFlour\t8.000\nWater\t4.640\nFat\t0.480\nSugar\t0.640\nSalt\t0.144\nYeast\t0.320\nSultanas\t4.000\nTotal weight\t18.224",
    rows: "Flour; flour; 8000\nWater; water; 4640\nFat; fat; 480\nSugar; sugar; 640\nSalt; salt; 144\nYeast; yeast; 320\nSultanas; fruit; 4000",
    dough: 18224,
  },
  {
    text: "Ingredient   Weight(g)   Bakers%   Cost\nFlour        25000       100       18.75\nWater        15000       60        0.00\nSalt         500         2         0.20\nYeast        500         2         1.90",
    rows: "Flour; flour; 25000\nWater; water; 15000\nSalt; salt; 500\nYeast; yeast; 500",
    dough: 41000,
  },
  {
    text: "Step\tIngredient\tAmount\tUnit\n1\tButter\t500\tg\n1\tSugar\t600\tg\n2\tEggs\t10\tpcs\n3\tFlour\t800\tg\n3\tBaking powder\t24\tg\n4\tMilk\t400\tml",
    // 400 ml × 244 ÷ 236.588
    rows: "Butter; fat; 500\nSugar; sugar; 600\nEggs; egg; 500\nFlour; flour; 800\nBaking powder; other; 24\nMilk; dairy; 412.5",
  },
];

export const SECOND_STAGES: readonly Case[] = [
  {
    text: "Miche\nSTIFF LEVAIN (60% hydration), 6 hours\nwhole wheat flour 200 g\nwater 120 g\nmother 40 g\n\nMIX\nwhole wheat flour 800 g\nbread flour 1000 g\nwater 1480 g\nsalt 40 g\nstiff levain 360 g",
    title: "Miche",
    // The mother is as wet as its build: 25 of flour and 15 of water; 225 of 2025, 1615 of water.
    rows: "whole wheat flour; flour; 200; preferment\nwater; water; 120; preferment\nmother; levain 60%; 40; preferment\nwhole wheat flour; flour; 800\nbread flour; flour; 1000\nwater; water; 1480\nsalt; salt; 40\nstiff levain; ; takes",
    pre: { share: 0.1111, hydration: 0.6, seed: 0.2 },
    hydration: 0.7975,
    dough: 3680,
  },
  {
    text: "Vienna rolls\n\nVorteig:\n1 kg Mehl\n1 kg Wasser\n5 g Hefe\n\nHauptteig:\nVorteig\n3 kg Mehl\n1,2 kg Milch\n80 g Salz\n100 g Hefe\n160 g Butter",
    cups: "EU",
    title: "Vienna rolls",
    rows: "Mehl; flour; 1000; preferment\nWasser; water; 1000; preferment\nHefe; yeast; 5; preferment\nVorteig; ; takes\nMehl; flour; 3000\nMilch; dairy; 1200\nSalz; salt; 80\nHefe; yeast; 100\nButter; fat; 160",
    pre: { share: 0.25, hydration: 1 },
    dough: 6545,
  },
  {
    text: "Poolish baguette (total flour 1000)\n-- poolish --\n330 flour / 330 water / 1 yeast\n-- dough --\n670 flour / 350 water / 20 salt / 4 yeast\nall grams",
    title: "Poolish baguette",
    rows: "flour; flour; 330; preferment\nwater; water; 330; preferment\nyeast; yeast; 1; preferment\nflour; flour; 670\nwater; water; 350\nsalt; salt; 20\nyeast; yeast; 4",
    pre: { kind: "poolish", share: 0.33, hydration: 1 },
    hydration: 0.68,
    dough: 1705,
    // Put right after the first run: nothing says that the poolish goes on top of the dough.
    asks: ["on top or included"],
  },
  {
    text: "Part A - Poolish\tg\nFlour\t250\nWater\t250\nYeast\t1\n\nPart B - Dough\tg\nFlour\t750\nWater\t430\nSalt\t20\nYeast\t4\nPart A\t501",
    rows: "Flour; flour; 250; preferment\nWater; water; 250; preferment\nYeast; yeast; 1; preferment\nFlour; flour; 750\nWater; water; 430\nSalt; salt; 20\nYeast; yeast; 4\nPart A; ; takes",
    pre: { kind: "poolish", share: 0.25, hydration: 1 },
    hydration: 0.68,
    dough: 1705,
  },
  {
    text: "Rustic loaf\nOld dough 500 g\nBread flour 1000 g\nWater 680 g\nSalt 20 g\nYeast 5 g",
    title: "Rustic loaf",
    rows: "Old dough; ; 500\nBread flour; flour; 1000\nWater; water; 680\nSalt; salt; 20\nYeast; yeast; 5",
    asks: ["hydration"],
  },
  {
    text: "Deli rye\nRye sour\nRye flour 600 g\nWater 600 g\nStarter 60 g\nDough\nRye sour 1200 g\nFirst clear flour 1400 g\nWater 700 g\nSalt 38 g\nCaraway 20 g\nYeast 10 g",
    title: "Deli rye",
    // The starter is as wet as its build: 630 and 630 of 1260; of these 1200: 600 and 600; 1300 of 2000
    rows: "Rye flour; flour; 600; preferment\nWater; water; 600; preferment\nStarter; levain 100%; 60; preferment\nRye sour; ; takes\nFirst clear flour; flour; 1400\nWater; water; 700\nSalt; salt; 38\nCaraway; other; 20\nYeast; yeast; 10",
    pre: { share: 0.3, hydration: 1, seed: 0.1 },
    hydration: 0.65,
    dough: 3368,
  },
  {
    text: "Potato bread\nBiga (16 h at 16 °C): bread flour 400 g, water 220 g, yeast 2 g\nBread flour 600 g\nWater 380 g\nMashed potato 200 g\nSalt 22 g\nYeast 8 g\nBiga (all of the above)",
    title: "Potato bread",
    rows: "bread flour; flour; 400; preferment\nwater; water; 220; preferment\nyeast; yeast; 2; preferment\nBread flour; flour; 600\nWater; water; 380\nMashed potato; fruit; 200\nSalt; salt; 22\nYeast; yeast; 8\nBiga; ; takes",
    pre: { kind: "biga", share: 0.4, hydration: 0.55 },
    dough: 1832,
  },
];

export const SECOND_REST: readonly Case[] = [
  {
    text: "Cream horns\nPuff dough:\nFlour 1 kg\nWater 500 g\nSalt 20 g\nMargarine 100 g\nRoll-in margarine 800 g\nCream:\nWhipping cream 1000 g\nSugar 100 g",
    title: "Cream horns",
    rows: "Flour; flour; 1000\nWater; water; 500\nSalt; salt; 20\nMargarine; fat; 100\nmargarine; fat; 800; roll-in\nWhipping cream; dairy; 1000; filling\nSugar; sugar; 100; filling",
    dough: 1620,
  },
  {
    text: "Poppy rolls\n1 kg flour\n550 g milk\n80 g butter\n60 g sugar\n18 g salt\n40 g yeast\nbeaten egg for brushing\n50 g poppy seeds, for sprinkling",
    title: "Poppy rolls",
    rows: "flour; flour; 1000\nmilk; dairy; 550\nbutter; fat; 80\nsugar; sugar; 60\nsalt; salt; 18\nyeast; yeast; 40\npoppy seeds; grain; 50; topping",
    dough: 1748,
  },
  {
    text: "Dough ingredients\nFlour - 900 g\nMilk - 450 g\nEggs - 3\nSugar - 120 g\nYeast - 30 g\nSalt - 12 g\nButter - 150 g\nStreusel ingredients\nFlour - 300 g\nSugar - 150 g\nButter - 150 g",
    rows: "Flour; flour; 900\nMilk; dairy; 450\nEggs; egg; 150\nSugar; sugar; 120\nYeast; yeast; 30\nSalt; salt; 12\nButter; fat; 150\nFlour; flour; 300; topping\nSugar; sugar; 150; topping\nButter; fat; 150; topping",
    dough: 1812,
  },
  {
    text: "Custard buns (20)\nMilk dough:\n500 g flour\n260 g milk\n60 g sugar\n60 g butter\n8 g salt\n8 g instant yeast\nCustard:\n500 g milk\n100 g sugar\n4 egg yolks\n40 g cornstarch",
    title: "Custard buns",
    rows: "flour; flour; 500\nmilk; dairy; 260\nsugar; sugar; 60\nbutter; fat; 60\nsalt; salt; 8\ninstant yeast; yeast; 8\nmilk; dairy; 500; filling\nsugar; sugar; 100; filling\negg yolks; egg; 68; filling\ncornstarch; other; 40; filling",
    yield: { pieces: 20 },
    dough: 896,
  },
  {
    text: "Print\nPin it\nBest-ever burger buns\n5 from 12 votes\nSERVINGS: 10 buns\nPREP: 30 mins\nBAKE: 15 mins\n\n600 g flour\n330 g milk\n1 egg\n60 g butter\n40 g sugar\n11 g salt\n9 g yeast\n\nInstructions\n- Knead 12 minutes.\n- Proof until doubled, about 75 minutes.\n- Shape, proof 45 minutes, bake 15 minutes at 200°C.\n\nCalories: 310\nFat: 8 g\n\nRelated recipes\nGarlic knots",
    title: "Best-ever burger buns",
    rows: "flour; flour; 600\nmilk; dairy; 330\negg; egg; 50\nbutter; fat; 60\nsugar; sugar; 40\nsalt; salt; 11\nyeast; yeast; 9",
    yield: { pieces: 10 },
  },
  {
    text: "Toast bread\nMakes 6 loaves of 1 lb 12 oz\nBread flour 6 lb\nWater 3 lb 12 oz\nSugar 5 oz\nShortening 4 oz\nSalt 2 oz\nNonfat dry milk 4 oz\nYeast, instant 1.25 oz",
    title: "Toast bread",
    // 28 oz are 793.79 g; six of them 168 oz, and the dough 172.25 oz: within what bakers lose
    rows: "Bread flour; flour; 2721.55\nWater; water; 1700.97\nSugar; sugar; 141.75\nShortening; fat; 113.4\nSalt; salt; 56.7\nNonfat dry milk; dairy; 113.4\nYeast, instant; yeast; 35.44",
    yield: { pieces: 6, weight: 793.79 },
  },
  {
    text: "LOAF 12\nbread fl. 10 kg / ww fl. 2 kg / wtr 8.2 kg / slt 240 g / fresh yst 200 g\nMix 4+6 min, DT 25°, bulk 60, scale 0.58, 36 ea, proof 60, bake 38 @ 235",
    title: "LOAF 12",
    rows: "bread flour; flour; 10000\nwhole wheat flour; flour; 2000\nwater; water; 8200\nsalt; salt; 240\nfresh yeast; yeast; 200",
  },
  {
    text: "Rosemary focaccia\nYield: one half-sheet tray\n\nBread flour\t1000 g\nWater\t780 g\nOlive oil\t40 g\nSalt\t22 g\nInstant yeast\t5 g\n\nTopping\nOlive oil\t60 g\nRosemary\t6 g\nCoarse salt\t6 g",
    title: "Rosemary focaccia",
    rows: "Bread flour; flour; 1000\nWater; water; 780\nOlive oil; fat; 40\nSalt; salt; 22\nInstant yeast; yeast; 5\nOlive oil; fat; 60; topping\nRosemary; other; 6; topping\nCoarse salt; salt; 6; topping",
    yield: { pieces: 1 },
    dough: 1847,
  },
];
