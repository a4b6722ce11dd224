import { element } from "../kit/element.ts";

/**
 * Where a picture stands. Its words grow with the text of the page; where it is wider than the panel then, it can be moved
 * sideways, with the keyboard too.
 */
export function picturePlace(label: string): HTMLElement {
  const place = element("div", { class: "picture" });
  const look = new ResizeObserver(() => {
    const isWide = place.scrollWidth > place.clientWidth + 1;
    if (isWide === place.hasAttribute("tabindex")) return;
    for (const [name, value] of [
      ["tabindex", "0"],
      ["role", "group"],
      ["aria-label", label],
    ] as const) {
      if (isWide) place.setAttribute(name, value);
      else place.removeAttribute(name);
    }
  });
  look.observe(place);
  return place;
}
