// Prices are compared by themselves when the sidebar opens and when a panel reads the workbook anew.
import type { Questions } from "../../shared/protocol/questions.ts";
import { ask } from "./ask.ts";
import { element } from "./element.ts";

const PATIENCE_MS = 20_000;

/** As it is on the clock of whoever asks. */
export const today = (now: Date): string =>
  [now.getFullYear(), now.getMonth() + 1, now.getDate()].map((part) => String(part).padStart(2, "0")).join("-");

export function changesSentence({ changes }: Questions["prices"]["answer"]): string {
  if (changes.length === 0) return "No price has changed since they were last compared.";
  const each = changes.map(({ name, before, now }) => `${name} ${before} → ${now}`);
  const more = each.length > 12 ? ` and ${each.length - 12} more` : "";
  return `Changed since they were last compared: ${each.slice(0, 12).join(", ")}${more}.`;
}

/** Shows what changed since the last time. Nothing is said where nothing did, or where it could not be read. */
export async function watchPrices(place: HTMLElement): Promise<void> {
  const outcome = await ask("prices", { day: today(new Date()), unasked: true }, PATIENCE_MS);
  if (!("answer" in outcome) || outcome.answer.changes.length === 0) return;
  place.replaceChildren(element("p", { role: "status" }, changesSentence(outcome.answer)));
}
