import { beforeAll, describe, expect, test } from "vitest";
import { type Book, openBook } from "../../src/workbook/scripted.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

const skip = skipWithoutChromium("pasting a recipe in a browser");
const SHOTS = process.env.SHOTS;

const RECIPE = `Quay rolls
Makes 24
For the poolish:
• 300 g bread flour
• 300 g water
• pinch of instant yeast
For the dough:
• 700 g bread flour
• 1 1/2 cups water
• 20 g salt
• 2 oz (2.33 tbsp) butter
• a handful of raisins
• all of the poolish
Method
1. Mix everything for 8 minutes.`;

describe.skipIf(skip)("the panel Paste recipe", () => {
  let book: Book;
  const bench = benchPages((json) => String(book.script.serve("answerSidebar", [json])));
  const field = (label: string) => bench.field(label).filter({ visible: true });
  const shot = async (name: string) => {
    if (SHOTS !== undefined) await bench.page.screenshot({ path: `${SHOTS}/paste-${name}.png`, fullPage: true });
  };
  const summary = () => bench.page.locator(".panel:visible section .status").first().textContent();
  const foot = () => bench.page.locator("footer:visible .status").textContent();
  const paste = (text: string) => field("The recipe, as you have it").fill(text);
  const button = (name: string) => bench.page.getByRole("button", { name, exact: true }).filter({ visible: true });
  const line = (at: number) => bench.page.locator(".line").nth(at);
  const words = async (of: ReturnType<typeof line>) => (await of.textContent())?.replace(/\s/g, " ");
  const start = async (text = RECIPE) => {
    await bench.open();
    await button("Paste recipe").click();
    await bench.wait(100);
    await paste(text);
  };
  const enter = async (label: string, text: string) => {
    await field(label).fill(text);
    await bench.page.keyboard.press("Tab");
    await bench.wait(50);
  };

  beforeAll(async () => {
    if (!skip) book = await openBook();
  });

  test("empty, it shows where to paste", async () => {
    await bench.open();
    await button("Paste recipe").click();
    await shot("empty");
    await bench.checked("empty");
    expect(await bench.build().isVisible()).toBe(false);
  });

  test("shows line by line what was understood, as it is typed", async () => {
    await start();
    expect(await summary()).toBe("9 ingredients, 1 step. 1 question is open.");
    expect(await field("Name of the formula").inputValue()).toBe("Quay rolls");
    expect(await field("Pieces").inputValue()).toBe("24");
    expect(await words(line(2))).toContain("Part: poolish");
    expect(await words(line(3))).toContain("bread flour · flour · 300 g");
    // 1.5 cups of 236.588 mL; 2 oz of 28.3495 g
    expect(await words(line(8))).toContain("water · water · 355 g");
    expect(await words(line(10))).toMatch(/butter · fat · 57 g .*apart/);
    expect(await words(line(12))).toContain("poolish · all of it, from above");
    expect(await words(line(11).locator(".fault").first())).toContain("“handful”".replace(/[“”]/g, '"'));
    expect(await words(line(14))).toContain("Step 8 min");
    await shot("filled");
    await bench.checked("filled");
  });

  test("a question is answered where it stands, and the sheet is built with the poolish tied", async () => {
    await start();
    await button("Build the sheet").click();
    expect(await bench.page.locator(".lead:visible").textContent()).toMatch(
      /One thing to enter or correct before the sheet can be built/,
    );
    await bench.checked("in error");
    await enter("Amount, line 12", "90");
    expect(await summary()).toMatch(/No question is open\.$/);
    expect(await words(bench.page.locator(".figures:visible"))).toMatch(/Flour 1 000 g/);
    await bench.wait(1000);
    await button("Build the sheet").dblclick();
    await bench.wait(100);
    await expect.poll(foot).toMatch(/^Built “Quay rolls”/);
    const [built] = await bench.builds();
    expect(built?.model.name).toBe("hearth-loaf");
    expect(built?.number("pre_share")).toBeCloseTo(0.3, 9);
    expect(built?.number("pre_hydration")).toBeCloseTo(1, 9);
    expect(built?.rows.map(({ name }) => name)).toEqual([
      "bread flour",
      "water",
      "instant yeast",
      "salt",
      "butter",
      "raisins",
    ]);
    // 300 of the poolish and 1.5 cups over 1000 g of flour
    expect(book.sheet("Quay rolls").shown("result")).toMatch(/hydration 65.5\s%/);
    expect(built?.text("step", 1)).toBe("Mix");
    await shot("built");
    await bench.checked("built");
    await paste("Rye tin\n1 kg rye flour\n800 g water\n20 g salt\n15 g yeast");
    expect(await foot()).toBe("");
    expect(await button("Make a staff card").count()).toBe(0);
  });

  test("one correction teaches the name, and editing the text loses nothing", async () => {
    await start("Loaf\n500 g flour\n325 g watter\n10 g salt\n20 g watter");
    expect(await summary()).toMatch(/2 questions are open/);
    await line(2).getByRole("button", { name: "water" }).click();
    await bench.wait(50);
    expect(await summary()).toMatch(/No question is open/);
    await button("Correct line 4").click();
    await enter("Amount, line 4", "12 g");
    await paste("Loaf\n500 g flour\n325 g watter\n30 g butter\n10 g salt\n20 g watter");
    expect(await words(line(4))).toContain("salt · salt · 12 g");
    expect(await words(line(5))).toContain("water · water · 20 g");
    await bench.checked("corrected");
  });

  test("another recipe begins afresh", async () => {
    await start();
    await field("Template").selectOption("pan-loaf");
    await field("Pieces").fill("60");
    await paste("Rye tin\nMakes 4\n1 kg rye flour\n800 g water\n20 g salt\n15 g yeast");
    expect(await field("Pieces").inputValue()).toBe("4");
    expect(await field("Name of the formula").inputValue()).toBe("Rye tin");
    await paste("Pizza\n1 kg flour\n620 g water\n25 g salt");
    expect(await field("Template").inputValue()).toBe("flat-round");
  });

  test("several recipes are listed, and each is built when ticked", async () => {
    await start(
      "White one\nMakes 2\n1 kg flour\n620 g water\n20 g salt\n\nRye one\nMakes 3\n1 kg rye flour\n800 g water\n20 g salt",
    );
    expect(await bench.page.getByLabel("Build White one").isChecked()).toBe(true);
    await button("Show Rye one").click();
    expect(await field("Name of the formula").inputValue()).toBe("Rye one");
    await shot("several");
    await bench.checked("several");
    await button("Build the ticked recipes (2)").click();
    await bench.wait(100);
    await expect
      .poll(() => bench.page.locator(".panel:visible .list li").allTextContents())
      .toEqual(["Built “White one”.", "Built “Rye one”."]);
    expect((await bench.builds()).map(({ title }) => title)).toEqual(["White one", "Rye one"]);
  });

  test("other cups, other grams; a line left out can be counted", async () => {
    await start("500 g bread flour\n1 cup water\nmoon dust");
    await field("Cups and spoons").selectOption("AU");
    expect(await words(line(1))).toContain("250 g");
    await line(2)
      .getByRole("button", { name: /Count it/ })
      .click();
    await bench.wait(50);
    expect(await summary()).toMatch(/question/);
  });

  test("a file is read like a paste, its recipes told apart", async () => {
    await bench.open();
    await button("Paste recipe").click();
    await bench.wait(100);
    const csv =
      "Formula,Ingredient,Grams\nTin loaf,Flour,1000\n,Water,620\n,Salt,20\nRye loaf,Rye flour,1000\n,Water,800\n,Salt,20\n";
    await field("Or a file (.csv, .txt)").setInputFiles({
      name: "formulas.csv",
      mimeType: "text/csv",
      buffer: Buffer.from(csv),
    });
    await expect.poll(() => bench.page.getByLabel("Build Rye loaf").count()).toBe(1);
    expect(await field("The recipe, as you have it").inputValue()).toBe(csv);
    expect(await field("Name of the formula").inputValue()).toBe("Tin loaf");
    await bench.checked("a file");
  });

  test("what the ingredient sheet lacks is added to it", async () => {
    await start("Loaf\n500 g bread flour\n325 g water\n10 g salt");
    await button("Build the Ingredients sheet").click();
    await bench.wait(100);
    const stocked = () => {
      const sheet = book.sheet("Ingredients");
      return Array.from({ length: sheet.rows("ingredient") }, (_, row) => sheet.value("ingredient", row)).filter(
        Boolean,
      );
    };
    await expect.poll(() => book.sheetNames()).toContain("Ingredients");
    expect(stocked()).toEqual(["bread flour", "salt"]);
    await bench.wait(200);
    await paste("Loaf\n500 g bread flour\n325 g water\n10 g salt\n20 g honey");
    await button("Add them to Ingredients").click();
    await bench.wait(200);
    await expect.poll(stocked).toEqual(["bread flour", "salt", "honey"]);
    await bench.checked("stocked");
  });

  test("what is kept apart is offered as a finished product, and a tin asks how deep it is", async () => {
    await start(
      "Almond cake\n20 cm round tin\n500 g bread flour\n325 g water\n10 g salt\n5 g yeast\nFilling:\n100 g honey",
    );
    const named = (label: RegExp) => bench.page.getByLabel(label).filter({ visible: true });
    await named(/^Depth of the tin/).waitFor();
    // The page's clock stands still unless it is told.
    const soon = async <T>(see: () => T | Promise<T>): Promise<T> => {
      await bench.wait(100);
      return see();
    };
    const isStocked = () => bench.page.getByText("Not on your Ingredients sheet yet").isVisible();
    await expect.poll(() => soon(isStocked)).toBe(true);
    const product = button("Build the finished product");
    await product.click();
    await expect
      .poll(() => bench.page.locator(".panel:visible").textContent())
      .toContain("Enter how many pieces are made.");
    await field("Pieces").fill("10");
    await named(/^Scaling weight/).fill("80");
    await shot("product");
    await bench.checked("product");
    await product.click();
    await expect.poll(() => soon(() => book.sheetNames())).toContain("Almond cake, finished");
    // 100 g of honey for 840 g of dough
    expect(book.sheet("Almond cake, finished").value("part_each", 2)).toBeCloseTo((80 * 100) / 840, 6);
  });

  test("pasted markup and formulas stay text", async () => {
    await start('<img src=x onerror="alert(1)"> 5 g\n500 g =IMPORTXML("x")\n500 g flour');
    expect(await words(line(0).locator(".own-text"))).toBe('<img src=x onerror="alert(1)"> 5 g');
    expect(await bench.page.locator(".lines img").count()).toBe(0);
  });

  test("nothing is cut off, at twice the text size too", async () => {
    await start();
    await button("Correct line 4").click();
    const narrow = () =>
      bench.page.locator("input:visible, select:visible, button:visible, textarea:visible").evaluateAll((all) =>
        all.flatMap((one) => {
          const { left, right, width, height } = one.getBoundingClientRect();
          const small = one.matches("[type=radio], [type=checkbox]") ? 16 : 24;
          return left < 0 || right > innerWidth || width < small || height < small ? [one.outerHTML] : [];
        }),
      );
    expect(await narrow()).toEqual([]);
    await bench.page.evaluate(() => {
      document.documentElement.style.fontSize = "200%";
    });
    expect(await narrow()).toEqual([]);
    await shot("large");
    await bench.checked("large text");
  });
});
