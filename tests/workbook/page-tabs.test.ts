// Two tabs on one workbook: the second says at once that it is behind, and both ways on lose nothing that was not given up.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test, vi } from "vitest";
import { openKeeper } from "../../src/workbook/file/keeper.ts";
import { openFile } from "../../src/workbook/scripted.ts";
import { PATIENCE } from "../kit/scale.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { bytesOf, cellText, type Hands, type LocalPage, openLocalPage, openTab, pageReady } from "./local-page.ts";
import { keepRye, testRoot } from "./test-sidebar.ts";

describe.skipIf(skipWithoutChromium("two tabs"))("two tabs", () => {
  const folder = mkdtempSync(join(tmpdir(), "gramwright-tabs-"));
  const path = join(folder, "shared.json");
  const root = testRoot();
  let first: LocalPage;
  let second: Hands;
  beforeAll(async () => {
    keepRye(path);
    first = await openLocalPage({ root, keeper: openKeeper(path, () => {}) });
  });
  beforeEach(async () => {
    await first.page.reload();
    await pageReady(first.page);
  });
  afterEach(async () => {
    await second.page.close();
    first.takeMishaps();
  });
  afterAll(async () => {
    await first?.close();
    for (const one of [folder, root]) rmSync(one, { recursive: true, force: true });
  });

  const inFile = (text: string) =>
    vi.waitFor(() => expect(readFileSync(path, "utf8")).toContain(text), { timeout: PATIENCE, interval: 20 });
  const alert = () => second.page.getByRole("alert");
  const press = (name: string) => second.page.getByRole("button", { name }).click();

  /** A tab that asks the server in vain what is new: until it sends something itself it can know only from the other tab. */
  const hearsTabs = async (tab: Page) => {
    const old = await first.page.evaluate(async () => (await fetch("/revision")).text());
    let hasSent = false;
    tab.on("request", (asked) => {
      hasSent ||= asked.method() === "POST";
    });
    await tab.route("**/revision", (asked) =>
      hasSent ? asked.continue() : asked.fulfill({ contentType: "application/json", body: old }),
    );
  };
  /** A tab that hears nothing at all, until it sends. */
  const hearsNothing = async (tab: Page) => {
    await hearsTabs(tab);
    await tab.addInitScript(() => {
      window.BroadcastChannel = class extends EventTarget {
        postMessage() {}
      } as unknown as typeof BroadcastChannel;
    });
  };

  test("the second is told by the first at once, keeps nothing more, and takes the newer state", async () => {
    second = await openTab(first, hearsTabs);
    await first.type("C21", "typed in the first");
    await alert().getByText("Nothing is kept from this tab until you choose.").waitFor();
    const posts = second.posts();
    await second.type("C22", "typed behind");
    await press("Take the newer state");
    await alert().waitFor({ state: "hidden" });
    await second.page.unroute("**/revision");
    expect(await cellText(second, "C21")).toBe("typed in the first");
    expect(await cellText(second, "C22")).toBe("");
    expect(second.posts()).toBe(posts);
    // It is in front again.
    await second.type("C22", "typed in the second");
    await inFile("typed in the second");
    await first.page.getByRole("alert").getByText("This tab is behind").waitFor();
    expect(readFileSync(path, "utf8")).toContain("typed in the first");
  });

  test("what was typed in both is not mixed: the second is told when it sends, and saves its own as a file that opens", async () => {
    second = await openTab(first, hearsNothing);
    await first.type("K31", "only in the first");
    await inFile("only in the first");
    await second.type("K32", "only in the second");
    await alert().getByText("What you typed here since then is not in the newer state.").waitFor();
    expect(readFileSync(path, "utf8")).not.toContain("only in the second");
    const [download] = await Promise.all([second.page.waitForEvent("download"), press("Save this tab as a file")]);
    const own = join(folder, download.suggestedFilename());
    await alert().getByText(`This tab was saved as ${download.suggestedFilename()}.`).waitFor();
    writeFileSync(own, await bytesOf(download));
    // As a program opens it, and as a person does with --file.
    const book = await openFile(own);
    expect(book.cell("Rye", "K32").value).toBe("only in the second");
    expect(book.cell("Rye", "K31").value).toBe("");
    const again = await openLocalPage({ root, keeper: openKeeper(own, () => {}) });
    expect(await cellText(again, "K32")).toBe("only in the second");
    await again.close();
    // The other one is as it was.
    expect(readFileSync(path, "utf8")).toContain("only in the first");
    expect(readFileSync(path, "utf8")).not.toContain("only in the second");
  });

  test("the browser asks before it closes a tab whose text is in no file, and no more once it is saved", async () => {
    second = await openTab(first, hearsNothing);
    const { page } = second;
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.dismiss();
    });
    await first.type("C41", "newer");
    await inFile("newer");
    await second.type("C42", "in no file yet");
    await alert().getByText("What you typed here since then").waitFor();
    await page.close({ runBeforeUnload: true });
    await vi.waitFor(() => expect(asked).toEqual(["beforeunload"]), { timeout: PATIENCE, interval: 20 });
    await Promise.all([page.waitForEvent("download"), press("Save this tab as a file")]);
    const closed = page.waitForEvent("close");
    await page.close({ runBeforeUnload: true });
    await closed;
    expect(asked).toHaveLength(1);
  });
});
