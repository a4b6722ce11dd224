// When each step begins, as far as the panel can tell it.

import { MINUTES_A_DAY } from "../../shared/base/clock.ts";
import { minutes } from "../../shared/base/units.ts";
import { countedBack, piecesFrom, ripeningBefore, type TimedStep, traysFor } from "../../shared/formula/steps.ts";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import type { Assessed } from "./order.ts";
import type { TemplateInputs } from "./template-inputs.ts";

/** The steps with their starts, what ripens for one of them before it; empty without steps, null without a time to be ready. */
export function timesOf(order: Assessed, model: SheetModel): readonly TimedStep[] | null {
  const { inputs } = order;
  const [names, long] = [inputs.column("step"), inputs.column("step_minutes")];
  const steps = names.map((name, at) => ({ name: String(name ?? ""), minutes: minutes(Number(long[at] ?? 0)) }));
  if (!steps.some((step) => step.minutes > 0)) return [];
  const ready = inputs.number("ready");
  if (ready === null) return null;
  const timed = countedBack(steps, minutes(ready * MINUTES_A_DAY), {
    step: inputs.text("oven_step"),
    count: inOven(order, model),
    takes: inputs.number("oven_takes"),
    reload: minutes(inputs.number("oven_reload") ?? 0),
  });
  const [hours, share] = [inputs.number("pre_hours"), inputs.number("pre_share")];
  if (hours === null || share === null) return timed;
  const ripens = ripeningBefore(timed, inputs.text("pre_step"), `${preferment(inputs)} ripens`, hours);
  return ripens === null ? timed : [ripens, ...timed];
}

function preferment(inputs: TemplateInputs): string {
  const kind = inputs.text("pre_kind") || "levain";
  return kind.slice(0, 1).toUpperCase() + kind.slice(1);
}

/** Trays with pieces on them, or tins. */
function inOven({ inputs, amount, tin, batch, handling, rolled }: Assessed, model: SheetModel): number | null {
  const each = amount.scaled ?? tin?.dough ?? null;
  const counted = amount.pieces ?? amount.tins;
  const whole = batch === null ? null : batch.dough * (1 + rolled) * (1 - handling);
  const pieces = counted ?? (whole === null || each === null ? null : piecesFrom(whole, each));
  return inputCell(model, "tray_pieces") === undefined ? pieces : traysFor(pieces, inputs.number("tray_pieces"));
}
