import { isProblem } from "../../shared/cells/cell.ts";
import type { FormulaSummary } from "../../shared/protocol/bench.ts";
import { actionButton } from "../kit/action-button.ts";
import { element } from "../kit/element.ts";
import { type Form, forget, goTo, messageLine, newForm, newId, showTroubles, textField } from "../kit/fields.ts";
import { readQuantity } from "../new-formula/quantity.ts";
import { section } from "../new-formula/sections.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";

type DayTyped = { date: string; readonly pieces: Map<string, string> };
/** What was typed, by day and formula sheet; it outlives another look at the workbook. */
export type Typed = { readonly days: DayTyped[] };
export const nothingTyped = (): Typed => ({ days: [{ date: "", pieces: new Map() }] });

/** Pieces of each product for one day or several, and below them why others are not among them. */
export function orderForm(sheets: readonly FormulaSummary[], others: readonly string[], typed: Typed): Node[] {
  let wanted = false;
  const form = newForm();
  const dayPart = (day: DayTyped) => dayGroup(form, sheets, typed, day, () => another.focus());
  const days = element("div", {}, ...typed.days.map(dayPart));
  form.onChange(() => showTroubles(form, readOrders(sheets, typed).troubles, wanted));
  const another = element(
    "button",
    {
      type: "button",
      class: "quiet-button",
      click: () => {
        const day = { date: dayAfter(typed.days[typed.days.length - 1]?.date ?? ""), pieces: new Map() };
        typed.days.push(day);
        const part = dayPart(day);
        days.append(part);
        form.changed();
        part.querySelector("input")?.focus();
      },
    },
    "Orders for another day",
  );
  const act = actionButton({
    question: "day",
    label: "Make the day sheet",
    asked: () => {
      const { orders, troubles } = readOrders(sheets, typed);
      const [first] = troubles;
      wanted = first !== undefined;
      form.changed();
      if (first === undefined) return { day: firstOf(orders), orders };
      goTo(form, first.at);
      return null;
    },
    busy: () => "Making the day sheet …",
    done: ({ sheet, note }) =>
      `Made “${sheet}”, a sheet of its own.${note === undefined ? "" : ` ${note}`} Type there what is in stock and what a pack holds.`,
    silent: "The sheet may still be on its way: look at the tabs under the grid before you ask again.",
  });
  form.changed();
  return [
    section(
      "Orders",
      element("p", { class: "hint" }, "Pieces of each product; leave blank what is not made."),
      days,
      another,
      ...others.map((says) => element("p", { class: "hint" }, says)),
      ...act.nodes,
    ),
  ];
}

/** The fields of one day: its date, and the pieces of each product. */
function dayGroup(
  form: Form,
  sheets: readonly FormulaSummary[],
  typed: Typed,
  day: DayTyped,
  afterRemoval: () => void,
): HTMLElement {
  const at = () => typed.days.indexOf(day);
  const pieceFields = sheets.map(({ sheet }, place) =>
    textField(
      form,
      { at: () => `pieces/${at()}/${place}`, label: () => sheet, numeric: true, inline: true },
      {
        get: () => day.pieces.get(sheet) ?? "",
        set: (text) => {
          day.pieces.set(sheet, text);
        },
      },
    ),
  );
  const removeDay = () => {
    typed.days.splice(at(), 1);
    forget(form, group);
    group.remove();
    form.changed();
    afterRemoval();
  };
  const removal = element("button", { type: "button", class: "quiet-button", click: removeDay }, "Without this day");
  const group = element(
    "div",
    { role: "group" },
    dateField(form, day, () => `date/${at()}`),
    ...pieceFields,
    removal,
  );
  form.onChange(() => {
    group.setAttribute("aria-label", `Day ${at() + 1}`);
    removal.hidden = typed.days.length === 1;
  });
  return group;
}

function dateField(form: Form, day: DayTyped, at: () => string): HTMLElement {
  const id = newId();
  const message = messageLine();
  const date = element("input", {
    id,
    type: "date",
    "aria-describedby": message.id,
    input: () => {
      day.date = date.value;
      form.changed();
    },
  });
  date.value = day.date;
  form.places.add({ at, control: date, message });
  return element("div", { class: "field inline" }, element("label", { class: "label", for: id }, "Day"), date, message);
}

const UNITS = { weight: "g", temperature: "C", length: "cm" } as const;
type Order = { readonly sheet: string; readonly pieces: number; readonly day?: string };

function readOrders(sheets: readonly FormulaSummary[], { days }: Typed): { orders: Order[]; troubles: Trouble[] } {
  const troubles: Trouble[] = [];
  const orders = days.flatMap(({ date, pieces: typed }, at) => {
    const ordered = sheets.flatMap(({ sheet }, place): Order[] => {
      const pieces = readQuantity(typed.get(sheet) ?? "", "count", UNITS);
      if (isProblem(pieces)) troubles.push(trouble(`pieces/${at}/${place}`, `The number of pieces ${pieces.problem}.`));
      if (pieces === null || isProblem(pieces)) return [];
      return [{ sheet, pieces, ...(date === "" ? {} : { day: date }) }];
    });
    if (ordered.length > 0 && date === "" && days.length > 1)
      troubles.push(trouble(`date/${at}`, "Choose the day of these orders.", true));
    return ordered;
  });
  if (orders.length === 0 && troubles.length === 0)
    troubles.push(trouble("pieces/0/0", "Enter how many pieces of at least one product you want.", true));
  return { orders, troubles };
}

/** The first day that is ordered for; "" where none is chosen. */
const firstOf = (orders: readonly Order[]): string => orders.flatMap(({ day }) => day ?? []).sort()[0] ?? "";

function dayAfter(date: string): string {
  const time = Date.parse(`${date}T00:00:00Z`);
  return Number.isNaN(time) ? "" : new Date(time + 86_400_000).toISOString().slice(0, 10);
}
