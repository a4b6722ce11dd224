import { holds } from "./layout.ts";
import type { Bounds, CellModel, Options, Unit } from "./model.ts";

/** `isStrict`: what does not fit is not taken; otherwise it is marked. */
export type Validation =
  | { readonly is: "list"; readonly values: readonly string[]; readonly help: string; readonly isStrict?: true }
  | {
      readonly is: "between";
      readonly least: number;
      readonly most: number;
      readonly help: string;
      readonly isStrict?: true;
    }
  | { readonly is: "nothing"; readonly help: string };

/** The bounds for these units; null where none are said. */
export function boundsOf(bounds: Bounds | undefined, options: Options): readonly [number, number] | null {
  if (bounds === undefined) return null;
  const [first] = bounds;
  if (typeof first === "number") return bounds as readonly [number, number];
  for (const one of bounds) if (typeof one === "object" && holds(one.when, options)) return [one.least, one.most];
  return null;
}

/** What may be typed into a cell or a column; null where anything may. A field with bounds of its own takes nothing else. */
export function validationOf(
  { unit = "text", bounds, hint }: Pick<CellModel, "unit" | "bounds" | "hint">,
  choices: readonly string[] | undefined,
  options: Options,
): Validation | null {
  const limits = boundsOf(bounds, options);
  if (limits === null) return validation(unit, choices);
  const [least, most] = limits;
  const help = [hint, asked(unit, least, most)].filter((one) => one !== undefined).join(" ");
  return { is: "between", least, most, help, isStrict: true };
}

function asked(unit: Unit, least: number, most: number): string {
  if (unit === "percent") return "Enter a percentage of the flour, such as 65 %.";
  if (unit === "share" || unit === "rate") return `Enter a number from ${100 * least} % to ${100 * most} %.`;
  return `Enter a number from ${inThousands(least)} to ${inThousands(most)}.`;
}

/** Thousands set apart by a space that no line breaks at. */
const inThousands = (value: number): string => String(value).replace(/\B(?=(\d{3})+$)/g, "\u00a0");

/** What may be typed into a cell of this unit; null where anything may. */
function validation(unit: Unit, choices: readonly string[] | undefined): Validation | null {
  if (choices) return { is: "list", values: choices, help: `Choose one: ${choices.join(", ")}.` };
  switch (unit) {
    case "text":
    case "date":
      return null;
    case "percent":
      return { is: "between", least: 0, most: 1000, help: "A percentage of the flour, such as 65%." };
    case "share":
      return {
        is: "between",
        least: 0,
        most: 0.5,
        help: "A percentage such as 12%. Enter the % sign: 12 alone means 1200 %.",
      };
    case "temperature":
      return { is: "between", least: -40, most: 250, help: "A temperature as a number, such as 24." };
    case "factor":
      return { is: "between", least: -150, most: 150, help: "A friction factor as a number, such as 14." };
    case "time":
      return { is: "between", least: 0, most: 1, help: "A time of day, such as 06:30." };
    case "rate":
      return { is: "between", least: 0, most: 10, help: "A share such as 30%." };
    default:
      return { is: "between", least: 0, most: 1e9, help: "A number, 0 or more." };
  }
}
