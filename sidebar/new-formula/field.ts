import type { FieldName } from "./draft.ts";

/** Reads one field that stands alone; what cannot be read is said, and counts as blank. */
export type ReadField = (name: FieldName, missing?: string) => number | null;
