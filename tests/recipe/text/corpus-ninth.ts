// A ninth lot of forty, of bakers of eleven countries, written down by somebody who had not opened the reader: the lists.
import type { Case } from "./corpus-support.ts";

export const NINTH_HOUSEHOLD: readonly Case[] = [
  {
    text: "Gran's bara brith\n1lb SR flour\n8oz soft brown sugar\n1lb mixed fruit\n½ pint cold tea (soak fruit overnight)\n1 egg\n1tsp mixed spice\n\n2lb tin, 325F about 1½ hrs",
    cups: "UK",
    title: "Gran's bara brith",
    rows: "SR flour; flour; 453.59\nsoft brown sugar; sugar; 226.8\nmixed fruit; fruit; 453.59\ncold tea; water; 284.13\negg; egg; 60\nmixed spice; other; -",
    yield: { pieces: 1, tins: 1 },
    steps: [[90, 162.8]],
    asks: ["unclear amount"],
  },
  {
    text: "Refrigerator Rolls\n\n2 pkgs active dry yeast\n2 cups warm water (110°)\n1/2 c. sugar\n1 T. salt\n1 beaten egg\n1/4 c. soft shortening\n6 1/2 to 7 c. flour\n\nDissolve yeast in water. Stir in the rest.\nCover, chill 2 hours.\nBake at 400 for 12-15 min. Makes 4 doz",
    title: "Refrigerator Rolls",
    rows: "active dry yeast; yeast; 14\nwarm water; water; 473.18\nsugar; sugar; 0.5 cup 19335\nsalt; salt; 1 tbsp 02047\nbeaten egg; egg; 50\nsoft shortening; fat; 51.25\nflour; flour; 6.75 cup 20081",
    yield: { pieces: 48 },
  },
  {
    text: "ANZAC slice\n1 cup plain flour\n1 cup rolled oats\n90g desiccated coconut\n3/4 cup brown sugar, firmly packed\n125g butter\n2 tbs honey\n1 tsp bicarb soda dissolved in 2 tbs boiling water\n\n180°C/160°C fan-forced 25 mins. Lamington tin 20 x 30cm.",
    cups: "AU",
    title: "ANZAC slice",
    rows: "plain flour; flour; 132.1\nrolled oats; grain; 85.6\ndesiccated coconut; other; 90\nbrown sugar; sugar; 174.4\nbutter; fat; 125\nhoney; sugar; 56.8\nbicarb soda; other; 4.67\nboiling water; water; 40",
    steps: [[25, 180]],
  },
  {
    text: "Quarkstollen\n500 g Mehl Type 405\n15 g Backpulver\n200 g Zucker\n1 Prise Salz\n2 Eier\n250 g Magerquark, gut abgetropft\n175 g kalte Butter in Flöckchen\n150 g Rosinen\n100 g gehackte Mandeln\nZum Bestreichen: 75 g Butter\nZum Bestäuben: 50 g Puderzucker\nBackzeit: 60 Min. bei 170 °C",
    cups: "EU",
    title: "Quarkstollen",
    rows: "Mehl Type 405; flour; 500\nBackpulver; other; 15\nZucker; sugar; 200\nSalz; salt; 0.375\nEier; egg; 120\nMagerquark; dairy; 250\nkalte Butter; fat; 175\nRosinen; fruit; 150\ngehackte Mandeln; other; 100\nButter; fat; 75; egg wash\nPuderzucker; sugar; 50; dusting",
    steps: [[60, 170]],
  },
  {
    text: "Kanelbullar, ca 40 st\n50 g jäst\n5 dl mjölk\n150 g smör\n1½ dl socker\n1 tsk salt\n13 dl vetemjöl\n\nFyllning: 100 g smör, 1 dl socker, 2 msk kanel\n\nUgn 250°, 7-8 min",
    cups: "EU",
    title: "Kanelbullar",
    rows: "jäst; yeast; 50\nmjölk; dairy; 515.7\nsmör; fat; 150\nsocker; sugar; 126.8\nsalt; salt; 6.09\nvetemjöl; flour; 686.9\nsmör; fat; 100; filling\nsocker; sugar; 84.5; filling\nkanel; other; 15.8; filling",
    yield: { pieces: 40 },
    // 250° may be of either unit.
    steps: [[7.5, null]],
  },
  {
    text: "350g SR flour, plus extra for dusting\n¼ tsp salt\n1 tsp baking powder\n85g cold butter, cubed\n4 tbsp golden caster sugar\n175ml milk, warmed with a squeeze of lemon\n1 egg beaten with 1 tbsp milk, to glaze\n\nMakes 8\n220C / 200C fan / gas 7, 10-12 mins",
    cups: "UK",
    rows: "SR flour; flour; 350\nsalt; salt; 1.52\nbaking powder; other; 4.67\ncold butter; fat; 85\ngolden caster sugar; sugar; 50.7\nmilk; dairy; 180.5\negg; egg; 60; egg wash\nmilk; dairy; 15.5; egg wash",
    yield: { pieces: 8 },
    steps: [[11, 220]],
  },
  {
    text: "Overnight focaccia\n4 cups (500g) all-purpose flour\n2 cups (480ml) lukewarm water\n1 Tbsp (9g) kosher salt\n1/2 tsp instant yeast\n1/4 cup olive oil, divided, plus 2 Tbsp for the pan\nFlaky salt",
    title: "Overnight focaccia",
    rows: "all-purpose flour; flour; 500\nlukewarm water; water; 480\nkosher salt; salt; 9\ninstant yeast; yeast; 1.55\nolive oil; fat; 0.25 cup 04053\nolive oil; fat; 27; dusting\nFlaky salt; salt; -",
    asks: ["no amount"],
  },
  {
    text: "Butter tarts (12)\nPastry 1 1/4 c AP, 1/2 c cold butter, 3-4 Tbsp ice water\nFilling 1 lg egg, 1 c brown sugar packed, 1/4 c melted butter, 1/2 c raisins, 1 tsp vanilla",
    title: "Butter tarts",
    rows: "all-purpose flour; flour; 156.25\ncold butter; fat; 113.5\nice water; water; 51.75\negg; egg; 50; filling\nbrown sugar; sugar; 220; filling\nmelted butter; fat; 56.75; filling\nraisins; fruit; 72.5; filling\nvanilla; other; 4.2; filling",
    yield: { pieces: 12 },
  },
];

