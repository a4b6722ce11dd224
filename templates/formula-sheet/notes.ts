// Sentences that take the width of the page: notes that are longer than their column, and what water and tin mean.
import type { Block, ColumnModel } from "../../shared/sheet/model.ts";
import { helper } from "./column-kinds.ts";
import { type Single, single } from "./singles.ts";

/** So many letters of a note are seen beside the table: two columns in stages, otherwise three. */
const SEEN = { staged: 42, whole: 58 } as const;

/** A note that its column cuts, with the name that it does not begin with. */
export const longNotes = (isStaged: boolean): ColumnModel =>
  helper(
    "long_note",
    "Note that is cut",
    `=ARRAYFORMULA(IFERROR(IF(@counts*(IFERROR(LEN(@advice);0)>${isStaged ? SEEN.staged : SEEN.whole})=1;IF(LEFT(@advice;LEN(@name_counted))=@name_counted;"";@name_counted&": ")&@advice;"");""))`,
  );

/** Where no note is cut. */
const NONE = "10^6";
const place = (after: string) =>
  `=ARRAYFORMULA(MIN(IF((LEN(@long_note)>0)*(ROW(@long_note)-MIN(ROW(@long_note))+1>${after})=1;ROW(@long_note)-MIN(ROW(@long_note))+1;${NONE})))`;

export const NOTE_SINGLES: readonly Single[] = [
  single("First note that is cut", "cut_first", place("0")),
  single("Second note that is cut", "cut_second", place("@cut_first")),
  single("Third note that is cut", "cut_third", place("@cut_second")),
  single("How many are cut", "cut_notes", "=SUMPRODUCT((LEN(@long_note)>0)*1)"),
];

const cutNote = (at: string, more = "") => `=IF(@${at}>=${NONE};"";INDEX(@long_note;@${at};1)${more})`;
const MORE = '&IF(@cut_notes>3;" · Under Note: "&@cut_notes-3&" more.";"")';

/** What a call says, that it is refused, or that the add-on is missing; nothing where nothing was asked. */
const adviceOf = (call: string): string =>
  `=IF(ISERROR(@${call});IF(ERROR.TYPE(@${call})=5;"needs Gramwright";@${call});@${call}&"")`;

const sentence = (name: string, formula: string, when?: string): Block["lines"][number] => ({
  ...(when === undefined ? {} : { when }),
  cells: [{ at: 0, role: "remark", name, unit: "text", formula }],
});

export const notesBlock: Block = {
  block: "notes",
  left: 0,
  lines: [
    sentence("water_note", adviceOf("water_advice"), "water"),
    sentence("tin_note", adviceOf("tin_advice"), "tin"),
    sentence("note_first", cutNote("cut_first")),
    sentence("note_second", cutNote("cut_second")),
    sentence("note_third", cutNote("cut_third", MORE)),
  ],
};
