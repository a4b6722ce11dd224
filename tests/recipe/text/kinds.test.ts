// Kinds of lines that were once read wrong, each with its brothers: what a line says is beside it.
import { describe, expect, test } from "vitest";
import { describeRecipe } from "../../../shared/recipe/text/reader.ts";
import { builtInKitchen } from "./corpus-support.ts";

const kitchen = { ...builtInKitchen, cups: "EU" as const };
const read = (text: string) => describeRecipe(text, kitchen);
const rowsOf = (text: string) => {
  const { rows, stages } = read(text);
  return rows.map(({ name, grams, percent, stage }) => [stages[stage]?.role, name, grams ?? percent]);
};
const asksOf = (text: string) => read(text).questions.map(({ reason }) => reason);

describe("more of a row, or a part of it, is used beside the dough", () => {
  test.each([
    ["Olive oil 40 g, plus 60 g for the tin", 40, 60],
    ["40 g olive oil (plus 60 for the tin)", 40, 60],
    ["40 g olive oil and another 60 g for the tray", 40, 60],
    ["Olive oil: 40 g + 60 g to grease", 40, 60],
    ["100 g olive oil, of which 60 g for the tin", 40, 60],
  ])("%s", (line, inDough, beside) => {
    expect(rowsOf(`Loaf\n500 g flour\n${line}\nall in grams`).slice(1)).toEqual([
      ["dough", expect.stringMatching(/olive oil/i), inDough],
      ["dusting", expect.stringMatching(/olive oil/i), beside],
    ]);
  });
  test("what is only more of it stays whole", () => {
    expect(rowsOf("Loaf\n500 g flour, plus more for dusting\n300 g water")).toEqual([
      ["dough", "flour", 500],
      ["dough", "water", 300],
    ]);
  });
});

describe("a row names its stage", () => {
  test.each(["Flour (sponge) 600 g", "600 g flour (for the sponge)", "Flour for the sponge 600 g"])("%s", (line) => {
    expect(rowsOf(`Loaf\n${line}\nFlour 400 g`)).toEqual([
      ["preferment", expect.stringMatching(/^flour$/i), 600],
      ["dough", "Flour", 400],
    ]);
  });
  test.each(["Flour (bread) 600 g", "Butter (melted) 600 g", "Cream (sour) 600 g", "Cherries (sour) 600 g"])(
    "%s names none",
    (line) => {
      expect(rowsOf(`Loaf\nRye flour 400 g\n${line}`)[1]?.[0]).toBe("dough");
    },
  );
});

describe("roll-in fat by the words that bakers have for it", () => {
  test.each([
    "Butter (folding)",
    "Butter for layering",
    "Folding butter",
    "Ziehbutter",
    "Roll-in butter",
    "Lock-in butter",
  ])("%s", (name) => {
    expect(rowsOf(`Croissant\nFlour 1000 g\n${name} 500 g`)[1]?.[0]).toBe("roll-in");
  });
  test.each(["25% of dough", "25 % of the final dough", "25 % vom Teig"])("%s is no share of the flour", (share) => {
    const text = `Croissant\nFlour 100 %\nMilk 50 %\nRoll-in butter ${share}`;
    expect(rowsOf(text)[2]?.[2]).toBeNull();
    expect(asksOf(text)).toEqual(["unclear amount"]);
  });
});

describe("what no row took is asked about", () => {
  test.each([
    ["We use about 5 kg flour and 3 kg water in the big bowl on busy days, more or less", "left out"],
    ["Xyzzy: qux 300 g rye flour 720 zz, plugh 30 g, qux 5 g", "left out"],
  ])("%s", (line, reason) => expect(asksOf(`Loaf\n500 g flour\n300 g water\n${line}`)).toContain(reason));
  test("a method that weighs what no row has", () => {
    expect(asksOf("Loaf\n500 g flour\n300 g water\n10 g salt\n\nMethod\nFeed 40 g starter with warm water.")).toEqual([
      "left out",
    ]);
  });
  test("a method that names a part of a row asks nothing", () => {
    expect(asksOf("Loaf\n500 g flour\n300 g water\n10 g salt\n\nMethod\nAdd 50 g of the water.")).toEqual([]);
  });
  test.each(["See you on Friday.", "Call the mill.\nThe oven man comes at 9.", "asdf qwer"])(
    "nothing in “%s”",
    (text) => {
      expect(read(text).rows).toEqual([]);
      expect(asksOf(text)).toEqual(["no ingredient"]);
    },
  );
  test("an empty text asks nothing", () => expect(asksOf("\n \n")).toEqual([]));
});

