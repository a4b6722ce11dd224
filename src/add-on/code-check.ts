// Whether Code.js arrived as it was packed. The script reads its own functions' texts, and the build writes their sums at its end.
import { refuse } from "../../shared/base/refusal.ts";
import { isAsWritten, quickSumOf, sumOf, type Whole } from "../../shared/protocol/pasted-sum.ts";

// What the build puts around this bundle; none of it is there where the sources run by themselves.
declare const gramwrightBody_: (() => unknown) | undefined;
declare const gramwrightCanary_: (() => unknown) | undefined;
declare const gramwrightParts_: (() => unknown[]) | undefined;
declare const gramwrightSums_: (() => readonly [canary: string, quick: string, full: string]) | undefined;

const isPacked = (): boolean => typeof gramwrightBody_ !== "undefined";
const hasSums = (): boolean =>
  typeof gramwrightSums_ !== "undefined" &&
  typeof gramwrightCanary_ !== "undefined" &&
  typeof gramwrightParts_ !== "undefined";

const sums = () => {
  const [canary, quick, full] = gramwrightSums_?.() ?? ["", "", ""];
  return { canary, quick, full };
};

/** False where the service shows functions otherwise than they were written: then nothing can be told by their texts. */
const isReadable = (): boolean => isAsWritten(String(gramwrightCanary_), sums().canary);

const fullSum = (): string => sumOf((gramwrightParts_?.() ?? []).map(String).join("\n"));

/** Code.js as it stands in this file; with the sum of what stands there. */
export function wholeCode(): { readonly whole: Whole; readonly sum: string } {
  if (!isPacked()) return { whole: "unknown", sum: "" };
  if (!hasSums()) return { whole: "damaged", sum: "" };
  const sum = fullSum();
  if (sum === sums().full) return { whole: "whole", sum };
  return { whole: isReadable() ? "damaged" : "unknown", sum };
}

let isKnown = false;

/** Throws where the script that calculates is not the one that was packed: a cell shows no number rather than a wrong one. */
export function mustBeWhole(): void {
  if (isKnown || !isPacked()) return;
  const isSame = hasSums() && quickSumOf(String(gramwrightBody_)) === sums().quick;
  // Other line ends alone make another length.
  if (!isSame && wholeCode().whole === "damaged")
    refuse(
      "Code.gs is not as it was packed. Open the script editor, empty Code.gs, paste all of the first text again, save, then reload.",
    );
  isKnown = true;
}
