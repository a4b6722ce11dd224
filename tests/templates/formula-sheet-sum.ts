// What a formula sheet must show, summed from what is typed on its page alone. Shares no code with the templates.
import { capacityOf, type Known, method, seed, water } from "./formula-sheet-blocks.ts";
import { boundsOf } from "./formula-sheet-bounds.ts";
import { cleaned, isBlank, plain, typeOf } from "./formula-sheet-words.ts";

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

/** 1 oz (international yard and pound agreement, 1959). */
const OUNCE = 28.349523125;

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
  const perKnown = of("known_diameter") > 0 ? of("known_weight") / disc(of("known_diameter")) : 0;
  if (page.isRound && perKnown > 0 && of("per_area") > 0 && Math.abs(perKnown / of("per_area") - 1) > 0.0101)
    faults.push("the weight per area is not the round's");
  const perArea = of("per_area") || perKnown;
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
  const isFilling = allFlour === 0 && (inputs.boil_off !== undefined || inputs.left_over !== undefined);
  const base = allFlour > 10 || (isFilling && sum > 10) ? 100 : 1;
  const frame = Math.abs(allFlour - base) < Math.abs(added - base) ? allFlour : added;
  if (sum > 0 && !isFilling && (added === 0 || Math.abs(frame / base - 1) > 0.005001))
    faults.push(`flours make ${added}`);

  const firstScaling = sizes.find(({ counts }) => counts)?.scaling ?? 0;
  const capacity = capacityOf(words("tin_shape"), inputs, page.isInches);
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

  let [cost, onScales, preScales, preExact, priced, unpriced] = [0, 0, 0, 0, 0, 0];
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
      // To the billionth: what is left of a subtraction is no weight.
      put(`final_shown@${row}`, mix - pre, 9);
    } else put(`per_mix@${row}`, mix);
    onScales += mix;
    preScales += pre;
    preExact += (weight / mixes) * preOf(one);
    if (price === undefined) {
      if (one.word !== "water" && one.word !== "ice") unpriced++;
      continue;
    }
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

  let piecesNow = 0;
  let doughOfPieces = 0;
  for (const { row, counts, pieces, area, scaling, dough: own } of sizes) {
    if (!counts) continue;
    if (area !== undefined) put(`area_shown@${row}`, area, 0);
    const now = nowOf(pieces);
    piecesNow += now;
    doughOfPieces += (now * scaling) / (1 - handling);
    put(`scaled_shown@${row}`, scaling, graded(scaling));
    if (times > 0) put(`dough_shown@${row}`, own * times, graded(own * times));
    if (by !== "pieces" && times > 0) put(`now_shown@${row}`, now);
  }
  const isCounted = by === "tins" || by === "trays";
  if (isKnown && piecesNow > 0 && !isCounted) put("result: pieces", piecesNow);
  if (isKnown && isCounted) put(`result: ${by}`, amount);
  if (isKnown && by !== "pieces" && piecesNow > 0) put("result: left", Math.max(0, whole - doughOfPieces));
  if (capacity > 0) put("capacity_shown", capacity);
  const inTin = by === "pieces" ? firstScaling : filled;
  if (inTin > 0) put("tin_dough_shown", inTin, inTin >= 99.5 ? 0 : 1);

  eggs();
  const summed: Known = { page, inputs, of, isKnown, mixes, coarse, put, faults, number };
  water(summed, { waterMix, preWater, allFlour, rows });
  seed(summed, isPre ? preFlour : 0);
  // By tins, what goes into the oven is the tins; where a tray's pieces are asked, the trays.
  const ovenMinutes = method(summed, by === "tins" ? amount : by === "trays" ? amount * of("tray_pieces") : piecesNow);
  if (isKnown && priced > 0) money(ovenMinutes / 60);
  return { faults, figures };

  function nowOf(pieces: number): number {
    return by === "pieces" ? pieces : Math.floor(Number((pieces * times).toFixed(6)));
  }

  /** As the batch's accounts would be: all that is paid, over the pieces that are sold of what is packed. */
  function money(ovenHours: number): void {
    const [packed, isSold, tax] = [1 - of("broken"), 1 - of("unsold"), 1 + of("tax")];
    const hour = of("labour_rate") + of("overhead_labour");
    const byWeight = (of("labour_mix") / 60) * mixes * hour + ovenHours * of("overhead_oven") + of("other_costs");
    const byPiece = (of("labour_pieces") / 6000) * hour;
    const usable = whole * (1 - of("boil_off")) * (1 - of("left_over"));
    if (unpriced === 0) put("as_price_shown", (cost / usable) * (page.isOunces ? 16 : 1000));
    put("cost_all_shown", cost + byWeight + (byPiece + of("packaging") * packed) * piecesNow);
    let [sales, isPriced] = [0, piecesNow > 0];
    for (const { row, counts, pieces, scaling, price } of sizes) {
      if (!counts) continue;
      const share = scaling / (1 - handling) / whole;
      const spent = share * (cost + byWeight - of("reduced_sales")) + byPiece + of("packaging") * packed;
      const each = spent / (packed * isSold);
      put(`cost_each@${row}`, each);
      if (price !== undefined && price > 0) put(`margin_shown@${row}`, 1 - (each * tax) / price);
      if (of("margin_wanted") > 0) put(`wanted_shown@${row}`, (each / (1 - of("margin_wanted"))) * tax);
      if (nowOf(pieces) > 0 && !(price !== undefined && price > 0)) isPriced = false;
      sales += (nowOf(pieces) * packed * isSold * (price ?? 0)) / tax;
    }
    const packaging = of("packaging") * packed * piecesNow;
    if (isPriced) put("contribution_shown", sales + of("reduced_sales") - cost - packaging);
  }

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
    if (rolled > 0 && !(price !== undefined && price > 0)) unpriced++;
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
}
