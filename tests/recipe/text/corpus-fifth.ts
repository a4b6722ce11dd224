// A fifth lot: texts as bakers of several countries have them, written down before the reader was opened and tried as they stood.
import type { Case } from "./corpus-support.ts";

export const FIFTH_HOUSEHOLD: readonly Case[] = [
  {
    text: "Mam's brown soda bread\n450g/1lb coarse wholemeal flour\n50g/2oz plain white flour\n1 level tsp bread soda, sieved\n1 tsp salt\n400ml/14fl oz buttermilk\n1 tbsp treacle\nOven 200C/180C fan/gas 6 for 45-50 mins",
    cups: "UK",
    title: "Mam's brown soda bread",
    // 245 g of buttermilk a cup of 236.588 ml; 20 g of molasses a tablespoon of 14.787 ml
    rows: "coarse wholemeal flour; flour; 450\nplain white flour; flour; 50\nbread soda; other; 1 tsp 18372\nsalt; salt; 1 tsp 02047\nbuttermilk; dairy; 414.2\ntreacle; sugar; 20.3",
  },
  {
    text: "Oat slice\n1 cup rolled oats\n1 cup plain flour\n1 cup sultanas\n¾ cup caster sugar\n125g butter, chopped\n2 tbsp golden syrup\n½ tsp bicarb soda\n1 tbsp boiling water",
    cups: "AU",
    title: "Oat slice",
    // cups of 250 ml and tablespoons of 20 ml over SR28's of 236.588; the syrup weighed as honey
    rows: "rolled oats; grain; 85.6\nplain flour; flour; 132.1\nsultanas; fruit; 153.2\ncaster sugar; sugar; 158.5\nbutter; fat; 125\ngolden syrup; sugar; 57.3\nbicarb soda; other; 2.3\nboiling water; water; 20",
  },
  {
    text: "REFRIGERATOR ROLLS\n1 pkg. dry yeast\n1/4 c. warm water\n1 c. milk, scalded\n1/4 c. shortening\n1/4 c. sugar\n1 tsp. salt\n1 egg\n3 1/2 c. all-purpose flour\nDissolve yeast in water. Add remaining ingredients and beat well.\nChill overnight. Shape.\nBake at 400° for 12 to 15 min. Yield: 2 dozen.",
    title: "REFRIGERATOR ROLLS",
    rows: "dry yeast; yeast; 7\nwarm water; water; 59.15\nmilk; dairy; 1 cup 01211\nshortening; fat; 51.25\nsugar; sugar; 50\nsalt; salt; 1 tsp 02047\negg; egg; 50\nall-purpose flour; flour; 437.5",
    yield: { pieces: 24 },
    // overnight has no minutes
    asks: ["step time"],
  },
  {
    text: "Pav (makes 8)\nMaida - 250 gms\nMilk powder - 10 gms\nSugar - 20 gms\nSalt - 5 gms\nDry yeast - 5 gms\nWater - 150 ml approx\nButter - 25 gms (soft)",
    title: "Pav",
    rows: "Maida; flour; 250\nMilk powder; dairy; 10\nSugar; sugar; 20\nSalt; salt; 5\nDry yeast; yeast; 5\nWater; water; 150\nButter; fat; 25",
    yield: { pieces: 8 },
  },
  {
    text: "Dinkel-Milchbrötchen\n500 g Dinkelmehl Type 630\n250 ml Milch\n1 Würfel Hefe\n60 g Zucker\n80 g weiche Butter\n1 Ei (Gr. M)\n1 TL Salz\n1 EL Honig",
    cups: "EU",
    title: "Dinkel-Milchbrötchen",
    // a cube of yeast of 42 g; an egg of 58 g in its shell, of which 0.882 are egg
    rows: "Dinkelmehl Type 630; flour; 500\nMilch; dairy; 257.8\nHefe; yeast; 42\nZucker; sugar; 60\nweiche Butter; fat; 80\nEi; egg; 51\nSalz; salt; 6.1\nHonig; sugar; 21.5",
  },
  {
    text: "Fruited teacakes (makes 24)\nStrong white flour, 1.5kg\nSemi-skimmed milk, 825ml\nCaster sugar, 150g\nUnsalted butter, 150g\nFine salt, 24g\nFresh yeast, 60g\nCurrants, 300g\nMixed peel, 100g\nMixed spice, 12g",
    cups: "UK",
    title: "Fruited teacakes",
    rows: "Strong white flour; flour; 1500\nSemi-skimmed milk; dairy; 851\nCaster sugar; sugar; 150\nUnsalted butter; fat; 150\nFine salt; salt; 24\nFresh yeast; yeast; 60\nCurrants; fruit; 300\nMixed peel; fruit; 100\nMixed spice; other; 12",
    yield: { pieces: 24 },
  },
  {
    text: "Banana bread\n(two 9x5 inch loaf pans)\n3 ripe bananas, mashed\n2 sticks butter\n1½ C sugar\n4 eggs\n3 C AP flour\n2 t. baking soda\n1 t. salt\n1 T. vanilla\n1 C chopped walnuts (optional)\n350F, 1 hr",
    title: "Banana bread",
    rows: "ripe bananas; fruit; 354\nbutter; fat; 226.8\nsugar; sugar; 300\neggs; egg; 200\nall-purpose flour; flour; 375\nbaking soda; other; 9.2\nsalt; salt; 6\nvanilla; other; 13\nchopped walnuts; other; 117",
    yield: { pieces: 2, tins: 2 },
    steps: [[60, 176.7]],
  },
];

