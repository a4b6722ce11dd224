// An eighth lot, written down after the seventh was right and tried as it stood.
import type { Case } from "./corpus-support.ts";

export const EIGHTH: readonly Case[] = [
  {
    text: "Wholemeal tin loaf\nBatch: 100 kg flour\n\nWholemeal flour      100.00\nGluten                 2.00\nSalt                   1.90\nYeast (block)          3.00\nFat                    1.50\nWater                 68.00\n                     ------\n                     176.40 kg",
    title: "Wholemeal tin loaf",
    rows: "Wholemeal flour; flour; 100%\nGluten; other; 2%\nSalt; salt; 1.9%\nYeast; yeast; 3%\nFat; fat; 1.5%\nWater; water; 68%",
    // 176.4 parts of 100 kg of flour
    yield: { total: 176400 },
  },
  {
    text: "Julekake\n\n1 kg white flour\n5 dl milk (lukewarm)\n50 g fresh yeast\n150 g butter\n150 g sugar\n1 ts salt\n2 ts cardamom\n200 g raisins\n100 g succade\n\nBake at 175 degrees for 35-40 min.",
    cups: "EU",
    title: "Julekake",
    rows: "white flour; flour; 1000\nmilk; dairy; 515.7\nfresh yeast; yeast; 50\nbutter; fat; 150\nsugar; sugar; 150\nsalt; salt; 6\ncardamom; other; 4\nraisins; fruit; 200\nsuccade; fruit; 100",
    steps: [[37.5, 175]],
  },
  {
    text: "Starter feed (evening): 50 g starter + 100 g flour + 100 g water\n\nDough (morning)\n1000 g bread flour\n680 g water\n22 g salt\n225 g ripe starter",
    rows: "starter; levain 100%; 50; preferment\nflour; flour; 100; preferment\nwater; water; 100; preferment\nbread flour; flour; 1000\nwater; water; 680\nsalt; salt; 22\nripe starter; ; takes",
    // 225 of 250 g: 112.5 g of flour in 1112.5
    pre: { share: 0.1011, hydration: 1, seed: 0.5 },
    dough: 1927,
  },
  {
    text: "Recipe: Cheese scones     Makes: 20\nIngredient | Amount | Unit\nSelf raising flour | 1 | kg\nButter | 200 | g\nCheddar, grated | 350 | g\nEggs | 2 | ea\nMilk | 500 | ml\nMustard powder | 2 | tsp\nSalt | 10 | g",
    cups: "UK",
    title: "Cheese scones",
    rows: "Self raising flour; flour; 1000\nButter; fat; 200\nCheddar; dairy; 350\nEggs; egg; 120\nMilk; dairy; 515.7\nMustard powder; other; -\nSalt; salt; 10",
    yield: { pieces: 20 },
    asks: ["unclear amount"],
  },
  {
    text: "#### Baguette tradition\n\n**Yield:** 14 × 350 g\n\n**Autolyse**\n- T65 flour: 3000 g\n- Water: 1950 g\n\n**Mix**\n- Autolyse\n- Water (bassinage): 150 g\n- Salt: 54 g\n- Fresh yeast: 21 g\n\n1. Autolyse 1 h.\n2. Mix 5 min slow, 2 min fast; FDT 24 °C.\n3. Bulk 90 min, then 16 h at 4 °C.",
    title: "Baguette tradition",
    rows: "T65 flour; flour; 3000\nWater; water; 1950\nWater; water; 150\nSalt; salt; 54\nFresh yeast; yeast; 21",
    yield: { pieces: 14, weight: 350 },
    // 275 g more than 14 pieces: what sticks to the bowl and the bench
    hydration: 0.7,
    dough: 5175,
  },
  {
    text: "Monkey bread\nDough:\n3 3/4 cups AP\n1 cup warm milk\n1/3 cup warm water\n2 tbsp melted butter\n1/4 cup sugar\n1 envelope instant yeast\n2 tsp salt\nCoating:\n1 cup light brown sugar, packed\n2 tsp cinnamon\n1 stick butter, melted",
    title: "Monkey bread",
    rows: "all-purpose flour; flour; 468.75\nwarm milk; dairy; 1 cup 01211\nwarm water; water; 78.86\nmelted butter; fat; 28.4\nsugar; sugar; 50\ninstant yeast; yeast; 7\nsalt; salt; 2 tsp 02047\nlight brown sugar; sugar; 220; topping\ncinnamon; other; 5.2; topping\nbutter; fat; 113.4; topping",
    parts: ["topping"],
  },
  {
    text: "FORMULA\t\t\tPRE-FERMENT\tFINAL DOUGH\nIngredient\tTotal %\tTotal kg\tkg\tkg\nBread flour\t100\t20.00\t6.00\t14.00\nWater\t68\t13.60\t6.00\t7.60\nSalt\t2\t0.40\t\t0.40\nInstant yeast\t0.6\t0.12\t0.006\t0.114\nPoolish\t\t\t\t12.006\nTotal\t170.6\t34.12\t12.006\t34.12",
    rows: "Bread flour; flour; 20000; overall\nBread flour; flour; 6000; preferment\nBread flour; flour; 14000\nWater; water; 13600; overall\nWater; water; 6000; preferment\nWater; water; 7600\nSalt; salt; 400; overall\nSalt; salt; 400\nInstant yeast; yeast; 120; overall\nInstant yeast; yeast; 6; preferment\nInstant yeast; yeast; 114\nPoolish; ; takes",
    pre: { share: 0.3, hydration: 1 },
    hydration: 0.68,
    dough: 34120,
  },
  {
    text: "Lamingtons (24 pcs)\n\nSponge\n6 eggs\n150 g caster sugar\n200 g SR flour\n30 g cornflour\n15 g butter\n3 tbsp hot water\n\nChocolate icing\n500 g icing sugar\n40 g cocoa\n15 g butter\n125 ml milk\n\nTo coat\n300 g desiccated coconut",
    cups: "AU",
    title: "Lamingtons",
    rows: "eggs; egg; 288\ncaster sugar; sugar; 150\nSR flour; flour; 200\ncornflour; other; 30\nbutter; fat; 15\nhot water; water; 60\nicing sugar; sugar; 500; icing\ncocoa; other; 40; icing\nbutter; fat; 15; icing\nmilk; dairy; 128.9; icing\ndesiccated coconut; other; 300; topping",
    yield: { pieces: 24 },
    parts: ["icing", "topping"],
  },
  {
    text: "rye sourdough  hydration 75\nrye 400\nwheat 600\nwater 750\nsalt 20\nstarter 200 (100%)\n(g)",
    title: "rye sourdough hydration 75",
    rows: "rye; flour; 400\nwheat; flour; 600\nwater; water; 750\nsalt; salt; 20\nstarter; starter 100%; 200",
    dough: 1970,
  },
  {
    text: "Flammkuchen 8 Stück\nTeig: 500 g Mehl, 300 ml Wasser, 30 ml Öl, 10 g Salz, 5 g Hefe\nBelag: 400 g Schmand, 250 g Speck, 300 g Zwiebeln\nBacken: 250 °C, 12 Min.",
    cups: "EU",
    title: "Flammkuchen",
    rows: "Mehl; flour; 500\nWasser; water; 300\nÖl; fat; 27.6\nSalz; salt; 10\nHefe; yeast; 5\nSchmand; dairy; 400; topping\nSpeck; other; 250; topping\nZwiebeln; other; 300; topping",
    yield: { pieces: 8 },
    steps: [[12, 250]],
    parts: ["topping"],
  },
];
