import { beforeAll, describe, expect, test } from "vitest";
import { findFunctions } from "../../sidebar/functions/help.ts";
import { notHere } from "../../sidebar/functions/trade-words.ts";
import { functionHelp } from "../../src/build/help.ts";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";

const HELP = functionHelp();

describe("a function is found by what somebody wants to know", () => {
  // The words of somebody who does not know the names; the function that answers, worked out from the reference by hand.
  test.each([
    ["how much yeast overnight", "BAKE_YEASTTIME"],
    ["dough for my tin", "BAKE_TINDOUGH"],
    ["tin", "BAKE_TINCAPACITY"],
    ["ice", "BAKE_ICE"],
    ["how much does my pan hold", "BAKE_TINCAPACITY"],
    ["what should I charge", "BAKE_SELLPRICE"],
    ["cups to grams", "BAKE_GRAMS"],
    ["fresh yeast instead of dry", "BAKE_YEASTSWAP"],
    ["feed my starter", "BAKE_STARTERFEED"],
    ["water temperature", "BAKE_WATERTEMP"],
    ["allergens", "BAKE_ALLERGENS"],
    ["how many mixes", "BAKE_MIXES"],
    ["hydration", "BAKE_HYDRATION"],
    ["friction", "BAKE_FRICTION"],
    ["baker's percentage", "BAKE_FLOURPCT"],
    ["how warm will the dough be", "BAKE_DOUGHTEMP"],
    ["how many pieces", "BAKE_PIECES"],
    ["which tin fits", "BAKE_TINMATCH"],
    ["yeast for a schedule", "BAKE_YEASTPLAN"],
    ["several feeds", "BAKE_FEEDPLAN"],
    ["roll-in butter", "BAKE_ROLLIN"],
  ])("%s", (question, name) => {
    const names = findFunctions(HELP, question).map((one) => one.name);
    expect(names.slice(0, 3), names.join(" ")).toContain(name);
  });
  // The trade's words and the function whose help does not use them, in either case and in a sentence.
  test.each([
    ["DDT", "BAKE_WATERTEMP"],
    ["DDT", "BAKE_DOUGHTEMP"],
    ["yield", "BAKE_PIECES"],
    ["yield", "BAKE_UNITCOST"],
    ["QUID", "BAKE_LABELSHARE"],
    ["waste", "BAKE_UNITCOST"],
    ["waste", "BAKE_DOUGHFOR"],
    ["shrinkage", "BAKE_DOUGHFOR"],
    ["retard", "BAKE_YEASTPLAN"],
    ["nutrition", "BAKE_CONTENT"],
    ["pullman", "BAKE_TINDOUGH"],
    ["hexagon", "BAKE_TINCAPACITY"],
    ["VAT", "BAKE_SELLPRICE"],
    ["sesame", "BAKE_ALLERGENS"],
    ["food cost", "BAKE_SELLPRICE"],
    ["food cost", "BAKE_COSTS"],
    ["purchasing", "BAKE_RAWNEEDS"],
    ["pan factor", "BAKE_TINGUIDE"],
    ["dried egg", "BAKE_SWAP"],
    ["how many bags", "BAKE_RAWNEEDS"],
  ])("the trade's word %s finds %s", (word, name) => {
    for (const question of [word, word.toLowerCase(), `  ${word.toUpperCase()} `, `what about the ${word}?`]) {
      const names = findFunctions(HELP, question).map((one) => one.name);
      expect(names.slice(0, 3), `${question}: ${names.join(" ")}`).toContain(name);
    }
  });
  test("altitude is answered: there is none here", () => {
    for (const question of ["altitude", "High altitude cake"]) {
      expect(findFunctions(HELP, question)).toEqual([]);
      expect(notHere(question)).toMatch(/^No function here works out altitude\. Use /);
    }
    expect(notHere("tin")).toBeUndefined();
  });
  test("nothing asked shows all, nonsense nothing", () => {
    expect(findFunctions(HELP, " ")).toHaveLength(HELP.length);
    expect(findFunctions(HELP, "how much")).toHaveLength(HELP.length);
    expect(findFunctions(HELP, "zzzqqq")).toEqual([]);
  });
  test("every function is found by its own name, and by the words of its summary", () => {
    for (const help of HELP) {
      expect(findFunctions(HELP, help.name)[0]?.name).toBe(help.name);
      expect(
        findFunctions(HELP, help.summary)
          .slice(0, 3)
          .map(({ name }) => name),
      ).toContain(help.name);
    }
  });
});

const skip = skipWithoutChromium("finding a function in a browser");
const SHOTS = process.env.SHOTS;

