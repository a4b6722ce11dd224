// What no script can see: a person looks, chooses, and the report says it.
import { element } from "../kit/element.ts";
import { newId } from "../kit/fields.ts";

type Look = { readonly about: string; readonly asks: string; readonly answers: readonly string[] };

const LOOKS: readonly Look[] = [
  {
    about: "the box of a function",
    asks: "Enter =BAKE_DOUGHFOR( in an empty cell and read the box beside it. What does it show for each argument?",
    answers: ["its name and what it is", "{number} as well", "its name alone", "there is no box"],
  },
  {
    about: "undo after a build",
    asks: "In a spreadsheet with nothing else in it, build a sheet under New formula and press Ctrl+Z once. What happens?",
    answers: ["nothing", "all of the sheet goes", "part of it goes"],
  },
  {
    about: "pages of a print",
    asks: "With a formula sheet in front, choose File, Print, Fit to width. Where does its first page end?",
    answers: ["all is on one page", "between two parts", "inside a table"],
  },
];

const NOT_SEEN = "not looked at";
const lineOf = (about: string, answer: string): string => `By hand, ${about}: ${answer}`;

/** `note` puts a line into the report, in place of the one about the same. */
export const byHand = (note: (begins: string, line: string) => void): HTMLElement =>
  element(
    "details",
    {},
    element("summary", {}, "What only you can see"),
    element("p", { class: "hint" }, "Three things to look at, if you like. Each answer goes into the report."),
    ...LOOKS.map(({ about, asks, answers }) => {
      const id = newId();
      const select = element(
        "select",
        { id, change: () => note(lineOf(about, ""), lineOf(about, select.value)) },
        ...[NOT_SEEN, ...answers].map((text) => element("option", { value: text }, text)),
      );
      return element("div", { class: "field" }, element("label", { class: "label", for: id }, asks), select);
    }),
  );

/** The report with this line, instead of one that begins so. */
export const withLine = (report: string, begins: string, line: string): string =>
  [...report.split("\n").filter((one) => !one.startsWith(begins)), line].join("\n");
