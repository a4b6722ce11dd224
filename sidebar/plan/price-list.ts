// A supplier's price list, read into Ingredients line by line.
import { Refusal } from "../../shared/base/refusal.ts";
import { columnsIn } from "../../shared/price-list/columns.ts";
import { AS_NEW, type Decision } from "../../shared/price-list/decide.ts";
import type { Line } from "../../shared/price-list/lines.ts";
import { type Table, tableOf } from "../../shared/price-list/table.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { actionButton } from "../kit/action-button.ts";
import { element, say } from "../kit/element.ts";
import { type Form, newForm, newId, textField } from "../kit/fields.ts";
import { section } from "../new-formula/sections.ts";
import { fileTable } from "./price-file.ts";
import { columnFields, lineNodes } from "./price-lines.ts";
import { decided, type Reading } from "./price-reading.ts";

export function priceList(): HTMLElement {
  const [fileId, textId] = [newId(), newId()];
  const fault = element("p", { class: "fault", role: "status", hidden: true });
  const complain = (says: string): null => {
    say(fault, says);
    fault.hidden = says === "";
    return null;
  };
  const body = element("div", {});
  let picked: Table | null = null;
  const area = element("textarea", { id: textId, rows: 4, spellcheck: "false" });
  const file = element("input", {
    id: fileId,
    type: "file",
    accept: ".xlsx,.csv,.tsv,.txt",
    change: () => void pick(),
  });
  async function pick(): Promise<void> {
    picked = null;
    complain("");
    const [chosen] = file.files ?? [];
    if (chosen === undefined) return;
    try {
      picked = fileTable(new Uint8Array(await chosen.arrayBuffer()));
    } catch (error) {
      complain(
        error instanceof Refusal ? error.message : "This file could not be read. Copy its cells and paste them.",
      );
    }
  }
  const table = (): Table | null => (area.value.trim() === "" ? picked : tableOf(area.value));
  const reading = actionButton(
    {
      question: "priceSheet",
      label: "Read the price list",
      request: () => {
        if (table() !== null) complain("");
        return table() === null ? complain("Choose a file, or paste the list’s cells.") : {};
      },
      busy: () => "Reading the ingredients …",
      done: (sheet) => {
        const rows = table() ?? [];
        const columns = columnsIn(rows);
        const read: Reading = {
          sheet,
          table: rows,
          columns,
          places: columns.places,
          choices: new Map(),
          supplier: "",
          isRemembered: true,
        };
        body.replaceChildren(...readNodes(read, done));
        return "";
      },
      silent: "Wait until the sheets are calculated, then read it again.",
      failed: () => body.replaceChildren(),
    },
    "quiet-button",
  );
  const took = element("p", { class: "note", role: "status", hidden: true });
  function done(says: string): void {
    say(took, says);
    took.hidden = false;
    area.value = file.value = "";
    picked = null;
    body.replaceChildren();
  }
  return section(
    "Price list",
    element(
      "p",
      {},
      "A supplier’s price list comes into Ingredients line by line. Whatever is unclear is asked before anything is written.",
    ),
    element("label", { class: "label", for: fileId }, "File (.xlsx or .csv)"),
    file,
    element("label", { class: "label", for: textId }, "or pasted cells"),
    area,
    fault,
    ...reading.nodes,
    took,
    body,
  );
}

function readNodes(read: Reading, done: (says: string) => void): HTMLElement[] {
  const form = newForm();
  const lines = element("div", {});
  let decision = decided(read);
  const taking = actionButton({
    question: "takePrices",
    label: "Take these prices",
    request: () => chosenPrices(read, decision),
    busy: () => "Writing the prices …",
    done: (answer) => {
      const says = tookSentence(answer);
      done(says);
      return says;
    },
    silent: "Look at “Price before” in Ingredients before you try again.",
  });
  const taken = element("div", {}, ...taking.nodes);
  // Fields of lines are made anew, so that they know no form: each change brings the list up to date.
  const show = (): void => {
    decision = decided(read);
    lines.replaceChildren(...lineNodes(read, decision, next));
    taken.hidden = decision.taken.length === 0 || decision.open.length > 0;
  };
  const next = (): void => {
    show();
    (
      lines.querySelector<HTMLElement>('[role="group"] select, [role="group"] input') ?? taken.querySelector("button")
    )?.focus();
  };
  form.onChange(show);
  const nodes = [columnFields(read, show), supplierField(read, form), lines, taken];
  form.changed();
  return nodes;
}

function supplierField(read: Reading, form: Form): HTMLElement {
  return textField(
    form,
    {
      at: () => "supplier",
      label: () => "Supplier of this list",
      hint: "If blank, each ingredient keeps its supplier.",
    },
    {
      get: () => read.supplier,
      set: (text) => {
        read.supplier = text;
      },
    },
  );
}

const MAX_NAME = 100;

function chosenPrices({ choices, isRemembered }: Reading, { taken }: Decision): Questions["takePrices"]["ask"] {
  const isNew = ({ row }: Line) => choices.get(row)?.of === AS_NEW;
  return {
    rows: taken.map(({ line, now, offer }) => ({
      name: now?.name ?? line.name,
      price: offer.price,
      pack: offer.pack,
      supplier: offer.supplier,
    })),
    added: taken.flatMap(({ line }) => (isNew(line) ? [line.name] : [])),
    also: isRemembered
      ? taken.flatMap(({ line, now }) =>
          now !== null && line.of === null && !line.name.includes(";") && line.name.length <= MAX_NAME
            ? [{ name: line.name, of: now.name }]
            : [],
        )
      : [],
  };
}

export function tookSentence({ sheet, written, formulas, changes, added }: Questions["takePrices"]["answer"]): string {
  const each = changes.slice(0, 12).map(({ name, before, now }) => `${name} ${before} → ${now}`);
  return [
    `${written} ${written === 1 ? "price stands" : "prices stand"} on “${sheet}” now.`,
    ...(each.length === 0
      ? []
      : [`Changed: ${each.join(", ")}${changes.length > 12 ? ` and ${changes.length - 12} more` : ""}.`]),
    ...(added.length === 0 ? [] : [`New there: ${added.join(", ")}. Enter types and allergens.`]),
    ...(formulas.length === 0 ? [] : [`A cell formula stands in the price of ${formulas.join(", ")}: it stays.`]),
  ].join(" ");
}
