// A type as it is entered for a row, and what is wrong with it.

import { isFault } from "../../shared/base/refusal.ts";
import { kind } from "../../shared/larder/kinds.ts";

/** "" where it can be read. */
export function typeFault(text: string): string {
  if (text === "") return "Choose a type.";
  const kindCell = kind().read(text);
  const says = isFault(kindCell) ? kindCell.says : "unread" in kindCell ? kindCell.unread : "";
  return says === "" ? "" : `The type ${says}.`;
}
