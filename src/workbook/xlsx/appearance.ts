import type { Border, BorderStyle, Borders, Font, Style } from "exceljs";

/** A cell's look as the engine keeps it, with the one part that scripts add. */
export type Appearance = {
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strikethrough?: boolean;
  readonly align?: "left" | "center" | "right";
  readonly verticalAlign?: "top" | "middle" | "bottom";
  readonly wrapping?: "wrap" | "overflow" | "clip";
  readonly fillColor?: string;
  readonly textColor?: string;
  readonly fontSize?: number;
  readonly fontFamily?: string;
};
type Side = { readonly style: string; readonly color: string };
export type Lines = { readonly [side in "top" | "left" | "bottom" | "right"]?: Side };

/** What a sheet uses where nothing is set. */
const FONT = { name: "Arial", size: 10 };

/** #rgb or #rrggbb as the file format writes it: opaque ARGB. */
export function argb(colour: string): { argb: string } {
  const hex = colour.replace("#", "");
  const long = hex.length === 3 ? hex.replace(/./g, "$&$&") : hex.slice(0, 6);
  return { argb: `FF${long.toUpperCase()}` };
}

export function cellStyle(
  appearance: Appearance,
  lines: Lines | null | undefined,
  format: string | undefined,
): Partial<Style> {
  const font: Partial<Font> = {
    name: appearance.fontFamily ?? FONT.name,
    size: appearance.fontSize ?? FONT.size,
    ...(appearance.bold ? { bold: true } : {}),
    ...(appearance.italic ? { italic: true } : {}),
    ...(appearance.underline ? { underline: true } : {}),
    ...(appearance.strikethrough ? { strike: true } : {}),
    ...(appearance.textColor ? { color: argb(appearance.textColor) } : {}),
  };
  const alignment = {
    vertical: appearance.verticalAlign ?? "bottom",
    ...(appearance.align ? { horizontal: appearance.align } : {}),
    ...(appearance.wrapping === "wrap" ? { wrapText: true } : {}),
  } as const;
  return {
    font,
    alignment,
    ...(appearance.fillColor
      ? { fill: { type: "pattern", pattern: "solid", fgColor: argb(appearance.fillColor) } }
      : {}),
    ...(lines ? { border: border(lines) } : {}),
    ...(format ? { numFmt: format } : {}),
  };
}

function border(lines: Lines): Partial<Borders> {
  const side = ({ style, color }: Side): Partial<Border> => ({ style: style as BorderStyle, color: argb(color) });
  return Object.fromEntries(Object.entries(lines).map(([name, line]) => [name, side(line)]));
}

/** Pixels of a column as the file format counts: widths of a digit of the standard font, 7 pixels, after 5 of padding. */
export const columnWidth = (pixels: number): number => Math.round(((pixels - 5) / 7) * 100) / 100;
/** Pixels of a row in points, at 96 pixels to the inch. */
export const rowHeight = (pixels: number): number => pixels * 0.75;
