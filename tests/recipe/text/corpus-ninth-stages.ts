// The rest of the ninth lot: stages, parts beside the dough, letters, pages and yields.
import type { Case } from "./corpus-support.ts";

export const NINTH_STAGES: readonly Case[] = [
  {
    text: "Ciabatta\nBiga: farina 0 1000 g, acqua 480 g, lievito 10 g\nImpasto: biga tutta, farina 0 200 g, acqua 250 g, sale 26 g, olio 40 g\nSpezzatura: 4 pezzi da 500 g",
    title: "Ciabatta",
    rows: "farina 0; flour; 1000; preferment\nacqua; water; 480; preferment\nlievito; yeast; 10; preferment\nbiga; ; takes\nfarina 0; flour; 200\nacqua; water; 250\nsale; salt; 26\nolio; fat; 40",
    yield: { pieces: 4, weight: 500 },
    pre: { kind: "biga", share: 0.8333, hydration: 0.48 },
    hydration: 0.6083,
    dough: 2006,
  },
  {
    text: "Poolish (made night before, 12-14 hrs @ 70F)\n500 g AP / 500 g water / .5 g IDY\nNext day add:\n500 g bread flour\n200 g water 85F\n20 g salt\n4 g IDY",
    rows: "all-purpose flour; flour; 500; preferment\nwater; water; 500; preferment\ninstant yeast; yeast; 0.5; preferment\nbread flour; flour; 500\nwater; water; 200\nsalt; salt; 20\ninstant yeast; yeast; 4",
    pre: { kind: "poolish", share: 0.5, hydration: 1 },
    hydration: 0.7,
    dough: 1724.5,
  },
  {
    text: "Rugbrød\nDag 1: 250 g surdej, 400 g rugmel, 500 g vand, 300 g knækkede rugkerner, 20 g salt\nDag 2: 400 g rugmel, 250 g vand, 100 g solsikkekerner",
    cups: "EU",
    title: "Rugbrød",
    rows: "surdej; levain 125%; 250; preferment\nrugmel; flour; 400; preferment\nvand; water; 500; preferment\nknækkede rugkerner; grain; 300; preferment\nsalt; salt; 20; preferment\nrugmel; flour; 400\nvand; water; 250\nsolsikkekerner; grain; 100",
    dough: 2220,
  },
  {
    text: "LIQUID LEVAIN 8:00pm\nT65 ........ 0.6 kg\nwater ...... 0.6 kg\nchef ....... 0.12 kg\n\nFINAL DOUGH 7:00am\nT65 ........ 3.4 kg\nwater ...... 2.2 kg\nsalt ....... 0.08 kg\nliquid levain ... 1.2 kg (keep the rest as chef)",
    rows: "T65; flour; 600; preferment\nwater; water; 600; preferment\nchef; levain 100%; 120; preferment\nT65; flour; 3400\nwater; water; 2200\nsalt; salt; 80\nliquid levain; ; takes",
    // 1.2 of 1.32 kg: 0.6 kg of flour in 4
    pre: { kind: "levain", share: 0.15, hydration: 1, seed: 0.2 },
    hydration: 0.7,
    dough: 6880,
  },
  {
    text: "Shokupan\n[Yudane]\nbread flour 20%\nboiling water 20%\n[Dough]\nbread flour 80%\nmilk 35%\nwater 18%\nsugar 8%\nsalt 2%\nbutter 8%\ndry yeast 1.2%\nyudane all",
    title: "Shokupan",
    rows: "bread flour; flour; 20%; soaker\nboiling water; water; 20%; soaker\nbread flour; flour; 80%\nmilk; dairy; 35%\nwater; water; 18%\nsugar; sugar; 8%\nsalt; salt; 2%\nbutter; fat; 8%\ndry yeast; yeast; 1.2%\nyudane; ; takes",
  },
  {
    text: "Chleb mieszany (mixed rye)\nZakwas: 300 g rye flour 720, 300 g water, 30 g starter\nCiasto: all zakwas, 400 g wheat flour 750, 220 g water, 16 g salt, 5 g caraway",
    rows: "rye flour 720; flour; 300; preferment\nwater; water; 300; preferment\nstarter; levain 100%; 30; preferment\nzakwas; ; takes\nwheat flour 750; flour; 400\nwater; water; 220\nsalt; salt; 16\ncaraway; other; 5",
    pre: { share: 0.4406, hydration: 1, seed: 0.1 },
    dough: 1271,
  },
  {
    text: "Pullman, sponge method\nFlour (sponge) 6 kg\nWater (sponge) 3.6 kg\nYeast (sponge) 120 g\nFlour (dough) 4 kg\nWater (dough) 2.2 kg\nSalt (dough) 200 g\nSugar (dough) 600 g\nShortening (dough) 400 g",
    title: "Pullman, sponge method",
    rows: "Flour; flour; 6000; preferment\nWater; water; 3600; preferment\nYeast; yeast; 120; preferment\nFlour; flour; 4000\nWater; water; 2200\nSalt; salt; 200\nSugar; sugar; 600\nShortening; fat; 400",
    pre: { kind: "sponge", share: 0.6, hydration: 0.6 },
    hydration: 0.58,
    dough: 17120,
  },
  {
    text: "TOURTE DE SEIGLE\n1) LEVAIN DE SEIGLE\nSeigle T130 : 1 000 g\nEau 40°C : 1 000 g\nChef : 100 g\n2) PÂTE FINALE\nLe levain : 2 000 g\nSeigle T130 : 1 500 g\nFarine T65 : 500 g\nEau 60°C : 1 350 g\nSel : 54 g\nLevure : 10 g\n\nApprêt 45 min à 30°C\nCuisson 1h10",
    cups: "EU",
    title: "TOURTE DE SEIGLE",
    rows: "Seigle T130; flour; 1000; preferment\nEau; water; 1000; preferment\nChef; levain 100%; 100; preferment\nlevain; ; takes\nSeigle T130; flour; 1500\nFarine T65; flour; 500\nEau; water; 1350\nSel; salt; 54\nLevure; yeast; 10",
    steps: [
      [45, 30],
      [70, null],
    ],
    pre: { kind: "levain", share: 0.3333, hydration: 1, seed: 0.1 },
    dough: 5414,
  },
  {
    text: "Pan de molde\nEsponja (2 h a 26 ºC): harina de fuerza 300 g, leche 200 g, levadura fresca 10 g\nMasa: esponja, harina de fuerza 700 g, leche 330 g, huevos 2 ud, azúcar 80 g, sal 18 g, mantequilla 100 g",
    cups: "EU",
    title: "Pan de molde",
    rows: "harina de fuerza; flour; 300; preferment\nleche; dairy; 200; preferment\nlevadura fresca; yeast; 10; preferment\nesponja; ; takes\nharina de fuerza; flour; 700\nleche; dairy; 330\nhuevos; egg; 120\nazúcar; sugar; 80\nsal; salt; 18\nmantequilla; fat; 100",
    dough: 1858,
  },
];

