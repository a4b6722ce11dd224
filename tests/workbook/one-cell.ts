// A workbook of one cell: typed as the page does, and read as the file or the server has it.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { WorkbookData } from "../../src/workbook/engine/library.ts";

export const workbook = (typed: string): WorkbookData => ({
  version: "19.3",
  sheets: [{ id: "s", name: "Rye", colNumber: 3, rowNumber: 3, cells: { A1: typed } }],
});
export const fileOf = (typed: string): string =>
  JSON.stringify({ kind: "gramwright workbook 1", data: workbook(typed) });

type OneCell = { readonly data: { readonly sheets: readonly [{ readonly cells: { readonly A1: string } }] } };
export const typedIn = (file: string): string =>
  (JSON.parse(readFileSync(file, "utf8")) as OneCell).data.sheets[0].cells.A1;
export const beside = (file: string): string[] => readdirSync(join(file, "..")).sort();

/** What the server tells of its file. */
export async function askedFor<T>(at: string, path: "workbook" | "revision"): Promise<T> {
  return (await (await fetch(`${at}${path}`)).json()) as T;
}
export const servedText = async (at: string): Promise<string> =>
  (await askedFor<OneCell>(at, "workbook")).data.sheets[0].cells.A1;
export const revisionAt = async (at: string): Promise<string> =>
  (await askedFor<{ revision: string }>(at, "revision")).revision;

/** Sends what was typed as the page does. */
export async function type(at: string, typed: string, follows?: string): Promise<{ status: number; says: string }> {
  const headers = { "content-type": "application/json", "x-revision": follows ?? (await revisionAt(at)) };
  const answer = await fetch(`${at}workbook`, { method: "POST", headers, body: JSON.stringify(workbook(typed)) });
  return { status: answer.status, says: await answer.text() };
}
