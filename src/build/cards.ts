import type { CellModel, SheetModel } from "../../shared/model.ts";

/** What the bench needs to know of a template: its inputs, its cautions and its sample, not what the sheet computes. */
export function card(model: SheetModel): SheetModel {
  const bands = model.bands.map((band) =>
    band.map((item) => {
      if ("table" in item) {
        const columns = item.columns.flatMap(({ role, name }) =>
          role === "input" ? [{ name, role, head: "", unit: "text" as const }] : [],
        );
        return { ...item, left: 0, columns };
      }
      const cells = item.lines.flatMap((line) => line.cells.filter(asks).map(inputOf));
      const lines = cells.length === 0 ? [] : [{ cells }];
      return { ...item, lines };
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

function inputOf({ role, text, name, choices }: CellModel): CellModel {
  const fields = {
    at: 0,
    role,
    text: role === "caution" ? text : undefined,
    name,
    choices: name === "by" ? choices : undefined,
  };
  return Object.fromEntries(Object.entries(fields).filter(([, one]) => one !== undefined)) as unknown as CellModel;
}
