// What anything on this computer or any open web page may send to the local server, and what it gets.
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openKeeper } from "../../src/workbook/file/keeper.ts";
import { type LocalServer, serve } from "../../src/workbook/server.ts";
import { builtRoot } from "./local-page.ts";

let folder = "";
let root = "";
let server: LocalServer;
let opened = 0;
const path = () => join(folder, "workbook.json");
const port = () => Number(new URL(server.address).port);
const sheet = { id: "s", name: "Rye", colNumber: 3, rowNumber: 3, cells: { A1: "typed" } };
const workbook = (cells: Record<string, string> = { A1: "typed" }) => ({
  version: "19.3",
  sheets: [{ ...sheet, cells }],
});
const good = () => readFileSync(path(), "utf8");

beforeAll(async () => {
  root = await builtRoot();
  folder = mkdtempSync(join(tmpdir(), "gramwright-requests-"));
  writeFileSync(path(), JSON.stringify({ kind: "gramwright workbook 1", data: workbook() }));
  server = await serve({
    root,
    pageJs: "",
    keeper: openKeeper(path(), () => {
      opened += 1;
    }),
  });
});
afterAll(async () => {
  await server.close();
  for (const one of [folder, root]) rmSync(one, { recursive: true, force: true });
});

type Sent = {
  readonly method?: string;
  readonly path?: string;
  readonly host?: string | null;
  readonly headers?: Readonly<Record<string, string>>;
  readonly body?: string;
};
type Got = { readonly status: number; readonly headers: ReadonlyMap<string, string>; readonly body: string };

/** The very bytes, as a browser would never send them; `pieces` go out one after the other. */
function raw(pieces: readonly string[]): Promise<Got> {
  return new Promise((resolve, reject) => {
    const socket = connect(port(), "127.0.0.1");
    let text = "";
    socket.setEncoding("utf8");
    socket.on("data", (part: string) => {
      text += part;
    });
    socket.on("error", (error: NodeJS.ErrnoException) => (text === "" ? reject(error) : undefined));
    socket.on("close", () => {
      const [head = "", ...rest] = text.split("\r\n\r\n");
      const [first = "", ...lines] = head.split("\r\n");
      const headers = new Map(
        lines.map(
          (line) => [line.slice(0, line.indexOf(":")).toLowerCase(), line.slice(line.indexOf(":") + 2)] as const,
        ),
      );
      resolve({ status: Number(first.split(" ")[1] ?? 0), headers, body: rest.join("\r\n\r\n") });
    });
    const next = (at: number) => {
      const piece = pieces[at];
      if (piece === undefined) return;
      socket.write(piece);
      setTimeout(() => next(at + 1), 5);
    };
    next(0);
  });
}

function ask({ method = "GET", path: at = "/", host, headers = {}, body }: Sent): Promise<Got> {
  const own = host === null ? [] : [`Host: ${(host ?? "127.0.0.1:PORT").replace("PORT", String(port()))}`];
  const more = Object.entries(headers).map(([name, value]) => `${name}: ${value.replace("PORT", String(port()))}`);
  const size = body === undefined ? [] : [`Content-Length: ${Buffer.byteLength(body)}`];
  const lines = [`${method} ${at} HTTP/1.1`, ...own, "Connection: close", ...more, ...size];
  return raw([`${lines.join("\r\n")}\r\n\r\n${body ?? ""}`]);
}

