// The local workbook completes and explains every function, from nothing but the stubs' own help.
import { expect, test } from "vitest";
import { asciiHelp } from "../../src/build/print.ts";
import { FUNCTIONS } from "../../src/functions/index.ts";
import { workbook } from "../templates/sheet-support.ts";

test("every function is listed with its sentence and each argument's, those that may be left out as optional", async () => {
  const book = await workbook();
  const registry = book.engine.library.registries.functionRegistry;
  for (const { name, summary, args } of FUNCTIONS) {
    expect(registry.contains(name), name).toBe(true);
    const listed = registry.get(name) as unknown as {
      description: string;
      args: { name: string; description: string }[];
    };
    expect(listed.description).toContain(asciiHelp(summary));
    expect(listed.args.map((one) => one.name)).toEqual(Object.keys(args));
    Object.values(args).forEach(({ says }, place) => {
      expect(listed.args[place]?.description).toContain(asciiHelp(says));
    });
  }
});