export const NINTH_PERCENT: readonly Case[] = [
  {
    text: "Baguette tradition – formule boulangère\nFarine T65 .......... 100 %\nEau .................. 68 %\nBassinage ............. 5 %\nSel ................... 1,8 %\nLevure ................ 0,8 %\n\nPétrissage 5' V1 + 3' V2\nPointage 1h30 à 24°C\nCuisson 22 min 250°C",
    rows: "Farine T65; flour; 100%\nEau; water; 68%\nBassinage; water; 5%\nSel; salt; 1.8%\nLevure; yeast; 0.8%",
    steps: [
      [8, null],
      [90, 24],
      [22, 250],
    ],
    hydration: 0.73,
  },
  {
    text: "BAP MIX\nFlour 25kg 100\nWater 14.5 lt 58\nYeast 750g 3\nSalt 450g 1.8\nFat 625g 2.5\nImprover 250g 1\nSugar 250g 1",
    title: "BAP MIX",
    rows: "Flour; flour; 25000\nWater; water; 14500\nYeast; yeast; 750\nSalt; salt; 450\nFat; fat; 625\nImprover; other; 250\nSugar; sugar; 250",
    dough: 41825,
  },
  {
    text: "Pizza 65% hydration, 270g balls x 30\n00 flour 100\nwater 65\nsalt 2.8\nfresh yeast 0.15\nEVOO 1",
    rows: "00 flour; flour; 100%\nwater; water; 65%\nsalt; salt; 2.8%\nfresh yeast; yeast; 0.15%\nEVOO; fat; 1%",
    yield: { pieces: 30, weight: 270 },
    hydration: 0.65,
  },
  {
    text: "Soft roll (per cent of total mix)\nStrong white 55.6 / Water 36.1 / Salt 1.1 / Rapeseed oil 2.8 / Sugar 2.2 / Yeast 2.2 = 100",
    title: "Soft roll (per cent of total mix)",
    rows: "Strong white; flour; 55.6%\nWater; water; 36.1%\nSalt; salt; 1.1%\nRapeseed oil; fat; 2.8%\nSugar; sugar; 2.2%\nYeast; yeast; 2.2%",
    hydration: 0.6493,
  },
  {
    text: "Dinkel-Roggen 70:30\nDinkelmehl 630   70%\nRoggenmehl 1150   30%\nWasser 74%\nSalz 2,1%\nHefe 1,2%\nZucker 0,5 %\nMehlmenge gesamt: 12 kg",
    title: "Dinkel-Roggen 70:30",
    rows: "Dinkelmehl 630; flour; 70%\nRoggenmehl 1150; flour; 30%\nWasser; water; 74%\nSalz; salt; 2.1%\nHefe; yeast; 1.2%\nZucker; sugar; 0.5%",
    // 177.8 parts of 12 kg of flour
    dough: 21336,
    hydration: 0.74,
  },
  {
    text: "Bagel – scale 4.5 oz, 12 dz\nHG flour 100.0\nWater 54.0\nSugar 2.0\nSalt 1.8\nIDY .4\nTotal 158.2",
    title: "Bagel",
    rows: "high-gluten flour; flour; 100%\nWater; water; 54%\nSugar; sugar; 2%\nSalt; salt; 1.8%\ninstant yeast; yeast; 0.4%",
    yield: { pieces: 144, weight: 127.57 },
    hydration: 0.54,
  },
];

