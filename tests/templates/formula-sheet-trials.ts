// Formula sheets to try slips on: every template, with and without preferment, in both sets of units, scaled each way.
import type { SheetModel, Values } from "../../shared/sheet/model.ts";
import { inputCell } from "../../shared/sheet/template-inputs.ts";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { TEMPLATES } from "../../templates/index.ts";
import { IS_LONG } from "../kit/scale.ts";
import { METRIC, type Tried, type Units, US, verdict } from "./formula-sheet-page.ts";
import { keeping, type Slip } from "./formula-sheet-slips.ts";

export type Kind = {
  readonly says: string;
  readonly model: SheetModel;
  readonly units: Units;
  readonly isStaged: boolean;
  readonly ways: readonly string[];
};
const kind = (says: string, model: SheetModel, units: Units, isStaged: boolean): Kind => ({
  says,
  model,
  units,
  isStaged,
  ways: inputCell(model, "by")?.choices ?? [],
});
export const KINDS: readonly Kind[] = TEMPLATES.filter(({ parts }) => parts.includes("steps")).flatMap((model) => {
  const says = model.title.toLowerCase();
  const stages = model.parts.includes("preferment") ? [true, false] : [false];
  return stages.flatMap((isStaged) =>
    [METRIC, US].map((units) =>
      kind(`${says}${isStaged ? " in stages" : ""}${units === US ? " in ounces" : ""}`, model, units, isStaged),
    ),
  );
});

/** All of them in a long run; otherwise every other one, so that each template is there once and both sets of units are. */
export const TRIED_KINDS: readonly Kind[] = KINDS.filter((_, at) => IS_LONG || (at + (at >> 1)) % 2 === 0);

/** Those of one template. */
export const kindsOf = (name: string): readonly Kind[] => KINDS.filter(({ model }) => model.name === name);

/** Of every template one, in stages where it has them, grams and ounces in turn. */
export const ONE_OF_EACH: readonly Kind[] = TEMPLATES.flatMap(({ name }, at) => kindsOf(name)[at % 2] ?? []);

const MONEY: Values = {
  price_typed: [0.8, null, 0.5, 3, 7, 1],
  size_price: [3, 2],
  packaging: 0.05,
  labour_mix: 60,
  labour_pieces: 30,
  labour_rate: 20,
  overhead_labour: 2,
  overhead_oven: 5,
  broken: 0.03,
  reduced_sales: 4,
  margin_wanted: 0.6,
  tax: 0.07,
  unsold: 0.04,
};
/** Sizes for those that have none in their sample; as many pieces as theirs have are not needed here. */
const SIZES: Values = {
  size_name: ["large", "small"],
  size_pieces: [24, 30],
  size_weight: [680, 340],
  size_loss: [0.1, 0.12],
};
/** The sample in ounces, °F and inches, as somebody who bakes by them would say it. */
const IN_US: Values = {
  size_weight: [24, 12],
  mixer_limit: 700,
  mixer_least: 140,
  step_coarse: 0.25,
  step_fine: 0.05,
  tin_size_1: 8.5,
  tin_size_2: 4.5,
  tin_size_3: 3.5,
  tin_size_4: 7.5,
  tin_size_5: 3.5,
  dough_target: 78,
  flour_temp: 70,
  room_temp: 73,
  preferment_temp: 71,
  tap_temp: 57,
  friction_own: 15,
  size_diameter: [10, 13],
  per_area: 0.09,
  keep: 10,
  egg_weight: 1.75,
};

const ROUND_IN_US: Values = { tin_size_1: 8, tin_size_2: 2, tin_size_3: null, tin_size_4: null, tin_size_5: null };
const asLongAs = (column: Values[string] | undefined, value: Values[string]): Values[string] =>
  Array.isArray(value) && Array.isArray(column) ? value.slice(0, column.length) : value;

/** The sheet of a kind in a workbook of its own, and what brings it back. */
export type Trial = { readonly kind: Kind; readonly sheet: string; readonly data: string };

const trials = new Map<string, Promise<Trial>>();

/** Built once for all that try it. */
export function trialOf(kind: Kind, values: Values = {}): Promise<Trial> {
  const key = `${kind.says} ${JSON.stringify(values)}`;
  const trial = trials.get(key) ?? build(kind, values);
  trials.set(key, trial);
  return trial;
}

async function build(kind: Kind, values: Values): Promise<Trial> {
  const book = await openBook();
  const { sheet } = builtIn(book, kind, values);
  return { kind, sheet, data: JSON.stringify(book.engine.data()) };
}

/** The sheet of a kind in a workbook that is there. */
export function builtIn(book: Book, kind: Kind, values: Values = {}): Sheet {
  const cells = kind.model.bands
    .flat()
    .flatMap((item) =>
      "table" in item
        ? item.columns.map(({ name }) => name)
        : item.lines.flatMap((line) => line.cells.map(({ name }) => name)),
    );
  const inUnits =
    kind.units === US
      ? Object.fromEntries(
          Object.entries({ ...IN_US, ...(kind.model.sample.tin_shape === "round" ? ROUND_IN_US : {}) })
            .filter(([name]) => cells.includes(name))
            .map(([name, value]) => [name, asLongAs(kind.model.sample.size_name, value)]),
        )
      : {};
  const parts = kind.model.parts.filter(
    (part) => part !== "cost" && part !== "label" && (part !== "preferment" || kind.isStaged),
  );
  const of = { ...(cells.includes("size_weight") ? SIZES : {}), ...kind.model.sample, ...inUnits, ...MONEY, ...values };
  return book.build(kind.model.name, of, { ...kind.units, parts });
}

/** A fresh copy, scaled one way. */
export async function opened({ kind, sheet, data }: Trial, by = "pieces"): Promise<Tried> {
  const book: Book = await openBook({ data: JSON.parse(data) as WorkbookData });
  const tried: Tried = { book, sheet: book.sheet(sheet), units: kind.units, ways: kind.ways };
  const amount = by === "pieces" ? "" : by === "tins" || by === "trays" ? 30 : kind.units === US ? 650 : 18_500;
  book.engine.together(() => {
    tried.sheet.type("by", by);
    tried.sheet.type("amount", String(amount));
  });
  return tried;
}

/** What was tried and what came out: figures that were compared, and what was wrong beside a blank check line. */
export type Outcome = { figures: number; slips: number; named: number; readonly wrong: string[] };
export const outcome = (): Outcome => ({ figures: 0, slips: 0, named: 0, wrong: [] });

function judge(tried: Tried, says: string, into: Outcome): void {
  const { check, figures, wrong } = verdict(tried);
  into.figures += figures;
  into.slips += 1;
  if (check !== "") into.named += 1;
  if (wrong.length > 0) into.wrong.push(`${says}: ${wrong.slice(0, 3).join("; ")}`);
}

/** One slip after the other on one copy, each taken back before the next; they change one cell. */
export function trySlips(tried: Tried, slips: readonly (Slip & { readonly at: string })[], into: Outcome): void {
  let takeBack = () => {};
  for (const { says, act, at } of slips) {
    tried.book.engine.together(() => {
      takeBack();
      takeBack = keeping(tried, at);
      act(tried);
    });
    judge(tried, says, into);
  }
}

/** A slip that moves rows or columns about, which is not taken back: the copy is used up. */
export function trySlip(tried: Tried, { says, act }: Slip, into: Outcome): void {
  tried.book.engine.together(() => act(tried));
  judge(tried, says, into);
}
