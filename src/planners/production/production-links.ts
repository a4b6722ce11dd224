// References from a production sheet into the formula sheets that it is made of.
import type { Links } from "../../../shared/sheet/model.ts";
import { letters, linkName } from "../../../templates/production/shape.ts";
import type { Overview } from "../overview.ts";
import { eachLink, mixedLink, positiveLink, type TakenLevain } from "./formula.ts";
import type { Item } from "./order-grid.ts";
import type { OwnPart } from "./parts.ts";

export function linksOf(
  rows: readonly Item[],
  doughs: readonly Overview[],
  names: readonly string[],
  taken: readonly (readonly TakenLevain[])[],
  parts: readonly OwnPart[],
): Links {
  const links: Record<string, string> = {};
  rows.forEach(({ sheet, row }, at) => {
    links[linkName("each", at)] = eachLink(sheet, row);
  });
  doughs.forEach((sheet, at) => {
    const takers = parts.filter(({ part }) => part === sheet);
    rows.forEach((row, item) => {
      const some = takers.filter(({ taker }) => taker === row.sheet).map(({ link }) => link);
      if (some.length > 0 && !doughs.includes(row.sheet))
        links[linkName("part_of", at * rows.length + item)] = some.join("+");
    });
    takers
      .filter(({ taker }) => doughs.includes(taker))
      .forEach(({ link }, place) => {
        links[linkName(`into_${letters(at)}`, place)] = link;
      });
    links[linkName("mixed", at)] = mixedLink(sheet);
    links[linkName("limit", at)] = positiveLink(sheet, "mixer_limit");
    links[linkName("least", at)] = positiveLink(sheet, "mixer_least");
    names.forEach((name, which) => {
      const parts = (taken[at] ?? []).filter(({ from }) => from === name).map(({ link }) => link);
      if (parts.length > 0) links[linkName("levain_part", which * doughs.length + at)] = parts.join("+");
    });
  });
  return links;
}
