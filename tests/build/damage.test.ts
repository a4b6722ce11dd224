// What may happen to the three files on their way into the script editor. Each damage is refused by the editor, told by the cells and the
// sidebar, or does no harm; in no case does a cell show a number that the whole file would not show.
import { readFileSync } from "node:fs";
import { createContext, runInContext } from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import { isAsWritten, sumOf } from "../../shared/protocol/pasted-sum.ts";
import { codeJs } from "../../src/build/build.ts";
import { canaryIn } from "../../src/build/page.ts";
import { files } from "../templates/sheet-support.ts";

/** Calls of several families, with and without the larder. */
const CALLS = [
  "BAKE_DOUGHFOR(73, 390, 0.12, 0.02)",
  'BAKE_GRAMS([["1 cup flour"], ["2 tbsp sugar"]])',
  'BAKE_FLOURPCT([[1000], [650], [20]], [["flour"], ["water"], ["salt"]])',
  'BAKE_TINCAPACITY("box", [[13, 4, 4]], "in")',
  'BAKE_UNITCOST(24, "25 kg", 0.98)',
  'BAKE_FRICTIONGUIDE("spiral", 8, "C")',
  'BAKE_SWAP(100, "honey", "sugar", "solids")',
  'BAKE_HYDRATION([["Flour"], ["Egg"], ["Milk"]], [[1000], [200], [300]], [["flour"], ["egg"], ["dairy"]])',
] as const;

type Outcome = "editor refuses" | "told" | "harmless";

function opened(code: string): ((source: string) => unknown) | undefined {
  const context = createContext({});
  try {
    runInContext(code, context);
  } catch {
    return undefined;
  }
  return (source) => runInContext(source, context) as unknown;
}

const answerOf = (run: (source: string) => unknown, call: string): string => {
  try {
    return JSON.stringify(run(call));
  } catch (error) {
    return `refused: ${(error as Error).message}`;
  }
};

let whole = "";
let page = "";
let right: readonly string[] = [];
beforeAll(async () => {
  whole = await codeJs();
  page = (await files()).sidebarHtml;
  const run = opened(whole);
  if (run === undefined) throw new Error("Code.js cannot be read");
  right = CALLS.map((call) => answerOf(run, call));
  expect(right.filter((answer) => answer.startsWith("refused"))).toEqual([]);
});

/** What the damaged script does. Fails where a cell shows anything but the right answer or an error. */
function outcomeOf(code: string): Outcome {
  const run = opened(code);
  if (run === undefined) return "editor refuses";
  const answers = CALLS.map((call) => answerOf(run, call));
  for (const [at, answer] of answers.entries())
    if (!answer.startsWith("refused")) expect(answer, CALLS[at]).toBe(right[at]);
  const ping = answerOf(run, `answerSidebar('{"ask":"ping"}')`);
  if (!ping.includes('\\"whole\\":\\"whole\\"')) return "told";
  expect(answers).toEqual(right);
  return "harmless";
}

/** A place in the middle of the body, at a line's end. */
const middle = (code: string): number => code.indexOf("\n", Math.floor(code.length / 2)) + 1;
const lines = (code: string): string[] => code.split("\n");
/** Every text in the file that a pattern finds, once each. */
const digitAt = (code: string, part: number): string => {
  const from = Math.floor(code.length * part);
  const at = from + code.slice(from).search(/\d/);
  return `${code.slice(0, at)}${(Number(code[at]) + 1) % 10}${code.slice(at + 1)}`;
};

const DAMAGES: readonly (readonly [what: string, damage: (code: string) => string, wanted: readonly Outcome[]])[] = [
  ["line ends of Windows", (code) => code.replace(/\n/g, "\r\n"), ["harmless"]],
  ["line ends of old Macs", (code) => code.replace(/\n/g, "\r"), ["harmless"]],
  ["blanks at the ends of lines trimmed", (code) => code.replace(/[ \t]+$/gm, ""), ["harmless"]],
  ["blanks put at the ends of lines", (code) => code.replace(/\n/g, " \t\n"), ["editor refuses"]],
  ["every line moved in by two blanks", (code) => code.replace(/^(?=.)/gm, "  "), ["told"]],
  ["blanks at the beginnings of lines trimmed", (code) => code.replace(/^[ \t]+/gm, ""), ["harmless", "told"]],
  ["an empty line after each line", (code) => code.replace(/\n/g, "\n\n"), ["editor refuses"]],
  ["a byte order mark in front", (code) => `\ufeff${code}`, ["harmless"]],
  ["read as another encoding", (code) => Buffer.from(code, "utf8").toString("latin1"), ["harmless"]],
  ["pasted twice", (code) => code + code, ["harmless"]],
  ["pasted under what the editor begins with", (code) => `function myFunction() {\n  \n}\n${code}`, ["harmless"]],
  ["its last line lost", (code) => lines(code.trimEnd()).slice(0, -1).join("\n"), ["editor refuses"]],
  ["its last function lost", (code) => code.slice(0, code.indexOf("function gramwrightSums_")), ["told"]],
  ["cut in the middle", (code) => code.slice(0, middle(code)), ["editor refuses"]],
  ["cut between two functions", (code) => code.slice(0, code.lastIndexOf("\n\n/**")), ["told"]],
  ["its first lines lost", (code) => lines(code).slice(10).join("\n"), ["editor refuses", "told"]],
  [
    "a line in the middle lost",
    (code) => code.slice(0, middle(code)) + code.slice(code.indexOf("\n", middle(code)) + 1),
    ["editor refuses", "told"],
  ],
  ["straight quotation marks made round", (code) => code.replace(/"([^"\n]*)"/g, "“$1”"), ["editor refuses"]],
  ["three dots made one sign", (code) => code.replace(/\.\.\./g, "…"), ["editor refuses"]],
  [
    "hyphens made dashes",
    (code) => code.replace(/ - /g, " – ").replace(/--/g, "—"),
    ["editor refuses", "told", "harmless"],
  ],
  ["blanks made unbreakable ones", (code) => code.replace(/ /g, "\u00a0"), ["editor refuses", "told"]],
  ["long lines broken at 80 signs", (code) => code.replace(/(.{80})(?=.)/g, "$1\n"), ["editor refuses"]],
  ["backslashes lost", (code) => code.replace(/\\/g, ""), ["editor refuses", "told"]],
  ["a tab for a blank inside of lines", (code) => code.replace(/(\S) (\S)/g, "$1\t$2"), ["harmless", "told"]],
  ["everything in capitals", (code) => code.toUpperCase(), ["editor refuses"]],
  ["one digit changed in the first part", (code) => digitAt(code, 0.2), ["editor refuses", "told"]],
  ["one digit changed in the middle", (code) => digitAt(code, 0.5), ["editor refuses", "told"]],
  ["one digit changed near the end of the body", (code) => digitAt(code, 0.8), ["editor refuses", "told"]],
  ["one letter of a text changed", (code) => code.replace("wholemeal", "wholemeel"), ["told"]],
  ["the page pasted in its place", () => page, ["editor refuses"]],
];

