// One function: what it tells, its arguments as fields, an example, and the button that writes it at the cursor.
import { isFault } from "../../shared/base/refusal.ts";
import { entryFormula, readEntry } from "../../shared/cells/typed-argument.ts";
import type { FunctionHelp } from "../../shared/protocol/function-help.ts";
import type { InsertAnswer } from "../../shared/protocol/insert.ts";
import { ask, failureSentence } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { type FieldFault, fieldFault } from "../kit/field-fault.ts";
import { type Form, goTo, newForm, showFaults, textField } from "../kit/fields.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";

const PATIENCE_MS = 30_000;

export function functionDetails(help: FunctionHelp): HTMLElement {
  const node = element(
    "details",
    {
      toggle: () => {
        // Made when it is first opened: there are many, and few are looked at.
        if (node.open && node.childElementCount === 1) node.append(inside(help));
      },
    },
    element("summary", {}, element("b", {}, help.name), element("span", { class: "hint" }, ` ${help.summary}`)),
  );
  return node;
}

function inside(help: FunctionHelp): HTMLElement {
  const typed = help.args.map(() => "");
  const form = newForm();
  let wanted = false;
  const preview = element("code", {});
  const insert = pressButton("Insert at the cursor", "build", () => void press());
  const progress = progressOf(() => insert);
  form.onChange(() => {
    const { faults, formulas } = readArguments(help, typed);
    if (faults.length === 0) wanted = false;
    showFaults(form, faults, wanted);
    say(preview, entryFormula(help.name, formulas));
  });
  const parts = element(
    "div",
    {},
    element("p", {}, help.returns),
    ...argumentFields(help, form, typed),
    ...exampleParts(help, form, typed),
    element("p", {}, "Formula: ", preview),
    insert,
    progress.bar,
    progress.status,
  );
  form.changed();
  return parts;

  async function press(): Promise<void> {
    if (progress.isBusy()) return;
    progress.clear();
    const [first] = readArguments(help, typed).faults;
    if (first !== undefined) {
      wanted = true;
      form.changed();
      goTo(form, first.at);
      return;
    }
    const outcome = await progress.during("Writing the formula …", () =>
      ask("insert", { name: help.name, args: typed }, PATIENCE_MS, (late) => {
        if ("answer" in late)
          progress.report(`${insertSentence(late.answer)} It took longer than Gramwright waited.`, false);
      }),
    );
    const says = "answer" in outcome ? insertSentence(outcome.answer) : failureSentence(outcome);
    const isSilent = "how" in outcome && outcome.how === "silent";
    progress.report(
      isSilent ? `${says} Check first whether the formula is there already.` : says,
      !("answer" in outcome),
    );
  }
}

/** A field for each argument. */
const argumentFields = (help: FunctionHelp, form: Form, typed: string[]): HTMLElement[] =>
  help.args.map(({ name, needed, says }, index) =>
    textField(
      form,
      { at: () => name, label: () => `${name}${needed ? "" : " (optional)"}`, hint: says },
      {
        get: () => typed[index] ?? "",
        set: (text) => {
          typed[index] = text;
        },
      },
    ),
  );

/** What arguments may be, and an example that can be filled in. */
function exampleParts(help: FunctionHelp, form: Form, typed: string[]): HTMLElement[] {
  const call = element("code", {}, help.example);
  const result = element("b", {}, help.gives);
  const parts: HTMLElement[] = [
    element("p", { class: "hint" }, "Cells such as C5:C14, a number, a word, or a list such as {100; 65; 2}."),
    element("p", { class: "example" }, "Example: ", call, " gives ", result),
  ];
  const example = help.typed;
  if (example === null) return parts;
  const fillIn = () => {
    help.args.forEach((_, index) => {
      typed[index] = example[index] ?? "";
    });
    form.changed();
  };
  return [...parts, element("button", { type: "button", class: "quiet-button", click: fillIn }, "Fill in the example")];
}

/** The arguments as formulas, and what is wrong with what was typed. */
function readArguments(help: FunctionHelp, typed: readonly string[]): { faults: FieldFault[]; formulas: string[] } {
  const faults: FieldFault[] = [];
  const formulas = help.args.map(({ name, needed, says }, index) => {
    const argument = readEntry(typed[index] ?? "");
    if (isFault(argument)) faults.push(fieldFault(name, `${name} ${argument.says}.`));
    else if (needed && argument.formula === "") faults.push(fieldFault(name, `Still blank: ${name}. ${says}`, true));
    return isFault(argument) ? "" : argument.formula;
  });
  if (help.args.length > 0 && formulas.every((one) => one === "") && faults.length === 0) {
    const [first] = help.args;
    faults.push(fieldFault(first?.name ?? "", "Enter at least one argument, or fill in the example.", true));
  }
  return { faults, formulas };
}

function insertSentence(answer: InsertAnswer): string {
  const now = answer.says === "" ? "" : ` It cannot answer yet: ${answer.says}`;
  return `Written into ${answer.cell} of “${answer.sheet}”.${now}`;
}
