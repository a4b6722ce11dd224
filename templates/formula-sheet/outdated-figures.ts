import { only, type Single, single, storedSingle } from "./singles.ts";
import type { FormulaSheetSpec } from "./spec.ts";

/** Figures that were filled in for other inputs than those that stand there now: what was filled in is kept beside the page. */
export const staleSingles = (spec: FormulaSheetSpec): readonly Single[] => [
  ...(spec.isBread ? FRICTION_SINGLES : []),
  ...only("!water", [single("Friction factor is old", "friction_says", '=""')]),
  ...(spec.tin === undefined ? [] : FILL_SINGLES),
  ...only("!tin", [single("Fill is old", "fill_says", '=""')]),
];

const FRICTION_SINGLES: readonly Single[] = [
  ...only("water", [
    storedSingle("Friction factor filled in", "friction_filled"),
    storedSingle("for", "friction_for"),
    // What is kept has the point of the program that filled it in, what is joined the decimal sign of the sheet.
    single(
      "Friction factor is old",
      "friction_says",
      '=IF((COUNT(@friction_filled)=0)+(@friction_own<>@friction_filled)>0;"";IF(@friction_for=SUBSTITUTE(@mixing&" "&@minutes;",";".");"";"Friction factor is for "&@friction_for&" min. "))',
    ),
  ]),
];

const FILL_SINGLES: readonly Single[] = [
  ...only("tin", [
    storedSingle("Fill filled in", "fill_filled"),
    storedSingle("for", "fill_for"),
    single(
      "Fill is old",
      "fill_says",
      '=IF((COUNT(@fill_filled)=0)+(@tin_fill<>@fill_filled)>0;"";IF(@fill_for=@tin_kind;"";"Fill is for "&@fill_for&". "))',
    ),
  ]),
];
