// A stage named in another one: "all of the poolish", "Poolish 660 g", "soaker" take its rows, and add nothing of their own.

import { singularName } from "../../base/words.ts";
import type { Row, Stage } from "./description.ts";
import { type Draft, isAbout } from "./draft.ts";
import { headingCore, prefermentWordIn } from "./headings.ts";
import { isStarter } from "./starter.ts";

const ANY_PREFERMENT = new Set(["starter", "levain", "sourdough", "preferment", "sour"]);
const NOT_ITSELF = /\b(?:flour|bread|loaf|roll|baguette|cake|culture|cream|milk|crumb)\b/;

/** The stage that each row takes, by the row; marks those rows, and drops what need not be asked of them. */
export function takenStages(draft: Draft): ReadonlyMap<number, number> {
  const taken = new Map<number, number>();
  draft.rows.forEach((row, at) => {
    const stage = stageNamed(row, draft);
    if (stage === undefined) return;
    ripen(draft, stage);
    draft.rows[at] = { ...row, takes: stage, type: "", isKnown: true };
    taken.set(at, stage);
    const bare = draft.bare.get(row);
    if (bare !== undefined) draft.bare.delete(row);
    drop(
      draft,
      (question) =>
        isAbout(draft, question, row) &&
        (/^(?:hydration|no amount|which type|misspelt|which name)$/.test(question.reason) ||
          // "Soaker (A), all"
          (question.reason === "unclear amount" && /\ball\b/i.test(row.text))),
    );
  });
  return taken;
}

function stageNamed(row: Row, { stages, rows }: Draft): number | undefined {
  if (stages.length < 2) return undefined;
  const here = stages[row.stage];
  const name = singularName(row.name === "" ? row.text : row.name).replace(/[^\p{L}\d ]/gu, " ");
  if (NOT_ITSELF.test(name)) return undefined;
  // "everything from day 1"
  if (/^everything\b/.test(name)) {
    const made = stages.flatMap((_, at) => (at < row.stage && rows.some((one) => one.stage === at) ? [at] : []));
    return made[made.length - 1];
  }
  const word = prefermentWordIn(name);
  const candidates = stages.flatMap((stage, at) => {
    const isOther = at !== row.stage && rows.some((one) => one.stage === at && one !== row);
    const isEarlier = stage.role === "dough" && at < row.stage && isNamedWhole(stage, row, name);
    const isTaken = stage.role === "preferment" || stage.role === "soaker" || isPart(stage) || isEarlier;
    return isOther && isTaken ? [{ stage, at }] : [];
  });
  // What a build starts from is a starter at hand, unless an earlier build of this text is named.
  const earlier =
    here?.role === "preferment"
      ? candidates.filter(({ at, stage }) => at < row.stage && isNamedWhole(stage, row, name))
      : candidates;
  const whole = earlier.find(({ stage }) => isNamedWhole(stage, row, name));
  if (whole !== undefined) return whole.at;
  if (word === "") return undefined;
  const sameWord = earlier.filter(({ stage }) => stage.preferment === word);
  const same = sameWord.length > 1 ? sameWord.slice(-1) : sameWord;
  if (same[0] !== undefined) return same[0].at;
  const preferments = earlier.filter(({ stage }) => stage.role === "preferment");
  const isAny = ANY_PREFERMENT.has(word) || ANY_PREFERMENT.has(preferments[0]?.stage.preferment ?? "");
  return preferments.length === 1 && isAny ? preferments[0]?.at : undefined;
}

/** A dough, or a part, that goes into another dough: it ripens first where it has flour and yeast, else it only stands. */
function ripen(draft: Draft, at: number): void {
  const stage = draft.stages[at];
  if (stage === undefined || (stage.role !== "dough" && stage.role !== "part")) return;
  const mine = draft.rows.filter((row) => row.stage === at);
  const isRaised = mine.some((row) => row.type === "yeast" || isStarter(row));
  const isMade = isRaised && mine.some(({ type }) => type === "flour");
  draft.stages[at] = { ...stage, role: isMade ? "preferment" : "soaker" };
  drop(draft, ({ reason, line }) => reason === "part of the dough" && line === stage.line);
}

function drop(draft: Draft, isIt: (question: Draft["questions"][number]) => boolean): void {
  for (let place = draft.questions.length - 1; place >= 0; place--) {
    const question = draft.questions[place];
    if (question !== undefined && isIt(question)) draft.questions.splice(place, 1);
  }
}

const isPart = ({ role }: Stage): boolean => role === "part";

/** Whether a line is nothing but the name of a stage: "Vorteig". */
export const namesStage = (text: string, { stages, rows }: Draft): boolean =>
  stages.some(
    (stage, at) =>
      (stage.role === "preferment" || stage.role === "soaker") &&
      stage.line !== null &&
      headingCore(stage.name) === headingCore(text) &&
      rows.some((row) => row.stage === at),
  );

function isNamedWhole(stage: Stage, row: Row, name: string): boolean {
  const core = headingCore(stage.name).replace(/^(?:for )?(?:the )?/, "");
  const plain = name
    .replace(/\b(?:all|of|the|from|above|ripe|mature|active|prepared|cooled|whole|entire|total|mix|ready)\b/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  if (plain === "") return false;
  const short = core
    .replace(/\b(?:build|mix|ingredient|formula|stage|overnight|hour|hr|h|day|night|before|evening|morning)\b/g, " ")
    .replace(/\s+/g, " ")
    .trim();
  // "Part A" of "Part A – Poolish"
  const label = singularName(/^(.*?)(?:\s[–—-]\s|:\s)/.exec(stage.name)?.[1] ?? "").replace(/[^\p{L}\d ]/gu, " ");
  return (
    plain === core ||
    plain === short ||
    (label !== "" && plain === label) ||
    (stage.role === "soaker" &&
      row.takes === null &&
      new RegExp(`\\b${short.split(" ").slice(-1)[0] ?? ""}\\b`).test(plain) &&
      short !== "")
  );
}
