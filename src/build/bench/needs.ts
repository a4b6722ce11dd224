import { nameKey } from "../../../shared/larder/built-in-larder.ts";
import { call } from "../../functions/call.ts";
import { RAWNEEDS } from "../../functions/planning/RAWNEEDS.ts";
import { timeOf } from "./measure.ts";

const [PRODUCTS, PARTS, LEVELS, ORDERS] = [500, 30, 4, 200];

/** A day of 200 orders through 500 products of 30 ingredients, four levels deep. */
export function needs(): void {
  const perLevel = PRODUCTS / LEVELS;
  const formulas = Array.from({ length: PRODUCTS * PARTS }, (_, at) => {
    const [product, part] = [Math.floor(at / PARTS), at % PARTS];
    // The first two parts of a product above the lowest level are products of the level below.
    const isMade = part < 2 && product < PRODUCTS - perLevel;
    const below = (Math.floor(product / perLevel) + 1) * perLevel + ((product + part * 7) % perLevel);
    return [`Product ${product}`, isMade ? `Product ${below}` : `ingredient ${(product * 3 + part) % 120}`, 10 + part];
  });
  const orders = Array.from({ length: ORDERS }, (_, at) => [`Product ${at % perLevel}`, 1_000 + at]);
  const pass = (keyOf: (name: string) => string) => {
    const map = new Map<string, number>();
    for (const [product, part, weight] of formulas) {
      map.set(`${keyOf(String(product))}\n${keyOf(String(part))}`, Number(weight));
    }
    return map.size;
  };
  const once = () => {
    const keys = new Map<string, string>();
    return pass((name) => {
      const key = keys.get(name) ?? nameKey(name);
      keys.set(name, key);
      return key;
    });
  };
  const ours = timeOf(() => call(RAWNEEDS, [orders, formulas]));
  const [each, different] = [timeOf(() => pass(nameKey)), timeOf(once)];
  const times = (one: number) => (ours / one).toFixed(2);
  console.log(
    `BAKE_RAWNEEDS, ${PRODUCTS} products × ${PARTS} ingredients, ${LEVELS} levels, ${ORDERS} orders, × one pass over the rows into a Map: ${times(Math.min(each, different))} beside the better of two (wanted: 5); ${times(each)} where every name is normalised, ${times(different)} where each different name is, once`,
  );
}
