// The prices of a list that are taken: what stands now, what is new, and whether chosen names are remembered.
import { showNumber } from "../../shared/base/show.ts";
import { priceText, type Taken } from "../../shared/price-list/decide.ts";
import { element } from "../kit/element.ts";
import type { Reading } from "./price-reading.ts";

export function takenTable(taken: readonly Taken[]): HTMLElement {
  const moved = (times: number | null) =>
    times === null ? "" : `${times < 1 ? "" : "+"}${showNumber((times - 1) * 100, 1)} %`;
  const heads = ["Ingredient", "Now", "New"];
  return element(
    "table",
    { class: "beside-table" },
    element("thead", {}, element("tr", {}, ...heads.map((head) => element("th", { scope: "col" }, head)))),
    element(
      "tbody",
      {},
      ...taken.map(({ line, now, offer: { price, pack, times } }) =>
        element(
          "tr",
          {},
          element("th", { scope: "row" }, now?.name ?? `${line.name} (new)`),
          element("td", {}, priceText(now?.price ?? null, now?.pack ?? "")),
          element(
            "td",
            {},
            element("div", {}, priceText(price, pack || (now?.pack ?? ""))),
            element("div", {}, moved(times)),
          ),
        ),
      ),
    ),
  );
}

/** Names that were answered by hand are no question the next time. */
export function rememberTick(reading: Reading, taken: readonly Taken[], changed: () => void): HTMLElement {
  const named = taken.filter(({ line, now }) => now !== null && line.of === null);
  const box = element("input", {
    type: "checkbox",
    change: () => {
      reading.isRemembered = box.checked;
      changed();
    },
  });
  box.checked = reading.isRemembered;
  const node = element("label", { class: "tick" }, box, "Remember the names that I chose, under “Also called”");
  node.hidden = named.length === 0;
  return node;
}
