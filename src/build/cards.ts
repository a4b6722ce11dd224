import type { Block, CellModel, Line, SheetModel } from "../../shared/model.ts";
import { BLOCKS_OF_ALL } from "../../shared/template-inputs.ts";

/** What the bench needs to know of a template: what it asks for, its cautions and its sample, not what the sheet computes. */
export function card(model: SheetModel): SheetModel {
  const bands = model.bands.map((band) =>
    band.map((item) => {
      if ("lines" in item) return { ...item, lines: linesOf(item) };
      const columns = item.columns.flatMap(({ role, name, head, unit, choices }) =>
        role === "input" ? [{ name, role, head, unit, ...(choices === undefined ? {} : { choices }) }] : [],
      );
      return { ...item, left: 0, columns };
    }),
  );
  return { ...model, widths: [], bands, expects: {} };
}

/** The cards as a module; blocks that templates share are written once. */
export function cardsModule(models: readonly SheetModel[]): string {
  const shared: string[] = [];
  const place = (item: unknown): string => {
    const text = JSON.stringify(item);
    const known = shared.indexOf(text);
    return `S[${known >= 0 ? known : shared.push(text) - 1}]`;
  };
  const written = models.map(card).map(({ bands, ...rest }) => {
    const places = bands.map((band) => `[${band.map(place).join()}]`).join();
    return `{...${JSON.stringify(rest)},bands:[${places}]}`;
  });
  return `const S = [${shared.join()}]; export const TEMPLATES = [${written.join()}];`;
}

const asks = ({ role, name, formula }: CellModel): boolean =>
  role === "caution" || (name !== undefined && formula === undefined);
/** What a form says of the inputs beside it. */
const says = ({ role, text, formula }: CellModel): boolean =>
  text !== undefined && formula === undefined && (role === "label" || role === "remark");

/** The lines that ask for something, and the heading above them. */
function linesOf({ block, lines }: Block): Line[] {
  const isOwn = !BLOCKS_OF_ALL.has(block);
  return lines.flatMap(({ cells }) => {
    const isAsked = cells.some(asks);
    const isHeading = isOwn && cells.some(({ role, text }) => role === "heading" && text !== undefined);
    const kept = cells.filter(
      (cell) =>
        asks(cell) ||
        (isOwn && isAsked && says(cell)) ||
        (isHeading && cell.role === "heading" && cell.text !== undefined),
    );
    return kept.length === 0 ? [] : [{ cells: kept.map((cell) => inputOf(cell, isOwn)) }];
  });
}

function inputOf({ at: _, align: __, formula: ___, spills: ____, ...cell }: CellModel, isOwn: boolean): CellModel {
  const { role, name, text } = cell;
  if (isOwn) return { at: 0, ...cell };
  const fields = {
    at: 0,
    role,
    text: role === "caution" ? text : undefined,
    name,
    choices: name === "by" ? cell.choices : undefined,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, one]) => one !== undefined)) as unknown as CellModel;
}
