// A preferment tied to the cells of a sheet that has one; what the sheet has no cells for becomes a step of its method.

import { showNumber } from "../../shared/base/show.ts";
import { fromGrams, type WeightUnit } from "../../shared/base/units.ts";
import { inputNames } from "../../shared/protocol/order.ts";
import type { MixedBefore, TiedPreferment } from "../../shared/recipe/text/described-formula.ts";
import type { Described } from "../../shared/recipe/text/description.ts";
import type { SheetModel, Value } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import type { MethodRow } from "./method.ts";

export type Tie = {
  /** The preferment that the sheet has cells for. */
  readonly preferment: TiedPreferment | undefined;
  /** Stages that go in front of the method, as the sheet has no cells for all of them. */
  readonly before: readonly MethodRow[];
  /** Preferments without cells, as they are called. */
  readonly untied: readonly string[];
};

const LEVAIN = /^(?:levain|starter|sourdough|sour)$/;

/** Whether the sheet can set this preferment apart. */
function takesPreferment(model: SheetModel, { kind, seed }: TiedPreferment): boolean {
  const inputs = inputNames(model);
  if (!inputs.has("pre_share")) return false;
  return inputs.has("seed_share") ? LEVAIN.test(kind) || seed > 0 : true;
}

export function tieOf({ formula, stages }: Described, model: SheetModel): Tie {
  const inputs = inputNames(model);
  const [preferment] = formula.preferments
    .filter((one) => takesPreferment(model, one))
    .sort((one, other) => other.share - one.share);
  const isSaid = ({ stage }: MixedBefore) =>
    preferment?.stage === stage && preferment.isWhole && (preferment.seed === 0 || inputs.has("seed_share"));
  const names = (stage: number) =>
    stages[stage]?.name.replace(/[\s:]+$/, "") || stages[stage]?.preferment || "preferment";
  return {
    preferment,
    before: formula.before
      .filter((one) => !isSaid(one))
      .map((one) => stepOf(one, names(one.stage), stages[one.stage]?.hours ?? null)),
    untied: formula.preferments.filter((one) => one !== preferment).map(({ stage }) => names(stage)),
  };
}

/** As shares of all flour, which stay right whatever amount is made. */
function stepOf({ rows }: MixedBefore, name: string, hours: number | null): MethodRow {
  const list = rows.map((row) => `${row.name} ${showNumber(row.percent, row.percent < 1 ? 3 : 1)} %`).join(", ");
  return {
    name: name.slice(0, 60),
    minutes: hours === null ? null : Math.round(hours * 60),
    temperature: null,
    how: `Mix this first, of all flour: ${list}. It is part of the weights above.`.slice(0, 400),
  };
}

const exact = (value: number): number => Math.round(value * 1e9) / 1e9;

/** What goes into the preferment's cells. */
export function tiedValues(
  only: TiedPreferment | undefined,
  model: SheetModel,
  method: readonly MethodRow[],
  unit: WeightUnit,
): [string, Value][] {
  if (only === undefined) return [];
  const kinds = inputCell(model, "pre_kind")?.choices ?? [];
  const kind = kinds.find((one) => one === only.kind) ?? kinds.find((one) => one === "sponge") ?? null;
  const step = (method.find(({ name }) => name === "Mix") ?? method[0])?.name ?? null;
  return [
    ["pre_kind", kind],
    ["pre_share", exact(only.share)],
    ["pre_hydration", exact(only.hydration)],
    ["pre_yeast", exact(only.yeast)],
    ["pre_from", only.flour === "" ? null : only.flour],
    ["pre_hours", only.hours],
    ["pre_step", step],
    ["seed_share", only.seed > 0 ? exact(only.seed) : null],
    ["seed_hydration", exact(only.seedHydration)],
    ["keep", only.leftOver === null ? null : exact(fromGrams(only.leftOver, unit))],
  ];
}
