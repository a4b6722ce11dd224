// The pictures of the panel, drawn anew only where what they show has changed.
import { kindParts } from "../../shared/drawings/kind-bar.ts";
import { stepBars } from "../../shared/drawings/step-bars.ts";
import { element } from "../kit/element.ts";
import { formulaPicture } from "../pictures/formula.ts";
import { picturePlace } from "../pictures/place.ts";
import { LINE_WIDTH, timeLine } from "../pictures/time-line.ts";
import type { FormContext } from "./sections.ts";
import { timesOf } from "./times.ts";

/** What the dough is made of, once it is known how much it is. */
export function formulaBar({ draft, form, now }: FormContext): HTMLElement {
  return redrawn("The formula as a bar", form, () => {
    const { batch } = now();
    const parts = batch === null ? [] : kindParts(batch.weights, batch.kinds);
    const { weight } = draft.units;
    return { of: [parts, weight], draw: () => (parts.length === 0 ? null : formulaPicture(parts, weight)) };
  });
}

/** What is unusual in the formula, below it. */
export function formulaRemarks({ form, unusual: unusualNow }: FormContext): HTMLElement {
  const place = element("div", {});
  let shown = "";
  form.onChange(() => {
    const unusual = unusualNow();
    if (unusual.join("\n") === shown) return;
    shown = unusual.join("\n");
    place.replaceChildren(...unusual.map((says) => element("p", { class: "note" }, says)));
  });
  return place;
}

/** When each step begins, counted back from when it must be ready. */
export function stepsLine({ form, model, now }: FormContext): HTMLElement {
  return redrawn("Schedule", form, () => {
    const times = timesOf(now(), model);
    const line = times === null ? null : stepBars(times, LINE_WIDTH);
    const hint = () => element("p", { class: "hint" }, "Enter a finish time to see the steps drawn.");
    return { of: [times], draw: () => (line !== null ? timeLine(line) : times === null ? hint() : null) };
  });
}

type Drawing = { readonly of: unknown; readonly draw: () => Element | null };

function redrawn(label: string, form: FormContext["form"], drawing: () => Drawing): HTMLElement {
  const place = picturePlace(label);
  let drawnFor = "";
  form.onChange(() => {
    const { of, draw } = drawing();
    const shown = JSON.stringify(of);
    if (shown === drawnFor) return;
    drawnFor = shown;
    const picture = draw();
    place.replaceChildren(...(picture === null ? [] : [picture]));
  });
  return place;
}
