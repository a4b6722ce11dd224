// The bench travels packed, because a page of a spreadsheet's script is to be small. This unpacks and starts it.
import { canUnpack, PARTED, unpacked } from "./packed.ts";

/** The bench's look and its script; the build puts them here. */
declare const PACKED: string;

const TOO_OLD =
  "This browser is too old for the bench; use the newest Chrome, Edge, Firefox or Safari. The functions in the cells work without it.";
const BROKEN = "The bench could not be unpacked. Close it and open it again.";

/** What the add-on appends to the page is there once it is read to its end. */
const isRead = new Promise<void>((done) => {
  if (document.readyState === "complete") done();
  else document.addEventListener("DOMContentLoaded", () => done());
});

void start();

async function start(): Promise<void> {
  if (!canUnpack()) return say(TOO_OLD);
  try {
    const [text] = await Promise.all([unpacked(PACKED), isRead]);
    const [style = "", script = ""] = text.split(PARTED);
    document.head.append(holding("style", style));
    document.body.append(holding("script", script));
  } catch {
    say(BROKEN);
  }
}

function holding(name: string, text: string): HTMLElement {
  const node = document.createElement(name);
  node.textContent = text;
  return node;
}

function say(sentence: string): void {
  const notice = holding("p", sentence);
  notice.setAttribute("role", "alert");
  document.getElementById("bench")?.replaceChildren(notice);
}
