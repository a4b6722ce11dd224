import type { Ignored, Question, Row, Stage, Step } from "../../shared/recipe/text/description.ts";
import type { SourceLine } from "../../shared/recipe/text/source-lines.ts";

/** A line as it is shown. */
export type Shown = {
  readonly line: SourceLine;
  readonly rows: readonly Row[];
  readonly steps: readonly Step[];
  readonly ignored: Ignored | undefined;
  readonly stage: Stage | undefined;
  readonly questions: readonly { readonly question: Question; readonly at: number }[];
  readonly isCorrected: boolean;
  readonly percents: readonly (number | null)[];
};
