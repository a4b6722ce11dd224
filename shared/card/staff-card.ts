// A staff card as a sheet model: one page, big type, nothing in it that the add-on is needed for.

import type { Block, ColumnModel, SheetModel, Table, Value, Values } from "../sheet/model.ts";
import { plan } from "../sheet/plan.ts";
import type { CardAmount, CardData, CardKind } from "./data.ts";
import { livingCard } from "./living.ts";
import { block, type Into, pageColumns, TICK, text } from "./parts.ts";
import { type Fitted, fits, fitType, HEADING, TYPES, wrapText } from "./type-size.ts";
import { valuesCard } from "./values.ts";

export type Card = { readonly model: SheetModel; readonly values: Values };

const blankHead = "";

/** In the largest type in which all of it stands on one page. */
export function staffCard(data: CardData, amount: CardAmount, kind: CardKind): Card {
  let card = drawn(data, amount, kind, 1);
  for (const type of TYPES) {
    card = drawn(data, amount, kind, type);
    const options = { weight: data.unit, temperature: "C", length: "cm", parts: [] } as const;
    if (fits(plan(card.model, options, card.values), card.model)) break;
  }
  return card;
}

function drawn(data: CardData, amount: CardAmount, kind: CardKind, type: number): Card {
  const values = new Map<string, Value | readonly Value[]>();
  const size = fitType(data, kind === "living", type);
  const page = pageColumns(data);
  const draw = kind === "living" ? livingCard(data, amount, values) : valuesCard(data, amount, values);
  const model: SheetModel = {
    name: "staff-card",
    title: `${data.title} – card`,
    says: "A card for the bench.",
    // As wide as a column of weights: so they go along in one call.
    widths: [...size.widths, ...Array<number>(draw.workings.length === 0 ? 0 : WORKINGS).fill(size.widths[2] ?? 76)],
    type: size.type,
    foldedFrom: page,
    bands: [
      [block("top", [text(data.title, "title"), text(data.from, "remark")])],
      [draw.make, ...(draw.workings.length === 0 ? [] : [{ block: "workings", left: page, lines: draw.workings }])],
      [table(data, draw.columns, values), ...basesTable(data, draw.bases, page)],
      ...(draw.below.length === 0 ? [] : [[block("below", draw.below)]]),
      ...aside(data, size, values),
    ],
    parts: [],
    sample: {},
    expects: {},
  };
  return { model, values: Object.fromEntries(values) };
}

/** The table: a box to tick, the ingredient, and what goes into each mix. */
function table(data: CardData, columns: readonly ColumnModel[], values: Into): Table {
  values.set(
    "tick",
    data.ingredients.map(() => TICK),
  );
  values.set("item", data.ingredients);
  return {
    table: "card",
    left: 0,
    rows: data.ingredients.length,
    columns: [
      { name: "tick", head: blankHead, unit: "text", role: "ruled" },
      { name: "item", head: HEADING, unit: "text", role: "ruled", wraps: true },
      ...columns,
    ],
  };
}

/** What a living card reckons from stands beside the table, row by row. */
const basesTable = (data: CardData, columns: readonly ColumnModel[], left: number): Table[] =>
  columns.length === 0 ? [] : [{ table: "bases", left, rows: data.ingredients.length, columns }];

/** Columns beside the page: more than any card fills. */
const WORKINGS = 24;

/** Facts, the steps of the day, and the cautions. */
function aside(data: CardData, size: Fitted, values: Into): (Block | Table)[][] {
  const facts = [data.water, ...data.facts].flatMap((fact) => wrapText(fact, size.letters));
  const cautions = data.cautions.flatMap((caution) => wrapText(caution, size.smallLetters));
  values.set(
    "done",
    data.timed.map(() => TICK),
  );
  values.set(
    "step",
    data.timed.map(({ step }) => step),
  );
  values.set(
    "minutes",
    data.timed.map(({ minutes }) => minutes),
  );
  values.set(
    "start",
    data.timed.map(({ start, day }) => [day, start].filter((one) => one !== "").join(", ")),
  );
  const steps: Table = {
    table: "timed",
    left: 0,
    rows: data.timed.length,
    columns: [
      { name: "done", head: blankHead, unit: "text", role: "ruled" },
      { name: "step", head: "Step", unit: "text", role: "ruled", wraps: true },
      { name: "minutes", head: "Minutes", unit: "plain", role: "figure" },
      { name: "start", head: "Starts at", unit: "text", role: "ruled", align: "right" },
    ],
  };
  return [
    ...(facts.length === 0
      ? []
      : [
          [
            block(
              "facts",
              facts.map((fact) => text(fact)),
            ),
          ],
        ]),
    ...(data.timed.length === 0 ? [] : [[steps]]),
    [
      block(
        "cautions",
        cautions.map((caution) => text(caution, "caution")),
      ),
    ],
  ];
}
