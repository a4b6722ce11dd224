import { BEFORE_CONTENT, CONTENT_CELLS } from "../shared/adjust/versions.ts";
import { type ColumnModel, type SheetModel, WORKED_OUT } from "../shared/sheet/model.ts";
import { HISTORY_NAME } from "../shared/sheet/workbook-names.ts";

/** Nobody types here, and cells take what is added as it is; without a formula the column stays blank until a version is added. */
const column = (name: string, head: string): ColumnModel => ({
  name,
  head,
  unit: "text",
  role: "linked",
  formula: `=[${name}]`,
});

const HEADS = ["When", "Formula", "Version", "What changed"];

/** As many as the sheet begins with; it grows with what is added. */
const ROWS = 300;

/** One row for each version of a formula. Gramwright adds rows, and changes none. */
export const formulaHistory: SheetModel = {
  name: "history",
  title: "Formula history",
  says: "Every version of your formulas: when, what changed, and the formula itself to bring back.",
  widths: [160, 190, 62, 420, 92, ...Array<number>(CONTENT_CELLS).fill(70)],
  parts: [],
  defines: { name: HISTORY_NAME, from: "history_table", to: "history_table" },
  bands: [
    [
      {
        block: "name",
        left: 0,
        lines: [
          { cells: [{ at: 0, role: "title", name: "title", text: "Formula history" }] },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "One row for each version. Nothing to type here: Adjust adds rows, compares them and brings one back.",
              },
            ],
          },
          {
            cells: [
              {
                at: 0,
                role: "remark",
                text: "The columns from E on are for Gramwright. Hide the sheet if it is in the way. Do not delete rows.",
              },
            ],
          },
        ],
      },
    ],
    [
      {
        table: "history",
        left: 0,
        rows: ROWS,
        list: true,
        columns: [
          ...HEADS.map((head, at) => column(`history_${at}`, head)),
          column("history_sheet", `${WORKED_OUT}: tab`),
          ...Array.from({ length: CONTENT_CELLS }, (_, at) => column(`history_content_${at + 1}`, `kept ${at + 1}`)),
        ].slice(0, BEFORE_CONTENT + CONTENT_CELLS),
      },
    ],
  ],
  sample: { title: "Formula history" },
  expects: { title: "Formula history" },
};
