// A part of the flour ripens before the mix: put in, taken out, or made larger, wetter or of another sort. Flour and water stay as they are in all.
import { refuse } from "../base/refusal.ts";
import { showNumber, shownShare } from "../base/show.ts";
import type { Change, Changed, Field } from "./change.ts";
import { type Edit, editOf, kindOf } from "./edit.ts";
import { fieldReader } from "./field-input.ts";
import { allFlour, type Formula, ofKind, type Row, SORTS, type Sort, shareOf } from "./formula.ts";
import { type Now, raised, sortOf, USUAL, USUAL_YEAST, unusual } from "./preferment-sorts.ts";
import { mustHoldApart, mustReach } from "./row-limits.ts";

const NONE = "none: all in one mix";
const CHOICES = [...SORTS, NONE] as const;

const MIN_HYDRATION = 0.3;
const MAX_HYDRATION = 2;
const MAX_YEAST = 0.1;

export const preferment: Change = {
  name: "preferment",
  group: "Preferment",
  label: "Put in, change or take out a preferment",
  words: "poolish biga sponge levain sourdough starter a third of it ripen overnight flavour prefermented",
  fields: (formula): Field[] => {
    const now = nowIn(formula);
    const sort = now?.sort ?? (formula.block === "levain" ? "levain" : "poolish");
    const wanted = ["sort", ...SORTS] as const;
    return [
      { name: "sort", label: "Preferment", choices: CHOICES, start: sort },
      {
        name: "share",
        label: "Prefermented flour (% of flour)",
        start: now === null ? "" : percent(now.share),
        when: wanted,
      },
      {
        name: "hydration",
        label: "Its hydration (%)",
        start: now === null ? "" : percent(now.hydration),
        hint: "If blank: poolish and levain 100, biga 55, sponge 62.",
        when: wanted,
      },
      ...(formula.block === "levain"
        ? []
        : [
            {
              name: "yeast",
              label: "Its fresh yeast (% of its flour)",
              start: now === null || now.yeast === null ? "" : percent(now.yeast),
              hint: "If blank: 0.2, for 12 to 16 hours at room temperature.",
              when: ["sort", "poolish", "biga", "sponge"] as const,
            },
          ]),
    ];
  },
  apply: (formula, values) => {
    const input = fieldReader(preferment.fields(formula), values);
    const chosen = input.choice("sort", CHOICES);
    if (chosen === NONE) return withoutPreferment(formula);
    return withPreferment(formula, {
      sort: chosen,
      share: input.share("share", { above: 0, max: 1 }),
      hydration: input.shareOrBlank("hydration", { min: MIN_HYDRATION, max: MAX_HYDRATION }) ?? USUAL[chosen][1],
      yeast: input.shareOrBlank("yeast", { min: 0, max: MAX_YEAST }) ?? USUAL_YEAST,
    });
  },
};

const percent = (share: number): string => showNumber(share * 100);

/** The preferment that there is: set apart beside the rows, or the first row that is one. */
function nowIn(formula: Formula): Now | null {
  if (formula.setApart !== null) return formula.setApart;
  const row = starterIn(formula);
  return row === undefined
    ? null
    : {
        sort: sortOf(row),
        share: (row.amount * row.kind.flour) / allFlour(formula.rows),
        hydration: row.kind.water / row.kind.flour,
        yeast: null,
      };
}

const starterIn = ({ rows }: Formula): Row | undefined => ofKind(rows, "preferment").find(({ amount }) => amount > 0);

export function withoutPreferment(formula: Formula): Changed {
  const now = nowIn(formula);
  if (now === null) return refuse("This formula has no preferment that could be taken out.");
  const line = `${capital(now.sort)} taken out, all in one mix`;
  const notes = [
    shareOf(formula.rows, "yeast") > 0
      ? "Flour and water of the whole stay. A dough without a preferment has less flavour at the same yeast: set the time under Time and temperature."
      : "Nothing else raises this dough: put yeast into it before you bake.",
  ];
  if (formula.setApart !== null)
    return {
      formula: { ...formula, setApart: null },
      line,
      rows: new Set(),
      parts: ["set apart"],
      notes,
      cautions: [],
    };
  const edit = editOf(formula);
  const old = takeOut(formula, edit);
  if (old !== undefined) edit.remove(old.id);
  return { formula: edit.done(formula), line, rows: edit.moved(), parts: [], notes, cautions: [] };
}

