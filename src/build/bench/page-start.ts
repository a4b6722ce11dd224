// What the sidebar's page costs a browser until its tabs stand.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { type Browser, chromium } from "playwright-core";
import { median } from "./measure.ts";

const OPENINGS = 9;
const EMPTY = "<!doctype html><html lang='en'><body><nav>tabs</nav></body></html>";

/** Milliseconds that the main thread works until the tabs stand, less those of an empty page; medians, a browser each time. */
export async function pageTime(executablePath: string): Promise<number> {
  const page = readFileSync("dist/sidebar.html", "utf8");
  const folder = mkdtempSync(join(tmpdir(), "gramwright-page-"));
  try {
    const [empty, full]: [number[], number[]] = [[], []];
    for (let round = 0; round < OPENINGS; round++) {
      for (const [times, text] of [
        [empty, EMPTY],
        [full, page],
      ] as const) {
        // Text that was seen before is not compiled again.
        const file = join(folder, `${round}-${times.length}-${text.length}.html`);
        writeFileSync(file, text.replace("</html>", `<i hidden>${round}</i></html>`));
        times.push(await opened(executablePath, pathToFileURL(file).href));
      }
    }
    return median(full) - median(empty);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

async function opened(executablePath: string, address: string): Promise<number> {
  const browser: Browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu"] });
  try {
    const page = await browser.newPage();
    const session = await page.context().newCDPSession(page);
    await session.send("Performance.enable", { timeDomain: "threadTicks" });
    await page.goto(address);
    await page.waitForSelector("nav");
    const { metrics } = await session.send("Performance.getMetrics");
    return 1000 * (metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN);
  } finally {
    await browser.close();
  }
}
