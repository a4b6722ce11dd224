// Rows of fields that are typed like a sheet: down a column, or pasted. A row is made once and kept as long as it is there.
import { element, say } from "./element.ts";
import { type Form, forget, messageLine, textField } from "./fields.ts";

export type Column<R> = {
  readonly name: keyof R & string;
  readonly at: string;
  readonly head: string;
  readonly unit?: () => string;
  readonly numeric?: boolean;
  readonly list?: string;
  /** Not shown while this says so. */
  readonly hidden?: () => boolean;
  readonly done?: (row: R) => void;
};

type Table<R> = {
  readonly form: Form;
  readonly rows: R[];
  readonly columns: readonly Column<R>[];
  readonly max: number;
  readonly empty: () => R;
  readonly looks: string;
  /** "size", "ingredient". */
  readonly what: string;
};

export function table<R extends Record<string, string>>({ form, rows, columns, max, empty, looks, what }: Table<R>) {
  const body = element("div", { class: `rows ${looks}` });
  const nodes = new Map<R, HTMLElement>();
  const add = element(
    "button",
    { type: "button", class: "quiet-button", click: () => addRow() },
    `Add ${article(what)}`,
  );
  form.onChange(() => {
    for (const [row, node] of nodes) {
      if (rows.includes(row)) continue;
      node.remove();
      forget(form, node);
      nodes.delete(row);
    }
    rows.forEach((row, index) => {
      const node = nodes.get(row) ?? makeRow(row);
      if (body.children[index + 1] !== node) body.insertBefore(node, body.children[index + 1] ?? null);
    });
    add.hidden = rows.length >= max;
  });
  body.append(headRow(form, columns));
  return element("div", {}, body, add);

  function makeRow(row: R): HTMLElement {
    const message = messageLine();
    const cells = columns.map((column) => {
      const cell = rowField(form, rows, row, column, what, message);
      const input = cell.querySelector("input");
      input?.addEventListener("keydown", (event) => move(event, row, column.name, input));
      input?.addEventListener("paste", (event) => paste(event, row, column.name));
      return cell;
    });
    const remove = element("button", { type: "button", class: "remove", click: () => removeRow(row) }, "×");
    form.onChange(() => remove.setAttribute("aria-label", `Take out ${what} ${rows.indexOf(row) + 1}`));
    const node = element("div", { class: "row" }, ...cells, remove, message);
    nodes.set(row, node);
    return node;
  }

  function addRow(): void {
    rows.push(empty());
    form.changed();
    focus(rows.length - 1, 0);
  }

  function removeRow(row: R): void {
    const at = rows.indexOf(row);
    rows.splice(at, 1);
    if (rows.length === 0) rows.push(empty());
    form.changed();
    focus(Math.min(at, rows.length - 1), 0);
  }

  /** Enter and the arrows go down and up a column, so that figures can be typed one below the other. */
  function move(event: KeyboardEvent, row: R, name: string, input: HTMLInputElement): void {
    const down = event.key === "Enter" || (event.key === "ArrowDown" && !input.hasAttribute("list"));
    const up = event.key === "ArrowUp" && !input.hasAttribute("list");
    if ((!down && !up) || event.isComposing) return;
    event.preventDefault();
    const to = rows.indexOf(row) + (down ? 1 : -1);
    if (event.key === "Enter" && to === rows.length && rows.length < max) {
      rows.push(empty());
      form.changed();
    }
    focus(
      to,
      columns.findIndex((column) => column.name === name),
    );
  }

  /** Cells copied from a sheet fill the table from here on. */
  function paste(event: ClipboardEvent, row: R, name: string): void {
    const text = event.clipboardData?.getData("text/plain") ?? "";
    if (!/[\t\n\r]/.test(text.trim())) return;
    event.preventDefault();
    const from = { row: rows.indexOf(row), column: columns.findIndex((column) => column.name === name) };
    fillCells(rows, columns, from, text, () => {
      if (rows.length < max) rows.push(empty());
    });
    form.changed();
  }

  function focus(index: number, column: number): void {
    const row = rows[index];
    const input = row === undefined ? undefined : nodes.get(row)?.querySelectorAll("input")[column];
    input?.focus();
    input?.select();
  }
}

function headRow<R>(form: Form, columns: readonly Column<R>[]): HTMLElement {
  const cells = columns.map(({ head, unit, numeric, hidden }) => {
    const sign = element("span", { class: "unit" });
    const cell = element("span", { class: numeric === true ? "head number" : "head" }, head, " ", sign);
    form.onChange(() => {
      say(sign, unit?.() ?? "");
      cell.hidden = hidden?.() ?? false;
    });
    return cell;
  });
  return element("div", { class: "row heads", "aria-hidden": "true" }, ...cells, element("span", {}));
}

/** A column's field in a row. */
function rowField<R extends Record<string, string>>(
  form: Form,
  rows: readonly R[],
  row: R,
  { name, at, head, unit, numeric, list, hidden, done }: Column<R>,
  what: string,
  message: HTMLElement,
): HTMLElement {
  const cell = textField(
    form,
    {
      at: () => `${at}/${rows.indexOf(row)}`,
      label: () => `${head}${unit === undefined ? "" : ` ${unit()}`}, ${what} ${rows.indexOf(row) + 1}`,
      quiet: true,
      message,
      ...(numeric === undefined ? {} : { numeric }),
      ...(done === undefined ? {} : { done: () => done(row) }),
    },
    {
      get: () => row[name] ?? "",
      set: (text) => {
        (row as Record<string, string>)[name] = text;
      },
    },
  );
  form.onChange(() => {
    cell.hidden = hidden?.() ?? false;
  });
  if (list !== undefined) cell.querySelector("input")?.setAttribute("list", list);
  return cell;
}

/** Fills rows with text of a sheet, tabs between cells, from one cell on; `addRow` is asked for one more row below the last. */
function fillCells<R extends Record<string, string>>(
  rows: readonly R[],
  columns: readonly Column<R>[],
  from: { readonly row: number; readonly column: number },
  text: string,
  addRow: () => void,
): void {
  text
    .replace(/[\r\n]+$/, "")
    .split(/\r\n?|\n/)
    .forEach((line, down) => {
      if (rows.length === from.row + down) addRow();
      const row: Record<string, string> | undefined = rows[from.row + down];
      line.split("\t").forEach((cell, across) => {
        const column = columns[from.column + across];
        if (column?.hidden?.() === true) return;
        if (row !== undefined && column !== undefined) row[column.name] = cell.trim();
      });
    });
}

const article = (what: string) => (/^[aeiou]/.test(what) ? `an ${what}` : `a ${what}`);
