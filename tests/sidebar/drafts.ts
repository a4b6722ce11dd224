import type { SheetModel } from "../../shared/sheet/model.ts";
import type { Draft } from "../../sidebar/new-formula/draft.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { METRIC_UNITS, US_UNITS } from "../kit/units.ts";

export const model = TEMPLATES.find(({ name }) => name === "pan-loaf") as SheetModel;
export const GRAMS = METRIC_UNITS;
export const OUNCES = US_UNITS;

/** The template's sample, typed as a person types it. */
export function sampleDraft(): Draft {
  const draft = startFrom(model);
  draft.title = "Quay pan loaf";
  draft.shop = " Tern Quay Bakehouse ";
  draft.sizes.splice(0, 1, { name: "large", pieces: "24", weight: "700", loss: "11" });
  draft.sizes.push({ name: "small", pieces: "12", weight: "350 g", loss: "13 %" });
  Object.assign(draft.fields, {
    handling_loss: "2",
    mixer_limit: "20 kg",
    mixer_least: "4000",
    tin_size_1: "21",
    tin_size_2: "11",
    tin_size_3: "9",
    tin_size_4: "19",
    tin_size_5: "9",
    dough_target: "26",
    flour_temp: "21",
    room_temp: "23",
    tap_temp: "14",
    minutes: "8",
    friction_own: "8",
  });
  Object.assign(draft.inputs, { ready: "7:00", oven_takes: "18", oven_reload: "10" });
  draft.choices.mixing = "spiral";
  return draft;
}

/** Nothing typed but how much, and no tin. */
export const empty = (): Draft => {
  const draft = startFrom(model);
  draft.choices.tin_shape = "";
  draft.sizes[0] = { name: "", pieces: "24", weight: "700", loss: "" };
  return draft;
};
