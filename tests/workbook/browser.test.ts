import { chmodSync, existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, describe, expect, test, vi } from "vitest";
import { hasBrowser, openBrowser } from "../../src/workbook/browser.ts";
import { PATIENCE } from "../kit/scale.ts";

describe("a browser is opened", () => {
  test.each([
    ["on Linux with X", "linux", { DISPLAY: ":0" }, true],
    ["on Linux with Wayland", "linux", { WAYLAND_DISPLAY: "wayland-0" }, true],
    ["not on Linux without a display", "linux", {}, false],
    ["not on Linux with an empty display", "linux", { DISPLAY: "", WAYLAND_DISPLAY: "" }, false],
    ["on macOS", "darwin", {}, true],
    ["on Windows", "win32", {}, true],
    ["where CI is switched off", "darwin", { CI: "false" }, true],
    ["not under CI, on Linux", "linux", { CI: "true", DISPLAY: ":0" }, false],
    ["not under CI, on macOS", "darwin", { CI: "1" }, false],
    ["not under CI, on Windows", "win32", { CI: "true" }, false],
  ] as const)("%s", (_, platform, env, opened) => {
    expect(hasBrowser({ platform, env })).toBe(opened);
  });
});

// Only Linux takes the browser's command from the environment, so that a script can stand in for it.
describe.skipIf(process.platform !== "linux")("openBrowser", () => {
  const folder = mkdtempSync(join(tmpdir(), "gramwright-browser-"));
  const seen = join(folder, "seen");
  const browser = join(folder, "browser");
  writeFileSync(browser, `#!/bin/sh\necho "$1" > "${seen}"\n`);
  chmodSync(browser, 0o700);
  const address = "http://127.0.0.1:4780/";

  afterEach(() => vi.unstubAllEnvs());

  test("gives the address to the computer's browser, and nothing under CI", async () => {
    vi.stubEnv("BROWSER", browser);
    // No desktop and no installed browser: xdg-open then takes the one that BROWSER names.
    for (const name of ["HOME", "XDG_DATA_HOME", "XDG_DATA_DIRS", "XDG_CONFIG_HOME", "XDG_CONFIG_DIRS"])
      vi.stubEnv(name, folder);
    for (const name of ["XDG_CURRENT_DESKTOP", "DESKTOP_SESSION"]) vi.stubEnv(name, "");
    vi.stubEnv("DISPLAY", ":0");
    vi.stubEnv("CI", "true");
    expect(await openBrowser(address)).toBe(false);
    expect(existsSync(seen)).toBe(false);
    vi.stubEnv("CI", "");
    expect(await openBrowser(address)).toBe(true);
    await vi.waitFor(() => expect(readFileSync(seen, "utf8")).toBe(`${address}\n`), {
      timeout: PATIENCE,
      interval: 50,
    });
    rmSync(folder, { recursive: true, force: true });
  });
});