describe("lists beside each other are read one after the other", () => {
  const DOUGH = [
    ["dough", "Flour", 1000],
    ["dough", "Milk", 520],
    ["dough", "Salt", 18],
  ];
  const FILLING = [
    ["filling", "Ricotta", 800],
    ["filling", "Sugar", 120],
  ];
  test.each([
    "DOUGH              FILLING\nFlour   1000 g     Ricotta   800 g\nMilk     520 g     Sugar     120 g\nSalt      18 g",
    "Dough\t\tFilling\t\nFlour\t1000 g\tRicotta\t800 g\nMilk\t520 g\tSugar\t120 g\nSalt\t18 g\t\t",
    "Dough | g | Filling | g\nFlour | 1000 | Ricotta | 800\nMilk | 520 | Sugar | 120\nSalt | 18 | | ",
    "Dough                 Filling\n1000 g Flour          800 g Ricotta\n520 g Milk            120 g Sugar\n18 g Salt",
  ])("%s", (text) => {
    expect(rowsOf(text)).toEqual([...DOUGH, ...FILLING]);
    expect(asksOf(text)).toEqual([]);
  });
  test.each([
    "Item\tQty\tSupplier\tPrice\nFlour\t10 kg\tMill A\t12.50\nMilk\t2 kg\tLane\t3.00\nSalt\t0.2 kg\tMill A\t0.40",
    "Flour  10 kg  shelf A  12\nMilk  2 kg  fridge  0\nSalt  200 g  shelf B  1",
    "Ingredient | Weight | Temp | Deg\nFlour | 10 kg | room | 20\nMilk | 2 kg | cold | 8\nSalt | 0.2 kg | room | 20",
  ])("a price or a place beside each ingredient is no list: %s", (text) => {
    expect(read(text).rows.map(({ name, grams }) => [name, grams])).toEqual([
      ["Flour", 10_000],
      ["Milk", 2000],
      ["Salt", 200],
    ]);
  });
  test.each([
    "Flour\tWater\tSalt\n10\t6.5\t0.2\nall in kg",
    "       Flour   Water   Salt\nkg     10.0    6.5     0.2",
    "Loaf | Flour | Water | Salt\n | 10 kg | 6.5 kg | 0.2 kg",
    "Flour\tWater\tSalt\n100%\t65%\t2%\n10 kg\t6.5 kg\t0.2 kg",
  ])("names across the page: %s", (text) => {
    expect(read(text).rows.map(({ name, grams }) => [name, grams])).toEqual([
      ["Flour", 10_000],
      ["Water", 6500],
      ["Salt", 200],
    ]);
  });
});

test.each([
  ["Sour: 800 g rye flour, 640 g water, 40 g seed. 16 h at 27 C", 16],
  ["Sour: 800 g rye flour, 640 g water, 40 g\nseed. 16 h at 27 C", 16],
  ["Sour: 800 g rye flour, 640 g water, 40 g starter (16 h at 27 C)", 16],
])("how long a stage stands is no ingredient: %s", (text, hours) => {
  const { rows, stages } = read(`Rye\n${text}\nDough: sour, 1200 g wheat flour, 700 g water, 40 g salt`);
  expect(rows.slice(0, 3).map(({ grams }) => grams)).toEqual([800, 640, 40]);
  expect(rows[2]).toMatchObject({ name: expect.stringMatching(/^(?:seed|starter)$/), type: "levain 80%" });
  expect(stages[0]).toMatchObject({ role: "preferment", hours, temperature: 27 });
});

