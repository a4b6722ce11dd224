// "All of the poolish" under the dough is no new ingredient where the poolish has lines of its own.

import { quoted, shown } from "../base/show.ts";
import { prefermentIn } from "./kinds.ts";
import type { ReadLine } from "./read-line.ts";

/** Weights of the same thing may be rounded on the way. */
const ALIKE = 0.02;

type Section = { readonly heading: string; readonly preferment: string; grams: number; lines: number };

/** The lines, those that name a section above them told apart. */
export function withoutSections(lines: readonly ReadLine[]): ReadLine[] {
  const sections: Section[] = [];
  return lines.map((line) => {
    if (line.is === "heading") {
      sections.push({ heading: line.text, preferment: prefermentIn(line.text) ?? "", grams: 0, lines: 0 });
      return line;
    }
    if (line.is !== "ingredient") return line;
    const here = sections[sections.length - 1];
    const word = prefermentIn(line.text);
    const named = sections.find((one) => one !== here && one.preferment === word && one.lines > 0);
    if (named !== undefined) return told(line, named);
    if (here !== undefined) {
      here.grams += line.grams ?? 0;
      here.lines += 1;
    }
    return line;
  });
}

function told(line: ReadLine, { heading, grams }: Section): ReadLine {
  const under = `its ingredients stand under ${quoted(heading)}`;
  const isAlike = line.grams === null || Math.abs(line.grams - grams) <= ALIKE * grams;
  if (isAlike) {
    return {
      ...line,
      is: "aside",
      grams: null,
      asks: "",
      says: `Not counted again: ${under}, ${shown(grams, 1)} g in all.`,
    };
  }
  return {
    ...line,
    grams: null,
    asks: `Is it counted twice? ${under.charAt(0).toUpperCase()}${under.slice(1)}, ${shown(grams, 1)} g in all, and here stand ${shown(line.grams ?? 0, 1)} g. Take this line out, or enter the grams that come on top.`,
  };
}
