// Household recipes that were written down before their writer had seen the reader, and not changed since but where a comment says so.
import type { Case } from "./corpus-support.ts";

export const SEALED_HOUSEHOLD: readonly Case[] = [
  {
    text: "Granny's cob\n\nStrong white bread flour, 500g\nFast-action yeast, 1 x 7g sachet\nSalt, 1½ level tsp\nLukewarm water, 300ml\nOlive oil, 3 tbsp",
    cups: "UK",
    title: "Granny's cob",
    rows: "Strong white bread flour; flour; 500\nFast-action yeast; yeast; 7\nSalt; salt; 1.5 tsp 02047\nLukewarm water; water; 300\nOlive oil; fat; 3 tablespoon 04053",
  },
  {
    text: "CARDAMOM KNOTS (makes 16)\n3 3/4 cups all-purpose flour, plus extra for dusting\n2¼ tsp instant yeast\n⅓ cup granulated sugar\n1 teaspoon ground cardamom\n¾ teaspoon fine salt\n1 cup + 2 Tbsp whole milk, lukewarm\n6 Tbsp unsalted butter, cubed",
    title: "CARDAMOM KNOTS",
    rows: "all-purpose flour; flour; 3.75 cup 20081\ninstant yeast; yeast; 7\ngranulated sugar; sugar; 66.67\nground cardamom; other; 2\nfine salt; salt; 0.75 tsp 02047\nwhole milk; dairy; 1.125 cup 01211\nunsalted butter; fat; 6 tbsp 01145",
    yield: { pieces: 16 },
  },
  {
    text: "Lighthouse scones\nMakes: 9 scones\n\n3 cups self-raising flour\n1/4 cup caster sugar\n80g butter, chilled\n1 cup buttermilk\n1 egg",
    cups: "AU",
    title: "Lighthouse scones",
    // A metric cup is 250 ml: 3 × 125 × 250 ÷ 236.588 = 396.3; ¼ × 200 × 1.0567 = 52.8; 245 × 1.0567 = 258.9. Put right after the first run: the size of an egg is that of its country.
    rows: "self-raising flour; flour; 396.3\ncaster sugar; sugar; 52.8\nbutter; fat; 80\nbuttermilk; dairy; 258.9\negg; egg; 48",
    yield: { pieces: 9 },
  },
  {
    text: "0,5 kg wheat flour\n0,31 l water\n10 g salt\n1/2 cube fresh yeast\n1 tbsp sunflower oil",
    cups: "EU",
    // A cube of 42 g; the tablespoon of 15 ml: 13.6 × 15 ÷ 14.787 = 13.8.
    rows: "wheat flour; flour; 500\nwater; water; 310\nsalt; salt; 10\nfresh yeast; yeast; 21\nsunflower oil; fat; 13.8",
  },
  {
    text: "Oatmeal Sandwich Bread\n\n1 cup (81 g) rolled oats\n1 1/3 cups boiling water\n3 cups bread flour\n2 Tablespoons honey\n1 Tablespoon molasses\n2 tsp. salt\n1 pkg. active dry yeast\n2 T. butter",
    title: "Oatmeal Sandwich Bread",
    // 1⅓ × 236.588 of water; a package of dry yeast is 7 g.
    rows: "rolled oats; grain; 81\nboiling water; water; 315.5\nbread flour; flour; 3 cup 20083\nhoney; sugar; 2 tbsp 19296\nmolasses; sugar; 20\nsalt; salt; 2 tsp 02047\nactive dry yeast; yeast; 7\nbutter; fat; 2 tbsp 01145",
  },
  {
    text: "Brown soda farls\n225g/8oz wholemeal flour\n225g/8oz plain flour\n1 tsp salt\n1½ tsp bicarbonate of soda\n350ml/12fl oz buttermilk\nMakes 4 farls",
    cups: "UK",
    title: "Brown soda farls",
    // 350 ml × 245 ÷ 236.588
    rows: "wholemeal flour; flour; 225\nplain flour; flour; 225\nsalt; salt; 1 tsp 02047\nbicarbonate of soda; other; 1.5 tsp 18372\nbuttermilk; dairy; 362.4",
    yield: { pieces: 4 },
  },
  {
    text: "Chocolate chip cookies, 3 dozen\n* 2 1/4 cups all-purpose flour\n* 1 tsp baking soda\n* 1 tsp salt\n* 1 cup (2 sticks) butter, softened\n* 3/4 cup granulated sugar\n* 3/4 cup packed brown sugar\n* 2 large eggs\n* 1 tsp vanilla extract\n* 1 cup chopped walnuts (optional)",
    title: "Chocolate chip cookies",
    rows: "all-purpose flour; flour; 2.25 cup 20081\nbaking soda; other; 4.6\nsalt; salt; 6\nbutter; fat; 227\ngranulated sugar; sugar; 150\nbrown sugar; sugar; 165\neggs; egg; 100\nvanilla extract; other; 4.2\nchopped walnuts; other; 117",
    yield: { pieces: 36 },
  },
  {
    text: "Saturday pizza base\n• 00 flour – 600 g\n• cold water – 390 g\n• sea salt – 15 g\n• dried yeast – a pinch\n• extra virgin olive oil – 12 g",
    title: "Saturday pizza base",
    rows: "00 flour; flour; 600\ncold water; water; 390\nsea salt; salt; 15\ndried yeast; yeast; 0.19375\nextra virgin olive oil; fat; 12",
    // Put right after the first run: a pinch is a sixteenth of a teaspoon, as everywhere.
  },
  {
    text: "For 2 loaves\nwholemeal spelt flour 700 g\nstrong white flour 300 g\ntepid water 7 dl\nsalt 4 tsp\ndry yeast 2 tsp\nliquid honey 2 tbsp",
    cups: "EU",
    // teaspoons of 5 ml: 4 × 6 × 5 ÷ 4.929 = 24.3; 2 × 3.11; 2 × 21 × 15 ÷ 14.787 = 42.6
    rows: "wholemeal spelt flour; flour; 700\nstrong white flour; flour; 300\ntepid water; water; 700\nsalt; salt; 24.3\ndry yeast; yeast; 6.3\nliquid honey; sugar; 42.6",
    yield: { pieces: 2 },
  },
  {
    text: "Muffins, plain\n250 g plain flour\n2½ tsp baking powder\n110 g caster sugar\n2 medium eggs\n90 ml vegetable oil\n180 ml milk\nsalt, to taste",
    cups: "UK",
    title: "Muffins, plain",
    // eggs of 51 g, the medium ones of the country (44 g before the first run); 90 ml of 218 g in 236.588; 180 ml of 244 g in 236.588
    rows: "plain flour; flour; 250\nbaking powder; other; 2.5 tsp 18369\ncaster sugar; sugar; 110\neggs; egg; 102\nvegetable oil; fat; 82.9\nmilk; dairy; 185.6\nsalt; salt; -",
    asks: ["no amount"],
  },
  {
    text: "Aunt's rye\n1 lb. medium rye flour\n2 lbs. bread flour\n1 qt. water\n1 1/2 oz. salt\n1 oz. caraway seeds\n1 1/4 oz. compressed yeast",
    title: "Aunt's rye",
    rows: "medium rye flour; flour; 453.59\nbread flour; flour; 907.18\nwater; water; 946.4\nsalt; salt; 42.52\ncaraway seeds; other; 28.35\ncompressed yeast; yeast; 35.44",
  },
  {
    text: "Milk loaf\n\nflour ……… 1 kg\nmilk ……… 6 dl\nsugar ……… 60 g\nbutter ……… 80 g\neggs ……… 2 ea.\nsalt ……… 18 g\nfresh yeast ……… 40 g",
    cups: "EU",
    title: "Milk loaf",
    // 600 ml × 244 ÷ 236.588; eggs of 60 g (50 g before the first run).
    rows: "flour; flour; 1000\nmilk; dairy; 618.8\nsugar; sugar; 60\nbutter; fat; 80\neggs; egg; 120\nsalt; salt; 18\nfresh yeast; yeast; 40",
  },
  {
    text: "Walnut batard\n450 g bread flour\n50 g rye flour\n345 g water\n10 g salt\n4 g instnat yeast\n100 g walnuts",
    title: "Walnut batard",
    rows: "bread flour; flour; 450\nrye flour; flour; 50\nwater; water; 345\nsalt; salt; 10\ninstnat yeast; yeast; 4\nwalnuts; other; 100",
    asks: ["misspelt"],
  },
  {
    text: "Pitas (serves 8)\n4 c. flour\n1 1/2 c. warm water\n2 t. salt\n2 t. sugar\n1 T. oil\n2 t. instant yeast",
    title: "Pitas",
    rows: "flour; flour; 500\nwarm water; water; 354.9\nsalt; salt; 12\nsugar; sugar; 8.4\noil; fat; 13.6\ninstant yeast; yeast; 6.2",
    // Put right after the first run: eight guests are not eight pieces.
  },
];
