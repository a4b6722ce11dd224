// The formula history: a version is never lost, whatever fails and whoever else is at work.
import { beforeAll, describe, expect, test } from "vitest";
import { rowOf, type Version, versionIn, zonedTime } from "../../shared/adjust/versions.ts";
import type { Adjustable, TakeChangesAnswer, Versions } from "../../shared/protocol/adjust.ts";
import { type Book, openBook, type Sheet } from "../../src/workbook/scripted.ts";
import { IS_LONG } from "../kit/scale.ts";
import { templateOf } from "../sidebar/samples.ts";

const NAME = "Quay hearth loaf";
const HISTORY = "Formula history";
type Reply = { readonly ok: boolean; readonly message?: string; readonly answer?: unknown };

let book: Book;
let sheet: Sheet;
beforeAll(async () => {
  book = await openBook();
  const { sample, parts } = templateOf("hearth-loaf");
  sheet = book.build("hearth-loaf", sample, { parts: parts.filter((one) => one !== "cost" && one !== "label") });
});

const ask = (question: string, rest: object = {}): Reply => book.ask({ ask: question, ...rest }) as Reply;
const answer = <T>(question: string, rest: object = {}): T => book.answer({ ask: question, ...rest }) as T;
const read = () => answer<Adjustable>("adjusting");
const tidy = (value: number) => Number(value.toPrecision(10));
const salt = () => tidy(sheet.value("percent", 4) as number);
const kept = (): readonly Version[] => book.values(HISTORY, "A5:M60").flatMap((row) => versionIn(row) ?? []);
/** The salt of each version, in the order in which they were kept. */
const saltsKept = () => kept().map(({ content }) => tidy(JSON.parse(content).tables.rows[3][2]));
const wishes = (wanted: string) => [{ change: "salt", values: { wanted } }];
function take(wanted: string, { sheet: name, id, seen } = read()): Reply {
  return ask("takeChanges", { sheet: name, id, seen, wishes: wishes(wanted), title: null });
}

describe("what is kept", () => {
  test("a version and what stood before it, at a time with its zone", () => {
    expect(take("1.9").answer).toEqual({ sheet: NAME, number: 2, wasEdited: true } satisfies TakeChangesAnswer);
    expect(saltsKept()).toEqual([0.02, 0.019]);
    for (const { when } of kept()) expect(when).toMatch(/^\d{4}-\d\d-\d\d \d\d:\d\d [+-]\d\d:\d\d$/);
    expect(zonedTime(new Date(2026, 10, 30, 6, 5))).toMatch(/^2026-11-30 06:05 /);
  });

  test("a content longer than a cell goes on in the next, and reads back equal", () => {
    const version: Version = {
      when: "2026-11-30 06:05 +01:00",
      sheet: 7,
      title: "=Rye",
      number: 3,
      line: "1/2",
      content: `{"a":"${"=Rye 007 ".repeat(12_000)}"}`,
    };
    const row = rowOf(version);
    expect(row.length).toBe(8);
    expect(Math.max(...row.map(({ length }) => length))).toBeLessThan(50_000);
    expect(versionIn(row)).toEqual(version);
    expect(versionIn(["When", "Formula", "Version", "What changed", "tab"])).toBeNull();
    expect(versionIn(["", "", "", "", ""])).toBeNull();
  });
});

describe("appendRow, as Google has it", () => {
  test("reads what is no text as if it were typed, and keeps what has an apostrophe", () => {
    for (const line of ["=Rye", "1/2", "007", "+salt", "-1", "@x", "TRUE", "1e5", "'quoted", "12:30", "50%"]) {
      sheet.type("percent", `${(100 * salt() + 0.01).toFixed(2)}%`, 4);
      answer("keepVersion", { sheet: NAME, line });
      expect(answer<Versions>("versions").versions[0]?.line).toBe(line);
    }
  });
});

