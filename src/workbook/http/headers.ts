// What every answer of the local server tells the browser about itself.
import { randomBytes } from "node:crypto";

/** Of an answer that shows nothing: the page's scripts and data, and refusals. */
const NOTHING_ELSE = "default-src 'none'; frame-ancestors 'none'";

const shownPage = (scripts: string, framedBy: string): string =>
  [
    "default-src 'self'",
    `script-src ${scripts}`,
    "style-src 'self' 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self' data:",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    `frame-ancestors ${framedBy}`,
  ].join("; ");

/** The grid's engine compiles formulas and templates by `new Function`; what it compiles are the page's own. */
export const pagePolicy = (nonce: string): string => shownPage(`'self' 'unsafe-eval' 'nonce-${nonce}'`, "'none'");

/** The sidebar is one file with its script in it, and the workbook's page alone frames it. */
export const SIDEBAR_POLICY = shownPage("'self' 'unsafe-inline'", "'self'");

export const newNonce = (): string => randomBytes(16).toString("base64");

export function headersFor(type: string, policy: string = NOTHING_ELSE): Record<string, string> {
  return {
    "content-type": type,
    "cache-control": "no-store",
    "content-security-policy": policy,
    "cross-origin-resource-policy": "same-origin",
    "referrer-policy": "same-origin",
    "x-content-type-options": "nosniff",
  };
}

export const PLAIN = "text/plain; charset=utf-8";

/** The answer to what is no request, for the bare connection. */
export function bareRefusal(
  status: "400 Bad Request" | "408 Request Timeout" | "431 Request Header Fields Too Large",
): string {
  const says = "That is no request that can be answered here.\n";
  const lines = Object.entries({ ...headersFor(PLAIN), "content-length": String(says.length), connection: "close" });
  return `HTTP/1.1 ${status}\r\n${lines.map(([name, value]) => `${name}: ${value}\r\n`).join("")}\r\n${says}`;
}
