import { existsSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { describe, expect, test } from "vitest";

const text = (path: string) => readFileSync(path, "utf8");
const README = text("README.md");
const DOCUMENTS = [
  "README.md",
  "DEVELOPERS.md",
  "src/functions/README.md",
  "src/build/bench/README.md",
  "src/build/install/README.md",
  "src/build/packages.md",
];

/** The anchors of a document's headings, as Markdown viewers make them. */
const anchorsOf = (path: string) =>
  [...text(path).matchAll(/^#+ (.+)$/gm)].map(([, heading = ""]) =>
    heading
      .toLowerCase()
      .replace(/[^a-z0-9_ -]/g, "")
      .replace(/ /g, "-"),
  );

test("the README takes at most 150 lines up to the functions", () => {
  const before = README.slice(0, README.indexOf("\n## The functions\n"));
  expect(before.length).toBeGreaterThan(1000);
  expect(before.split("\n").length).toBeLessThanOrEqual(150);
});

test("its first screen says what was not tried", () => {
  const first = README.split("\n").slice(0, 20).join("\n");
  expect(first).toContain("Not tried on the live service yet");
});

describe.each(DOCUMENTS)("%s", (path) => {
  const links = [...text(path).matchAll(/\]\((?!https?:)([^)#]*)(?:#([^)]+))?\)/g)];

  test("leads only to files and headings that are there", () => {
    for (const [link, file = "", anchor] of links) {
      const target = file === "" ? path : join(dirname(path), file);
      expect(existsSync(target), link).toBe(true);
      if (anchor !== undefined) expect(anchorsOf(target), link).toContain(anchor);
    }
  });

  test("names only files of the project that are there", () => {
    const paths = [...text(path).matchAll(/`((?:src|shared|templates|sidebar|tests)\/[\w./-]*\w(?:\/|\.\w+))`/g)];
    for (const [, named = ""] of paths)
      if (!/[A-Z]{4}/.test(named) || named.endsWith("README.md")) expect(existsSync(named), named).toBe(true);
  });

  test("has no line that ends in a blank, and no address of this computer", () => {
    expect(text(path)).not.toMatch(/[ \t]$/m);
    expect(text(path)).not.toMatch(/(?<![\w.])\/(?:home|root|tmp|Users)\//);
  });
});