type Wanted = { readonly sort?: Sort; readonly share: number; readonly hydration?: number; readonly yeast?: number };

/** Puts it in, or in the place of the one there is; what is not said stays. */
export function withPreferment(formula: Formula, wanted: Wanted): Changed {
  const now = nowIn(formula);
  const sort = wanted.sort ?? now?.sort ?? "levain";
  const isApart = formula.block !== null && (formula.setApart !== null || starterIn(formula) === undefined);
  const exact = wanted.hydration ?? now?.hydration ?? USUAL[sort][1];
  // A type says its hydration to a tenth of a percent.
  const hydration = isApart ? exact : Math.round(exact * 1000) / 1000;
  const yeast = sort === "levain" ? 0 : (wanted.yeast ?? now?.yeast ?? USUAL_YEAST);
  const to = { sort, share: wanted.share, hydration, yeast };
  const line =
    now === null
      ? `${capital(sort)} with ${shownShare(to.share, 1)} of the flour put in`
      : `${capital(now.sort)} of ${shownShare(now.share, 1)} at ${shownShare(now.hydration, 1)} to ${sort} of ${shownShare(to.share, 1)} at ${shownShare(hydration, 1)}`;
  const notes = [...unusual(sort, hydration), ...raised(formula, sort, now)];
  if (isApart) {
    if ((sort === "levain") !== (formula.block === "levain"))
      refuse(
        formula.block === "levain"
          ? "This sheet sets a levain apart. Choose levain, or build the formula as a hearth loaf for a poolish, biga or sponge."
          : "This sheet sets apart a poolish, biga or sponge. Choose one of them, or build the formula as a levain loaf.",
      );
    const after = { ...formula, setApart: to };
    mustHoldApart(after);
    return { formula: after, line, rows: new Set(), parts: ["set apart"], notes, cautions: [] };
  }
  const edit = editOf(formula);
  putIn(formula, edit, takeOut(formula, edit), to);
  const inFinal =
    sort === "levain" || yeast === 0
      ? []
      : [
          `Of the yeast, ${shownShare(yeast * to.share, 3)} of all flour goes into the ${sort}. Weigh it out of the yeast row.`,
        ];
  return {
    formula: edit.done(formula),
    line,
    rows: edit.moved(),
    parts: [],
    notes: [...notes, ...inFinal],
    cautions: [],
  };
}

/** Its flour and water go back to those of the mix, in proportion; its row stays at 0. */
function takeOut(formula: Formula, edit: Edit): Row | undefined {
  const row = starterIn(formula);
  if (row === undefined) return undefined;
  edit.set(row.id, 0);
  const flours = ofKind(edit.rows(), "flour");
  const back = row.amount * row.kind.flour;
  if (flours.some(({ amount }) => amount > 0)) edit.spread(flours, back);
  else edit.add("Flour", "flour", back);
  edit.water(row.amount * row.kind.water, "");
  return row;
}

function putIn(
  formula: Formula,
  edit: Edit,
  old: Row | undefined,
  { sort, share, hydration }: { readonly sort: Sort; readonly share: number; readonly hydration: number },
): void {
  const all = allFlour(formula.rows);
  const flours = ofKind(edit.rows(), "flour");
  const there = flours.reduce((sum, { amount }) => sum + amount, 0) / all;
  mustReach(share, there, `The ${sort} takes`, "flour", "Choose a smaller share");
  edit.spread(flours, -share * all);
  edit.water(-share * hydration * all, `A ${sort} of that size and hydration`);
  const type = `${sort} ${percent(hydration)}%`;
  const amount = share * all * (1 + hydration);
  // The type's own flour is what the sheet will count with.
  if (kindOf(type).word !== "preferment") refuse(`The type "${type}" could not be read.`);
  if (old === undefined) edit.add(capital(sort), type, amount);
  else edit.replace(old.id, sortOf(old) === sort ? old.name : capital(sort), type, amount);
  if (ofKind(formula.rows, "preferment").length === 0) edit.reframe("all flour");
}

const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);