export const NINTH_PARTS: readonly Case[] = [
  {
    text: "FOCACCIA (g)\nStrong white, 700\nWater, 560\nOlive oil, 30 (plus 50 for the tray)\nSalt, 15\nYeast, 6\nTo finish: rosemary 10, sea salt flakes 8",
    rows: "Strong white; flour; 700\nWater; water; 560\nOlive oil; fat; 30\nOlive oil; fat; 50; dusting\nSalt; salt; 15\nYeast; yeast; 6\nrosemary; other; 10; topping\nsea salt flakes; salt; 8; topping",
    dough: 1311,
  },
  {
    text: "Bienenstich\nHefeteig: Weizenmehl 550 1,000 kg / Milch 0,450 kg / Hefe 0,060 kg / Zucker 0,120 kg / Butter 0,120 kg / Ei 0,100 kg / Salz 0,012 kg\nBelag: Butter 0,300 kg / Zucker 0,300 kg / Honig 0,100 kg / Sahne 0,150 kg / Mandeln gehobelt 0,400 kg\nFüllung: Sahne 1,500 kg / Zucker 0,150 kg",
    cups: "EU",
    title: "Bienenstich",
    rows: "Weizenmehl 550; flour; 1000\nMilch; dairy; 450\nHefe; yeast; 60\nZucker; sugar; 120\nButter; fat; 120\nEi; egg; 100\nSalz; salt; 12\nButter; fat; 300; topping\nZucker; sugar; 300; topping\nHonig; sugar; 100; topping\nSahne; dairy; 150; topping\nMandeln gehobelt; other; 400; topping\nSahne; dairy; 1500; filling\nZucker; sugar; 150; filling",
    dough: 1862,
    parts: ["topping", "filling"],
  },
  {
    text: "PAINS AU CHOCOLAT\nPâte\nFarine de gruau 1000 g\nLait 480 g\nSucre 110 g\nSel 20 g\nLevure 35 g\nBeurre 100 g\nTourage\nBeurre sec 500 g\nGarniture : chocolat 450 g\nDorure : 2 oeufs, 1 pincée de sel\n\nDétailler 30 pièces à 75 g",
    cups: "EU",
    title: "PAINS AU CHOCOLAT",
    rows: "Farine de gruau; flour; 1000\nLait; dairy; 480\nSucre; sugar; 110\nSel; salt; 20\nLevure; yeast; 35\nBeurre; fat; 100\nBeurre sec; fat; 500; roll-in\nchocolat; other; 450; filling\noeufs; egg; 120; egg wash\nsel; salt; 0.375; egg wash",
    yield: { pieces: 30, weight: 75 },
    dough: 1745,
    parts: ["roll-in", "filling", "egg wash"],
  },
  {
    text: "Jam doughnuts, makes 40 x 55g\nStrong flour 1200g\nWater 560g\nEgg 120g\nMarg 120g\nSugar 100g\nFresh yeast 60g\nMilk powder 40g\nSalt 15g\nRaspberry jam 600g, to inject\nCastor sugar 200g for rolling\nOil for frying",
    cups: "UK",
    title: "Jam doughnuts",
    rows: "Strong flour; flour; 1200\nWater; water; 560\nEgg; egg; 120\nMarg; fat; 120\nSugar; sugar; 100\nFresh yeast; yeast; 60\nMilk powder; dairy; 40\nSalt; salt; 15\nRaspberry jam; fruit; 600; filling\nCastor sugar; sugar; 200; topping",
    yield: { pieces: 40, weight: 55 },
    dough: 2215,
  },
  {
    text: "Cinnamon rolls\nFILLING (mix first): 1 stick butter, 200 g dark brown sugar, 2 Tbsp cinnamon\nDOUGH: 600 g AP flour, 300 g whole milk, 1 egg, 75 g sugar, 75 g butter, 9 g salt, 8 g IDY\nGLAZE: 150 g powdered sugar, 2 Tbsp milk",
    title: "Cinnamon rolls",
    rows: "butter; fat; 113.4; filling\ndark brown sugar; sugar; 200; filling\ncinnamon; other; 15.6; filling\nall-purpose flour; flour; 600\nwhole milk; dairy; 300\negg; egg; 50\nsugar; sugar; 75\nbutter; fat; 75\nsalt; salt; 9\ninstant yeast; yeast; 8\npowdered sugar; sugar; 150; icing\nmilk; dairy; 30.5; icing",
    dough: 1117,
    parts: ["filling", "icing"],
  },
];

