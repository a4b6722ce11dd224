import { readFile } from "node:fs/promises";
import { createServer, type IncomingMessage, type Server, type ServerResponse } from "node:http";
import type { Socket } from "node:net";
import { extname, join } from "node:path";
import type { Engine } from "./engine/engine.ts";
import type { WorkbookData } from "./engine/library.ts";
import type { Keeper } from "./file/keeper.ts";
import { asWorkbook } from "./file/workbook-data.ts";
import type { Unwritable } from "./file/write-file.ts";
import { openWorkbook } from "./host.ts";
import { fileFor, TYPES } from "./http/files.ts";
import { bareRefusal, headersFor, newNonce, PLAIN, pagePolicy, SIDEBAR_POLICY } from "./http/headers.ts";
import { HttpError, jsonOf, mustBeOwn, pathOf } from "./http/requests.ts";
import { withShim } from "./page/home.ts";
import { toXlsx } from "./xlsx/xlsx.ts";

export const FIRST_PORT = 4780;
const ADDRESS = "127.0.0.1";
const PORTS_TRIED = 20;
/** A request must have arrived by then; a workbook from this computer takes less than a second. */
const MAX_REQUEST_MS = 60_000;
const MAX_HEAD_MS = 10_000;

export type LocalServer = { readonly address: string; close(): Promise<void> };

/** Serves the workbook's page on this computer only. Takes the next port when one is taken, unless it was asked for. */
export async function serve(how: {
  readonly root: string;
  readonly pageJs: string;
  readonly port?: number;
  /** Where what is typed is kept; without it nothing is. */
  readonly keeper?: Keeper;
}): Promise<LocalServer> {
  const patience = { requestTimeout: MAX_REQUEST_MS, headersTimeout: MAX_HEAD_MS, requireHostHeader: false };
  const server = createServer(patience, (request, response) => {
    answer(how, request)
      .catch(asRefusal)
      .then((answer) => send(answer, request, response));
  });
  server.on("clientError", refuseBare);
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
type Answer = { readonly status: number; readonly headers: Record<string, string>; readonly body: string | Buffer };

const XLSX = "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet";

const answerWith = (type: string, body: string | Buffer, policy?: string): Answer => ({
  status: 200,
  headers: headersFor(type, policy),
  body,
});
const json = (value: unknown): Answer => answerWith("application/json", JSON.stringify(value));

function send({ status, headers, body }: Answer, request: IncomingMessage, response: ServerResponse): void {
  // What is left of a body that is not wanted would be taken for the next request.
  if (!request.complete) headers.connection = "close";
  response.writeHead(status, headers);
  response.end(body);
  if (!request.complete) request.resume();
}

/** The sentence of a refusal; what else failed may name folders of this computer, and is told on its own screen alone. */
function asRefusal(error: Error): Answer {
  const refused = (status: number, says: string) => ({ status, headers: headersFor(PLAIN), body: says });
  if (error instanceof HttpError) return refused(error.status, error.message);
  if ((error as { isUnwritable?: boolean }).isUnwritable === true)
    return refused((error as Unwritable).code === "ENOSPC" ? 507 : 500, error.message);
  console.error(error);
  return refused(500, "The server failed at that. The window where it was started says why.");
}

function refuseBare(error: NodeJS.ErrnoException, socket: Socket): void {
  if (error.code === "ECONNRESET" || !socket.writable) return void socket.destroy();
  const status =
    error.code === "HPE_HEADER_OVERFLOW"
      ? "431 Request Header Fields Too Large"
      : error.code === "ERR_HTTP_REQUEST_TIMEOUT"
        ? "408 Request Timeout"
        : "400 Bad Request";
  socket.end(bareRefusal(status));
}

async function answer(how: How, request: IncomingMessage): Promise<Answer> {
  mustBeOwn(request);
  const path = pathOf(request);
  const { method } = request;
  if (path === "/save") {
    if (method !== "POST") throw new HttpError(405, "Save by POST.");
    return asXlsx(how, await jsonOf(request));
  }
  if (path === "/workbook" && method === "POST") return saved(how, request);
  if (method !== "GET" && method !== "HEAD") throw new HttpError(405, "Only reading is possible here.");
  return readable(how, path);
}

async function asXlsx({ root }: How, sent: unknown): Promise<Answer> {
  const data = asWorkbook(sent);
  if (data === undefined) throw new HttpError(400, "What was sent is no workbook.");
  const codeJs = await readFile(join(root, "dist", "Code.js"), "utf8");
  const answer = answerWith(XLSX, await toXlsx(engineOf(codeJs, data)));
  answer.headers["content-disposition"] = 'attachment; filename="tern-quay-bakehouse.xlsx"';
  return answer;
}

/** What looks like a workbook may still be none that the engine opens. */
function engineOf(codeJs: string, data: WorkbookData): Engine {
  try {
    return openWorkbook({ codeJs, sidebarHtml: "", data }).engine;
  } catch {
    throw new HttpError(400, "What was sent is no workbook that can be opened.");
  }
}

async function saved({ keeper }: How, request: IncomingMessage): Promise<Answer> {
  if (keeper === undefined) throw new HttpError(404, "Nothing is kept here.");
  const known = request.headers["x-revision"];
  if (typeof known !== "string") throw new HttpError(400, "The revision that the workbook follows is missing.");
  const result = keeper.save(await jsonOf(request), known);
  if ("stale" in result) throw new HttpError(409, result.stale);
  if ("unreadable" in result) throw new HttpError(400, result.unreadable);
  return json(result);
}

async function readable({ root, pageJs, keeper }: How, path: string): Promise<Answer> {
  if (path === "/workbook") return json(keeper?.load() ?? {});
  if (path === "/revision") return json(keeper === undefined ? {} : { revision: keeper.revision() });
  if (path === "/page.js") return answerWith(TYPES[".js"] ?? "", pageJs);
  if (path === "/") {
    const html = await readFile(join(root, "src/workbook/page/index.html"), "utf8");
    const nonce = newNonce();
    return answerWith(
      TYPES[".html"] ?? "",
      html.replaceAll("<script ", `<script nonce="${nonce}" `),
      pagePolicy(nonce),
    );
  }
  if (path === "/frame/sidebar.html") {
    const html = await readFile(join(root, "dist", "sidebar.html"), "utf8");
    return answerWith(TYPES[".html"] ?? "", withShim(html), SIDEBAR_POLICY);
  }
  const file = fileFor(path);
  const content = file === undefined ? undefined : await ifThere(join(root, file));
  if (content === undefined) throw new HttpError(404, "There is nothing at this address.");
  return answerWith(TYPES[extname(path)] ?? "application/octet-stream", content);
}

async function ifThere(file: string): Promise<Buffer | undefined> {
  try {
    return await readFile(file);
  } catch (error) {
    if (["ENOENT", "ENOTDIR", "EISDIR"].includes((error as NodeJS.ErrnoException).code ?? "")) return undefined;
    throw error;
  }
}
