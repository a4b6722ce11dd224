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
const MAX_RETRY_MS = 15_000;
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
async function currentRevision(): Promise<string> {
  const answer = await fetch("/revision").catch(() => undefined);
  if (!answer?.ok) throw new Error(AWAY);
  return ((await answer.json()) as { revision: string }).revision;
}

/** As in keep.ts. */
async function revisionOf(file: string): Promise<string> {
  const bytes = new Uint8Array(await crypto.subtle.digest("SHA-256", new TextEncoder().encode(file)));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, "0")).join("");
}

async function postWorkbook(text: string, revision: string): Promise<Response> {
  const headers = { "content-type": "application/json", "x-revision": revision };
  try {
    return await fetch("/workbook", { method: "POST", headers, body: text });
  } catch {
    throw new Error(AWAY);
  }
}

/** The revision of the file that this tab knows, and those of its saves whose answer got lost: their server may have stopped in between. */
function trackRevisions(first: string) {
  let known = first;
  const unanswered = new Set<string>();
  const follow = (revision: string): void => {
    known = revision;
    unanswered.clear();
  };
  return {
    known: () => known,
    follow,
    /** A save that may be in the file even if its answer gets lost. */
    expect: async (text: string): Promise<void> => {
      unanswered.add(await revisionOf(keptText(text)));
    },
    /** Whether somebody else wrote a revision of the file; this tab's own save is followed from now on. */
    isForeign(revision: string): boolean {
      if (revision !== known && !unanswered.has(revision)) return true;
      follow(revision);
      return false;
    },
  };
}

/** Does something once after a while; a later start takes the place of an earlier one. */
function makeTimer(act: () => void) {
  let timer: ReturnType<typeof setTimeout> | undefined;
  const stop = () => clearTimeout(timer);
  return {
    stop,
    start(milliseconds: number): void {
      stop();
      timer = setTimeout(act, milliseconds);
    },
  };
}

/** Says that the file is newer than this tab: a person loads it, or first saves what only this tab has. */
function offerNewer(
  isUnsaved: boolean,
  text: () => string,
  closing: ReturnType<typeof askBeforeClosing>,
  onSave: () => void,
): void {
  showNotice(isUnsaved, {
    takeNewer() {
      closing.allow();
      hideNotice();
      location.reload();
    },
    ownText: () => keptText(text()),
    savedOwn: onSave,
  });
}

/** Sends every change to the server, one after the other, again and again until it is kept; stops where another tab was first. */
export function keepEverything(engine: Engine, { revision, data }: Kept, tell: Tell): void {
  if (revision === undefined) return;
  const text = () => JSON.stringify(engine.data());
  const tabs = new BroadcastChannel("gramwright workbook");
  const revisions = trackRevisions(revision);
  let saved = data === undefined ? "" : text();
  const timer = makeTimer(() => void send());
  let retry = FIRST_RETRY_MS;
  let isSending = false;
  let isDue = false;
  let isFailing = false;
  let isBehind = false;

  const closing = askBeforeClosing(() => text() !== saved);
  engine.model.on("update", keepEverything, () => later(AFTER_MS));
  tabs.onmessage = ({ data: heard }) => compare(String(heard));
  setInterval(() => void look(), LOOK_MS);
  for (const event of ["online", "focus"]) window.addEventListener(event, () => void look());
  void send();

  function later(milliseconds: number): void {
    if (!isBehind) timer.start(milliseconds);
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
      retryLater(error as Error);
    }
    isSending = false;
    if (isDue) later(isFailing ? retry : AFTER_MS);
  }

  async function post(sent: string): Promise<void> {
    await revisions.expect(sent);
    const answer = await postWorkbook(sent, revisions.known());
    if (answer.status === 409 && (await isOvertaken())) return;
    if (!answer.ok) throw new Error(`Not kept: ${await answer.text()}`);
    revisions.follow(((await answer.json()) as { revision: string }).revision);
    saved = sent;
    tabs.postMessage(revisions.known());
  }

  /** Whether the file is another one than this tab knew. Its own save is followed, and what was typed since then is due. */
  async function isOvertaken(): Promise<boolean> {
    const there = await currentRevision();
    if (there === revisions.known()) return false;
    if (revisions.isForeign(there)) fallBehind();
    else isDue = true;
    return true;
  }

  function retryLater({ message }: Error): void {
    isFailing = true;
    tell(message, true);
    later(retry);
    retry = Math.min(2 * retry, MAX_RETRY_MS);
  }

  async function look(): Promise<void> {
    if (isBehind || isSending) return;
    const before = revisions.known();
    const there = await currentRevision().catch(() => undefined);
    // What was kept in between is newer than the answer.
    if (there === undefined || revisions.known() !== before) return;
    compare(there);
    if (isFailing) later(0);
  }

  /** What is heard while this tab is sending may be its own; the next look tells. */
  function compare(heard: string): void {
    if (!isSending && revisions.isForeign(heard)) fallBehind();
  }

  function fallBehind(): void {
    if (isBehind) return;
    isBehind = true;
    timer.stop();
    offerNewer(text() !== saved, text, closing, () => {
      saved = text();
    });
  }
}
