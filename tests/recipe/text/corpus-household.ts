// Household recipes: cups and spoons, US, UK, metric and Australian, fractions, decimal commas, divided, to taste.
import type { Case } from "./corpus-support.ts";

export const HOUSEHOLD: readonly Case[] = [
  {
    text: "Quay rolls\nMakes 12 rolls at 85 g\n• 500 g bread flour\n• 1 1/4 cups milk\n• 2 tsp salt\n• 7 g instant yeast\n• 50 g butter, softened\n• flour for dusting\n\nMethod\n1. Mix everything for 8 minutes.\n2. Rise 1 hour at 26 °C.\n3. Divide into 12. Shape and proof 45 min.\n4. Bake at 200 C for 15-18 minutes.",
    title: "Quay rolls",
    rows: "bread flour; flour; 500\nmilk; dairy; 1.25 cup 01211\nsalt; salt; 2 tsp 02047\ninstant yeast; yeast; 7\nbutter; fat; 50",
    yield: { pieces: 12, weight: 85 },
    steps: [
      [8, null],
      [60, 26],
      [45, null],
      [16.5, 200],
    ],
    asks: ["yield differs"],
  },
  {
    text: "Morning loaf\n\n3 cups all-purpose flour\n1 tablespoon sugar\n1½ tsp salt\n2 1/4 teaspoons active dry yeast\n1 cup warm water (110°F)\n2 tbsp melted butter",
    title: "Morning loaf",
    // Dry yeast at 3.1 g a teaspoon: three packs of 7 g for 2 1/4 tsp.
    rows: "all-purpose flour; flour; 3 cup 20081\nsugar; sugar; 12.6\nsalt; salt; 1.5 tsp 02047\nactive dry yeast; yeast; 7\nwarm water; water; 236.59\nmelted butter; fat; 2 tbsp 01145",
  },
  {
    text: "Ingredients:\n½ cup sugar\n¾ cup whole milk\n2 large eggs\n1 stick unsalted butter\n4 cups flour\n1 tsp vanilla extract\n¼ tsp salt",
    rows: "sugar; sugar; 0.5 cup 19335\nwhole milk; dairy; 0.75 cup 01211\neggs; egg; 100\nunsalted butter; fat; 113.4\nflour; flour; 4 cup 20081\nvanilla extract; other; 4.2\nsalt; salt; 1.5",
  },
  {
    text: "Farmhouse tin loaf\n\n1 lb 8 oz strong white flour\n1/2 oz salt\n1 oz lard\n3/4 oz fresh yeast\n15 fl oz warm water",
    cups: "UK",
    title: "Farmhouse tin loaf",
    // 15 imperial fluid ounces of 28.413 ml
    rows: "strong white flour; flour; 680.39\nsalt; salt; 14.17\nlard; fat; 28.35\nfresh yeast; yeast; 21.26\nwarm water; water; 426.2",
  },
  {
    text: "Weizenbrötchen\n500 g Mehl\n0,3 l Wasser\n12,5 g Salz\n20 g frische Hefe",
    cups: "EU",
    title: "Weizenbrötchen",
    rows: "Mehl; flour; 500\nWasser; water; 300\nSalz; salt; 12.5\nfrische Hefe; yeast; 20",
  },
  {
    text: "Beach buns\n3 cups plain flour\n2 tbsp caster sugar\n1 cup milk",
    cups: "AU",
    title: "Beach buns",
    // A metric cup holds 250/236.588 of a US one, the Australian tablespoon 20 ml.
    rows: "plain flour; flour; 396.3\ncaster sugar; sugar; 33.8\nmilk; dairy; 257.8",
  },
  {
    text: "Herb focaccia\n400 g flour\n280 g water\n8 g salt\n4 g dried yeast\n40 g olive oil, plus more for the tin\nsalt flakes to taste",
    title: "Herb focaccia",
    rows: "flour; flour; 400\nwater; water; 280\nsalt; salt; 8\ndried yeast; yeast; 4\nolive oil; fat; 40\nsalt flakes; salt; -",
    asks: ["no amount"],
  },
  {
    text: "1 kg flour\n650 ml water\n20 g salt\n10 g yeast\n2 tbsp olive oil (optional)",
    rows: "flour; flour; 1000\nwater; water; 650\nsalt; salt; 20\nyeast; yeast; 10\nolive oil; fat; 27",
  },
  {
    text: "Raisin plait\nflour ..... 750 g\nmilk ..... 375 g\neggs ..... 2\nsugar ..... 90 g\nraisins ..... 120 g\nsalt ..... 12 g\nyeast ..... 15 g",
    title: "Raisin plait",
    rows: "flour; flour; 750\nmilk; dairy; 375\neggs; egg; 100\nsugar; sugar; 90\nraisins; fruit; 120\nsalt; salt; 12\nyeast; yeast; 15",
  },
  {
    text: "Soda bread (makes 1 loaf)\n450g plain flour\n1 tsp bicarbonate of soda\n1 tsp salt\n400ml buttermilk\n\nHeat the oven to 200C. Mix the dry ingredients, then stir in the buttermilk.\nShape into a round and bake for 40 mins.",
    title: "Soda bread",
    // 400 ml of the cup's 245 g in 236.588 ml
    rows: "plain flour; flour; 450\nbicarbonate of soda; other; 4.6\nsalt; salt; 6\nbuttermilk; dairy; 414.2",
    yield: { pieces: 1 },
    steps: [
      [null, 200],
      [40, null],
    ],
    cups: "US",
  },
  {
    text: "Pumpkin seed bread\n\n• 2 cups (240 g) whole wheat flour\n• 1 cup (137 g) bread flour\n• 1 1/4 cups (295 g) water\n• 1 1/2 tsp (9 g) salt\n• 1 tsp (3 g) instant yeast\n• 1/2 cup (65 g) pumpkin seeds",
    title: "Pumpkin seed bread",
    rows: "whole wheat flour; flour; 240\nbread flour; flour; 137\nwater; water; 295\nsalt; salt; 9\ninstant yeast; yeast; 3\npumpkin seeds; grain; 65",
  },
  {
    text: "Yield: 2 dozen\n600 g flour, divided\n300 g butter\n200 g sugar\n2 egg yolks\n5 g salt",
    rows: "flour; flour; 600\nbutter; fat; 300\nsugar; sugar; 200\negg yolks; egg; 34\nsalt; salt; 5",
    yield: { pieces: 24 },
  },
  {
    text: "Oat bread\n300 g flour\n100 g rolled oats\na pinch of salt\n1 sachet instant yeast\n250 g water",
    title: "Oat bread",
    rows: "flour; flour; 300\nrolled oats; grain; 100\nsalt; salt; 0.375\ninstant yeast; yeast; 7\nwater; water; 250",
  },
  {
    text: "Dinner rolls\nMakes two dozen\n2 to 3 tbsp honey\n500 g bread flour\n300 g milk\n10 g salt\n8 g yeast",
    title: "Dinner rolls",
    rows: "honey; sugar; 2.5 tbsp 19296\nbread flour; flour; 500\nmilk; dairy; 300\nsalt; salt; 10\nyeast; yeast; 8",
    yield: { pieces: 24 },
  },
  {
    text: "Cheese scones\n225 g self-raising flour\n55 g butter\n25 g cheddar\n150 ml milk\na handful of chives",
    cups: "UK",
    title: "Cheese scones",
    rows: "self-raising flour; flour; 225\nbutter; fat; 55\ncheddar; dairy; 25\nmilk; dairy; 154.7\nchives; other; -",
    asks: ["unclear amount"],
  },
  {
    text: "Seeded tin\n500 g bred flour\n330 g watter\n10 g salt\n6 g instant yeast",
    title: "Seeded tin",
    rows: "bred flour; flour; 500\nwatter; ; 330\nsalt; salt; 10\ninstant yeast; yeast; 6",
    asks: ["misspelt"],
  },
  {
    text: "Milk bread\n500 g flour\n350 g milk\n10 g salt\n7 g yeast\n25 g XR improver",
    title: "Milk bread",
    rows: "flour; flour; 500\nmilk; dairy; 350\nsalt; salt; 10\nyeast; yeast; 7\nXR improver; other; 25",
  },
  {
    text: "Flatbreads for 8 pieces\n400 g flour\n240 g water\n8 g salt\n3 g gribble",
    title: "Flatbreads",
    rows: "flour; flour; 400\nwater; water; 240\nsalt; salt; 8\ngribble; ; 3",
    asks: ["which type"],
    yield: { pieces: 8 },
  },
  {
    text: "Brown bread\n300g wholemeal flour; 200g strong white flour; 10g salt; 7g yeast; 340g water",
    title: "Brown bread",
    rows: "wholemeal flour; flour; 300\nstrong white flour; flour; 200\nsalt; salt; 10\nyeast; yeast; 7\nwater; water; 340",
  },
  {
    text: "Pain de campagne\n- Farine T65 : 800 g\n- Farine de seigle : 200 g\n- Eau : 680 g\n- Sel : 20 g\n- Levure : 5 g",
    cups: "EU",
    title: "Pain de campagne",
    rows: "Farine T65; flour; 800\nFarine de seigle; flour; 200\nEau; water; 680\nSel; salt; 20\nLevure; yeast; 5",
  },
  {
    text: "☐ 250 g strong flour\n☐ 250 g plain flour\n☐ 1 tsp sugar\n☐ 1 tsp salt\n☐ 325 ml warm water\n☐ 2 tbsp olive oil\n☐ 7 g sachet yeast",
    cups: "UK",
    rows: "strong flour; flour; 250\nplain flour; flour; 250\nsugar; sugar; 4.2\nsalt; salt; 6\nwarm water; water; 325\nolive oil; fat; 27.4\nyeast; yeast; 7",
  },
  {
    text: "Banana loaf\n3 ripe bananas (about 300 g)\n250 g flour\n150 g sugar\n2 eggs\n100 g melted butter\n1 tsp baking soda",
    title: "Banana loaf",
    rows: "ripe bananas; fruit; 300\nflour; flour; 250\nsugar; sugar; 150\neggs; egg; 100\nmelted butter; fat; 100\nbaking soda; other; 4.6",
  },
];
