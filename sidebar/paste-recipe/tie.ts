// A preferment tied to the cells of a sheet that has one, else left among the rows.

import { inputNames } from "../../shared/protocol/bench.ts";
import type { Described, FormulaRow, TiedPreferment } from "../../shared/recipe/text/described.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { methodRows } from "./method.ts";

export type Tie = {
  readonly rows: readonly FormulaRow[];
  readonly tied: readonly [string, Value | readonly Value[]][];
};

const LEVAIN = /^(?:levain|starter|sourdough|sour)$/;

/** Whether the sheet can set this preferment apart. */
export function takesPreferment(model: SheetModel, one: TiedPreferment): boolean {
  const inputs = inputNames(model);
  if (!inputs.has("pre_share")) return false;
  return inputs.has("seed_share") ? LEVAIN.test(one.kind) : true;
}

export function tieOf({ formula, steps }: Described, model: SheetModel): Tie {
  const [only, ...others] = formula.preferments;
  if (only === undefined || others.length > 0 || !takesPreferment(model, only)) return { rows: formula.rows, tied: [] };
  const kinds = inputCell(model, "pre_kind")?.choices ?? [];
  const kind =
    kinds.find((one) => one === only.kind) ??
    (LEVAIN.test(only.kind) ? kinds.find((one) => LEVAIN.test(one)) : undefined) ??
    kinds.find((one) => one === "sponge");
  const names = methodRows(steps, "C").map(({ name }) => name);
  const step = names.find((name) => name === "Mix") ?? names[0];
  const exact = (value: number) => Math.round(value * 1e9) / 1e9;
  return {
    rows: formula.rows,
    tied: [
      ...(kind === undefined ? [] : ([["pre_kind", kind]] as [string, Value][])),
      ["pre_share", exact(only.share)],
      ["pre_hydration", exact(only.hydration)],
      ["pre_yeast", exact(only.yeast)],
      ...(only.flour === "" ? [] : ([["pre_from", only.flour]] as [string, Value][])),
      ...(only.hours === null ? [] : ([["pre_hours", only.hours]] as [string, Value][])),
      ...(step === undefined ? [] : ([["pre_step", step]] as [string, Value][])),
      ["seed_share", exact(only.seed)],
      ["seed_hydration", exact(only.hydration)],
    ],
  };
}
