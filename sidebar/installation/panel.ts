import { VERSION } from "../../shared/base/version.ts";
import type { CheckAnswer, CheckStep } from "../../shared/protocol/check.ts";
import {
  type Batch,
  batchesOf,
  type CheckExample,
  differences,
  FORMULAS_AT_A_TIME,
  isWaiting,
  timedCalls,
} from "../../shared/protocol/self-check.ts";
import {
  ANCHOR_ROW,
  anchorAnswer,
  answersOf,
  givenLines,
  PROBES,
  TYPED_CELL,
  typedAnswer,
} from "../../shared/protocol/self-check-probes.ts";
import { ask, failureSentence } from "../kit/ask.ts";
import { element, say } from "../kit/element.ts";
import type { Panel } from "../kit/panel.ts";
import { wholePage } from "../kit/whole-page.ts";
import { byHand, withLine } from "./by-hand.ts";
import { buildLine } from "./measures.ts";

/** Every function's examples; the build puts them here. */
declare const CHECK_EXAMPLES: readonly CheckExample[];

const PATIENCE_MS = 120_000;
/** Formulas of a script take a while to answer; they are read again until none is waiting. */
const AGAIN_MS = 1500;
const MAX_READINGS = 40;
const MAX_LINES = 40;

const notRemoved = (sheet: string): string =>
  `The sheet “${sheet}” could not be removed. If it is still there, delete it.`;

const PURPOSE =
  "Gramwright adds a sheet and lets the spreadsheet calculate every function's examples there. It compares them with the right answers, then deletes the sheet. Nothing else is touched.";
const TYPING_TEXT = `One thing only you can try. Type 0.65, with your own decimal sign, into cell ${TYPED_CELL} of the sheet of the check, and press Enter.`;

/** Calculates every example in a sheet of its own, in this very file, and says what differs. */
export const selfCheck: Panel = {
  name: "Check",
  heading: "Test this installation",
  open: () => {
    const sheet = checkSheet();
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
    const typing = element("div", { hidden: true }, element("p", {}, TYPING_TEXT), typed);
    const looks = element(
      "div",
      { hidden: true },
      byHand((begins, line) => {
        report.value = withLine(report.value, begins, line);
      }),
    );
    return element("section", {}, element("p", {}, PURPOSE), start, status, typing, looks, report);

    async function work(act: () => Promise<void>): Promise<void> {
      start.disabled = typed.disabled = true;
      try {
        await act();
      } catch (error) {
        const name = sheet.name();
        say(status, `${(error as Error).message}${(await sheet.remove()) ? "" : ` ${notRemoved(name)}`}`);
      }
      start.disabled = typed.disabled = false;
    }

    async function run(): Promise<void> {
      report.hidden = typing.hidden = looks.hidden = true;
      // Before the sheet of the check, which is to stay in front.
      say(status, "Measuring a build and a typed weight …");
      const build = await buildLine(step);
      const { seconds, differing } = await compare(sheet, status);
      say(status, "Measuring how long calls take …");
      const [one, twenty] = [await secondsFor(sheet, 1), await secondsFor(sheet, FORMULAS_AT_A_TIME)];
      const { values, locale } = await sheet.calculate(PROBES);
      await sheet.insertRow(ANCHOR_ROW);
      const after = await sheet.read();
      const service = await sheet.service();
      report.value = [
        `Gramwright ${VERSION}, ${CHECK_EXAMPLES.length} examples in ${seconds} s, locale ${locale}`,
        ...(await filesSay()),
        `One call: ${one} s; ${FORMULAS_AT_A_TIME} at once: ${twenty} s (looked at every ${AGAIN_MS / 1000} s)`,
        build,
        ...differenceLines(differing),
        ...answersOf(values),
        ...givenLines(values),
        anchorAnswer(after.values, after.formulas),
        ...service,
      ].join("\n");
      say(
        status,
        differing.length === 0
          ? `All ${CHECK_EXAMPLES.length} examples agree.`
          : `${differing.length} cells differ; copy the report below.`,
      );
      report.hidden = typing.hidden = looks.hidden = false;
    }

    async function finish(): Promise<void> {
      const { values } = await sheet.read();
      report.value += `\n${typedAnswer(values)}`;
      const name = sheet.name();
      const isRemoved = await sheet.remove();
      typing.hidden = true;
      say(
        status,
        isRemoved
          ? "The sheet of the check is removed. Copy the report below."
          : `${notRemoved(name)} Then copy the report below.`,
      );
    }
  },
};

