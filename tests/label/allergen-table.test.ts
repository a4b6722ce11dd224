import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { down, run } from "../functions/support.ts";

const table = (...args: unknown[]) => run("BAKE_ALLERGENTABLE", ...args) as string[][];
/** What one product's ingredients declare, as its formula sheet answers. */
const declared = (law: string, ...words: string[]) =>
  String(
    run(
      "BAKE_ALLERGENS",
      down(...words.map((_, at) => `i${at}`)),
      [["ingredient", "allergens"], ...words.map((one, at) => [`i${at}`, one])],
      law,
    ),
  );

describe("BAKE_ALLERGENTABLE", () => {
  test("EU and UK: fourteen groups in the annex's order, and what is not on the list (Regulation (EU) 1169/2011, annex II)", () => {
    const bread = declared("EU", "wheat", "rye", "milk", "sesame", "pine nuts");
    expect(table(down(bread), "EU")).toEqual([
      ["wheat, rye", "–", "–", "–", "–", "–", "yes", "–", "–", "–", "yes", "–", "–", "–", "pine nuts"],
    ]);
    const none = table(down(declared("UK", "none")), "UK")[0];
    expect(none).toEqual([...Array<string>(14).fill("–"), ""]);
  });
  test("a declaration under one law is read under another: rye and celery are on no list of the US, pine nuts on no other", () => {
    expect(table(down(declared("EU", "wheat", "rye", "pine nuts")), "US")[0]).toEqual([
      "–",
      "–",
      "–",
      "–",
      "pine nuts",
      "–",
      "yes",
      "–",
      "–",
      "rye",
    ]);
    expect(table(down(declared("US", "wheat", "celery", "pine nuts", "shrimps")), "EU")[0]).toEqual([
      "wheat",
      "shrimps",
      "–",
      "–",
      "–",
      "–",
      "–",
      "–",
      "yes",
      "–",
      "–",
      "–",
      "–",
      "–",
      "pine nuts",
    ]);
  });
  test("blank is not known, also beside an earlier print, and what cannot be read says so", () => {
    expect(table(down("", "milk"), "US", down("milk", "milk"))[0]?.every((cell) => cell === "")).toBe(true);
    const odd = table(down("may contain milk"), "UK")[0] ?? [];
    expect(odd.slice(0, 14).every((cell) => cell === "")).toBe(true);
    expect(odd[14]).toMatch(/^cannot be read: it holds "may contain milk"/);
  });
  test("every group and species that comes, goes or changes is marked in its own column, and no other", () => {
    const words = [
      "wheat",
      "rye",
      "eggs",
      "fish (cod)",
      "fish (hake)",
      "crustaceans (crab)",
      "milk",
      "almonds",
      "pecans",
      "sesame",
      "molluscs (squid)",
      "pine nuts",
    ];
    const some = fc.subarray(words, { minLength: 1 });
    fc.assert(
      fc.property(some, some, fc.constantFrom("EU", "UK", "US"), (before, after, law) => {
        const [was, is] = [declared(law, ...before), declared(law, ...after)];
        const [marked = []] = table(down(is), law, down(was));
        const [then = [], now = []] = table(down(was, is), law);
        now.forEach((cell, at) => {
          const old = then[at] ?? "";
          const empty = (text: string) => text === "–" || text === "";
          const mark =
            cell === old ? cell : empty(old) ? `NEW: ${cell}` : empty(cell) ? `GONE: ${old}` : `CHANGED: ${cell}`;
          expect(marked[at]).toBe(mark);
        });
        expect(table(down(is), law, down(is))).toEqual([now]);
      }),
    );
  });
});