export const FIFTH_PERCENT: readonly Case[] = [
  {
    text: "NY dough, 62% hydration\nHigh-gluten flour  100%\nWater  62%\nIDY  0.4%\nSalt  2%\nOil  1.5%\nSugar  1%\n\n10 dough balls @ 454g",
    rows: "High-gluten flour; flour; 100%\nWater; water; 62%\ninstant yeast; yeast; 0.4%\nSalt; salt; 2%\nOil; fat; 1.5%\nSugar; sugar; 1%",
    yield: { pieces: 10, weight: 454 },
    hydration: 0.62,
  },
  {
    text: "Brioche feuilletée\nFarine T45 : 100 %\nŒufs : 50 %\nLait : 10 %\nSucre : 12 %\nSel : 2 %\nLevure : 4 %\nBeurre : 20 %\nBeurre de tourage : 40 %\nTotal : 238 %",
    title: "Brioche feuilletée",
    rows: "Farine T45; flour; 100%\nŒufs; egg; 50%\nLait; dairy; 10%\nSucre; sugar; 12%\nSel; salt; 2%\nLevure; yeast; 4%\nBeurre; fat; 20%\nBeurre de tourage; fat; 40%; roll-in",
  },
  {
    text: "Dark rye (3 tins of 1.2 kg)\nBaker's percentages\nRye flour, coarse 60\nWheat flour 40\nCracked rye 45\nSunflower seeds 15\nWater 95\nSalt 2.8\nSourdough (100% hydration) 30",
    title: "Dark rye",
    rows: "Rye flour; flour; 60%\nWheat flour; flour; 40%\nCracked rye; grain; 45%\nSunflower seeds; grain; 15%\nWater; water; 95%\nSalt; salt; 2.8%\nSourdough; sourdough 100%; 30%",
    yield: { pieces: 3, tins: 3, weight: 1200 },
  },
  {
    text: "Burger bun production\n400 pcs x 72g\n100.0%  16.000kg  Bakers flour\n 56.0%   8.960kg  Water\n 10.0%   1.600kg  Sugar\n  8.0%   1.280kg  Shortening\n  2.0%   0.320kg  Salt\n  3.0%   0.480kg  Compressed yeast\n  1.0%   0.160kg  Improver\n180.0%  28.800kg  TOTAL",
    title: "Burger bun production",
    rows: "Bakers flour; flour; 16000\nWater; water; 8960\nSugar; sugar; 1600\nShortening; fat; 1280\nSalt; salt; 320\nCompressed yeast; yeast; 480\nImprover; other; 160",
    yield: { pieces: 400, weight: 72 },
    hydration: 0.56,
    dough: 28800,
  },
  {
    text: "Ciabatta: 100% strong flour, 80% water, 2% salt, 1% fresh yeast, 3% olive oil.",
    title: "Ciabatta",
    rows: "strong flour; flour; 100%\nwater; water; 80%\nsalt; salt; 2%\nfresh yeast; yeast; 1%\nolive oil; fat; 3%",
    hydration: 0.8,
  },
];

