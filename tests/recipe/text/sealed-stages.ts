// Staged formulas that were written down before their writer had seen the reader, and not changed since but where a comment says so.
import type { Case } from "./corpus-support.ts";

export const SEALED_STAGES: readonly Case[] = [
  {
    text: "Baguette de tradition\n\nPOOLISH – evening before, 13 hours at 20 °C\nT65 flour 500 g\nWater 500 g\nFresh yeast 1 g\n\nPÂTE\nT65 flour 1000 g\nWater 505 g\nSalt 27 g\nFresh yeast 8 g\nPoolish 1001 g",
    title: "Baguette de tradition",
    rows: "T65 flour; flour; 500; preferment\nWater; water; 500; preferment\nFresh yeast; yeast; 1; preferment\nT65 flour; flour; 1000\nWater; water; 505\nSalt; salt; 27\nFresh yeast; yeast; 8\nPoolish; ; takes",
    // 1005 of 1500
    pre: { kind: "poolish", share: 0.3333, hydration: 1 },
    hydration: 0.67,
    dough: 2541,
  },
  {
    text: "Stage 1: Rye sour\n- 400 g rye flour\n- 320 g water\n- 40 g ripe sour (80%)\n\nStage 2: Dough\n- all the sour except 40 g for next time\n- 300 g rye flour\n- 300 g bread flour\n- 400 g water\n- 18 g salt",
    rows: "rye flour; flour; 400; preferment\nwater; water; 320; preferment\nripe sour; sour 80%; 40; preferment\nsour; ; takes\nrye flour; flour; 300\nbread flour; flour; 300\nwater; water; 400\nsalt; salt; 18",
    // 720 of 760 g go in: 400 of flour and 320 of water; with 600 and 400: 720 of 1000
    pre: { share: 0.4, hydration: 0.8, seed: 0.1 },
    hydration: 0.72,
    dough: 1738,
  },
  {
    text: "Ferry sourdough\nLevain (build 8-10 hours before)\n25 g starter, 100% hydration\n100 g bread flour\n25 g whole wheat flour\n125 g water\n\nMain dough\n800 g bread flour\n75 g whole wheat flour\n625 g water\n250 g levain\n20 g salt",
    title: "Ferry sourdough",
    rows: "starter; starter 100%; 25; preferment\nbread flour; flour; 100; preferment\nwhole wheat flour; flour; 25; preferment\nwater; water; 125; preferment\nbread flour; flour; 800\nwhole wheat flour; flour; 75\nwater; water; 625\nlevain; ; takes\nsalt; salt; 20",
    // 250 of 275 g: 125 of flour and as much water; 750 of 1000
    pre: { share: 0.125, hydration: 1, seed: 0.2 },
    hydration: 0.75,
    dough: 1770,
  },
  {
    text: "SPONGE (45 min)\n2 kg strong flour\n1.2 kg water\n60 g fresh yeast\nDOUGH\nsponge\n2 kg strong flour\n1.1 kg milk\n400 g sugar\n400 g butter\n60 g salt\n4 eggs",
    rows: "strong flour; flour; 2000; preferment\nwater; water; 1200; preferment\nfresh yeast; yeast; 60; preferment\nsponge; ; takes\nstrong flour; flour; 2000\nmilk; dairy; 1100\nsugar; sugar; 400\nbutter; fat; 400\nsalt; salt; 60\neggs; egg; 200",
    pre: { kind: "sponge", share: 0.5, hydration: 0.6 },
    dough: 7420,
  },
  {
    text: "Overall:\nBread flour 4000 g\nWater 2720 g\nSalt 80 g\nYeast 12 g\n\nPâte fermentée:\nBread flour 1000 g\nWater 650 g\nSalt 20 g\nYeast 5 g\n\nFinal:\nBread flour 3000 g\nWater 2070 g\nSalt 60 g\nYeast 7 g\nPâte fermentée 1675 g",
    rows: "Bread flour; flour; 4000; overall\nWater; water; 2720; overall\nSalt; salt; 80; overall\nYeast; yeast; 12; overall\nBread flour; flour; 1000; preferment\nWater; water; 650; preferment\nSalt; salt; 20; preferment\nYeast; yeast; 5; preferment\nBread flour; flour; 3000\nWater; water; 2070\nSalt; salt; 60\nYeast; yeast; 7\nPâte fermentée; ; takes",
    pre: { share: 0.25, hydration: 0.65 },
    hydration: 0.68,
    dough: 6812,
  },
  {
    text: "Three-seed tin\n\nSOAKER, overnight\n60 g flaxseed\n60 g sunflower seeds\n60 g sesame seeds\n180 g water\n\nPREFERMENT (biga)\n300 g bread flour\n165 g water\n0.3 g instant yeast\n\nFINAL DOUGH\n700 g bread flour\n450 g water\n22 g salt\n8 g instant yeast\n465.3 g biga\n360 g soaker",
    title: "Three-seed tin",
    rows: "flaxseed; grain; 60; soaker\nsunflower seeds; grain; 60; soaker\nsesame seeds; grain; 60; soaker\nwater; water; 180; soaker\nbread flour; flour; 300; preferment\nwater; water; 165; preferment\ninstant yeast; yeast; 0.3; preferment\nbread flour; flour; 700\nwater; water; 450\nsalt; salt; 22\ninstant yeast; yeast; 8\nbiga; ; takes\nsoaker; ; takes",
    pre: { kind: "biga", share: 0.3, hydration: 0.55 },
    // 180 + 165 + 450
    hydration: 0.795,
    dough: 2005.3,
  },
  {
    text: "Poolish:  flour 100%  water 100%  yeast 0.1%\nFinal dough:\nflour 100%\nwater 55%\nsalt 2.6%\nyeast 0.6%\npoolish 60%",
    rows: "flour; flour; 100%; preferment\nwater; water; 100%; preferment\nyeast; yeast; 0.1%; preferment\nflour; flour; 100%\nwater; water; 55%\nsalt; salt; 2.6%\nyeast; yeast; 0.6%\npoolish; ; takes",
    // 60 of poolish in parts of 200.1 are 29.985 of flour and of water: 29.985 of 129.985, 84.985 of it
    pre: { kind: "poolish", share: 0.2307, hydration: 1 },
    hydration: 0.6538,
  },
  {
    text: "PANETTONE-STYLE BUN\nFirst dough (12 hrs, 26C)\nFlour 1000 g\nWater 450 g\nYolks 200 g\nSugar 250 g\nButter 300 g\nStiff starter (50%) 300 g\nSecond dough\nFirst dough, all\nFlour 250 g\nYolks 150 g\nSugar 200 g\nButter 250 g\nSalt 14 g\nRaisins 500 g",
    title: "PANETTONE-STYLE BUN",
    rows: "Flour; flour; 1000; preferment\nWater; water; 450; preferment\nYolks; egg; 200; preferment\nSugar; sugar; 250; preferment\nButter; fat; 300; preferment\nStiff starter; starter 50%; 300; preferment\nFirst dough; ; takes\nFlour; flour; 250\nYolks; egg; 150\nSugar; sugar; 200\nButter; fat; 250\nSalt; salt; 14\nRaisins; fruit; 500",
    dough: 3864,
    // 300 of starter are 200 and 100: 550 of 1450
    hydration: 0.3793,
  },
  {
    text: "Milk bread with tangzhong\nTangzhong\n30 g bread flour\n150 g milk\nDough\n470 g bread flour\n120 g milk\n60 g sugar\n1 egg\n8 g salt\n7 g instant yeast\n50 g butter\nTangzhong from above",
    title: "Milk bread with tangzhong",
    rows: "bread flour; flour; 30; soaker\nmilk; dairy; 150; soaker\nbread flour; flour; 470\nmilk; dairy; 120\nsugar; sugar; 60\negg; egg; 50\nsalt; salt; 8\ninstant yeast; yeast; 7\nbutter; fat; 50\nTangzhong; ; takes",
    dough: 945,
  },
  {
    text: "Levain: 50 g rye flour, 50 g water, 5 g starter (100%)\nDough: 450 g bread flour, 320 g water, 10 g salt, all the levain",
    rows: "rye flour; flour; 50; preferment\nwater; water; 50; preferment\nstarter; starter 100%; 5; preferment\nbread flour; flour; 450\nwater; water; 320\nsalt; salt; 10\nlevain; ; takes",
    // 52.5 of 502.5 g of flour, 372.5 of water
    pre: { share: 0.1045, hydration: 1, seed: 0.1 },
    hydration: 0.7413,
    dough: 885,
  },
  {
    text: "Country loaf\nPreferment 18 h\nFlour 20%\nWater 13%\nSalt 0.4%\nYeast 0.05%\nFinal\nFlour 80%\nWater 55%\nSalt 1.6%\nYeast 0.6%",
    title: "Country loaf",
    rows: "Flour; flour; 20%; preferment\nWater; water; 13%; preferment\nSalt; salt; 0.4%; preferment\nYeast; yeast; 0.05%; preferment\nFlour; flour; 80%\nWater; water; 55%\nSalt; salt; 1.6%\nYeast; yeast; 0.6%",
    pre: { share: 0.2, hydration: 0.65 },
    hydration: 0.68,
    // Whether the preferment is in the dough's 80 and 55 is told by the 100 of flour in both.
  },
  {
    text: "[Biga]\nflour 800 g\nwater 400 g\nyeast 4 g\n[Dough]\nbiga 1.2 kg\nflour 800 g\nwater 720 g\nsalt 32 g\n",
    rows: "flour; flour; 800; preferment\nwater; water; 400; preferment\nyeast; yeast; 4; preferment\nbiga; ; takes\nflour; flour; 800\nwater; water; 720\nsalt; salt; 32",
    // 1.2 kg is the rounded weight of 1204 g
    pre: { kind: "biga", share: 0.5, hydration: 0.5 },
    hydration: 0.7,
  },
];
