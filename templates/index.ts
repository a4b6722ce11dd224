// Every template, in the order of the bench.
import type { SheetModel } from "../shared/model.ts";
import { panLoaf } from "./pan-loaf.ts";

export const TEMPLATES: readonly SheetModel[] = [panLoaf];
