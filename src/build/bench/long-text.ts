import { readFileSync } from "node:fs";
import { constants, createContext, runInContext } from "node:vm";
import { call } from "../../functions/call.ts";
import { FUNCTIONS } from "../../functions/index.ts";
import { loopTime, once, timeOf } from "./measure.ts";

/** Cells of 50 000 letters: words, digits, brackets and packs, which read differently. */
const LONG = ["a", "1", "1 ", "(", "1 (", "2 x ", "a ", "½", "1/", "egg;", "100 g plus "].map((part) =>
  part.repeat(Math.ceil(50_000 / part.length)).slice(0, 50_000),
);

/** Every function that has an example, with one argument after another a cell of 50 000 letters. */
export function longText(): void {
  const loop = loopTime();
  let worst = { time: 0, what: "" };
  for (const sheetFunction of FUNCTIONS) {
    const args = sheetFunction.examples[0]?.call ?? [];
    Object.keys(sheetFunction.args).forEach((name, at) => {
      for (const text of LONG) {
        const hostile = [...args];
        hostile[at] = text;
        const time = once(() => {
          try {
            call(sheetFunction, hostile);
          } catch {
            // A refusal counts as well as an answer.
          }
        });
        if (time > worst.time) worst = { time, what: `${sheetFunction.name}, ${name}, ${text.slice(0, 8)}…` };
      }
    });
  }
  console.log(
    `Cells of 50 000 letters in every argument: at most ${(worst.time / loop).toFixed(2)} × ten million turns of a loop that multiplies and adds (${worst.what}; ${worst.time.toFixed(0)} ms)`,
  );
  unknownLines();
  packs();
}

/** A formula's work as the built file does it, freshly loaded, as each formula cell of Sheets loads it. */
function inBuiltFile(work: string): (rows: unknown) => unknown {
  // An ordinary global object: the one that node:vm makes otherwise looks every global name up the slow way.
  const context = createContext(constants.DONT_CONTEXTIFY);
  runInContext(readFileSync("dist/Code.js", "utf8"), context);
  return runInContext(`(rows) => ${work}`, context);
}

function unknownLines(): void {
  const lines = Array.from({ length: 100_000 }, (_, at) => [`${(at % 9) + 1} cups thing${at} of no${at % 977}`]);
  const read = inBuiltFile("BAKE_GRAMSPAN(rows)");
  const split = inBuiltFile("rows.map(([line]) => line.split(' '))");
  const times = timeOf(() => read(lines), 3) / timeOf(() => split(lines), 7);
  console.log(`100 000 different unknown recipe lines: ${times.toFixed(1)} × splitting them on spaces (target 10 ×)`);
}

function packs(): void {
  const rows = Array.from({ length: 10_000 }, (_, at) => [1 + (at % 50)]);
  const unitCost = inBuiltFile("BAKE_UNITCOST(rows, 25000, 0.9, undefined, undefined, 'g')");
  const byHand = inBuiltFile("rows.map(([price]) => [price / (25000 * 0.9)])");
  const times = timeOf(() => unitCost(rows), 15) / timeOf(() => byHand(rows), 31);
  console.log(`BAKE_UNITCOST, 10 000 rows: ${times.toFixed(1)} × the arithmetic by hand (target 20 ×)`);
}
