// Pages to print out of the sidebar: a table each, and nothing of the sidebar itself.
import type { NightPage } from "../../shared/protocol/production.ts";
import { element } from "../kit/element.ts";

const CLASS = "printed-pages";

/** Puts the pages where only a printer shows them, in the place of those before, and opens the browser's print window. */
export function printPages(pages: readonly NightPage[]): void {
  for (const old of document.querySelectorAll(`.${CLASS}`)) old.remove();
  document.body.append(element("div", { class: CLASS, "aria-hidden": "true" }, ...pages.map(pageNode)));
  window.print();
}

function pageNode({ title, widths, rows }: NightPage): HTMLElement {
  const all = widths.reduce((sum, one) => sum + one, 0);
  const columns = widths.map((width) => element("col", { style: `width:${((100 * width) / all).toFixed(2)}%` }));
  const lines = rows.map((cells) => {
    const shown: HTMLElement[] = [];
    let covered = 0;
    cells.forEach(({ text, size, isBold, isRuled, side }, at) => {
      if (at < covered) return;
      // A long text runs on over the blank cells to its right, as on a sheet.
      const next = cells.findIndex((one, place) => place > at && (one.text !== "" || one.isRuled));
      const span = text === "" || isRuled ? 1 : (next < 0 ? cells.length : next) - at;
      covered = at + span;
      const look = `font-size:${size}pt;text-align:${side};${isBold ? "font-weight:bold;" : ""}`;
      shown.push(element("td", { colspan: String(span), style: look, class: isRuled ? "ruled" : "" }, text));
    });
    return element("tr", {}, ...shown);
  });
  return element(
    "section",
    { "aria-label": title },
    element("table", {}, element("colgroup", {}, ...columns), element("tbody", {}, ...lines)),
  );
}
