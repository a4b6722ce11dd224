// Links, rights, dates and old files.
import { chmodSync, lstatSync, readFileSync, statSync, symlinkSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect } from "vitest";
import { askedFor, fileOf, type, typedIn } from "../one-cell.ts";
import { startServer } from "../server-process.ts";
import { type Accident, copyOf, copyOfToday, KEPT } from "./accident.ts";

export const FILES: readonly Accident[] = [
  {
    accident: "a link to a file: it stays one, and its target is written with the rights it had",
    typed: ["through the link"],
    found: "through the link",
    told: KEPT,
    async happens(file, [text = ""]) {
      const target = join(dirname(file), "real.json");
      writeFileSync(target, fileOf("old"), { mode: 0o640 });
      symlinkSync("real.json", file);
      const { says } = await type((await startServer(file)).says, text);
      expect(lstatSync(file).isSymbolicLink()).toBe(true);
      expect(lstatSync(target).isSymbolicLink()).toBe(false);
      expect(statSync(target).mode & 0o777).toBe(0o640);
      return says;
    },
  },
  {
    accident: "a link to a file that is not there yet: it stays one, and its target is written for its owner alone",
    typed: ["through the link"],
    found: "through the link",
    told: KEPT,
    async happens(file, [text = ""]) {
      symlinkSync("real.json", file);
      const { says } = await type((await startServer(file)).says, text);
      expect(lstatSync(file).isSymbolicLink()).toBe(true);
      expect(statSync(join(dirname(file), "real.json")).mode & 0o777).toBe(0o600);
      return says;
    },
  },
  {
    accident: "a file that its owner gave to others: it stays theirs, and a new one is its owner's alone",
    typed: ["new", "shared"],
    found: "shared",
    told: KEPT,
    async happens(file, [first = "", shared = ""]) {
      const { says: at } = await startServer(file);
      await type(at, first);
      expect(statSync(file).mode & 0o777).toBe(0o600);
      chmodSync(file, 0o644);
      const { says } = await type(at, shared);
      expect(statSync(file).mode & 0o777).toBe(0o644);
      return says;
    },
  },
  {
    accident: "a clock set back: no dated copy is written over, and the older one is not thrown away",
    typed: ["before it was set right", "ahead of time", "today", "today, later"],
    found: "today, later",
    told: KEPT,
    async happens(file, [before = "", ahead = "", ...rest]) {
      writeFileSync(file, fileOf(before));
      const first = await startServer(file, { clock: new Date(2099, 0, 12, 12) });
      await type(first.says, ahead);
      await first.end("SIGTERM");
      const says = await typeAll((await startServer(file)).says, rest);
      expect(typedIn(copyOf(file, { year: 2099, month: 1, day: 12 }))).toBe(before);
      expect(typedIn(copyOfToday(file))).toBe(ahead);
      return says;
    },
  },
  {
    accident: "a file of an older build: it opens as it is, is not set aside, and is in the copy of the day",
    typed: ["new"],
    found: "new",
    told: KEPT,
    async happens(file, [text = ""]) {
      const old = { version: 14, sheets: [{ id: "s", name: "Rye", cells: { A1: { content: "old" } } }] };
      writeFileSync(file, JSON.stringify({ kind: "gramwright workbook 1", data: old }));
      const { says: at } = await startServer(file);
      expect(await askedFor<{ says?: string }>(at, "workbook")).toEqual({ data: old, revision: expect.any(String) });
      const { says } = await type(at, text);
      expect(JSON.parse(readFileSync(copyOfToday(file), "utf8")).data).toEqual(old);
      return says;
    },
  },
];

/** Types each text and gives what was said to the last; every one before it was kept. */
async function typeAll(at: string, texts: readonly string[]): Promise<string> {
  let says = "";
  for (const [index, text] of texts.entries()) {
    const answer = await type(at, text);
    if (index < texts.length - 1) expect(answer.status).toBe(200);
    says = answer.says;
  }
  return says;
}
