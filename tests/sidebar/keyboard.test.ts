// Every panel with the Tab key alone: each control is reached, is seen when it is, has a name, and stands behind nothing.
import { beforeEach, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { buildSheet, HANDOUT, workbook } from "../templates/sheet-support.ts";
import { skipWithoutChromium } from "./browser.ts";
import { benchPages } from "./page.ts";

type Stop = { readonly key: string; readonly name: string; readonly says: string };

/** What stops a walk has seen: each is looked at when the next Tab is pressed, and stands still by then. */
declare global {
  interface Window {
    stops: Stop[];
    lookAtStop: () => void;
  }
}

/** In the page: marks every control that the Tab key should reach. Of radio buttons it reaches the chosen one of each group. */
function mark(): string[] {
  const all = [
    ...document.querySelectorAll<HTMLElement>("input, select, textarea, button, summary, a[href], [tabindex='0']"),
  ].filter((one) => one.checkVisibility({ visibilityProperty: true }));
  const reached = all.filter((one) => !(one instanceof HTMLInputElement && one.type === "radio" && !one.checked));
  reached.forEach((one, at) => {
    one.dataset.stop = String(at);
  });
  return reached.map((one) => one.outerHTML.slice(0, 160));
}

/** In the page: looks at what has the focus whenever the Tab key is pressed. */
function lookAtStops(): void {
  window.stops = [];
  window.lookAtStop = () => window.stops.push(stopped());
  window.addEventListener("keydown", window.lookAtStop, { capture: true });

  function stopped(): Stop {
    const one = document.activeElement as HTMLElement;
    const field = one as HTMLInputElement;
    const words = [
      one.getAttribute("aria-label"),
      ...[...(field.labels ?? [])].map((label) => label.textContent),
      one.matches("button, summary") ? one.textContent : "",
    ];
    const { top, bottom, left, right } = one.getBoundingClientRect();
    const foot = [...document.querySelectorAll("footer")].find((node) => node.checkVisibility());
    const floats = foot !== undefined && getComputedStyle(foot).position === "sticky" && !foot.contains(one);
    const { outlineStyle, outlineWidth } = getComputedStyle(one);
    const faults = [
      outlineStyle === "none" || outlineWidth === "0px" ? "focus not seen" : "",
      floats && bottom > foot.getBoundingClientRect().top + 1 ? "behind the foot" : "",
      bottom <= 0 || top >= innerHeight || left < 0 || right > innerWidth + 1 ? "out of sight" : "",
    ];
    return {
      key: one === document.body ? "" : (one.dataset.stop ?? `unmarked: ${one.outerHTML.slice(0, 160)}`),
      name: words.map((text) => (text ?? "").trim()).find((text) => text !== "") ?? "",
      says: `${one.outerHTML.slice(0, 160)}: ${faults.filter(Boolean).join(", ")}`,
    };
  }
}

/** How the key of a control begins that was not there yet when the walk began. */
const UNMARKED = "unmarked: ";

/** The page is asked after so many presses. */
const STRIDE = 8;

describe.skipIf(skipWithoutChromium("the keyboard's way through the sidebar"))("with the keyboard alone", () => {
  let book: WorkbookHost;
  const bench = benchPages((json) => JSON.stringify(book.ask(JSON.parse(json))));
  beforeEach(async () => {
    book = await workbook();
    await bench.open();
  });

  /** Goes through the whole page by Tab, and back to where it began. */
  const walk = async (state: string) => {
    await bench.page.clock.resume();
    await bench.page.evaluate(() => (document.activeElement as HTMLElement | null)?.blur());
    const wanted = await bench.page.evaluate(mark);
    await bench.page.evaluate(lookAtStops);
    const seen = new Map<string, Stop>();
    // It begins where the focus was last, so that the page's end is passed once.
    for (let step = 0; step < wanted.length * 2 + 10 && seen.size < wanted.length; step += STRIDE) {
      for (let press = 0; press < STRIDE; press++) await bench.page.keyboard.press("Tab");
      const stops = await bench.page.evaluate(() => {
        window.lookAtStop();
        return window.stops.splice(0);
      });
      for (const stop of stops) if (stop.key !== "") seen.set(stop.key, stop);
      expect(
        stops.filter(({ key }) => key.startsWith(UNMARKED)).map(({ key }) => key),
        `${state}: came up on the way`,
      ).toEqual([]);
    }
    await bench.page.evaluate(() => window.removeEventListener("keydown", window.lookAtStop, { capture: true }));
    const missed = wanted.filter((_, at) => !seen.has(String(at)));
    expect(missed, `${state}: not reached`).toEqual([]);
    const stops = [...seen.values()];
    expect(
      stops.filter(({ name }) => name === "").map(({ says }) => says),
      `${state}: without a name`,
    ).toEqual([]);
    expect(
      stops.filter(({ says }) => !says.endsWith(": ")).map(({ says }) => says),
      `${state}: faults`,
    ).toEqual([]);

    await bench.checked(state);
    await bench.page.emulateMedia({ forcedColors: "active" });
    await bench.checked(`${state}, in forced colours`);
    await bench.page.emulateMedia({ forcedColors: "none" });
    // The sidebar's 300 px at a zoom of 200 % are 150 of the page's.
    await bench.page.setViewportSize({ width: 150, height: 450 });
    await bench.checked(`${state}, at 200 %`);
    await bench.page.setViewportSize({ width: 300, height: 900 });
  };
  /** Chooses a panel by keyboard, too. */
  const panel = async (name: string) => {
    await bench.page.getByRole("button", { name, exact: true }).focus();
    await bench.page.keyboard.press("Enter");
    await bench.wait(200);
  };
  const says = (sentence: RegExp) =>
    expect
      .poll(async () => {
        await bench.wait(50);
        return (await bench.page.locator(".panel:visible .status").allTextContents()).join(" ").trim();
      })
      .toMatch(sentence);
  const press = async (name: string) => {
    await bench.page.getByRole("button", { name, exact: true }).filter({ visible: true }).focus();
    await bench.page.keyboard.press("Enter");
    await bench.wait(900);
  };

  // All eight in a long run, otherwise those that ask for something of their own.
  test.each(IS_LONG ? TEMPLATES.map(({ name }) => name) : ["pan-loaf", "laminated"])(
    "Make, %s, unfolded, empty and in error",
    async (template) => {
      await bench.field("Template").selectOption(template);
      const folded = bench.page.locator("details:not([open]) > summary");
      for (let left = await folded.count(); left > 0; left--) {
        await folded.first().focus();
        await bench.page.keyboard.press("Enter");
      }
      const weights = bench.page.getByLabel("Enter weights as well");
      if ((await weights.count()) > 0) await weights.check();
      await walk(template);
      await press("Build the sheet");
      expect(await bench.page.locator(".lead:visible").textContent()).toMatch(/before the sheet can be built/);
      await bench.checked(`${template} in error`);
    },
  );

  test("Paste recipe, empty, understood and built", async () => {
    await panel("Paste recipe");
    await walk("nothing pasted");
    await bench.wait(900);
    await bench
      .field("The recipe, as you have it")
      .fill("Quay rolls\nMakes 24\n500 g flour\n300 g water\na handful of seeds");
    await says(/question is open/);
    await walk("read");
    await bench.field("Amount, line 5").fill("30");
    await bench.page.keyboard.press("Tab");
    await says(/No question is open/);
    await press("Build the sheet");
    await says(/Built/);
    await walk("built");
  });

  test("Check and Hand out, without a formula sheet and with one", async () => {
    await panel("Check");
    await says(/./);
    await walk("nothing to check");
    await panel("Staff card");
    await says(/no formula sheet/);
    await walk("nothing to hand out");
    await buildSheet(HANDOUT, { book });
    await panel("Check");
    await says(/^“Hand-out”/);
    await walk("checked");
    await panel("Adjust");
    await says(/^“Hand-out”, version 1/);
    await bench.field("What do you want?").fill("hydration");
    await press("Hydration to …");
    await bench.field("Hydration wanted (%)").fill("70");
    await walk("adjusted");
    await panel("Staff card");
    await bench.field("Made for").waitFor();
    await walk("a card");
    await bench.field("Made for").selectOption("ingredient");
    await bench.wait(900);
    await press("Make the card");
    await walk("a card in error");
  });

  test("Day, with orders and the larder's picker", async () => {
    await buildSheet(HANDOUT, { book });
    await panel("Plan");
    await bench.field("Hand-out").waitFor();
    await press("Start with chosen ingredients");
    await bench.field("Find an ingredient").fill("rye");
    await bench.page.keyboard.press("Tab");
    await bench.page.keyboard.press("Space");
    await bench.field("Find an ingredient").fill("butter");
    await walk("picking");
    await press("Build the production");
    await walk("day in error");
  });

  test("Functions, all and one opened", async () => {
    await panel("Functions");
    await bench.field("What do you want to work out?").waitFor();
    await bench.field("What do you want to work out?").fill("ice");
    // The list follows what is typed.
    await expect.poll(() => bench.page.locator(".functions summary b").first().textContent()).toBe("BAKE_ICE");
    await bench.page.locator(".functions summary").first().focus();
    await bench.page.keyboard.press("Enter");
    // What is inside comes with an event of its own, after the key.
    await bench.page.getByRole("button", { name: "Insert at the cursor" }).filter({ visible: true }).waitFor();
    await walk("a function");
  });
});
