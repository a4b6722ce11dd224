// Ten recipes of Tern Quay Bakehouse in ten ways of writing. The grams were worked out by hand from the household
// weights of USDA SR28 (g per US cup, tablespoon or teaspoon as printed there), from the legal units (lb 453.59237 g, US cup
// 236.588 mL, NIST SP 811 appendix B), and 3.1 g of dry yeast per teaspoon (7 g in 2 1/4 tsp). A metric spoon or cup
// holds its share more: 15/14.787, 5/4.929, 20/14.787, 250/236.588.

/** The line, its ingredient where the line does not name it in English, grams (a pair is a range, null a blank), the sum. */
type Line = readonly [line: string, ingredient: string, grams: number | readonly [number, number] | null, how: string];
type Recipe = { readonly title: string; readonly cups: "US" | "UK" | "EU" | "AU"; readonly lines: readonly Line[] };

export const RECIPES: readonly Recipe[] = [
  {
    title: "harbour rolls: bullets, hyphen fractions, full stops",
    cups: "US",
    lines: [
      ["• 3-1/2 cups all-purpose flour, sifted", "", 437.5, "3.5 × 125"],
      ["• 1 envelope (2-1/4 tsp.) active dry yeast", "", 7, "one sachet"],
      ["• 1-1/4 cups lukewarm milk (110°F)", "", 305, "1.25 × 244"],
      ["• 2 Tbsp. sugar", "", 25.2, "6 × 4.2"],
      ["• 1/2 stick (4 tablespoons) unsalted butter, softened", "", 56.7, "half of 4 oz"],
      ["• 1 large egg, lightly beaten", "", 50, "large, shelled"],
      ["• 1-1/2 t. salt", "", 9, "1.5 × 6"],
    ],
  },
  {
    title: "quayside fruit loaf: metric with imperial after a slash",
    cups: "UK",
    lines: [
      ["500g/1lb 2oz strong white flour", "", 500, "the first of two weights"],
      ["7g/¼oz sachet fast-action dried yeast", "", 7, "as written"],
      ["2 tsp salt", "", 12.17, "10/4.929 × 6"],
      ["75g/3oz butter, diced", "", 75, "as written"],
      ["1 medium free-range egg, beaten", "", 51, "UK medium, shelled"],
      ["150ml/5fl oz warm water", "", 150, "1 g/mL"],
      ["200g (7oz) sultanas", "", 200, "as written"],
      ["1 tbsp clear honey", "", 21.3, "15/14.787 × 21"],
    ],
  },
  {
    title: "mole loaf: a German card, names beside it",
    cups: "EU",
    lines: [
      ["500 g Weizenmehl Type 550", "", 500, "as written"],
      ["1/2 Würfel frische Hefe (21 g)", "", 21, "weight in brackets"],
      ["1 1/2 TL Salz", "salt", 9.13, "7.5/4.929 × 6"],
      ["2 EL Olivenöl", "olive oil", 27.39, "30/14.787 × 13.5"],
      ["300 ml lauwarmes Wasser", "water", 300, "1 g/mL"],
      ["1 Päckchen Trockenhefe", "instant yeast", 7, "one sachet"],
      ["1,5 kg Roggenmehl", "", 1500, "decimal comma"],
      ["1 Prise Zucker", "sugar", 0.266, "5/16 mL ÷ 4.929 × 4.2"],
    ],
  },
  {
    title: "bench card: names first, colons, dashes, dots",
    cups: "US",
    lines: [
      ["Flour: 12.5 kg", "", 12500, "as written"],
      ["Water – 8,125 kg", "", 8125, "three decimals of a kilogram"],
      ["Salt.......... 250 g", "", 250, "as written"],
      ["Fresh yeast — 187.5 g", "", 187.5, "as written"],
      ["Shortening: 1 lb 4 oz", "", 566.99, "20 × 28.3495"],
      ["Dry milk: .5 kg", "", 500, "as written"],
      ["Eggs: 24", "", 1200, "24 × 50"],
      ["Malt syrup: 1/2 cup", "", 166, "332 / 2"],
    ],
  },
  {
    title: "lightship tea cake: numbers in words",
    cups: "US",
    lines: [
      ["one and a half cups of sugar", "", 300, "1.5 × 200"],
      ["half a cup of butter", "", 113.5, "227 / 2"],
      ["three-quarters of a cup of milk", "", 183, "0.75 × 244"],
      ["two eggs", "", 100, "2 × 50"],
      ["two and a quarter cups plain flour", "", 281.25, "2.25 × 125"],
      ["a quarter teaspoon of salt", "", 1.5, "6 / 4"],
      ["a tablespoon of vanilla extract", "", 13, "as SR28"],
      ["half a dozen egg whites", "", 198, "6 × 33"],
    ],
  },
  {
    title: "winch house buns: pounds, ounces, packs",
    cups: "US",
    lines: [
      ["2 lb 14 oz bread flour", "", 1304.08, "46 × 28.3495"],
      ["1 lb, 10 oz water", "", 737.09, "26 × 28.3495"],
      ["1.5 oz. salt", "", 42.52, "1.5 × 28.3495"],
      ["1 14-oz can sweetened condensed milk", "", 396.89, "14 × 28.3495"],
      ["2 (8 oz) packages cream cheese, softened", "", 453.59, "16 × 28.3495"],
      ["3 (1/4 oz) envelopes dry yeast", "", 21.26, "0.75 × 28.3495"],
      ["1 qt whole milk", "", 976, "as SR28"],
      ["1 gal. water", "", 3785.41, "1 g/mL"],
    ],
  },
  {
    title: "south pier friands: Australian cups and spoons",
    cups: "AU",
    lines: [
      ["2½ cups plain flour", "", 330.21, "625/236.588 × 125"],
      ["1 tablespoon honey", "", 28.4, "20/14.787 × 21"],
      ["1 teaspoon baking powder", "", 4.67, "5/4.929 × 4.6"],
      ["2 eggs", "", 96, "2 × 48"],
      ["125 g butter, melted", "", 125, "as written"],
      ["¾ cup (180 ml) buttermilk", "", 194.17, "187.5/236.588 × 245"],
      ["1/3 cup (75g) caster sugar", "", 75, "weight in brackets"],
    ],
  },
  {
    title: "night watch oat bars: a numbered list with ranges",
    cups: "US",
    lines: [
      ["1. 2 cups rolled oats", "", 162, "2 × 81"],
      ["2. 1/3 cup + 1 tbsp olive oil", "", 85.5, "216/3 + 13.5"],
      ["3) 1/2 cup to 3/4 cup honey", "", [169.5, 254.25], "339 × 0.5, × 0.75"],
      ["4. 1–2 tsp ground cinnamon", "", [2.6, 5.2], "2.6, 2 × 2.6"],
      ["5. 1 c. chopped walnuts", "", 117, "as SR28, chopped"],
      ["6. 1/2 c. raisins", "", 72.5, "145 / 2"],
      ["7. pinch of salt", "", 0.375, "6 / 16"],
    ],
  },
  {
    title: "slipway brownies: signs of a word processor",
    cups: "US",
    lines: [
      ["1\u202f250 g Bread flour", "", 1250, "as written"],
      ["¾ cup plus 2 Tbsp whole milk", "", 213, "183 + 30"],
      ["1⅓ cups packed light brown sugar", "", 293.33, "4/3 × 220"],
      ["⅛ tsp ground nutmeg", "", 0.275, "2.2 / 8"],
      ["2⁄3\u00a0cup cocoa", "", 57.33, "86 × 2/3"],
      ["6\u2009Tbsp (¾ stick) unsalted butter", "", 85.2, "6 × 14.2"],
      ["1½–2 cups powdered sugar", "", [180, 240], "1.5 × 120, 2 × 120"],
    ],
  },
  {
    title: "all hands pudding: the rest",
    cups: "US",
    lines: [
      ["For the pudding:", "", null, "a heading"],
      ["a stick of butter, melted and cooled", "", 113.4, "4 oz"],
      ["1/3 of 1/8 tsp instant yeast", "", 0.1292, "3.1 / 24"],
      ["2 egg yolks", "", 34, "2 × 17"],
      ["4 ounces (1 cup) dark rye flour", "", 113.4, "4 × 28.3495"],
      ["1 cup sour cream, at room temperature", "", 230, "as SR28"],
      ["2 cups (480 ml) cold water", "", 473.18, "2 × 236.588"],
      ["1/2 cup milk or cream", "", 122, "244 / 2"],
      ["2 x 250 g blocks cream cheese", "", 500, "2 × 250"],
      ["1 to 1 1/4 cups water", "", [236.59, 295.74], "1, 1.25 × 236.588"],
      ["salt to taste", "", null, "no amount"],
    ],
  },
];
