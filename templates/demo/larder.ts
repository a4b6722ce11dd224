// What the shop buys, at made-up prices that are round by the kilogram.
import type { Asked } from "./asked.ts";

export const larderAsked: Asked = {
  ask: "build",
  template: "larder",
  options: { weight: "g", temperature: "C", length: "cm", parts: ["composition"] },
  values: {
    title: "Ingredients",
    shop: "Tern Quay Bakehouse",
    ingredient: [
      "Strong white flour",
      "Wholemeal wheat flour",
      "Rye flour",
      "Sea salt",
      "Fresh yeast",
      "Unsalted butter",
      "Whole milk",
      "Whole egg",
      "Sugar",
      "Quay levain",
    ],
    // The levain is costed as half flour, half water: half the price of the flour it is fed with.
    price: [20, 22.5, 25, 9, 3.5, 80, 12, 36, 24, 4],
    pack: ["25 kg", "25 kg", "25 kg", "10 kg", "1 kg", "10 kg", "12 kg", "9 kg", "25 kg", "10 kg"],
    also_called: [null, "Whole wheat flour", null, null, null, "Butter"],
    label_name: [
      "wheat flour",
      "wholemeal wheat flour",
      "rye flour",
      "salt",
      "yeast",
      "butter",
      "whole milk",
      "eggs",
      "sugar",
      "levain",
    ],
    made_of: [null, null, null, null, null, null, null, null, null, "wheat flour 50%, water 50%"],
    allergens: ["wheat", "wheat", "rye", "none", "none", "milk", "milk", "eggs", "none", "wheat"],
    // Only what no table of typical figures has: the levain, as the mean of its flour and its water.
    water: [null, null, null, null, null, null, null, null, null, 0.56],
    protein: [null, null, null, null, null, null, null, null, null, 0.06],
    fat: [null, null, null, null, null, null, null, null, null, 0.008],
    saturates: [null, null, null, null, null, null, null, null, null, 0.001],
    carbohydrate: [null, null, null, null, null, null, null, null, null, 0.365],
    sugar: [null, null, null, null, null, null, null, null, null, 0.002],
    fibre: [null, null, null, null, null, null, null, null, null, 0.012],
    salt: [null, null, null, null, null, null, null, null, null, 0],
    energy: [null, null, null, null, null, null, null, null, null, 1.8],
  },
};
