// Every input of a formula sheet is asked for in the panel New formula, or is one that is typed on the sheet alone.
import { expect, test } from "vitest";
import { inputGroups } from "../../shared/sheet/template-inputs.ts";
import { TEMPLATES } from "../../templates/index.ts";

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
