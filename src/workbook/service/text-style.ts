import { strict } from "./guard.ts";
import { colour } from "./rules.ts";

export type TextStyle = Readonly<Record<string, unknown>>;

const styles = new WeakMap<object, TextStyle>();

/** SpreadsheetApp.newTextStyle(). What is not set stays as it is in the cell. */
export function newTextStyle(): object {
  const style: Record<string, unknown> = {};
  const set = (name: string, value: unknown) => {
    style[name] = value;
    return builder;
  };
  const builder: object = strict("TextStyleBuilder", {
    setForegroundColor: (value: string | null) => set("textColor", colour(value, "setForegroundColor")),
    setBold: (bold: boolean) => set("bold", bold),
    setItalic: (italic: boolean) => set("italic", italic),
    setUnderline: (underline: boolean) => set("underline", underline),
    setStrikethrough: (strikethrough: boolean) => set("strikethrough", strikethrough),
    setFontFamily: (family: string) => set("fontFamily", family),
    setFontSize: (size: number) => {
      if (!Number.isInteger(size) || size < 6 || size > 96) throw new Error(`setFontSize: ${size} is no font size`);
      return set("fontSize", size);
    },
    build: () => {
      const textStyle = strict("TextStyle", {});
      styles.set(textStyle, { ...style });
      return textStyle;
    },
  });
  return builder;
}

export function textStyleOf(built: object): TextStyle {
  const style = styles.get(built);
  if (style === undefined) throw new Error("setTextStyle takes what newTextStyle() built");
  return style;
}
