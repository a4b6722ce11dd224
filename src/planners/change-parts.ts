// Puts a part into a formula sheet, or takes it out: the sheet is planned anew, and what was typed in it goes over cell by cell.

import { refuse } from "../../shared/base/refusal.ts";
import { quote } from "../../shared/base/show.ts";
import type { SeenSheet } from "../../shared/protocol/look.ts";
import { makeAsk, type NewSheet, readMakeAnswer } from "../../shared/protocol/plan-message.ts";
import { inShort } from "../../shared/protocol/remake.ts";
import type { SheetModel, Value, Values } from "../../shared/sheet/model.ts";
import { plan } from "../../shared/sheet/plan.ts";
import { planZone } from "../../shared/sheet/sheet-plan.ts";
import { longEnough } from "../../shared/sheet/table-lengths.ts";
import { LARDER_NAME, SETTINGS_NAME } from "../../shared/sheet/workbook-names.ts";
import { filledTables } from "../../shared/typing/cells.ts";
import { movedCells } from "./cell-moves.ts";
import { type FormulaSheet, mustBeCalculated, refuseOther, seenAs } from "./formula-sheet.ts";
import { listRow } from "./list-row.ts";
import { partsOn } from "./parts-on-sheet.ts";
import { LARDER_NAMES, NEED_LARDER } from "./prepare.ts";
import { lawIn, moneyIn } from "./settings.ts";
import { look, NAMES, type Step, type Steps } from "./steps.ts";

export function* changePart(question: Readonly<Record<string, unknown>>): Steps<NewSheet> {
  const { part, isWanted } = question;
  const isLabel = part === "label" && isWanted === true;
  const { sheets, names } = yield* look({
    sheet: String(question.sheet),
    formulas: true,
    names: LARDER_NAMES,
    cells: [SETTINGS_NAME],
  });
  const [seen] = sheets;
  const sheet = seen === undefined ? null : seenAs(seen);
  if (seen === undefined || sheet === null) return refuseOther(String(question.sheet));
  if (sheet.newer !== "") return refuse(sheet.newer);
  const parts = partsOn(seen.values, sheet.model, sheet.options);
  if (typeof part !== "string" || !sheet.model.parts.includes(part)) return refuse("This sheet has no such part.");
  if (parts.includes(part) === (isWanted === true)) {
    const is = isWanted === true ? "has this part already" : "does not have this part";
    return refuse(`The sheet ${quote(sheet.name)} ${is}. Check the sheet again.`);
  }
  mustBeCalculated(sheet);
  if (isWanted === true && NEED_LARDER.includes(part)) mustHaveLarder(names.map(({ name }) => name));
  mustDoWithout(sheet, isWanted === true ? "" : part);
  const wanted = sheet.model.parts.filter((one) => (one === part ? isWanted === true : parts.includes(one)));
  const settings = names.find(({ name }) => name === SETTINGS_NAME)?.values ?? [];
  const law = isLabel ? lawIn(settings) : "";
  return readMakeAnswer(
    yield remake(
      seen,
      { ...sheet, options: { ...sheet.options, ...moneyIn(settings) } },
      { before: parts, after: wanted, law },
    ),
  );
}

function mustHaveLarder(there: readonly string[]): void {
  if (!there.includes(LARDER_NAME))
    refuse("Build the ingredient sheet first, under Plan: costs and labels are read from it.");
  if (!LARDER_NAMES.every((name) => there.includes(name)))
    refuse(
      "The ingredient sheet comes from an older version. Duplicate it and delete the first one. Then build an ingredient sheet under Plan, and copy your rows into it.",
    );
}

/** What the sheet is scaled to may need a part. */
const SCALED: Readonly<Record<string, string>> = { tins: "tin", trays: "steps" };
function mustDoWithout(sheet: FormulaSheet, part: string): void {
  const by = sheet.text("by").toLowerCase();
  if (SCALED[by] === part)
    refuse(`The sheet is scaled to ${by}. Choose pieces, flour or the weight of the dough under Scale to first.`);
}

/** `law` is the bakery's, for a label that comes in. */
type Parts = { readonly before: readonly string[]; readonly after: readonly string[]; readonly law: string };

function remake(seen: SeenSheet, sheet: FormulaSheet, { before, after, law }: Parts): Step {
  const { model, options } = sheet;
  const long = withSizes(model, sizesOf(seen, sheet));
  const was = plan(long, { ...options, parts: before }, decimalsOf(sheet));
  const now = plan(long, { ...options, parts: after }, { ...decimalsOf(sheet), ...(law === "" ? {} : { law }) });
  const moved = movedCells(seen, long, { was, now, before: { ...options, parts: before } });
  return {
    ...makeAsk(now, sheet.name, [], { row: listRow(planZone(now), options.weight) }),
    ...moved,
    ask: "remake",
    sheet: seen.name,
    id: seen.id,
    seen: inShort(seen),
    [NAMES]: now.names,
  };
}

/** How many rows each table has now, by its first column. */
function sizesOf({ values }: SeenSheet, { zone, model }: FormulaSheet): ReadonlyMap<string, number> {
  const tops = new Map(filledTables(values).map(({ top, last }) => [top, last - top - 1]));
  return new Map(
    model.bands.flat().flatMap((item): [string, number][] => {
      const column = "table" in item ? item.columns.find(({ role }) => role === "input")?.name : undefined;
      const rows = column === undefined ? undefined : tops.get(zone(column)?.row ?? -1);
      return column === undefined || rows === undefined ? [] : [[column, rows]];
    }),
  );
}

/** The model with tables as long as they are on the sheet. */
function withSizes(model: SheetModel, sizes: ReadonlyMap<string, number>): SheetModel {
  const rows = new Map<string, Value[]>();
  for (const item of model.bands.flat()) {
    if (!("table" in item) || item.spare === undefined) continue;
    const column = item.columns.find(({ name }) => sizes.has(name))?.name;
    if (column !== undefined)
      rows.set(column, Array<Value>(Math.max(0, (sizes.get(column) ?? 0) - item.spare)).fill(null));
  }
  return longEnough(model, Object.fromEntries(rows), {});
}

/** How many decimals weights are shown with follows from the scales. */
function decimalsOf(sheet: FormulaSheet): Values {
  return { step_coarse: sheet.number("step_coarse"), step_fine: sheet.number("step_fine") };
}
