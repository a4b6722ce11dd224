/** Something that keeps the sheet from being built: where to mend it, and a sentence. */
export type FieldFault = {
  /** The field: its name, or "column/row" counted from 0. */
  readonly at: string;
  readonly says: string;
  /** Not typed yet, which is only told when somebody wants to build. */
  readonly missing: boolean;
  /** About the table as a whole, which is not told while somebody is still typing in it. */
  readonly whole?: true;
};

export const fieldFault = (at: string, says: string, missing = false): FieldFault => ({
  at,
  says: says.replace(/([.?!…])\.$/, "$1"),
  missing,
});
