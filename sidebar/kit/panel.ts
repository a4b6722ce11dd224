/** One panel of the sidebar. It makes its own nodes and keeps its own state. */
export type Panel = {
  /** Short, for the tab. */
  readonly name: string;
  readonly heading: string;
  readonly open: () => HTMLElement;
};

/** Told to a panel's own node when the panel comes back into sight. */
export const SHOWN_AGAIN = "shown-again";
const WANTED = "panel-wanted";

/** Asks the page for another panel, by its name. */
export const goToPanel = (from: Element, name: string): boolean =>
  from.dispatchEvent(new CustomEvent(WANTED, { detail: name, bubbles: true }));

/** Runs when one panel asks for another. */
export const onPanelWanted = (go: (name: string) => void): void =>
  document.addEventListener(WANTED, (event) => go(String((event as CustomEvent).detail)));
