// What each dough comes to, by day: mixes, weights, what goes into others.
import type { CellModel, Formula, Line } from "../../shared/sheet/model.ts";
import { type DoughShape, daysOf, letters, linkName, type ProductionShape, quoted } from "./shape.ts";

export const mixWords = (mixes: string, each: string): Formula => [
  { when: "oz", formula: `=IF(${mixes}=0;"";${mixes}&" × "&ROUND(${each}/16;2)&" lb")` },
  { formula: `=IF(${mixes}=0;"";${mixes}&" × "&ROUND(${each}/1000;2)&" kg")` },
];
/** Where many days stand beside each other: to a tenth, and the heading says the unit. */
export const shortMixWords = (mixes: string, each: string): Formula => [
  { when: "oz", formula: `=IF(${mixes}=0;"";${mixes}&" × "&ROUND(${each}/16;1))` },
  { formula: `=IF(${mixes}=0;"";${mixes}&" × "&ROUND(${each}/1000;1))` },
];

/** A formula that shows no weight, and mixes that are too small for the mixer. */
export const doughSays = (at: number): string =>
  `=IF(@lost_${at}>0;"no weights on its sheet";IF(COUNT(@least_${at})=0;"";IF(@smallest_${at}<@least_${at}*(1-1/10^9);"a mix is too small";"")))`;

/** Beside a dough: links to its sheet, then for each day all of it, what is mixed, in how many mixes of which weight. */
export function doughHelpers(shape: ProductionShape): Line[] {
  const days = daysOf(shape);
  const heads = [
    "Mixed of it",
    "Mixer capacity",
    "Smallest mix",
    "Pieces without a weight",
    "Smallest of the days",
    ...["With fat", "Mixed", "Mixes", "A mix"].flatMap((says) => days.map((day) => `${says}, day ${day}`)),
    ...(shape.doughs.some(({ inDoughs }) => inDoughs.length > 0) ? ["Of the doughs that it goes into"] : []),
  ];
  return [
    { cells: [] },
    { cells: heads.map((text, at) => ({ at, role: "helper", unit: "text", formula: quoted(text) })) },
    ...shape.doughs.map((_, at): Line => ({ cells: doughFigures(shape, at) })),
  ];
}

/** All of a dough on a day: of its own pieces, of those that it is a part of, and of the doughs that it goes into. */
function allOf(
  { items, doughs }: ProductionShape,
  { from, to, inItems, inDoughs }: DoughShape,
  index: number,
  day: number,
) {
  const sum = to > from ? [`SUM(@d_${from + 1}_${day}:@d_${to}_${day})`] : [];
  const at = index + 1;
  const parts =
    inItems.length === 0
      ? []
      : [`SUMPRODUCT(@per_1_${at}:@per_${items.length}_${at};@m_1_${day}:@m_${items.length}_${day})`];
  const within = inDoughs.map(
    ({ dough, isRolledIn }, place) => `@${isRolledIn ? "a" : "t"}_${dough + 1}_${day}*@into_${at}_${place + 1}`,
  );
  const all = [...sum, ...parts, ...within];
  return doughs.length === 0 || all.length === 0 ? "0" : all.join("+");
}

function doughFigures(shape: ProductionShape, index: number): CellModel[] {
  const at = index + 1;
  const days = daysOf(shape);
  const n = days.length;
  const dough = shape.doughs[index] as DoughShape;
  const { from, to, inDoughs } = dough;
  // Of a product that is not weighed piece by piece all pieces count.
  const unweighed = (item: number) => `IF(COUNT(@each_${item})=0;SUM(@m_${item}_1:@m_${item}_${n});0)`;
  const cell = (place: number, name: string, formula: string): CellModel => ({
    at: place,
    role: "helper",
    name,
    unit: "plain",
    formula,
  });
  const items = Array.from({ length: to - from }, (_, which) => from + which + 1);
  return [
    cell(0, `mixed_${at}`, `=[${linkName("mixed", index)}]`),
    cell(
      1,
      `limit_${at}`,
      `=IF(N(@mixer_most)>0;IF(COUNT([${linkName("limit", index)}])=1;MIN([${linkName("limit", index)}];@mixer_most);@mixer_most);[${linkName("limit", index)}])`,
    ),
    cell(2, `least_${at}`, `=[${linkName("least", index)}]`),
    cell(3, `lost_${at}`, `=${items.map(unweighed).join("+") || "0"}`),
    cell(
      4,
      `smallest_${at}`,
      `=IF(MAX(@p_${at}_1:@p_${at}_${n})=0;N(@least_${at});SMALL(@p_${at}_1:@p_${at}_${n};1+SUMPRODUCT((@p_${at}_1:@p_${at}_${n}=0)*1)))`,
    ),
    ...days.map((day, place) => cell(5 + place, `a_${at}_${day}`, `=${allOf(shape, dough, index, day)}`)),
    ...days.map((day, place) => cell(5 + n + place, `t_${at}_${day}`, `=@a_${at}_${day}*N(@mixed_${at})`)),
    ...days.map((day, place) =>
      cell(
        5 + 2 * n + place,
        `x_${at}_${day}`,
        `=IF(@t_${at}_${day}=0;0;IF(N(@limit_${at})>0;MAX(1;ROUNDUP(@t_${at}_${day}/@limit_${at}*(1-1/10^9);0));1))`,
      ),
    ),
    ...days.map((day, place) =>
      cell(5 + 3 * n + place, `p_${at}_${day}`, `=IF(@x_${at}_${day}=0;0;@t_${at}_${day}/@x_${at}_${day})`),
    ),
    ...inDoughs.map((_, place) =>
      cell(5 + 4 * n + place, `into_${at}_${place + 1}`, `=N([${linkName(`into_${letters(index)}`, place)}])`),
    ),
  ];
}