describe.skipIf(skip)("the Functions panel", () => {
  let host: WorkbookHost;
  const bench = benchPages((json) => String(host.script.serve("answerSidebar", [json])));
  const shot = async (name: string) => {
    if (SHOTS !== undefined) await bench.page.screenshot({ path: `${SHOTS}/functions-${name}.png`, fullPage: true });
  };
  const status = () => bench.page.locator("details[open] .status").textContent();
  const insert = () => bench.page.getByRole("button", { name: "Insert at the cursor" });
  const search = (text: string) => bench.field("What do you want to work out?").fill(text);
  const names = () => bench.page.locator(".functions summary b").allTextContents();
  const start = async (way: Way = "answers") => {
    await bench.open(way);
    await bench.page.getByRole("button", { name: "Functions", exact: true }).click();
    await expect.poll(() => bench.field("What do you want to work out?").count()).toBe(1);
  };
  const openDough = async () => {
    await search("BAKE_DOUGHFOR");
    await bench.page.locator("summary", { hasText: "BAKE_DOUGHFOR" }).click();
  };

  beforeAll(async () => {
    if (!skip) host = await workbook();
  });

  test("lists all, and finds by words", async () => {
    await start();
    expect(await names()).toHaveLength(HELP.length);
    await shot("all");
    await bench.checked("all");
    await search("how much yeast overnight");
    expect((await names())[0]).toBe("BAKE_YEASTTIME");
    await shot("found");
    await bench.checked("found");
    await search("altitude");
    expect(await bench.page.getByText("No function here works out altitude").count()).toBe(1);
    await search("zzzqqq");
    expect(await bench.page.getByText("Nothing found.").textContent()).toMatch(/Try one word of it/);
    await bench.checked("nothing found");
  });

  test("explains one, by the keyboard alone", async () => {
    await start();
    await bench.field("What do you want to work out?").focus();
    await bench.page.keyboard.type("dough for pieces");
    await bench.page.keyboard.press("Tab");
    await bench.page.keyboard.press("Enter");
    const help = HELP.find(({ name }) => name === "BAKE_DOUGHFOR");
    const open = bench.page.locator("details[open]");
    await expect.poll(() => open.locator("summary b").textContent()).toBe("BAKE_DOUGHFOR");
    // A topic's fields are drawn when it is opened, a moment after its heading says so.
    await open.locator(".example").waitFor();
    for (const { name, says, needed } of help?.args ?? []) {
      expect(await open.getByLabel(`${name}${needed ? "" : " (optional)"}`).count(), name).toBe(1);
      expect(await open.locator(".hint", { hasText: says }).count(), says).toBeGreaterThan(0);
    }
    expect(await open.locator(".example").textContent()).toBe(`Example: ${help?.example} gives ${help?.gives}`);
    await bench.page.getByRole("button", { name: "Fill in the example" }).click();
    await shot("open");
    await bench.checked("open");
  });

  test("inserts it where the cursor is, once, and says so", async () => {
    await start();
    await openDough();
    await insert().click();
    expect(await bench.focused()).toBe("pieces");
    expect((await bench.faults())[0]).toMatch(/^Still blank: pieces\. How many/);
    await shot("error");
    await bench.checked("in error");
    await bench.wait(1000);
    await bench.field("pieces").fill("24");
    await bench.field("weight").fill("0,7");
    await bench.field("bake_loss (optional)").fill("11 %");
    await insert().dblclick();
    await bench.wait(50);
    await expect.poll(status).toBe("Written into A1 of “Sheet1”.");
    expect((await bench.sent()).filter(({ ask }) => ask === "insert")).toHaveLength(1);
    // 24 × 0.7 ÷ 0.89
    expect(host.cell("Sheet1", "A1").formula).toBe("=BAKE_DOUGHFOR(24;7/10;11/100)");
    expect(host.cell("Sheet1", "A1").value).toBeCloseTo(18.8764, 4);
    await shot("inserted");
    await bench.checked("inserted");
    await bench.wait(1000);
    await insert().click();
    await bench.wait(50);
    await expect.poll(status).toBe("A1 is not empty, and nothing is written over. Put the cursor into an empty cell.");
    await bench.checked("refused");
  });

  test("while it writes it says so", async () => {
    await start();
    await openDough();
    await bench.page.getByRole("button", { name: "Fill in the example" }).click();
    await bench.turn("slow");
    await insert().click();
    await bench.wait(600);
    expect(await status()).toBe("Writing the formula …");
    await shot("busy");
    await bench.checked("busy");
  });

  test.each<[Way, number, RegExp]>([
    ["fails", 100, /^The add-on could not answer \(Service unavailable\)\./],
    ["other account", 100, /signed in to one account only/],
    ["silent", 31_000, /^The add-on does not answer\..*Check first whether the formula is there already\.$/],
  ])("an insertion that %s is told with a way on", async (way, ms, sentence) => {
    await start();
    await openDough();
    await bench.page.getByRole("button", { name: "Fill in the example" }).click();
    await bench.turn(way);
    await insert().click();
    await bench.wait(ms);
    expect(await status()).toMatch(sentence);
    await shot(way.replace(" ", "-"));
    await bench.checked(way);
  });
});
