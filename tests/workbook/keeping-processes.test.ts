// The kept file when things go wrong, with a real process for each server: what was typed, and what was found afterwards.
import { type ChildProcess, spawn } from "node:child_process";
import {
  chmodSync,
  existsSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { createServer } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as esbuild from "esbuild";
import { afterAll, afterEach, beforeAll, describe, expect, test } from "vitest";
import { tries } from "../kit/scale.ts";

let folder = "";
let program = "";
const children: ChildProcess[] = [];
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "gramwright-processes-"));
  program = join(folder, "serve.mjs");
  await esbuild.build({
    stdin: {
      contents: `import { lockFile } from "./src/workbook/file/lock.ts";
        import { targetOf } from "./src/workbook/file/write-whole.ts";
        import { openKeeper } from "./src/workbook/keep.ts";
        import { serve } from "./src/workbook/server.ts";
        try {
          const [file, port] = process.argv.slice(2);
          const lock = lockFile(targetOf(file));
          process.once("exit", () => lock.release());
          process.once("SIGTERM", () => process.exit());
          const keeper = openKeeper(file, () => {}, lock);
          const { address } = await serve({ root: ".", pageJs: "", keeper, ...(port && { port: Number(port) }) });
          process.stdout.write(address);
        } catch (error) {
          process.stdout.write(error.message);
          process.exit(1);
        }`,
      resolveDir: process.cwd(),
      loader: "ts",
    },
    bundle: true,
    platform: "node",
    format: "esm",
    packages: "external",
    outfile: join(process.cwd(), "node_modules/.cache/gramwright/serve-test.mjs"),
  });
  program = join(process.cwd(), "node_modules/.cache/gramwright/serve-test.mjs");
});
afterEach(async () => {
  for (const child of children.splice(0)) await ended(child, "SIGKILL");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Ends this child, by its own handle. */
function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once("close", () => resolve());
    child.kill(signal);
  });
}

/** Starts a server; what it says first, its address or why it does not start. `limit` is of the shell: `ulimit -f 8`. */
function start(file: string, { port = 0, limit }: { port?: number; limit?: string } = {}) {
  const args = [program, file, ...(port === 0 ? [] : [String(port)])];
  const how = { stdio: ["ignore", "pipe", "ignore"] as ["ignore", "pipe", "ignore"] };
  // A write over the limit would end the process by a signal; as on a full disk it is to fail instead.
  const child =
    limit === undefined
      ? spawn(process.execPath, args, how)
      : spawn("bash", ["-c", `trap '' XFSZ; ${limit}; exec "$0" "$@"`, process.execPath, ...args], how);
  children.push(child);
  return new Promise<{ child: ChildProcess; says: string }>((resolve) => {
    child.stdout?.once("data", (text: Buffer) => resolve({ child, says: text.toString() }));
    child.once("close", () => resolve({ child, says: "nothing" }));
  });
}

const workbook = (typed: string) => ({
  version: "19.3",
  sheets: [{ id: "s", name: "Rye", colNumber: 3, rowNumber: 3, cells: { A1: typed } }],
});
const fileOf = (typed: string) => JSON.stringify({ kind: "gramwright workbook 1", data: workbook(typed) });
const typedIn = (file: string): string => JSON.parse(readFileSync(file, "utf8")).data.sheets[0].cells.A1;
const revision = async (at: string) => ((await (await fetch(`${at}revision`)).json()) as { revision: string }).revision;
async function type(at: string, typed: string, follows?: string): Promise<{ status: number; says: string }> {
  const headers = { "content-type": "application/json", "x-revision": follows ?? (await revision(at)) };
  const answer = await fetch(`${at}workbook`, { method: "POST", headers, body: JSON.stringify(workbook(typed)) });
  return { status: answer.status, says: await answer.text() };
}
const place = (name: string): string => {
  mkdirSync(join(folder, name));
  return join(folder, name, "workbook.json");
};
const beside = (file: string) => readdirSync(join(file, "..")).sort();
const today = new Date();
const dated = `workbook.${today.getFullYear()}-${String(today.getMonth() + 1).padStart(2, "0")}-${String(today.getDate()).padStart(2, "0")}.json`;

