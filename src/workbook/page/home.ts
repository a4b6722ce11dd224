// What the page is made of and where its workbook is kept: by a server of this computer, or in the browser by a page that is one file.
import type { Engine } from "../engine/engine.ts";
import type { WorkbookData } from "../engine/library.ts";

/** A workbook as it was kept; `says` is what a person should know of it. */
export type StoredBook = { readonly data?: WorkbookData; readonly revision?: string; readonly says?: string };
export type Tell = (says: string, isProblem?: boolean) => void;

export type Store = {
  /** The workbook of the last time; without a revision where nothing is kept. */
  load(): Promise<StoredBook>;
  /** What the kept workbook is known by now. */
  revision(): Promise<string>;
  /** Keeps the workbook that follows a revision and gives the new one; undefined where that revision is not the kept one any more. */
  save(text: string, revision: string): Promise<string | undefined>;
  /** By this the tabs of one workbook hear each other. */
  channel(): string;
  /** A tab's own workbook as a file, and how that is opened. */
  readonly ownFile: { readonly name: string; readonly opens: string };
};

export type Home = {
  readonly store: Store;
  /** Where the page is, for its headline. */
  readonly where: string;
  /** The mark by which the browser knows the page's own scripts, where it asks for one. */
  readonly nonce: string;
  code(): Promise<string>;
  templates(): Promise<string>;
  /** The sidebar's page in a frame, with the google object of the workbook around it. */
  showSidebar(frame: HTMLIFrameElement, file: string): void;
  xlsx(engine: Engine): Promise<Blob>;
  /** What this home says as soon as it is known what is kept: the demo shop takes a while to build. */
  begun?(): void;
  /** What this home adds to the page, once the workbook is open. */
  added?(engine: Engine, tell: Tell): void;
};

/** Gives the sidebar's page the google object of the workbook around it, before any of its own scripts run. */
export const BENCH_SHIM = "<script>window.google = window.parent.gramwrightGoogle(window);</script>";

export function withShim(html: string): string {
  const at = /<head[^>]*>/i.exec(html);
  const cut = at ? at.index + at[0].length : 0;
  return html.slice(0, cut) + BENCH_SHIM + html.slice(cut);
}
