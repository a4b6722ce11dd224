// What happens to a kept file: what was typed, what the file held in the end, and what was said.
export type Accident = {
  readonly accident: string;
  /** One text after the other, each over the one before. */
  readonly typed: readonly string[];
  /** What the file held in the end. */
  readonly found: string | RegExp;
  /** What was said at the accident: to whoever typed, or where a server was started. */
  readonly told: RegExp;
  /** Whether this computer lets it happen; left out, any does. */
  readonly isPossible?: () => boolean;
  /** Gives what was said. */
  readonly happens: (file: string, typed: readonly string[]) => Promise<string>;
};

/** The answer to a save that is in the file. */
export const KEPT = /^\{"revision":"[\da-f]{64}"\}$/;

type Day = { readonly year: number; readonly month: number; readonly day: number };

/** The dated copy beside a file. */
export function copyOf(file: string, { year, month, day }: Day): string {
  const two = (of: number) => String(of).padStart(2, "0");
  return file.replace(".json", `.${year}-${two(month)}-${two(day)}.json`);
}

/** The copy of the day that it is now. */
export function copyOfToday(file: string): string {
  const now = new Date();
  return copyOf(file, { year: now.getFullYear(), month: now.getMonth() + 1, day: now.getDate() });
}
