// What a build says of sheets that it left in the workbook, or may have left.
import { Refusal } from "../base/refusal.ts";

const LEFT_OVER = "sheet left over";

/** A sheet that can be neither finished nor removed. */
export const halfMade = (sheet: string): string =>
  `The half-made sheet “${sheet}” is left: delete it, then build again.`;

/** Sheets that the service may have added without saying so; "" for none. */
export function emptySheets(names: readonly string[]): string {
  if (names.length === 0) return "";
  const quotedNames = names.map((name) => `“${name}”`).join(" and ");
  if (names.length > 1)
    return `Empty sheets ${quotedNames} may be left: delete them, unless another person added them.`;
  return `An empty sheet ${quotedNames} may be left: delete it, unless another person added it.`;
}

/** Refuses where a sheet is left, or may be. */
export const refuseWithLeftOver = (says: string): never => {
  throw new Refusal([{ reason: LEFT_OVER, says }]);
};
/** Whether that is why something was refused. */
export const isLeftOver = (reason: string | undefined): boolean => reason === LEFT_OVER;
