// Lets formula sheets read each other: an ingredient that has a formula sheet of its own takes price and parts from there.

import { quote } from "../../shared/base/show.ts";
import { plainName, usesOf } from "../../shared/formula/uses.ts";
import { type Connection, readConnectAnswer } from "../../shared/protocol/connect.ts";
import { OWN_HEAD, OWN_ROWS } from "../../templates/formula-sheet/own-formulas.ts";
import { type FormulaSheets, formulaSheets } from "./all-sheets.ts";
import type { Overview } from "./overview.ts";
import type { Steps } from "./steps.ts";

/** The sheets that read others anew, and what a person should know. */
export type Linked = { readonly sheets: readonly string[]; readonly note?: string };

export function* linkSheets(): Steps<Linked> {
  const { sheets, tabs } = yield* formulaSheets();
  const { used, circles, twice } = usesOf(
    sheets.map(({ title, parts }) => ({ title, ingredients: parts.map(({ name }) => name) })),
  );
  const connections = sheets.flatMap((sheet, at) =>
    connectionOf(sheet, (used[at] ?? []).slice(0, OWN_ROWS), { sheets, tabs }, at),
  );
  const notes = [
    ...circles.map(
      (path) =>
        `${path.map(quote).join(" uses ")}: a circle, so that their prices come from Ingredients. Take one out of another.`,
    ),
    ...twice.map((title) => `Several formula sheets are called ${quote(title)}: give each a title of its own.`),
    ...sheets.flatMap(({ newer, zone }, at) =>
      newer === "" || zone("own_name") === undefined || (used[at] ?? []).length === 0 ? [] : [newer],
    ),
    ...sheets.flatMap(({ name }, at) =>
      (used[at] ?? []).length > OWN_ROWS
        ? [`${quote(name)} uses more than ${OWN_ROWS} other formulas: the last ones are priced by Ingredients.`]
        : [],
    ),
  ];
  const note = notes.length === 0 ? {} : { note: notes.join(" ") };
  if (connections.length === 0) return { sheets: [], ...note };
  const targets = new Set(connections.flatMap(({ places }) => places));
  const answer = readConnectAnswer(
    yield {
      ask: "connect",
      head: OWN_HEAD,
      connections: connections.map(({ connection }) => connection),
      tabs: tabs.filter((_, at) => targets.has(at)),
    },
  );
  return { sheets: answer.sheets, ...note };
}

type Planned = { readonly connection: Connection; readonly places: readonly number[] };

/** Nothing where the table has these names already. */
function connectionOf(
  sheet: Overview,
  places: readonly number[],
  { sheets, tabs }: Pick<FormulaSheets, "sheets" | "tabs">,
  at: number,
): Planned[] {
  const [zone, tab] = [sheet.zone("own_name"), tabs[at]];
  if (zone === undefined || tab === undefined || sheet.newer !== "") return [];
  const rows = places.flatMap((place) => formulasOf(sheets[place]));
  const wanted = places.map((place) => plainName(sheets[place]?.title ?? ""));
  const there = sheet.column("own_name").filter((name) => name !== "");
  if (rows.length !== places.length || JSON.stringify(wanted) === JSON.stringify(there)) return [];
  const formulas = Array.from({ length: OWN_ROWS }, (_, row) => rows[row] ?? UNUSED);
  // Under the heading and the row that begins every table.
  return [{ connection: { tab, row: zone.row + 2, column: zone.column + 1, formulas }, places }];
}

/** Written over what stood there before: a blank in a row of formulas leaves its cell as it is. */
const UNUSED: readonly string[] = ['=""', "=0", "=0", '=""'];

/** What is read of a sheet: its title, price, minutes and parts. */
function formulasOf(sheet: Overview | undefined): string[][] {
  const cells = ["title", "as_price", "as_minutes", "as_parts"].map((name) => sheet?.reference(name));
  const [title, price, minutes, parts] = cells;
  if (title === undefined || price === undefined || minutes === undefined || parts === undefined) return [];
  return [
    [
      `=IFERROR(TRIM(LOWER(SUBSTITUTE(${title};UNICHAR(160);" ")));"")`,
      `=IFERROR(N(${price});0)`,
      `=IFERROR(N(${minutes});0)`,
      `=IFERROR(${parts}&"";"")`,
    ],
  ];
}
