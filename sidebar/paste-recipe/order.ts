// From the lines to what is sent: the order for a sheet, and everything that is in its way.

import { CellError } from "../../shared/base/refusal.ts";
import { quoted } from "../../shared/base/show.ts";
import { fromGrams, type Grams, grams, type Weight, weight } from "../../shared/base/units.ts";
import { isProblem, number } from "../../shared/cells/cell.ts";
import { flourShares, sum } from "../../shared/formula/formula.ts";
import { type Kind, kind } from "../../shared/larder/kinds.ts";
import { inputNames, type Order } from "../../shared/protocol/bench.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { tidy } from "../new-formula/shares.ts";
import { shopValues } from "../new-formula/shop.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";
import type { ReadDraft } from "./draft.ts";
import type { Line } from "./lines.ts";
import { makeValues } from "./make.ts";

export type ReadState = {
  readonly order: Order;
  readonly troubles: readonly Trouble[];
  /** By line, null where it has none or none can be told. */
  readonly shares: readonly (number | null)[];
  readonly dough: Weight | null;
  readonly flour: Weight | null;
};

const WEIGHT = number("grams such as 350", { above: 0, max: 1e7 }, {});

type Row = { readonly at: number; readonly grams: Grams | null; readonly kind: Kind | null };

export function assessLines(draft: ReadDraft, model: SheetModel): ReadState {
  const troubles: Trouble[] = [];
  if (draft.title.trim() === "") {
    troubles.push(trouble("title", "Give the formula a name; the new sheet is called after it.", true));
  }
  const rows = draft.lines.flatMap((line, at) => (line.is === "ingredient" ? [readRow(line, at, troubles)] : []));
  const most = mostRows(model);
  if (rows.length > most)
    troubles.push(trouble("template", `This template has ${most} rows, and these are ${rows.length} ingredients.`));
  const known = rows.map((row) => (row.kind === null ? null : row.grams));
  const shares = sharesOf(rows, known, troubles);
  const isRead = rows.length > 0 && known.every((one) => one !== null);
  const whole = isRead ? sum(known) : null;
  const { values, isWhole } = makeValues(draft, model, whole === null ? null : grams(whole), troubles);
  const inUnit = (value: number) => tidy(fromGrams(grams(value), draft.units.weight));
  values.set("title", draft.title.trim());
  values.set(
    "ingredient",
    rows.map(({ at }) => draft.lines[at]?.name.trim() ?? ""),
  );
  values.set(
    "kind",
    rows.map(({ at, kind: one }) =>
      one === null || one.word === "preferment" ? (draft.lines[at]?.kind.trim() ?? "") : one.word,
    ),
  );
  if (draft.columns === "weighed") {
    values.set(
      "weighed",
      known.map((one) => (one === null ? null : inUnit(one))),
    );
  } else {
    values.set(
      "percent",
      shares.map((one) => (one === null ? null : tidy(one))),
    );
    if (isWhole && whole !== null) {
      values.set("by", wholeChoice(model));
      values.set("dough_wanted", inUnit(whole));
    }
  }
  values.set("change_1", sectionsOf(draft));
  if (draft.shop !== null) {
    for (const [name, value] of shopValues({ ...draft.shop, units: draft.units })) values.set(name, value);
  }
  const inputs = inputNames(model);
  return {
    order: {
      template: model.name,
      // A tin's sizes are no part of a recipe text; the sheet does without one.
      options: {
        ...draft.units,
        parts: model.parts.filter((part) => part !== "tin"),
      },
      values: Object.fromEntries([...values].filter(([name]) => inputs.has(name))),
    },
    troubles,
    shares: draft.lines.map((_, at) => shares[rows.findIndex((row) => row.at === at)] ?? null),
    dough: whole === null ? null : weight(whole),
    flour: whole === null ? null : weight(sum(rows.map((row) => (row.grams ?? 0) * (row.kind?.flour ?? 0)))),
  };
}

