// What a shift gets from a production: weigh-up, timetable, delivery notes, what to order.

import { isUnkept } from "../../shared/protocol/lots.ts";
import type { ShiftAsk } from "../../shared/protocol/production.ts";
import type { Questions } from "../../shared/protocol/questions.ts";
import { actionButton, PATIENCE_MS } from "../kit/action-button.ts";
import { ask } from "../kit/ask.ts";
import { element } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { choiceField, type Form, goTo, messageLine, newForm, newId, showFaults } from "../kit/fields.ts";
import { section } from "../new-formula/sections.ts";
import { printPages } from "./print-pages.ts";

export type Productions = Questions["productions"]["answer"]["sheets"];
type Shift = { sheet: string; from: string; to: string };

const SILENT = "The sheet may still be on its way: look at the tabs under the grid before you ask again.";

export function nightForm(productions: Productions): Node[] {
  const [first] = productions;
  const shift: Shift = { sheet: "", from: "", to: "" };
  choose(shift, productions, first?.sheet ?? "");
  let wanted = false;
  const form = newForm();
  const faults = (): FieldFault[] => [
    ...(shift.from === "" ? [fieldFault("from", "Enter when the shift begins.", true)] : []),
    ...(shift.to === "" ? [fieldFault("to", "Enter when the shift ends.", true)] : []),
    ...(shift.from !== "" && shift.to !== "" && shift.to <= shift.from
      ? [fieldFault("to", "The shift ends before it begins. Enter a later end.")]
      : []),
  ];
  form.onChange(() => showFaults(form, faults(), wanted));
  const shiftNow = (): ShiftAsk | null => {
    const [bad] = faults();
    wanted = bad !== undefined;
    form.changed();
    if (bad === undefined) return { ...shift };
    goTo(form, bad.at);
    return null;
  };
  const ofShift = (question: ShiftSheet, label: string, look?: string) => shiftButton(question, label, shiftNow, look);
  const ofAll = (question: "customers" | "purchases", label: string) =>
    actionButton(
      {
        question,
        label,
        request: () => ({ sheet: shift.sheet }),
        busy: () => "Building the sheet …",
        done: built,
        silent: SILENT,
      },
      "quiet-button",
    );
  const printing = actionButton(
    {
      question: "night",
      label: "Print the night",
      request: shiftNow,
      busy: () => "Working out the cards …",
      done: ({ pages }) => {
        printPages(pages);
        return `${pages.length === 1 ? "One card" : `${pages.length} cards`}, one a page. If no print window opens, build the cards as sheets and print those.`;
      },
      silent: "Try once more; nothing is written for it.",
    },
    "quiet-button",
  );
  const nodes = [
    section(
      "The shift",
      choiceField(
        form,
        { at: () => "sheet", label: () => "Production" },
        productions.map(({ sheet }) => ({ value: sheet, text: sheet })),
        {
          get: () => shift.sheet,
          set: (sheet) => choose(shift, productions, sheet),
        },
      ),
      momentField(form, "from", "From", shift),
      momentField(form, "to", "To", shift),
      element("p", { class: "hint" }, "What is mixed in these hours is weighed, for whichever day it is."),
      ...ofShift("weighUp", "Build the weigh-up").nodes,
      ...ofShift("timetable", "Build the timetable", "quiet-button").nodes,
      ...printing.nodes,
      ...ofShift("cards", "Build the cards as sheets", "quiet-button").nodes,
    ),
    section(
      "For all of its days",
      ...ofAll("purchases", "Build the order list").nodes,
      ...ofAll("customers", "Build the delivery notes").nodes,
      ...lotsButton().nodes,
    ),
  ];
  form.changed();
  return nodes;
}

type ShiftSheet = "weighUp" | "timetable" | "cards";
const built = ({ sheet, note }: { readonly sheet: string; readonly note?: string }) =>
  `Built “${sheet}”.${note === undefined ? "" : ` ${note}`}`;

const shiftButton = (question: ShiftSheet, label: string, request: () => ShiftAsk | null, look?: string) =>
  actionButton(
    {
      question,
      label,
      request,
      busy: () => "Building the sheet …",
      done: built,
      silent: SILENT,
      // A lot log is a sheet of its own: it is built before a weigh-up whose lots it keeps makes way.
      first: { isDue: isUnkept, run: keepLots },
    },
    look,
  );

const lotsKept = ({ sheet, added }: Questions["keepLots"]["answer"]): string =>
  added === 0
    ? `“${sheet}” has them all already.`
    : `Kept ${added === 1 ? "one row" : `${added} rows`} in “${sheet}”: lots entered on weigh-ups.`;

async function keepLots() {
  const outcome = await ask("keepLots", {}, PATIENCE_MS);
  return "answer" in outcome ? { says: lotsKept(outcome.answer) } : outcome;
}

const lotsButton = () =>
  actionButton(
    {
      question: "keepLots",
      label: "Keep the lots",
      request: () => ({}),
      busy: () => "Reading the weigh-ups …",
      done: lotsKept,
      silent: "Look at the lot log before you try again.",
    },
    "quiet-button",
  );

/** A night begins at noon of the day before, until somebody says otherwise. */
function choose(shift: Shift, productions: Productions, sheet: string): void {
  const days = productions.find((one) => one.sheet === sheet)?.days ?? [];
  const [first = ""] = days;
  shift.sheet = sheet;
  shift.from = first === "" ? "" : `${dayBefore(first)}T12:00`;
  shift.to = first === "" ? "" : `${first}T12:00`;
}

const dayBefore = (date: string): string =>
  new Date(Date.parse(`${date}T00:00:00Z`) - 86_400_000).toISOString().slice(0, 10);

function momentField(form: Form, key: "from" | "to", label: string, shift: Shift): HTMLElement {
  const id = newId();
  const message = messageLine();
  const input = element("input", {
    id,
    type: "datetime-local",
    "aria-describedby": message.id,
    input: () => {
      shift[key] = input.value;
      form.changed();
    },
  });
  form.onChange(() => {
    if (input.value !== shift[key] && document.activeElement !== input) input.value = shift[key];
  });
  form.places.add({ at: () => key, control: input, message });
  return element(
    "div",
    { class: "field inline" },
    element("label", { class: "label", for: id }, label),
    input,
    message,
  );
}
