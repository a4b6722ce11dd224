import { KIND_WORDS, PREFERMENT_WORDS } from "../../shared/larder/kind-words.ts";
import type { CellModel } from "../../shared/sheet/model.ts";

/** The words of the column Type stand beside the page, because no formula could hold them all. */
export function typeWords(from: number): CellModel[] {
  const cells = (words: readonly string[], name: string, first: number): CellModel[] =>
    words.map((text, at) => ({ at: first + at, role: "helper", name: `${name}_${at + 1}`, text }));
  return [...cells(KIND_WORDS, "type", from), ...cells(PREFERMENT_WORDS, "starter", from + KIND_WORDS.length)];
}

const range = (name: string, many: number) => `@${name}_1:@${name}_${many}`;

/** 1 where the column of types alone holds one of the words, otherwise 0. Compared whole, so that no sign is a pattern. */
const oneOf = (words: string): string => `MMULT((@type_word=${words})*1;TRANSPOSE(LEN(${words})^0))`;

/** Only a preferment has a hydration. */
export const IS_TYPE = `=ARRAYFORMULA(ISERROR(FIND("%";@type_whole))*${oneOf(range("type", KIND_WORDS.length))})`;
export const IS_STARTER = `=ARRAYFORMULA(${oneOf(range("starter", PREFERMENT_WORDS.length))})`;
