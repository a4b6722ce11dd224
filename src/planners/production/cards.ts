// Cards of a shift: one for each dough that is mixed in it, at its amounts, with its times; as sheets, or as pages to print.
import { refuse } from "../../../shared/base/refusal.ts";
import { showNumber } from "../../../shared/base/show.ts";
import type { CardAmount, CardData } from "../../../shared/card/data.ts";
import { staffCard } from "../../../shared/card/staff-card.ts";
import { cardHeights } from "../../../shared/card/type-size.ts";
import { clockAt, clockText, dayOf, dayWords, isoOf } from "../../../shared/production/clock.ts";
import type { DoughDay } from "../../../shared/production/plan.ts";
import type { Task } from "../../../shared/production/timetable.ts";
import type { NewSheet } from "../../../shared/protocol/plan-message.ts";
import type { NightPage } from "../../../shared/protocol/production.ts";
import { plan } from "../../../shared/sheet/plan.ts";
import type { SheetPlan } from "../../../shared/sheet/sheet-plan.ts";
import { cardData, waterFact } from "../card-data.ts";
import { iceWeights } from "../card-stages.ts";
import { readFormulaSheet } from "../formula-sheet.ts";
import { make, type Steps, withNotes } from "../steps.ts";
import { type DayTemperatures, dayTemperatures, temperatureIn, waterFor } from "./day-water.ts";
import { enteredTemperatures } from "./lots.ts";
import { figuresOf, type Night, overNight, sheetOf } from "./night.ts";
import { noteOf } from "./note.ts";
import { shiftSays } from "./tab-names.ts";
import { type Mixing, mixingsOf } from "./weigh-up.ts";

type Raw = Readonly<Record<string, unknown>>;
type Planned = { readonly title: string; readonly code: string; readonly name: string; readonly plan: SheetPlan };

/** Each dough's card as a sheet of its own, one after the other; one that is there is renewed under its name. */
export function* buildCards(question: Raw): Steps<NewSheet> {
  return yield* overNight(question, function* (night): Steps<NewSheet> {
    const cards = yield* plannedCards(night);
    const sheets: string[] = [];
    const notes: (string | undefined)[] = [];
    for (const { plan: drawn, title, code, name } of cards) {
      const renews = { cell: "A2", begins: `${code} ·`, ends: fromSays(night, name) } as const;
      const { sheet, note } = yield* make(drawn, title, [], { renews });
      sheets.push(sheet);
      notes.push(note);
    }
    const [first = "", ...others] = sheets;
    const more = others.length === 0 ? undefined : `And ${others.map((one) => `“${one}”`).join(", ")}.`;
    return withNotes({ sheet: first }, more, ...notes);
  });
}

/** The same as pages: what stands in each row, and how. */
export function* nightPages(question: Raw): Steps<{ pages: NightPage[] }> {
  return yield* overNight(question, function* (night): Steps<{ pages: NightPage[] }> {
    return { pages: (yield* plannedCards(night)).map(pageOf) };
  });
}

function* plannedCards(night: Night): Steps<Planned[]> {
  const mixings = mixingsOf(night);
  // A preferment and the final mix of one batch stand on one card.
  const batches = mixings.filter(({ of }, at) => mixings.findIndex((one) => one.of === of) === at);
  if (batches.length === 0) refuse("Nothing is mixed in this shift. Choose other hours, or enter orders.");
  const sheets = mixings.map(({ of }) => sheetOf(night.all, of.formula.name));
  const temperatures = dayTemperatures(sheets, yield* enteredTemperatures(shiftSays(night)));
  const cards: Planned[] = [];
  for (const mixing of batches) {
    const { of } = mixing;
    const sheet = yield* readFormulaSheet(of.formula.name, true);
    const card = cardData(sheet, isoOf(of.day));
    const amount = amountOf(card, night, mixing);
    const inShift = ofShift(card, night, mixing, amount.wanted / amount.base);
    const data = withDayWater(inShift, night, of, temperatures);
    const { model, values } = staffCard(data, amount, "values");
    const options = { weight: data.unit, temperature: "C", length: "cm", parts: [] } as const;
    const drawn = plan(model, options, values);
    cards.push({
      title: `${of.code} ${sheet.title}`,
      code: of.code,
      name: of.formula.name,
      plan: { ...drawn, heights: cardHeights(drawn, model) },
    });
  }
  return cards;
}

/** Where a card comes from: one of another production is another card. */
const fromSays = ({ now }: Night, formula: string): string => `from “${now.tab.name}” and “${formula}”`;

/** The card says which batch it is and when its steps begin that night; the levain comes out of the production's feeds. */
function ofShift(data: CardData, night: Night, { of, at }: Mixing, times: number): CardData {
  const { changes, plan: production } = night;
  const isChained = of.formula.levains.some(({ from }) => production.chains.some(({ levain }) => levain.name === from));
  const feeds = production.chains.flatMap(({ levain, chain }) =>
    chain.feeds.flatMap((feed) =>
      feed.uses.some(({ by }) => by === of.code)
        ? [
            `Levain from the feed at ${clockText(clockAt(feed.at, changes))} on ${dayWords(dayOf(clockAt(feed.at, changes)))} (${levain.name}).`,
          ]
        : [],
    ),
  );
  const mixed = at === null ? "" : `mix at ${clockText(at)} on ${dayWords(dayOf(at))} · `;
  return {
    ...data,
    from: `${of.code} · ${mixed}ready ${dayWords(of.day)} · ${fromSays(night, of.formula.name)}`,
    mixerLimit: limitOf(night, data.mixerLimit),
    // As the formula sheet would have them: the card makes so many times as much.
    pieces: piecesIn(of) === 0 ? null : piecesIn(of) / times,
    sizes: [
      // Sizes that nobody ordered are not divided.
      ...data.sizes.flatMap((size, place): CardData["sizes"] => {
        if (of.formula.sizes.length + of.taken.length <= 1) return [{ ...size, pieces: null }];
        const pieces = (of.pieces[place] ?? 0) / times;
        return pieces > 0 ? [{ ...size, pieces }] : [];
      }),
      ...partSizes(night, of, times),
    ],
    added: isChained ? data.added.filter(({ isFeed }) => isFeed !== true) : data.added,
    facts: [...feeds, ...notesFor(night, of), ...data.facts],
    timed: of.tasks.length === 0 ? data.timed : timesOf(of.tasks, data, night),
  };
}

