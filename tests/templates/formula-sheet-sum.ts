// What a formula sheet must show, summed from what is typed on its page alone. Shares no code with the templates.

/** A cell as it stands on the page: "" where it is blank. */
export type Cell = number | string | boolean | { readonly error: string };
export type Row = { readonly row: number; readonly cells: Readonly<Record<string, Cell>> };
export type Page = {
  readonly isOunces: boolean;
  readonly isFahrenheit: boolean;
  readonly isInches: boolean;
  readonly isStaged: boolean;
  /** Prices of ingredients by their names; none where they are typed on the page. */
  readonly prices?: ReadonlyMap<string, number>;
  readonly inputs: Readonly<Record<string, Cell>>;
  readonly sizes: readonly Row[];
  readonly ingredients: readonly Row[];
  readonly totalRow: number;
  readonly steps: readonly Row[];
};
/** A figure, and how far what is shown may be from it because it is shown rounded. */
export type Figure = { readonly is: number; readonly within: number };
export type Sum = { readonly faults: readonly string[]; readonly figures: ReadonlyMap<string, Figure> };

/** 1 oz and 1 in³ (international yard and pound agreement, 1959). */
const OUNCE = 28.349523125;
const CUBIC_INCH = 16.387064;
/** Degrees of water that melting ice takes: 333.55 kJ/kg over 4.186 kJ/kg·K. */
const MELTING = 333.55 / 4.186;

/** Spaces and signs without width that get into cells from web pages and word processors. */
const ODD = /[\s\u00a0\u2000-\u200f\u202f\u205f\u2060\u3000\ufeff]/g;
const plain = (cell: Cell | undefined): string => (typeof cell === "string" ? cell.replace(ODD, "").toLowerCase() : "");
const cleaned = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell.replace(ODD, " ").replace(/ +/g, " ").trim().toLowerCase() : "";
const isBlank = (cell: Cell | undefined): boolean => cell === "" || cell === undefined;

const TYPES = "flour water salt yeast sugar fat egg dairy grain fruit ice other".split(" ");
const STARTERS = "starter levain sourdough poolish biga sponge sour preferment".split(" ");

/** Flour as a part of a row and what it is; undefined where the type is none. */
export function typeOf(cell: Cell | undefined): { readonly word: string; readonly flour: number } | undefined {
  const text = plain(cell).replace(/[(),]|hydration/g, "");
  const word = TYPES.find((one) => text === one || text === `${one}s`);
  if (word !== undefined) return { word, flour: word === "flour" ? 1 : 0 };
  const [, first, name, last] = /^(?:(\d+(?:\.\d+)?)%)?([a-z]+)(?:(\d+(?:\.\d+)?)%)?$/.exec(text) ?? [];
  const hydration = Number(first ?? last ?? 0);
  if (!STARTERS.some((one) => name === one || name === `${one}s`) || (first !== undefined && last !== undefined))
    return undefined;
  return hydration > 0 && hydration <= 500 ? { word: "starter", flour: 100 / (100 + hydration) } : undefined;
}

/** The least and the most of every cell that is a number. */
const BOUNDS: Readonly<Record<string, readonly [number, number]>> = {
  held_share: [0, 0.5],
  minutes: [0, 120],
  tin_fill: [0.05, 2],
  tin_own: [10, 200_000],
  pre_share: [0, 1],
  pre_hydration: [0.3, 2],
  pre_yeast: [0, 0.1],
  pre_hours: [0, 72],
  ready: [0, 1],
  oven_takes: [1, 100_000],
  oven_reload: [0, 600],
  handling_loss: [0, 0.3],
  step_coarse: [0.01, 500],
  step_fine: [0.001, 100],
  margin_wanted: [0, 0.99],
  tax: [0, 1],
  packaging: [0, 10_000],
  unsold: [0, 0.9],
  labour_minutes: [0, 100_000],
  labour_rate: [0, 100_000],
  overhead: [0, 10],
  other_costs: [0, 10_000_000],
};
const TEMPERATURES = ["dough_target", "flour_temp", "room_temp", "preferment_temp", "tap_temp"];
const TIN_SIZES = [1, 2, 3, 4, 5].map((at) => `tin_size_${at}`);

