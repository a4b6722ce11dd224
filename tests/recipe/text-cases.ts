// Published recipes and conversions: lines as their sources print them, grams by the weights printed there or by USDA SR28.

type Published = readonly [line: string, grams: number, within: number];
type Case = {
  readonly source: string;
  readonly cups?: string;
  readonly lines: readonly Published[];
  readonly sum?: number;
};

export const CASES: readonly Case[] = [
  {
    source: "USDA SR28: 2 cups flour, 1 tsp salt, a packet (7 g by its label, SR28 prints 7.2), cup of egg, dry milks",
    lines: [
      ["2 cups all-purpose flour", 250, 0],
      ["1 tsp salt", 6, 0],
      ["1 packet active dry yeast", 7.2, 0.21],
      ["1 cup egg", 243, 0],
      ["1 cup nonfat dry milk", 120, 0],
      ["1 cup instant nonfat dry milk", 68, 0],
    ],
  },
  {
    source: "The Fresh Loaf node/3236: a weight in brackets wins over the cups",
    lines: [
      ["6 cups (27 oz) unbleached bread flour", 765.4, 0.05],
      ["2 1/4 tsp (.56 oz) salt", 15.88, 0.005],
      ["1 3/4 tsp (.19 oz) instant yeast", 5.39, 0.005],
      ["2 1/4 cups plus 2 tablespoons to 3 cups (19 to 24 oz) water", (538.6 + 680.4) / 2, 0.05],
      ["2 1/4 cups plus 2 tablespoons to 3 cups water", (561.9 + 709.8) / 2, 0.05],
    ],
  },
  {
    source: "donnahay.com.au/recipes/conversion; bread-bakers.com v115.n031: Australian spoons and cups",
    cups: "AU",
    lines: [
      ["2½ cups water", 625, 0.5],
      ["⅔ cup water", 166.7, 0.05],
      ["2 tbsp dry yeast", 25.2, 0.05],
    ],
  },
  {
    source: "the same in US measures; the list's 125 g stick is 10 % over, its 40 oz are no kilogram",
    lines: [
      ["2½ cups water", 591.5, 0.05],
      ["2 tbsp dry yeast", 18.6, 0.05],
      ["1 stick of butter", 113.4, 0.05],
      ["40 oz flour", 1134, 0.05],
    ],
  },
  {
    source: "domainwebcenter.com, a number that cannot be converted: no-break and thin spaces",
    lines: [
      ["350\u00a0g flour\u00a0", 350, 0],
      ["1\u202f200,5 g flour", 1200.5, 0],
      ["2 cups flour\u00a0", 250, 0],
    ],
  },
  {
    source: "rezeptefundus.de, web.de (dpa), mybestgermanrecipes.com/all-about-yeast: cubes and sachets",
    cups: "EU",
    lines: [
      ["1 Würfel fresh yeast", 42, 0],
      ["half a cube of fresh yeast", 21, 0],
      ["1 cube of yeast", 42, 0],
      ["2 sachets dried yeast", 14, 0],
    ],
  },
  {
    source: "makebread: the US cake of compressed yeast is 0.6 oz",
    lines: [["1 cake compressed yeast", 17, 0.05]],
  },
  {
    source:
      "USDA Quantity Recipes for School Food Service (1988), yeast rolls; unweighed lines by SR28, yeast 3.1 g a teaspoon",
    lines: [
      ["active dry yeast 1/3 cup", 49.6, 0.01],
      ["water 1 1/2 cups at 110 F + 2 1/2 cups at 68 F", 946.35, 0.01],
      ["flour 12 1/4 cups = 3 lb 10 oz", 1644.27, 0.005],
      ["instant NFDM 1 1/3 cups = 3 1/4 oz", 92.14, 0.005],
      ["sugar 3/4 cup + 2 tbsp = 5 3/4 oz", 163.01, 0.005],
      ["salt 2 tbsp", 36, 0],
      ["oil 3/4 cup + 2 tbsp", 190.4, 0.35],
    ],
    sum: 3121.8,
  },
  {
    source: "USDA Quantity Recipes for School Food Service (1988), royal brownies: the lines add up to 2422.0 g",
    lines: [
      ["Oil 3/4 cup", 163.5, 0],
      ["sugar 3 3/4 cups = 1 lb 10 oz", 737.09, 0.005],
      ["salt 1 1/2 tsp", 9, 0],
      ["vanilla 1 1/2 tsp", 6.3, 0.001],
      ["applesauce 2 1/2 cups = 1 lb 4 oz", 566.99, 0.005],
      ["10 large whites", 330, 0],
      ["flour 3 1/2 cups = 15 oz", 425.24, 0.005],
      ["cocoa 1 1/2 cups + 2 tbsp = 6 oz", 170.1, 0.005],
      ["baking powder 1 tbsp", 13.8, 0.001],
    ],
    sum: 2422,
  },
  {
    source: "US Army recipe card G007, brown sugar cake: 15.75 lb",
    lines: [
      ["Flour 4 lb (1 gal)", 1814.37, 0.005],
      ["salt 2 oz (2.33 tbsp)", 56.7, 0.005],
      ["BP 3 oz (6.67 tbsp)", 85.05, 0.005],
      ["NFDM 6 oz (1.25 cup)", 170.1, 0.005],
      ["brown sugar 4 lb (2.75 qt)", 1814.37, 0.005],
      ["water 1 lb (2 cups) + 1 lb 5 oz (2.67 cups) + 12 oz (1.5 cups)", 1389.13, 0.005],
      ["vanilla 1 oz (2 tbsp)", 28.35, 0.005],
      ["maple flavoring 1 oz (2 tbsp)", 28.35, 0.005],
      ["shortening 1 lb 14 oz (4.25 cups)", 850.49, 0.005],
      ["eggs 2 lb (1 qt)", 907.18, 0.01],
    ],
    sum: 15.75 * 453.59237,
  },
  {
    source: "US Army recipe card D036, sweet dough: 19.875 lb",
    lines: [
      ["ADY 8 oz (1.5 cups)", 226.8, 0.005],
      ["water 1 lb 8 oz (3 cups) + 2 lb 4 oz (4.5 cups)", 1700.97, 0.005],
      ["sugar 1 lb 12 oz (1 qt)", 793.79, 0.005],
      ["salt 3 oz (4.67 tbsp)", 85.05, 0.005],
      ["shortening 1 lb 10 oz (3.75 cups)", 737.09, 0.005],
      ["eggs 1 lb 12 oz (3.5 cups)", 793.79, 0.005],
      ["flour 10 lb (2.5 gal)", 4535.92, 0.005],
      ["NFDM 5 oz (1.13 cups)", 141.75, 0.005],
    ],
    sum: 19.875 * 453.59237,
  },
  {
    source: "anonymous US trade formula of a layer cake, haisendata.com 11538: 42 lb 7 oz",
    lines: [
      ["Flour 10 lb", 4535.92, 0.005],
      ["sugar 12.5 lb", 5669.9, 0.01],
      ["shortening 2.5 lb", 1133.98, 0.005],
      ["butter 2.5 lb", 1133.98, 0.005],
      ["eggs 5 lb", 2267.96, 0.005],
      ["water 7.5 lb", 3401.94, 0.005],
      ["dry whole milk 1 lb 9 oz", 708.74, 0.005],
      ["BP 8 oz", 226.8, 0.005],
      ["salt 5 oz", 141.75, 0.005],
      ["vanilla 1 oz", 28.35, 0.005],
    ],
    sum: (42 + 7 / 16) * 453.59237,
  },
  {
    source: "A treatise on baking (chestofbooks), home-made bread: 336.7 lb",
    lines: [
      ["196 lb flour", 88904.1, 0.01],
      ["2 lb yeast", 907.18, 0.01],
      ["3 lb salt", 1360.78, 0.005],
      ["5.25 lb sugar", 2381.36, 0.005],
      ["5.25 lb lard", 2381.36, 0.005],
      ["60 qt water (125.2 lb)", 56789.76, 0.01],
    ],
    sum: 336.7 * 453.59237,
  },
];
