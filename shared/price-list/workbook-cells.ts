// The cells of an .xlsx file: its first sheet that holds any, as far as a price list needs them.
import { strFromU8, unzipSync } from "fflate";
import { refuse } from "../base/refusal.ts";
import { type Cell, type Table, withoutEnd } from "./table.ts";

const WANTED = /^xl\/(?:workbook\.xml|sharedStrings\.xml|_rels\/workbook\.xml\.rels|worksheets\/[^/]+\.xml)$/;
/** A price list has some hundred kilobytes; what unpacks to more is none. */
const MAX_BYTES = 60_000_000;
/** More than a list is read of, so that it can be said. */
const MAX_ROWS = 20_000;
const MAX_COLUMNS = 60;

/** Refuses what is no such file. */
export function workbookTable(bytes: Uint8Array): Table {
  const parts = unpacked(bytes);
  const part = (name: string): string => {
    const held = parts[name];
    return held === undefined ? "" : strFromU8(held);
  };
  const shared = textsIn(part("xl/sharedStrings.xml"));
  for (const name of sheetNames(part("xl/workbook.xml"), part("xl/_rels/workbook.xml.rels"), Object.keys(parts))) {
    const table = cellsIn(part(name), shared);
    if (table.length > 0) return table;
  }
  return refuse("This workbook has no sheet with cells. Save the price list as .xlsx or .csv and choose it again.");
}

function unpacked(bytes: Uint8Array): Record<string, Uint8Array> {
  let size = 0;
  try {
    return unzipSync(bytes, {
      filter: ({ name, originalSize }) => {
        const isWanted = WANTED.test(name);
        if (isWanted) size += originalSize;
        return isWanted && size <= MAX_BYTES;
      },
    });
  } catch {
    return refuse("This file is no .xlsx workbook. Save the price list as .xlsx or .csv and choose it again.");
  }
}

type Tag = { readonly name: string; readonly attributes: string; readonly isEnd: boolean; readonly isEmpty: boolean };

/** Goes through a part: tags without their prefixes, and the texts between them. */
function walk(xml: string, onTag: (tag: Tag) => void, onText: (text: string) => void): void {
  for (const [, end, name = "", attributes = "", empty, text] of xml.matchAll(
    /<(\/?)(?:[\w.-]+:)?([\w.-]+)((?:"[^"]*"|'[^']*'|[^'">/]|\/(?!>))*)(\/?)>|<[?!][^>]*>|([^<]+)/g,
  )) {
    if (text !== undefined) onText(text);
    else if (name !== "") onTag({ name, attributes, isEnd: end === "/", isEmpty: empty === "/" });
  }
}

const attribute = (attributes: string, name: string): string =>
  decoded(new RegExp(`(?:^|\\s|:)${name}\\s*=\\s*["']([^"']*)["']`).exec(attributes)?.[1] ?? "");

const SIGNS: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };
const decoded = (text: string): string =>
  text.replace(/&(?:#x([\da-f]+)|#(\d+)|(\w+));/gi, (whole, hex?: string, number?: string, name = "") =>
    hex !== undefined || number !== undefined
      ? String.fromCodePoint(hex !== undefined ? Number.parseInt(hex, 16) : Number(number))
      : (SIGNS[name] ?? whole),
  );

/** Texts that cells share; a text may be in runs of several looks, and how it is spoken is none of it. */
function textsIn(xml: string): string[] {
  const texts: string[] = [];
  let text = "";
  let isText = false;
  let isSpoken = false;
  walk(
    xml,
    ({ name, isEnd, isEmpty }) => {
      if (name === "si") {
        if (isEnd || isEmpty) texts.push(text);
        text = "";
      } else if (name === "rPh") isSpoken = !isEnd && !isEmpty;
      else if (name === "t") isText = !isEnd && !isEmpty;
    },
    (part) => {
      if (isText && !isSpoken) text += decoded(part);
    },
  );
  return texts;
}

/** The sheets' parts in the order of their tabs; hidden ones come last. */
function sheetNames(book: string, links: string, parts: readonly string[]): string[] {
  const targets = new Map<string, string>();
  walk(
    links,
    ({ name, attributes }) => {
      if (name === "Relationship") targets.set(attribute(attributes, "Id"), attribute(attributes, "Target"));
    },
    () => {},
  );
  const [seen, hidden]: [string[], string[]] = [[], []];
  walk(
    book,
    ({ name, attributes, isEnd }) => {
      if (name !== "sheet" || isEnd) return;
      const target = targets.get(attribute(attributes, "id"))?.replace(/^\/?(?:xl\/)?/, "xl/") ?? "";
      if (target !== "") (attribute(attributes, "state").startsWith("h") ? hidden : seen).push(target);
    },
    () => {},
  );
  const named = [...seen, ...hidden].filter((name) => parts.includes(name));
  return named.length > 0 ? named : parts.filter((name) => name.startsWith("xl/worksheets/")).sort();
}

/** A1 to AZ… as a column from 0. */
const columnOf = (address: string): number =>
  [...(/^[A-Z]+/.exec(address)?.[0] ?? "")].reduce((all, letter) => all * 26 + letter.charCodeAt(0) - 64, 0) - 1;

function cellsIn(xml: string, shared: readonly string[]): Table {
  const rows: Cell[][] = [];
  let [row, column, kind, text] = [-1, -1, "", ""];
  let isValue = false;
  const keep = (): void => {
    const value = cellOf(kind, text, shared);
    if (value !== "" && row >= 0 && row < MAX_ROWS && column >= 0 && column < MAX_COLUMNS) {
      while (rows.length <= row) rows.push([]);
      const cells = rows[row] ?? [];
      while (cells.length < column) cells.push("");
      cells[column] = value;
    }
  };
  walk(
    xml,
    ({ name, attributes, isEnd, isEmpty }) => {
      if (name === "row" && !isEnd) {
        const number = Number(attribute(attributes, "r"));
        row = number > 0 ? number - 1 : row + 1;
        column = -1;
      } else if (name === "c") {
        if (isEnd) return keep();
        const address = attribute(attributes, "r");
        column = address === "" ? column + 1 : columnOf(address);
        kind = attribute(attributes, "t");
        text = "";
      } else if (name === "v" || name === "t") isValue = !isEnd && !isEmpty;
    },
    (part) => {
      if (isValue) text += decoded(part);
    },
  );
  return withoutEnd(rows);
}

/** Ticks and errors are no cells of a price list. */
function cellOf(kind: string, text: string, shared: readonly string[]): Cell {
  if (kind === "s") return (shared[Number(text)] ?? "").replace(/\u00a0/g, " ").trim();
  if (kind === "inlineStr" || kind === "str") return text.replace(/\u00a0/g, " ").trim();
  if (kind === "b" || kind === "e" || text === "") return "";
  const number = Number(text);
  return Number.isFinite(number) ? Number(number.toPrecision(12)) : "";
}