/** What holds of every answer. */
function mustBeSafe({ headers, body, status }: Got): void {
  expect(headers.get("x-content-type-options")).toBe("nosniff");
  expect(headers.get("cross-origin-resource-policy")).toBe("same-origin");
  expect(headers.get("content-security-policy")).toMatch(
    /default-src '(?:none|self)'.*frame-ancestors '(?:none|self)'/,
  );
  if (status < 400) return;
  expect(body).not.toContain(folder);
  expect(body).not.toContain(root);
  expect(body).not.toMatch(/node_modules|\.ts\b|\bat \w+ \(|ENOENT|\/tmp\//);
}

const JSON_TYPE = { "Content-Type": "application/json" };
const SITES = [
  ["another site's", { "Sec-Fetch-Site": "cross-site" }],
  ["a neighbour port's", { "Sec-Fetch-Site": "same-site" }],
  ["another origin's", { Origin: "http://bakehouse.example" }],
  ["a hidden origin's", { Origin: "null" }],
  ["another port's", { Origin: "http://127.0.0.1:1" }],
  ["the other name's", { Origin: "http://localhost:PORT" }],
  ["an old browser's link", { Referer: "http://bakehouse.example/links.html" }],
  ["a name that only begins alike", { Referer: "http://127.0.0.1:PORT.example/" }],
] as const;
const METHODS = ["GET", "HEAD", "POST", "PUT", "OPTIONS"] as const;

describe("from elsewhere", () => {
  const cases = SITES.flatMap(([name, headers]) => METHODS.map((method) => [method, name, headers] as const));
  test.each(cases)("%s by %s page is refused", async (method, _name, headers) => {
    const before = good();
    for (const at of ["/workbook", "/"]) {
      const got = await ask({
        method,
        path: at,
        headers: { ...headers, ...JSON_TYPE },
        body: JSON.stringify(workbook({})),
      });
      expect(got.status).toBe(403);
      mustBeSafe(got);
    }
    expect(good()).toBe(before);
  });
});

const STATUS: readonly (readonly [string, number, Sent])[] = [
  ...[
    "bakehouse.example",
    "bakehouse.example:PORT",
    "127.0.0.1",
    "127.0.0.1:1",
    "127.0.0.1.example:PORT",
    "[::1]:PORT",
    "0.0.0.0:PORT",
    "localhost.:PORT",
    "2130706433:PORT",
    "",
  ].map((host) => [`host ${host}`, 403, { host }] as const),
  ["no host", 403, { host: null }],
  ["the other name", 200, { host: "localhost:PORT" }],
  ["its own origin", 200, { headers: { Origin: "http://127.0.0.1:PORT", "Sec-Fetch-Site": "same-origin" } }],
  ["an address that was typed", 200, { headers: { "Sec-Fetch-Site": "none" } }],
  ["its own referer", 200, { headers: { Referer: "http://127.0.0.1:PORT/" } }],
  ...["PUT", "DELETE", "PATCH", "OPTIONS", "TRACE", "PROPFIND"].map((method) => [method, 405, { method }] as const),
  ["POST to the page", 405, { method: "POST", body: "x" }],
  ["reading what is saved by POST", 405, { path: "/save" }],
  ["HEAD", 200, { method: "HEAD" }],
  ["a method that is none", 400, { method: "BAKE" }],
  ...[
    "/package.json",
    "/dist/Code.js",
    "/dist/",
    "/src/workbook/server.ts",
    "/.git/config",
    "/workbook.json",
    "/workbook/",
    "/Workbook",
    "/engine/",
    "/engine/font-awesome",
    "/engine/font-awesome/",
    "/engine/font-awesome/css/none.css",
    "/engine/font-awesome/../../package.json",
    "/engine/font-awesome/%2e%2e/bootstrap/dist/css/bootstrap.css",
    "/engine/font-awesome/..%2f..%2fbootstrap/dist/css/bootstrap.css",
    "/engine/font-awesome/css%5c..%5cx.css",
    "//etc/passwd",
    "/../../../../etc/passwd",
    "/constructor",
    "/__proto__",
    "/toString",
    "/frame/other.html",
    "/frame/../page.js",
  ].map((at) => [at, 404, { path: at }] as const),
  ["a broken code in the address", 400, { path: "/%" }],
  ["another broken code", 400, { path: "/%E0%A4%A" }],
  ["a zero in the address", 400, { path: "/page.css%00.html" }],
  ["a whole address", 400, { path: "http://bakehouse.example/" }],
  ["a star", 400, { method: "OPTIONS", path: "*" }],
  ["a question behind the path", 200, { path: "/page.css?v=1" }],
  ["a long address", 404, { path: `/${"x".repeat(4000)}` }],
  ["a head that is too large", 431, { headers: { Cookie: "x".repeat(40_000) } }],
  ["cookies of another program", 200, { headers: { Cookie: "a=b" } }],
  ["the file's mark", 200, { path: "/revision" }],
];

describe("a request", () => {
  test.each(STATUS)("with %s is answered %i", async (_name, status, sent) => {
    const got = await ask(sent);
    expect(got.status).toBe(status);
    mustBeSafe(got);
  });
});

const post = (body: string | undefined, headers: Readonly<Record<string, string>> = JSON_TYPE): Sent => ({
  method: "POST",
  path: "/workbook",
  headers: { "X-Revision": "x", ...headers },
  ...(body === undefined ? {} : { body }),
});
const data = (more: object) => JSON.stringify({ ...workbook(), ...more });
const BODIES: readonly (readonly [string, number, Sent])[] = [
  ["nothing", 400, post("")],
  ["no JSON", 400, post("flour")],
  ["half of it", 400, post('{"version":')],
  ["null", 400, post("null")],
  ["a list", 400, post("[]")],
  ["a number", 400, post("5")],
  ["an empty object", 400, post("{}")],
  ["no sheets", 400, post(data({ sheets: [] }))],
  ["sheets that are none", 400, post(data({ sheets: [5] }))],
  ["a sheet without a name", 400, post(data({ sheets: [{ ...sheet, name: "" }] }))],
  ["a sheet of no columns", 400, post(data({ sheets: [{ ...sheet, colNumber: 0 }] }))],
  ["cells that are no texts", 400, post(data({ sheets: [{ ...sheet, cells: { A1: {} } }] }))],
  ["cells at no address", 400, post(data({ sheets: [{ ...sheet, cells: { flour: "1" } }] }))],
  ["two sheets of one name", 400, post(data({ sheets: [sheet, { ...sheet, id: "t", name: "RYE" }] }))],
  ["no version", 400, post(JSON.stringify({ sheets: [sheet] }))],
  ["a form", 415, post("a=b", { "Content-Type": "application/x-www-form-urlencoded" })],
  ["plain text, as a page may send it unasked", 415, post(data({}), { "Content-Type": "text/plain" })],
  ["no type", 415, post(data({}), {})],
  ["an old revision", 409, post(data({}))],
  ["a size that is too large", 413, post(undefined, { ...JSON_TYPE, "Content-Length": "60000000" })],
];

describe("a save", () => {
  test.each(BODIES)("of %s is answered %i, and the file stays", async (_name, status, sent) => {
    const before = good();
    const got = await ask(sent);
    expect(got.status).toBe(status);
    mustBeSafe(got);
    expect(good()).toBe(before);
  });

  test("without a revision is refused, and so is an .xlsx of what is no workbook", async () => {
    const before = good();
    expect((await ask({ method: "POST", path: "/workbook", headers: JSON_TYPE, body: data({}) })).status).toBe(400);
    for (const body of ["{}", "flour", data({ sheets: [{ ...sheet, merges: ["nowhere"], figures: 5 }] })])
      expect((await ask({ method: "POST", path: "/save", headers: JSON_TYPE, body })).status).toBe(400);
    expect(good()).toBe(before);
  });

  test("that follows what is there is in the file when it is answered, also where it comes byte by byte", async () => {
    const { revision } = JSON.parse(
      (await ask({ path: "/revision" })).body.replace(/^[\da-f]+\r\n|\r\n0\r\n\r\n$/g, ""),
    ) as { revision: string };
    const body = JSON.stringify(workbook({ A1: "slow" }));
    const head = `POST /workbook HTTP/1.1\r\nHost: 127.0.0.1:${port()}\r\nConnection: close\r\nContent-Type: application/json\r\nX-Revision: ${revision}\r\nContent-Length: ${body.length}\r\n\r\n`;
    const got = await raw([...(head.match(/[\s\S]{1,20}/g) ?? []), ...body]);
    expect(got.status).toBe(200);
    expect(JSON.parse(good()).data.sheets[0].cells).toEqual({ A1: "slow" });
  });

  test("that is cut off changes nothing", async () => {
    const before = good();
    const { revision } = openKeeper(path(), () => {});
    await new Promise<void>((resolve) => {
      const socket = connect(port(), "127.0.0.1", () => {
        socket.write(
          `POST /workbook HTTP/1.1\r\nHost: 127.0.0.1:${port()}\r\nContent-Type: application/json\r\nX-Revision: ${revision()}\r\nContent-Length: 500\r\n\r\n${data({}).slice(0, 40)}`,
        );
        setTimeout(() => {
          socket.destroy();
          resolve();
        }, 50);
      });
    });
    expect((await ask({ path: "/workbook" })).status).toBe(200);
    expect(good()).toBe(before);
  });
});

test("the workbook is opened once, however often it is asked for", async () => {
  opened = 0;
  await Promise.all(Array.from({ length: 50 }, () => ask({ path: "/workbook" })));
  expect(opened).toBeLessThanOrEqual(1);
});

test("only the page may compile text, and only the page may frame the sidebar", async () => {
  const policy = async (at: string) => (await ask({ path: at })).headers.get("content-security-policy") ?? "";
  expect(await policy("/")).toMatch(/script-src 'self' 'unsafe-eval' 'nonce-[\w+/=]{20,}';.*frame-ancestors 'none'/);
  expect(await policy("/")).not.toBe(await policy("/"));
  expect(await policy("/frame/sidebar.html")).toMatch(/frame-ancestors 'self'/);
  for (const at of ["/frame/sidebar.html", "/page.js", "/workbook", "/nowhere"])
    expect(await policy(at)).not.toContain("unsafe-eval");
});

test("no fewer than a hundred kinds of request were sent", () => {
  expect(SITES.length * METHODS.length + STATUS.length + BODIES.length).toBeGreaterThanOrEqual(100);
});
