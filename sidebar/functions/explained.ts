// One function: what it tells, its arguments as fields, an example, and the button that writes it at the cursor.
import { isProblem } from "../../shared/cells/cell.ts";
import { entryFormula, readEntry } from "../../shared/cells/entry.ts";
import type { FunctionHelp } from "../../shared/protocol/function-help.ts";
import { insertAnswer } from "../../shared/protocol/insert.ts";
import { ask, told } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import { type Form, goTo, showTroubles, textField } from "../kit/fields.ts";
import { pressButton, progressOf } from "../kit/work-in-progress.ts";
import { type Trouble, trouble } from "../new-formula/trouble.ts";

const PATIENCE_MS = 30_000;

export function explained(help: FunctionHelp): HTMLElement {
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
  const updates: (() => void)[] = [];
  const form: Form = {
    changed: () => {
      for (const update of updates) update();
    },
    onChange: (update) => updates.push(update),
    places: new Set(),
  };
  let wanted = false;
  const preview = element("code", {});
  const insert = pressButton("Insert at the cursor", "build", () => void press());
  const progress = progressOf(() => insert);
  form.onChange(() => {
    const { troubles, formulas } = read();
    if (troubles.length === 0) wanted = false;
    showTroubles(form, troubles, wanted);
    say(preview, entryFormula(help.name, formulas));
  });
  const made = element(
    "div",
    {},
    element("p", {}, help.returns),
    ...help.args.map((arg, index) =>
      textField(
        form,
        { at: () => arg.name, label: () => `${arg.name}${arg.needed ? "" : " (optional)"}`, hint: arg.says },
        {
          get: () => typed[index] ?? "",
          set: (text) => {
            typed[index] = text;
          },
        },
      ),
    ),
    element("p", { class: "hint" }, "Cells such as C5:C14, a number, a word, or a list such as {100; 65; 2}."),
    element(
      "p",
      { class: "example" },
      "Example: ",
      element("code", {}, help.example),
      " gives ",
      element("b", {}, help.gives),
    ),
    ...(help.typed === null ? [] : [useExample(help.typed)]),
    element("p", {}, "Formula: ", preview),
    insert,
    progress.bar,
    progress.status,
  );
  form.changed();
  return made;

  function useExample(example: readonly string[]): HTMLElement {
    return element(
      "button",
      {
        type: "button",
        class: "quiet-button",
        click: () => {
          help.args.forEach((_, index) => {
            typed[index] = example[index] ?? "";
          });
          form.changed();
        },
      },
      "Fill in the example",
    );
  }

  function read(): { troubles: Trouble[]; formulas: string[] } {
    const troubles: Trouble[] = [];
    const formulas = help.args.map(({ name, needed, says }, index) => {
      const entry = readEntry(typed[index] ?? "");
      if (isProblem(entry)) troubles.push(trouble(name, `${name} ${entry.problem}.`));
      else if (needed && entry.formula === "") troubles.push(trouble(name, `Still blank: ${name}. ${says}`, true));
      return isProblem(entry) ? "" : entry.formula;
    });
    if (help.args.length > 0 && formulas.every((one) => one === "") && troubles.length === 0) {
      const [first] = help.args;
      troubles.push(trouble(first?.name ?? "", "Enter at least one argument, or fill in the example.", true));
    }
    return { troubles, formulas };
  }

  async function press(): Promise<void> {
    if (progress.isBusy()) return;
    progress.clear();
    const [first] = read().troubles;
    if (first !== undefined) {
      wanted = true;
      form.changed();
      goTo(form, first.at);
      return;
    }
    const outcome = await progress.during("Writing the formula …", () =>
      ask("insert", { name: help.name, args: typed }, PATIENCE_MS, (late) => {
        if ("answer" in late) progress.report(`${inserted(late.answer)} It took longer than Gramwright waited.`, false);
      }),
    );
    const says = "answer" in outcome ? inserted(outcome.answer) : told(outcome);
    const isSilent = "how" in outcome && outcome.how === "silent";
    progress.report(isSilent ? `${says} Look whether the formula is there first.` : says, !("answer" in outcome));
  }
}

function inserted(raw: unknown): string {
  const answer = insertAnswer(raw);
  if (answer === null) return "The answer could not be read: look at the cell with the cursor.";
  const now = answer.says === "" ? "" : ` It cannot answer yet: ${answer.says}`;
  return `Written into ${answer.cell} of “${answer.sheet}”.${now}`;
}
