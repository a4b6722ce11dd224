// All texts, by shape.
import { HOUSEHOLD } from "./corpus-household.ts";
import { PARTS } from "./corpus-parts.ts";
import { PERCENT } from "./corpus-percent.ts";
import { STAGES } from "./corpus-stages.ts";
import type { Case } from "./corpus-support.ts";
import { TABLES } from "./corpus-tables.ts";
import { WEB } from "./corpus-web.ts";

export const SHAPES: Readonly<Record<string, readonly Case[]>> = {
  "household recipes": HOUSEHOLD,
  "percentage formulas": PERCENT,
  "pasted tables": TABLES,
  "staged formulas": STAGES,
  "parts beside the dough": PARTS,
  "web pages, methods, yields": WEB,
};
