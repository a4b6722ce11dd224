// A server that goes away under an open page: what is typed meanwhile is sent when it is back, and the tab does not close unasked.
import { readFileSync, rmSync, writeFileSync } from "node:fs";
import { afterAll, afterEach, describe, expect, test, vi } from "vitest";
import { LOCAL_PAGE } from "../../src/build/local-page.ts";
import { PATIENCE } from "../kit/scale.ts";
import { skipWithoutChromium } from "../sidebar/browser.ts";
import { cellText, type LocalPage, openPageAt } from "./local-page.ts";
import { endServers, freePort, startServer, testFolder } from "./server-process.ts";
import { keepRye, testRoot } from "./test-sidebar.ts";

describe.skipIf(skipWithoutChromium("an outage under the page"))("under an open page", () => {
  const { place: placeFor, remove } = testFolder("outage");
  const place = (name: string) => {
    const file = placeFor(name);
    keepRye(file);
    return file;
  };
  const root = testRoot();
  let local: LocalPage;
  afterEach(async () => {
    // Requests that nobody answers are errors to a browser.
    for (const one of local.takeMishaps())
      expect(one).toMatch(
        /ERR_CONNECTION_REFUSED|ERR_EMPTY_RESPONSE|ERR_CONNECTION_RESET|ERR_FAILED|status of (409|5\d\d)/,
      );
    await local.close();
    await endServers();
  });
  afterAll(() => {
    remove();
    rmSync(root, { recursive: true, force: true });
  });
  const status = (says: RegExp) =>
    local.page.waitForFunction(
      (pattern) => new RegExp(pattern).test(document.getElementById("status")?.textContent ?? ""),
      says.source,
      { polling: 50 },
    );
  const inFile = (file: string, text: string) =>
    vi.waitFor(() => expect(readFileSync(file, "utf8")).toContain(text), { timeout: PATIENCE, interval: 20 });

  test("the server is killed: the page says so, asks before it closes, and sends all when the server is back", async () => {
    const file = place("killed");
    const how = { root, page: LOCAL_PAGE, port: await freePort() };
    const server = await startServer(file, how);
    local = await openPageAt(server.says);
    const { page } = local;
    const asked: string[] = [];
    page.on("dialog", (dialog) => {
      asked.push(dialog.type());
      void dialog.dismiss();
    });
    await local.type("C21", "before the kill");
    await inFile(file, "before the kill");
    await server.end("SIGKILL");
    await local.type("C22", "while it was away");
    await status(/^Not kept: the server does not answer\. Leave this page open and start it again/);
    await local.type("C23", "and more");
    await page.close({ runBeforeUnload: true });
    await vi.waitFor(() => expect(asked).toEqual(["beforeunload"]), { timeout: PATIENCE, interval: 20 });
    expect(readFileSync(file, "utf8")).not.toContain("while it was away");

    const again = await startServer(file, how);
    expect(again.says).toBe(server.says);
    await status(/^Kept: what could not be sent is in the file now\.$/);
    await inFile(file, "while it was away");
    await inFile(file, "and more");
    await page.reload();
    expect(asked).toHaveLength(1);
    expect(await cellText(local, "C22")).toBe("while it was away");
  });

  test("the server is killed after it wrote and before it answered: the tab knows its own save, and goes on", async () => {
    const file = place("unanswered");
    const server = await startServer(file, { root, page: LOCAL_PAGE });
    local = await openPageAt(server.says);
    await inFile(file, "Rye");
    let lost = 0;
    await local.page.route("**/workbook", async (asked) => {
      if (asked.request().method() === "POST" && lost === 0) {
        await asked.fetch();
        lost += 1;
        return asked.abort();
      }
      return asked.continue();
    });
    await local.type("C21", "written, not answered");
    await status(/^Not kept: the server does not answer/);
    await inFile(file, "written, not answered");
    await local.type("C22", "typed since");
    await status(/^Kept: what could not be sent is in the file now\.$/);
    await inFile(file, "typed since");
    expect(lost).toBe(1);
    expect(await local.page.getByRole("alert").isVisible()).toBe(false);
  });

  test("another program wrote while the server was away: the page says that it is behind, and calls nothing kept", async () => {
    const file = place("overtaken");
    const how = { root, page: LOCAL_PAGE, port: await freePort() };
    const server = await startServer(file, how);
    local = await openPageAt(server.says);
    await local.type("C21", "before");
    await inFile(file, "before");
    await server.end("SIGTERM");
    await local.type("C22", "while it was away");
    await status(/^Not kept/);
    writeFileSync(file, readFileSync(file, "utf8").replace("before", "another program's"));
    await startServer(file, how);
    await local.page.getByRole("alert").getByText("What you typed here since then").waitFor();
    expect(await local.page.textContent("#status")).toMatch(/^Not kept/);
    expect(readFileSync(file, "utf8")).toContain("another program's");
    expect(readFileSync(file, "utf8")).not.toContain("while it was away");
  });

  test("the lock is taken away: the page says what to do", async () => {
    const file = place("lock");
    const how = { root, page: LOCAL_PAGE, port: await freePort() };
    const server = await startServer(file, how);
    local = await openPageAt(server.says);
    rmSync(`${file}.lock`);
    await local.type("C21", "not kept yet");
    await status(/^Not kept: The workbook's lock was taken away.* Stop this one and start it again\.$/);
    await server.end("SIGTERM");
    await startServer(file, how);
    await inFile(file, "not kept yet");
  });

  test("the disk is full: the page says what to do, and keeps all when there is room", async () => {
    const file = place("full");
    const server = await startServer(file, { root, page: LOCAL_PAGE, limit: "ulimit -f 4" });
    local = await openPageAt(server.says);
    const { page } = local;
    await local.type("C21", "fits");
    await inFile(file, "fits");
    await local.goTo("C22");
    await page.keyboard.type("x");
    await page.keyboard.insertText("long".repeat(1000));
    await page.keyboard.press("Enter");
    await status(/^Not kept: workbook\.json could not be written\. The disk .*\.$/);
    expect(readFileSync(file, "utf8")).toContain("fits");
    await local.goTo("C22");
    await page.keyboard.press("Delete");
    await local.type("C23", "short");
    await status(/^Kept: what could not be sent is in the file now\.$/);
    await inFile(file, "short");
  });
});
