import {
  type Batch,
  batchesOf,
  type CheckAnswer,
  type CheckExample,
  type CheckStep,
  differences,
  isWaiting,
} from "../../shared/protocol/self-check.ts";
import {
  ANCHOR_ROW,
  anchorAnswer,
  answersOf,
  PROBES,
  TYPED_CELL,
  typedAnswer,
} from "../../shared/protocol/self-check-probes.ts";
import { ask, told } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { Panel } from "../kit/panel.ts";

/** Every function's examples; the build puts them here. */
declare const CHECK_EXAMPLES: readonly CheckExample[];

const PATIENCE_MS = 120_000;
/** Formulas of a script take a while to answer; they are read again until none is waiting. */
const AGAIN_MS = 1500;
const MOST_READINGS = 40;
const MOST_LINES = 40;

const notRemoved = (sheet: string): string =>
  `The sheet “${sheet}” could not be removed. If it is still there, delete it.`;

/** Calculates every example in a sheet of its own, in this very file, and says what differs. */
export const selfCheck: Panel = {
  name: "Check",
  heading: "Test this installation",
  open: () => {
    const status = element("p", { class: "status", role: "status" });
    const report = element("textarea", {
      readonly: true,
      rows: 14,
      "aria-label": "The report, to copy",
      hidden: true,
      focus: () => report.select(),
    });
    const start = button("Run the check", () => void work(run));
    const typed = button("Read what I typed", () => void work(finish));
    const typing = element(
      "div",
      { hidden: true },
      element(
        "p",
        {},
        `One thing only you can try: type 0.65 (with your own decimal sign) into the cell ${TYPED_CELL} of the sheet of the check, and press Enter.`,
      ),
      typed,
    );
    let sheet = "";
    return element(
      "section",
      {},
      element(
        "p",
        {},
        "Makes a sheet of its own in this spreadsheet, lets Google calculate every function's examples there, compares them with what they must give, and removes the sheet. Nothing else is touched.",
      ),
      start,
      status,
      typing,
      report,
    );

    async function work(what: () => Promise<void>): Promise<void> {
      start.disabled = typed.disabled = true;
      try {
        await what();
      } catch (error) {
        const own = sheet;
        say(status, `${(error as Error).message}${(await leave()) ? "" : ` ${notRemoved(own)}`}`);
      }
      start.disabled = typed.disabled = false;
    }

    async function run(): Promise<void> {
      report.hidden = typing.hidden = true;
      const examples = CHECK_EXAMPLES;
      const wrong: string[] = [];
      let done = 0;
      const from = Date.now();
      for (const batch of batchesOf(examples)) {
        say(status, `${done} of ${examples.length} examples calculated …`);
        wrong.push(...differences(batch, (await calculated(batch)).values));
        done += batch.expected.length;
      }
      const seconds = Math.round((Date.now() - from) / 100) / 10;
      const { values, locale } = await calculated(PROBES);
      await step({ step: "insert", sheet, row: ANCHOR_ROW });
      const after = await step({ step: "read", sheet });
      report.value = [
        `Gramwright, ${done} examples in ${seconds} s, locale ${locale}`,
        wrong.length === 0 ? "All of them agree." : `${wrong.length} cells differ:`,
        ...wrong.slice(0, MOST_LINES),
        ...(wrong.length > MOST_LINES ? [`… and ${wrong.length - MOST_LINES} more`] : []),
        ...answersOf(values),
        anchorAnswer(after.values, after.formulas),
      ].join("\n");
      say(
        status,
        wrong.length === 0 ? `All ${done} examples agree.` : `${wrong.length} cells differ; copy the report below.`,
      );
      report.hidden = typing.hidden = false;
    }

    async function finish(): Promise<void> {
      const { values } = await step({ step: "read", sheet });
      report.value += `\n${typedAnswer(values)}`;
      const own = sheet;
      const isRemoved = await leave();
      typing.hidden = true;
      say(
        status,
        isRemoved
          ? "The sheet of the check is removed. Copy the report below."
          : `${notRemoved(own)} Then copy the report below.`,
      );
    }

    /** Whether the sheet of the check, if there was one, is removed. */
    async function leave(): Promise<boolean> {
      const own = sheet;
      sheet = "";
      return own === "" || "answer" in (await ask("check", { step: "remove", sheet: own }, PATIENCE_MS));
    }

    async function calculated(cells: Pick<Batch, "cells" | "formats" | "formulas">): Promise<CheckAnswer> {
      const { cells: filled, formats, formulas } = cells;
      const bare = formulas.map(({ row, column, formula }) => ({ row, column, formula }));
      sheet = (await step({ step: "write", sheet, cells: filled, formats, formulas: bare })).sheet;
      for (let reading = 1; ; reading++) {
        const answer = await step({ step: "read", sheet });
        if (!isWaiting(answer.values) || reading === MOST_READINGS) return answer;
        await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
      }
    }
  },
};

async function step(asked: CheckStep): Promise<CheckAnswer> {
  const outcome = await ask("check", asked, PATIENCE_MS);
  if ("answer" in outcome) return outcome.answer;
  throw new Error(told(outcome));
}

const button = (text: string, click: () => void) => element("button", { type: "button", class: "build", click }, text);
