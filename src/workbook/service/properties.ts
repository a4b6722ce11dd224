import { strict } from "./guard.ts";
import type { Session } from "./session.ts";

/** No text of the document's properties is longer. */
const MAX_BYTES = 9 * 1024;

/** PropertiesService: texts that a script keeps with the document, out of people's sight. */
export function makePropertiesService({ guard, properties }: Session): object {
  const open = () => {
    if (guard.mode === "NONE") guard.forbid("PropertiesService.getDocumentProperties");
    return store;
  };
  const store: object = strict("Properties", {
    getProperty: (key: string) => properties.get(String(key)) ?? null,
    setProperty: (key: string, value: unknown) => {
      if (typeof value !== "string") throw new Error("setProperty: a property is a text");
      if (value.length > MAX_BYTES) throw new Error("Argument too large: value");
      if (guard.mode === "CUSTOM_FUNCTION") guard.forbid("Properties.setProperty");
      properties.set(String(key), value);
      return store;
    },
    deleteProperty: (key: string) => {
      if (guard.mode === "CUSTOM_FUNCTION") guard.forbid("Properties.deleteProperty");
      properties.delete(String(key));
      return store;
    },
  });
  return strict("PropertiesService", { getDocumentProperties: open });
}
