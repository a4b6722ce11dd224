// Parts, web pages, methods and yields, written down before their writer had seen the reader, and not changed since but where a comment says so.
import type { Case } from "./corpus-support.ts";

export const SEALED_PARTS: readonly Case[] = [
  {
    text: "Apple danish\nBase dough\n1000 g flour\n480 g milk\n120 g sugar\n60 g butter\n20 g salt\n45 g fresh yeast\nTo laminate\n500 g butter\nApple filling\n600 g apple purée\n80 g sugar\nGlaze\n100 g apricot jam",
    title: "Apple danish",
    rows: "flour; flour; 1000\nmilk; dairy; 480\nsugar; sugar; 120\nbutter; fat; 60\nsalt; salt; 20\nfresh yeast; yeast; 45\nbutter; fat; 500; roll-in\napple purée; fruit; 600; filling\nsugar; sugar; 80; filling\napricot jam; fruit; 100; icing",
    dough: 1725,
  },
  {
    text: "Hot cross buns, yields 24\nBUNS\nflour 1.2 kg\nmilk 600 g\nbutter 120 g\nsugar 120 g\neggs 2\nmixed spice 12 g\nsalt 18 g\ninstant yeast 16 g\ncurrants 300 g\nCROSSES\nflour 100 g\nwater 90 g\nGLAZE\nsugar 100 g\nwater 60 g",
    title: "Hot cross buns",
    rows: "flour; flour; 1200\nmilk; dairy; 600\nbutter; fat; 120\nsugar; sugar; 120\neggs; egg; 100\nmixed spice; other; 12\nsalt; salt; 18\ninstant yeast; yeast; 16\ncurrants; fruit; 300\nflour; flour; 100; topping\nwater; water; 90; topping\nsugar; sugar; 100; icing\nwater; water; 60; icing",
    yield: { pieces: 24 },
    dough: 2486,
  },
  {
    text: "Pretzels\nFlour 2 kg, water 1 kg, butter 60 g, salt 40 g, yeast 30 g, malt 20 g\nCoarse salt for sprinkling",
    title: "Pretzels",
    rows: "Flour; flour; 2000\nwater; water; 1000\nbutter; fat; 60\nsalt; salt; 40\nyeast; yeast; 30\nmalt; ; 20",
    // Put right after the first run: malt may be a syrup or a flour.
    asks: ["which type"],
    dough: 3150,
  },
  {
    text: "Brioche feuilletée\nDough\nflour 500 g\neggs 250 g\nmilk 50 g\nsugar 50 g\nsalt 10 g\nyeast 20 g\nbutter 75 g\nLaminating butter 250 g\nEgg wash\n1 egg yolk\n1 tbsp cream",
    title: "Brioche feuilletée",
    rows: "flour; flour; 500\neggs; egg; 250\nmilk; dairy; 50\nsugar; sugar; 50\nsalt; salt; 10\nyeast; yeast; 20\nbutter; fat; 75\nLaminating butter; fat; 250; roll-in\negg yolk; egg; 17; egg wash\ncream; dairy; 15; egg wash",
    dough: 955,
  },
  {
    text: "For the crust:\n• 300 g plain flour\n• 150 g cold butter\n• 75 g cold water\n• 4 g salt\n\nFor the lemon filling:\n• 4 eggs\n• 200 g sugar\n• 120 ml lemon juice\n\nFor the meringue:\n• 4 egg whites\n• 200 g sugar",
    // 120 ml of 244 g in 236.588
    rows: "plain flour; flour; 300\ncold butter; fat; 150\ncold water; water; 75\nsalt; salt; 4\neggs; egg; 200; filling\nsugar; sugar; 200; filling\nlemon juice; fruit; 123.8; filling\negg whites; egg; 132; topping\nsugar; sugar; 200; topping",
    dough: 529,
  },
  {
    text: "Onion tart base\n500 g flour\n280 g water\n10 g salt\n5 g yeast\n25 g olive oil\n~~~ topping ~~~\n1 kg onions\n200 g sour cream\n100 g bacon",
    title: "Onion tart base",
    rows: "flour; flour; 500\nwater; water; 280\nsalt; salt; 10\nyeast; yeast; 5\nolive oil; fat; 25\nonions; fruit; 1000; topping\nsour cream; dairy; 200; topping\nbacon; other; 100; topping",
    dough: 820,
  },
  {
    text: "Sticky buns\nDough\nBread flour 1000 g\nWhole milk 560 g\nButter 100 g\nSugar 100 g\nSalt 18 g\nInstant yeast 12 g\nFilling\nButter 120 g\nBrown sugar 240 g\nCinnamon 16 g\nTo finish: icing sugar 200 g, water 35 g",
    title: "Sticky buns",
    rows: "Bread flour; flour; 1000\nWhole milk; dairy; 560\nButter; fat; 100\nSugar; sugar; 100\nSalt; salt; 18\nInstant yeast; yeast; 12\nButter; fat; 120; filling\nBrown sugar; sugar; 240; filling\nCinnamon; other; 16; filling\nicing sugar; sugar; 200; topping\nwater; water; 35; topping",
    dough: 1790,
  },
];

