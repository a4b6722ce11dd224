// Accidents of the kept file, each with servers that are processes of their own: what was typed, what the file held
// afterwards, and what was said. What the page says is in page-keeping.test.ts, page-tabs.test.ts and page-outage.test.ts.
import { afterAll, afterEach, expect, test } from "vitest";
import type { Accident } from "./accidents/accident.ts";
import { DISKS } from "./accidents/disks.ts";
import { FILES } from "./accidents/files.ts";
import { SERVERS } from "./accidents/servers.ts";
import { typedIn } from "./one-cell.ts";
import { endServers, testFolder } from "./server-process.ts";

const ACCIDENTS: readonly Accident[] = [...SERVERS, ...DISKS, ...FILES];

const { place, remove } = testFolder("accidents");
afterEach(endServers);
afterAll(remove);

const shown = (texts: readonly string[]) =>
  texts.map((text) => (text.length > 50 ? `${text.length} characters` : `“${text}”`)).join(", ");

for (const { accident, typed, found, told, isPossible, happens } of ACCIDENTS) {
  const isLeftOut = isPossible?.() === false;
  if (isLeftOut) console.warn(`Skipped: ${accident}; this computer does not let it happen.`);
  test.skipIf(isLeftOut)(`${accident}. Typed: ${shown(typed)}. Found: ${found}`, async () => {
    const file = place(accident);
    const says = await happens(file, typed);
    if (found instanceof RegExp) expect(typedIn(file)).toMatch(found);
    else expect(typedIn(file)).toBe(found);
    expect(says).toMatch(told);
  });
}
