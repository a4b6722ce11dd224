import { download } from "./download.ts";
import type { Store } from "./home.ts";

/** What a person can do in a tab whose workbook is older than the file. */
type Choices = {
  takeNewer(): void;
  /** This tab's workbook as it is opened again. */
  ownText(): string;
  savedOwn(): void;
};

const byId = (id: string) => document.getElementById(id) as HTMLElement;

const NEWER = "This tab is behind: the workbook was changed in another tab or by another program.";
const OWN = "What you typed here since then is not in the newer state. Save this tab as a file to have both.";
const NONE_OWN = "Nothing is kept from this tab until you choose.";

/** Stands until the person chooses; nothing is taken or dropped before. */
export function showNotice(isOwn: boolean, { name, opens }: Store["ownFile"], choices: Choices): void {
  byId("notice-says").textContent = `${NEWER} ${isOwn ? OWN : NONE_OWN}`;
  byId("notice").hidden = false;
  byId("take-newer").onclick = () => choices.takeNewer();
  byId("save-own").onclick = () => {
    download(new Blob([choices.ownText()], { type: "application/json" }), name);
    choices.savedOwn();
    byId("notice-says").textContent = `${NEWER} This tab was saved as ${name}. ${opens}`;
  };
  window.dispatchEvent(new Event("resize"));
}

export function hideNotice(): void {
  byId("notice").hidden = true;
}