/** Calculates all examples, batch by batch, and says how far it is. */
async function compare(sheet: CheckSheet, status: Element): Promise<{ seconds: number; differing: string[] }> {
  const differing: string[] = [];
  let done = 0;
  const from = Date.now();
  for (const batch of batchesOf(CHECK_EXAMPLES)) {
    say(status, `${done} of ${CHECK_EXAMPLES.length} examples calculated …`);
    differing.push(...differences(batch, (await sheet.calculate(batch)).values));
    done += batch.expected.length;
  }
  return { seconds: Math.round((Date.now() - from) / 100) / 10, differing };
}

/** How long a sheet takes to write so many calls and to have them all answered, in seconds. */
async function secondsFor(sheet: CheckSheet, calls: number): Promise<number> {
  const from = Date.now();
  await sheet.calculate(timedCalls(calls, from));
  return Math.round((Date.now() - from) / 100) / 10;
}

/** Whether the two files are as they were packed; the sums tell two installations apart. */
async function filesSay(): Promise<string[]> {
  const page = wholePage();
  const outcome = await ask("ping", {}, PATIENCE_MS);
  const code = "answer" in outcome ? outcome.answer : { whole: "unknown", sum: "" };
  const line = (file: string, { whole, sum }: { readonly whole: string; readonly sum: string }) =>
    `${file}: ${WHOLE_SAYS.get(whole) ?? "it cannot be told here whether it is whole"}${sum === "" ? "" : ` (${sum})`}`;
  return [line("Code.gs", code), line("sidebar.html", page)];
}

const WHOLE_SAYS: ReadonlyMap<string, string> = new Map([
  ["whole", "as it was packed"],
  ["damaged", "not as it was packed; paste it again"],
]);

const differenceLines = (differing: readonly string[]): string[] => [
  differing.length === 0 ? "All of them are correct." : `${differing.length} cells differ:`,
  ...differing.slice(0, MAX_LINES),
  ...(differing.length > MAX_LINES ? [`… and ${differing.length - MAX_LINES} more`] : []),
];

type CheckSheet = ReturnType<typeof checkSheet>;

/** The sheet of the check in this file; made when first written to. */
function checkSheet() {
  let sheet = "";
  const read = () => step({ step: "read", sheet });
  return {
    name: () => sheet,
    read,
    service: async () => (await step({ step: "service", sheet })).values.map(([line]) => String(line ?? "")),
    insertRow: (row: number) => step({ step: "insert", sheet, row }),
    async calculate({ cells, formats, formulas }: Pick<Batch, "cells" | "formats" | "formulas">): Promise<CheckAnswer> {
      const bare = formulas.map(({ row, column, formula }) => ({ row, column, formula }));
      sheet = (await step({ step: "write", sheet, cells, formats, formulas: bare })).sheet;
      for (let reading = 1; ; reading++) {
        const answer = await read();
        if (!isWaiting(answer.values) || reading === MAX_READINGS) return answer;
        await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
      }
    },
    /** Whether the sheet, if there was one, is removed. */
    async remove(): Promise<boolean> {
      const name = sheet;
      sheet = "";
      return name === "" || "answer" in (await ask("check", { step: "remove", sheet: name }, PATIENCE_MS));
    },
  };
}

async function step(checkStep: CheckStep): Promise<CheckAnswer> {
  const outcome = await ask("check", checkStep, PATIENCE_MS);
  if ("answer" in outcome) return outcome.answer;
  throw new Error(failureSentence(outcome));
}

const button = (text: string, click: () => void) => element("button", { type: "button", class: "build", click }, text);
