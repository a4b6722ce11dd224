import type { Engine } from "../engine/engine.ts";
import type { WorkbookData } from "../engine/library.ts";
import { keptText } from "../file/kept-text.ts";
import { askBeforeClosing } from "./closing.ts";
import { hideNotice, showNotice } from "./notice.ts";

export type Kept = { readonly data?: WorkbookData; readonly revision?: string; readonly says?: string };
type Tell = (says: string, isProblem?: boolean) => void;

/** Long enough for a row of keys, short enough for a closed lid. */
const AFTER_MS = 400;
/** How long until the next try where the server is away or the disk full: twice as long each time. */
const FIRST_RETRY_MS = 1000;
const LONGEST_RETRY_MS = 15_000;
/** How often a tab asks whether another one or another program changed the file; tabs of one browser tell each other at once. */
const LOOK_MS = 3000;

const AWAY =
  "Not kept: the server does not answer. Leave this page open and start it again; what you typed is sent then.";

/** The workbook of the last time; empty where the server keeps none. */
export async function lastTime(): Promise<Kept> {
  const answer = await fetch("/workbook");
  if (!answer.ok) throw new Error(await answer.text());
  return (await answer.json()) as Kept;
}

/** What the file is known by now. */
async function thereNow(): Promise<string> {
  const answer = await fetch("/revision").catch(() => undefined);
  if (!answer?.ok) throw new Error(AWAY);
  return ((await answer.json()) as { revision: string }).revision;
}

/** As in keep.ts. */
async function revisionOf(file: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(file)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

/** Sends every change to the server, one after the other, again and again until it is kept; stops where another tab was first. */
export function keepEverything(engine: Engine, { revision, data }: Kept, tell: Tell): void {
  if (revision === undefined) return;
  const text = () => JSON.stringify(engine.data());
  const tabs = new BroadcastChannel("gramwright workbook");
  let known = revision;
  let saved = data === undefined ? "" : text();
  let timer: ReturnType<typeof setTimeout> | undefined;
  let retry = FIRST_RETRY_MS;
  let isSending = false;
  let isDue = false;
  let isFailing = false;
  let isBehind = false;
  /** What the file is known by if a save whose answer got lost is in it all the same: its server may have stopped in between. */
  const unanswered = new Set<string>();

  const closing = askBeforeClosing(() => text() !== saved);
  engine.model.on("update", keepEverything, () => later(AFTER_MS));
  tabs.onmessage = ({ data: heard }) => compare(String(heard));
  setInterval(() => void look(), LOOK_MS);
  for (const event of ["online", "focus"]) window.addEventListener(event, () => void look());
  void send();

  function later(milliseconds: number): void {
    if (isBehind) return;
    clearTimeout(timer);
    timer = setTimeout(() => void send(), milliseconds);
  }

  async function send(): Promise<void> {
    if (isSending || isBehind) {
      isDue = true;
      return;
    }
    isSending = true;
    isDue = false;
    const sent = text();
    try {
      if (sent !== saved) await post(sent);
      if (sent === saved && isFailing) tell("Kept: what could not be sent is in the file now.");
      if (sent === saved) isFailing = false;
      retry = FIRST_RETRY_MS;
    } catch (error) {
      failed(error as Error);
    }
    isSending = false;
    if (isDue) later(isFailing ? retry : AFTER_MS);
  }

  async function post(sent: string): Promise<void> {
    const headers = { "content-type": "application/json", "x-revision": known };
    let answer: Response;
    unanswered.add(await revisionOf(keptText(sent)));
    try {
      answer = await fetch("/workbook", { method: "POST", headers, body: sent });
    } catch {
      throw new Error(AWAY);
    }
    if (answer.status === 409 && (await isOvertaken())) return;
    if (!answer.ok) throw new Error(`Not kept: ${await answer.text()}`);
    follow(((await answer.json()) as { revision: string }).revision);
    saved = sent;
    tabs.postMessage(known);
  }

  /** Whether the file is another one than this tab knew. Its own save is followed, and what was typed since then is due. */
  async function isOvertaken(): Promise<boolean> {
    const there = await thereNow();
    if (there === known) return false;
    if (isBehindOf(there)) fallBehind();
    else isDue = true;
    return true;
  }

  function follow(revision: string): void {
    known = revision;
    unanswered.clear();
  }

  /** Whether somebody else wrote what is there; this tab's own save is followed from now on. */
  function isBehindOf(there: string): boolean {
    if (there !== known && !unanswered.has(there)) return true;
    follow(there);
    return false;
  }

  function failed({ message }: Error): void {
    isFailing = true;
    tell(message, true);
    later(retry);
    retry = Math.min(2 * retry, LONGEST_RETRY_MS);
  }

  async function look(): Promise<void> {
    if (isBehind || isSending) return;
    const before = known;
    const there = await thereNow().catch(() => undefined);
    // What was kept in between is newer than the answer.
    if (there === undefined || known !== before) return;
    compare(there);
    if (isFailing) later(0);
  }

  /** What is heard while this tab is sending may be its own; the next look tells. */
  function compare(heard: string): void {
    if (!isSending && isBehindOf(heard)) fallBehind();
  }

  function fallBehind(): void {
    if (isBehind) return;
    isBehind = true;
    clearTimeout(timer);
    const isOwn = text() !== saved;
    showNotice(isOwn, {
      takeNewer() {
        closing.allow();
        hideNotice();
        location.reload();
      },
      ownText: () => keptText(text()),
      savedOwn() {
        saved = text();
      },
    });
  }
}
