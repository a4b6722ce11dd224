// The bench travels packed, because a page of a spreadsheet's script is to be small. This unpacks and starts it.
import { PARTED, unpacked } from "./packed.ts";

/** The bench's look and its script; the build puts them here. */
declare const PACKED: string;

const TOO_OLD =
  "This browser is too old for the bench; use the newest Chrome, Edge, Firefox or Safari. The functions in the cells work without it.";
const BROKEN = "The bench could not be unpacked. Close it and open it again.";

const bench = document.getElementById("bench");

// What the add-on appends to the page is there once it is read to its end.
if (document.readyState === "complete") soon();
else document.addEventListener("DOMContentLoaded", soon);

/** Unpacking takes a moment in which nothing else happens, so that what is there is drawn first. */
function soon(): void {
  setTimeout(start, 30);
}

function start(): void {
  try {
    open(unpacked(PACKED));
  } catch {
    say(BROKEN);
  }
}

function open(text: string): void {
  empty();
  const [style = "", script = ""] = text.split(PARTED);
  document.head.appendChild(holding("style", style));
  document.body.appendChild(holding("script", script));
  // A script with words that a browser does not know does nothing at all there.
  if (bench?.childElementCount === 0) say(TOO_OLD);
}

function holding(name: string, text: string): HTMLElement {
  const node = document.createElement(name);
  node.textContent = text;
  return node;
}

function empty(): void {
  if (bench !== null) bench.textContent = "";
}

function say(sentence: string): void {
  empty();
  const notice = holding("p", sentence);
  notice.setAttribute("role", "alert");
  bench?.appendChild(notice);
}
