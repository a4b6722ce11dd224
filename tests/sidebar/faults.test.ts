import { describe, expect, test } from "vitest";
import { failureSentence } from "../../sidebar/kit/ask.ts";
import type { Draft } from "../../sidebar/new-formula/draft.ts";
import { assess } from "../../sidebar/new-formula/order.ts";
import { startFrom } from "../../sidebar/new-formula/start.ts";
import { empty, model, OUNCES } from "./drafts.ts";

const says = (draft: Draft) => assess(draft, model).faults.map(({ at, says }) => `${at}: ${says}`);

describe("what is in the way is said", () => {
  test("of an empty panel", () => {
    const { faults } = assess(startFrom(model), model);
    expect(faults.map(({ at }) => at)).toEqual([
      "size_pieces/0",
      "size_weight/0",
      "tin_size_1",
      "tin_size_2",
      "tin_size_3",
    ]);
    expect(faults.every(({ missing }) => missing)).toBe(true);
  });

  test.each<[string, (draft: Draft) => void, string]>([
    ["no name", (d) => (d.title = " "), "title: Enter a name for the formula. The new sheet takes it."],
    [
      "letters",
      (d) => (d.sizes[0] = { name: "", pieces: "24", weight: "abc", loss: "" }),
      'size_weight/0: The weight of size 1 is "abc", which is not a number; enter a weight such as 700.',
    ],
    [
      "unclear thousands",
      (d) => (d.fields.mixer_limit = "1.250"),
      'mixer_limit: Mixer capacity is "1.250", which could be 1250 or 1.25; enter the one you mean.',
    ],
    [
      "a share below 1",
      (d) => (d.fields.handling_loss = "0.02"),
      "handling_loss: Handling loss is 0.02, which could be 0.02 % or 2 %; enter it with its % sign.",
    ],
    [
      "too much lost",
      (d) => (d.fields.handling_loss = "40"),
      "handling_loss: Handling loss is over 30 %. Did you mean bake loss?",
    ],
    [
      "flours that are no 100",
      (d) => (d.rows[0] = { ingredient: "Flour", kind: "flour", percent: "90", weighed: "" }),
      "percent/0: The percentages have flour rows that add up to 90; all flours together make 100 (or 100%).",
    ],
    [
      "a preferment without hydration",
      (d) => (d.rows[5] = { ingredient: "Levain", kind: "levain", percent: "20", weighed: "" }),
      'kind/5: The type of row 6 is "levain" without its hydration; add its water as a share of its flour, such as "levain 100%".',
    ],
    [
      "a kind nobody knows",
      (d) => (d.rows[5] = { ingredient: "Sugar", kind: "suger", percent: "2", weighed: "" }),
      'kind/5: The type of row 6 is "suger"; perhaps "sugar"?',
    ],
    [
      "salt that is a share in a plain column",
      (d) => (d.rows[2] = { ingredient: "Salt", kind: "salt", percent: "0.02", weighed: "" }),
      "percent/2: The percentage of row 3 is 0.02, which beside flour of 100 is 0.02 %; enter 2, or 0.02% if that is meant. Or type every row as a share, the flour as 100% (1).",
    ],
    [
      "tins without a tin",
      (d) => {
        d.choices.by = "tins";
        d.fields.tins = "4";
      },
      "tin_shape: Choose a tin shape to scale to tins.",
    ],
    [
      "a mixer upside down",
      (d) => {
        d.fields.mixer_limit = "4 kg";
        d.fields.mixer_least = "20 kg";
      },
      "mixer_least: The smallest mix is larger than the mixer capacity. Swap the two.",
    ],
    [
      "a spiral mixer without minutes",
      (d) => (d.choices.mixing = "spiral"),
      "minutes: Enter the minutes of mixing: friction in a spiral mixer grows with them. Or choose the mixing later.",
    ],
    [
      "sizes in the wrong order",
      (d) => {
        d.choices.tin_shape = "round";
        d.fields.tin_size_1 = "3";
        d.fields.tin_size_2 = "8";
        d.units = OUNCES;
      },
      "tin_size_1: The sizes have a depth of 8 above the diameter of 3; the order is diameter, depth, base diameter.",
    ],
    [
      "one base size of two",
      (d) => {
        d.choices.tin_shape = "box";
        Object.assign(d.fields, { tin_size_1: "21", tin_size_2: "11", tin_size_3: "9", tin_size_4: "19" });
      },
      "tin_size_5: Enter the base width too, or clear the base length.",
    ],
  ])("%s", (_, change, sentence) => {
    const draft = empty();
    change(draft);
    const found = says(draft);
    expect(found).toHaveLength(1);
    expect(found[0]).toContain(sentence);
  });

  test("a blank row between ingredients is passed over, and rows keep their number", () => {
    const draft = empty();
    draft.rows.splice(1, 0, { ingredient: "", kind: "", percent: "", weighed: "" });
    draft.rows[2] = { ingredient: "Water", kind: "", percent: "67", weighed: "" };
    expect(says(draft)).toEqual(["kind/2: Choose the type of row 3: flour, water, salt, yeast …"]);
  });

  test("mixes below the mixer's least are told and do not stop the build", () => {
    const draft = empty();
    draft.fields.mixer_limit = "10 kg";
    draft.fields.mixer_least = "9 kg";
    const { mixes, faults } = assess(draft, model);
    expect(faults).toEqual([]);
    // 16 800 g in two mixes of 8 400 g
    expect(mixes).toEqual({
      note: "The dough is 16800: 2 equal mixes of 8400 would be below the least of 9000; 10000 or 18000 would fit.",
    });
  });
});

test.each([
  ["You do not have permission to call SpreadsheetApp.getActiveSpreadsheet", /signed in to one account only/],
  ["Authorization is required to perform that action", /signed in to one account only/],
  ["Exceeded maximum execution time", /Try once more/],
])("a failure says what to do: %s", (message, way) => expect(failureSentence({ how: "failed", message })).toMatch(way));
