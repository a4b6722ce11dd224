// Where the text comes from: pasted, typed, or out of a file; and whose cups it counts in.

import type { CupSystem } from "../../shared/base/volumes.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, type Form, messageLine, newId } from "../kit/fields.ts";
import { type PasteState, readAgain, takeText } from "./state.ts";

export const CUPS: readonly CupSystem[] = ["US", "AU", "UK", "EU"];
export const CUP_WORDS: Readonly<Record<CupSystem, string>> = { US: "US", AU: "Australia", UK: "UK", EU: "Europe" };

export function textArea(state: PasteState, form: Form): HTMLElement {
  const id = newId();
  const message = messageLine();
  const area = element("textarea", {
    id,
    rows: 8,
    spellcheck: "false",
    "aria-describedby": message.id,
    placeholder: "Quay rolls\n500 g flour\n1 1/4 cups milk\n2 tsp salt …",
    input: () => {
      takeText(state, area.value);
      form.changed();
    },
  });
  form.places.add({ at: () => "text", control: area as unknown as HTMLInputElement, message });
  return element(
    "div",
    { class: "field" },
    element("label", { class: "label", for: id }, "The recipe, as you have it"),
    area,
    message,
  );
}

const MAX_BYTES = 2_000_000;

/** A text file instead of a paste; it is read in the page. */
export function fileField(state: PasteState, form: Form): HTMLElement {
  const id = newId();
  const message = messageLine();
  const input = element("input", {
    id,
    type: "file",
    accept: ".csv,.tsv,.txt,text/csv,text/plain",
    "aria-describedby": message.id,
    change: () => void opened(),
  });
  return element(
    "div",
    { class: "field" },
    element("label", { class: "label", for: id }, "Or a file (.csv, .txt)"),
    input,
    message,
  );

  async function opened(): Promise<void> {
    const [file] = input.files ?? [];
    if (file === undefined) return;
    const isLong = file.size > MAX_BYTES;
    const text = isLong ? "" : await file.text();
    message.hidden = !isLong;
    say(message, isLong ? "The file is larger than 2 MB. Choose one with fewer recipes." : "");
    if (isLong) return;
    const area = input.closest("section")?.querySelector("textarea");
    if (area) area.value = text;
    takeText(state, text);
    form.changed();
  }
}
export function cupsField(state: PasteState, form: Form): HTMLElement {
  return choiceField(
    form,
    { at: () => "cups", label: () => "Cups and spoons", inline: true },
    CUPS.map((one) => ({ value: one, text: CUP_WORDS[one] })),
    {
      get: () => state.cups,
      set: (value) => {
        state.cups = CUPS.find((one) => one === value) ?? "US";
        readAgain(state);
      },
    },
  );
}
