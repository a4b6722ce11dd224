// Two tabs, two servers, and servers that are killed.
import { rmSync, symlinkSync, writeFileSync } from "node:fs";
import { createServer } from "node:http";
import { basename, dirname, join } from "node:path";
import { expect } from "vitest";
import { IS_LONG } from "../../kit/scale.ts";
import { beside, fileOf, revisionAt, servedText, type, typedIn } from "../one-cell.ts";
import { startServer } from "../server-process.ts";
import { type Accident, copyOfToday, KEPT } from "./accident.ts";

const KILLS = IS_LONG ? 40 : 2;

export const SERVERS: readonly Accident[] = [
  {
    accident: "two tabs",
    typed: ["in the first tab", "in the second, which did not know of it"],
    found: "in the first tab",
    told: /^The workbook was changed in another window or by another program\.$/,
    async happens(file, [first = "", second = ""]) {
      const { says: at } = await startServer(file);
      const both = await revisionAt(at);
      await type(at, first, both);
      return (await type(at, second, both)).says;
    },
  },
  {
    accident: "a killed server: what was answered is there, and the next server takes the lock over",
    typed: ["before the kill", "after it"],
    found: "after it",
    told: KEPT,
    async happens(file, [before = "", after = ""]) {
      const { says: at, end } = await startServer(file);
      await type(at, before);
      await end("SIGKILL");
      expect(beside(file)).toContain("workbook.json.lock");
      const next = await startServer(file);
      expect(await servedText(next.says)).toBe(before);
      const { says } = await type(next.says, after);
      await next.end("SIGTERM");
      expect(beside(file)).toEqual([basename(copyOfToday(file)), "workbook.json"]);
      return says;
    },
  },
  {
    accident: `a server killed ${KILLS} times while saving: the save that was answered last is there and whole, or the one after it`,
    typed: ["1", "2", "3", "and so on, as quickly as each is answered"],
    found: /^(\d+) x{2000000} \1$/,
    told: new RegExp(`^whole after ${KILLS} kills$`),
    async happens(file) {
      let answered = 0;
      let kills = 0;
      while (kills < KILLS) {
        answered = await killedWhileSaving(file, answered, (37 * kills) % 200);
        kills += 1;
      }
      return `whole after ${kills} kills`;
    },
  },
  {
    accident: "two servers: the second does not start",
    typed: ["in the first", "still in the first"],
    found: "still in the first",
    told: /^workbook\.json is open in another Gramwright \(process \d+\)\. Use that one, or stop it and start again\./,
    async happens(file, [one = "", more = ""]) {
      const first = await startServer(file);
      await type(first.says, one);
      const { says } = await startServer(file);
      expect(says).toContain(`(process ${first.child.pid})`);
      expect((await type(first.says, more)).status).toBe(200);
      return says;
    },
  },
  {
    accident: "two servers, one by a link: the second does not start either",
    typed: ["in the first"],
    found: "in the first",
    told: /is open in another Gramwright/,
    async happens(file, [one = ""]) {
      const link = join(dirname(file), "link.json");
      symlinkSync("workbook.json", link);
      const first = await startServer(file);
      await type(first.says, one);
      return (await startServer(link)).says;
    },
  },
  {
    accident: "a lock that was taken away: nothing is called kept",
    typed: ["kept", "not kept"],
    found: "kept",
    told: /^The workbook's lock was taken away, and another Gramwright may have it\. Stop this one and start it again\.$/,
    async happens(file, [kept = "", not = ""]) {
      const { says: at } = await startServer(file);
      await type(at, kept);
      rmSync(`${file}.lock`);
      return (await type(at, not)).says;
    },
  },
  {
    accident: "a port that is taken: no server starts, and neither copy nor lock is left",
    typed: ["of the last time"],
    found: "of the last time",
    told: /^Port \d+ is taken; give another with --port N\.$/,
    async happens(file, [old = ""]) {
      writeFileSync(file, fileOf(old));
      const other = createServer();
      await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
      const { port } = other.address() as { port: number };
      const { says, end } = await startServer(file, { port });
      await end("SIGTERM");
      other.close();
      expect(says).toContain(String(port));
      expect(beside(file)).toEqual(["workbook.json"]);
      return says;
    },
  },
];

const sleep = (milliseconds: number) => new Promise((resolve) => setTimeout(resolve, milliseconds));

/** Saves without a pause, kills the server so long after the first answer, and gives the number of the save that is there then. */
async function killedWhileSaving(file: string, before: number, milliseconds: number): Promise<number> {
  const { says: at, end } = await startServer(file);
  expect(at).toMatch(/^http/);
  let [asked, answered] = [before, before];
  const saving = (async () => {
    for (;;) {
      asked += 1;
      expect((await type(at, `${asked} ${"x".repeat(2_000_000)} ${asked}`)).status).toBe(200);
      answered = asked;
    }
  })().catch(() => undefined);
  // However slow the computer is, a save was answered before the kill, and the next is under way.
  const first = async () => {
    while (answered === before) await sleep(5);
    await sleep(milliseconds);
  };
  await Promise.race([first(), saving]);
  await end("SIGKILL");
  await saving;
  expect(answered).toBeGreaterThan(before);
  const [number] = typedIn(file).split(" ");
  expect([answered, asked]).toContain(Number(number));
  return Number(number);
}
