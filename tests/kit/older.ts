import { TEMPLATES } from "../../templates/index.ts";

/** Templates whose sheets have both forms, the add-on's and the plain one. */
export const OLDER = TEMPLATES.filter(({ foldedFrom }) => foldedFrom === undefined);
