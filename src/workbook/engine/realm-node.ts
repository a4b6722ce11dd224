import { createContext, runInContext } from "node:vm";
import type { Realm } from "../service/script.ts";

/** A fresh global scope in Node that has the language and the given services and nothing else. */
export function openNodeRealm(code: string, services: Readonly<Record<string, object>>): Realm {
  const context = createContext({ ...services });
  runInContext(code, context, { filename: "Code.js" });
  return {
    Date: runInContext("Date", context) as DateConstructor,
    find(name) {
      // A top-level function is a property of the global object; a class or a const is not, as in Apps Script.
      const value = Object.hasOwn(context, name) ? context[name] : undefined;
      return typeof value === "function" ? value : undefined;
    },
  };
}
