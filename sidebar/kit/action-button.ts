// A button that asks the add-on for something that takes a while: pressed twice it acts once, slow work shows, failures are said.

import { shown } from "../../shared/base/show.ts";
import type { Question, Questions } from "../../shared/protocol/bench.ts";
import { ask, type Failure, ONE_ACCOUNT, told } from "./ask.ts";
import { element, say } from "./element.ts";

const PATIENCE_MS = 90_000;
/** Work that takes longer than this says that it goes on. */
const SHOW_AFTER_MS = 400;
/** A second click of the same hand is no second wish. */
const SAME_CLICK_MS = 800;

export type Act<Q extends Question> = {
  readonly question: Q;
  readonly label: string;
  /** What is asked, or null where something is in the way; the panel has said what. */
  readonly asked: () => Questions[Q]["ask"] | null;
  /** Said while it goes on. */
  readonly busy: () => string;
  /** Said afterwards. */
  readonly done: (answer: Questions[Q]["answer"]) => string;
  /** Said when nothing came in time: where to look before asking again. */
  readonly silent: string;
  /** What was shown before is no longer what the add-on says. */
  readonly failed?: () => void;
};

export type Acting = { readonly nodes: readonly HTMLElement[]; readonly run: () => Promise<void> };

export function acting<Q extends Question>(act: Act<Q>, look = "build"): Acting {
  let busy = false;
  let lastPressed = Number.NEGATIVE_INFINITY;
  const status = element("p", { class: "status", role: "status", "aria-live": "polite" });
  const bar = element("div", { class: "bar", hidden: true }, element("div", {}));
  const button = element("button", { type: "button", class: look, click: () => void pressed() }, act.label);
  button.addEventListener("keydown", (event) => {
    if (event.repeat) event.preventDefault();
  });
  return { nodes: [bar, status, button], run };

  async function pressed(): Promise<void> {
    const time = Date.now();
    if (time - lastPressed < SAME_CLICK_MS) return;
    lastPressed = time;
    await run();
  }

  async function run(): Promise<void> {
    if (busy) return;
    say(status, "");
    status.classList.remove("failed");
    const asked = act.asked();
    if (asked === null) return;
    busy = true;
    button.setAttribute("aria-disabled", "true");
    const slow = setTimeout(() => {
      bar.hidden = false;
      say(status, act.busy());
    }, SHOW_AFTER_MS);
    const outcome = await ask(act.question, asked, PATIENCE_MS, (late) => {
      if ("answer" in late) say(status, `${act.done(late.answer)} It took longer than the bench waited.`);
    });
    clearTimeout(slow);
    busy = false;
    bar.hidden = true;
    button.removeAttribute("aria-disabled");
    status.classList.toggle("failed", !("answer" in outcome));
    if (!("answer" in outcome)) act.failed?.();
    say(status, "answer" in outcome ? act.done(outcome.answer) : failed(outcome));
  }

  function failed(failure: Failure): string {
    if (failure.how !== "silent") return told(failure);
    return `No answer for ${shown(PATIENCE_MS / 1000)} seconds. ${act.silent} If nothing comes at all: ${ONE_ACCOUNT}`;
  }
}
