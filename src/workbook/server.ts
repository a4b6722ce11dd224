import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import { extname, join, normalize } from "node:path";
import type { WorkbookData } from "./engine/library.ts";
import { openWorkbook } from "./host.ts";
import type { Keeper } from "./keep.ts";
import { toXlsx } from "./xlsx/xlsx.ts";

export const FIRST_PORT = 4780;
const ADDRESS = "127.0.0.1";
const PORTS_TRIED = 20;
/** The largest workbook taken for saving, in bytes. */
const LARGEST_BODY = 50_000_000;

const TYPES: Readonly<Record<string, string>> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".xml": "text/xml; charset=utf-8",
  ".woff": "font/woff",
  ".woff2": "font/woff2",
  ".ttf": "font/ttf",
};

/** Addresses of the page and the files behind them; folders end in "/". Nothing else is served. */
const FILES: Readonly<Record<string, string>> = {
  "/": "src/workbook/page/index.html",
  "/page.css": "src/workbook/page/page.css",
  "/Code.js": "dist/Code.js",
  "/engine/owl.js": "node_modules/@odoo/owl/dist/owl.iife.min.js",
  "/engine/o_spreadsheet.js": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js",
  "/engine/o_spreadsheet.xml": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.xml",
  "/engine/o_spreadsheet.css": "node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.css",
  "/engine/bootstrap.css": "node_modules/bootstrap/dist/css/bootstrap.min.css",
  "/engine/font-awesome/": "node_modules/font-awesome/",
};

/** Gives the bench's page the google object of the workbook around it, before any of its own scripts run. */
const BENCH_SHIM = "<script>window.google = window.parent.gramwrightGoogle(window);</script>";

export type LocalServer = { readonly address: string; close(): Promise<void> };

/** Serves the workbook's page on this computer only. Takes the next port when one is taken, unless it was asked for. */
export async function serve(how: {
  readonly root: string;
  readonly pageJs: string;
  readonly port?: number;
  /** Where what is typed is kept; without it nothing is. */
  readonly keeper?: Keeper;
}): Promise<LocalServer> {
  const server = createServer((request, response) => {
    answer(how, request, response).catch((error: Error) => {
      if (!response.headersSent) response.writeHead(500, { "content-type": "text/plain; charset=utf-8" });
      response.end(error.message);
    });
  });
  const first = how.port ?? FIRST_PORT;
  const tried = how.port === undefined ? PORTS_TRIED : 1;
  for (let port = first; port < first + tried; port++) {
    if (await listens(server, port)) return opened(server, port);
  }
  throw new Error(
    how.port === undefined
      ? `The ports ${first} to ${first + tried - 1} are all taken; give a free one with --port N.`
      : `Port ${first} is taken; give another with --port N.`,
  );
}

function listens(server: Server, port: number): Promise<boolean> {
  return new Promise((resolve, reject) => {
    const failed = (error: NodeJS.ErrnoException) => {
      if (error.code === "EADDRINUSE" || error.code === "EACCES") resolve(false);
      else reject(error);
    };
    server.once("error", failed);
    server.listen(port, ADDRESS, () => {
      server.off("error", failed);
      resolve(true);
    });
  });
}

function opened(server: Server, port: number): LocalServer {
  const close = () =>
    new Promise<void>((resolve) => {
      server.close(() => resolve());
      server.closeAllConnections();
    });
  return { address: `http://${ADDRESS}:${port}/`, close };
}

type How = { readonly root: string; readonly pageJs: string; readonly keeper?: Keeper };

async function answer(
  { root, pageJs, keeper }: How,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  const send = (status: number, type: string, body: string | Buffer, more: Record<string, string> = {}) => {
    response.writeHead(status, {
      "content-type": type,
      "cache-control": "no-store",
      "x-content-type-options": "nosniff",
      ...more,
    });
    response.end(body);
  };
  const refuse = (status: number, says: string) =>
    send(status, TYPES[".html"]?.replace("html", "plain") ?? "text/plain", says);
  // Another site open in the browser must not reach this server by a name that leads here.
  const host = request.headers.host ?? "";
  if (!/^(127\.0\.0\.1|localhost):\d+$/.test(host)) return refuse(403, "This address is served to this computer only.");
  const { origin } = request.headers;
  if (request.method === "POST" && origin !== undefined && origin !== `http://${host}`)
    return refuse(403, "Saving is for the workbook's own page.");
  const path = normalize(decodeURIComponent((request.url ?? "/").split("?")[0] ?? "/")).replace(/\\/g, "/");

  if (path === "/save") {
    if (request.method !== "POST") return refuse(405, "Save by POST.");
    const data = JSON.parse(await bodyOf(request)) as WorkbookData;
    const codeJs = await readFile(join(root, "dist", "Code.js"), "utf8");
    const book = openWorkbook({ codeJs, sidebarHtml: "", data });
    const type = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";
    return send(200, type, await toXlsx(book.engine), {
      "content-disposition": 'attachment; filename="tern-quay-bakehouse.xlsx"',
    });
  }
  if (path === "/workbook" && request.method === "POST") {
    if (keeper === undefined) return refuse(404, "Nothing is kept here.");
    const data = JSON.parse(await bodyOf(request)) as WorkbookData;
    const saved = keeper.save(data, String(request.headers["x-revision"] ?? ""));
    return "stale" in saved ? refuse(409, saved.stale) : send(200, "application/json", JSON.stringify(saved));
  }
  if (request.method !== "GET" && request.method !== "HEAD") return refuse(405, "Only reading is possible here.");
  if (path === "/workbook") return send(200, "application/json", JSON.stringify(keeper?.load() ?? {}));
  if (path === "/page.js") return send(200, TYPES[".js"] ?? "", pageJs);
  if (path === "/bench/sidebar.html") {
    const html = await readFile(join(root, "dist", "sidebar.html"), "utf8");
    const at = /<head[^>]*>/i.exec(html);
    const cut = at ? at.index + at[0].length : 0;
    return send(200, TYPES[".html"] ?? "", html.slice(0, cut) + BENCH_SHIM + html.slice(cut));
  }
  const file = fileFor(path);
  if (file === undefined) return refuse(404, `There is nothing at ${path}.`);
  return send(200, TYPES[extname(file)] ?? "application/octet-stream", await readFile(join(root, file)));
}

function fileFor(path: string): string | undefined {
  const known = FILES[path];
  if (known !== undefined && !path.endsWith("/engine/font-awesome/")) return known;
  const folder = Object.keys(FILES).find(
    (prefix) => prefix.length > 1 && prefix.endsWith("/") && path.startsWith(prefix),
  );
  if (folder === undefined || !/^[\w./-]+$/.test(path) || TYPES[extname(path)] === undefined) return undefined;
  return `${FILES[folder]}${path.slice(folder.length)}`;
}

function bodyOf(request: IncomingMessage): Promise<string> {
  return new Promise((resolve, reject) => {
    const parts: Buffer[] = [];
    let size = 0;
    request.on("data", (part: Buffer) => {
      size += part.length;
      if (size > LARGEST_BODY) {
        reject(new Error("The workbook is too large to be saved."));
        request.destroy();
      } else parts.push(part);
    });
    request.on("end", () => resolve(Buffer.concat(parts).toString("utf8")));
    request.on("error", reject);
  });
}
