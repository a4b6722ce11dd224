import type { Engine } from "../engine/engine.ts";
import type { WorkbookData } from "../engine/library.ts";

export type Kept = { readonly data?: WorkbookData; readonly revision?: string; readonly says?: string };

/** Long enough for a row of keys, short enough for a closed lid. */
const AFTER_MS = 400;

/** The workbook of the last time; empty where the server keeps none. */
export async function lastTime(): Promise<Kept> {
  const answer = await fetch("/workbook");
  if (!answer.ok) throw new Error(await answer.text());
  return (await answer.json()) as Kept;
}

/** Sends every change to the server, one after the other. */
export function keepEverything(engine: Engine, { revision }: Kept, tell: (says: string) => void): void {
  if (revision === undefined) return;
  let known = revision;
  let saved = "";
  let timer: ReturnType<typeof setTimeout> | undefined;
  let sending = false;
  let again = false;
  let lost = false;

  engine.model.on("update", keepEverything, later);
  window.addEventListener("beforeunload", (event) => {
    // A change that is not written yet would be gone: the browser asks before it closes.
    if (timer !== undefined || sending) event.preventDefault();
  });
  void send();

  function later(): void {
    if (lost) return;
    clearTimeout(timer);
    timer = setTimeout(() => void send(), AFTER_MS);
  }

  async function send(): Promise<void> {
    timer = undefined;
    if (sending) {
      again = true;
      return;
    }
    sending = true;
    try {
      const text = JSON.stringify(engine.data());
      if (text !== saved) {
        const headers = { "content-type": "application/json", "x-revision": known };
        const answer = await fetch("/workbook", { method: "POST", headers, body: text });
        if (!answer.ok) {
          lost = answer.status === 409;
          throw new Error(await answer.text());
        }
        known = ((await answer.json()) as { revision: string }).revision;
        saved = text;
      }
    } catch (error) {
      tell(`Not kept: ${(error as Error).message}`);
    }
    sending = false;
    if (again) {
      again = false;
      later();
    }
  }
}
