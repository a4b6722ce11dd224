// The lines of a recipe as they stand in the panel: as read, and as corrected.

import { shown } from "../../shared/base/show.ts";
import type { ReadLine, WrittenLine } from "../../shared/recipe/read-line.ts";

export type Line = {
  is: ReadLine["is"];
  text: string;
  name: string;
  kind: string;
  grams: string;
  /** The grams as they were read, of which the field shows the first digits. */
  exact: number | null;
  says: string;
  asks: string;
  /** What a person typed; reading again leaves it. */
  readonly own: { name: boolean; kind: boolean; grams: boolean };
  /** The text that the rest belongs to; another one has to be read first. */
  read: string;
  /** Why reading it again failed. */
  failed: string;
  busy: boolean;
};

/** Hundredths of a gram are more than a scale shows; small spoons keep their digits. */
const shownGrams = (grams: number | null): string =>
  grams === null ? "" : shown(grams, grams < 1 ? 4 : grams < 10 ? 3 : 2);

export function lineOf({ is, text, name, kind, grams, says, asks }: ReadLine): Line {
  return {
    is,
    text,
    name,
    kind,
    grams: shownGrams(grams),
    exact: grams,
    says,
    asks,
    own: { name: false, kind: false, grams: false },
    read: text,
    failed: "",
    busy: false,
  };
}

/** Brings a line up to date with what was read of it now; what a person typed stays. */
export function update(line: Line, read: ReadLine): void {
  const { own } = line;
  const fresh = lineOf(read);
  Object.assign(line, {
    ...fresh,
    own,
    is: own.name || own.kind || own.grams ? "ingredient" : fresh.is,
    name: own.name ? line.name : fresh.name,
    kind: own.kind ? line.kind : fresh.kind,
    grams: own.grams ? line.grams : fresh.grams,
  });
}

export const askedOf = ({ text, name, own }: Line): WrittenLine => ({
  text: text.trim(),
  name: own.name ? name.trim() : "",
});

/** The lines after a reading: one for one where that is how they came back, otherwise as they came. */
export function merged(asked: readonly Line[], answered: readonly ReadLine[]): Line[] {
  return asked.flatMap((line, at) => {
    const mine = answered.filter(({ from }) => from === at);
    const [only] = mine;
    if (only === undefined) return [];
    if (mine.length > 1) return mine.map(lineOf);
    update(line, only);
    return [line];
  });
}
