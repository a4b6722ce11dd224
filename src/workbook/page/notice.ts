/** What a person can do in a tab whose workbook is older than the file. */
type Choices = {
  takeNewer(): void;
  /** This tab's workbook as `npm start -- --file` opens it. */
  ownText(): string;
  savedOwn(): void;
};

const byId = (id: string) => document.getElementById(id) as HTMLElement;

const NEWER = "This tab is behind: the workbook was changed in another tab or by another program.";
const OWN = "What you typed here since then is not in the newer state. Save this tab as a file to have both.";
const NONE_OWN = "Nothing is kept from this tab until you choose.";
const FILE = "gramwright-this-tab.json";

/** Stands until the person chooses; nothing is taken or dropped before. */
export function showNotice(isOwn: boolean, choices: Choices): void {
  byId("notice-says").textContent = `${NEWER} ${isOwn ? OWN : NONE_OWN}`;
  byId("notice").hidden = false;
  byId("take-newer").onclick = () => choices.takeNewer();
  byId("save-own").onclick = () => {
    const link = document.createElement("a");
    link.href = URL.createObjectURL(new Blob([choices.ownText()], { type: "application/json" }));
    link.download = FILE;
    link.click();
    // The browser reads the text a moment after the click.
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    choices.savedOwn();
    byId("notice-says").textContent =
      `${NEWER} This tab was saved as ${FILE}. To open it, give its name after “npm start -- --file”.`;
  };
  window.dispatchEvent(new Event("resize"));
}

export function hideNotice(): void {
  byId("notice").hidden = true;
}
