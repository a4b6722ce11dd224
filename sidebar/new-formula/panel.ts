import type { SheetModel } from "../../shared/sheet/model.ts";
import { type InputGroup, inputGroups } from "../../shared/sheet/template-inputs.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { ask } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { choiceField, newForm, textField } from "../kit/fields.ts";
import { type Panel, SHOWN_AGAIN } from "../kit/panel.ts";
import { amountSection } from "./amount-section.ts";
import { buildFoot } from "./build-foot.ts";
import type { Draft } from "./draft.ts";
import { copyOf, isAnythingKept, keep, nothingKept, withKept } from "./form-memory.ts";
import { type Assessed, assess } from "./order.ts";
import { formulaBar, formulaRemarks, stepsLine } from "./pictures.ts";
import { unusual } from "./review.ts";
import { ingredientTable } from "./rows.ts";
import { type FormContext, mixerSection, section, unitChoices, waterSection } from "./sections.ts";
import { beginWith, readShop } from "./shop.ts";
import { type KnownShop, shopSection } from "./shop-section.ts";
import { startFrom } from "./start.ts";
import { ownFields, ownFold, ownSection } from "./template-section.ts";
import { tinSection } from "./tin-section.ts";

/** Builds a formula sheet from a template and what is typed here. */
export const make: Panel = {
  name: "New formula",
  heading: "New formula",
  open: () => {
    let model = TEMPLATES[0];
    let memory = nothingKept();
    let form: { readonly draft: Draft; readonly start: Draft } | null = null;
    let isTouched = false;
    const touch = () => {
      isTouched = true;
    };
    const panel = element("div", { input: touch, change: touch, [SHOWN_AGAIN]: () => void look() });
    const known: KnownShop = { shop: undefined, touched: false, begin: anew, remember: () => void look(true) };
    put();
    void look();
    return panel;

    function show(chosen: SheetModel): void {
      if (form !== null) keep(memory, form.draft, form.start);
      model = chosen;
      put();
      panel.querySelector("select")?.focus();
    }

    function anew(): void {
      memory = nothingKept();
      put();
      panel.querySelector("select")?.focus();
    }

    function put(): void {
      isTouched = false;
      known.touched = known.shop !== undefined && known.shop !== null;
      if (model === undefined) return;
      const start = startFrom(model);
      if (known.shop) beginWith(start, known.shop);
      const draft = withKept(memory, start, model);
      form = { draft, start: copyOf(draft) };
      panel.replaceChildren(...sheetForm(model, draft, known, { show, anew: isAnythingKept(memory) ? anew : null }));
    }

    /** Settings that come while somebody is at work wait for the next formula. */
    async function look(isOwn = false): Promise<void> {
      const outcome = await ask("settings", {}, PATIENCE_MS);
      if (!("answer" in outcome)) return;
      const { rows } = outcome.answer;
      const knownShop = rows === null ? null : readShop(rows);
      if (JSON.stringify(knownShop) === JSON.stringify(known.shop)) return;
      known.shop = knownShop;
      if (isOwn) return;
      if (knownShop !== null && !isTouched && !panel.contains(document.activeElement)) put();
      else known.redraw?.();
    }
  },
};

const PATIENCE_MS = 30_000;

/** Ways to another form; `anew` is null where nothing was kept that could be left. */
type Ways = { readonly show: (model: SheetModel) => void; readonly anew: (() => void) | null };

function sheetForm(model: SheetModel, draft: Draft, known: KnownShop, ways: Ways): Node[] {
  let current: Assessed = assess(draft, model);
  let remarks: readonly string[] | null = null;
  // The figures first: everything else that a change brings along is shown after them.
  const form = newForm(() => {
    current = assess(draft, model);
    remarks = null;
    foot.showFigures();
  });
  const remarksNow = () => {
    remarks ??= unusual(current.rows, model);
    return remarks;
  };
  const context: FormContext = { draft, form, model, now: () => current, unusual: remarksNow };
  const foot = buildFoot(context);
  const groups = inputGroups(model);
  // How thick it is says how much it is; what has no heading stands under the table on the sheet, too.
  const isAmount = ({ inputs }: InputGroup) => inputs.some(({ unit }) => unit === "per area");
  const under = groups.filter(({ heading }) => heading === "");
  const ofParts = groups.filter((group) => group.heading !== "" && !isAmount(group));
  const hasSteps = ({ tables }: InputGroup) => tables.some(({ table }) => table === "steps");
  const nodes = [
    nameSection(context, model, ways),
    section(
      "Ingredients",
      ingredientTable(context),
      ...under.flatMap((group) => ownFields(context, group)),
      formulaBar(context),
      formulaRemarks(context),
    ),
    amountSection(context),
    ...groups.filter(isAmount).map((group) => ownSection(context, group)),
    ...(model.parts.includes("tin") ? [tinSection(context)] : []),
    ...ofParts.map((group) => ownFold(context, group, ...(hasSteps(group) ? [stepsLine(context)] : []))),
    ...(model.parts.includes("water") ? [waterSection(context)] : []),
    mixerSection(context),
    shopSection(context, known),
    element("section", { class: "cautions" }, ...cautions(model).map((text) => element("p", {}, text))),
  ];
  form.onChange(foot.update);
  form.changed();
  return [...nodes, foot.node];
}

function nameSection(context: FormContext, model: SheetModel, { show, anew }: Ways): HTMLElement {
  const says = element("p", { class: "hint" });
  say(says, model.says);
  return element(
    "section",
    {},
    choiceField(
      context.form,
      { at: () => "template", label: () => "Template" },
      TEMPLATES.map(({ name, title, group }) => ({ value: name, text: title, group })),
      {
        get: () => model.name,
        set: (name) => {
          const chosen = TEMPLATES.find((one) => one.name === name);
          if (chosen !== undefined && chosen !== model) show(chosen);
        },
      },
    ),
    says,
    ...(anew === null ? [] : keptNodes(anew)),
    textField(context.form, { at: () => "title", label: () => "Name of the formula" }, words(context.draft, "title")),
    textField(context.form, { at: () => "shop", label: () => "Bakery name (optional)" }, words(context.draft, "shop")),
    unitChoices(context),
  );
}

function keptNodes(anew: () => void): Node[] {
  const hint = "Entries that this template also uses were kept.";
  const button = { type: "button", class: "quiet-button", click: anew };
  return [element("p", { class: "hint" }, hint), element("button", button, "Start this template again")];
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
