// What the rows of a stage tell of it, once all lines are read.

import { IN_DOUGH } from "./description.ts";
import type { Draft } from "./draft.ts";
import { LATER } from "./headings.ts";
import { isStarter } from "./starter.ts";

/** Nothing hangs on the type of what is kept apart: one that no table knows is no question there. */
export function leaveOpenBeside({ rows, stages, questions }: Draft): void {
  rows.forEach((row, at) => {
    const role = stages[row.stage]?.role ?? "dough";
    if (row.type !== "" || role === "overall" || role === "part" || IN_DOUGH.has(role)) return;
    const asked = questions.findIndex(({ reason, line }) => reason === "which type" && line === row.line);
    if (asked < 0) return;
    questions.splice(asked, 1);
    rows[at] = { ...row, type: "other" };
  });
}

/** "For the sponge" of a cake has eggs and no yeast: it is no preferment. */
export function bakeSponges({ rows, stages }: Draft): void {
  stages.forEach((stage, at) => {
    if (stage.preferment !== "sponge") return;
    const mine = rows.filter((row) => row.stage === at);
    const isRaised = mine.some((row) => row.type === "yeast" || isStarter(row));
    if (mine.some(({ type }) => type === "egg") && !isRaised) stages[at] = { ...stage, role: "dough", preferment: "" };
  });
}

/** Flour that ferments on the first day, and flour that follows on the next: what was mixed first is a preferment. */
export function ripenFirstDay({ rows, stages }: Draft): void {
  const later = stages.findIndex(({ name, role }) => role === "dough" && LATER.test(name));
  const first = stages.findIndex(
    ({ role }, at) => at < later && role === "dough" && rows.some((row) => row.stage === at),
  );
  const stage = stages[first];
  const isFloured = (at: number) => rows.some((row) => row.stage === at && row.type === "flour");
  if (stage === undefined || !isFloured(later) || !isFloured(first)) return;
  const isSour = rows.some((row) => row.stage === first && isStarter(row));
  if (!isSour && !rows.some((row) => row.stage === first && row.type === "yeast")) return;
  stages[first] = {
    ...stage,
    role: "preferment",
    preferment: isSour ? "levain" : "sponge",
    name: stage.name || "Day 1",
  };
}

/** "40 g seed" that a sour begins with is a ripe starter, and no linseed. */
export function plantSeeds({ rows, stages }: Draft): void {
  rows.forEach((row, at) => {
    if (stages[row.stage]?.role === "preferment" && /^(?:ripe |mature )?seed$/i.test(row.name) && row.type !== "")
      rows[at] = { ...row, type: "" };
  });
}
