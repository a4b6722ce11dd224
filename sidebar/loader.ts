// All of the bench but its look travels packed, because a page of a spreadsheet's script is to be small. This unpacks and starts it.
import { canUnpack, unpacked } from "./packed.ts";

/** The bench's script; the build puts it here. */
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
    const script = document.createElement("script");
    script.textContent = text;
    document.body.append(script);
  } catch {
    say(BROKEN);
  }
}

function say(sentence: string): void {
  const notice = document.createElement("p");
  notice.setAttribute("role", "alert");
  notice.textContent = sentence;
  document.getElementById("bench")?.replaceChildren(notice);
}
