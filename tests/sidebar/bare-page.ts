// A page without a browser: as much of one as a panel needs to stand there and to be typed into. Nothing is laid out or drawn.

type Listener = (event: unknown) => void;
type Child = BareNode | string;

/** An element, or a piece of text. */
export class BareNode {
  readonly children: BareNode[] = [];
  readonly classList = { toggle: () => {} };
  readonly offsetHeight = 0;
  hidden = false;
  checked = false;
  open = false;
  value = "";
  /** Hears of whatever is put in here, texts too. */
  onFill: (() => void) | undefined;
  #parent: BareNode | undefined;
  readonly #attributes = new Map<string, string>();
  readonly #listeners = new Map<string, Listener[]>();

  readonly tagName: string;
  readonly #text: string;

  constructor(tagName: string, text = "") {
    this.tagName = tagName;
    this.#text = text;
  }

  get textContent(): string {
    return this.#text + this.children.map((child) => child.textContent).join("");
  }
  set textContent(text: string) {
    this.replaceChildren(text);
  }
  get childElementCount(): number {
    return this.children.length;
  }

  setAttribute(name: string, value: string): void {
    this.#attributes.set(name, value);
    if (name === "value") this.value = value;
  }
  getAttribute = (name: string) => this.#attributes.get(name) ?? null;
  removeAttribute = (name: string) => void this.#attributes.delete(name);

  addEventListener(name: string, listener: Listener): void {
    this.#listeners.set(name, [...(this.#listeners.get(name) ?? []), listener]);
  }
  /** Does what the browser would do for an event here; it goes no further up. */
  meet(name: string): void {
    for (const listener of this.#listeners.get(name) ?? []) listener({});
  }

  append(...children: readonly Child[]): void {
    for (const child of children) this.insertBefore(child, null);
  }
  prepend(child: Child): void {
    this.insertBefore(child, this.children[0] ?? null);
  }
  insertBefore(child: Child, before: BareNode | null): void {
    const node = typeof child === "string" ? new BareNode("#text", child) : child;
    node.remove();
    node.#parent = this;
    this.children.splice(before === null ? this.children.length : this.children.indexOf(before), 0, node);
  }
  replaceChildren(...children: readonly Child[]): void {
    for (const child of [...this.children]) child.remove();
    this.append(...children);
    this.onFill?.();
  }
  remove(): void {
    const siblings = this.#parent?.children ?? [];
    if (siblings.includes(this)) siblings.splice(siblings.indexOf(this), 1);
    this.#parent = undefined;
  }

  /** This one and all below that are such. */
  all = (is: (node: BareNode) => boolean): BareNode[] => [
    ...(is(this) ? [this] : []),
    ...this.children.flatMap((child) => child.all(is)),
  ];
  querySelectorAll = (tag: string) => this.all(({ tagName }) => tagName === tag);
  querySelector = (tag: string) => this.querySelectorAll(tag)[0] ?? null;
  contains = (other: unknown): boolean => this.all((node) => node === other).length > 0;
  closest = () => null;
  focus(): void {}
  select(): void {}
  scrollIntoView(): void {}
}

/** The globals that a panel finds in such a page; `server` answers its questions, JSON both ways. */
export function barePage(server: (json: string) => unknown): object {
  const run = (handlers: { readonly success?: Listener }): object => ({
    withSuccessHandler: (success: Listener) => run({ ...handlers, success }),
    withFailureHandler: () => run(handlers),
    answerSidebar: (json: string) => {
      const reply = server(json);
      void Promise.resolve().then(() => handlers.success?.(reply));
    },
  });
  return {
    document: {
      createElement: (tag: string) => new BareNode(tag),
      createElementNS: (_: string, tag: string) => new BareNode(tag),
      documentElement: new BareNode("html"),
      activeElement: null,
    },
    ResizeObserver: class {
      observe(): void {}
    },
    google: { script: { run: run({}) } },
    setTimeout,
    clearTimeout,
  };
}