function boundsOf(name: string, { isOunces, isFahrenheit, isInches }: Page): readonly [number, number] | undefined {
  if (TEMPERATURES.includes(name)) {
    const [least, most] = name === "dough_target" ? [0, 45] : [-10, 60];
    return isFahrenheit ? [32 + least * 1.8, 32 + most * 1.8] : [least, most];
  }
  if (name === "friction_own") return isFahrenheit ? [-60, 180] : [-30, 100];
  if (name === "mixer_limit" || name === "mixer_least") return isOunces ? [1, 100_000] : [10, 2_000_000];
  if (TIN_SIZES.includes(name)) return isInches ? [0.4, 60] : [1, 150];
  return BOUNDS[name];
}

/** Adds up a page. Whatever cannot be read, or lies out of bounds, is a fault: the check line must say something then. */
export function sumOf(page: Page): Sum {
  const faults: string[] = [];
  const figures = new Map<string, Figure>();
  const put = (name: string, is: number, decimals?: number) =>
    figures.set(name, {
      is,
      within: (decimals === undefined ? 0 : 0.5 / 10 ** decimals) + 1e-9 * Math.abs(is) + 1e-12,
    });
  const graded = (is: number) => (page.isOunces ? 2 : is >= 99.5 ? 0 : is >= 9.95 ? 1 : 2);
  const number = (cell: Cell | undefined, least: number, most: number, where: string): number | undefined => {
    if (isBlank(cell)) return undefined;
    if (typeof cell === "number" && cell >= least && cell <= most) return cell;
    faults.push(`${where}: ${JSON.stringify(cell)}`);
    return undefined;
  };
  const inputs = Object.fromEntries(
    Object.entries(page.inputs).flatMap(([name, cell]) => {
      const bounds = boundsOf(name, page);
      return bounds === undefined ? [] : [[name, number(cell, ...bounds, name)]];
    }),
  );
  const of = (name: string): number => inputs[name] ?? 0;
  const words = (name: string): string => plain(page.inputs[name]);

  const by = words("by");
  if (!["pieces", "tins", "dough", "flour"].includes(by)) faults.push(`by: ${by}`);
  const amount = by === "pieces" ? 0 : (number(page.inputs.amount, 1, 1e7, "amount") ?? 0);
  if (by !== "pieces" && amount === 0) faults.push("no amount");
  const handling = of("handling_loss");

  const isTypedPieces = page.sizes.some(({ cells }) => typeof cells.size_pieces === "number");
  const [lightest, heaviest] = page.isOunces ? [0.2, 700] : [5, 20_000];
  // A size that cannot be read takes the others' shares with it, and by pieces all weights.
  let isSizeLost = false;
  const sizes = page.sizes.map(({ row, cells }) => {
    const typed = number(cells.size_pieces, 0, 1e6, `pieces ${row}`);
    if (typed !== undefined && !Number.isInteger(typed)) faults.push(`parts of a piece in ${row}`);
    const pieces = typed ?? (by !== "pieces" && !isTypedPieces ? 1 : undefined);
    const weight = number(cells.size_weight, lightest, heaviest, `weight ${row}`);
    const loss = number(cells.size_loss, 0, 0.5, `loss ${row}`);
    const price = number(cells.size_price, 0, 1e6, `price ${row}`);
    const isAny = [cells.size_pieces, cells.size_weight, cells.size_loss].some((cell) => !isBlank(cell));
    const isLossRead = isBlank(cells.size_loss) || loss !== undefined;
    const counts = pieces !== undefined && weight !== undefined && isLossRead;
    if (isAny && !counts) isSizeLost = true;
    if (isAny && !counts) faults.push(`size in ${row} is not whole`);
    const scaling = counts ? weight / (1 - (loss ?? 0)) : 0;
    return { row, counts, pieces: pieces ?? 0, scaling, dough: (scaling * (pieces ?? 0)) / (1 - handling), price };
  });
  const sizesDough = sizes.reduce((sum, { dough }) => sum + dough, 0);

  const rows = page.ingredients.map(({ row, cells }) => {
    const typed = number(cells.percent, 0, Number.POSITIVE_INFINITY, `percent ${row}`);
    const type = typeOf(cells.kind);
    if (typed === undefined && !isBlank(cells.ingredient) && !isBlank(cells.kind)) faults.push(`no percent in ${row}`);
    if (typed !== undefined && type === undefined) faults.push(`type in ${row}: ${JSON.stringify(cells.kind)}`);
    const price = page.prices
      ? page.prices.get(cleaned(cells.ingredient))
      : number(cells.price_typed, 0, 1e6, `price ${row}`);
    return {
      row,
      typed,
      percent: typed ?? 0,
      word: type?.word ?? "other",
      flour: type?.flour ?? 0,
      price,
      name: cells.ingredient,
    };
  });
  const sum = rows.reduce((all, { percent }) => all + percent, 0);
  const added = rows.reduce((all, { flour, percent }) => all + (flour === 1 ? percent : 0), 0);
  const allFlour = rows.reduce((all, { flour, percent }) => all + flour * percent, 0);
  const base = allFlour > 10 ? 100 : 1;
  const frame = Math.abs(allFlour - base) < Math.abs(added - base) ? allFlour : added;
  if (sum > 0 && (added === 0 || Math.abs(frame / base - 1) > 0.005001)) faults.push(`flours make ${added}`);

  const capacity = capacityOf();
  const filled = (capacity * of("tin_fill")) / (page.isOunces ? OUNCE : 1);
  if (by === "tins" && filled === 0) faults.push("nothing is known of the tin");
  const dough =
    by === "pieces"
      ? sizesDough
      : by === "tins"
        ? (amount * filled) / (1 - handling)
        : by === "dough"
          ? amount
          : frame > 0
            ? (amount * sum) / frame
            : 0;
  if (dough === 0) faults.push("no dough");
  const isKnown = dough > 0 && sum > 0 && !(by === "pieces" && isSizeLost);
  const times = by === "pieces" ? 1 : sizesDough > 0 && !isSizeLost ? dough / sizesDough : 0;
  const mixes = of("mixer_limit") > 0 ? Math.max(1, Math.ceil((dough / of("mixer_limit")) * (1 - 1e-9))) : 1;
  const perPercent = sum > 0 ? dough / sum : 0;
  const coarse = of("step_coarse") || (page.isOunces ? 0.1 : 1);
  const fine = of("step_fine") || coarse;
  const onScale = (exact: number): number => {
    for (const step of [coarse, fine]) {
      const near = Math.round(Number((exact / step).toFixed(9))) * step;
      if (Math.abs(near - exact) <= exact * 0.02 * (1 + 1e-9)) return near;
    }
    return exact;
  };

  const inMix = (word: string) =>
    rows.reduce((all, one) => all + (one.word === word ? (one.percent * perPercent) / mixes : 0), 0);
  const [waterMix, yeastMix] = [inMix("water"), inMix("yeast")];
  const from = cleaned(page.inputs.pre_from);
  const isPreFlour = ({ flour, name }: (typeof rows)[number]) => flour === 1 && (from === "" || cleaned(name) === from);
  const isPre = page.isStaged && inputs.pre_share !== undefined && inputs.pre_hydration !== undefined;
  const preFlour = isPre ? (of("pre_share") * allFlour * perPercent) / mixes : 0;
  const preFlourRows = rows.reduce((all, one) => all + (isPreFlour(one) ? (one.percent * perPercent) / mixes : 0), 0);
  const [preWater, preYeast] = [preFlour * of("pre_hydration"), preFlour * of("pre_yeast")];
  const most = 1 + 1e-9;
  if (isKnown && (preFlour > preFlourRows * most || preWater > waterMix * most || preYeast > yeastMix * most))
    faults.push("the preferment has more than the dough");
  const preOf = (one: (typeof rows)[number]): number => {
    if (isPreFlour(one)) return preFlourRows > 0 ? preFlour / preFlourRows : 0;
    if (one.word === "water") return waterMix > 0 ? preWater / waterMix : 0;
    return one.word === "yeast" && yeastMix > 0 ? preYeast / yeastMix : 0;
  };

  let [cost, onScales, preScales, preExact, priced] = [0, 0, 0, 0, 0];
  for (const one of rows) {
    const { row, typed, percent, price } = one;
    if (typed === undefined || !isKnown) continue;
    const weight = percent * perPercent;
    const [mix, pre] = [onScale(weight / mixes), onScale((weight / mixes) * preOf(one))];
    put(`weight@${row}`, weight, graded(weight));
    put(`grams@${row}`, weight);
    put(`of_whole@${row}`, percent / sum);
    if (page.isStaged) {
      put(`pre_shown@${row}`, pre);
      put(`final_shown@${row}`, mix - pre);
    } else put(`per_mix@${row}`, mix);
    onScales += mix;
    preScales += pre;
    preExact += (weight / mixes) * preOf(one);
    if (price === undefined) continue;
    const rowCost = (weight * price) / (page.isOunces ? 16 : 1000);
    put(`price_shown@${row}`, price);
    put(`cost_shown@${row}`, rowCost);
    cost += rowCost;
    priced++;
  }
  const { totalRow } = page;
  if (isKnown) {
    put(`weight@${totalRow}`, dough, 2);
    if (page.isStaged) {
      put(`pre_shown@${totalRow}`, preScales);
      put(`final_shown@${totalRow}`, onScales - preScales);
      put("pre_mix_shown", preExact, preExact >= 99.5 ? 0 : 1);
    } else put(`per_mix@${totalRow}`, onScales);
    if (priced > 0) put(`cost_shown@${totalRow}`, cost);
    put("result: dough", dough);
    put("result: mixes", mixes);
    put("result: mix", dough / mixes);
    put("total %", (100 * sum) / base, 1);
  }

  const work = (of("labour_minutes") / 60) * of("labour_rate") * (1 + of("overhead")) + of("other_costs");
  if (isKnown && priced > 0) put("cost_all_shown", cost + work);
  let piecesNow = 0;
  let doughOfPieces = 0;
  let firstScaling = 0;
  for (const { row, counts, pieces, scaling, dough: own, price } of sizes) {
    if (!counts) continue;
    firstScaling ||= scaling;
    const now = by === "pieces" ? pieces : Math.floor(Number((pieces * times).toFixed(6)));
    piecesNow += now;
    doughOfPieces += (now * scaling) / (1 - handling);
    put(`scaled_shown@${row}`, scaling, graded(scaling));
    if (times > 0) put(`dough_shown@${row}`, own * times, graded(own * times));
    if (by !== "pieces" && times > 0) put(`now_shown@${row}`, now);
    if (!isKnown || priced === 0) continue;
    const sold = 1 - of("unsold");
    const each = ((scaling / (1 - handling)) * (cost + work)) / dough / sold + of("packaging") / sold;
    put(`cost_each@${row}`, each);
    if (price !== undefined && price > 0) put(`margin_shown@${row}`, 1 - (each * (1 + of("tax"))) / price);
    if (of("margin_wanted") > 0) put(`wanted_shown@${row}`, (each / (1 - of("margin_wanted"))) * (1 + of("tax")));
  }
  if (isKnown && piecesNow > 0 && by !== "tins") put("result: pieces", piecesNow);
  if (isKnown && by === "tins") put("result: tins", amount);
  if (isKnown && by !== "pieces" && piecesNow > 0) put("result: left", Math.max(0, dough - doughOfPieces));
  if (capacity > 0) put("capacity_shown", capacity);
  const inTin = by === "pieces" ? firstScaling : filled;
  if (inTin > 0) put("tin_dough_shown", inTin, inTin >= 99.5 ? 0 : 1);

  water();
  method();
  return { faults, figures };

  function capacityOf(): number {
    const shape = words("tin_shape");
    if (of("tin_own") > 0) return of("tin_own");
    const [one, two, three, four, five] = TIN_SIZES.map((name) => inputs[name]);
    const times = page.isInches ? CUBIC_INCH : 1;
    if (shape === "box" && one && two && three && (four === undefined) === (five === undefined)) {
      const [length, width] = [four ?? one, five ?? two];
      // Simpson's rule is exact here: ends and middle.
      const middle = ((one + length) / 2) * ((two + width) / 2);
      return (three / 6) * (one * two + length * width + 4 * middle) * times;
    }
    if (shape === "round" && one && two && four === undefined && five === undefined) {
      const [top, bottom] = [one / 2, (three ?? one) / 2];
      return ((Math.PI * two) / 3) * (top ** 2 + top * bottom + bottom ** 2) * times;
    }
    return 0;
  }

  function water(): void {
    const given = ["flour_temp", "room_temp", ...(page.isStaged ? ["preferment_temp"] : [])]
      .map((name) => inputs[name])
      .filter((one) => one !== undefined);
    const poured = Math.max(0, waterMix - preWater);
    if (isKnown) {
      put("water_final_shown", poured, poured >= 99.5 ? 0 : 1);
      put("held_all", poured * mixes * of("held_share"), 1);
      put("held_shown", Math.round(Number(((poured * of("held_share")) / coarse).toFixed(9))) * coarse);
      if (allFlour > 0) {
        const starters = rows.reduce((all, { flour, percent }) => all + (flour > 0 ? (1 - flour) * percent : 0), 0);
        const ices = rows.reduce(
          (all, { word, percent }) => all + (word === "water" || word === "ice" ? percent : 0),
          0,
        );
        put("result: hydration", (100 * (starters + ices)) / allFlour, 1);
      }
    }
    const { dough_target: target, flour_temp, room_temp, friction_own: friction, tap_temp: tap } = inputs;
    const known = [target, flour_temp, room_temp, friction];
    if (target === undefined || friction === undefined || known.includes(undefined)) return;
    const wanted = (given.length + 1) * target - given.reduce((all, one) => all + one, 0) - friction;
    put("water_temp_shown", wanted);
    if (isKnown) put("result: water at", wanted, 1);
    if (isKnown) put("result: water", poured);
    if (tap === undefined || !isKnown) return;
    const [melts, takes] = page.isFahrenheit ? [32, MELTING * 1.8] : [0, MELTING];
    const share = wanted >= tap ? 0 : (tap - wanted) / (tap - melts + takes);
    const ice = share * poured;
    put("ice_shown", ice, ice >= 99.5 ? 0 : 1);
    put("tap_water_shown", poured - ice, poured - ice >= 99.5 ? 0 : 1);
  }

  function method(): void {
    const oven = cleaned(page.inputs.oven_step);
    // By tins, what goes into the oven is the tins.
    const baked = by === "tins" ? amount : piecesNow;
    const loads =
      of("oven_takes") > 0 && baked > 0 && isKnown ? Math.ceil((baked / of("oven_takes")) * (1 - 1e-9)) : undefined;
    const steps = page.steps.map(({ row, cells }) => {
      const minutes = number(cells.step_minutes, 0, 10_080, `minutes ${row}`) ?? 0;
      const isBaking = oven !== "" && cleaned(cells.step) === oven;
      const again = isBaking && loads !== undefined ? (loads - 1) * (minutes + of("oven_reload")) : 0;
      if (typeof cells.step === "object") faults.push(`step ${row}`);
      return { row, isNamed: !isBlank(cells.step), isBaking, minutes: minutes + again };
    });
    if (loads !== undefined && loads > 1 && oven !== "" && !steps.some(({ isBaking }) => isBaking))
      faults.push(`no step is called ${oven}`);
    if (loads !== undefined) put("loads_shown", loads);
    const baking = steps.reduce((all, { isBaking, minutes }) => all + (isBaking ? minutes : 0), 0);
    if (baking > 0) put("oven_minutes_shown", baking);
    if (inputs.ready === undefined) return;
    const ready = Math.round(1440 * inputs.ready);
    const before = cleaned(page.inputs.pre_step);
    let isDone = false;
    steps.forEach(({ row, isNamed }, at) => {
      const start = ready - Math.round(steps.slice(at).reduce((all, { minutes }) => all + minutes, 0));
      if (isNamed) {
        put(`start_shown@${row}`, (((start % 1440) + 1440) % 1440) / 1440);
        put(`day_shown@${row}`, Math.floor(start / 1440));
      }
      const isStep = before !== "" && cleaned(page.steps[at]?.cells.step) === before;
      if (isDone || !isStep || inputs.pre_hours === undefined || !page.isStaged) return;
      isDone = true;
      const mixed = start - Math.round(60 * of("pre_hours"));
      put("pre_start", (((mixed % 1440) + 1440) % 1440) / 1440);
      put("pre_day", Math.floor(mixed / 1440));
    });
  }
}
