// A button that asks the add-on for something, says what came of it, and says every failure with a way on.
import { showNumber } from "../../shared/base/show.ts";
import type { Question, Questions } from "../../shared/protocol/questions.ts";
import { ask, type Failure, failureSentence, ONE_ACCOUNT } from "./ask.ts";
import { pressButton, progressOf } from "./work-in-progress.ts";

export const PATIENCE_MS = 90_000;

export type Act<Q extends Question> = {
  readonly question: Q;
  readonly label: string;
  /** What is asked, or null where something is in the way; the panel has said what. */
  readonly request: () => Questions[Q]["ask"] | null;
  /** Said while it goes on. */
  readonly busy: () => string;
  /** Said afterwards. */
  readonly done: (answer: Questions[Q]["answer"]) => string;
  /** Said when nothing came in time: where to look before asking again. */
  readonly silent: string;
  /** Where it is refused for this, something is done first, and then it is asked once more. */
  readonly first?: { readonly isDue: (reason: string | undefined) => boolean; readonly run: () => Promise<Said> };
  /** What was shown before is no longer what the add-on says. */
  readonly failed?: () => void;
};

/** What came of something, in words. */
type Said = { readonly says: string } | Failure;

export type Acting = { readonly nodes: readonly HTMLElement[]; readonly run: () => Promise<void> };

export function actionButton<Q extends Question>(act: Act<Q>, look = "build"): Acting {
  const button = pressButton(act.label, look, () => void run());
  const progress = progressOf(() => button);
  return { nodes: [progress.bar, progress.status, button], run };

  async function run(): Promise<void> {
    if (progress.isBusy()) return;
    progress.clear();
    const request = act.request();
    if (request === null) return;
    const outcome = await progress.during(act.busy(), () => said(request));
    if (!("says" in outcome)) act.failed?.();
    progress.report("says" in outcome ? outcome.says : failed(outcome), !("says" in outcome));
  }

  async function said(request: Questions[Q]["ask"]): Promise<Said> {
    const outcome = await once(request);
    if ("says" in outcome || act.first?.isDue(outcome.reason) !== true) return outcome;
    const before = await act.first.run();
    if (!("says" in before)) return before;
    const after = await once(request);
    return "says" in after ? { says: `${before.says} ${after.says}` } : after;
  }

  async function once(request: Questions[Q]["ask"]): Promise<Said> {
    const outcome = await ask(act.question, request, PATIENCE_MS, (late) => {
      if ("answer" in late) progress.report(`${act.done(late.answer)} It took longer than Gramwright waited.`, false);
    });
    return "answer" in outcome ? { says: act.done(outcome.answer) } : outcome;
  }

  function failed(failure: Failure): string {
    if (failure.how !== "silent") return failureSentence(failure);
    return `No answer for ${showNumber(PATIENCE_MS / 1000)} seconds. ${act.silent} If nothing comes at all: ${ONE_ACCOUNT}`;
  }
}