describe("Code.js", () => {
  test.each(DAMAGES)("%s", (_, damage, wanted) => {
    const code = damage(whole);
    expect(wanted).toContain(outcomeOf(code));
  });

  test("no blank that is trimmed at the end of a line stands in a text: lines end with their last sign", () => {
    expect(whole).not.toMatch(/[ \t]$/m);
  });

  test("any one digit of the body changed is told, and no cell shows a number", () => {
    for (let part = 0.05; part < 0.85; part += 0.1) {
      const run = opened(digitAt(whole, part));
      if (run === undefined) continue;
      for (const call of CALLS) expect(answerOf(run, call)).toMatch(/^refused: Code\.gs is not as it was packed/);
    }
  });

  test("a service that shows functions otherwise than they were written is not taken for damage", () => {
    const shown = `Function.prototype.toString = function () { return "function " + this.name + "() { [compiled] }"; };\n${whole}`;
    const run = opened(shown);
    expect(run && CALLS.map((call) => answerOf(run, call))).toEqual(right);
    expect(run && answerOf(run, `answerSidebar('{"ask":"ping"}')`)).toContain('\\"whole\\":\\"unknown\\"');
  });
});

describe("sidebar.html", () => {
  const scriptIn = (html: string): string =>
    /<script data-sum="[^"]*">([\s\S]*)<\/script>\s*<\/body>/.exec(html)?.[1] ?? "";
  const sumIn = (html: string): string => /<script data-sum="([^"]*)">/.exec(html)?.[1] ?? "";

  /** What its own script finds, by its own functions. */
  function pageOutcome(html: string): Outcome {
    const script = scriptIn(html);
    // By its words, or by the menu where they are not there: tests/workbook/script-permissions.test.ts.
    if (script === "") return "told";
    try {
      new Function(script);
    } catch {
      // The words for it stand in the page beside the script, and show where the script does not run.
      return "told";
    }
    if (sumOf(script) === sumIn(html)) return "harmless";
    return isAsWritten(canaryIn(html), canaryIn(page)) ? "told" : "editor refuses";
  }

  test.each([
    ["line ends of Windows", (html: string) => html.replace(/\n/g, "\r\n"), "harmless"],
    ["blanks at the ends of lines trimmed", (html: string) => html.replace(/[ \t]+$/gm, ""), "harmless"],
    ["blanks put at the ends of lines", (html: string) => html.replace(/\n/g, "  \n"), "told"],
    ["every line moved in", (html: string) => html.replace(/^(?=.)/gm, "\t"), "told"],
    ["an empty line after each", (html: string) => html.replace(/\n/g, "\n\n"), "told"],
    ["cut in the middle", (html: string) => html.slice(0, html.length / 2), "told"],
    [
      "a line lost",
      (html: string) => html.slice(0, middle(html)) + html.slice(html.indexOf("\n", middle(html)) + 1),
      "told",
    ],
    ["one digit changed", (html: string) => digitAt(html, 0.5), "told"],
    [
      "blanks made unbreakable",
      (html: string) => html.replace(scriptIn(html), (script) => script.replace(/ /g, "\u00a0")),
      "told",
    ],
    ["round quotation marks", (html: string) => html.replace(/"([^"\n]{3,40})"/g, "“$1”"), "told"],
  ] as const)("%s", (_, damage, wanted) => {
    expect(pageOutcome(damage(page))).toBe(wanted);
  });

  test("whole, it is told to be whole", () => expect(pageOutcome(page)).toBe("harmless"));
});

test("appsscript.json: what is lost of it is no JSON any more, which the editor refuses", () => {
  const manifest = readFileSync("src/add-on/appsscript.json", "utf8");
  for (let end = 1; end < manifest.trimEnd().length; end++) expect(() => JSON.parse(manifest.slice(0, end))).toThrow();
  expect(JSON.parse(manifest.replace(/\n/g, "\r\n"))).toEqual(JSON.parse(manifest));
});
