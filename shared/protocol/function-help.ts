/** One sheet function as the sidebar explains it. */
export type FunctionHelp = {
  readonly name: string;
  readonly family: string;
  readonly summary: string;
  readonly returns: string;
  readonly args: readonly { readonly name: string; readonly says: string; readonly needed: boolean }[];
  /** A call and what it gives, as text. */
  readonly example: string;
  readonly gives: string;
  /** The example's arguments as they are typed into fields; null where one of them is a table of cells. */
  readonly typed: readonly string[] | null;
};
