// What a formula sheet asks of a person, and of the add-on: its inputs, those that must be filled in first, and its calls.
import { expect, test } from "vitest";
import { plan } from "../../shared/sheet/plan.ts";
import { inputGroups } from "../../shared/sheet/template-inputs.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS } from "../kit/units.ts";

test.each(TEMPLATES)("$title: every input is asked for in the sidebar, or typed on the sheet alone", (model) => {
  const asked = new Set(
    inputGroups(model)
      .flatMap(({ inputs, tables }) => [...inputs, ...tables.flatMap((one) => one.columns)])
      .map(({ name }) => name),
  );
  /** Those that every formula sheet has, with fields of their own. */
  const FIELDS =
    "title shop version date by amount size_name size_pieces size_weight size_loss size_diameter ingredient kind percent handling_loss mixer_limit mixer_least step_coarse step_fine dough_target flour_temp room_temp preferment_temp tap_temp mixing minutes friction_own yeast tin_shape tin_size_1 tin_size_2 tin_size_3 tin_size_4 tin_size_5 tin_kind tin_fill".split(
      " ",
    );
  const unasked = model.bands
    .flat()
    .flatMap((item) =>
      "table" in item
        ? item.columns
            .filter(({ name, role, onSheet }) => role === "input" && !onSheet && !asked.has(name))
            .map(({ name }) => name)
        : item.lines.flatMap(({ cells }) =>
            cells
              .filter(({ name, role, onSheet }) => role === "input" && !onSheet && !asked.has(name ?? ""))
              .map(({ name }) => name ?? ""),
          ),
    );
  expect(unasked.filter((name) => !FIELDS.includes(name))).toEqual([]);
});

/** What may be entered where the panel asks for it: pieces and their weight, or tins and what they measure. */
const ENTERED: Readonly<Record<string, string>> = {
  "size_pieces/0": "24",
  "size_weight/0": "700",
  "size_diameter/0": "30",
  tins: "24",
  tin_size_1: "21",
  tin_size_2: "11",
  tin_size_3: "9",
};

/** 24 pieces of 700 g; of the base dough what is left beside 28 % of fat; 24 rounds of 30 cm at 0.4 g/cm²: worked out by hand. */
const FIRST: Readonly<Record<string, number>> = { laminated: 13_125, "flat-round": 6785.84 };

test.each(TEMPLATES)("$title: from an empty workbook to the first weight are at most 6 entries", (model) => {
  const draft = startFrom(model);
  // Choosing the template is one.
  let entries = 1;
  for (let first = assess(draft, model).faults[0]; first !== undefined; first = assess(draft, model).faults[0]) {
    const { at } = first;
    const text = ENTERED[at];
    if (text === undefined) throw new Error(`${model.name} asks for ${at}: ${first.says}`);
    const [, column] = /^size_(.+)\/0$/.exec(at) ?? [];
    if (column !== undefined) Object.assign(draft.sizes[0] ?? {}, { [column]: text });
    else Object.assign(draft.fields, { [at]: text });
    entries += 1;
    if (entries > 6) break;
  }
  expect(entries).toBeLessThanOrEqual(6);
  const { batch } = assess(draft, model);
  if (model.name === "cake") expect(batch?.dough).toBeGreaterThan(1000);
  else expect(batch?.dough).toBeCloseTo(FIRST[model.name] ?? 16_800, 1);
});

test.each(TEMPLATES)("$title: at most 5 calls without a label, 12 with everything", (model) => {
  const calls = (parts: readonly string[]) =>
    plan(model, { ...METRIC_UNITS, parts }, { ...model.sample, law: "EU" })
      .formulas.flatMap(({ cells }) => cells.flat())
      .filter((formula) => formula.includes("BAKE_")).length;
  const own = model.parts.filter((part) => part !== "cost" && part !== "label");
  const counts = [own, [...own, "cost"], model.parts].map(calls);
  expect(counts[0]).toBeGreaterThan(0);
  expect(counts[1]).toBeLessThanOrEqual(5);
  expect(counts[2]).toBeLessThanOrEqual(12);
});
