import type { Border, BorderStyle, Borders, Font, Style } from "exceljs";

/** A cell's look as the engine keeps it, with the one part that scripts add. */
export type Look = {
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

export function cellStyle(look: Look, lines: Lines | null | undefined, format: string | undefined): Partial<Style> {
  const font: Partial<Font> = {
    name: look.fontFamily ?? FONT.name,
    size: look.fontSize ?? FONT.size,
    ...(look.bold ? { bold: true } : {}),
    ...(look.italic ? { italic: true } : {}),
    ...(look.underline ? { underline: true } : {}),
    ...(look.strikethrough ? { strike: true } : {}),
    ...(look.textColor ? { color: argb(look.textColor) } : {}),
  };
  const alignment = {
    vertical: look.verticalAlign ?? "bottom",
    ...(look.align ? { horizontal: look.align } : {}),
    ...(look.wrapping === "wrap" ? { wrapText: true } : {}),
  } as const;
  return {
    font,
    alignment,
    ...(look.fillColor ? { fill: { type: "pattern", pattern: "solid", fgColor: argb(look.fillColor) } } : {}),
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
