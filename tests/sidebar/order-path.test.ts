// The order's path is a line: through how many source files a keystroke goes until its figures stand in the foot, and a press of
// the button until the sheet is there. Numbers, texts, units and lists (shared/base) are everybody's and do not count.
import { beforeAll, describe, expect, test, vi } from "vitest";
import { stub } from "../../src/build/print.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { openWorkbook } from "../../src/workbook/host.ts";
import { type BareNode, barePage } from "./bare-page.ts";
import { bundled, countFiles, type FilesRun, runBundle } from "./files-that-ran.ts";

/** What was reached. Whoever needs one file more finds another that is not needed. */
const MOST = { keystroke: { "pan-loaf": 19, "hearth-loaf": 15 }, build: 35 };

let page = "";
let addOn = "";
beforeAll(async () => {
  page = await bundled(`export { make } from "./sidebar/new-formula/panel.ts";`);
  addOn = [
    await bundled(`export { answerSidebar } from "./src/add-on/main.ts";`),
    "function answerSidebar(json) { return program.answerSidebar(json); }",
    ...FUNCTIONS.map(stub),
  ].join("\n");
});

const listed = (files: FilesRun): string[] =>
  [...files]
    .filter(([file]) => !file.startsWith("shared/base/"))
    .map(([file, functions]) => `${file}: ${functions.join(", ")}`)
    .sort();

const ofClass = (panel: BareNode, name: string): BareNode => only(panel, (node) => node.getAttribute("class") === name);
function only(panel: BareNode, is: (node: BareNode) => boolean): BareNode {
  const [first] = panel.all(is);
  if (first === undefined) throw new Error("The panel has no such part.");
  return first;
}

function field(panel: BareNode, label: string): BareNode {
  const named = only(panel, ({ tagName, textContent }) => tagName === "label" && textContent.trim() === label);
  return only(panel, (node) => node.getAttribute("id") === named.getAttribute("for"));
}

function type(panel: BareNode, label: string, text: string): void {
  const input = field(panel, label);
  input.value = text;
  input.meet("input");
}

/** The panel with an order that can be built, and a workbook behind it. */
async function orderedIn(template: string) {
  const book = openWorkbook({ codeJs: addOn });
  // What the functions calculate is no part of a build.
  book.removeFunctions();
  const server = vi.fn((json: string) => book.script.serve("answerSidebar", [json]));
  const panel = runBundle<{ make: { open: () => BareNode } }>(page, "page.js", barePage(server)).make.open();
  // The panel asks for the bakery's settings first.
  await vi.waitFor(() => expect(panel.textContent).toContain("Keep as the bakery settings"));
  const choice = field(panel, "Template");
  choice.value = template;
  choice.meet("change");
  if (template === "pan-loaf")
    for (const [label, text] of [
      ["Length cm", "30"],
      ["Width cm", "10"],
      ["Depth cm", "10"],
    ] as const)
      type(panel, label, text);
  type(panel, "Pieces, size 1", "73");
  type(panel, "Baked g, size 1", "800");
  return { panel, book };
}

const KEYSTROKES = [
  ["Pieces, size 1", "74"],
  ["Baker's %, ingredient 3", "5"],
  ["Handling loss %", "3"],
] as const;

describe.each(["pan-loaf", "hearth-loaf"] as const)("%s", (template) => {
  test("from a keystroke to the figures", async () => {
    const { panel } = await orderedIn(template);
    const figures = ofClass(panel, "figures");
    for (const [label, text] of KEYSTROKES) {
      const before = figures.textContent;
      const end = countFiles({ "page.js": page });
      let files: FilesRun | undefined;
      figures.onFill = () => {
        files ??= end();
      };
      type(panel, label, text);
      expect(figures.textContent).toMatch(/^Dough \d/);
      expect(figures.textContent).not.toBe(before);
      const all = listed(files ?? new Map());
      expect(all.length, all.join("\n")).toBeGreaterThan(10);
      expect(all.length, `${label}\n${all.join("\n")}`).toBeLessThanOrEqual(MOST.keystroke[template]);
    }
  });

  test("from the button to the sheet", async () => {
    const { panel, book } = await orderedIn(template);
    const foot = only(panel, ({ tagName }) => tagName === "footer");
    const status = ofClass(foot, "status");
    const end = countFiles({ "page.js": page, "Code.js": addOn });
    let files: FilesRun | undefined;
    status.onFill = () => {
      if (status.textContent.startsWith("Built")) files ??= end();
    };
    ofClass(foot, "build").meet("click");
    await vi.waitFor(() => expect(status.textContent).toMatch(/^Built/), { timeout: 20_000 });
    expect(book.sheetNames()).toHaveLength(2);
    const all = listed(files ?? new Map());
    expect(all.length, all.join("\n")).toBeGreaterThan(20);
    expect(all.length, all.join("\n")).toBeLessThanOrEqual(MOST.build);
  });
});
