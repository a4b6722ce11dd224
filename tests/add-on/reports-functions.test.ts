// What went wrong in other people's add-ons, by public report; each is a test or a reason why it cannot happen.
// Reports 1 to 29 are numbered as they were collected; owner/project #number is a thread on GitHub.
// Here: what arrives in a function and what leaves it.
import vm from "node:vm";
import { beforeAll, describe, expect, test } from "vitest";
import { call } from "../../src/functions/call.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { expectCells, refusal, run } from "../functions/support.ts";
import { buildSheet, files, HANDOUT } from "../templates/sheet-support.ts";
import { ALL } from "./reports-kit.ts";

let code = "";
beforeAll(async () => {
  ({ codeJs: code } = await files());
});

describe("what arrives in a function and what leaves it", () => {
  test("8. blank is neither 0 nor NaN, and a number with an unclear sign is refused (bradjasper/ImportJSON PR #60)", () => {
    expect(run("BAKE_TRUEPCT", [[""], [""]])).toBe("");
    expect(refusal("BAKE_TRUEPCT", [["1,234"], [500]])).toMatch(/weights row 1 is "1,234".*1234 or 1\.234/);
    expect(refusal("BAKE_DOUGHFOR", 10, "1295,84335x")).toMatch(/is not a number/);
    // A comma is a decimal sign where nothing else is possible, and never left out: 129584335 cannot come of it.
    expect(run("BAKE_DOUGHFOR", 1, "1295,84335")).toBeCloseTo(1295.84335, 9);
  });

  test("9. numbers stay numbers and texts stay texts, both ways (bradjasper/ImportJSON #27, scryfall/google-sheets #21, burnash/gspread #501, vlucas/sheetquery #20)", async () => {
    for (const { made, example } of ALL) {
      const [answer, expected] = [call(made, example.call), example.gives].map((one) =>
        (Array.isArray(one) ? one.flat() : [one]).map((cell) => typeof cell),
      );
      expect(answer, made.name).toEqual(expected);
    }
    const codes = ["01234", "22 34", "3/4", "1e5", "2026-11-25"];
    const { value } = await buildSheet({ ...HANDOUT, ingredient: codes, kind: ["flour"], percent: [1] });
    expect(codes.map((_, row) => value("ingredient", row + 1))).toEqual(codes);
    expect(typeof value("percent", 1)).toBe("number");
    expect(refusal("BAKE_TRUEPCT", [[100], ["a cup"]])).toMatch(/weights row 2 is "a cup"/);
  });

  test("15. a word without quotation marks arrives as #NAME? and is named (Blacksmoke16/GESI esi_client.ts)", () => {
    expect(refusal("BAKE_TINGUIDE", "#NAME?")).toMatch(/dough_kind holds the error #NAME\?; correct that cell first/);
  });

  test("19. no text grows beyond what a cell takes (qeet/IMPORTJSONAPI #10)", () => {
    const long = "ß".repeat(50_000);
    const rows = (text: string) => [[text], ["water"], ["salt"]];
    for (const made of FUNCTIONS) {
      for (const { call: args } of made.examples) {
        const stretched = args.map((arg) =>
          Array.isArray(arg) && arg.every(([one]) => typeof one === "string") ? rows(long) : arg,
        );
        let answer: unknown = "";
        try {
          answer = call(made, stretched);
        } catch (error) {
          answer = (error as Error).message;
        }
        for (const cell of [answer].flat(2)) expect(String(cell).length).toBeLessThanOrEqual(50_000);
      }
    }
  });

  test("13. blank rows below change nothing, as A2:A brings them (socialpoint-labs/sheetfu-apps-script PR #26, nithinmurali/pygsheets #329, grafana/google-sheets-datasource #249)", () => {
    for (const { made, example } of ALL) {
      const columns = example.call.filter((arg) => Array.isArray(arg) && arg.length > 1);
      const open = example.call.map((arg) =>
        Array.isArray(arg) && arg.length > 1
          ? [...arg, ...Array.from({ length: 1000 - arg.length }, () => arg[0].map(() => ""))]
          : arg,
      );
      if (columns.length > 0) expectCells(call(made, open), example.gives, example.within);
    }
  });

  test("17. the same cells always give the same answer, which a cache or a reload cannot hurt (0graph/yfinance #4, scryfall/google-sheets #19)", () => {
    const context = vm.createContext({});
    vm.runInContext("Math.random = Date.now = Date = function () { throw new Error('not pure'); };", context);
    vm.runInContext(code, context);
    const twice = (name: string, args: string) =>
      vm.runInContext(`[1, 2].map(function () { return JSON.stringify(${name}(${args})); })`, context) as string[];
    for (const { made, example } of ALL) {
      const [first, second] = twice(
        made.name,
        example.call.map((arg) => (arg === undefined ? "undefined" : JSON.stringify(arg))).join(","),
      );
      expect(second).toBe(first);
      const kept = JSON.stringify(example.call);
      call(made, example.call);
      expect(JSON.stringify(example.call), `${made.name} changes what it is given`).toBe(kept);
    }
  });

  test("12. a thousand rows of 26 columns are answered or refused at once: nothing asks outside or waits, and npm run bench tells how quickly (rghuckins/robinhood-google-sheets #14, joseballester/muFunds #66)", () => {
    const block = Array.from({ length: 1000 }, (_, row) =>
      Array.from({ length: 26 }, (_, column) => row * 26 + column),
    );
    for (const made of FUNCTIONS) {
      const long =
        made.examples[0]?.call.map((arg) =>
          Array.isArray(arg) ? Array.from({ length: 1000 }, (_, row) => arg[row % arg.length]) : arg,
        ) ?? [];
      for (const args of [long, Object.keys(made.args).map(() => block)]) {
        try {
          call(made, args);
        } catch (error) {
          expect((error as Error).name).toBe("Error");
        }
      }
    }
  });
});
