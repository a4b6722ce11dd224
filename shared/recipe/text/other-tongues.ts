// What a few words of other languages are called in the tables, so that they have a type and a cup of them can be weighed.

import { singularName } from "../../base/words.ts";

/** As they stand without accents, in the singular that leaves out an s. */
const WORDS: Readonly<Record<string, string>> = {
  flour: "maka maki mehl farine farina farinha harina bloem tarwebloem mjol vetemjol hvedemel rugmel",
  water: "woda wody wasser eau acqua agua vand vatten",
  salt: "sol soli salz sel sale sal zout",
  yeast: "drozdze drozdzy hefe levure lievito levadura fermento gist gær jast gjær",
  sugar: "cukier cukru zucker sucre zucchero azucar acucar suiker sukker socker",
  milk: "mleko mleka milch lait latte leche leite melk mælk mjolk",
  butter: "maslo masla butter beurre burro mantequilla manteiga boter smør smor",
  egg: "jajko jajka jaj ei eier oeuf œuf uova uovo huevo ovo eieren æg agg",
  oil: "olej oleju huile ol olio aceite azeite olie olja",
  honey: "honig miel miele honing honning honung",
  cinnamon: "kanel zimt cannella cannelle canela cynamon kaneel",
  cardamom: "kardemumma kardemomme kardamom cardamomo cardamome",
  walnut: "nuss walnuss noix noce nuez nueces noz noze walnoot",
};
const OIL = /\b(?:oil|evoo)$/;
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

/** The same where the tables do not know the name: any oil weighs as oil does. */
export const weighsLike = (name: string): string | null =>
  foreignName(name) ?? (OIL.test(singularName(name)) ? "oil" : null);

/** The tables' name for what a name says otherwise; null where it says nothing they know. */
export const foreignName = (name: string): string | null => {
  const plain = singularName(name);
  const words = plain.split(" ");
  return WEIGHS_AS.get(plain) ?? words.map((word) => FOREIGN.get(word)).find((word) => word !== undefined) ?? null;
};
