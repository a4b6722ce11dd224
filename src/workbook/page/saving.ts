import type { Engine } from "../engine/engine.ts";
import { keptText } from "../file/file-text.ts";
import { askBeforeClosing } from "./closing.ts";
import type { Store, StoredBook, Tell } from "./home.ts";
import { hideNotice, showNotice } from "./notice.ts";
import { revisionOf } from "./revision.ts";

/** Long enough for a row of keys, short enough for a closed lid. */
const AFTER_MS = 400;
/** How long until the next try where the server is away or the disk full: twice as long each time. */
const FIRST_RETRY_MS = 1000;
const MAX_RETRY_MS = 15_000;
/** How often a tab asks whether another one or another program changed the file; tabs of one browser tell each other at once. */
const LOOK_MS = 3000;

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
  ownFile: Store["ownFile"],
  onSave: () => void,
): void {
  showNotice(isUnsaved, ownFile, {
    takeNewer() {
      closing.allow();
      hideNotice();
      location.reload();
    },
    ownText: () => keptText(text()),
    savedOwn: onSave,
  });
}

/** Keeps every change, one after the other, again and again until it is kept; stops where another tab was first. */
export function keepEverything(engine: Engine, { revision, data }: StoredBook, store: Store, tell: Tell): void {
  if (revision === undefined) return;
  const text = () => engine.text();
  const tabs = new BroadcastChannel(store.channel());
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
    const next = await store.save(sent, revisions.known());
    if (next === undefined) return overtake(await store.revision());
    revisions.follow(next);
    saved = sent;
    tabs.postMessage(revisions.known());
  }

  /** The kept workbook is another one than this tab knew. Its own save is followed, and what was typed since then is due. */
  function overtake(there: string): void {
    if (revisions.isForeign(there)) fallBehind();
    else isDue = true;
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
    const there = await store.revision().catch(() => undefined);
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
    offerNewer(text() !== saved, text, closing, store.ownFile, () => {
      saved = text();
    });
  }
}
