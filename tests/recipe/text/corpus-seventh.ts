// A seventh lot, written down after the sixth was right and tried as it stood.
import type { Case } from "./corpus-support.ts";

export const SEVENTH: readonly Case[] = [
  {
    text: "BRIOCHE - all weights in grams\n\nStrong flour: 1000\nEggs: 500\nMilk: 100\nSugar: 120\nSalt: 20\nFresh yeast: 40\nButter: 500\n\nTotal: 2280",
    title: "BRIOCHE",
    rows: "Strong flour; flour; 1000\nEggs; egg; 500\nMilk; dairy; 100\nSugar; sugar; 120\nSalt; salt; 20\nFresh yeast; yeast; 40\nButter; fat; 500",
    dough: 2280,
  },
  {
    text: "Soft pretzels\nYield: 8\n\n4½ cups (22½ oz/638 g) bread flour\n1½ cups (12 oz/340 g) water, room temp\n2 Tbsp (1 oz/28 g) butter, melted\n1 Tbsp sugar\n2 tsp kosher salt\n2¼ tsp (1 packet/7 g) active dry yeast\n\nTo finish:\n¼ cup baking soda\ncoarse salt, for sprinkling",
    title: "Soft pretzels",
    rows: "bread flour; flour; 638\nwater; water; 340\nbutter; fat; 28\nsugar; sugar; 12.6\nkosher salt; salt; -\nactive dry yeast; yeast; 7\nbaking soda; other; 55.2; topping",
    yield: { pieces: 8 },
    asks: ["unclear amount"],
  },
  {
    text: "Overall formula (100%)\nBread flour 85% 4250 g\nRye flour 15% 750 g\nWater 70% 3500 g\nSalt 2% 100 g\n\nLevain (18% of flour)\nBread flour 450 g\nRye flour 450 g\nWater 900 g\nStarter 90 g\n\nFinal dough\nBread flour 3777.5 g\nRye flour 277.5 g\nWater 2555 g\nSalt 100 g\nLevain 1890 g",
    rows: "Bread flour; flour; 4250; overall\nRye flour; flour; 750; overall\nWater; water; 3500; overall\nSalt; salt; 100; overall\nBread flour; flour; 450; preferment\nRye flour; flour; 450; preferment\nWater; water; 900; preferment\nStarter; levain 100%; 90; preferment\nBread flour; flour; 3777.5\nRye flour; flour; 277.5\nWater; water; 2555\nSalt; salt; 100\nLevain; ; takes",
    // 945 of 5 000 g of flour, the starter's 45 g counted in
    pre: { kind: "levain", share: 0.189, hydration: 1, seed: 0.1 },
    hydration: 0.7,
    dough: 8600,
  },
  {
    text: "Ciabatta rolls;;;\n;%;kg;\nFarine T65;100;10,00;\nEau;78;7,80;\nSel;2,2;0,22;\nLevure;0,8;0,08;\nHuile d'olive;3;0,30;\nTotal;184;18,40;",
    title: "Ciabatta rolls",
    rows: "Farine T65; flour; 10000\nEau; water; 7800\nSel; salt; 220\nLevure; yeast; 80\nHuile d'olive; fat; 300",
    dough: 18400,
  },
  {
    text: "Garlic naan (makes 10 x 110 g)\nPlain flour 600g\nYogurt 150g\nWater 240g (lukewarm)\nGhee 40g\nSugar 15g\nSalt 12g\nInst. yeast 6g\nBaking powder 5g\n\nGarlic butter:\n100g butter\n4 cloves garlic\nhandful coriander",
    title: "Garlic naan",
    rows: "Plain flour; flour; 600\nYogurt; dairy; 150\nWater; water; 240\nGhee; fat; 40\nSugar; sugar; 15\nSalt; salt; 12\nInstant yeast; yeast; 6\nBaking powder; other; 5\nbutter; fat; 100; part\ngarlic; other; -; part\ncoriander; other; -; part",
    yield: { pieces: 10, weight: 110 },
    dough: 1068,
    // 1100 g for 1068
    asks: ["part of the dough", "unclear amount", "yield differs"],
  },
  {
    text: "Multigrain tin 600g\n\nA. Soaker (overnight)\nMixed seeds ......... 1.5 kg\nOats ................ 0.5 kg\nWater ............... 2.0 kg\n\nB. Dough\nFlour ............... 8.0 kg\nWholemeal ........... 2.0 kg\nWater ............... 6.2 kg\nSalt ................ 0.2 kg\nYeast ............... 0.25 kg\nSoaker (A) .......... all",
    title: "Multigrain tin 600g",
    rows: "Mixed seeds; grain; 1500; soaker\nOats; grain; 500; soaker\nWater; water; 2000; soaker\nFlour; flour; 8000\nWholemeal; flour; 2000\nWater; water; 6200\nSalt; salt; 200\nYeast; yeast; 250\nSoaker; ; takes",
    dough: 20650,
  },
  {
    text: "Hamburger buns\n\n1 kg flour  (100%)\n550 g water  (55%)\n100 g egg  (10%)\n100 g butter (10%)\n80 g sugar (8%)\n20 g salt (2%)\n12 g dry yeast (1.2%)\n\n1. Mix 8 minutes on speed 2, dough 26°C.\n2. Rest 60 minutes.\n3. Divide 85 g, round, flatten.\n4. Proof 75 minutes at 35°C.\n5. Bake at 190°C for 14 minutes.",
    title: "Hamburger buns",
    rows: "flour; flour; 1000\nwater; water; 550\negg; egg; 100\nbutter; fat; 100\nsugar; sugar; 80\nsalt; salt; 20\ndry yeast; yeast; 12",
    yield: { weight: 85 },
    dough: 1862,
    hydration: 0.55,
  },
  {
    text: "Focaccia genovese\nPer 1 teglia 60x40\nFarina 0: 700 g\nAcqua: 455 g\nOlio EVO: 42 g\nSale: 14 g\nMalto: 7 g\nLievito di birra: 14 g\n\nSalamoia: 150 g acqua, 10 g sale, 60 g olio",
    title: "Focaccia genovese",
    rows: "Farina 0; flour; 700\nAcqua; water; 455\nOlio EVO; fat; 42\nSale; salt; 14\nMalto; ; 7\nLievito di birra; yeast; 14\nacqua; water; 150; part\nsale; salt; 10; part\nolio; fat; 60; part",
    asks: ["part of the dough", "which type"],
  },
  {
    text: "Pumpernickel\nstage 1: scald\n1000 g rye chops\n1000 g water @ 95C\n\nstage 2: sour\n800 g rye meal\n800 g water\n80 g starter\n\nstage 3: dough\nscald from stage 1\nsour from stage 2\n1200 g rye meal\n300 g water\n60 g salt\n90 g dark syrup\n\nBake 16 hrs at 110C in lidded pans",
    title: "Pumpernickel",
    rows: "rye chops; grain; 1000; soaker\nwater; water; 1000; soaker\nrye meal; flour; 800; preferment\nwater; water; 800; preferment\nstarter; levain 100%; 80; preferment\nscald; ; takes\nsour; ; takes\nrye meal; flour; 1200\nwater; water; 300\nsalt; salt; 60\ndark syrup; sugar; 90",
    dough: 5330,
  },
  {
    text: "12 bagles\n\nstrong flower 750g\nwarm watter 430g\nmalt syrup 20g\nsalt 15g\nyeast 9g",
    rows: "strong flower; ; 750\nwarm watter; ; 430\nmalt syrup; sugar; 20\nsalt; salt; 15\nyeast; yeast; 9",
    asks: ["misspelt", "which type"],
  },
  {
    text: "Recipe no. 14 – Sultana scones\nQty: 36   Tray: 3 x 12\n\n2 kg SR flour\n400 g marg\n300 g castor sugar\n450 g sultanas\n4 eggs\n900 ml milk (approx)\n\nRub in. Add wet. Cut 6 cm. 220C 12 mins",
    cups: "UK",
    rows: "SR flour; flour; 2000\nmarg; fat; 400\ncastor sugar; sugar; 300\nsultanas; fruit; 450\neggs; egg; 240\nmilk; dairy; 928",
    yield: { pieces: 36 },
  },
  {
    text: "PAIN DE MIE\n2000 | g | T55\n1240 | g | water\n 100 | g | butter\n  60 | g | sugar\n  40 | g | salt\n  60 | g | fresh yeast\n  40 | g | milk powder",
    title: "PAIN DE MIE",
    rows: "T55; flour; 2000\nwater; water; 1240\nbutter; fat; 100\nsugar; sugar; 60\nsalt; salt; 40\nfresh yeast; yeast; 60\nmilk powder; dairy; 40",
    dough: 3540,
  },
  {
    text: "Cornbread (adapted)\nServes 9\n1 ¼ cup AP flour, plus more for the pan\n3/4 c. yellow cornmeal\n¼ c sugar, divided\n2 t baking powder\n½ t salt\n1 c. whole milk\n1/4 c. vegetable oil\n1 lg. egg\nGrease 8x8 pan. 400 deg F 20-25 min.",
    title: "Cornbread (adapted)",
    rows: "all-purpose flour; flour; 156.25\nyellow cornmeal; grain; 117.75\nsugar; sugar; 50\nbaking powder; other; 9.2\nsalt; salt; 3\nwhole milk; dairy; 244\nvegetable oil; fat; 54.5\negg; egg; 50",
    steps: [[22.5, 204.4]],
  },
];
