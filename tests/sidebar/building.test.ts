import { describe, expect, test } from "vitest";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages, type Way } from "./page.ts";

const skip = skipWithoutChromium("building from the sidebar in a browser");

describe.skipIf(skip)("building from the sidebar", () => {
  const bench = benchPages();

  test("a long build shows that it goes on, and is not built twice meanwhile", async () => {
    await bench.open();
    await bench.fill();
    await bench.turn("slow");
    // From here on time passes only as it is told, however busy the computer is.
    await bench.page.clock.pauseAt(await bench.page.evaluate(() => Date.now() + 1000));
    await bench.build().click();
    await bench.wait(300);
    expect(await bench.status()).toBe("");
    await bench.wait(300);
    expect(await bench.status()).toBe("Building “Quay pan loaf” …");
    expect(await bench.page.locator("footer .bar").isVisible()).toBe(true);
    expect(await bench.build().getAttribute("aria-disabled")).toBe("true");
    await bench.wait(1000);
    // A person can click what only says that it is busy.
    await bench.build().click({ force: true });
    await bench.page.keyboard.press("Enter");
    await bench.wait(20_000);
    expect(await bench.status()).toBe(
      "Built “Quay pan loaf (2)”. The name was taken, so a number was added. No other sheet was changed.",
    );
    expect(await bench.builds()).toHaveLength(1);
    await bench.wait(1000);
    await bench.build().click();
    await bench.wait(50);
    expect(await bench.builds()).toHaveLength(2);
    await bench.wait(600);
    await bench.checked("busy");
  });

  test.each<[Way, number, RegExp]>([
    [
      "fails",
      100,
      /^The add-on could not answer \(Service unavailable\)\. Try once more.*What you typed is still here\.$/,
    ],
    ["refuses", 100, /^Another build is still running\. What you typed is still here\.$/],
    ["other account", 100, /permission.*signed in to one account only/],
    ["silent", 91_000, /^No answer for 90 seconds\. The sheet may still be on its way: look at the tabs/],
  ])("a build that %s is told with a way on", async (way, ms, sentence) => {
    await bench.open();
    await bench.fill();
    await bench.turn(way);
    await bench.build().click();
    await bench.wait(ms);
    expect(await bench.status()).toMatch(sentence);
    await bench.turn("answers");
    await bench.wait(1000);
    await bench.build().click();
    await bench.wait(100);
    expect(await bench.status()).toMatch(/^Built/);
  });

  test("an answer after the time-out is still told", async () => {
    await bench.open();
    await bench.fill();
    await bench.turn("late");
    await bench.build().click();
    await bench.wait(91_000);
    expect(await bench.status()).toMatch(/^No answer for 90 seconds/);
    await bench.wait(10_000);
    expect(await bench.status()).toMatch(/^Built “Quay pan loaf”\..*It took longer/);
  });

  test.each<[Way, RegExp]>([
    ["silent", /^The add-on does not answer\. Open the spreadsheet in a window signed in to one account only/],
    ["other account", /^Gramwright has no permission in this file .*signed in to one account only/],
    ["other version", /^The sidebar is version .*, and Code\.gs is version 9\.9\.9\. Paste both .*, then reload\.$/],
  ])("a first question that meets %s shows a notice", async (way, sentence) => {
    await bench.open(way);
    await bench.wait(21_000);
    expect(await bench.page.getByRole("alert").locator("p").textContent()).toMatch(sentence);
    if (way === "other version") return;
    await bench.checked("notice");
    await bench.turn("answers");
    await bench.page.getByRole("button", { name: "Try again" }).click();
    await expect.poll(() => bench.page.getByRole("alert").textContent()).toBe("");
  });

  test("outside a spreadsheet it says so", async () => {
    await bench.openAlone();
    expect(await bench.page.getByRole("alert").locator("p").textContent()).toMatch(
      /^This page works beside a spreadsheet/,
    );
  });

  test("a press right after the answer builds again: only work under way makes two presses one", async () => {
    await bench.open();
    await bench.fill();
    await bench.build().click();
    await expect.poll(() => bench.status()).toMatch(/^Built /);
    expect(await bench.builds()).toHaveLength(1);
    await bench.build().click();
    await expect.poll(async () => (await bench.builds()).length).toBe(2);
  });

  test("a browser in which the sidebar does not start says so, and the sidebar is not there", async () => {
    await bench.page.addInitScript(() => {
      if (location.search !== "?old") return;
      Object.assign(Array.prototype, { flatMap: undefined });
      Object.assign(String.prototype, { replaceAll: undefined });
      window.addEventListener("error", (event) => event.preventDefault());
    });
    await bench.openAlone("?old");
    const says = "This browser is too old for Gramwright. Use the newest Chrome, Edge, Firefox or Safari.";
    expect(await bench.page.locator("#not-whole").textContent()).toContain(says);
    expect(await bench.page.locator(".panel").count()).toBe(0);
  });

  test("no field is cut off at 300 px, at twice the text size, or without a keyboard", async () => {
    await bench.open();
    await bench.fill();
    for (const heading of await bench.page.locator("summary").all()) await heading.click();
    const narrow = () =>
      bench.page.locator("input:visible, select:visible, button:visible").evaluateAll((all) =>
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
    await bench.checked("large text");
  });

  test("typing keeps the caret where it is", async () => {
    await bench.open();
    await bench.field("Name of the formula").fill("Quay loaf");
    await bench.field("Name of the formula").evaluate((node) => (node as HTMLInputElement).setSelectionRange(5, 5));
    await bench.page.keyboard.type("pan ");
    expect(await bench.field("Name of the formula").inputValue()).toBe("Quay pan loaf");
  });

  test("a tab's way through reaches everything, and nothing in focus stands behind the foot", async () => {
    await bench.open();
    await bench.fill();
    await bench.page.clock.resume();
    await bench.page.evaluate(() => (document.activeElement as HTMLElement).blur());
    const seen = new Set<string>();
    const total = await bench.page.locator("input:visible, select:visible, button:visible, summary").count();
    for (let step = 0; step < total + 5; step++) {
      await bench.page.keyboard.press("Tab");
      const at = await bench.page.evaluate(() => {
        const one = document.activeElement as HTMLElement;
        if (one === document.body) return "";
        const { bottom } = one.getBoundingClientRect();
        const foot = document.querySelector("footer");
        const covered = foot !== null && !foot.contains(one) && bottom > foot.getBoundingClientRect().top + 1;
        const outline = getComputedStyle(one).outlineStyle;
        return `${one.id || one.getAttribute("aria-label") || one.textContent} ${covered ? "COVERED" : ""} ${outline === "none" ? "UNSEEN" : ""}`;
      });
      if (at === "") continue;
      expect(at).not.toMatch(/COVERED|UNSEEN/);
      seen.add(at);
    }
    // Of the four radios the Tab key reaches the chosen one, the arrows the others.
    expect(seen.size).toBe(total - 3);
  });
});
