// What can be read in two ways is asked for: an amount without its unit, a tin in millimetres, two ways to say one thing.
import { describe, expect, test } from "vitest";
import { assess } from "../../sidebar/new-formula/order.ts";
import { OUNCES, sampleDraft } from "./drafts.ts";
import { sampleOf, templateOf } from "./samples.ts";

const pan = templateOf("pan-loaf");
const says = (draft: ReturnType<typeof sampleDraft>, model = pan) =>
  assess(draft, model)
    .faults.map(({ says }) => says)
    .join(" ");

describe("an amount without a unit", () => {
  test.each([
    ["dough", "dough_wanted", "20", "Is it 20 kg or 20 g? Enter the unit as well."],
    ["dough", "dough_wanted", "20 kg", ""],
    ["dough", "dough_wanted", "150 g", ""],
    ["dough", "dough_wanted", "4500", ""],
    ["flour", "flour_wanted", "12,5", "Is it 12,5 kg or 12,5 g? Enter the unit as well."],
  ] as const)("%s, %s %s", (by, field, text, expected) => {
    const draft = sampleDraft();
    draft.choices.by = by;
    draft.fields[field] = text;
    expect(says(draft)).toBe(expected);
  });

  test("in ounces it may be pounds", () => {
    const draft = sampleOf(templateOf("cookie"));
    draft.units = OUNCES;
    draft.choices.by = "dough";
    draft.fields.dough_wanted = "5";
    expect(says(draft, templateOf("cookie"))).toContain("Is it 5 lb or 5 oz? Enter the unit as well.");
  });

  test("a piece in kilograms is too light to be one", () => {
    const draft = sampleDraft();
    draft.sizes[0] = { name: "large", pieces: "24", weight: "0.9", loss: "11" };
    expect(says(draft)).toMatch(/^The weight of size 1 is "0.9". Enter a number from 5 to 20\s?000/);
    draft.sizes[0] = { name: "large", pieces: "24", weight: "0.9 kg", loss: "11" };
    expect(says(draft)).toBe("");
  });
});

describe("a tin in millimetres", () => {
  test.each([
    [
      ["230", "130", "75", "", ""],
      'The sizes have a length of 230 cm, more than any tin; enter it with its unit, such as "230 mm".',
    ],
    [
      ["100", "50", "30", "", ""],
      "A tin of 100 × 50 × 30 cm holds 150 litres. Is it in mm? Enter the unit too, such as 100 mm.",
    ],
    [["230 mm", "130 mm", "75 mm", "", ""], ""],
    // A plank tin of 35 litres.
    [["76", "46", "10", "", ""], ""],
  ])("%j", (sizes, expected) => {
    const draft = sampleDraft();
    sizes.forEach((size, place) => {
      draft.fields[`tin_size_${place + 1}` as "tin_size_1"] = size;
    });
    expect(says(draft).replace(/\u202f|,(?=\d{3})/g, " ")).toBe(expected);
  });

  test("in inches it may be centimetres", () => {
    const draft = sampleDraft();
    draft.units = { ...draft.units, length: "in" };
    const sizes = ["23", "13", "7", "", ""];
    sizes.forEach((size, place) => {
      draft.fields[`tin_size_${place + 1}` as "tin_size_1"] = size;
    });
    // 23 × 13 × 7 in³ of 16.387064 cm³ are 34.3 litres, and no tin is refused that could be one.
    expect(says(draft)).toBe("");
    draft.fields.tin_size_1 = "33";
    expect(says(draft)).toMatch(/^A tin of 33 × 13 × 7 in holds 49 litres\. Is it in cm or mm\?/);
  });
});

describe("two ways to say one thing", () => {
  const flat = templateOf("flat-round");

  test("a round beside a weight per area that is another", () => {
    const draft = sampleOf(flat);
    // 250 g on a round of 30 cm: 250 ÷ (π × 15²) = 0.354 g/cm²
    Object.assign(draft.inputs, { per_area: "0.40", known_weight: "250", known_diameter: "30" });
    expect(says(draft, flat)).toBe(
      "That round has 0.354 g/cm², and the weight per area says 0.4; clear one of the two.",
    );
    draft.inputs.per_area = "";
    expect(says(draft, flat)).toBe("");
    // 30 pieces of 25 cm and 20 of 32 cm, with 2 % lost in handling.
    const per = 250 / (Math.PI * 15 ** 2);
    const dough = ((30 * Math.PI * 12.5 ** 2 + 20 * Math.PI * 16 ** 2) * per) / 0.98;
    expect(assess(draft, flat).batch?.dough).toBeCloseTo(dough, 6);
    draft.inputs.per_area = "0.354";
    expect(says(draft, flat)).toBe("");
  });

  test("a seed by its share and by its weight", () => {
    const levain = templateOf("levain-loaf");
    const draft = sampleOf(levain);
    draft.inputs.seed_weight = "400";
    expect(says(draft, levain)).toBe("The seed has a share and a weight; clear one of the two.");
    draft.inputs.seed_share = "";
    expect(says(draft, levain)).toBe("");
  });
});

describe("a preferment's hydration", () => {
  const levain = templateOf("hearth-loaf");
  const withType = (kind: string) => {
    const draft = sampleOf(levain);
    draft.rows.push({ ingredient: "Starter", kind, percent: "10", weighed: "" });
    const { faults, order } = assess(draft, levain);
    const kinds = order.values.kind as readonly string[] | undefined;
    return faults.map((one) => one.says).join(" ") || kinds?.[kinds.length - 1];
  };

  test.each([
    ["levain 100%", "levain 100%"],
    ["Levain at 80 % hydration", "levain 80%"],
    ["100% starters", "starters 100%"],
    ["biga [55%]", "biga 55%"],
    ["0.5", "levain 100%"],
    ["levain 62,5 %", "levain 62.5%"],
    ["66.7% levain", "levain 66.7%"],
  ])("%s reaches the sheet as it reads it: %s", (typed, kind) => {
    expect(withType(typed)).toBe(kind);
  });

  test.each(["levain 62.54%", "levain 62,54 %"])("%s has more decimals than sheets read", (typed) => {
    expect(withType(typed)).toBe(
      `The type of row 6 is "${typed}"; enter its hydration with one decimal, such as "levain 62.5%".`,
    );
  });
});