export const NINTH_TABLES: readonly Case[] = [
  {
    text: "Butter croissant | bkr % | batch\nFlour T45 | 100% | 4.00 kg\nMilk | 30% | 1.20 kg\nWater | 22% | 0.88 kg\nSugar | 12% | 0.48 kg\nSalt | 2% | 0.08 kg\nFresh yeast | 4% | 0.16 kg\nButter (in dough) | 8% | 0.32 kg\nDough total | | 7.12 kg\nButter (folding) | 25% of dough | 1.78 kg",
    rows: "Flour T45; flour; 4000\nMilk; dairy; 1200\nWater; water; 880\nSugar; sugar; 480\nSalt; salt; 80\nFresh yeast; yeast; 160\nButter; fat; 320\nButter; fat; 1780; roll-in",
    dough: 7120,
    parts: ["roll-in"],
  },
  {
    text: "Item\tSupplier\tUnit\tQty\tCost\nPlain flour\tHarbour Mills\tkg\t16\t14.40\nButter\tDairy Lane\tkg\t8\t56.00\nCaster sugar\tDairy Lane\tkg\t8\t9.60\nEggs\tHill Farm\teach\t90\t27.00\nVanilla essence\tDairy Lane\tml\t60\t4.20",
    cups: "UK",
    rows: "Plain flour; flour; 16000\nButter; fat; 8000\nCaster sugar; sugar; 8000\nEggs; egg; 5400\nVanilla essence; other; 52.8",
  },
  {
    text: "Zutat;Menge;Einheit;Anteil\nWeizenmehl 550;12,5;kg;83,33%\nRoggenmehl 997;2,5;kg;16,67%\nWasser;9,6;l;64%\nSalz;0,3;kg;2%\nHefe;450;g;3%\nBackmittel;0,3;kg;2%",
    cups: "EU",
    rows: "Weizenmehl 550; flour; 12500\nRoggenmehl 997; flour; 2500\nWasser; water; 9600\nSalz; salt; 300\nHefe; yeast; 450\nBackmittel; other; 300",
    hydration: 0.64,
    dough: 25650,
  },
  {
    text: "Rohstoff\tg\nMehl\t10.000\nWasser\t6.200\nSalz\t200\nHefe\t300\nMargarine\t500",
    cups: "EU",
    rows: "Mehl; flour; 10000\nWasser; water; 6200\nSalz; salt; 200\nHefe; yeast; 300\nMargarine; fat; 500",
    dough: 17200,
  },
  {
    text: "DOUGH               FILLING\nFlour    1000 g     Ricotta     800 g\nMilk      520 g     Sugar       120 g\nYeast      15 g     Egg yolk     60 g\nButter     80 g     Lemon zest    8 g\nSalt       18 g",
    rows: "Flour; flour; 1000\nMilk; dairy; 520\nYeast; yeast; 15\nButter; fat; 80\nSalt; salt; 18\nRicotta; dairy; 800; filling\nSugar; sugar; 120; filling\nEgg yolk; egg; 60; filling\nLemon zest; other; 8; filling",
    dough: 1633,
  },
  {
    text: "\tx1\tx4\nT55\t500\t2000\nWater\t320\t1280\nSalt\t9\t36\nYeast\t6\t24\n(g)",
    rows: "T55; flour; 500\nWater; water; 320\nSalt; salt; 9\nYeast; yeast; 6",
    asks: ["which column"],
  },
  {
    text: "        Flour   Water   Salt   Yeast\nkg      10.00   6.50    0.20   0.25",
    rows: "Flour; flour; 10000\nWater; water; 6500\nSalt; salt; 200\nYeast; yeast; 250",
    dough: 16950,
  },
  {
    text: "Stage,Ingredient,%,g\nBiga,Tipo 0,50,5000\n,Acqua,25,2500\n,Lievito,0.2,20\nFinal,Tipo 0,50,5000\n,Acqua,45,4500\n,Sale,2.2,220\n,Biga,,7520",
    rows: "Tipo 0; flour; 5000; preferment\nAcqua; water; 2500; preferment\nLievito; yeast; 20; preferment\nTipo 0; flour; 5000\nAcqua; water; 4500\nSale; salt; 220\nBiga; ; takes",
    pre: { kind: "biga", share: 0.5, hydration: 0.5 },
    hydration: 0.7,
    dough: 17240,
  },
];
