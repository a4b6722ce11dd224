// What other people do to the workbook while something is built, and what a person may not do: a sentence with a way on.
import { beforeAll, describe, expect, test } from "vitest";
import type { WorkbookHost } from "../../src/workbook/host.ts";
import { IS_LONG, someOf } from "../kit/scale.ts";
import { HANDOUT } from "../templates/sheet-support.ts";
import { addedTo, build, openShop, QUESTIONS, type Question, type State, stateOf } from "./shop.ts";

const shops = new Map<string, { readonly book: WorkbookHost; readonly before: State }>();
beforeAll(async () => {
  for (const kind of ["plain", "listed", "planned"] as const) {
    const book = await openShop(kind);
    shops.set(kind, { book, before: stateOf(book) });
  }
});
/** The shop that questions share, as it was. */
function shop({ kind = "plain" }: Pick<Question, "kind">): { book: WorkbookHost; before: State } {
  const found = shops.get(kind);
  if (found === undefined) throw new Error("no shop");
  return found;
}
const EACH = QUESTIONS.map((one) => [one.what, one] as const);
const messageOf = (reply: { readonly ok: boolean }): string => (reply as { message?: string }).message ?? "";

test.each(EACH)(
  "%s, by a person who may only view, and while another person builds: nothing was changed",
  (_what, question) => {
    const { asked } = question;
    const { book, before } = shop(question);
    book.setViewer(true);
    const viewed = book.ask(asked);
    book.setViewer(false);
    expect(messageOf(viewed)).toMatch(
      /^The sheet could not be built, and nothing was changed: .* If you may only view this file, ask its owner to let you edit it\.$/,
    );
    book.session.lockIsTaken = true;
    const waited = book.ask(asked);
    book.session.lockIsTaken = false;
    expect(messageOf(waited)).toMatch(
      /^Gramwright is still at work in this workbook\. Wait until it is done, then try again\.$/,
    );
    expect(stateOf(book)).toEqual(before);
  },
);

/** Those that take nobody's name away, so that the shop is as before once their sheet is deleted. */
const REPEATABLE = EACH.filter(
  ([, { asked, kind }]) => !(kind === "listed" && (asked as { ask: string }).ask === "list"),
);
const NAMED_ALIKE = IS_LONG ? REPEATABLE : REPEATABLE.filter((_, at) => at % 9 === 0);

test.each(NAMED_ALIKE)("%s, while another person adds a sheet of the same name: both are there", (_what, question) => {
  const { book } = shop(question);
  const before = stateOf(book);
  const { sheet } = book.answer(question.asked) as { sheet: string };
  const call = book.trail.indexOf("insertSheet") + 1;
  book.deleteSheet(sheet);
  for (const theirs of [sheet, sheet.toUpperCase()]) {
    // The name was looked for and free; then they take it.
    book.meanwhile(call, () => addSheet(book, theirs));
    const answer = book.answer(question.asked) as { sheet: string };
    expect(answer.sheet).toMatch(/ \(\d\)$/);
    expect(answer.sheet.toLowerCase()).not.toBe(theirs.toLowerCase());
    expect(addedTo(before, stateOf(book)).sort()).toEqual([theirs, answer.sheet].sort());
    expect(book.usedRange(theirs)).toBe("A1");
    for (const name of [theirs, answer.sheet]) book.deleteSheet(name);
  }
});

function addSheet(book: WorkbookHost, name: string): void {
  const sheetId = `theirs-${name}`;
  book.engine.run("CREATE_SHEET", { sheetId, position: 0, name, cols: 26, rows: 100 });
}

const WAY_ON =
  /Press the button again\.|Choose again from the list\.|choose anew\.|delete it, then build again\.|nothing was changed: /;
const OVER_OTHERS = [
  // Without a list it begins with that, which is a question of its own.
  ["prices", build("prices", {}, ["products"]), "listed"],
  ["a day", { ask: "day", day: "2026-01-31", orders: [{ sheet: "Loaf 1", pieces: 10 }] }, "plain"],
  ["a list", { ask: "list" }, "plain"],
  ["a card", { ask: "card", sheet: "Loaf 1", kind: "living", by: "pieces", amount: 48, ingredient: "" }, "plain"],
] as const;
const HANDS: readonly (readonly [string, (book: WorkbookHost) => void])[] = [
  ["renamed", (book) => book.renameSheet("Loaf 1", "Friday loaf")],
  ["deleted", (book) => book.deleteSheet("Loaf 1")],
];

/** A list takes longest. */
const WHILE = IS_LONG ? OVER_OTHERS : OVER_OTHERS.filter(([what]) => what !== "a list");
describe.each(WHILE.map((one, at) => [...one, at] as const))("%s, while a formula sheet", (what, asked, kind, at) => {
  test.each(someOf(HANDS, 2, at))("is %s: built, or a sentence with a way on and nothing left", async (_how, hand) => {
    const { book: counted } = shop({ kind });
    const { sheet } = counted.answer(asked) as { sheet: string };
    const all = counted.trail;
    counted.deleteSheet(sheet);
    // Between the looking up and the writing, and in the writing.
    const begins = all.indexOf("insertSheet");
    const calls = IS_LONG ? all.map((_, at) => at + 1) : [begins - 1, begins + 5];
    let refused = 0;
    for (const call of calls) {
      const book = await openShop(kind);
      const before = stateOf(book);
      book.meanwhile(call, () => hand(book));
      const reply = book.ask(asked);
      const names = (one: State) => [...one.sheets.keys()].filter((name) => !["Loaf 1", "Friday loaf"].includes(name));
      const added = names(stateOf(book)).filter((name) => !names(before).includes(name));
      if (reply.ok) {
        expect(added, `${what}, call ${call}`).toHaveLength(1);
        continue;
      }
      refused += 1;
      expect(reply.message, `${what}, call ${call}`).toMatch(WAY_ON);
      for (const name of added) expect(reply.message).toContain(`“${name}” is left: delete it`);
    }
    expect(refused).toBeLessThan(calls.length);
  });
});

describe("the sheet in the making", () => {
  const asked = build("pan-loaf", HANDOUT);
  const begun = (book: WorkbookHost) => {
    const before = stateOf(book);
    book.answer(asked);
    const [name = ""] = addedTo(before, stateOf(book));
    book.deleteSheet(name);
    return { name, call: book.trail.indexOf("insertSheet") + 6, before: stateOf(book) };
  };

  test("is deleted by another person: nothing is left, and the sentence says so", async () => {
    const book = await openShop();
    const { name, call, before } = begun(book);
    book.meanwhile(call, () => book.deleteSheet(name));
    expect(messageOf(book.ask(asked))).toMatch(/^The sheet could not be built, and nothing was changed: /);
    expect(stateOf(book)).toEqual(before);
  });

  test("is renamed by another person and cannot be finished: it is named as it is called by then", async () => {
    const book = await openShop();
    const { name, call, before } = begun(book);
    book.meanwhile(call, () => {
      book.renameSheet(name, "Theirs by now");
      // The service fails at the next call and at removing the sheet, and is there again to say what is left.
      book.failFrom(2, 2);
    });
    expect(messageOf(book.ask(asked))).toContain(
      "The half-made sheet “Theirs by now” is left: delete it, then build again.",
    );
    book.deleteSheet("Theirs by now");
    expect(stateOf(book)).toEqual(before);
  });
});
