// What a production begins with for its levains and machines.
import type { Levain } from "../../../shared/production/levain.ts";
import type { Value } from "../../../shared/sheet/model.ts";
import type { Overview } from "../overview.ts";
import type { TakenLevain } from "./formula.ts";

/** How much longer a levain is ripe than it takes to be (common practice, no source). */
const RIPE_HOURS = 4;

type LevainSetting = { readonly levain: Levain; readonly flour: string };

/** A levain as the first formula that builds it has it; what is kept is the sum of what they keep. */
export function levainSettings(
  name: string,
  doughs: readonly Overview[],
  taken: readonly (readonly TakenLevain[])[],
  all: readonly Overview[],
): LevainSetting {
  const builders = doughs.filter((_, at) => taken[at]?.some(({ from, isBuilt }) => isBuilt && from === name));
  const [first] = builders;
  const sheetOfName = all.find((sheet) => sheet.name === name);
  const hydration = first?.number("pre_hydration") ?? sheetOfName?.number("hydration") ?? 1;
  const keep = builders.reduce((sum, sheet) => sum + (sheet.number("keep") ?? 0), 0);
  const hours = first?.number("pre_hours") ?? 8;
  const flours = (first ?? sheetOfName)?.parts.filter(({ kind }) => /^flour/i.test(kind)) ?? [];
  return {
    flour: first?.text("pre_from") || flours[0]?.name || "",
    levain: {
      name,
      hydration,
      motherHydration: first?.number("seed_hydration") ?? hydration,
      seedShare: first?.number("seed_share") ?? 0.2,
      seedWeight: null,
      ripeFrom: Math.round(hours * 60),
      ripeTo: Math.round((hours + RIPE_HOURS) * 60),
      mother: keep,
      keep,
    },
  };
}

export function levainValues(
  settings: readonly LevainSetting[],
  seeds: readonly (number | null)[],
): Record<string, Value> {
  return Object.fromEntries(
    settings.flatMap(({ levain, flour }, index) => {
      const at = index + 1;
      return [
        [`fed_${at}`, flour],
        [`hydration_${at}`, levain.hydration],
        [`mother_hydration_${at}`, levain.motherHydration],
        [`seed_${at}`, levain.seedShare],
        [`ripe_from_${at}`, levain.ripeFrom / 60],
        [`ripe_to_${at}`, levain.ripeTo / 60],
        [`mother_${at}`, levain.mother || null],
        [`keep_${at}`, levain.keep || null],
        [`first_seed_${at}`, Math.round(1000 * (seeds[index] ?? 0)) / 1000 || null],
      ];
    }),
  );
}

/** One mixer and one oven to begin with; the mixer takes what the largest formula says. */
export function machineValues(doughs: readonly Overview[]): Record<string, Value> {
  const limits = doughs.flatMap((sheet) => sheet.number("mixer_limit") ?? []);
  return {
    machine_1: "Mixer",
    machine_kind_1: "mixer",
    machine_number_1: 1,
    machine_takes_1: limits.length === doughs.length ? Math.max(...limits) : null,
    machine_2: "Oven",
    machine_kind_2: "oven",
    machine_number_2: 1,
  };
}
