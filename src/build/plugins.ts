// What the built files leave out of the sources.
import { readFileSync } from "node:fs";
import type * as esbuild from "esbuild";
import { larderLines } from "../../shared/larder/larder-rows.ts";
import { packedLarder } from "./packed-larder.ts";

const WORDS = /\b(?:says|summary|family):\s*(?:"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'),?/g;

/** Help, families, examples and refusals are for the stubs, the README and the bench; a formula cell never needs them. */
export const withoutHelp: esbuild.Plugin = {
  name: "without-help",
  setup(build) {
    build.onLoad({ filter: /src[\\/]functions[\\/][a-z]+[\\/][A-Z0-9]+\.ts$/ }, ({ path }) => {
      const source = readFileSync(path, "utf8");
      const from = source.indexOf("\n  examples: [");
      const to = source.indexOf("\n  compute:");
      if (from < 0 || to < from) throw new Error(`${path}: examples and refusals must stand right before compute`);
      return { contents: source.slice(0, from).replace(WORDS, "") + source.slice(to), loader: "ts" };
    });
  },
};

/** What a template's sample must come to is for the tests; the sample itself is what the bench shows first. */
export const withoutExpectations: esbuild.Plugin = {
  name: "without-expectations",
  setup(build) {
    build.onLoad({ filter: /templates[\\/][a-z-]+\.ts$/ }, ({ path }) => {
      const source = readFileSync(path, "utf8");
      const from = source.indexOf("\n  expects: {");
      const to = source.indexOf("\n};", from);
      if (from < 0) return { contents: source, loader: "ts" };
      return { contents: `${source.slice(0, from)}\n  expects: {},${source.slice(to)}`, loader: "ts" };
    });
  },
};

const LARDER = /shared[\\/]larder[\\/]larder-rows\.ts$/;

/** The bench asks the add-on about ingredients; of the larder's table it gets one row, so that what refers to it still works. */
export const withoutLarder: esbuild.Plugin = {
  name: "without-larder",
  setup(build) {
    build.onLoad({ filter: LARDER }, () => ({
      contents: `export const larderLines = () => [${JSON.stringify(larderLines()[0])}];`,
      loader: "ts",
    }));
  },
};

/** The same table in half the bytes. The figures' numbers in their source stay behind: nothing computes with them. */
export const withPackedLarder: esbuild.Plugin = {
  name: "with-packed-larder",
  setup(build) {
    build.onLoad({ filter: LARDER }, () => {
      const { text, signs, entries, figures } = packedLarder(larderLines());
      const parts = [text, signs, entries, figures].map((part) => JSON.stringify(part)).join(", ");
      const contents = `import { unpackedLarder } from "./larder-packing.ts"; export const larderLines = () => unpackedLarder(${parts});`;
      return { contents, loader: "ts" };
    });
  },
};