describe("sentences of a letter", () => {
  test("weigh the dough and make its method", () => {
    const { rows, steps } = read(
      "Mix 1 kg flour with 650 g water, 20 g salt and 10 g yeast for 8 min. Bake 35 min at 220 C.",
    );
    expect(rows.map(({ name, grams }) => [name, grams])).toEqual([
      ["flour", 1000],
      ["water", 650],
      ["salt", 20],
      ["yeast", 10],
    ]);
    expect(steps.map(({ minutes }) => minutes)).toEqual([8, 35]);
  });
  test("beside a list they are only a story", () => {
    const text = "I once mixed 2 kg flour with 1 kg water.\n500 g flour\n300 g water\n10 g salt";
    expect(read(text).rows.map(({ grams }) => grams)).toEqual([500, 300, 10]);
    expect(asksOf(text)).toEqual(["left out"]);
  });
});

test.each([
  ["Bake in a 2 lb loaf tin, 50 min at 170 C", 1],
  ["2lb tin", 1],
  ["Two 1 lb loaf tins", 2],
  ["Divide between 3 greased 400 g bread tins", 3],
])("tins that go by what they hold: %s", (line, tins) => {
  expect(read(`Cake\n500 g flour\n300 g sugar\n${line}`).yield.tins).toBe(tins);
});

test("pieces of a laminated dough weigh what was rolled in as well", () => {
  // 1 760 g of dough and 500 g of butter
  const text = "Croissants\nMakes 30 at 75 g\nFlour 1000 g\nMilk 700 g\nSalt 20 g\nYeast 40 g\nRoll-in butter 500 g";
  expect(asksOf(text)).toEqual([]);
});

describe("a list in one line", () => {
  const amounts = (text: string) => read(text).rows.map(({ name, grams }) => [name, grams]);
  test("how a thing is cut or kept is no ingredient", () => {
    const list = "200 g flour, 100 g butter, softened, 50 g walnuts, roughly chopped, 100 g milk, cold";
    expect(amounts(`Cake\n${list}`)).toEqual([
      ["flour", 200],
      ["butter", 100],
      ["walnuts", 50],
      ["milk", 100],
    ]);
  });
  test("an ingredient without an amount is asked about, and none of the others is lost", () => {
    const text = "Loaf\nFlour 1 kg, water 650 g, salt, yeast 10 g";
    expect(amounts(text)).toEqual([
      ["Flour", 1000],
      ["water", 650],
      ["salt", null],
      ["yeast", 10],
    ]);
    expect(asksOf(text)).toEqual(["no amount"]);
  });
  test("what is dissolved in another has an amount of its own", () => {
    expect(amounts("Loaf\n500 g flour, 10 g yeast dissolved in 300 g water, 10 g salt")).toEqual([
      ["flour", 500],
      ["yeast", 10],
      ["water", 300],
      ["salt", 10],
    ]);
  });
});

describe("what a name says beside the name", () => {
  test.each(["Sweet dough from 10 kg flour", "Sweet dough (per 10 kg flour)", "Sweet dough based on 10 kg of flour"])(
    "%s is no second flour",
    (title) => {
      const { title: name, rows, formula } = read(`${title}\nflour 10 kg\nwater 6 kg\nsalt 200 g`);
      expect(name).toMatch(/^Sweet dough/);
      expect(rows).toHaveLength(3);
      expect(formula.flour).toBe(10_000);
    },
  );
  test("a name, what it makes and the list in one line", () => {
    const {
      title,
      yield: made,
      rows,
      steps,
    } = read("Scones: makes 24. 1.5 kg flour, 300 g butter, 900 g milk. 220 C, 14 min.");
    expect([title, made.pieces, made.pieceWeight]).toEqual(["Scones", 24, null]);
    expect(rows.map(({ grams }) => grams)).toEqual([1500, 300, 900]);
    expect(steps.map(({ minutes, temperature }) => [minutes, temperature])).toEqual([[14, 220]]);
  });
});
