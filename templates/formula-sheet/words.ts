import { KIND_WORDS, PREFERMENT_WORDS } from "../../shared/larder/kind-words.ts";
import type { CellModel } from "../../shared/sheet/model.ts";

/** The words of the column Type stand beside the page, because no formula could hold them all. */
export function typeWords(from: number): CellModel[] {
  const cells = (words: readonly string[], name: string, first: number): CellModel[] =>
    words.map((text, at) => ({ at: first + at, role: "helper", name: `${name}_${at + 1}`, text }));
  return [...cells(KIND_WORDS, "type", from), ...cells(PREFERMENT_WORDS, "starter", from + KIND_WORDS.length)];
}

const range = (name: string, many: number) => `@${name}_1:@${name}_${many}`;

/** 1 where a column holds one of the words, or one with an s behind it; otherwise 0. Compared whole, so that no sign is a pattern. */
function oneOf(column: string, words: string): string {
  return `=ARRAYFORMULA(MMULT((${column}=${words})+(${column}=${words}&"s");TRANSPOSE(LEN(${words})^0)))`;
}

export const IS_TYPE = oneOf("@type_whole", range("type", KIND_WORDS.length));
export const IS_STARTER = oneOf("@type_word", range("starter", PREFERMENT_WORDS.length));