function readRow(line: Line, at: number, troubles: Trouble[]): Row {
  const place = `line ${at + 1}`;
  const asked = line.asks === "" ? "" : `${line.asks}`;
  if (line.busy) troubles.push(trouble(`text/${at}`, `Line ${at + 1} is still being read.`, true));
  else if (line.failed !== "" || line.text.trim() !== line.read) {
    troubles.push(trouble(`text/${at}`, line.failed || `The text of ${place} was changed and not read yet.`));
  }
  const blanks: string[] = [];
  if (line.name.trim() === "") blanks.push("name");
  let kindRead: Kind | null = null;
  if (line.kind.trim() === "") blanks.push("kind");
  else {
    const read = kind().read(line.kind);
    const unread = isProblem(read) ? read.problem : "unread" in read ? read.unread : "";
    if (unread !== "") troubles.push(trouble(`kind/${at}`, `The kind of ${place} ${unread}.`));
    else kindRead = read as Kind;
  }
  let weighed: Grams | null = null;
  if (line.grams.trim() === "") blanks.push("grams");
  else if (!line.own.grams && line.exact !== null) weighed = grams(line.exact);
  else {
    const read = WEIGHT.read(line.grams.replace(/\s*g(rams?)?\.?$/i, ""));
    if (isProblem(read))
      troubles.push(trouble(`grams/${at}`, `The grams of ${place} are ${read.problem.replace(/^is /, "")}.`));
    else weighed = grams(read);
  }
  const [first] = blanks;
  // The question was put when the line was read, so it is said at once and not when somebody wants to build.
  if (first !== undefined)
    troubles.push(trouble(`${first}/${at}`, asked || `Enter the ${blanks.join(" and the ")} of ${place}.`));
  return { at, grams: weighed, kind: kindRead };
}

function sharesOf(
  rows: readonly Row[],
  known: readonly (Grams | null)[],
  troubles: Trouble[],
): readonly (number | null)[] {
  const nothing = rows.map(() => null);
  const first = `name/${rows[0]?.at ?? 0}`;
  if (rows.length === 0) {
    troubles.push(trouble("text", "No line is an ingredient yet; paste the recipe and read it.", true));
    return nothing;
  }
  try {
    return flourShares(
      known.map((one) => (one === null ? null : weight(one))),
      rows.map((row) => row.kind),
    );
  } catch (error) {
    if (!(error instanceof CellError)) throw error;
    // While a line is open, it may be the flour.
    if (known.every((one) => one !== null))
      troubles.push(
        trouble(first, "No line is flour: every percentage is of the flour. Choose flour as the kind of one.", true),
      );
    return nothing;
  }
}

/** What the sheet calls making by the whole of it. */
function wholeChoice(model: SheetModel): string {
  const cells = model.bands.flat().flatMap((item) => ("lines" in item ? item.lines.flatMap((line) => line.cells) : []));
  const choices = cells.find(({ name }) => name === "by")?.choices ?? [];
  return choices.find((one) => one === "batter") ?? "dough";
}

/** Rows of the template's ingredient table; one that grows holds any number. */
function mostRows(model: SheetModel): number {
  for (const item of model.bands.flat()) {
    if ("table" in item && item.columns.some(({ name }) => name === "ingredient")) {
      return item.spare === undefined ? item.rows : Number.POSITIVE_INFINITY;
    }
  }
  return 0;
}

/** The sections of the recipe, kept among the sheet's changes: which rows stood under which heading. */
function sectionsOf({ lines, cups }: ReadDraft): string {
  const told: string[] = [];
  let heading = "";
  let from = 1;
  let row = 0;
  const end = () => {
    if (heading !== "" && row >= from)
      told.push(`${heading} ${from === row ? `row ${row}` : `rows ${from} to ${row}`}`);
  };
  for (const { is, text } of lines) {
    if (is === "ingredient") row += 1;
    if (is !== "heading") continue;
    end();
    heading = quoted(text.replace(/[\s:]+$/, ""));
    from = row + 1;
  }
  end();
  return `read in from a recipe text, ${cups} cups${told.length === 0 ? "" : `; ${told.join(", ")}`}`.slice(0, 480);
}
