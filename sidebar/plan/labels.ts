// What a bakery needs for the labels of all its products: two sheets, and a file for the label printer.

import { csvOf, csvText } from "../../shared/base/csv.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { section } from "../new-formula/sections.ts";
import { SHEET_ON_ITS_WAY } from "./silence.ts";

const OPTIONS = { weight: "g", temperature: "C", length: "cm", parts: [] } as const;

const building = (template: string, label: string): Node[] => [
  ...actionButton(
    {
      question: "build",
      label,
      request: () => ({ template, options: OPTIONS, values: {} }),
      busy: () => "Building the sheet …",
      done: ({ sheet, note }) => `Built “${sheet}”. No other sheet was changed.${note === undefined ? "" : ` ${note}`}`,
      silent: SHEET_ON_ITS_WAY,
    },
    "quiet-button",
  ).nodes,
];

export function labels(): HTMLElement {
  const file = element("div", {});
  const saving = actionButton(
    {
      question: "labels",
      label: "Save label texts as .csv",
      request: () => ({}),
      busy: () => "Reading the label texts …",
      done: ({ rows, without }) => {
        // A label shows its texts as they are, such as “-18 °C or below”; a formula alone is made a text.
        const text = csvOf(rows.map((row) => row.map((cell) => (cell.startsWith("=") ? csvText(cell) : cell))));
        file.replaceChildren(...linksTo(text));
        const left = without === 0 ? "" : ` ${without} without an ingredient list left out.`;
        return `${rows.length - 1} ${rows.length === 2 ? "label" : "labels"} ready.${left}`;
      },
      silent: "Wait until the sheets are calculated, then try again.",
    },
    "quiet-button",
  );
  return section(
    "Labels",
    element(
      "p",
      { class: "hint" },
      "Both sheets follow the formula sheets. Check them against your suppliers’ specifications.",
    ),
    element("p", {}, "Every product and its allergens on one page, with what changed since the last print."),
    ...building("allergen-table", "Build an allergen table"),
    ...actionButton(
      {
        question: "printed",
        label: "Mark as printed",
        request: () => ({}),
        busy: () => "Keeping what is printed …",
        done: printedSentence,
        silent: "Look at the table: changes that are still marked were not kept.",
      },
      "quiet-button",
    ).nodes,
    element(
      "p",
      {},
      "Name, list, allergens, weight, date, batch code and storage of every product, to copy or to save.",
    ),
    ...building("label-text", "Build label texts"),
    ...saving.nodes,
    file,
  );
}

/** A link to the file, and the same text to copy where a browser keeps it from being saved. */
function linksTo(text: string): Node[] {
  // With the mark that tells spreadsheets and printers that it is UTF-8.
  const address = `data:text/csv;charset=utf-8,${encodeURIComponent(`\ufeff${text}`)}`;
  const area = element("textarea", { rows: "4", readOnly: true, "aria-label": "Label texts as .csv" });
  area.value = text;
  return [element("a", { href: address, download: "label-texts.csv" }, "Save label-texts.csv"), area];
}

export function printedSentence({ products, unknown }: Questions["printed"]["answer"]): string {
  const marked = `${products} ${products === 1 ? "product is" : "products are"} marked as printed. Later changes are marked in the table.`;
  if (unknown === 0) return marked;
  return `${marked} ${unknown} ${unknown === 1 ? "shows" : "show"} no allergens now, and what was printed before stays known. Wait until all is calculated, or enter the ingredient that is not known, then press it again.`;
}
