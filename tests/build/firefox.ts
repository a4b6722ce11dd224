// Firefox by its own protocol (WebDriver BiDi, W3C): the system's browser, which the driver of the other tests does not know as it is.
import { type ChildProcess, spawn } from "node:child_process";
import { existsSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";

const PLACES = ["/usr/bin/firefox-esr", "/usr/bin/firefox", "/Applications/Firefox.app/Contents/MacOS/firefox"];

/** A Firefox, or undefined; GRAMWRIGHT_FIREFOX names one that is elsewhere. */
export const findFirefox = (): string | undefined =>
  [process.env.GRAMWRIGHT_FIREFOX ?? "", ...PLACES].find((path) => path !== "" && existsSync(path));

type Socket = {
  send(text: string): void;
  close(): void;
  onmessage: ((event: { data: unknown }) => void) | null;
  onopen: (() => void) | null;
  onerror: ((event: unknown) => void) | null;
};
type Answer = {
  id?: number;
  type: string;
  method?: string;
  result?: Record<string, unknown>;
  message?: string;
  params?: unknown;
};

/** Node's own where it has one, else the one that a package of the tests brings. */
const SocketOf = (): (new (url: string) => Socket) =>
  ((globalThis as { WebSocket?: unknown }).WebSocket as never) ?? createRequire(import.meta.url)("ws");

export type FirefoxTab = {
  goTo(url: string): Promise<void>;
  /** What an expression gives in the page, a promise's own value. */
  evaluate<T>(expression: string): Promise<T>;
  /** Waits until an expression holds. */
  until(expression: string, milliseconds?: number): Promise<void>;
  /** Presses a key with Ctrl. */
  control(key: string): Promise<void>;
  close(): Promise<void>;
};
export type Firefox = { tab(): Promise<FirefoxTab>; readonly asked: string[]; close(): Promise<void> };

export async function openFirefox(path: string): Promise<Firefox> {
  const profile = mkdtempSync(join(tmpdir(), "gramwright-firefox-"));
  // As a person has it: driven from outside, Firefox would let all files of the disk share what they store.
  writeFileSync(
    join(profile, "user.js"),
    'user_pref("remote.prefs.recommended", false);\nuser_pref("security.fileuri.strict_origin_policy", true);\n',
  );
  const env = { ...process.env, HOME: profile, MOZ_HEADLESS: "1" };
  const child = spawn(path, ["--headless", "--no-remote", "--profile", profile, "--remote-debugging-port", "0"], {
    env,
  });
  const send = await connected(`${await addressOf(child)}/session`);
  await send("session.new", { capabilities: {} });
  await send("session.subscribe", { events: ["network.beforeRequestSent"] });
  return {
    asked: send.asked,
    tab: async () => tabOf(send, String((await send("browsingContext.create", { type: "tab" })).context)),
    async close() {
      const ended = new Promise((resolve) => child.once("exit", resolve));
      await send("browser.close", {}).catch(() => child.kill());
      await ended;
      rmSync(profile, { recursive: true, force: true, maxRetries: 5 });
    },
  };
}

function addressOf(child: ChildProcess): Promise<string> {
  return new Promise((resolve, reject) => {
    let said = "";
    child.stderr?.on("data", (part: Buffer) => {
      said += part.toString();
      const address = /WebDriver BiDi listening on (ws:\/\/\S+)/.exec(said)?.[1];
      if (address !== undefined) resolve(address);
    });
    child.once("exit", () => reject(new Error(`Firefox ended: ${said.slice(-500)}`)));
  });
}

type Send = ((method: string, params: object) => Promise<Record<string, unknown>>) & { readonly asked: string[] };

async function connected(url: string): Promise<Send> {
  const Own = SocketOf();
  const socket = new Own(url);
  await new Promise<void>((resolve, reject) => {
    socket.onopen = () => resolve();
    socket.onerror = reject;
  });
  const waiting = new Map<number, { resolve(value: Record<string, unknown>): void; reject(error: Error): void }>();
  const asked: string[] = [];
  socket.onmessage = ({ data }) => {
    const answer = JSON.parse(String(data)) as Answer;
    if (answer.method === "network.beforeRequestSent")
      asked.push((answer.params as { request: { url: string } }).request.url);
    const one = waiting.get(answer.id ?? -1);
    if (one === undefined) return;
    waiting.delete(answer.id ?? -1);
    if (answer.type === "success") one.resolve(answer.result ?? {});
    else one.reject(new Error(answer.message));
  };
  let last = 0;
  const send = (method: string, params: object) =>
    new Promise<Record<string, unknown>>((resolve, reject) => {
      last += 1;
      waiting.set(last, { resolve, reject });
      socket.send(JSON.stringify({ id: last, method, params }));
    });
  return Object.assign(send, { asked });
}

function tabOf(send: Send, context: string): FirefoxTab {
  const evaluate = async <T>(expression: string): Promise<T> => {
    const answer = await send("script.evaluate", {
      // Texts alone travel as they are.
      expression: `(async () => JSON.stringify((await (${expression})) ?? null))()`,
      target: { context },
      awaitPromise: true,
    });
    const { result, exceptionDetails } = answer as { result?: { value?: string }; exceptionDetails?: { text: string } };
    if (exceptionDetails !== undefined) throw new Error(`${exceptionDetails.text} in ${expression}`);
    return JSON.parse(result?.value ?? "null") as T;
  };
  return {
    evaluate,
    goTo: async (url) => void (await send("browsingContext.navigate", { context, url, wait: "complete" })),
    async until(expression, milliseconds = 120_000) {
      for (const end = Date.now() + milliseconds; Date.now() < end; ) {
        if (await evaluate<boolean>(expression)) return;
        await new Promise((resolve) => setTimeout(resolve, 200));
      }
      throw new Error(`It did not come to hold: ${expression}`);
    },
    control: async (key) =>
      void (await send("input.performActions", {
        context,
        actions: [
          {
            type: "key",
            id: "keys",
            actions: [
              { type: "keyDown", value: "\uE009" },
              { type: "keyDown", value: key },
              { type: "keyUp", value: key },
              { type: "keyUp", value: "\uE009" },
            ],
          },
        ],
      })),
    close: async () => void (await send("browsingContext.close", { context })),
  };
}
