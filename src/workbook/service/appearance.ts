import type { Zone } from "../engine/library.ts";
import { keptFormat } from "../engine/patches/graded-formats.ts";
import { columnsOf, type Place, rowsOf } from "../engine/places.ts";
import type { Command } from "../engine/plugins.ts";
import { checkedGrid, eachRun } from "./checked-grid.ts";
import { addValidation, colour, type ValidationRule, validationOf } from "./rules.ts";
import type { Session } from "./session.ts";
import { textStyleOf } from "./text-style.ts";

type Style = Readonly<Record<string, unknown>>;
type Appearance = (value: never, session: Session) => { readonly style?: Style; readonly format?: string };

const oneOf = <T extends string>(by: string, choice: string, allowed: Readonly<Record<string, T>>): T => {
  const allowedValue = allowed[choice];
  if (allowedValue === undefined) throw new Error(`${by} takes ${Object.keys(allowed).join(", ")}, not ${choice}`);
  return allowedValue;
};

export const WRAPS = { WRAP: "wrap", OVERFLOW: "overflow", CLIP: "clip" } as const;
export const BORDERS = {
  SOLID: "thin",
  SOLID_MEDIUM: "medium",
  SOLID_THICK: "thick",
  DASHED: "dashed",
  DOTTED: "dotted",
} as const;

/** Setters of one value per cell. The plural name takes a grid of them. */
const APPEARANCES: Readonly<Record<string, { readonly plural: string | undefined; readonly appearance: Appearance }>> =
  {
    setBackground: {
      plural: "setBackgrounds",
      appearance: (value: string | null) => ({ style: { fillColor: colour(value, "setBackground") } }),
    },
    setFontColor: {
      plural: "setFontColors",
      appearance: (value: string | null) => ({ style: { textColor: colour(value, "setFontColor") } }),
    },
    setFontWeight: {
      plural: "setFontWeights",
      appearance: (value: string) => ({
        style: { bold: oneOf("setFontWeight", value, { bold: "1", normal: "0" }) === "1" },
      }),
    },
    setFontStyle: {
      plural: "setFontStyles",
      appearance: (value: string) => ({
        style: { italic: oneOf("setFontStyle", value, { italic: "1", normal: "0" }) === "1" },
      }),
    },
    setFontSize: {
      plural: "setFontSizes",
      appearance: (value: number) => {
        if (!Number.isInteger(value) || value < 6 || value > 96)
          throw new Error(`setFontSize: ${value} is no font size`);
        return { style: { fontSize: value } };
      },
    },
    setFontFamily: {
      plural: "setFontFamilies",
      appearance: (value: string) => ({ style: { fontFamily: String(value) } }),
    },
    setHorizontalAlignment: {
      plural: "setHorizontalAlignments",
      appearance: (value: string) => {
        const align = oneOf("setHorizontalAlignment", value, {
          left: "left",
          center: "center",
          right: "right",
          normal: "",
        });
        return { style: { align: align === "" ? undefined : align } };
      },
    },
    setVerticalAlignment: {
      plural: "setVerticalAlignments",
      appearance: (value: string) => ({
        style: {
          verticalAlign: oneOf("setVerticalAlignment", value, { top: "top", middle: "middle", bottom: "bottom" }),
        },
      }),
    },
    setWrap: {
      plural: "setWraps",
      appearance: (value: boolean) => ({ style: { wrapping: value ? "wrap" : "overflow" } }),
    },
    setWrapStrategy: {
      plural: "setWrapStrategies",
      appearance: (value: string) => ({ style: { wrapping: oneOf("setWrapStrategy", value, WRAPS) } }),
    },
    setTextStyle: { plural: "setTextStyles", appearance: (value: object) => ({ style: textStyleOf(value) }) },
    setNumberFormat: {
      plural: "setNumberFormats",
      appearance: (value: string, session) => ({ format: checkedFormat(value, session) }),
    },
  };

/** Number formats are always written the US way. The engine shows neither conditions in brackets nor exponents. */
function checkedFormat(format: string, session: Session): string {
  if (typeof format !== "string") throw new Error(`setNumberFormat takes a text, not ${String(format)}`);
  if (format === "" || format === "General") return "";
  if (format === "@") return format;
  const engineFormat = keptFormat(format);
  if (engineFormat !== format) return engineFormat;
  try {
    if (format.includes("[")) throw new Error("brackets");
    session.engine.library.helpers.parseFormat(format);
  } catch {
    throw new Error(`The number format ${format} cannot be shown by the workbook`);
  }
  return format;
}

type Setter = (...args: never[]) => void;

/** The setters of looks for a list of ranges, each under its name; grids only make sense for one range. */
export function appearanceSetters(session: Session, places: readonly Place[]): Record<string, Setter> {
  const setters: Record<string, Setter> = {};
  for (const [name, { plural, appearance }] of Object.entries(APPEARANCES)) {
    setters[name] = (value: never) => {
      for (const { sheetId, zone } of places) paint(session, sheetId, [zone], appearance(value, session));
    };
    const only = places[0];
    if (plural !== undefined && places.length === 1 && only) {
      setters[plural] = (grid: never) =>
        eachRun(grid, only.zone, (value, zones) =>
          paint(session, only.sheetId, zones, appearance(value as never, session)),
        );
    }
  }
  setters.setBorder = (...args: never[]) => {
    for (const place of places) session.write(...borders(place, args));
  };
  return setters;
}

function paint(session: Session, sheetId: string, target: readonly Zone[], appearance: ReturnType<Appearance>): void {
  if (appearance.format !== undefined) {
    for (const { left, top, right, bottom } of target) {
      for (let row = top; row <= bottom; row++) {
        for (let col = left; col <= right; col++) session.noteFormat({ sheetId, col, row }, appearance.format);
      }
    }
  }
  session.write({ type: "SET_FORMATTING", payload: { sheetId, target, ...appearance } });
}

function borders({ sheetId, zone }: Place, args: readonly unknown[]): Command[] {
  const [top, left, bottom, right, vertical, horizontal, tint = "#000000", style = "SOLID"] = args as (
    | boolean
    | null
    | string
  )[];
  if (args.length < 6) throw new Error("setBorder takes top, left, bottom, right, vertical and horizontal");
  const drawn = oneOf("setBorder", String(style ?? "SOLID"), BORDERS);
  const wanted = { top, left, bottom, right, v: vertical, h: horizontal };
  return Object.entries(wanted).flatMap(([position, on]) => {
    if (on === null || on === undefined) return [];
    if ((position === "v" && columnsOf(zone) === 1) || (position === "h" && rowsOf(zone) === 1)) return [];
    const border = { position, color: on === true ? colour(tint as string, "setBorder") : "", style: drawn };
    return [{ type: "SET_ZONE_BORDERS", payload: { sheetId, target: [zone], border } }];
  });
}

/** setDataValidation(s): cells with equal rules share one of the engine, so that a row put in between has it too. */
export function validate(session: Session, { sheetId, zone }: Place, grid: unknown): void {
  const texts = checkedGrid(grid, zone).map((row) =>
    row.map((rule) => (rule === null ? null : JSON.stringify(validationOf(rule as object)))),
  );
  const getter = "getValidationRuleForCell";
  eachRun(texts, zone, (text, zones) => {
    if (text !== null) session.write(addValidation(sheetId, zones, JSON.parse(String(text)) as ValidationRule));
    else if (zones.some(({ left, top }) => session.get<object | undefined>(getter, { sheetId, col: left, row: top }))) {
      throw new Error("Taking away a data validation is not in the stand-in");
    }
  });
}
