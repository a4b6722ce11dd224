import { describe, expect, test, vi } from "vitest";
import { lint } from "../src/build/lint.ts";
import { TEMPLATES } from "../templates/index.ts";
import { callsOn, expectSame, pairOf } from "./plain-support.ts";
import { optionsOf } from "./support.ts";

vi.setConfig({ testTimeout: 120_000 });

describe.each(TEMPLATES)("$title", (model) => {
  test("the lint finds nothing in the plain form", () => {
    for (const options of optionsOf(model)) {
      expect(lint(model, { ...options, form: "plain" }, 5), JSON.stringify(options)).toEqual([]);
    }
  });

  test("sample inputs", async () => {
    const pair = await pairOf(model, model.sample);
    expect(callsOn(pair.plain)).toEqual([]);
    expect(expectSame(pair)).toBeGreaterThan(45);
  });
});
