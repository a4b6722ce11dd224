/** One panel of the bench. It makes its own nodes and keeps its own state. */
export type Panel = {
  /** Short, for the tab. */
  readonly name: string;
  readonly heading: string;
  readonly open: () => HTMLElement;
};
