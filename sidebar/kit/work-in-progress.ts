// One piece of work at a time behind a button: a press while it is under way is the same press, slow work shows that it goes on.
import { element, say } from "./element.ts";

/** Work that takes longer than this says that it goes on. */
const SHOW_AFTER_MS = 400;

export type Progress = {
  /** A moving bar, hidden while nothing is slow. */
  readonly bar: HTMLElement;
  /** The sentence about the work: what goes on, and what came of it. */
  readonly status: HTMLElement;
  readonly isBusy: () => boolean;
  /** Empties the sentence. */
  readonly clear: () => void;
  /** Says what came of the work. */
  readonly report: (sentence: string, isFailure: boolean) => void;
  /** Does the work, and answers with its result. Never called while other work is under way. */
  readonly during: <T>(sentence: string, work: () => Promise<T>) => Promise<T>;
};

/** A button of the sidebar. Holding a key down is one press. */
export function pressButton(label: string, look: string, press: () => void): HTMLButtonElement {
  const button = element("button", { type: "button", class: look, click: press }, label);
  button.addEventListener("keydown", (event) => {
    if (event.repeat) event.preventDefault();
  });
  return button;
}

export function progressOf(button: () => HTMLElement): Progress {
  let busy = false;
  const bar = element("div", { class: "bar", hidden: true }, element("div", {}));
  const status = element("p", { class: "status", role: "status", "aria-live": "polite" });
  return { bar, status, isBusy: () => busy, clear: () => report("", false), report, during };

  function report(sentence: string, isFailure: boolean): void {
    status.classList.toggle("failed", isFailure);
    say(status, sentence);
  }

  async function during<T>(sentence: string, work: () => Promise<T>): Promise<T> {
    busy = true;
    report("", false);
    button().setAttribute("aria-disabled", "true");
    const slow = setTimeout(() => {
      bar.hidden = false;
      say(status, sentence);
    }, SHOW_AFTER_MS);
    try {
      return await work();
    } finally {
      clearTimeout(slow);
      busy = false;
      bar.hidden = true;
      button().removeAttribute("aria-disabled");
    }
  }
}
