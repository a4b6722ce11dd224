// What a formula sheet must show, summed from what is typed on its page alone. Shares no code with the templates.
import { boundsOf, TIN_SIZES } from "./formula-sheet-bounds.ts";

/** A cell as it stands on the page: "" where it is blank. */
export type Cell = number | string | boolean | { readonly error: string };
export type Row = { readonly row: number; readonly cells: Readonly<Record<string, Cell>> };
export type Page = {
  readonly isOunces: boolean;
  readonly isFahrenheit: boolean;
  readonly isInches: boolean;
  readonly isStaged: boolean;
  /** What it can be scaled to. */
  readonly ways: readonly string[];
  /** Sizes go by their diameter. */
  readonly isRound: boolean;
  /** Fat is rolled into the dough. */
  readonly isRolled: boolean;
  /** Part of it is built from a seed. */
  readonly isSeeded: boolean;
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
  if (!page.ways.includes(by)) faults.push(`by: ${by}`);
  const amount = by === "pieces" ? 0 : (number(page.inputs.amount, 0.1, 1e7, "amount") ?? 0);
  if (by !== "pieces" && amount === 0) faults.push("no amount");
  const handling = of("handling_loss");

  const isTypedPieces = page.sizes.some(({ cells }) => typeof cells.size_pieces === "number");
  const [lightest, heaviest] = page.isOunces ? [0.2, 700] : [5, 20_000];
  const [smallest, widest] = page.isInches ? [1, 60] : [3, 150];
  const disc = (diameter: number) => Math.PI * (diameter / 2) ** 2;
  const known = of("known_diameter") > 0 ? of("known_weight") / disc(of("known_diameter")) : 0;
  if (page.isRound && known > 0 && of("per_area") > 0 && Math.abs(known / of("per_area") - 1) > 0.0101)
    faults.push("the weight per area is not the round's");
  const perArea = of("per_area") || known;
  // A size that cannot be read takes the others' shares with it, and by pieces all weights.
  let isSizeLost = false;
  const sizes = page.sizes.map(({ row, cells }) => {
    const typed = number(cells.size_pieces, 0, 1e6, `pieces ${row}`);
    if (typed !== undefined && !Number.isInteger(typed)) faults.push(`parts of a piece in ${row}`);
    const pieces = typed ?? (by !== "pieces" && !isTypedPieces ? 1 : undefined);
    const diameter = number(cells.size_diameter, smallest, widest, `diameter ${row}`);
    const area = page.isRound && diameter !== undefined ? disc(diameter) : undefined;
    const weight = page.isRound
      ? area !== undefined && perArea > 0
        ? area * perArea
        : undefined
      : number(cells.size_weight, lightest, heaviest, `weight ${row}`);
    const loss = number(cells.size_loss, 0, 0.5, `loss ${row}`);
    const price = number(cells.size_price, 0, 1e6, `price ${row}`);
    const isAny = [cells.size_pieces, cells.size_weight, cells.size_loss, cells.size_diameter].some(
      (cell) => !isBlank(cell),
    );
    const isLossRead = isBlank(cells.size_loss) || loss !== undefined;
    const counts = pieces !== undefined && weight !== undefined && isLossRead;
    if (isAny && !counts) isSizeLost = true;
    if (isAny && !counts) faults.push(`size in ${row} is not whole`);
    const scaling = counts ? weight / (1 - (loss ?? 0)) : 0;
    const ordered = (scaling * (pieces ?? 0)) / (1 - handling);
    return { row, counts, pieces: pieces ?? 0, area, scaling, dough: ordered, price };
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

  const firstScaling = sizes.find(({ counts }) => counts)?.scaling ?? 0;
  const capacity = capacityOf();
  const filled = (capacity * of("tin_fill")) / (page.isOunces ? OUNCE : 1);
  if (by === "tins" && filled === 0) faults.push("nothing is known of the tin");
  if (by === "trays" && of("tray_pieces") * firstScaling === 0) faults.push("nothing is known of a tray");
  const rolled = rolledPart();
  const dough = by === "flour" ? (frame > 0 ? (amount * sum) / frame : 0) : orderedDough() / (1 + rolled);
  /** With what is rolled in. */
  const whole = dough * (1 + rolled);
  if (dough === 0) faults.push("no dough");
  const isKnown = dough > 0 && sum > 0 && !(by === "pieces" && isSizeLost);
  const times = by === "pieces" ? 1 : sizesDough > 0 && !isSizeLost ? whole / sizesDough : 0;
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
  if (isKnown && priced > 0) put(`cost_shown@${totalRow}`, cost);
  cost += rollIn();
  if (isKnown) {
    put(`weight@${totalRow}`, dough, 2);
    if (page.isStaged) {
      put(`pre_shown@${totalRow}`, preScales);
      put(`final_shown@${totalRow}`, onScales - preScales);
      put("pre_mix_shown", preExact, preExact >= 99.5 ? 0 : 1);
    } else put(`per_mix@${totalRow}`, onScales);
    put("result: dough", whole);
    put("result: mixes", mixes);
    put("result: mix", dough / mixes);
    put("total %", (100 * sum) / base, 1);
  }

  const work = (of("labour_minutes") / 60) * of("labour_rate") * (1 + of("overhead")) + of("other_costs");
  if (isKnown && priced > 0) put("cost_all_shown", cost + work);
  let piecesNow = 0;
  let doughOfPieces = 0;
  for (const { row, counts, pieces, area, scaling, dough: own, price } of sizes) {
    if (!counts) continue;
    if (area !== undefined) put(`area_shown@${row}`, area, 0);
    const now = by === "pieces" ? pieces : Math.floor(Number((pieces * times).toFixed(6)));
    piecesNow += now;
    doughOfPieces += (now * scaling) / (1 - handling);
    put(`scaled_shown@${row}`, scaling, graded(scaling));
    if (times > 0) put(`dough_shown@${row}`, own * times, graded(own * times));
    if (by !== "pieces" && times > 0) put(`now_shown@${row}`, now);
    if (!isKnown || priced === 0) continue;
    const sold = 1 - of("unsold");
    const each = ((scaling / (1 - handling)) * (cost + work)) / whole / sold + of("packaging") / sold;
    put(`cost_each@${row}`, each);
    if (price !== undefined && price > 0) put(`margin_shown@${row}`, 1 - (each * (1 + of("tax"))) / price);
    if (of("margin_wanted") > 0) put(`wanted_shown@${row}`, (each / (1 - of("margin_wanted"))) * (1 + of("tax")));
  }
  const isCounted = by === "tins" || by === "trays";
  if (isKnown && piecesNow > 0 && !isCounted) put("result: pieces", piecesNow);
  if (isKnown && isCounted) put(`result: ${by}`, amount);
  if (isKnown && by !== "pieces" && piecesNow > 0) put("result: left", Math.max(0, whole - doughOfPieces));
  if (capacity > 0) put("capacity_shown", capacity);
  const inTin = by === "pieces" ? firstScaling : filled;
  if (inTin > 0) put("tin_dough_shown", inTin, inTin >= 99.5 ? 0 : 1);

  water();
  eggs();
  seed();
  method();
  return { faults, figures };

  function orderedDough(): number {
    if (by === "pieces") return sizesDough;
    if (by === "tins") return (amount * filled) / (1 - handling);
    if (by === "trays") return (amount * of("tray_pieces") * firstScaling) / (1 - handling);
    return amount;
  }

  /** Fat that is rolled in, as a part of the dough that is mixed. */
  function rolledPart(): number {
    const share = of("roll_in_share");
    if (!page.isRolled || share <= 0) return 0;
    const shareOf = words("roll_in_of");
    if (shareOf === "flour") return sum > 0 ? (share * frame) / sum : 0;
    if (shareOf === "finished") {
      // More than nine tenths of fat would be no dough any more.
      if (share > 0.9) faults.push(`fat is ${share} of the finished dough`);
      return share / (1 - Math.min(share, 0.9));
    }
    if (shareOf !== "base") faults.push(`share of ${shareOf}`);
    return share;
  }

  /** What the fat to roll in costs; 0 where it has no price. */
  function rollIn(): number {
    if (!page.isRolled) return 0;
    const fat = dough * rolled;
    const price = page.prices ? page.prices.get(cleaned(page.inputs.roll_in_name)) : inputs.roll_price_typed;
    const fatCost = (fat * (price ?? 0)) / (page.isOunces ? 16 : 1000);
    const folds = ["fold_1", "fold_2", "fold_3"].map((name) => inputs[name]).filter((one) => one !== undefined);
    if (folds.length > 0)
      put(
        "layers_shown",
        folds.reduce((all, one) => all * one, 1),
      );
    if (!isKnown) return 0;
    put("base_dough_shown", dough, dough >= 99.5 ? 0 : 1);
    if (of("blocks") > 0) put("block_dough_shown", dough / of("blocks"), dough / of("blocks") >= 99.5 ? 0 : 1);
    if (rolled > 0) {
      put("roll_in_shown", fat, fat >= 99.5 ? 0 : 1);
      if (allFlour > 0) put("roll_in_of_flour_shown", fat / (allFlour * perPercent));
      if (of("blocks") > 0) put("block_fat_shown", fat / of("blocks"), fat / of("blocks") >= 99.5 ? 0 : 1);
      if (price !== undefined && price > 0) put("roll_cost_shown", fatCost);
    }
    return fatCost;
  }

  function eggs(): void {
    const many = of("egg_weight") > 0 ? inMix("egg") / of("egg_weight") : 0;
    if (isKnown && many > 0) put("eggs_shown", many, 1);
  }

  /** The seed is of the flour that is fed: what it brings itself is not fed. */
  function seed(): void {
    if (!page.isSeeded || !isKnown || !isPre || preFlour === 0) return;
    const levain = preFlour * (1 + of("pre_hydration")) * mixes + of("keep");
    const shownAs = (name: string, is: number) => put(name, is, Math.abs(is) >= 99.5 ? 0 : 1);
    shownAs("levain_shown", levain);
    const flour = levain / (1 + of("pre_hydration"));
    const [hydration, share] = [inputs.seed_hydration, of("seed_share")];
    const isWeighed = of("seed_weight") > 0;
    if (isWeighed && share > 0) faults.push("the seed has a share and a weight");
    if (hydration === undefined || (!isWeighed && share <= 0)) return;
    // Flour fed plus the seed's own flour is the levain's: fed × (1 + share ÷ (1 + hydration)) = flour.
    const used = isWeighed ? of("seed_weight") : (share * flour) / (1 + share / (1 + hydration));
    const fed = flour - used / (1 + hydration);
    const poured = levain - used - fed;
    if (fed < -1e-9 || poured < -1e-9) faults.push("the seed is more than the levain takes");
    shownAs("feed_seed_shown", used);
    shownAs("feed_flour_shown", fed);
    shownAs("feed_water_shown", poured);
  }

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
    // By tins, what goes into the oven is the tins; where a tray's pieces are asked, the trays.
    const isOnTrays = "tray_pieces" in page.inputs;
    const pieces = by === "tins" ? amount : by === "trays" ? amount * of("tray_pieces") : piecesNow;
    const trays = of("tray_pieces") > 0 ? Math.ceil((pieces / of("tray_pieces")) * (1 - 1e-9)) : 0;
    const baked = isOnTrays ? trays : pieces;
    if (isOnTrays && isKnown && trays > 0) {
      put("trays_shown", trays);
      put("tray_last_shown", pieces - of("tray_pieces") * (trays - 1));
    }
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
