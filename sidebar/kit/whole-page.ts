// Whether the sidebar's page arrived as it was packed: its script reads its own text.
import { isAsWritten, sumOf, type Whole } from "../../shared/protocol/pasted-sum.ts";

/** The text of the page's small script, as it was written; the build puts it here. */
declare const CANARY: string;

// The browser tells which script is running only while it runs.
const script = document.currentScript;

/** The page as it stands in this file; with the sum of what stands there. */
export function wholePage(): { readonly whole: Whole; readonly sum: string } {
  const packed = script instanceof HTMLScriptElement ? script.dataset.sum : undefined;
  if (script === null || packed === undefined) return { whole: "unknown", sum: "" };
  const sum = sumOf(script.textContent ?? "");
  if (sum === packed) return { whole: "whole", sum };
  const isReadable = isAsWritten(document.getElementById("canary")?.textContent ?? "", CANARY);
  return { whole: isReadable ? "damaged" : "unknown", sum };
}

export const PAGE_DAMAGED =
  "sidebar.html is not as it was packed. Open the script editor, empty the file sidebar.html, paste all of the second text again, save, then reload.";
export const CODE_DAMAGED =
  "Code.gs is not as it was packed. Open the script editor, empty Code.gs, paste all of the first text again, save, then reload.";
