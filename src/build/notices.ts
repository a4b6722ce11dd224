// Copyright and licence of the packages whose code stands in a bundle: their terms want both in every copy.
import { licenceOf } from "./one-file-parts.ts";

/** Names of the packages that a bundle's inputs come from. */
export const packagesIn = (inputs: Readonly<Record<string, unknown>>): string[] => [
  ...new Set(Object.keys(inputs).flatMap((path) => /node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(path)?.[1] ?? [])),
];

/** One paragraph a package, in lines that a comment takes. */
export function notices(inputs: Readonly<Record<string, unknown>>): string[] {
  return packagesIn(inputs)
    .sort()
    .flatMap((name) => ["", `Holds code of ${licenceOf(name)}`.trim()])
    .flatMap((text) => text.split(/\r?\n/))
    .map((line) => line.trim())
    .filter((line, at, all) => line !== "" || all[at - 1] !== "");
}
