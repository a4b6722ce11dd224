// The two pages opened from a disk in Firefox, which keeps what a page stores for that page's own path.
import { rmSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type Firefox, type FirefoxTab, findFirefox, openFirefox } from "./firefox.ts";
import { LOCAL, type Pages, seedPage, writePages } from "./one-file-pages.ts";

const PATH = findFirefox();
if (PATH === undefined)
  console.warn("Skipped: the pages that are one file in Firefox; none was found (apt-get install firefox-esr).");

const READY = `document.querySelector(".o-grid canvas") !== null && !/^(|Opening .*|Building .*)$/.test(document.getElementById("status").textContent)`;
const BENCH = `document.getElementById("sidebar-frame").contentDocument`;
const KEPT = `new Promise((done) => { const asked = indexedDB.open("gramwright"); asked.onsuccess = () => {
  const all = asked.result.transaction("workbooks").objectStore("workbooks").getAll();
  all.onsuccess = () => { asked.result.close(); done(all.result.map(({ text }) => text).join()); }; }; })`;

describe.skipIf(PATH === undefined)("opened from a disk in Firefox", () => {
  let pages: Pages;
  let firefox: Firefox;
  beforeAll(async () => {
    pages = await writePages();
    firefox = await openFirefox(PATH ?? "");
  });
  afterAll(async () => {
    await firefox?.close();
    if (pages !== undefined) rmSync(pages.folder, { recursive: true, force: true });
  });

  const opened = async (url: string): Promise<FirefoxTab> => {
    const tab = await firefox.tab();
    await tab.goTo(url);
    await tab.until(READY);
    return tab;
  };

  test("the three copies are the three files to the byte", async () => {
    const tab = await firefox.tab();
    await tab.goTo(pages.install);
    for (const [name, file] of [
      ["code-js", "Code.js"],
      ["sidebar-html", "sidebar.html"],
      ["manifest", "appsscript.json"],
    ] as const) {
      await tab.evaluate(`document.querySelector('[data-copy="${name}"]').click()`);
      await tab.until(`/^Copied|did not copy/.test(document.getElementById("${name}-says").textContent)`);
      const says = await tab.evaluate<string>(`document.getElementById("${name}-says").textContent`);
      // Without a person's own click the browser may refuse: then all of it stands there selected, and Ctrl+C takes it.
      if (says.startsWith("Copied") === false) await tab.control("c");
      await tab.evaluate(
        `(() => { document.querySelector("#pasted")?.remove(); const box = document.createElement("textarea"); box.id = "pasted"; document.body.append(box); box.focus(); })()`,
      );
      await tab.control("v");
      await tab.until(`document.querySelector("#pasted").value !== ""`);
      expect(
        (await tab.evaluate<string>(`document.querySelector("#pasted").value`)) === pages.files[file],
        `${file}: ${says}`,
      ).toBe(true);
    }
    await tab.close();
  });

  test("the local page does the main job, is closed, and has everything when it is opened again", async () => {
    const seed = await firefox.tab();
    await seed.goTo(pages.write(LOCAL, await seedPage()));
    await seed.until(`document.title === "seeded"`);
    await seed.close();
    const url = pages.write(LOCAL, pages.local);
    const [first, second] = [await opened(url), await opened(url)];
    await first.until(`[...${BENCH}.querySelectorAll("button")].some((one) => one.textContent === "Build the sheet")`);
    await first.evaluate(
      `[...${BENCH}.querySelectorAll("details:not([open]) > summary")].map((one) => one.click()).length`,
    );
    await first.evaluate(`(() => {
      const put = (label, text) => { const field = [...${BENCH}.querySelectorAll("input")].find((one) => one.getAttribute("aria-label") === label || one.labels?.[0]?.textContent.trim() === label);
        field.value = text; for (const type of ["input", "change"]) field.dispatchEvent(new Event(type, { bubbles: true })); };
      const choose = (label, text) => { const field = [...${BENCH}.querySelectorAll("select")].find((one) => one.labels?.[0]?.textContent.trim() === label || one.getAttribute("aria-label") === label);
        field.value = [...field.options].find((one) => one.textContent === text).value; field.dispatchEvent(new Event("change", { bubbles: true })); };
      const box = [...${BENCH}.querySelectorAll("input[type=checkbox]")].find((one) => one.labels?.[0]?.textContent.trim() === "Include in the sheet");
      put("Pieces, size 1", "73"); put("Baked g, size 1", "390"); choose("Shape", "no tin"); if (box.checked) box.click();
      [...${BENCH}.querySelectorAll("button")].find((one) => one.textContent === "Build the sheet").click();
    })()`);
    await first.until(`${BENCH}.body.textContent.includes("Built “Pan loaf”")`);
    await first.until(`${KEPT}.then((text) => text.includes("Pan loaf"))`);
    // The other tab hears of it, and keeps nothing over it.
    await second.until(`document.getElementById("notice").textContent.includes("This tab is behind")`);
    await second.close();
    await first.close();
    const again = await opened(url);
    const tabs = await again.evaluate<string[]>(
      `[...document.querySelectorAll(".o-sheet")].map((one) => one.textContent.trim())`,
    );
    expect(tabs).toEqual(expect.arrayContaining(["Sheet1", "Pan loaf"]));
    expect(await again.evaluate<string>(`document.getElementById("reminder-says").textContent`)).toContain(
      "No file holds this workbook yet.",
    );
    await again.close();
  });

  test("an older page leaves alone what a newer one keeps, and says so", async () => {
    const newer = await opened(pages.write(LOCAL, pages.newer));
    await newer.close();
    const older = await firefox.tab();
    await older.goTo(pages.write(LOCAL, pages.local));
    await older.until(
      `document.getElementById("status").textContent.includes("A newer Gramwright page keeps the workbook in this browser")`,
    );
    await older.close();
  });

  test("a page that was renamed says so before anything else: the workbook may be elsewhere, and how to open its file", async () => {
    const moved = await firefox.tab();
    await moved.goTo(pages.write("renamed.html", pages.local));
    await moved.until(`document.getElementById("reminder").checkVisibility()`);
    expect(await moved.evaluate<string>(`document.getElementById("reminder-says").textContent`)).toMatch(
      /^This browser keeps no workbook for this page yet\..*moved or renamed.*Choose “Open file”/,
    );
    await moved.close();
  });

  test("nothing but the pages themselves was asked for", () => {
    expect(
      firefox.asked.filter(
        (url) => !url.startsWith(pathToFileURL(join(pages.folder)).href) && !/^(about|data|blob):/.test(url),
      ),
    ).toEqual([]);
  });
});
