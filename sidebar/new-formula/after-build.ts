// What follows a build that the person did not ask for: nothing waits for it, and its sentence goes behind the one of the build.
import { isLeftOver } from "../../shared/protocol/left-over.ts";
import { ask, type Outcome } from "../kit/ask.ts";
import { say } from "../kit/element.ts";
import { linkedSentence } from "../plan/refresh.ts";

const PATIENCE_MS = 90_000;

/** With so many formulas a list of them; then the new formula may be an ingredient of others, or use others. */
export async function afterwards(status: HTMLElement, isListDue: boolean): Promise<void> {
  if (isListDue) {
    const before = status.textContent ?? "";
    const outcome = await ask("list", {}, PATIENCE_MS);
    add(status, before, listSentence(outcome));
  }
  const before = status.textContent ?? "";
  const outcome = await ask("link", {}, PATIENCE_MS);
  if (!("answer" in outcome)) return;
  const { sheets, note } = outcome.answer;
  if (sheets.length > 0 || note !== undefined) add(status, before, linkedSentence(outcome.answer));
}

/** Nothing where something else was done meanwhile. */
function add(status: HTMLElement, before: string, sentence: string): void {
  if (status.textContent === before) say(status, `${before} ${sentence}`);
}

function listSentence(outcome: Outcome<"list">): string {
  if ("answer" in outcome) {
    const { sheet, note } = outcome.answer;
    return `There are six formulas or more now: the sheet “${sheet}” lists them, and Gramwright keeps it.${note === undefined ? "" : ` ${note}`}`;
  }
  if (isLeftOver(outcome.reason)) return `The list of all formulas could not be built. ${outcome.message}`;
  return "The formula list could not be built. It will be tried again with your next formula.";
}
