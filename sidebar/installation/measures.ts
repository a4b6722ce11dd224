// How long a build takes here, and a weight that is typed over another: a formula sheet is built for it and removed.
import type { CheckAnswer, CheckStep } from "../../shared/protocol/check.ts";
import { makeAsk } from "../../shared/protocol/plan-message.ts";
import { CHECK_MARK } from "../../shared/protocol/self-check.ts";
import { a1 } from "../../shared/sheet/a1.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { panLoaf } from "../../templates/pan-loaf.ts";
import { ask, failureSentence } from "../kit/ask.ts";

const PATIENCE_MS = 120_000;
const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
const PARTS = ["tin", "water", "steps"];

/** A tenth of a second is as exact as a browser's wait for the service can be. */
const secondsSince = (from: number): number => Math.round((Date.now() - from) / 100) / 10;

/** One line of the report. A sheet that stays is named in it. */
export async function buildLine(step: (wanted: CheckStep) => Promise<CheckAnswer>): Promise<string> {
  const sheetPlan = plan(panLoaf, { ...UNITS, parts: PARTS }, { ...panLoaf.sample, title: CHECK_MARK });
  const weight = sheetPlan.names.get("weight");
  const from = Date.now();
  // Without a row in the formula list: the sheet goes again.
  const outcome = await ask("make", makeAsk(sheetPlan, CHECK_MARK, [], { behind: true }), PATIENCE_MS);
  if (!("answer" in outcome)) return `A build: ${failureSentence(outcome)}`;
  const { sheet } = outcome.answer;
  const build = secondsSince(from);
  try {
    const typed = weight === undefined ? null : await typedSeconds(step, sheet, weight.row + 2, weight.column);
    return `A build: ${build} s; a typed weight: ${typed === null ? "not taken" : `${typed} s`}`;
  } catch (error) {
    return `A build: ${build} s; a typed weight: ${(error as Error).message}`;
  } finally {
    await step({ step: "remove", sheet }).catch(() => undefined);
  }
}

/** Of water, the second row: any weight is taken. */
const TYPED = 5000;

/** Null where the sheet did not take it. */
async function typedSeconds(
  step: (wanted: CheckStep) => Promise<CheckAnswer>,
  sheet: string,
  row: number,
  column: number,
): Promise<number | null> {
  await step({ step: "type", sheet, row, column, value: TYPED });
  const from = Date.now();
  const outcome = await ask("take", { sheet }, PATIENCE_MS);
  if (!("answer" in outcome)) throw new Error(failureSentence(outcome));
  return outcome.answer.taken.includes(a1({ row, column })) ? secondsSince(from) : null;
}
