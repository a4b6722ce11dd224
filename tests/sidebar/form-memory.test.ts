import { describe, expect, test } from "vitest";
import { changeUnits, type Draft } from "../../sidebar/new-formula/draft.ts";
import { copyOf, isAnythingKept, keep, nothingKept, withKept } from "../../sidebar/new-formula/form-memory.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { US_UNITS } from "../kit/units.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";
import { templateOf } from "./samples.ts";

/** A panel without a page: the form of one template after another. */
function panel(first: string) {
  const kept = nothingKept();
  let draft: Draft = startFrom(templateOf(first));
  let begun = copyOf(draft);
  return {
    kept,
    type: (change: (draft: Draft) => void) => change(draft),
    form: () => draft,
    to: (name: string) => {
      keep(kept, draft, begun);
      const model = templateOf(name);
      draft = withKept(kept, startFrom(model), model);
      begun = copyOf(draft);
      return draft;
    },
  };
}

const rye = { ingredient: "Rye", kind: "flour", percent: "100", weighed: "" };

describe("what was typed when the template changes", () => {
  test("name, amount, rows and common inputs stay", () => {
    const { type, to } = panel("pan-loaf");
    type((draft) => {
      draft.title = "Quay";
      draft.fields.step_coarse = "10";
      draft.fields.room_temp = "24";
      draft.inputs.held_share = "6";
      draft.sizes[0] = { name: "large", pieces: "73", weight: "390", loss: "12" };
      draft.rows.splice(0, draft.rows.length, rye);
    });
    const hearth = to("hearth-loaf");
    expect(hearth.title).toBe("Quay");
    expect(hearth.fields).toMatchObject({ step_coarse: "10", step_fine: "1", room_temp: "24" });
    expect(hearth.inputs).toMatchObject({ held_share: "6", pre_kind: "poolish", pre_share: "30" });
    expect(hearth.sizes).toEqual([{ name: "large", pieces: "73", weight: "390", loss: "12" }]);
    expect(hearth.rows).toEqual([rye]);
  });

  test("what was not typed is the new template's own", () => {
    const { kept, to } = panel("pan-loaf");
    for (const name of ["cake", "flat-round", "pan-loaf"]) expect(to(name)).toEqual(startFrom(templateOf(name)));
    expect(isAnythingKept(kept)).toBe(false);
  });

  test("what the new one lacks comes again with the old one", () => {
    const { type, to } = panel("pan-loaf");
    type((draft) => {
      draft.choices.by = "tins";
      draft.choices.tin_shape = "round";
      draft.fields.tins = "12";
      draft.fields.tin_size_1 = "20";
      draft.sizes[0] = { name: "large", pieces: "73", weight: "390", loss: "12" };
    });
    const round = to("flat-round");
    expect(round.choices).toMatchObject({ by: "pieces", tin_shape: "" });
    expect(round.sizes).toEqual([{ name: "large", pieces: "73", diameter: "" }]);
    type((draft) => {
      draft.sizes[0] = Object.assign(draft.sizes[0] ?? {}, { pieces: "80" });
    });
    const again = to("pan-loaf");
    expect(again.choices).toMatchObject({ by: "tins", tin_shape: "round" });
    expect(again.fields).toMatchObject({ tins: "12", tin_size_1: "20" });
    expect(again.sizes).toEqual([{ name: "large", pieces: "80", weight: "390", loss: "12" }]);
  });

  test("a row taken out takes its hidden columns along", () => {
    const { type, to } = panel("pan-loaf");
    type((draft) => {
      draft.sizes.splice(0, 1);
      draft.sizes.push({ name: "small", pieces: "5", weight: "400", loss: "" });
      draft.sizes.push({ name: "large", pieces: "7", weight: "800", loss: "" });
    });
    to("flat-round");
    type((draft) => draft.sizes.splice(0, 1));
    expect(to("pan-loaf").sizes).toEqual([{ name: "large", pieces: "7", weight: "800", loss: "" }]);
  });

  test("an amount that was cleared does not come again", () => {
    const { type, to } = panel("pan-loaf");
    type((draft) => {
      draft.fields.handling_loss = "2";
    });
    to("cookie");
    type((draft) => {
      draft.fields.handling_loss = "";
    });
    expect(to("pan-loaf").fields.handling_loss).toBe("");
  });

  test("dough for a bread is batter for a cake, tins are tins", () => {
    const first = panel("pan-loaf");
    first.type((draft) => {
      draft.choices.by = "dough";
      draft.fields.dough_wanted = "9000";
    });
    expect(first.to("cake").choices.by).toBe("batter");
    expect(first.form().fields.dough_wanted).toBe("9000");
    expect(first.to("pan-loaf").choices.by).toBe("dough");
    const second = panel("cake");
    second.type((draft) => {
      draft.fields.tins = "12";
      draft.fields.tin_size_1 = "20";
    });
    expect(second.to("pan-loaf").choices).toMatchObject({ by: "tins", tin_shape: "round" });
  });

  test("units stay, and what is hidden changes with them", () => {
    const { type, to } = panel("flat-round");
    type((draft) => {
      draft.sizes[0] = { name: "", pieces: "4", diameter: "25.4" };
      draft.inputs.known_weight = "1000";
    });
    to("pan-loaf");
    // 1 in = 2.54 cm; 1 oz = 28.349523125 g, so that 1000 g are 35.27 oz.
    type((draft) => changeUnits(draft, US_UNITS, new Map()));
    type((draft) => {
      Object.assign(draft.sizes[0] ?? {}, { pieces: "5" });
    });
    const round = to("flat-round");
    expect(round.units).toEqual(US_UNITS);
    expect(round.sizes).toEqual([{ name: "", pieces: "5", diameter: "10" }]);
    expect(round.inputs.known_weight).toBe("35.27");
    expect(round.fields).toMatchObject({ step_coarse: "0.1", step_fine: "0.05" });
  });
});

describe.skipIf(skipWithoutChromium("a change of template, in a browser"))("in the panel New formula", () => {
  const bench = benchPages();

  test("what was typed is still there, and can be left", async () => {
    await bench.open();
    await bench.fill();
    await bench.field("Template").selectOption("hearth-loaf");
    expect(await bench.field("Name of the formula").inputValue()).toBe("Quay pan loaf");
    expect(await bench.field("Pieces, size 1").inputValue()).toBe("24");
    expect(await bench.field("Name, ingredient 1").inputValue()).not.toBe("");
    await bench.checked("kept");
    await bench.field("Template").selectOption("pan-loaf");
    expect(await bench.field("Width cm").inputValue()).toBe("11");
    await bench.page.getByRole("button", { name: "Start this template again" }).click();
    expect(await bench.field("Pieces, size 1").inputValue()).toBe("");
    expect(await bench.page.getByRole("button", { name: "Start this template again" }).count()).toBe(0);
  });
});
