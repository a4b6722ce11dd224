// A type as it is entered for a row, and what is wrong with it.

import { isProblem } from "../../shared/cells/cell.ts";
import { kind } from "../../shared/larder/kinds.ts";

/** "" where it can be read. */
export function typeProblem(text: string): string {
  if (text === "") return "Choose a type.";
  const read = kind().read(text);
  const says = isProblem(read) ? read.problem : "unread" in read ? read.unread : "";
  return says === "" ? "" : `The type ${says}.`;
}
