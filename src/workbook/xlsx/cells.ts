// The cells of an .xlsx: values, and formulas that other programs know.
import type { CellErrorValue, Worksheet } from "exceljs";
import type { Engine, FormulaCell } from "../engine/engine.ts";
import type { EvaluatedCell, Position, Zone } from "../engine/library.ts";
import { sheetFormat } from "../engine/patches/graded-formats.ts";
import type { PlacedMark } from "../engine/plugins.ts";
import { type Appearance, cellStyle, type Lines } from "./appearance.ts";
import { readable } from "./formula.ts";

type Value = number | string | boolean | null | CellErrorValue;

const KNOWN_ERRORS = ["#N/A", "#REF!", "#NAME?", "#DIV/0!", "#NULL!", "#VALUE!", "#NUM!"] as const;

export function writeCells(engine: Engine, sheet: Worksheet, sheetId: string): void {
  const spilled = new Set<string>();
  const names = new Set<string>();
  const styled = engine
    .get<readonly { id: number }[]>("getCells", sheetId)
    .map(({ id }) => engine.get<Position>("getCellPosition", id));
  const filled = engine.get<readonly Position[]>("getEvaluatedCellsPositions", sheetId);
  const places = new Map([...styled, ...filled].map((place) => [`${place.col},${place.row}`, { ...place, sheetId }]));
  for (const position of places.values()) {
    const cell = sheet.getCell(position.row + 1, position.col + 1);
    const appearance = engine.get<Appearance>("getCellStyle", position);
    const evaluated = engine.evaluated(position);
    const format = evaluated.format === undefined ? undefined : sheetFormat(evaluated.format);
    cell.style = cellStyle(appearance ?? {}, engine.get<Lines | null>("getCellBorder", position), format);
    if (!spilled.has(cell.address)) cell.value = storedValue(evaluated);
    writeFormula(engine, sheet, position, spilled, names);
  }
  for (const address of names) markKept(sheet, address);
  for (const { kind, text, zone, sheetId: on } of engine.get<readonly PlacedMark[]>("getMarks")) {
    if (kind === "note" && on === sheetId) sheet.getCell(zone.top + 1, zone.left + 1).note = text;
  }
}

/** What no other program calculates again is seen to be so: slanted on grey. */
function markKept(sheet: Worksheet, address: string): void {
  const cell = sheet.getCell(address);
  const fill = { type: "pattern", pattern: "solid", fgColor: { argb: "FFE4E1DC" } } as const;
  cell.style = { ...cell.style, font: { ...cell.style.font, italic: true }, fill };
}

function writeFormula(
  engine: Engine,
  sheet: Worksheet,
  position: Position,
  spilled: Set<string>,
  names: Set<string>,
): void {
  const held = engine.get<FormulaCell | undefined>("getCell", position);
  if (!held?.isFormula) return;
  const canonical = held.compiledFormula.toFormulaString(engine.model.getters);
  const cell = sheet.getCell(position.row + 1, position.col + 1);
  const evaluated = engine.evaluated(position);
  const portableFormula = readable(engine.library, canonical);
  const zone = engine.get<Zone | undefined>("getSpreadZone", position);
  if (portableFormula.kind === "value") {
    const why = evaluated.type === "error" && evaluated.message ? ` It says: ${evaluated.message}` : "";
    cell.note = `A kept value, computed by ${portableFormula.because} in Gramwright.${why}`;
    const { left, right, top, bottom } = zone ?? zoneOf(position);
    for (let row = top; row <= bottom; row++)
      for (let col = left; col <= right; col++) names.add(engine.library.helpers.toXC(col, row));
    return;
  }
  const several = zone && (zone.right > zone.left || zone.bottom > zone.top);
  const result = storedValue(evaluated);
  if (portableFormula.kind === "formula" && !several) {
    cell.value = { formula: portableFormula.text, ...(result === null ? {} : { result }) } as never;
    return;
  }
  const whole = zone ?? zoneOf(position);
  const width = whole.right - whole.left + 1;
  const results = Array.from({ length: whole.bottom - whole.top + 1 }, (_, down) =>
    Array.from(
      { length: width },
      (_, across) =>
        storedValue(engine.evaluated({ sheetId: position.sheetId, col: whole.left + across, row: whole.top + down })) ??
        "",
    ),
  );
  // exceljs types leave out the kind of a filled formula.
  const { fillFormula } = sheet as unknown as {
    fillFormula(a1: string, text: string, results: unknown, kind: "array"): void;
  };
  const { toXC } = engine.library.helpers;
  // exceljs fills nothing where a range of one cell is written without its colon.
  const range = `${toXC(whole.left, whole.top)}:${toXC(whole.right, whole.bottom)}`;
  fillFormula.call(sheet, range, portableFormula.text, results, "array");
  for (let row = whole.top; row <= whole.bottom; row++) {
    for (let col = whole.left; col <= whole.right; col++) spilled.add(engine.library.helpers.toXC(col, row));
  }
}

const zoneOf = ({ col, row }: Position): Zone => ({ left: col, right: col, top: row, bottom: row });

function storedValue({ type, value }: EvaluatedCell): Value {
  if (type === "empty" || value === "") return null;
  if (type !== "error") return value;
  const error = KNOWN_ERRORS.find((known) => known === value) ?? "#VALUE!";
  return { error } as CellErrorValue;
}
