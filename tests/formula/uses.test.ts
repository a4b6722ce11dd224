import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { usesOf } from "../../shared/formula/uses.ts";

const sheet = (title: string, ...ingredients: string[]) => ({ title, ingredients });

describe("which formulas use which", () => {
  test("by titles, capitals and odd spaces aside; each once", () => {
    const { used, circles, twice } = usesOf([
      sheet("Bun", "Flour", " quay LEVAIN", "Almond\u00a0filling", "Quay levain"),
      sheet("Quay levain", "Flour", "Water", "Quay levain"),
      sheet("Almond filling", "Almond paste"),
      sheet("Almond paste", "Almonds"),
    ]);
    expect(used).toEqual([[1, 2], [], [3], []]);
    expect([circles, twice]).toEqual([[], []]);
  });

  test("a circle is named and not followed, and what leads into it is", () => {
    const { used, circles } = usesOf([
      sheet("A", "B", "D"),
      sheet("B", "C"),
      sheet("C", "A", "D"),
      sheet("D", "Flour"),
      sheet("E", "A"),
    ]);
    expect(used).toEqual([[3], [], [3], [], [0]]);
    expect(circles).toEqual([["A", "B", "C", "A"]]);
  });

  test("a title that two sheets have is followed to neither", () => {
    const { used, twice } = usesOf([sheet("Bun", "Icing"), sheet("Icing", "Sugar"), sheet("icing ", "Sugar")]);
    expect(used[0]).toEqual([]);
    expect(twice).toEqual(["Icing"]);
  });

  test("whatever uses what, nothing that is followed comes back, and only steps within a circle are left out", () => {
    const names = ["a", "b", "c", "d", "e", "f"];
    const some = fc.array(fc.subarray(names), { minLength: 6, maxLength: 6 });
    fc.assert(
      fc.property(some, (lists) => {
        const { used } = usesOf(lists.map((ingredients, at) => sheet(names[at] ?? "", ...ingredients)));
        // By squaring a table of who reaches whom: no code in common with the search.
        const reach = (next: readonly (readonly number[])[]) => {
          let table = names.map((_, from) => names.map((__, to) => next[from]?.includes(to) ?? false));
          for (let step = 0; step < names.length; step++)
            table = table.map((row, from) =>
              row.map((is, to) => is || names.some((_, by) => table[from]?.[by] && table[by]?.[to])),
            );
          return table;
        };
        const followed = reach(used);
        names.forEach((_, at) => {
          expect(followed[at]?.[at]).toBe(false);
        });
        const wanted = lists.map((list) => list.map((name) => names.indexOf(name)));
        const all = reach(wanted.map((places, at) => places.filter((one) => one !== at)));
        wanted.forEach((places, from) => {
          for (const to of places)
            expect(used[from]?.includes(to)).toBe(to !== from && !(all[from]?.[to] && all[to]?.[from]));
        });
      }),
    );
  });
});