/** Water and ice for the day's temperatures, as the weigh-up of the shift has them. */
function withDayWater(data: CardData, night: Night, { formula }: DoughDay, day: DayTemperatures): CardData {
  const sheet = sheetOf(night.all, formula.name);
  const unit = temperatureIn([sheet]);
  const water = waterFor(sheet, day, unit);
  if (water === null) return data;
  const last = data.stages.length - 1;
  const poured = sheet.parts.reduce(
    (sum, { kind }, row) => sum + (/^water/i.test(kind) ? (data.stages[last]?.weights[row] ?? 0) : 0),
    0,
  );
  const ice = poured * water.ice;
  const others = data.added.filter(({ isIce }) => isIce !== true);
  const levain = others.filter(({ stage }) => stage > 0 && stage === last && last > 0).slice(0, 1);
  const iced = ice > 0 ? iceWeights(ice, poured - ice, water.at, `°${unit}`, last) : [];
  const dayText = `Room ${showNumber(day.room ?? 0, 1)}, flour ${showNumber(day.flour ?? 0, 1)} °${unit}.`;
  return {
    ...data,
    water: `${waterFact(water.at, unit)} ${dayText}`,
    added: [...levain, ...iced, ...others.filter((one) => !levain.includes(one))],
  };
}

/** What was noted with the orders of a dough, and of what it goes into. */
function notesFor({ now }: Night, { formula, day, taken }: DoughDay): string[] {
  const products = [formula.name, ...taken.map(({ by }) => by)];
  const orders = now.orders.filter((one) => one.note !== "" && one.day === day && products.includes(one.product));
  const notes = orders.flatMap((order) => {
    const note = noteOf(order, now);
    return note === "" ? [] : [`Order${order.customer === "" ? "" : ` of ${order.customer}`}: ${note}.`];
  });
  return [...new Set(notes)];
}

const piecesIn = ({ pieces, taken }: DoughDay): number =>
  [...pieces, ...taken.map((one) => one.pieces ?? 0)].reduce((sum, one) => sum + one, 0);

/** What each piece of other products takes of it; without what they waste, which is scaled besides. */
function partSizes({ parts }: Night, { formula, taken }: DoughDay, times: number): CardData["sizes"] {
  return taken.flatMap(({ by, pieces }) => {
    const taken = parts.find(({ taker, part }) => taker.name === by && part.name === formula.name);
    if (taken === undefined || pieces === null) return [];
    const row = taken.taker.column("ingredient").findIndex((name) => name.toLowerCase() === taken.row.toLowerCase());
    const weight = taken.taker.figures("part_each")[row];
    return weight === null || weight === undefined ? [] : [{ name: by, weight, pieces: pieces / times }];
  });
}

/** The mixer's limit as the production sheet has it: the formula's, and what the largest mixer takes. */
function limitOf({ now }: Night, ownLimit: number | null): number | null {
  const mixers = now.machines.filter(({ kind, number }) => kind === "mixer" && number > 0);
  const limits = ownLimit !== null && ownLimit > 0 ? [ownLimit] : [];
  if (mixers.length > 0 && mixers.every(({ capacity }) => capacity !== null))
    limits.push(Math.max(...mixers.map(({ capacity }) => capacity ?? 0)));
  return limits.length === 0 ? null : Math.min(...limits);
}

/** Each step once, with the clock of every mix and load. */
function timesOf(tasks: readonly Task[], data: CardData, { changes }: Night): CardData["timed"] {
  const rows = new Map<string, Task[]>();
  for (const task of tasks) rows.set(task.step, [...(rows.get(task.step) ?? []), task]);
  return [...rows].map(([step, some]) => {
    const words = data.timed.find(
      (one) => one.step === step || one.step.startsWith(`${step} at `) || one.step.startsWith(`${step}:`),
    );
    const starts = some.map(({ start }) => clockText(clockAt(start, changes)));
    const [first] = some;
    const minutes = first === undefined ? null : first.end - first.start;
    return { step: words?.step ?? step, minutes, start: starts.slice(0, MAX_TIMES).join(", "), day: "" };
  });
}

const MAX_TIMES = 6;

/** As many mixes and as much dough as the production says. */
function amountOf(data: CardData, night: Night, { of }: Mixing): CardAmount {
  const mixed = figuresOf(night, of).mixed?.value ?? of.batch.dough;
  return { by: "dough", says: data.what, base: data.dough, wanted: mixed };
}

function pageOf({ title, plan: { values, appearances, widths, aligned } }: Planned): NightPage {
  return {
    title,
    widths,
    rows: values.map((row, at) =>
      row.map((value, column) => {
        const appearance = appearances[at]?.[column];
        return {
          text: String(value),
          size: appearance?.size ?? 10,
          isBold: appearance?.weight === "bold",
          isRuled: appearance?.border !== undefined,
          side: aligned[at]?.[column] ?? "left",
        };
      }),
    ),
  };
}
