type Attributes = Readonly<Record<string, string | number | boolean | ((event: Event) => void)>>;
type Child = Node | string;

/** `false` leaves an attribute out, `true` writes it without a value, a function listens; text becomes a text node. */
function dressed<E extends Element>(target: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") target.addEventListener(name, value);
    else if (value !== false) target.setAttribute(name, value === true ? "" : String(value));
  }
  target.append(...children);
  return target;
}

export const element = <K extends keyof HTMLElementTagNameMap>(tag: K, attributes: Attributes, ...children: Child[]) =>
  dressed(document.createElement(tag), attributes, children);

/** Joined at run time: a double slash inside a string would be cut as a comment when the page is served. */
const SVG = ["http:", "", "www.w3.org", "2000", "svg"].join("/");

export const svgElement = (tag: string, attributes: Attributes, ...children: Child[]) =>
  dressed(document.createElementNS(SVG, tag), attributes, children);

/** Writes a text only where it differs, so that nothing is announced or selected anew for no reason. */
export function say(where: Element, text: string): void {
  if (where.textContent !== text) where.textContent = text;
}
