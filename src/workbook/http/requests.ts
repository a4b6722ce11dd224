// Which requests are answered at all, and what they bring.
import type { IncomingMessage } from "node:http";

/** A request that is not answered: its status and the sentence for whoever sent it, without a path of this computer. */
export class HttpError extends Error {
  readonly status: number;
  constructor(status: number, says: string) {
    super(says);
    this.status = status;
  }
}

/** The largest workbook taken for saving, in bytes. */
const MAX_BODY = 50_000_000;

/**
 * Another site that is open in the browser reaches this server neither by a name that leads here, nor by a link, a
 * picture, a frame or a form. Browsers say where a request comes from (Fetch Metadata, W3C); the older ones by Origin or Referer.
 */
export function mustBeOwn({ headers, socket }: IncomingMessage): string {
  const { host = "", origin, referer } = headers;
  const ownHosts = ["127.0.0.1", "localhost"].map((name) => `${name}:${socket.localPort}`);
  if (!ownHosts.includes(host)) throw new HttpError(403, "This address is served to this computer only.");
  const from = headers["sec-fetch-site"];
  const isOther =
    (from !== undefined && from !== "same-origin" && from !== "none") ||
    (origin !== undefined && origin !== `http://${host}`) ||
    (referer !== undefined && !referer.startsWith(`http://${host}/`));
  if (isOther)
    throw new HttpError(403, "This is for the workbook’s own page. Enter its address in the browser yourself.");
  return host;
}

/** The path of a request, decoded. */
export function pathOf({ url = "/" }: IncomingMessage): string {
  const [raw = "/"] = url.split("?");
  let path: string;
  try {
    path = decodeURIComponent(raw);
  } catch {
    throw new HttpError(400, "The address has a % that is no code of a character.");
  }
  if (!path.startsWith("/") || path.includes("\0")) throw new HttpError(400, "The address must begin with a slash.");
  return path;
}

/** JSON that a request brings. */
export async function jsonOf(request: IncomingMessage): Promise<unknown> {
  const type = (request.headers["content-type"] ?? "").split(";")[0]?.trim().toLowerCase();
  if (type !== "application/json") throw new HttpError(415, "A workbook is sent as application/json.");
  const text = await bodyOf(request);
  try {
    return JSON.parse(text);
  } catch {
    throw new HttpError(400, "What was sent is no JSON.");
  }
}

function bodyOf(request: IncomingMessage): Promise<string> {
  return new Promise((resolve, reject) => {
    const tooLarge = () => new HttpError(413, "The workbook is too large to be saved: 50 MB are taken at most.");
    if (Number(request.headers["content-length"] ?? 0) > MAX_BODY) return reject(tooLarge());
    const parts: Buffer[] = [];
    let size = 0;
    request.on("data", (part: Buffer) => {
      size += part.length;
      if (size > MAX_BODY) {
        parts.length = 0;
        reject(tooLarge());
      } else parts.push(part);
    });
    request.on("end", () => resolve(Buffer.concat(parts).toString("utf8")));
    // Cut off in the middle: there is nobody left to answer, and nothing is saved.
    request.on("close", () => reject(new HttpError(400, "The request was cut off.")));
    request.on("error", () => reject(new HttpError(400, "The request was cut off.")));
  });
}
