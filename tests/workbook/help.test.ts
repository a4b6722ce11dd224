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
      args: { name: string; description: string; optional?: boolean }[];
    };
    expect(listed.description).toContain(asciiHelp(summary));
    expect(listed.args.map((one) => one.name)).toEqual(Object.keys(args));
    Object.values(args).forEach(({ says }, place) => {
      expect(listed.args[place]?.description).toContain(asciiHelp(says));
      expect([name, place, listed.args[place]?.optional ?? false]).toEqual([
        name,
        place,
        says.startsWith("(optional)"),
      ]);
    });
  }
});

test("too few and too many arguments are told with what to do", async () => {
  const book = await workbook();
  const message = (formula: string) => {
    book.type("Sheet1", "A1", formula);
    return book.cell("Sheet1", "A1").message;
  };
  expect(message("=BAKE_TRUEPCT()")).toBe("BAKE_TRUEPCT: weights is missing; give a range.");
  expect(message("=BAKE_WATERTEMP(24;20;22;8)")).toBe(
    "BAKE_WATERTEMP takes at most 3 arguments, and 4 are entered. Where one takes several values, select a range of cells, or enter them as {20; 22}.",
  );
  expect(message("=ABS()")).toBe("ABS needs 1 or more arguments, and 0 are entered.");
  book.type("Sheet1", "B1", "=BAKE_WATERTEMP(24;{20;22};8)");
  expect(book.cell("Sheet1", "B1").value).toBe(3 * 24 - 20 - 22 - 8);
});
