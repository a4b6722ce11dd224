// A sixth lot: texts of other hands, written down after the fifth was right and tried as they stood.
import type { Case } from "./corpus-support.ts";

export const SIXTH: readonly Case[] = [
  {
    // a notebook page: shorthand, lb and oz, amounts behind
    text: "Sat. hoagie rolls - 10 doz\nHG fl 36#\nwtr 20# 8oz\nslt 11oz\nsugar 1# 2oz\nveg oil 1# 2oz\nIDY 5oz\n\nscale 4.5 oz",
    title: "Sat. hoagie rolls",
    rows: "high-gluten flour; flour; 16329.33\nwater; water; 9298.64\nsalt; salt; 311.84\nsugar; sugar; 510.29\nveg oil; fat; 510.29\ninstant yeast; yeast; 141.75",
    yield: { pieces: 120, weight: 127.57 },
    asks: ["yield differs"],
  },
  {
    text: "Barmbrack\n\n225 g self-raising flour (8 oz)\n350 g mixed dried fruit (12 oz)\n300 ml cold tea (½ pint)\n125 g light muscovado sugar (4½ oz)\n1 egg, beaten\n½ tsp mixed spice\n\nSoak the fruit in the tea overnight.\nBake at 170 C (gas 3) for 1¼ hours.",
    cups: "UK",
    title: "Barmbrack",
    rows: "self-raising flour; flour; 225\nmixed dried fruit; fruit; 350\ncold tea; water; 300\nlight muscovado sugar; sugar; 125\negg; egg; 60\nmixed spice; other; -",
    asks: ["unclear amount", "step time"],
  },
  {
    text: "Formula: Tin bread\nDate: 12/03/24   Baker: night shift\n\nFlour          100    50.000 kg\nWater           60    30.000 kg\nSalt             2     1.000 kg\nYeast          2.5     1.250 kg\nImprover         1     0.500 kg\nFat              1     0.500 kg\n              ----   ---------\nTotal        166.5    83.250 kg",
    title: "Tin bread",
    rows: "Flour; flour; 50000\nWater; water; 30000\nSalt; salt; 1000\nYeast; yeast; 1250\nImprover; other; 500\nFat; fat; 500",
    dough: 83250,
  },
  {
    text: "Pizza napoletana per 6\n- 925 g farina 00\n- 600 g acqua\n- 25 g sale\n- 1 g lievito di birra fresco",
    rows: "farina 00; flour; 925\nacqua; water; 600\nsale; salt; 25\nlievito di birra fresco; yeast; 1",
    dough: 1551,
  },
  {
    text: "Roggenmischbrot 70/30\n\nSauerteig (16 h, 26 °C)\n350 g Roggenmehl 1150\n280 g Wasser\n35 g Anstellgut\n\nHauptteig\n350 g Roggenmehl 1150\n300 g Weizenmehl 550\n420 g Wasser\n20 g Salz\n10 g Hefe\nSauerteig, komplett",
    title: "Roggenmischbrot 70/30",
    rows: "Roggenmehl 1150; flour; 350; preferment\nWasser; water; 280; preferment\nAnstellgut; levain 80%; 35; preferment\nRoggenmehl 1150; flour; 350\nWeizenmehl 550; flour; 300\nWasser; water; 420\nSalz; salt; 20\nHefe; yeast; 10\nSauerteig; ; takes",
    // 35 g at 80 %: 19.44 g of flour; 369.44 of 1019.44
    pre: { kind: "sourdough", share: 0.3624, hydration: 0.8, seed: 0.1 },
    dough: 1765,
  },
  {
    text: "Everyday sourdough\n(baker's percentages)\nBread flour 90%\nWhole wheat flour 10%\nWater 72%\nLevain (100% hydration) 20%\nSalt 2%\n\nFor two loaves at 900g",
    title: "Everyday sourdough",
    rows: "Bread flour; flour; 90%\nWhole wheat flour; flour; 10%\nWater; water; 72%\nLevain; levain 100%; 20%\nSalt; salt; 2%",
    yield: { pieces: 2, weight: 900 },
    hydration: 0.7455,
  },
  {
    text: "Lemon drizzle traybake\nFor the sponge\n225g baking spread\n225g caster sugar\n275g self-raising flour\n2 tsp baking powder\n4 eggs\n4 tbsp milk\n2 lemons, zest only\nFor the crunchy topping\n175g granulated sugar\n2 lemons, juice only\nBake 35-40 min at 160C fan",
    cups: "UK",
    title: "Lemon drizzle traybake",
    rows: "baking spread; fat; 225\ncaster sugar; sugar; 225\nself-raising flour; flour; 275\nbaking powder; other; 9.3\neggs; egg; 240\nmilk; dairy; 61.9\nlemons; fruit; -\ngranulated sugar; sugar; 175; topping\nlemons; fruit; -; topping",
    asks: ["unclear amount"],
  },
  {
    text: "Product,Stage,Item,Kg\nRye 60,Sour,Rye flour,12\nRye 60,Sour,Water,12\nRye 60,Sour,Starter 100%,1.2\nRye 60,Dough,Rye flour,6\nRye 60,Dough,Wheat flour,12\nRye 60,Dough,Water,9\nRye 60,Dough,Salt,0.6\nRye 60,Dough,Yeast,0.3\nRye 60,Dough,Sour,25.2",
    rows: "Rye flour; flour; 12000; preferment\nWater; water; 12000; preferment\nStarter; starter 100%; 1200; preferment\nRye flour; flour; 6000\nWheat flour; flour; 12000\nWater; water; 9000\nSalt; salt; 600\nYeast; yeast; 300\nSour; ; takes",
    // 12 600 of 30 600
    pre: { kind: "sour", share: 0.4118, hydration: 1, seed: 0.1 },
    dough: 53100,
  },
  {
    text: "Kouign-amann (12)\nDough: flour 450 g, water 280 g, salt 9 g, yeast 6 g, butter 20 g\nLaminating: butter 340 g, sugar 300 g",
    title: "Kouign-amann",
    rows: "flour; flour; 450\nwater; water; 280\nsalt; salt; 9\nyeast; yeast; 6\nbutter; fat; 20\nbutter; fat; 340; roll-in\nsugar; sugar; 300; roll-in",
    yield: { pieces: 12 },
    dough: 765,
    parts: ["roll-in"],
  },
  {
    text: "CHALLAH\n4 lb bread flour\n1 lb 14 oz water\n10 oz eggs\n6 oz yolks\n5 oz oil\n6 oz sugar\n1.25 oz salt\n0.6 oz instant yeast\n\nEgg wash\n2 eggs\npinch salt\n\nBraid: 6 strands @ 4 oz",
    title: "CHALLAH",
    rows: "bread flour; flour; 1814.37\nwater; water; 850.49\neggs; egg; 283.5\nyolks; egg; 170.1\noil; fat; 141.75\nsugar; sugar; 170.1\nsalt; salt; 35.44\ninstant yeast; yeast; 17.01\neggs; egg; 100; egg wash\nsalt; salt; 0.375; egg wash",
    dough: 3482.76,
    parts: ["egg wash"],
  },
  {
    text: "Ingredients          |   %   |  Small  |  Large\nStrong flour         |  100  |  5.00   |  20.00\nWater                |   65  |  3.25   |  13.00\nSalt                 |  1.8  |  0.09   |   0.36\nYeast                |    2  |  0.10   |   0.40\n(all weights in kg)",
    rows: "Strong flour; flour; 5000\nWater; water; 3250\nSalt; salt; 90\nYeast; yeast; 100",
    asks: ["which column"],
  },
  {
    text: "Sourdough crackers\n\n200 g discard (100 %)\n100 g wholemeal flour\n50 g olive oil\n5 g salt\n2 tsp za'atar\n\nRoll thin, bake 18 minutes at 175 °C until crisp.",
    title: "Sourdough crackers",
    rows: "discard; levain 100%; 200\nwholemeal flour; flour; 100\nolive oil; fat; 50\nsalt; salt; 5\nza'atar; ; -",
    steps: [[18, 175]],
    asks: ["unclear amount", "which type"],
  },
  {
    text: "Whole-wheat sandwich (for 4 x 2 lb tins, 920g each)\nWW flour 2000 g\nWater 1420 g\nHoney 100 g\nOil 80 g\nSalt 40 g\nInstant yeast 24 g",
    title: "Whole-wheat sandwich",
    rows: "whole wheat flour; flour; 2000\nWater; water; 1420\nHoney; sugar; 100\nOil; fat; 80\nSalt; salt; 40\nInstant yeast; yeast; 24",
    yield: { pieces: 4, weight: 920, tins: 4 },
    dough: 3664,
  },
  {
    text: "Bolo rei\nMassa:\n750 g farinha T65\n150 g açúcar\n150 g manteiga\n4 ovos\n200 ml leite\n40 g fermento de padeiro\n8 g sal\n\nRecheio:\n300 g frutas cristalizadas\n100 g nozes",
    cups: "EU",
    title: "Bolo rei",
    rows: "farinha T65; flour; 750\naçúcar; sugar; 150\nmanteiga; fat; 150\novos; egg; 240\nleite; dairy; 206.2\nfermento de padeiro; yeast; 40\nsal; salt; 8\nfrutas cristalizadas; fruit; 300; filling\nnozes; other; 100; filling",
  },
  {
    text: "Speltbread DAY 1 evening\nspelt flour 200\nwater 200\nstarter 20\nDAY 2\nspelt flour 800\nwater 460\nsalt 20\nhoney 15\neverything from day 1\n\nall in grams",
    rows: "spelt flour; flour; 200; preferment\nwater; water; 200; preferment\nstarter; levain 100%; 20; preferment\nspelt flour; flour; 800\nwater; water; 460\nsalt; salt; 20\nhoney; sugar; 15\neverything; ; takes",
    dough: 1715,
  },
  {
    text: "FRENCH BREAD\nOven 425°F\n\n  12 lb   0 oz  Bread flour\n   7 lb   8 oz  Water\n   0 lb   4 oz  Salt\n   0 lb   3 oz  Active dry yeast\n   0 lb   2 oz  Malt powder\n\nMixing time: 12 min. Dough temp. 78F\n1st fermentation 90 min., punch, 30 min.\nScale 18 oz.",
    title: "FRENCH BREAD",
    rows: "Bread flour; flour; 5443.1\nWater; water; 3401.94\nSalt; salt; 113.4\nActive dry yeast; yeast; 85.05\nMalt powder; other; 56.7",
    yield: { weight: 510.29 },
    dough: 9100.19,
  },
  {
    text: "Carrot cake, two 20 cm round tins\nDry: 300 g plain flour, 10 g baking powder, 5 g bicarbonate of soda, 8 g cinnamon\nWet: 300 g light brown sugar, 250 g sunflower oil, 5 eggs, 300 g grated carrot\nFrosting: 300 g cream cheese, 100 g butter, 200 g icing sugar",
    title: "Carrot cake",
    rows: "plain flour; flour; 300\nbaking powder; other; 10\nbicarbonate of soda; other; 5\ncinnamon; other; 8\nlight brown sugar; sugar; 300\nsunflower oil; fat; 250\neggs; egg; 250\ngrated carrot; fruit; 300\ncream cheese; dairy; 300; icing\nbutter; fat; 100; icing\nicing sugar; sugar; 200; icing",
    yield: { pieces: 2, tins: 2 },
    parts: ["icing"],
  },
  {
    text: "Morning rolls\n60 rolls @ 70g\n\nT.55 flour .... 2500g\nWater ......... 1550g\nLard .......... 75g\nSalt .......... 50g\nYeast (fresh) . 75g\n\nKnead 8'. Rest 45'. Scale, mould, prove 50' at 32°. Bake 230° 12'.",
    title: "Morning rolls",
    rows: "T.55 flour; flour; 2500\nWater; water; 1550\nLard; fat; 75\nSalt; salt; 50\nYeast, fresh; yeast; 75",
    yield: { pieces: 60, weight: 70 },
    steps: [
      [8, null],
      [45, null],
      [50, 32],
      [12, 230],
    ],
  },
];
