// Staged formulas: preferments, soakers, overall formulas with their stages, in headings of any form.
import type { Case } from "./corpus-support.ts";

export const STAGES: readonly Case[] = [
  {
    text: "Pier loaf\nPoolish (12 h at 21 C)\nBread flour 300 g\nWater 300 g\nInstant yeast 0.3 g\nFINAL DOUGH\nBread flour 700 g\nWater @ 9 C 370 g\nSalt 20 g\nInstant yeast 3 g\nPoolish - all\nBulk 2 h",
    title: "Pier loaf",
    rows: "Bread flour; flour; 300; preferment\nWater; water; 300; preferment\nInstant yeast; yeast; 0.3; preferment\nBread flour; flour; 700\nWater; water; 370\nSalt; salt; 20\nInstant yeast; yeast; 3\nPoolish; ; takes",
    pre: { kind: "poolish", share: 0.3, hydration: 1 },
    hydration: 0.67,
    dough: 1693.3,
    steps: [[120, null]],
  },
  {
    // King Arthur professional formulas, baguette with poolish: 10 / 6.7 / 0.2 / 0.11 kg in all
    text: "Overall formula\nFlour 10 kg 100%\nWater 6.7 kg 67%\nSalt 0.2 kg 2%\nFresh yeast 0.11 kg 1.1%\nTotal 17.01 kg 170.1%\n\nPoolish\nFlour 3.3 kg\nWater 3.3 kg\nFresh yeast 0.007 kg\nTotal 6.607 kg\n\nFinal dough\nFlour 6.7 kg\nWater 3.4 kg\nSalt 0.2 kg\nFresh yeast 0.103 kg\nPoolish 6.607 kg\nTotal 17.01 kg",
    rows: "Flour; flour; 10000; overall\nWater; water; 6700; overall\nSalt; salt; 200; overall\nFresh yeast; yeast; 110; overall\nFlour; flour; 3300; preferment\nWater; water; 3300; preferment\nFresh yeast; yeast; 7; preferment\nFlour; flour; 6700\nWater; water; 3400\nSalt; salt; 200\nFresh yeast; yeast; 103\nPoolish; ; takes",
    pre: { kind: "poolish", share: 0.33, hydration: 1 },
    hydration: 0.67,
    dough: 17010,
  },
  {
    // King Arthur professional formulas, ciabatta with a stiff biga: 10 / 7.6 / 0.2 / 0.12 kg in all
    text: "Ciabatta\nBIGA:\nFlour 3 kg\nWater 1.8 kg\nYeast 0.003 kg\n\nFINAL:\nFlour 7 kg\nWater 5.8 kg\nSalt 0.2 kg\nYeast 0.117 kg\nBiga 4.803 kg",
    title: "Ciabatta",
    rows: "Flour; flour; 3000; preferment\nWater; water; 1800; preferment\nYeast; yeast; 3; preferment\nFlour; flour; 7000\nWater; water; 5800\nSalt; salt; 200\nYeast; yeast; 117\nBiga; ; takes",
    pre: { kind: "biga", share: 0.3, hydration: 0.6 },
    hydration: 0.76,
    dough: 17920,
  },
  {
    text: "LEVAIN BUILD\n80 g bread flour\n80 g water\n16 g ripe starter\n\nDOUGH\n920 g bread flour\n620 g water\n20 g salt\n160 g levain",
    rows: "bread flour; flour; 80; preferment\nwater; water; 80; preferment\nripe starter; levain 100%; 16; preferment\nbread flour; flour; 920\nwater; water; 620\nsalt; salt; 20\nlevain; ; takes",
    // 160 of 176 g: 80 g of flour in 1000
    pre: { kind: "levain", share: 0.08, hydration: 1, seed: 0.2 },
    hydration: 0.7,
    dough: 1720,
  },
  {
    text: "Harbour sourdough\n\nFor the levain:\n• 50 g whole wheat flour\n• 50 g water\n• 10 g starter (100% hydration)\n\nFor the dough:\n• 450 g bread flour\n• 330 g water\n• 10 g salt\n• all of the levain",
    title: "Harbour sourdough",
    rows: "whole wheat flour; flour; 50; preferment\nwater; water; 50; preferment\nstarter; starter 100%; 10; preferment\nbread flour; flour; 450\nwater; water; 330\nsalt; salt; 10\nlevain; ; takes",
    // 55 of 505 g of flour
    pre: { share: 0.1089, hydration: 1 },
    hydration: 0.7624,
  },
  {
    text: "1) Sponge\nstrong flour 500 g\nwater 500 g\nfresh yeast 10 g\n2) Dough\nstrong flour 1500 g\nwater 700 g\nbutter 60 g\nsalt 40 g\nfresh yeast 20 g\nsponge from above",
    rows: "strong flour; flour; 500; preferment\nwater; water; 500; preferment\nfresh yeast; yeast; 10; preferment\nstrong flour; flour; 1500\nwater; water; 700\nbutter; fat; 60\nsalt; salt; 40\nfresh yeast; yeast; 20\nsponge; ; takes",
    pre: { kind: "sponge", share: 0.25, hydration: 1 },
    hydration: 0.6,
  },
  {
    text: "Seeded rye\n## Soaker\n100 g sunflower seeds\n50 g linseed\n150 g water\n## Final mix\n600 g bread flour\n400 g medium rye flour\n700 g water\n22 g salt\n15 g fresh yeast\nSoaker (all)",
    title: "Seeded rye",
    rows: "sunflower seeds; grain; 100; soaker\nlinseed; grain; 50; soaker\nwater; water; 150; soaker\nbread flour; flour; 600\nmedium rye flour; flour; 400\nwater; water; 700\nsalt; salt; 22\nfresh yeast; yeast; 15\nSoaker; ; takes",
    dough: 2037,
    hydration: 0.85,
  },
  {
    text: "Milk loaf with tangzhong\nTangzhong:\n25 g bread flour\n125 g milk\nDough:\n475 g bread flour\n150 g milk\n60 g sugar\n9 g salt\n7 g instant yeast\n50 g butter\nall the tangzhong",
    title: "Milk loaf with tangzhong",
    rows: "bread flour; flour; 25; soaker\nmilk; dairy; 125; soaker\nbread flour; flour; 475\nmilk; dairy; 150\nsugar; sugar; 60\nsalt; salt; 9\ninstant yeast; yeast; 7\nbutter; fat; 50\ntangzhong; ; takes",
    dough: 901,
  },
  {
    text: "Poolish:\nFlour 500 g\nWater 500 g\nYeast 1 g\nDough:\nFlour 1000 g\nWater 600 g\nSalt 30 g\nYeast 10 g",
    rows: "Flour; flour; 500; preferment\nWater; water; 500; preferment\nYeast; yeast; 1; preferment\nFlour; flour; 1000\nWater; water; 600\nSalt; salt; 30\nYeast; yeast; 10",
    asks: ["on top or included"],
  },
  {
    text: "Biga\nFlour 100%\nWater 55%\nYeast 0.3%\nFinal dough\nFlour 100%\nWater 75%\nBiga 60%\nSalt 2.6%\nYeast 0.5%",
    rows: "Flour; flour; 100%; preferment\nWater; water; 55%; preferment\nYeast; yeast; 0.3%; preferment\nFlour; flour; 100%\nWater; water; 75%\nBiga; ; takes\nSalt; salt; 2.6%\nYeast; yeast; 0.5%",
    // 60 of biga hold 60 ÷ 1.553 = 38.635 of flour and 21.249 of water
    pre: { kind: "biga", share: 0.2787, hydration: 0.55 },
    hydration: 0.6943,
  },
  {
    text: "Poolish\nFlour 30%\nWater 30%\nYeast 0.05%\nDough\nFlour 70%\nWater 36%\nSalt 2%\nYeast 0.4%",
    rows: "Flour; flour; 30%; preferment\nWater; water; 30%; preferment\nYeast; yeast; 0.05%; preferment\nFlour; flour; 70%\nWater; water; 36%\nSalt; salt; 2%\nYeast; yeast; 0.4%",
    pre: { share: 0.3, hydration: 1 },
    hydration: 0.66,
  },
  {
    text: "Stage 1: Rye sour (16 hours)\n300 g rye flour\n240 g water\n30 g rye starter\nStage 2: Final dough\n200 g rye flour\n500 g bread flour\n420 g water\n18 g salt\n540 g rye sour",
    rows: "rye flour; flour; 300; preferment\nwater; water; 240; preferment\nrye starter; levain 80%; 30; preferment\nrye flour; flour; 200\nbread flour; flour; 500\nwater; water; 420\nsalt; salt; 18\nrye sour; ; takes",
    // 540 of 570 g: (300 + 16.667) × 540/570 = 300 of 1000
    pre: { share: 0.3, hydration: 0.8, seed: 0.1 },
    hydration: 0.66,
  },
  {
    text: "Preferment (old dough)\n200 g flour\n130 g water\n4 g salt\n2 g yeast\nDough\n800 g flour\n530 g water\n16 g salt\n10 g yeast\nOld dough 336 g",
    rows: "flour; flour; 200; preferment\nwater; water; 130; preferment\nsalt; salt; 4; preferment\nyeast; yeast; 2; preferment\nflour; flour; 800\nwater; water; 530\nsalt; salt; 16\nyeast; yeast; 10\nOld dough; ; takes",
    pre: { share: 0.2, hydration: 0.65 },
    hydration: 0.66,
  },
  {
    text: "Final dough:\n800 g flour\n500 g water\n20 g salt\n400 g poolish\n\nPoolish:\n200 g flour\n200 g water\n0.2 g yeast",
    rows: "flour; flour; 800\nwater; water; 500\nsalt; salt; 20\npoolish; ; takes\nflour; flour; 200; preferment\nwater; water; 200; preferment\nyeast; yeast; 0.2; preferment",
    pre: { kind: "poolish", share: 0.2, hydration: 1 },
    hydration: 0.7,
  },
  {
    text: "Poolish\n400 g flour\n400 g water\n1 g yeast\nDough\n600 g flour\n280 g water\n20 g salt\n5 g yeast\n900 g poolish",
    rows: "flour; flour; 400; preferment\nwater; water; 400; preferment\nyeast; yeast; 1; preferment\nflour; flour; 600\nwater; water; 280\nsalt; salt; 20\nyeast; yeast; 5\npoolish; ; takes",
    asks: ["more than was made"],
  },
  {
    text: "Poolish: 300 g flour, 300 g water, 0.5 g yeast\nDough: 700 g flour, 360 g water, 20 g salt, 4 g yeast, all the poolish",
    rows: "flour; flour; 300; preferment\nwater; water; 300; preferment\nyeast; yeast; 0.5; preferment\nflour; flour; 700\nwater; water; 360\nsalt; salt; 20\nyeast; yeast; 4\npoolish; ; takes",
    pre: { share: 0.3, hydration: 1 },
    hydration: 0.66,
  },
  {
    text: "Total formula\nFlour 100%\nWater 70%\nSalt 2%\nYeast 0.5%\n\nPoolish (30% of the flour)\nFlour 100%\nWater 100%\nYeast 0.1%",
    rows: "Flour; flour; 100%; overall\nWater; water; 70%; overall\nSalt; salt; 2%; overall\nYeast; yeast; 0.5%; overall\nFlour; flour; 100%; preferment\nWater; water; 100%; preferment\nYeast; yeast; 0.1%; preferment",
    pre: { kind: "poolish", share: 0.3, hydration: 1 },
    hydration: 0.7,
  },
  {
    text: "Overall\nFlour 1000 g\nWater 680 g\nSalt 20 g\nYeast 5 g\nBiga\nFlour 400 g\nWater 220 g\nYeast 1 g\nFinal dough\nFlour 600 g\nWater 460 g\nSalt 20 g\nYeast 4 g\nBiga 621 g",
    rows: "Flour; flour; 1000; overall\nWater; water; 680; overall\nSalt; salt; 20; overall\nYeast; yeast; 5; overall\nFlour; flour; 400; preferment\nWater; water; 220; preferment\nYeast; yeast; 1; preferment\nFlour; flour; 600\nWater; water; 460\nSalt; salt; 20\nYeast; yeast; 4\nBiga; ; takes",
    pre: { kind: "biga", share: 0.4, hydration: 0.55 },
    dough: 1705,
  },
  {
    text: "Overall formula\nFlour 1000 g\nWater 700 g\nSalt 20 g\nLevain build\nFlour 150 g\nWater 150 g\nStarter 30 g\nFinal dough\nFlour 850 g\nWater 500 g\nSalt 20 g\nLevain 300 g",
    rows: "Flour; flour; 1000; overall\nWater; water; 700; overall\nSalt; salt; 20; overall\nFlour; flour; 150; preferment\nWater; water; 150; preferment\nStarter; levain 100%; 30; preferment\nFlour; flour; 850\nWater; water; 500\nSalt; salt; 20\nLevain; ; takes",
    // 300 of 330 g leave 30 g as the next seed; water of the stages is 650, the overall says 700
    asks: ["overall and stages differ"],
    pre: { kind: "levain", share: 0.15, hydration: 1, seed: 0.2 },
  },
];
