import type { CustomScript } from "../engine/custom.ts";
import type { AuthMode } from "./guard.ts";
import { makePropertiesService } from "./properties.ts";
import type { Session } from "./session.ts";
import { makeSpreadsheetApp } from "./sheets.ts";
import { makeHtmlService, makeLockService, makeScriptApp } from "./ui.ts";

/** Where a script's code lives: a global scope of its own. */
export type Realm = {
  readonly Date: DateConstructor;
  /** A top-level function of the script, or undefined. */
  find(name: string): ((...args: unknown[]) => unknown) | undefined;
};

export type Script = CustomScript & {
  /** Runs a top-level function in an authorisation mode; its writes are carried out when it ends, also when it fails. */
  run(mode: AuthMode, name: string, args?: readonly unknown[]): unknown;
  /** What `google.script.run` does for a client: names that are private or unknown fail, values travel as copies. */
  serve(name: string, args: readonly unknown[]): unknown;
};

/** What Apps Script gives a script besides the language. Nothing else exists there: no timers, no URL, no process. */
export function servicesFor(session: Session): Readonly<Record<string, object>> {
  const log = (...parts: readonly unknown[]) => {
    session.shown.messages.push(`log: ${parts.map(String).join(" ")}`);
  };
  return {
    SpreadsheetApp: makeSpreadsheetApp(session),
    HtmlService: makeHtmlService(session),
    LockService: makeLockService(session),
    PropertiesService: makePropertiesService(session),
    ScriptApp: makeScriptApp(session),
    Logger: { log },
    console: { log, info: log, warn: log, error: log },
  };
}

export function makeScript(session: Session, realm: Realm): Script {
  session.Date = realm.Date;
  const { guard } = session;
  const inMode = <T>(mode: AuthMode, work: () => T): T => {
    const before = guard.mode;
    guard.mode = mode;
    try {
      return work();
    } finally {
      guard.mode = before;
    }
  };
  const run = (mode: AuthMode, name: string, args: readonly unknown[] = []): unknown => {
    const callable = realm.find(name);
    if (callable === undefined) throw new Error(`Script function not found: ${name}`);
    guard.begin();
    if (mode === "FULL") session.isEnabled = true;
    return session.engine.together(() => {
      try {
        return inMode(mode, () => callable(...args));
      } finally {
        session.flush();
      }
    });
  };
  return {
    Date: realm.Date,
    has: (name) => realm.find(name) !== undefined,
    callCustom: (name, args) => inMode("CUSTOM_FUNCTION", () => realm.find(name)?.(...args)),
    run,
    serve(name, args) {
      if (name.endsWith("_") || realm.find(name) === undefined) throw new Error(`Script function not found: ${name}`);
      return copyAcross(
        run(
          "FULL",
          name,
          args.map((one) => copyAcross(one, "argument")),
        ),
        "result",
      );
    },
  };
}

/** A value as it arrives on the other side: a plain copy. Dates and functions do not pass. */
export function copyAcross(value: unknown, as: "argument" | "result"): unknown {
  if (value === undefined) return as === "result" ? undefined : null;
  if (value === null || typeof value === "string" || typeof value === "boolean") return value;
  if (typeof value === "number") {
    if (!Number.isFinite(value)) throw new Error(`google.script.run: ${value} does not travel as ${as}`);
    return value;
  }
  if (Array.isArray(value)) return Array.from(value, (one) => copyAcross(one, as) ?? null);
  const kind = Object.prototype.toString.call(value);
  if (typeof value !== "object" || kind !== "[object Object]")
    throw new Error(`google.script.run: ${kind} does not travel as ${as}`);
  return Object.fromEntries(Object.entries(value).map(([key, one]) => [key, copyAcross(one, as)]));
}
