import { describe, expect, test } from "vitest";
import { changeUnits, type Draft } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { waterSays } from "../../sidebar/new-formula/water.ts";
import { buildSheet } from "../templates/sheet-support.ts";
import { empty, model, OUNCES, sampleDraft } from "./drafts.ts";

const by = (way: string, field: keyof Draft["fields"], text: string) => (): Draft => {
  const draft = sampleDraft();
  draft.choices.by = way;
  draft.fields[field] = text;
  return draft;
};

const withOwnFill = (): Draft => {
  const draft = by("tins", "tins", "12")();
  draft.fields.tin_fill = "0.5";
  return draft;
};

const inOunces = (): Draft => {
  const draft = sampleDraft();
  changeUnits(draft, OUNCES, new Map());
  return draft;
};

const withLevain = (): Draft => {
  const draft = empty();
  draft.rows.splice(1, 1, { ingredient: "Levain", kind: "levain 100%", percent: "20", weighed: "" });
  draft.rows.push({ ingredient: "Water", kind: "water", percent: "57", weighed: "" });
  return draft;
};

describe("the sheet computes what the sidebar said before", () => {
  test.each<[string, () => Draft]>([
    ["by pieces", sampleDraft],
    ["by tins", by("tins", "tins", "12")],
    ["by tins at a fill of its own", withOwnFill],
    ["by dough", by("dough", "dough_wanted", "24 kg")],
    ["by flour", by("flour", "flour_wanted", "12,5 kg")],
    ["in ounces, °F and inches", inOunces],
    ["without tin and with a levain", withLevain],
  ])("%s", async (_, draftOf) => {
    const draft = draftOf();
    const { order, faults, batch: made, mixes, tin } = assess(draft, model);
    expect(faults).toEqual([]);
    const { value } = await buildSheet(order.values, { model, options: order.options });
    expect(value("dough")).toBeCloseTo(made?.dough ?? Number.NaN, 6);
    expect(Number(value("grams", 1)) / Number(value("share", 1))).toBeCloseTo(made?.flour ?? Number.NaN, 6);
    expect(mixes).toMatchObject({ mixes: value("mixes") });
    if (tin === null) return;
    expect(value("tin_capacity")).toBeCloseTo(tin.capacity, 6);
    expect(value("tin_dough")).toBeCloseTo(tin.dough ?? Number.NaN, 6);
    expect(value("tin_note")).toBe(tin.note?.sentence);
  });

  test.each<[string, Partial<Draft["fields"]>]>([
    ["a guide for the mixing", {}],
    ["a factor of its own", { friction_own: "10" }],
    ["a warm room", { dough_target: "24", flour_temp: "26", room_temp: "30" }],
  ])("water with %s", async (_, fields) => {
    const draft = sampleDraft();
    Object.assign(draft.fields, fields);
    const assessed = assess(draft, model);
    const { order } = assessed;
    const water = waterSays(draft, assessed);
    const { value } = await buildSheet(order.values, { model, options: order.options });
    expect(water).not.toBe("");
    expect(value("water_note")).toBe(water);
  });
});
