import type { Realm } from "../service/script.ts";

/** What a browser has and Apps Script has not; a script that leans on it must fail here too. */
const ABSENT = [
  "setTimeout",
  "setInterval",
  "clearTimeout",
  "clearInterval",
  "setImmediate",
  "queueMicrotask",
  "requestAnimationFrame",
  "fetch",
  "XMLHttpRequest",
  "WebSocket",
  "EventSource",
  "Worker",
  "FormData",
  "File",
  "Blob",
  "FileReader",
  "URL",
  "URLSearchParams",
  "TextEncoder",
  "TextDecoder",
  "atob",
  "btoa",
  "crypto",
  "performance",
  "structuredClone",
  "DOMException",
  "localStorage",
  "sessionStorage",
  "indexedDB",
  "navigator",
  "alert",
  "confirm",
  "prompt",
];

/** A global scope for the script in the page: a hidden frame of the same origin with the services and little else. */
export function openPageRealm(code: string, services: Readonly<Record<string, object>>, nonce: string): Realm {
  const frame = document.createElement("iframe");
  frame.hidden = true;
  frame.title = "Script";
  document.body.append(frame);
  const scope = frame.contentWindow as (Window & Record<string, unknown> & { Date: DateConstructor }) | null;
  if (!scope) throw new Error("The browser gave the script no frame");
  for (const name of ABSENT) Object.defineProperty(scope, name, { value: undefined, configurable: true });
  for (const [name, service] of Object.entries(services)) {
    Object.defineProperty(scope, name, { value: service, configurable: true });
  }
  const script = scope.document.createElement("script");
  // The page takes no script in a text but this one.
  script.nonce = nonce;
  script.textContent = code;
  let broken: string | undefined;
  scope.addEventListener("error", ({ message }) => {
    broken = message;
  });
  scope.document.body.append(script);
  if (broken !== undefined) throw new Error(`Code.js could not be read: ${broken}`);
  return {
    Date: scope.Date,
    find(name) {
      const member = Object.hasOwn(scope, name) ? scope[name] : undefined;
      return typeof member === "function" ? (member as (...args: unknown[]) => unknown) : undefined;
    },
  };
}
