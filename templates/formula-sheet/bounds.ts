import type { Bounds } from "../../shared/sheet/model.ts";

type Limits = { readonly when?: string; readonly least: number; readonly most: number };

/** The least and the most that may be typed, for each unit that they depend on. */
export function within(bounds: Bounds): readonly Limits[] {
  const [first] = bounds;
  if (typeof first === "number") return [{ least: first, most: bounds[1] as number }];
  return bounds as readonly Limits[];
}

/** Decimals are written as fractions, which mean the same in every locale. */
export function fraction(value: number): string {
  const under = [1, 2, 10, 100, 1000].find((one) => Number.isInteger(Math.round(value * one * 1e6) / 1e6)) ?? 1000;
  return under === 1 ? String(value) : `${Math.round(value * under)}/${under}`;
}
