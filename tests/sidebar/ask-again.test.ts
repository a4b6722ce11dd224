// The sidebar reads again what is still calculating: twice, two seconds apart, and never more for what stays so.
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { ask } from "../../sidebar/kit/ask.ts";

let asked: number[] = [];
let cells: unknown[] = [];
const from = Date.UTC(2026, 11, 1);

beforeEach(() => {
  vi.useFakeTimers({ now: from });
  asked = [];
  const runner = (success: (reply: string) => void): object => ({
    withSuccessHandler: (then: (reply: string) => void) => runner(then),
    withFailureHandler: () => runner(success),
    answerSidebar: (json: string) => {
      if ((JSON.parse(json) as { ask: string }).ask !== "look") throw new Error(json);
      asked.push(Date.now() - from);
      const cell = cells.length > 1 ? cells.shift() : cells[0];
      const sheets = [{ id: 1, name: "Own", values: [["Flour", cell]] }];
      success(JSON.stringify({ ok: true, answer: { front: "Own", sheets, names: [] } }));
    },
  });
  vi.stubGlobal("google", { script: { run: runner(() => {}) } });
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

async function readings(...shown: unknown[]): Promise<number[]> {
  cells = shown;
  asked = [];
  const started = Date.now() - from;
  const answered = ask("review", { style: "" }, 60_000);
  await vi.runAllTimersAsync();
  // The sheet is none of ours, which is said once it is read for good.
  expect(await answered).toMatchObject({ how: "refused", message: expect.stringContaining("is no formula sheet") });
  return asked.map((at) => at - started);
}

test("what is calculated is read once", async () => {
  expect(await readings(12)).toEqual([0]);
});

test("what is still calculating is read again after 2 s, and after 4 s", async () => {
  expect(await readings("Loading...", 12)).toEqual([0, 2000]);
  expect(await readings("Wird geladen...", "Wird geladen...", 12)).toEqual([0, 2000, 4000]);
});

test("what stays as it is, is waited for once only", async () => {
  expect(await readings("#N/A")).toEqual([0, 2000, 4000]);
  expect(await readings("#N/A")).toEqual([0]);
  expect(await readings("Chargement...", 3)).toEqual([0, 2000]);
});