describe("where the service fails at each call of a change", () => {
  const lost = () => {
    // What stands on the sheet is kept, or will be kept first by the next change.
    const now = salt();
    const next = now === 0.0171 ? "1.72" : "1.71";
    const reply = take(next);
    expect(reply.ok, reply.message).toBe(true);
    expect(saltsKept()).toContain(now);
    return now;
  };

  test("the version before is in the history, or the sheet is as it was", () => {
    const was = salt();
    expect(take("1.6").ok).toBe(true);
    expect(saltsKept()).toContain(was);
    const calls = book.trail.length;
    expect(calls).toBeGreaterThan(8);
    for (const [how, fails] of FAILURES)
      for (let call = 1; call <= calls; call++) {
        if (!IS_LONG && (call + how.length) % 8 !== 0) continue;
        const before = salt();
        const wanted = before === 0.015 ? "1.6" : "1.5";
        const data = read();
        fails(call);
        const { ok, message = "" } = take(wanted, data);
        book.failAt(undefined);
        const after = salt();
        const says = `${how}, call ${call}: ${message}`;
        if (after !== before) expect(saltsKept(), says).toContain(before);
        if (/stands as it was|could not be read/.test(message)) expect(after, says).toBe(before);
        if (ok) expect(saltsKept(), says).toContain(after);
        lost();
      }
  });
  const FAILURES: readonly (readonly [string, (call: number) => void])[] = [
    ["once", (call) => book.failAt(call)],
    ["from there on", (call) => book.failFrom(call)],
    ["after it did what it was asked", (call) => book.loseAnswer(call)],
  ];
});

describe("two persons at once", () => {
  test("while another holds the lock: to wait, and nothing is written", () => {
    const [before, count] = [salt(), kept().length];
    book.session.lockIsTaken = true;
    const { message } = take("1.4");
    book.session.lockIsTaken = false;
    expect(message).toMatch(/Wait until it is done, then try again/);
    expect([salt(), kept().length]).toEqual([before, count]);
  });

  test("both chose on the same sheet: the second is refused, and both versions are told apart", () => {
    const first = read();
    const second = read();
    const asked = (data: Adjustable, wanted: string) =>
      ask("takeChanges", { sheet: NAME, id: data.id, seen: data.seen, wishes: wishes(wanted), title: null });
    expect(asked(first, "1.3").ok).toBe(true);
    expect(asked(second, "1.2").message).toMatch(/was changed since you chose/);
    expect(salt()).toBe(0.013);
    const numbers = kept().map(({ number }) => number);
    expect(new Set(numbers).size).toBe(numbers.length);
  });

  test("another types between the look and the lock: refused, and nothing is written over it", () => {
    expect(take("1.25").ok).toBe(true);
    // The first call after the page's own look.
    const call = book.trail.indexOf("getRangeByName") + 1;
    const [{ sheet: name, id, seen }, count] = [read(), kept().length];
    book.meanwhile(call, () => sheet.type("percent", "66%", 3));
    const { message } = ask("takeChanges", { sheet: name, id, seen, wishes: wishes("1.1"), title: null });
    expect(message).toMatch(/was changed meanwhile, and nothing was written/);
    expect([salt(), sheet.value("percent", 3), kept().length]).toEqual([0.0125, 0.66, count]);
  });
});

test("a history that its owner locked stops a change before the sheet is written", () => {
  const before = salt();
  expect(take("1").ok).toBe(true);
  const at = book.trail.indexOf("appendRow") + 1;
  expect(at).toBeGreaterThan(0);
  sheet.type("percent", `${100 * before}%`, 4);
  const hand = read();
  book.failFrom(at);
  const { message } = ask("takeChanges", {
    sheet: NAME,
    id: hand.id,
    seen: hand.seen,
    wishes: wishes("1"),
    title: null,
  });
  book.failAt(undefined);
  expect(message).toMatch(
    /history could not be written .* formula sheet stands as it was\. If the history is protected, ask its owner/,
  );
  expect(salt()).toBe(before);
});

test("a formula sheet that was deleted: its versions stay, and asking for it is refused", () => {
  const { id, seen } = read();
  const versions = kept().filter((one) => one.sheet === id).length;
  expect(versions).toBeGreaterThan(3);
  book.build("pan-loaf", templateOf("pan-loaf").sample, { parts: ["tin"] });
  book.deleteSheet(NAME);
  expect(ask("takeChanges", { sheet: NAME, id, seen, wishes: wishes("1"), title: null }).message).toMatch(
    /There is no sheet/,
  );
  expect(kept().filter((one) => one.sheet === id)).toHaveLength(versions);
});
