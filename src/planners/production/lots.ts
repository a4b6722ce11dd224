// Lots that were entered on weigh-ups go into the lot log, a row for each mix, ingredient and lot.
import { refuse } from "../../../shared/base/refusal.ts";
import type { SeenSheet } from "../../../shared/protocol/look.ts";
import { type LotRow, type LotsAnswer, readLotsAnswer } from "../../../shared/protocol/lots.ts";
import { numbered, sheetName } from "../../../shared/protocol/plan-message.ts";
import { isWaitingText } from "../../../shared/protocol/waiting.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import { LOTS_NAME } from "../../../shared/sheet/workbook-names.ts";
import { lotLog } from "../../../templates/production/lot-log.ts";
import { TEMPERATURES, WEIGH_UP_MARK } from "../../../templates/production/weigh-up.ts";
import { ENTRIES } from "../../../templates/production/weigh-up-lines.ts";
import { look, make, type Steps } from "../steps.ts";

/** A weigh-up that was there before: its lots, and its temperatures by what it says of its shift. */
export type Before = {
  readonly name: string;
  readonly id: number;
  readonly lots: readonly LotRow[];
  readonly temperatures: ReadonlyMap<string, readonly (number | null)[]>;
};

/**
 * What was entered on the sheet that a new weigh-up of this name takes the place of; null where there is none of its production.
 * Another production's may have the name, and this one's the name after it.
 */
export function* weighUpBefore(
  name: string,
  { begins, ends }: { readonly begins: string; readonly ends: string },
): Steps<Before | null> {
  for (let count = 1; ; count++) {
    const tried = numbered(sheetName(name), count);
    const [before] = (yield* look({ sheet: tried, unnamed: true })).sheets;
    if (before === undefined) return null;
    const says = shiftOf(before);
    if (weighUps([before]).length > 0 && says.startsWith(begins) && says.endsWith(ends))
      return { name: tried, id: before.id, lots: lotsOn(before), temperatures: temperaturesIn([before]) };
  }
}

function* keepRows(rows: readonly LotRow[]): Steps<LotsAnswer> {
  const { names } = yield* look({ names: [LOTS_NAME] });
  if (names.length === 0) {
    const options = { weight: "g", temperature: "C", length: "cm", parts: [] } as const;
    yield* make(plan(lotLog, options, {}), lotLog.title, [], { behind: true });
  }
  return readLotsAnswer(yield { ask: "lots", rows });
}

/** Temperatures that were entered on the weigh-up of a shift, whatever its tab is called by now. */
export function* enteredTemperatures(shift: string): Steps<readonly (number | null)[] | undefined> {
  const { sheets } = yield* look({ words: [shift], unnamed: true });
  return temperaturesIn(weighUps(sheets)).get(shift);
}

/** The panel's own button: lots of all weigh-ups, whose names are a call of the service each. */
export function* keepLots(): Steps<LotsAnswer> {
  const lots = (yield* look({ words: [WEIGH_UP_MARK], unnamed: true })).sheets.flatMap(lotsOn);
  return lots.length === 0
    ? refuse("No lot is entered on a weigh-up yet. Enter lots there, beside the ingredients.")
    : yield* keepRows(lots);
}

const weighUps = (sheets: readonly SeenSheet[]): SeenSheet[] =>
  sheets.filter(({ values }) => values.some((row) => row.includes(WEIGH_UP_MARK)));

const shiftOf = ({ values }: SeenSheet): string => String(values[1]?.[0] ?? "");

const temperaturesIn = (sheets: readonly SeenSheet[]): Before["temperatures"] =>
  new Map(sheets.map((sheet) => [shiftOf(sheet), temperaturesOn(sheet.values)]));

/** Room, flour and tap water, each to the left of its figure. */
function temperaturesOn(values: SeenSheet["values"]): (number | null)[] {
  return Object.values(TEMPERATURES).map((says) => {
    const row = values.find((line) => line[ENTRIES - 1] === says) ?? [];
    const typed = row[ENTRIES];
    return typeof typed === "number" ? typed : null;
  });
}

/** The lots of one weigh-up, out of its blocks. */
export function lotsOn({ values }: Pick<SeenSheet, "values">): LotRow[] {
  const text = (row: number, column: number) => String(values[row]?.[column] ?? "").trim();
  const rows: LotRow[] = [];
  values.forEach((_, head) => {
    const [, title] = /^\d+\. (.+)$/.exec(text(head, 0)) ?? [];
    const [, batch] = /· (\S+-(?:\d{6}))$/.exec(text(head + 1, 2)) ?? [];
    if (title === undefined || batch === undefined) return;
    const mixes = Number(/(\d+) mix/.exec(text(head + 1, 0))?.[1] ?? 1);
    const isPreferment = / for /.test(title) && /Preferment of a mix/.test(blockText(values, head));
    for (let row = head + 3; !/^(?:A mix|Preferment of a mix|)$/.test(text(row, 1)); row++) {
      const lots = text(row, ENTRIES)
        .split(/[;,]/)
        .map((one) => one.trim().replace(/^'+/, ""))
        .filter((one) => one !== "");
      const weight = values[row]?.[2];
      if (lots.length > 0 && typeof weight === "string" && (weight.startsWith("#") || isWaitingText(weight)))
        refuse(
          `The weigh-up of ${batch} shows ${weight} for “${text(row, 1)}”, so no lot was kept. Wait until it is calculated, or build the weigh-up again.`,
        );
      for (const lot of lots)
        for (let mix = 1; mix <= mixes; mix++)
          rows.push({
            day: dayOf(batch),
            batch,
            product: title,
            mix: `${isPreferment ? "preferment, " : ""}mix ${mix} of ${mixes}`,
            ingredient: text(row, 1),
            weight: typeof weight === "number" ? weight : 0,
            lot,
          });
    }
  });
  return rows;
}

/** What stands under a block's heading, up to the next one. */
function blockText(values: SeenSheet["values"], head: number): string {
  const texts: string[] = [];
  for (let row = head + 1; row < values.length && !/^\d+\. /.test(String(values[row]?.[0] ?? "")); row++)
    texts.push(String(values[row]?.[1] ?? ""));
  return texts.join("\n");
}

/** A batch ends with its day: QHL-261205 is ready on 2026-12-05. */
const dayOf = (batch: string): string => batch.replace(/^.*-(\d\d)(\d\d)(\d\d)$/, "20$1-$2-$3");