export const NINTH_WEB: readonly Case[] = [
  {
    text: "Hi all, here's my weekday loaf:\n\n- 90% BF, 10% WW\n- 72% water\n- 2% salt\n- 20% starter (100% hydration)\n\nBulk 4.5h @ 78F, then shape.\nBake 20 min at 450F lid on, 20 min lid off.",
    rows: "bread flour; flour; 90%\nwhole wheat flour; flour; 10%\nwater; water; 72%\nsalt; salt; 2%\nstarter; starter 100%; 20%",
    steps: [
      [270, 25.6],
      [40, 232.2],
    ],
  },
  {
    text: "> Hi Sam,\n> as promised the tin loaf:\n> Wholemeal 2kg\n> Water 1.4 ltr\n> Salt 38g\n> Dried yeast 20g\n> Veg oil 60ml\n> Proves 50 mins then 220C for 35 mins\n> Cheers, Jo",
    cups: "UK",
    rows: "Wholemeal; flour; 2000\nWater; water; 1400\nSalt; salt; 38\nDried yeast; yeast; 20\nVeg oil; fat; 55.3",
    steps: [[85, 220]],
  },
  {
    text: "Feed 40 g starter with 200 g flour and 200 g water at noon. 5 h at 27 C.\nAt 5 pm mix 1600 g flour, 1150 g water, 36 g salt and all the levain.\nBulk 3 h at 25 C, shape 4 x 800 g.",
    rows: "starter; levain 100%; 40; preferment\nflour; flour; 200; preferment\nwater; water; 200; preferment\nflour; flour; 1600\nwater; water; 1150\nsalt; salt; 36\nlevain; ; takes",
    yield: { pieces: 4, weight: 800 },
    dough: 3226,
  },
  {
    text: "Dinner rolls\nBatch makes 8 dozen @ 1.5 oz\n5# bread flour; 2# 8 oz water; 8 oz sugar; 4 oz milk powder; 8 oz shortening; 6 oz eggs; 1.5 oz salt; 2 oz ADY",
    title: "Dinner rolls",
    rows: "bread flour; flour; 2267.96\nwater; water; 1133.98\nsugar; sugar; 226.8\nmilk powder; dairy; 113.4\nshortening; fat; 226.8\neggs; egg; 170.1\nsalt; salt; 42.52\nactive dry yeast; yeast; 56.7",
    yield: { pieces: 96, weight: 42.52 },
    dough: 4238.25,
  },
  {
    text: "White tin\n2 x 2 lb tins\n1.1 kg strong white\n680 g water\n20 g salt\n22 g fresh yeast\n20 g lard",
    cups: "UK",
    title: "White tin",
    rows: "strong white; flour; 1100\nwater; water; 680\nsalt; salt; 20\nfresh yeast; yeast; 22\nlard; fat; 20",
    yield: { pieces: 2, tins: 2 },
    dough: 1842,
  },
];
