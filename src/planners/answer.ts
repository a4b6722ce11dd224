import type { Layout } from "../../shared/sheet/layout.ts";
// The sidebar's questions without a page: the steps of a planned one follow each other at once.
import { isPlanned, stepsFor, undone } from "./planners.ts";
import { NAMES, refusalError } from "./steps.ts";

export type Served =
  | { readonly ok: true; readonly answer: unknown }
  | { readonly ok: false; readonly message: string; readonly because?: string; readonly reason?: string };

/** Hears of every sheet that was made, and where its named cells stand. */
export type SheetListener = (sheet: string, names: Layout["names"]) => void;

/** `serve` is the add-on: a question's JSON in, its reply read. */
export function answerQuestion(request: unknown, serve: (json: string) => Served, onSheet?: SheetListener): Served {
  const rest = (typeof request === "object" && request !== null ? request : {}) as Record<string, unknown>;
  const question = rest.ask;
  if (typeof question !== "string" || !isPlanned(question)) {
    const reply = serve(JSON.stringify(request));
    return reply.ok ? reply : { ok: false, message: reply.message };
  }
  try {
    const steps = stepsFor(question, rest, new Date());
    let next = steps.next();
    while (next.done !== true) {
      const reply = serve(JSON.stringify(next.value));
      const names = next.value[NAMES];
      if (reply.ok && names !== undefined) onSheet?.(String((reply.answer as { sheet?: unknown }).sheet), names);
      next = reply.ok ? steps.next(reply.answer) : steps.throw(refusalError(reply));
    }
    return { ok: true, answer: next.value };
  } catch (error) {
    return { ok: false, message: undone(question, error) };
  }
}
