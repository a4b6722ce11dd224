// What a few words of other languages are called in the tables, so that they have a type and a cup of them can be weighed.

import { singularName } from "../../base/words.ts";

/** As they stand without accents, in the singular that leaves out an s. */
const WORDS: Readonly<Record<string, string>> = {
  flour: "mehl farine farina farinha harina bloem tarwebloem mjol vetemjol hvedemel rugmel",
  water: "wasser eau acqua agua vand vatten",
  salt: "salz sel sale sal zout",
  yeast: "hefe levure lievito levadura fermento gist gær jast gjær",
  sugar: "zucker sucre zucchero azucar acucar suiker sukker socker",
  milk: "milch lait latte leche leite melk mælk mjolk",
  butter: "butter beurre burro mantequilla manteiga boter smør smor",
  egg: "ei eier oeuf œuf uova uovo huevo ovo eieren æg agg",
  oil: "huile ol olio aceite azeite olie olja",
  honey: "honig miel miele honing honning honung",
  walnut: "nuss walnuss noix noce nuez nueces noz noze walnoot",
};
const FOREIGN: ReadonlyMap<string, string> = new Map(
  Object.entries(WORDS).flatMap(([word, all]) => all.split(" ").map((one) => [one, word] as const)),
);

/**
 * What the tables lack and what weighs the same by the spoon. From memory: golden syrup has 1.43 g/ml, and so has honey (SR28, 339 g
 * a cup); tea is water.
 */
const WEIGHS_AS: ReadonlyMap<string, string> = new Map([
  ["golden syrup", "honey"],
  ["light treacle", "honey"],
  ["glucose syrup", "corn syrup"],
  ["tea", "water"],
  ["cold tea", "water"],
  ["hot tea", "water"],
  ["black tea", "water"],
  ["strong tea", "water"],
]);

/** The tables' name for what a name says otherwise; null where it says nothing they know. */
export const foreignName = (name: string): string | null => {
  const plain = singularName(name);
  const words = plain.split(" ");
  return WEIGHS_AS.get(plain) ?? words.map((word) => FOREIGN.get(word)).find((word) => word !== undefined) ?? null;
};
