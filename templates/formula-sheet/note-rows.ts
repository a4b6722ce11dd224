// Rows as the notes see them: what is not in the table stands in its last row, or the notes would miss what raises the dough or its fat.
import type { ColumnModel } from "../../shared/sheet/model.ts";
import { helper } from "./column-kinds.ts";

export type NotedRow = "levain" | "roll-in";

type Row = { readonly name: string; readonly kind: string; readonly share: string; readonly others: string };

const OTHERS = 'IF(LEN(@share)=0;"";@share)';
const ROWS: Readonly<Record<NotedRow, Row>> = {
  levain: {
    name: '"levain"',
    kind: '"levain "&ROUND(100*N(@pre_hydration);0)&"%"',
    share: 'IF(@pre_of_flour>0;@pre_of_flour;"")',
    others: 'IF(LEN(@share)=0;"";@share_typed*(1-@pre_part)/MAX(@flour_all;1/10^9))',
  },
  "roll-in": { name: '@roll_in_name&""', kind: '"fat"', share: "@roll_in_of_flour", others: OTHERS },
};

const withLast = (last: string, row: string) => `=ARRAYFORMULA(IF(ROW(@counts)=MAX(ROW(@counts));${last};${row}))`;

export function notedColumns(noted: NotedRow): readonly ColumnModel[] {
  const { name, kind, share, others } = ROWS[noted];
  return [
    helper("noted_name", "Name, for the notes", withLast(name, "@name_counted")),
    helper("noted_kind", "Type, for the notes", withLast(kind, "@kind_counted")),
    helper("noted_share", "Of all flour, for the notes", withLast(share, others)),
  ];
}