export const FIFTH_TABLES: readonly Case[] = [
  {
    text: "Ingredient;Batch 1 (kg);%\nBread flour;25,000;100\nWater;15,500;62\nSalt;0,500;2\nYeast;0,375;1,5\nOil;0,750;3\nTOTAL;42,125;168,5",
    rows: "Bread flour; flour; 25000\nWater; water; 15500\nSalt; salt; 500\nYeast; yeast; 375\nOil; fat; 750",
    dough: 42125,
  },
  {
    text: "INGREDIENTS\tLBS\tOZ\nHi-gluten flour\t50\t\nWater\t30\t\nSalt\t1\t\nInstant yeast\t\t6\nMalt syrup\t\t8\nShortening\t1\t8",
    rows: "Hi-gluten flour; flour; 22679.6\nWater; water; 13607.8\nSalt; salt; 453.59\nInstant yeast; yeast; 170.1\nMalt syrup; sugar; 226.8\nShortening; fat; 680.39",
    dough: 37798.3,
  },
  {
    text: "Code\tMaterial\tQty\tUOM\n10012\tFlour T55\t12.5\tkg\n10020\tWater\t7.8\tkg\n10031\tSalt\t250\tg\n10044\tYeast fresh\t300\tg\n10050\tMargarine\t1.2\tkg",
    rows: "Flour T55; flour; 12500\nWater; water; 7800\nSalt; salt; 250\nYeast fresh; yeast; 300\nMargarine; fat; 1200",
    dough: 22050,
  },
  {
    text: "| Ingredient | 20 loaves | 40 loaves |\n|:--|--:|--:|\n| Flour | 10,000 g | 20,000 g |\n| Water | 6,800 g | 13,600 g |\n| Salt | 200 g | 400 g |\n| Yeast | 120 g | 240 g |",
    rows: "Flour; flour; 10000\nWater; water; 6800\nSalt; salt; 200\nYeast; yeast; 120",
    asks: ["which column"],
  },
  {
    text: "Item                Supplier      Qty(g)   $/kg    Cost\nBread flour         Mill A        5000     1.10    5.50\nWater                             3250     -       -\nSea salt            Grocer        100      0.80    0.08\nDry yeast           Grocer        50       9.00    0.45\nTotal                             8400             6.03",
    rows: "Bread flour; flour; 5000\nWater; water; 3250\nSea salt; salt; 100\nDry yeast; yeast; 50",
    dough: 8400,
  },
  {
    text: "Stage,Ingredient,Amount\nBiga,Flour,2000 g\nBiga,Water,1100 g\nBiga,Yeast,4 g\nDough,Flour,3000 g\nDough,Water,2400 g\nDough,Salt,100 g\nDough,Yeast,20 g",
    rows: "Flour; flour; 2000; preferment\nWater; water; 1100; preferment\nYeast; yeast; 4; preferment\nFlour; flour; 3000\nWater; water; 2400\nSalt; salt; 100\nYeast; yeast; 20",
    pre: { kind: "biga", share: 0.4, hydration: 0.55 },
    hydration: 0.7,
    dough: 8624,
  },
];
