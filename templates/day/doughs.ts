import { type ColumnModel, type Formula, WORKED_OUT } from "../../shared/sheet/model.ts";
import { computedColumn, linkedColumn, remark } from "./column.ts";
import { ORDERED } from "./orders.ts";

/** A weight of the formula sheet for one of its pieces; nothing while the sheet shows none. */
const perPiece = (weight: string) => `=IF(COUNT(${weight};[pieces])<2;"";IF([pieces]=0;"";${weight}/[pieces]))`;
const forPieces = (each: string) => `=ARRAYFORMULA(IF(LEN(@day_pieces)*LEN(${each})=0;"";@day_pieces*${each}))`;

/** Blank where nothing is ordered, so that what is made stands out. */
export const pieces: readonly ColumnModel[] = [
  {
    ...computedColumn(
      "day_pieces",
      "Pieces",
      "count",
      `=ARRAYFORMULA(IF(LEN(@day_product)=0;"";IF(${ORDERED}=0;"";${ORDERED})))`,
    ),
    align: "center",
  },
];

/** A call takes a table of products and weights and nothing more, so it is a table of its own. */
export const doughColumns: readonly ColumnModel[] = [
  linkedColumn("day_product", "Product", "text", "=[name]"),
  computedColumn("day_whole", "Dough in all ({weight})", "weight", forPieces("@day_each_whole")),
];

/**
 * A weight in words, rounded down: what is below a limit never reads as the limit. A blank row counts as 0 in it, because
 * LibreOffice lets one error take all the rows of a joined text.
 */
const inWords = (weight: string) => {
  const known = (parts: number) => `ROUNDDOWN(ROUND(IF(LEN(${weight})=0;0;${weight})/${parts};6);2)`;
  return { oz: `${known(16)}&" lb"`, g: `${known(1000)}&" kg"` };
};
const [mix, least] = [inWords("@day_mix"), inWords("@day_least")];
const SHORT = "IF(LEN(@day_mix)*LEN(@day_least)=0;0;ROUND(@day_mix-@day_least;6))";
const NO_LIMIT = 'IF(LEN(@day_limit)=0;"no mixer limit on its sheet: one mix";"")';

/** Equal mixes by the limit are the fewest there can be, so that a mix below the least is a matter for the baker. */
const remarkIn = (unit: "g" | "oz") => {
  const below = `"below the mixer’s least: "&${mix[unit]}&" of "&${least[unit]}&"; mix by hand or join with another dough"`;
  const small = `IF(LEN(@day_limit)=0;${below};IF(@day_limit<@day_least;"its sheet has a mixer’s least above its most";${below}))`;
  return `=ARRAYFORMULA(IF(LEN(@day_pieces)=0;"";IF(LEN(@day_mix)=0;"its formula sheet shows no weight";IF(LEN(@day_least)=0;${NO_LIMIT};IF(${SHORT}<0;${small};${NO_LIMIT})))))`;
};
const REMARK: Formula = [{ when: "oz", formula: remarkIn("oz") }, { formula: remarkIn("g") }];

export const doughs: readonly ColumnModel[] = [
  computedColumn(
    "day_mixes",
    "Mixes",
    "count",
    '=ARRAYFORMULA(IF(LEN(@day_mixed)=0;"";IF(LEN(@day_limit)=0;1;IF(@day_limit=0;1;ROUNDUP(ROUND(@day_mixed/@day_limit;9);0)))))',
  ),
  computedColumn(
    "day_mix",
    "Dough a mix ({weight})",
    "weight",
    '=ARRAYFORMULA(IF(LEN(@day_mixed)*LEN(@day_mixes)=0;"";IF(@day_mixes=0;0;@day_mixed/@day_mixes)))',
  ),
  remark("day_note", "Remark", REMARK),
];

/** What the doughs are worked out from: the figures of the formula sheets for one piece, and their mixers. */
export const sheetFigures: readonly ColumnModel[] = [
  computedColumn("day_mixed", `${WORKED_OUT}: mixed ({weight})`, "weight", forPieces("@day_each")),
  computedColumn("day_levain", "Levain ({weight})", "weight", forPieces("@day_each_levain")),
  linkedColumn("day_each_whole", "All, a piece", "weight", perPiece("[whole]")),
  linkedColumn("day_each", "Mixed, a piece", "weight", perPiece("[dough]")),
  linkedColumn("day_each_levain", "Levain, a piece", "weight", perPiece("[levain]")),
  linkedColumn("day_limit", "Mixer, most", "weight", '=IF(COUNT([limit])=0;"";IF([limit]>0;[limit];""))'),
  linkedColumn("day_least", "Mixer, least", "weight", '=IF(COUNT([least])=0;"";[least])'),
  // In minutes from the midnight before the day.
  linkedColumn("day_mixed_at", "Mixed at", "minutes", '=IF(COUNT([mixed_at])=0;"";ROUND(1440*[mixed_at];0))'),
  computedColumn(
    "day_first",
    "with levain",
    "minutes",
    '=ARRAYFORMULA(IF(LEN(@day_levain)*LEN(@day_mixed_at)=0;"";IF(@day_levain=0;"";@day_mixed_at)))',
  ),
];
