// Formula tables as people type them: kinds with every sort of space, numbers as text, blanks, two waters, huge amounts.
import fc from "fast-check";

const SPACES = ["", " ", "  ", "\u00a0", "\u2009", "\u202f", "\u3000", "\u200b", "\t"];
/** What each kind of row has of flour and of plain water; its name and the water of that by USDA SR28, for the larder. */
type Kind = {
  readonly kind: string;
  readonly flour: number;
  readonly water: number;
  readonly name: string;
  readonly moisture: number;
};
const plain = (kind: string, name = "", moisture = 0): Kind => ({
  kind,
  flour: kind === "flour" ? 1 : 0,
  water: kind === "water" || kind === "ice" ? 1 : 0,
  name,
  moisture: kind === "water" || kind === "ice" ? 1 : moisture,
});
/** `hydration` is water over flour. */
const preferment = (kind: string, hydration: number): Kind => {
  const flour = 1 / (1 + hydration);
  return { kind, flour, water: 1 - flour, name: "", moisture: 1 - flour };
};
// SR28 01145, 19335, 01123, 01211 and 19296: shares of water.
const KINDS = [
  ...[plain("flour"), plain("water"), plain("salt"), plain("ice")],
  ...[plain("fat", "unsalted butter", 0.1794), plain("sugar", "granulated sugar", 0.0002)],
  ...[plain("egg", "whole egg", 0.7615), plain("dairy", "whole milk", 0.8813), plain("other", "honey", 0.171)],
  ...[preferment("levain 100%", 1), preferment("100% levain", 1), preferment("levain (100%)", 1)],
  ...[preferment("poolish100%", 1), preferment("biga, 60%", 0.6), preferment("starter 125 % hydration", 1.25)],
];
const kindNamed = (kind: string): Kind => KINDS.find((one) => one.kind === kind) ?? plain(kind);

export type Row = Kind & {
  readonly grams: number;
  /** The kind as it is typed. */
  readonly typed: string;
};
/** A blank row, which may hold a kind that nobody reads. */
export type Table = readonly (Row | null)[];

const typedKind = (kind: string) =>
  fc
    .tuple(fc.constantFrom(...SPACES), fc.constantFrom(...SPACES), fc.constantFrom("as is", "upper", "title"))
    .map(([before, after, letters]) => {
      const text =
        letters === "upper"
          ? kind.toUpperCase()
          : letters === "title"
            ? kind.replace(/^./, (one) => one.toUpperCase())
            : kind;
      return before + text.replace(/ /g, before === "" ? " " : ` ${before}`) + after;
    });
const amount = fc.oneof(
  { weight: 8, arbitrary: fc.integer({ min: 1, max: 200_000 }).map((tenths) => tenths / 10) },
  { weight: 1, arbitrary: fc.constantFrom(0, 1e8, 123456.75, 0.001) },
);
const rowOf = (kind: Kind, grams: fc.Arbitrary<number> = amount): fc.Arbitrary<Row> =>
  fc.tuple(grams, typedKind(kind.kind)).map(([weight, typed]) => ({ ...kind, grams: weight, typed }));
const row = fc.constantFrom(...KINDS).chain((kind) => rowOf(kind));

/** Flour first, then whatever comes with blank rows between, then one water or two. */
export const tables: fc.Arbitrary<Table> = fc
  .tuple(
    rowOf(kindNamed("flour"), fc.integer({ min: 10, max: 50_000 })),
    fc.array(rowOf(kindNamed("water")), { minLength: 1, maxLength: 2 }),
    fc.array(fc.option(row, { nil: null, freq: 5 }), { maxLength: 9 }),
  )
  .map(([flour, water, rest]) => [flour, ...rest, ...water]);

/** A number as it may be typed, or carry its unit: each is read as the number itself. */
export const typedNumber = (value: number, how: number): unknown => {
  if (/e/.test(String(value))) return value;
  return (
    [
      value,
      `${value}`.replace(/^(\d{1,3})\.(\d{3})$/, "$1.$20"),
      `\u00a0${value}`.replace(/^(.\d{1,3})\.(\d{3})$/, "$1.$20").replace(".", ","),
      ` ${value}`.replace(/^(.\d{1,3})\.(\d{3})$/, "$1.$20\u2009"),
    ][how] ?? `${value}`.replace(/^(\d{1,3})\.(\d{3})$/, "$1.$20").concat(how % 2 ? " g" : "\u202fgrams")
  );
};
export const HOWS = fc.integer({ min: 0, max: 5 });

/** What a cell holds that holds nothing. */
export const BLANKS = fc.constantFrom<unknown>("", " ", "\u00a0", null, undefined);

/** The four ways to write percentages: ratios, plain, with a % sign, or some of them with one. */
export const WAYS = fc.constantFrom("ratio", "plain", "text", "ratio and text", "plain and text");
export function percentCell(share: number, way: string, at: number): unknown {
  const isText = way === "text" || (way.endsWith("text") && at % 2 === 1);
  const percent = share * 100;
  if (isText && !/e/.test(String(percent))) return `${percent}%`;
  return way.startsWith("plain") ? percent : share;
}
