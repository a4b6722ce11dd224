// The install page's three Copy buttons. Opened from a disk, a browser may keep a page from its clipboard: then the text is selected.

const byId = <T extends HTMLElement>(id: string): T => {
  const match = document.getElementById(id);
  if (!match) throw new Error(`The page has no #${id}`);
  return match as T;
};

const BY_HAND = "Your browser did not copy it. All of it is selected in the box below: press Ctrl+C (on a Mac Cmd+C).";

for (const button of document.querySelectorAll<HTMLButtonElement>("button[data-copy]"))
  button.addEventListener("click", () => void copy(button));

async function copy(button: HTMLButtonElement): Promise<void> {
  const { copy: name = "", file = "" } = button.dataset;
  const text = JSON.parse(byId(name).textContent ?? "") as string;
  const says = byId(`${name}-says`);
  const box = byId<HTMLTextAreaElement>(`${name}-box`);
  box.hidden = true;
  says.textContent = "";
  if ((await isWritten(text)) || isCopiedFrom(box, text)) {
    box.hidden = true;
    says.textContent = `Copied: ${text.length.toLocaleString("en").replace(/,/g, " ")} characters. Now click into ${file} in the script editor, and paste.`;
    return;
  }
  says.textContent = BY_HAND;
  box.focus();
  box.select();
}

async function isWritten(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text);
    return true;
  } catch {
    return false;
  }
}

/** The older way: what is selected is copied, where the browser lets a page do that. */
function isCopiedFrom(box: HTMLTextAreaElement, text: string): boolean {
  box.hidden = false;
  box.value = text;
  box.focus();
  box.select();
  try {
    return document.execCommand("copy");
  } catch {
    return false;
  }
}
