import type { Engine } from "../engine/engine.ts";
import type { Position } from "../engine/library.ts";
import { sheetFormat } from "../engine/patches/graded-formats.ts";
import { joinCommands } from "../engine/patches/merged-commands.ts";
import type { Command } from "../engine/plugins.ts";
import { Guard } from "./guard.ts";

export type MenuItem = { readonly caption: string; readonly functionName: string } | "separator";
export type Shown = {
  menu: { readonly caption: string; readonly items: readonly MenuItem[] } | undefined;
  /** `added` is HTML that the script put at the page's end. */
  sidebar: { readonly title: string; readonly file: string; readonly added?: string } | undefined;
  messages: string[];
};

/** Commands that empty cells, whichever hold something. */
const EMPTYING: ReadonlySet<string> = new Set(["CLEAR_CELLS", "DELETE_CONTENT"]);

/** FNV-1a, 31 bits. */
const hash = (text: string): number =>
  [...text].reduce((sum, sign) => Math.imul(sum ^ sign.charCodeAt(0), 16777619), 2166136261) >>> 1;

const key = ({ sheetId, col, row }: Position): string => `${sheetId}!${col}!${row}`;

/**
 * What the stand-in's objects share: the engine, the guard and the writes that wait. Writes are kept until something is
 * read or the run ends, so that a script that writes well costs one calculation.
 */
export class Session {
  readonly guard = new Guard();
  readonly shown: Shown = { menu: undefined, sidebar: undefined, messages: [] };
  /** The script's own Date, so that `instanceof Date` holds in the script. */
  Date: DateConstructor = Date;
  /** Set by a test: another person holds the document's lock. */
  lockIsTaken = false;
  /** Set by a test: of the two permissions one box was left empty. */
  isScopeMissing = false;
  /** The add-on was used in this workbook: until then its triggers run without leave to do anything. */
  isEnabled = false;
  /** What scripts keep with the document. */
  readonly properties = new Map<string, string>();
  private waiting: Command[] = [];
  private isEmptying = false;
  private formats = new Map<string, string>();
  private contents = new Map<string, string>();
  private ids = new Map<string, number>();

  readonly engine: Engine;
  /** The pages that the project pushes, by name. */
  readonly htmlFiles: ReadonlyMap<string, string>;

  constructor(engine: Engine, htmlFiles: ReadonlyMap<string, string>) {
    this.engine = engine;
    this.htmlFiles = htmlFiles;
  }

  write(...commands: readonly Command[]): void {
    for (const command of commands) {
      if (command.type === "UPDATE_CELL") {
        const { content, ...position } = command.payload as Position & { content: string };
        this.contents.set(key(position), content);
      } else if (EMPTYING.has(command.type)) this.isEmptying = true;
      this.waiting.push(command);
    }
  }

  flush(): void {
    const commands = this.waiting;
    if (commands.length === 0) return;
    this.waiting = [];
    this.formats.clear();
    this.contents.clear();
    this.isEmptying = false;
    this.engine.runAll(
      joinCommands(commands, (at) =>
        this.get<{ style?: Readonly<Record<string, unknown>>; format?: string } | undefined>("getCell", at),
      ),
    );
  }

  /** A sheet is about to be deleted: what waits for it alone need not be carried out. */
  forget(sheetId: string): void {
    this.waiting = this.waiting.filter(
      ({ payload }) => (payload as { sheetId?: string } | undefined)?.sheetId !== sheetId,
    );
  }

  noteFormat(position: Position, format: string): void {
    this.formats.set(key(position), format);
  }

  /** What a cell holds, also what waits: "" for nothing. */
  contentOf(position: Position): string {
    if (this.isEmptying) this.flush();
    const waiting = this.contents.get(key(position));
    return waiting ?? this.get<{ content?: string } | undefined>("getCell", position)?.content ?? "";
  }

  /** The number format of a cell, also one that waits. */
  formatOf(position: Position): string {
    const waiting = this.formats.get(key(position));
    return sheetFormat(waiting ?? this.get<{ format?: string } | undefined>("getCell", position)?.format ?? "");
  }

  /** The number by which scripts know a sheet; the same whenever the workbook is opened, as it is in a spreadsheet. */
  numberOf(sheetId: string): number {
    const known = this.ids.get(sheetId);
    if (known !== undefined) return known;
    const taken = new Set(this.ids.values());
    let sheetNumber = hash(sheetId);
    while (taken.has(sheetNumber)) sheetNumber += 1;
    this.ids.set(sheetId, sheetNumber);
    return sheetNumber;
  }

  get<T>(getter: string, ...args: unknown[]): T {
    return this.engine.get<T>(getter, ...args);
  }
}
