import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { ADD_ON_FILES } from "../../src/build/pack.ts";
import { zipped } from "../../src/build/zip.ts";
import { files } from "../templates/sheet-support.ts";

const CLASP = join(process.cwd(), "node_modules/@google/clasp/build/src/index.js");

describe("what is pushed", () => {
  let folder = "";
  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), "gramwright-push-"));
    mkdirSync(join(folder, "dist"));
    const { codeJs, sidebarHtml } = await files();
    writeFileSync(join(folder, "dist/Code.js"), codeJs);
    writeFileSync(join(folder, "dist/sidebar.html"), sidebarHtml);
    copyFileSync("src/add-on/appsscript.json", join(folder, "dist/appsscript.json"));
    copyFileSync(".claspignore", join(folder, ".claspignore"));
    const script = { scriptId: "no-script-of-anybody-0000000000000000000000000000000000000", rootDir: "dist" };
    writeFileSync(join(folder, ".clasp.json"), JSON.stringify(script));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const pushed = (): string[] => {
    const how = { cwd: folder, encoding: "utf8", env: { ...process.env, HOME: folder, USERPROFILE: folder } } as const;
    const { stdout, status } = spawnSync(process.execPath, [CLASP, "show-file-status", "--json"], how);
    expect(status).toBe(0);
    return (JSON.parse(stdout) as { filesToPush: string[] }).filesToPush.map((file) => file.replace(/^dist[\\/]/, ""));
  };

  test("clasp lists the three files and nothing else", () => {
    expect(pushed().sort()).toEqual([...ADD_ON_FILES].sort());
  }, 30_000);

  test("also where the folder holds other scripts and pages, as after taking over a script", () => {
    for (const name of ["Old.js", "other.html", "more.json", "notes.gs"])
      writeFileSync(join(folder, "dist", name), "{}");
    expect(pushed().sort()).toEqual([...ADD_ON_FILES].sort());
  }, 30_000);
});

describe("npm run pack", () => {
  // A reader that is not ours: the one the .xlsx library brings.
  const JSZip = createRequire(createRequire(import.meta.url).resolve("exceljs"))("jszip") as {
    loadAsync(
      bytes: Buffer,
      how: object,
    ): Promise<{ files: Record<string, { async(as: "nodebuffer"): Promise<Buffer> }> }>;
  };

  test("packs files that come out as they went in", async () => {
    const { codeJs, sidebarHtml } = await files();
    const entries = [
      { name: "appsscript.json", bytes: readFileSync("src/add-on/appsscript.json") },
      { name: "Code.js", bytes: Buffer.from(codeJs) },
      { name: "sidebar.html", bytes: Buffer.from(sidebarHtml) },
    ];
    const packed = zipped(entries);
    const opened = await JSZip.loadAsync(packed, { checkCRC32: true });
    expect(Object.keys(opened.files)).toEqual([...ADD_ON_FILES]);
    for (const { name, bytes } of entries)
      expect((await opened.files[name]?.async("nodebuffer"))?.equals(bytes)).toBe(true);
    expect(packed.length).toBeLessThan(codeJs.length);
    expect(zipped(entries).equals(packed)).toBe(true);
  });

  test("a damaged pack is noticed by its sums", async () => {
    const packed = zipped([{ name: "a", bytes: Buffer.from("flour, water, salt") }]);
    packed[40] = (packed[40] ?? 0) ^ 0xff;
    await expect(JSZip.loadAsync(packed, { checkCRC32: true })).rejects.toThrow();
  });
});

describe("the list of packages in DEVELOPERS.md", () => {
  const listed = new Map(
    [...readFileSync("DEVELOPERS.md", "utf8").matchAll(/^\| ([^|]+) \| ([^|]+) \| \S[^|]*\|$/gm)].flatMap(
      ([, names = "", licence = ""]) => names.split(", ").map((name) => [name.trim(), licence.trim()] as const),
    ),
  );
  const manifest = JSON.parse(readFileSync("package.json", "utf8")) as { devDependencies: Record<string, string> };

  test.each(Object.keys(manifest.devDependencies))("names %s with the licence it states", (name) => {
    const { license } = JSON.parse(readFileSync(`node_modules/${name}/package.json`, "utf8")) as { license: string };
    expect(listed.get(name)).toBe(license);
  });
});
