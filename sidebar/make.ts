import type { SheetModel } from "../shared/model.ts";
import { TEMPLATES } from "../templates/index.ts";
import { element, say } from "./element.ts";
import { choiceField, type Form, textField } from "./form.ts";
import { buildFoot } from "./make/building.ts";
import { type Draft, startFrom } from "./make/draft.ts";
import { type Assessed, assess } from "./make/order.ts";
import { ingredientTable } from "./make/rows.ts";
import { amountSection, type Bench, mixerSection, section, unitChoices, waterSection } from "./make/sections.ts";
import { tinSection } from "./make/tin-section.ts";
import type { Panel } from "./panel.ts";

/** Builds a formula sheet from a template and what is typed here. */
export const make: Panel = {
  name: "Make",
  heading: "Make a formula sheet",
  open: () => {
    const panel = element("div", {});
    const [first] = TEMPLATES;
    if (first !== undefined) panel.append(...sheetForm(first, show));
    return panel;

    function show(model: SheetModel): void {
      panel.replaceChildren(...sheetForm(model, show));
      panel.querySelector("select")?.focus();
    }
  },
};

/** A change of template starts anew: other templates have other ingredients. */
function sheetForm(model: SheetModel, show: (model: SheetModel) => void): Node[] {
  const draft = startFrom(model);
  const updates: (() => void)[] = [];
  let current: Assessed = assess(draft, model);
  const form: Form = {
    changed: () => {
      current = assess(draft, model);
      // Rows made by an update add updates of their own, which this loop still reaches.
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  const bench: Bench = { draft, form, now: () => current };
  const nodes = [
    nameSection(bench, model, show),
    amountSection(bench),
    section("Formula", ingredientTable(bench)),
    ...(model.parts.includes("tin") ? [tinSection(bench)] : []),
    ...(model.parts.includes("water") ? [waterSection(bench)] : []),
    mixerSection(bench),
    element("section", { class: "cautions" }, ...cautions(model).map((text) => element("p", {}, text))),
  ];
  const foot = buildFoot(bench);
  form.onChange(foot.update);
  form.changed();
  return [...nodes, foot.node];
}

function nameSection(bench: Bench, model: SheetModel, show: (model: SheetModel) => void): HTMLElement {
  const says = element("p", { class: "hint" });
  say(says, model.says);
  return element(
    "section",
    {},
    choiceField(
      bench.form,
      { at: () => "template", label: () => "Template" },
      TEMPLATES.map(({ name, title }) => ({ value: name, text: title })),
      {
        get: () => model.name,
        set: (name) => {
          const chosen = TEMPLATES.find((one) => one.name === name);
          if (chosen !== undefined && chosen !== model) show(chosen);
        },
      },
    ),
    says,
    textField(bench.form, { at: () => "title", label: () => "Name of the formula" }, words(bench.draft, "title")),
    textField(
      bench.form,
      { at: () => "shop", label: () => "Your shop, if it is to stand below" },
      words(bench.draft, "shop"),
    ),
    unitChoices(bench),
    choiceField(
      bench.form,
      { at: () => "form", label: () => "Formulas" },
      [
        { value: "", text: "the add-on's" },
        { value: "plain", text: "plain, for people without the add-on" },
      ],
      {
        get: () => (bench.draft.plain ? "plain" : ""),
        set: (form) => {
          bench.draft.plain = form === "plain";
        },
      },
    ),
  );
}

const words = (draft: Draft, name: "title" | "shop") => ({
  get: () => draft[name],
  set: (text: string) => {
    draft[name] = text;
  },
});

/** The cautions that the sheet itself will carry. */
function cautions(model: SheetModel): string[] {
  return model.bands
    .flat()
    .flatMap((item) => ("lines" in item ? item.lines : []))
    .flatMap(({ cells }) => cells)
    .flatMap(({ role, text }) => (role === "caution" && text !== undefined ? [text] : []));
}
