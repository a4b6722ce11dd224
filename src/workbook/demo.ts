import { serialOf } from "../../templates/demo/days.ts";
import { demoShop } from "../../templates/demo/shop.ts";

/** The demo shop as of today, by this computer's clock. */
export function demoToday(): ReturnType<typeof demoShop> {
  const now = new Date();
  return demoShop(serialOf(now.getFullYear(), now.getMonth() + 1, now.getDate()));
}
