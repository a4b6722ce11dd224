// A server of the local workbook as a process of its own: started, asked, ended and killed for real.
import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import { chmodSync, mkdirSync, mkdtempSync, renameSync, rmSync } from "node:fs";
import { type AddressInfo, createServer } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import * as esbuild from "esbuild";

/** The system's account that owns nothing. */
const NOBODY = 65534;
const FOLDER = join("node_modules", ".cache", "gramwright");

/** The server as `npm start` runs it, without the build; a clock or an account that a test wants is set before anything else. */
const SOURCE = `
import { readFileSync } from "node:fs";
import { lockFile } from "./src/workbook/file/lock.ts";
import { targetOf } from "./src/workbook/file/write-file.ts";
import { openKeeper } from "./src/workbook/file/keeper.ts";
import { serve } from "./src/workbook/server.ts";
const { file, port, root = ".", page, account, clock } = JSON.parse(process.argv[2]);
if (clock !== undefined) {
  const Real = Date;
  const ahead = clock - Real.now();
  globalThis.Date = class extends Real {
    constructor(...given) {
      if (given.length === 0) super(Real.now() + ahead);
      else super(...given);
    }
  };
}
try {
  const pageJs = page === undefined ? "" : readFileSync(page, "utf8");
  if (account !== undefined) {
    process.setgroups([]);
    process.setgid(account);
    process.setuid(account);
  }
  const lock = lockFile(targetOf(file));
  process.once("exit", () => lock.release());
  process.once("SIGTERM", () => process.exit());
  const keeper = openKeeper(file, () => {}, lock);
  const { address } = await serve({ root, pageJs, keeper, ...(port !== undefined && { port }) });
  process.stdout.write(address);
} catch (error) {
  process.stdout.write(error.message);
  process.exit(1);
}`;

let program: Promise<string> | undefined;

/** The bundled server; every worker writes the same, each in one step. */
async function bundle(): Promise<string> {
  mkdirSync(FOLDER, { recursive: true });
  const [file, part] = [join(FOLDER, "serve-test.mjs"), join(FOLDER, `serve-test.${process.pid}.part.mjs`)];
  await esbuild.build({
    stdin: { contents: SOURCE, resolveDir: process.cwd(), loader: "js" },
    bundle: true,
    platform: "node",
    format: "esm",
    packages: "external",
    outfile: part,
  });
  renameSync(part, file);
  return file;
}

type How = {
  readonly port?: number;
  /** The server's folder and its page's script, where a browser is to open it. */
  readonly root?: string;
  readonly page?: string;
  /** The process has no more rights than anybody, also where the tests run as root. */
  readonly isNobody?: boolean;
  /** What this process takes the time for when it starts. */
  readonly clock?: Date;
  /** Of the shell, run before it: `ulimit -f 8`. */
  readonly limit?: string;
  /** A shell's lines in a mount space of its own, run before it, see `canMount`. */
  readonly mounts?: string;
};
export type Process = {
  readonly child: ChildProcess;
  /** What it says first: its address, or why it does not start. */
  readonly says: string;
  end(signal: "SIGKILL" | "SIGTERM"): Promise<void>;
};

export const isRoot = (): boolean => process.getuid?.() === 0;

/** Whether a process can be kept from writing into a folder: anybody's can, and root's where it may become somebody else. */
export function canBeNobody(): boolean {
  if (process.getuid === undefined) return false;
  return !isRoot() || spawnSync(process.execPath, ["-e", ""], { uid: NOBODY, gid: NOBODY }).status === 0;
}

const MOUNT_SPACE = ["unshare", "--user", "--map-root-user", "--mount"] as const;

/** Whether a process may have disks of its own here: only where the system lets anybody do so. */
export function canMount(): boolean {
  const [unshare, ...how] = MOUNT_SPACE;
  return spawnSync(unshare, [...how, "mount", "-t", "tmpfs", "none", tmpdir()], { stdio: "ignore" }).status === 0;
}

const running = new Set<Process>();

/** Starts a server on a file. */
export async function startServer(file: string, how: How = {}): Promise<Process> {
  program ??= bundle();
  const { port, root, page, isNobody, clock, limit, mounts } = how;
  const account = isNobody && isRoot() ? NOBODY : undefined;
  const args = [await program, JSON.stringify({ file, port, root, page, account, clock: clock?.getTime() })];
  const before = limit === undefined ? mounts : `trap '' XFSZ; ${limit}`;
  const own = [process.execPath, ...args];
  // A write over a limit would end the process by a signal; as on a full disk it is to fail instead.
  const shell = before === undefined ? own : ["bash", "-ec", `${before}; exec "$0" "$@"`, ...own];
  const [command = "", ...rest] = mounts === undefined ? shell : [...MOUNT_SPACE, ...shell];
  const child = spawn(command, rest, { stdio: ["ignore", "pipe", "ignore"] });
  return new Promise((resolve) => {
    const told = (says: string) => {
      const made = { child, says, end: (signal: NodeJS.Signals) => ended(child, signal) };
      running.add(made);
      resolve(made);
    };
    child.stdout?.once("data", (text: Buffer) => told(text.toString()));
    child.once("close", () => told("nothing"));
  });
}

/** A port that nobody has, far from those that servers of other tests look through: one that is started again gets it back. */
export function freePort(): Promise<number> {
  return new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once("error", reject);
    probe.listen(0, "127.0.0.1", () => {
      const { port } = probe.address() as AddressInfo;
      probe.close(() => resolve(port));
    });
  });
}

/** Ends every server that a test left. */
export async function endServers(): Promise<void> {
  for (const one of running) await one.end("SIGKILL");
  running.clear();
}

/** Ends this child, by its own handle. */
function ended(child: ChildProcess, signal: NodeJS.Signals): Promise<void> {
  return new Promise((resolve) => {
    if (child.exitCode !== null || child.signalCode !== null) return resolve();
    child.once("close", () => resolve());
    child.kill(signal);
  });
}

/** A folder for each test, which goes with all of them; whoever a server runs as may look into it. */
export function testFolder(name: string): { place(of: string): string; remove(): void } {
  const folder = mkdtempSync(join(tmpdir(), `gramwright-${name}-`));
  chmodSync(folder, 0o755);
  return {
    place(of) {
      const own = join(folder, of.replace(/\W+/g, "-"));
      mkdirSync(own);
      return join(own, "workbook.json");
    },
    remove: () => rmSync(folder, { recursive: true, force: true }),
  };
}
