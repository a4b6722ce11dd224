// gramwright-local-source.zip: what the LGPL asks for to go with gramwright-local.html.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";

/** Everything that `npm run pack` reads; tests and what is built are left out. */
const OWN = [
  ".biome.json",
  ".npmrc",
  "DEVELOPERS.md",
  "LICENSE",
  "README.md",
  "package-lock.json",
  "package.json",
  "shared",
  "sidebar",
  "src",
  "templates",
  "tsconfig.json",
];
const PATCH_FOLDER = "src/workbook/engine/patches";
const LIBRARIES = ["@odoo/o-spreadsheet", "@odoo/owl"] as const;
/** Minified twins and archives say nothing that the others do not. */
const LEFT_OUT = /\.min\.|\.cjs$|\.esm\.js$|\.es\.js$|\.cjs\.js$|\.zip$|\.png$|dist\/types\//;

/** Our changes to what the engine does, by the day each was made: each a file that says why and when it can go. */
const PATCHES = {
  "2026-11-30":
    "all-cells circles concatenation deleting dependents errors exporting graded-formats listeners many-sheets " +
    "merged-commands missing names paced-edits renaming rounding spreads unread-sheets",
  "2026-12-01": "arguments missing-numbers",
} as const;

function patchLines(): string[] {
  const dayOf = new Map<string, string>(
    Object.entries(PATCHES).flatMap(([day, names]) => names.split(" ").map((name) => [`${name}.ts`, day] as const)),
  );
  return readdirSync(PATCH_FOLDER)
    .sort()
    .map((name) => {
      const day = dayOf.get(name);
      if (day === undefined) throw new Error(`${PATCH_FOLDER}/${name} has no day in PATCHES`);
      return `  ${day}  gramwright/${PATCH_FOLDER}/${name}`;
    });
}

function filesUnder(path: string): string[] {
  if (!statSync(path).isDirectory()) return [path];
  return readdirSync(path)
    .sort()
    .flatMap((name) => (name === "node_modules" ? [] : filesUnder(join(path, name))));
}

/** Mail programs stop an archive with a file in it whose name ends so; one more ending lets it pass. */
const named = (path: string): string => (path.endsWith(".js") ? `${path}.txt` : path);

/** The archive's files by name. */
export function sourceArchive(): Record<string, Uint8Array> {
  const libraries = LIBRARIES.flatMap((name) =>
    filesUnder(join("node_modules", name))
      .filter((path) => !LEFT_OUT.test(path))
      .map((path) => [named(path.replace(/^node_modules/, "libraries")), readFileSync(path)] as const),
  );
  const files = OWN.flatMap(filesUnder)
    .filter((path) => !LEFT_OUT.test(path))
    .map((path) => [named(`gramwright/${path}`), readFileSync(path)] as const);
  return Object.fromEntries([["READ-ME.txt", Buffer.from(readMe())] as const, ...libraries, ...files]);
}

/** Where each library's readable text says which state of its repository it is made of. */
const ORIGINS = {
  "@odoo/o-spreadsheet": ["dist/o_spreadsheet.iife.js", /@date (\S{10})\S*\s+\*\s+@hash ([0-9a-f]+)/],
  "@odoo/owl": ["dist/owl.iife.js", /__info__\.date = '(\S{10})\S*';\s+__info__\.hash = '([0-9a-f]+)'/],
} as const;

/** The commit that a library is made of, by which its TypeScript files are found exactly. */
function originOf(name: (typeof LIBRARIES)[number]): string {
  const [file, pattern] = ORIGINS[name];
  const [, date, commit] = pattern.exec(readFileSync(`node_modules/${name}/${file}`, "utf8")) ?? [];
  if (date === undefined || commit === undefined) throw new Error(`${name}: ${file} names no commit`);
  return `built on ${date} from commit ${commit}`;
}

function readMe(): string {
  const versions = LIBRARIES.map((name) => {
    const { version, license } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, "utf8")) as Record<
      string,
      string
    >;
    return `  ${name} ${version}, ${license}; ${originOf(name)}`;
  });
  return `Source of gramwright-local.html

The page holds two libraries under the GNU Lesser General Public License, each in a script element of its own, unchanged:
${versions.join("\n")}
Their texts, readable as their authors publish them for use, are in the folder libraries. They are made of TypeScript files, which the authors keep in
the repository that each package.json names and do not publish with these texts. If you hand the page on outside your own shop, put those files, at
the commits above, beside this archive. The licences are in the files LICENSE there, and in the
page behind its button Licences. A file whose name ends in .js has .txt added, because mail programs stop such files: take it off again.

Gramwright changes what the engine does while it runs, and none of its files. These changes are under Gramwright's own MIT
licence. Each has here the day it was made, and says in its file why it is there and when it can go:
${patchLines().join("\n")}

To put another build of a library into the page: open gramwright-local.html in a plain text program, find the element
<script id="o-spreadsheet"> or <script id="owl">, and put your build in the place of what stands between its tags. Nothing in the page
checks it. To build the page from its sources, in the folder gramwright, with Node 20.19 or later and npm:

  npm run pack

It installs the libraries by name and version from package-lock.json, and writes the page to the folder pack. To build it with a library of your
own, put its file in the place of the one in node_modules/@odoo first.
`;
}
