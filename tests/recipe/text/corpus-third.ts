// A third lot of texts, written after the reader was known, and tried as they were written.
import type { Case } from "./corpus-support.ts";

export const THIRD: readonly Case[] = [
  {
    text: "Cinnamon raisin bread (2 loaves)\n\n1 cup milk\n2 tablespoons butter\n3/4 cup warm water\n1 envelope active dry yeast\n1/4 cup sugar\n1 tsp salt\n5 1/2 cups bread flour\n1 cup raisins\n\nSwirl:\n1/2 cup brown sugar\n2 tsp cinnamon",
    title: "Cinnamon raisin bread",
    // ½ × 220 g of packed brown sugar, or 145 unpacked: the larder's cup
    rows: "milk; dairy; 1 cup 01211\nbutter; fat; 2 tbsp 01145\nwarm water; water; 177.4\nactive dry yeast; yeast; 7\nsugar; sugar; 50\nsalt; salt; 6\nbread flour; flour; 5.5 cup 20083\nraisins; fruit; 145\nbrown sugar; sugar; 110; filling\ncinnamon; other; 5.2; filling",
    yield: { pieces: 2 },
  },
  {
    text: "White Sandwich Loaf — batch of 12 x 800g\n\nbread flour 5,600 g\nwater 3,470 g\nmilk powder 168 g\nsugar 168 g\nsalt 112 g\nbutter 168 g\ninstant yeast 56 g",
    title: "White Sandwich Loaf",
    rows: "bread flour; flour; 5600\nwater; water; 3470\nmilk powder; dairy; 168\nsugar; sugar; 168\nsalt; salt; 112\nbutter; fat; 168\ninstant yeast; yeast; 56",
    yield: { pieces: 12, weight: 800 },
    dough: 9742,
  },
  {
    text: "FOCACCIA\n\nFLOUR 00 .... 1000\nWATER .... 750\nSALT .... 25\nOIL .... 50\nFRESH YEAST .... 10\n\n(grams)",
    title: "FOCACCIA",
    rows: "FLOUR 00; flour; 1000\nWATER; water; 750\nSALT; salt; 25\nOIL; fat; 50\nFRESH YEAST; yeast; 10",
    hydration: 0.75,
  },
  {
    text: "Whole wheat pan bread\nWhole wheat flour: 100%\nWater: 72%\nMolasses: 5%\nOil: 4%\nSalt: 2%\nInstant yeast: 1%\nYield: 6 loaves @ 28 oz",
    title: "Whole wheat pan bread",
    rows: "Whole wheat flour; flour; 100%\nWater; water; 72%\nMolasses; sugar; 5%\nOil; fat; 4%\nSalt; salt; 2%\nInstant yeast; yeast; 1%",
    yield: { pieces: 6, weight: 793.79 },
    dough: 4762.7,
  },
  {
    text: "Ingredients:\n\n- 3½ cups (450g) all-purpose flour\n- 1 tbsp (9g) instant yeast\n- 1 tbsp sugar\n- 2 tsp salt\n- 1⅓ cups (320ml) warm water\n- 2 tbsp olive oil + extra for greasing",
    rows: "all-purpose flour; flour; 450\ninstant yeast; yeast; 9\nsugar; sugar; 12.6\nsalt; salt; 12\nwarm water; water; 320\nolive oil; fat; 2 tablespoon 04053",
  },
  {
    text: "Dough for 100 croissants\nFlour T55\t4 kg\nWater\t1.2 kg\nWhole milk\t1.0 kg\nSugar\t480 g\nSalt\t80 g\nFresh yeast\t160 g\nButter\t200 g\nDry butter (lamination)\t2 kg",
    title: "Dough for 100 croissants",
    rows: "Flour T55; flour; 4000\nWater; water; 1200\nWhole milk; dairy; 1000\nSugar; sugar; 480\nSalt; salt; 80\nFresh yeast; yeast; 160\nButter; fat; 200\nDry butter; fat; 2000; roll-in",
    yield: { pieces: 100 },
    dough: 7120,
  },
  {
    text: "Sourdough discard crackers\n200g sourdough discard (100% hydration)\n100g flour\n50g butter, melted\n5g salt\nherbs to taste",
    title: "Sourdough discard crackers",
    rows: "sourdough discard; sourdough 100%; 200\nflour; flour; 100\nbutter; fat; 50\nsalt; salt; 5\nherbs; other; -",
    asks: ["no amount"],
  },
  {
    text: "Pan au levain\n% \tIngredient\n80\tBread flour\n20\tWhole wheat flour\n70\tWater\n2\tSalt\n20\tLiquid levain (125%)",
    title: "Pan au levain",
    rows: "Bread flour; flour; 80%\nWhole wheat flour; flour; 20%\nWater; water; 70%\nSalt; salt; 2%\nLiquid levain; levain 125%; 20%",
  },
  {
    text: "Basic brioche\nMakes about 1.2 kg dough\n500 g bread flour\n10 g salt\n60 g sugar\n20 g fresh yeast\n300 g eggs (6)\n300 g butter, cold",
    title: "Basic brioche",
    rows: "bread flour; flour; 500\nsalt; salt; 10\nsugar; sugar; 60\nfresh yeast; yeast; 20\neggs; egg; 300\nbutter; fat; 300",
    yield: { total: 1200 },
  },
  {
    text: "Stollen\n\nVORTEIG\nMehl 200 g\nMilch 160 g\nHefe 60 g\n\nHAUPTTEIG\nMehl 800 g\nButter 400 g\nZucker 120 g\nSalz 12 g\nMilch 140 g\nRosinen 600 g\nMandeln 150 g\nVorteig ganz",
    cups: "EU",
    title: "Stollen",
    rows: "Mehl; flour; 200; preferment\nMilch; dairy; 160; preferment\nHefe; yeast; 60; preferment\nMehl; flour; 800\nButter; fat; 400\nZucker; sugar; 120\nSalz; salt; 12\nMilch; dairy; 140\nRosinen; fruit; 600\nMandeln; other; 150\nVorteig; ; takes",
    dough: 2642,
  },
  {
    text: "Bread flour 50 lb\nWater 32 lb\nSalt 1 lb\nSugar 2 lb 8 oz\nShortening 1 lb 8 oz\nInstant yeast 8 oz\nDough conditioner 4 oz\nMix: 2 min low, 10 min high\nDDT 80F\nFloor time: 20 min\nScale: 18 oz\nIntermediate proof: 10 min\nProof: 60 min at 105F\nBake: 25 min at 425F",
    rows: "Bread flour; flour; 22679.6\nWater; water; 14515\nSalt; salt; 453.59\nSugar; sugar; 1133.98\nShortening; fat; 680.39\nInstant yeast; yeast; 226.8\nDough conditioner; other; 113.4",
    yield: { weight: 510.3 },
  },
  {
    text: "Carrot cake\nWet\n4 eggs\n300 ml sunflower oil\n300 g light brown sugar\nDry\n300 g self-raising flour\n2 tsp mixed spice\n1 tsp bicarbonate of soda\n300 g carrots, grated\nFrosting\n200 g cream cheese\n100 g icing sugar\n50 g butter",
    cups: "US",
    title: "Carrot cake",
    // 300 ml of 218 g in 236.588
    rows: "eggs; egg; 200\nsunflower oil; fat; 276.4\nlight brown sugar; sugar; 300\nself-raising flour; flour; 300\nmixed spice; other; -\nbicarbonate of soda; other; 4.6\ncarrots; fruit; 300\ncream cheese; dairy; 200; icing\nicing sugar; sugar; 100; icing\nbutter; fat; 50; icing",
    asks: ["unclear amount"],
  },
  {
    text: "Levain (night before):\n50 g mature starter\n100 g bread flour\n100 g water\n\nFinal Dough (morning):\n225 g levain\n700 g bread flour\n100 g whole wheat\n550 g water\n18 g salt\n\nBulk 4 h with folds every 30 min\nPreshape, rest 20 min\nShape, cold proof 12-16 h\nBake 20 min lid on at 250C, 25 min lid off at 220C",
    rows: "mature starter; levain 100%; 50; preferment\nbread flour; flour; 100; preferment\nwater; water; 100; preferment\nlevain; ; takes\nbread flour; flour; 700\nwhole wheat; flour; 100\nwater; water; 550\nsalt; salt; 18",
    // 225 of 250 g: 112.5 of each; 662.5 of 912.5
    pre: { share: 0.1233, hydration: 1, seed: 0.5 },
    hydration: 0.726,
    dough: 1593,
  },
  {
    text: "Recipe: Semolina rolls\nBatch size: 20 kg flour\n\nItem | % | kg\nSemolina | 60 | 12\nBread flour | 40 | 8\nWater | 64 | 12.8\nOlive oil | 3 | 0.6\nSalt | 2.2 | 0.44\nYeast | 1 | 0.2",
    title: "Semolina rolls",
    rows: "Semolina; flour; 12000\nBread flour; flour; 8000\nWater; water; 12800\nOlive oil; fat; 600\nSalt; salt; 440\nYeast; yeast; 200",
    dough: 34040,
  },
  {
    text: "Makes one 9 inch tart\n\nPâte sucrée\n250 g flour\n125 g butter\n100 g icing sugar\n1 egg\n\nAlmond cream\n100 g butter\n100 g sugar\n100 g ground almonds\n2 eggs\n20 g flour",
    rows: "flour; flour; 250\nbutter; fat; 125\nicing sugar; sugar; 100\negg; egg; 50\nbutter; fat; 100; filling\nsugar; sugar; 100; filling\nground almonds; other; 100; filling\neggs; egg; 100; filling\nflour; flour; 20; filling",
    yield: { pieces: 1 },
    dough: 525,
  },
  {
    text: "Bread 1\nstrong flour 1kg, water 640g, salt 20g, yeast 12g",
    title: "Bread 1",
    rows: "strong flour; flour; 1000\nwater; water; 640\nsalt; salt; 20\nyeast; yeast; 12",
  },
  {
    text: "Gram flour flatbread\n200 g gram flour\n200 g plain flour\n1 tsp turmeric\n1 tsp salt\n250 ml water approx.",
    title: "Gram flour flatbread",
    rows: "gram flour; flour; 200\nplain flour; flour; 200\nturmeric; other; -\nsalt; salt; 6\nwater; water; 250",
    asks: ["unclear amount"],
  },
  {
    text: "English muffins\nYield 20 @ 3 oz\nFlour 2 lb\nWater 1 lb 8 oz\nVinegar .5 oz\nSugar .5 oz\nSalt .6 oz\nIDY .5 oz",
    title: "English muffins",
    rows: "Flour; flour; 907.18\nWater; water; 680.39\nVinegar; other; 14.17\nSugar; sugar; 14.17\nSalt; salt; 17.01\ninstant yeast; yeast; 14.17",
    yield: { pieces: 20, weight: 85.05 },
    // Sixty ounces of 58.1: put right after the first run.
    asks: ["yield differs"],
  },
  {
    text: "Day 1\nSoaker\nOats 200 g\nBoiling water 300 g\n\nDay 2\nBread flour 1000 g\nWater 520 g\nSalt 22 g\nHoney 40 g\nYeast 10 g\nAdd soaker",
    rows: "Oats; grain; 200; soaker\nBoiling water; water; 300; soaker\nBread flour; flour; 1000\nWater; water; 520\nSalt; salt; 22\nHoney; sugar; 40\nYeast; yeast; 10",
    dough: 2092,
    hydration: 0.82,
  },
  {
    text: "Pizza | Ball weight 260g | 70 balls\nFlour 11.2kg\nWater 6.94kg\nSalt 0.31kg\nFresh yeast 0.02kg",
    title: "Pizza",
    rows: "Flour; flour; 11200\nWater; water; 6940\nSalt; salt; 310\nFresh yeast; yeast; 20",
    yield: { pieces: 70, weight: 260 },
  },
];
