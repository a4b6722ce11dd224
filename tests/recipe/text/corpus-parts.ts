// What is kept apart from the dough: fillings, toppings, egg wash, icing, roll-in butter, dusting.
import type { Case } from "./corpus-support.ts";

export const PARTS: readonly Case[] = [
  {
    text: "Sweet buns\nMakes 24 pcs @ 0.050 kg\nDough:\n700 g flour\n350 g milk\n100 g sugar\n50 g butter\nFilling:\n200 g butter\n150 g brown sugar\n20 g cinnamon\nEgg wash: 1 egg\nIcing\n150 g icing sugar\n2 tbsp water",
    title: "Sweet buns",
    rows: "flour; flour; 700\nmilk; dairy; 350\nsugar; sugar; 100\nbutter; fat; 50\nbutter; fat; 200; filling\nbrown sugar; sugar; 150; filling\ncinnamon; other; 20; filling\negg; egg; 50; egg wash\nicing sugar; sugar; 150; icing\nwater; water; 29.57; icing",
    yield: { pieces: 24, weight: 50 },
    dough: 1200,
    parts: ["filling", "egg wash", "icing"],
  },
  {
    text: "Croissant\nFlour 1000 g\nMilk 300 g\nWater 220 g\nSugar 120 g\nSalt 20 g\nFresh yeast 40 g\nButter 60 g\nRoll-in butter 500 g",
    title: "Croissant",
    rows: "Flour; flour; 1000\nMilk; dairy; 300\nWater; water; 220\nSugar; sugar; 120\nSalt; salt; 20\nFresh yeast; yeast; 40\nButter; fat; 60\nbutter; fat; 500; roll-in",
    dough: 1760,
    parts: ["roll-in"],
  },
  {
    text: "Danish\nDétrempe\n500 g flour\n150 g milk\n100 g water\n50 g sugar\n10 g salt\n20 g fresh yeast\nBeurrage\n280 g butter",
    title: "Danish",
    rows: "flour; flour; 500\nmilk; dairy; 150\nwater; water; 100\nsugar; sugar; 50\nsalt; salt; 10\nfresh yeast; yeast; 20\nbutter; fat; 280; roll-in",
    dough: 830,
    parts: ["roll-in"],
  },
  {
    text: "Streusel cake\nFor the dough:\n375 g flour\n150 ml water\n60 g sugar\n60 g butter\n20 g fresh yeast\n5 g salt\nFor the streusel:\n200 g flour\n120 g butter\n100 g sugar",
    title: "Streusel cake",
    rows: "flour; flour; 375\nwater; water; 150\nsugar; sugar; 60\nbutter; fat; 60\nfresh yeast; yeast; 20\nsalt; salt; 5\nflour; flour; 200; topping\nbutter; fat; 120; topping\nsugar; sugar; 100; topping",
    dough: 670,
    parts: ["topping"],
  },
  {
    text: "Seed rolls\n500 g flour\n320 g water\n10 g salt\n6 g instant yeast\n40 g sesame seeds for the top\n20 g flour for dusting\n1 egg, to glaze",
    title: "Seed rolls",
    rows: "flour; flour; 500\nwater; water; 320\nsalt; salt; 10\ninstant yeast; yeast; 6\nsesame seeds; grain; 40; topping\nflour; flour; 20; dusting\negg; egg; 50; egg wash",
    dough: 836,
  },
  {
    text: "Frangipane:\n100 g butter\n100 g sugar\n100 g ground almonds\n2 eggs\n\nPastry dough:\n250 g flour\n125 g butter\n60 g water\n3 g salt",
    rows: "butter; fat; 100; filling\nsugar; sugar; 100; filling\nground almonds; other; 100; filling\neggs; egg; 100; filling\nflour; flour; 250\nbutter; fat; 125\nwater; water; 60\nsalt; salt; 3",
    dough: 438,
    parts: ["filling"],
  },
  {
    text: "Cinnamon snails\nDOUGH\n1 kg flour\n500 g milk\n150 g sugar\n15 g salt\n20 g instant yeast\nSMEAR\n300 g butter\n300 g brown sugar\n30 g cinnamon\nGLAZE\n200 g powdered sugar\n40 g milk",
    title: "Cinnamon snails",
    rows: "flour; flour; 1000\nmilk; dairy; 500\nsugar; sugar; 150\nsalt; salt; 15\ninstant yeast; yeast; 20\nbutter; fat; 300; filling\nbrown sugar; sugar; 300; filling\ncinnamon; other; 30; filling\npowdered sugar; sugar; 200; icing\nmilk; dairy; 40; icing",
    dough: 1685,
    parts: ["filling", "icing"],
  },
  {
    text: "Focaccia\nFlour 1000 g\nWater 750 g\nSalt 22 g\nYeast 6 g\nTopping: 60 g olive oil, 5 g rosemary, 8 g flaky salt",
    title: "Focaccia",
    rows: "Flour; flour; 1000\nWater; water; 750\nSalt; salt; 22\nYeast; yeast; 6\nolive oil; fat; 60; topping\nrosemary; other; 5; topping\nflaky salt; salt; 8; topping",
    dough: 1778,
  },
  {
    text: "Dry ingredients:\n500 g flour\n10 g salt\n7 g yeast\nWet ingredients:\n300 g water\n20 g honey",
    rows: "flour; flour; 500\nsalt; salt; 10\nyeast; yeast; 7\nwater; water; 300\nhoney; sugar; 20",
    dough: 837,
  },
  {
    text: "Fruit buns\nDough\n500 g flour\n300 g milk\n8 g salt\n10 g yeast\nQuince thing:\n100 g honey\n50 g butter",
    title: "Fruit buns",
    rows: "flour; flour; 500\nmilk; dairy; 300\nsalt; salt; 8\nyeast; yeast; 10\nhoney; sugar; 100; part\nbutter; fat; 50; part",
    asks: ["part of the dough"],
  },
];
