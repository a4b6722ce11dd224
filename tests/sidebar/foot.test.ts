// What the foot of New formula tells is what the sheet shows once it is built, whatever was chosen and typed before.
import { describe, expect, test } from "vitest";
import type { SheetModel } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import { changeUnits, type Draft } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { seedOf, tries } from "../kit/scale.ts";
import { oneOf, type Random, randomFrom } from "../templates/formula-sheet-slips.ts";
import { buildSheet } from "../templates/sheet-support.ts";
import { OUNCES } from "./drafts.ts";
import { sampleOf } from "./samples.ts";

const whole = (random: Random, least: number, most: number) => String(least + Math.floor(random(most - least)));

/** A draft as a person might leave it: another way, other amounts, sizes, shares, losses and units. */
function draftOf(model: SheetModel, random: Random): { readonly draft: Draft; readonly says: string } {
  const draft = sampleOf(model);
  const by = oneOf(inputCell(model, "by")?.choices ?? [], random);
  draft.choices.by = by;
  Object.assign(draft.fields, {
    dough_wanted: `${whole(random, 2, 60)} kg`,
    flour_wanted: `${whole(random, 2, 40)} kg`,
    tins: whole(random, 1, 90),
    trays: whole(random, 1, 40),
    handling_loss: whole(random, 0, 9),
    mixer_limit: `${whole(random, 5, 30)} kg`,
  });
  if (draft.sizes.length === 0) draft.sizes.push({ name: "large", pieces: "", weight: "650", loss: "" });
  const sizes = draft.sizes.filter((_, at) => at === 0 || random(2) < 1);
  for (const size of sizes) size.pieces = whole(random, 1, 300);
  if ("loss" in (sizes[0] ?? {})) for (const size of sizes) size.loss = oneOf(["", "8", "12.5%"], random);
  draft.sizes.splice(0, draft.sizes.length, ...sizes);
  if ("roll_in_of" in draft.inputs) draft.inputs.roll_in_of = oneOf(["base", "finished", "flour"], random);
  if ("roll_in_share" in draft.inputs) draft.inputs.roll_in_share = whole(random, 20, 50);
  if ("pre_share" in draft.inputs) draft.inputs.pre_share = oneOf(["", "15", "30 %"], random);
  if ("tray_pieces" in draft.inputs) draft.inputs.tray_pieces = whole(random, 4, 24);
  if (by !== "tins" && random(3) < 1) draft.choices.tin_shape = "";
  const last = draft.rows[draft.rows.length - 1];
  if (last !== undefined && random(2) < 1) last.percent = whole(random, 1, 4);
  if (random(2) < 1) changeUnits(draft, OUNCES, new Map());
  return { draft, says: JSON.stringify([by, draft.units.weight, draft.inputs, draft.sizes]) };
}

describe.each(TEMPLATES)("$title", (model) => {
  test("the foot's figures are the sheet's", async () => {
    const random = randomFrom(seedOf(41) + TEMPLATES.indexOf(model));
    for (let at = 0; at < tries(3); at++) {
      const { draft, says } = draftOf(model, random);
      const { order, faults, dough, batch: made, mixes } = assess(draft, model);
      expect(faults, says).toEqual([]);
      const parts = order.options.parts.filter((part) => part !== "cost" && part !== "label");
      const { value } = await buildSheet(order.values, { model, options: { ...order.options, parts } });
      expect(value("check"), says).toBe("");
      expect(value("dough"), says).toBeCloseTo(dough ?? Number.NaN, 6);
      if (mixes !== null && "mixes" in mixes) expect(value("mixes"), says).toBe(mixes.mixes);
      if (made === null) continue;
      expect(Number(value("flour_all")) * Number(value("per_percent")), says).toBeCloseTo(made.flour, 6);
    }
  });
});
