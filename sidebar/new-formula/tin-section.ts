import { makesBatter } from "../../shared/sheet/template-inputs.ts";
import { TIN_SHAPES, TIN_SIZES, type TinShape } from "../../shared/tins/tin.ts";
import { TIN_DOUGH_KINDS, type TinDoughKind, tinGuide } from "../../shared/tins/tin-guide.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, messageLine, textField } from "../kit/fields.ts";
import { picturePlace } from "../pictures/place.ts";
import { tinPicture } from "../pictures/tin.ts";
import { TIN_SIZE_FIELDS } from "./draft.ts";
import { splitSizes } from "./pasted-figures.ts";
import { sizeQuantity } from "./quantity.ts";
import { choice, type FormContext, numberField, optional, same } from "./sections.ts";
import { sizeNames } from "./tin.ts";
import { unitSign } from "./unit-change.ts";

export function tinSection(context: FormContext): HTMLElement {
  const { draft, form, now, model } = context;
  const what = makesBatter(model) ? "batter" : "dough";
  const guide = element("p", { class: "hint" });
  const note = element("p", { class: "note" });
  const which = element("p", { class: "hint" }, "Shown for size 1.");
  const message = messageLine();
  const how = element("p", { class: "hint" });
  const extras = element("p", { class: "hint" });
  const picture = picturePlace("The tin");
  const fields = element(
    "div",
    {},
    element("div", { class: "two" }, ...TIN_SIZE_FIELDS.map((_, place) => sizeField(context, place, message))),
    message,
    extras,
    choiceField(
      form,
      { at: () => "tin_kind", label: () => `Kind of ${what}`, inline: true },
      same(Object.keys(TIN_DOUGH_KINDS)),
      {
        ...choice(draft, "tin_kind"),
      },
    ),
    guide,
    numberField(context, "tin_fill", `Replaces the guide figure when you scale to tins.`),
    which,
    picture,
    how,
    note,
  );
  let drawnFor = "";
  form.onChange(() => {
    fields.hidden = draft.choices.tin_shape === "";
    say(extras, extraSizes(draft.choices.tin_shape));
    which.hidden = draft.choices.by !== "pieces" || draft.sizes.length < 2;
    const [low, usual, high] = tinGuide(draft.choices.tin_kind as TinDoughKind);
    say(guide, `Guide: ${low} to ${high} g of ${what} per cm³ of tin, usually ${usual}.`);
    const { tin } = now();
    say(how, tin === null ? "" : howDrawn(tin.shape, what));
    say(note, tin?.note?.sentence ?? tin?.refused ?? "");
    const drawn = JSON.stringify([tin, draft.units]);
    if (drawn === drawnFor) return;
    drawnFor = drawn;
    picture.replaceChildren(
      tin === null
        ? element("p", { class: "hint" }, "Enter the inside sizes to see the tin drawn.")
        : tinPicture(tin, draft.units),
    );
  });
  const fold = optional(
    context,
    "Tin",
    () => gistOf(draft),
    choiceField(
      form,
      { at: () => "tin_shape", label: () => "Shape", inline: true },
      [{ value: "", text: "no tin" }, ...same(Object.keys(TIN_SHAPES))],
      choice(draft, "tin_shape"),
    ),
    fields,
  );
  // Made by tins, the tin says how much it is.
  let by = "";
  form.onChange(() => {
    if (by !== draft.choices.by && draft.choices.by === "tins") fold.open = true;
    by = draft.choices.by;
  });
  return fold;
}

function gistOf({ choices, fields }: FormContext["draft"]): string {
  if (choices.tin_shape === "") return "no tin";
  const sizes = sizeNames(choices.tin_shape as TinShape).flatMap((_, place) => {
    const text = fields[TIN_SIZE_FIELDS[place] ?? "tin_size_1"].trim();
    return text === "" ? [] : [text];
  });
  return [choices.tin_shape, sizes.join(" × ")].join(" ").trim();
}

/** The name changes with the shape; a size no shape needs is not shown. */
function sizeField({ draft, form }: FormContext, place: number, message: HTMLElement): HTMLElement {
  const name = TIN_SIZE_FIELDS[place] ?? "tin_size_1";
  const names = () => (draft.choices.tin_shape === "" ? [] : sizeNames(draft.choices.tin_shape as TinShape));
  const field = textField(
    form,
    {
      at: () => name,
      label: () => capital(names()[place] ?? ""),
      unit: () => unitSign(sizeQuantity(draft.choices.tin_shape, place), draft.units),
      numeric: true,
      message,
      done: () => {
        const parts = splitSizes(draft.fields[name]);
        if (parts === null || place + parts.length > names().length) return;
        parts.forEach((part, index) => {
          const to = TIN_SIZE_FIELDS[place + index];
          if (to !== undefined) draft.fields[to] = part;
        });
        form.changed();
      },
    },
    {
      get: () => draft.fields[name],
      set: (text) => {
        draft.fields[name] = text;
      },
    },
  );
  form.onChange(() => {
    field.hidden = place >= names().length;
  });
  return field;
}

/** What the sizes that may stay blank are for. */
function extraSizes(shape: string): string {
  const extra = shape === "" ? [] : TIN_SIZES[shape as TinShape].extra;
  if (extra.length === 0) return "";
  return shape === "dome"
    ? "Enter a depth only if the dome is shallower than half a sphere."
    : `Enter ${extra.join(" and ")} only if the sides slope.`;
}

const howDrawn = (shape: TinShape, what: string): string =>
  shape === "water"
    ? "Not to scale: only the capacity is known."
    : `To scale, before proof, counting 1 g of ${what} as 1 cm³.`;

const capital = (text: string) => text.slice(0, 1).toUpperCase() + text.slice(1);