describe("typed, and found afterwards", () => {
  test("two tabs: the second is told, and the first one's text stays", async () => {
    const file = place("tabs");
    const { says: at } = await start(file);
    const both = await revision(at);
    expect((await type(at, "first", both)).status).toBe(200);
    expect(await type(at, "second", both)).toMatchObject({ status: 409, says: /changed in another window/ });
    expect(typedIn(file)).toBe("first");
  });

  test("a killed server: what was answered is there, and the next one takes the lock over", async () => {
    const file = place("killed");
    const { child, says: at } = await start(file);
    expect((await type(at, "before the kill")).status).toBe(200);
    await ended(child, "SIGKILL");
    expect(beside(file)).toContain("workbook.json.lock");
    const next = await start(file);
    expect(next.says).toMatch(/^http/);
    expect(typedIn(file)).toBe("before the kill");
    expect((await type(next.says, "after it")).status).toBe(200);
    expect(typedIn(file)).toBe("after it");
    await ended(next.child, "SIGTERM");
    expect(beside(file)).not.toContain("workbook.json.lock");
  });

  test("a full disk: nothing is called kept, the last state stays whole, and no part is left", async () => {
    const file = place("full");
    // Files of 8 kB at most: what a save meets when the room ends in the middle of it.
    const { says: at } = await start(file, { limit: "ulimit -f 8" });
    expect((await type(at, "fits")).status).toBe(200);
    const { status, says } = await type(at, "x".repeat(60_000));
    expect(status).toBeGreaterThanOrEqual(500);
    expect(says).toMatch(/^workbook\.json could not be written\. The disk .*\.$/);
    expect(says).not.toContain(folder);
    expect(typedIn(file)).toBe("fits");
    expect(beside(file).filter((name) => name.endsWith(".part"))).toEqual([]);
    expect((await type(at, "there is room again")).status).toBe(200);
    expect(typedIn(file)).toBe("there is room again");
  });

  test("a folder that cannot be written any more: the answer says so", async () => {
    const file = place("gone");
    const { says: at } = await start(file);
    expect((await type(at, "written")).status).toBe(200);
    const known = await revision(at);
    // Also root cannot write in a folder that is a file by now.
    rmSync(join(folder, "gone"), { recursive: true });
    writeFileSync(join(folder, "gone"), "a file");
    const { status, says } = await type(at, "lost?", known);
    expect(status).toBeGreaterThanOrEqual(400);
    expect(says).not.toContain(folder);
    expect(readFileSync(join(folder, "gone"), "utf8")).toBe("a file");
  });

  test.skipIf(process.getuid?.() === 0)("a read-only folder: it does not start, and says why", async () => {
    const file = place("read-only");
    writeFileSync(file, fileOf("old"));
    chmodSync(join(folder, "read-only"), 0o500);
    expect((await start(file)).says).toMatch(/You may not write in that folder/);
    chmodSync(join(folder, "read-only"), 0o700);
    expect(typedIn(file)).toBe("old");
  });

  test("two servers on one file: the second says so and does not start", async () => {
    const file = place("two");
    const first = await start(file);
    expect((await type(first.says, "one")).status).toBe(200);
    const second = await start(file);
    expect(second.says).toMatch(
      new RegExp(`^workbook\\.json is open in another Gramwright \\(process ${first.child.pid}\\)`),
    );
    expect((await type(first.says, "still one")).status).toBe(200);
    expect(typedIn(file)).toBe("still one");
  });

  test("two servers, one by a link: the second does not start either", async () => {
    const file = place("linked-lock");
    const link = join(folder, "linked-lock", "link.json");
    writeFileSync(file, fileOf("old"));
    symlinkSync(file, link);
    await start(file);
    expect((await start(link)).says).toMatch(/is open in another Gramwright/);
  });

  test("a lock that was taken away: no save is called kept", async () => {
    const file = place("unlocked");
    const { says: at } = await start(file);
    expect((await type(at, "kept")).status).toBe(200);
    rmSync(`${file}.lock`);
    expect((await type(at, "not kept")).status).toBe(409);
    expect(typedIn(file)).toBe("kept");
  });

  test.each(["a file", "a file that is not there yet"])(
    "a link to %s stays one, and its target is written",
    async (what) => {
      const file = place(what);
      const target = join(folder, what, "real.json");
      if (what === "a file") writeFileSync(target, fileOf("old"), { mode: 0o640 });
      symlinkSync("real.json", file);
      const { says: at } = await start(file);
      expect((await type(at, "through the link")).status).toBe(200);
      expect(lstatSync(file).isSymbolicLink()).toBe(true);
      expect(lstatSync(target).isSymbolicLink()).toBe(false);
      expect(typedIn(target)).toBe("through the link");
      if (what === "a file") expect(statSync(target).mode & 0o777).toBe(0o640);
    },
  );

  test("the mode stays as it was; a new file is its owner's alone", async () => {
    const file = place("mode");
    const { says: at } = await start(file);
    await type(at, "new");
    expect(statSync(file).mode & 0o777).toBe(0o600);
    chmodSync(file, 0o644);
    await type(at, "more");
    expect(statSync(file).mode & 0o777).toBe(0o644);
  });

  test("ten dated copies; a clock that was set back writes over none", async () => {
    const file = place("copies");
    writeFileSync(file, fileOf("yesterday"));
    for (let day = 1; day <= 12; day++)
      writeFileSync(
        join(folder, "copies", `workbook.2099-01-${String(day).padStart(2, "0")}.json`),
        fileOf(`day ${day}`),
      );
    const { says: at } = await start(file);
    await type(at, "today");
    await type(at, "today, later");
    const copies = beside(file).filter((name) => /\d\.json$/.test(name));
    expect(copies).toHaveLength(10);
    expect(typedIn(join(folder, "copies", dated))).toBe("yesterday");
    expect(typedIn(join(folder, "copies", "workbook.2099-01-12.json"))).toBe("day 12");
    expect(typedIn(file)).toBe("today, later");
  });

  test("a file of an older build opens as it is, and is not set aside", async () => {
    const file = place("older");
    const old = { version: 14, sheets: [{ id: "s", name: "Rye", cells: { A1: { content: "old" } } }] };
    writeFileSync(file, JSON.stringify({ kind: "gramwright workbook 1", data: old }));
    const { says: at } = await start(file);
    const got = (await (await fetch(`${at}workbook`)).json()) as { data: unknown; says?: string };
    expect(got).toMatchObject({ data: old });
    expect(got.says).toBeUndefined();
    expect((await type(at, "new")).status).toBe(200);
    expect(JSON.parse(readFileSync(join(folder, "older", dated), "utf8")).data).toEqual(old);
  });

  test("a port that is taken: said, and neither file nor lock is left", async () => {
    const file = place("port");
    const other = createServer();
    await new Promise<void>((resolve) => other.listen(0, "127.0.0.1", resolve));
    const { port } = other.address() as { port: number };
    const { says, child } = await start(file, { port });
    expect(says).toBe(`Port ${port} is taken; give another with --port N.`);
    await ended(child, "SIGTERM");
    expect(existsSync(file)).toBe(false);
    expect(beside(file)).toEqual([]);
    other.close();
  });
});

test(`killed while saving: what was answered, or the save after it, is there and whole`, async () => {
  const file = place("often");
  const rounds = Math.max(2, Math.min(40, tries(1)));
  let told = 0;
  for (let round = 1; round <= rounds; round++) {
    const { child, says: at } = await start(file);
    expect(at).toMatch(/^http/);
    let asked = told;
    const saving = (async () => {
      for (;;) {
        asked += 1;
        const { status } = await type(at, `${asked} ${"x".repeat(2_000_000)} ${asked}`);
        expect(status).toBe(200);
        told = asked;
      }
    })().catch(() => undefined);
    // However slow the computer is, a save was answered before the kill, and the next is under way.
    const before = told;
    const answered = async () => {
      while (told === before) await new Promise((resolve) => setTimeout(resolve, 5));
      await new Promise((resolve) => setTimeout(resolve, (round * 37) % 200));
    };
    await Promise.race([answered(), saving]);
    await ended(child, "SIGKILL");
    await saving;
    if (!existsSync(file)) continue;
    const [first, , last] = typedIn(file).split(" ");
    expect(first).toBe(last);
    expect([told, asked]).toContain(Number(first));
    told = Number(first);
  }
  expect(told).toBeGreaterThan(0);
});