export const SEALED_WEB: readonly Case[] = [
  {
    text: "Home » Bread » Easy Rolls\nEasy Rolls\nby Somebody | Updated March 3\n4.9 (87 reviews)\nPrep 25 min  Cook 18 min  Total 2 hr 15 min\nYield 15 rolls\n\nINGREDIENTS\nCups  Grams\n550 g bread flour\n340 g milk\n60 g butter\n40 g sugar\n9 g salt\n7 g yeast\n\nSTEPS\nStep 1\nMix all ingredients on low for 4 minutes, then on medium for 6 minutes.\nStep 2\nCover and let rise 1 hour.\nStep 3\nDivide into 15 and shape. Proof for 40 minutes.\nStep 4\nBake at 190°C (375°F) for 18 minutes.\n\nShare this recipe\nLeave a comment",
    title: "Easy Rolls",
    rows: "bread flour; flour; 550\nmilk; dairy; 340\nbutter; fat; 60\nsugar; sugar; 40\nsalt; salt; 9\nyeast; yeast; 7",
    yield: { pieces: 15 },
    steps: [
      [10, null],
      [60, null],
      [40, null],
      [18, 190],
    ],
  },
  {
    text: "Kaiser rolls | 60 x 65g\nFlour 2.4 kg\nWater 1.4 kg\nSalt 48 g\nMalt 24 g\nOil 48 g\nYeast 72 g\n\nMixing: 3 min slow, 6 min fast\nDough temp 25C\nFloor time 30 min\nRest 15 min\nProof 45 min @ 32C\nBake 16 min @ 230C with steam",
    title: "Kaiser rolls",
    rows: "Flour; flour; 2400\nWater; water; 1400\nSalt; salt; 48\nMalt; ; 24\nOil; fat; 48\nYeast; yeast; 72",
    yield: { pieces: 60, weight: 65 },
    asks: ["which type"],
    steps: [
      [9, null],
      [null, 25],
      [30, null],
      [15, null],
      [45, 32],
      [16, 230],
    ],
  },
  {
    text: "Prep time: 15 minutes\nDifficulty: easy\n\nWhat you need\n500 g flour\n325 g water\n10 g salt\n3 g dry yeast\n\nHow to make it\nCombine and knead 10 min. Leave overnight (12 hours) at room temperature.\nBake at 240 C for 30 min, then cool for 2 hours.",
    rows: "flour; flour; 500\nwater; water; 325\nsalt; salt; 10\ndry yeast; yeast; 3",
  },
  {
    text: "Farmhouse white – 10 tins @ 900 g\nStrong flour 5.4 kg\nWater 3.3 kg\nSalt 0.1 kg\nFat 0.1 kg\nYeast 0.1 kg",
    title: "Farmhouse white",
    rows: "Strong flour; flour; 5400\nWater; water; 3300\nSalt; salt; 100\nFat; fat; 100\nYeast; yeast; 100",
    yield: { pieces: 10, weight: 900, tins: 10 },
  },
  {
    text: "Grissini\n\nYou will need:\n1 kg flour, 550 g water, 80 g olive oil, 20 g salt, 10 g yeast\n\nMethod\nKnead 8 mins; rest 1 hr; roll out and cut; bake 20 mins at 180C.",
    title: "Grissini",
    rows: "flour; flour; 1000\nwater; water; 550\nolive oil; fat; 80\nsalt; salt; 20\nyeast; yeast; 10",
    dough: 1660,
  },
  {
    text: "Crusty rolls\n(Batch yield: 15.2 kg, 190 pieces of 80 g)\nBread flour 9 kg\nWater 5.6 kg\nSalt 180 g\nYeast 270 g\nImprover 90 g\nMalt flour 60 g",
    title: "Crusty rolls",
    // 9000 + 5600 + 180 + 270 + 90 + 60
    rows: "Bread flour; flour; 9000\nWater; water; 5600\nSalt; salt; 180\nYeast; yeast; 270\nImprover; other; 90\nMalt flour; other; 60",
    yield: { pieces: 190, weight: 80, total: 15200 },
    dough: 15200,
  },
  {
    text: "Wholemeal, no. 4\n\nwholemeal flour   6 kg\nwater   4.5 l\nsalt   120 g\nyeast   150 g\nhoney   100 g\n\nmix 12' slow\nbulk 1h15\nscale 950 g\nproof 55'\nbake 40' 220°",
    title: "Wholemeal, no. 4",
    rows: "wholemeal flour; flour; 6000\nwater; water; 4500\nsalt; salt; 120\nyeast; yeast; 150\nhoney; sugar; 100",
    yield: { weight: 950 },
    steps: [
      [12, null],
      [75, null],
      [55, null],
      [40, 220],
    ],
  },
];
