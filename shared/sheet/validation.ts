import type { Unit } from "./model.ts";

export type Validation =
  | { readonly is: "list"; readonly values: readonly string[]; readonly help: string }
  | { readonly is: "between"; readonly least: number; readonly most: number; readonly help: string };

/** What may be typed into a cell of this unit; null where anything may. */
export function validation(unit: Unit, choices: readonly string[] | undefined): Validation | null {
  if (choices) return { is: "list", values: choices, help: `Choose one: ${choices.join(", ")}.` };
  switch (unit) {
    case "text":
    case "date":
      return null;
    case "percent":
      return { is: "between", least: 0, most: 1000, help: "A percentage of the flour, such as 65%." };
    case "share":
      return { is: "between", least: 0, most: 0.5, help: "A share such as 12%; a bare 12 would be 1200 %." };
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
