import { spawnSync } from "node:child_process";
import { copyFileSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { createRequire } from "node:module";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test, vi } from "vitest";
import { oneFile, oneFileScript } from "../../src/build/one-file.ts";
import { PACKAGES_IN_PAGE } from "../../src/build/one-file-parts.ts";
import { ADD_ON_FILES, zipArchive } from "../../src/build/pack.ts";
import { sourceArchive } from "../../src/build/source-archive.ts";
import { workspaceText } from "../../src/build/workspace.ts";
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
  });

  test("also where the folder holds other scripts and pages, as after taking over a script", () => {
    for (const name of ["Old.js", "other.html", "more.json", "notes.gs"])
      writeFileSync(join(folder, "dist", name), "{}");
    expect(pushed().sort()).toEqual([...ADD_ON_FILES].sort());
  });
});

describe("npm run pack", () => {
  // A reader that is not ours: the one the .xlsx library brings.
  const JSZip = createRequire(createRequire(import.meta.url).resolve("exceljs"))("jszip") as {
    loadAsync(
      bytes: Uint8Array,
      how: object,
    ): Promise<{ files: Record<string, { async(as: "nodebuffer"): Promise<Buffer> }> }>;
  };

  test("packs files that come out as they went in", async () => {
    const { codeJs, sidebarHtml } = await files();
    const entries: Record<string, Buffer> = {
      "appsscript.json": readFileSync("src/add-on/appsscript.json"),
      "Code.js": Buffer.from(codeJs),
      "sidebar.html": Buffer.from(sidebarHtml),
    };
    const archive = zipArchive(entries);
    const opened = await JSZip.loadAsync(archive, { checkCRC32: true });
    expect(Object.keys(opened.files)).toEqual([...ADD_ON_FILES]);
    for (const [name, bytes] of Object.entries(entries))
      expect((await opened.files[name]?.async("nodebuffer"))?.equals(bytes), name).toBe(true);
    const whole = Object.values(entries).reduce((sum, bytes) => sum + bytes.length, 0);
    expect(archive.length).toBeLessThan(whole / 2);
  });

  test("packs nothing whose name ends in .js, which mail programs stop, also inside the archive", () => {
    const names = Object.keys(sourceArchive());
    expect(names.filter((name) => /\.js$/i.test(name))).toEqual([]);
    for (const part of [
      "o-spreadsheet/dist/o_spreadsheet.iife.js.txt",
      "owl/dist/owl.iife.js.txt",
      "o-spreadsheet/LICENSE",
      "owl/LICENSE",
    ])
      expect(names).toContain(`libraries/@odoo/${part}`);
    for (const part of [
      "package-lock.json",
      "src/build/pack.ts",
      "src/workbook/engine/patches/paced-edits.ts",
      "shared/base/units.ts",
    ])
      expect(names).toContain(`gramwright/${part}`);
  });

  test("says in the archive at which versions, what is changed, and how it is built", () => {
    const readMe = Buffer.from(sourceArchive()["READ-ME.txt"] ?? []).toString();
    const { devDependencies } = JSON.parse(readFileSync("package.json", "utf8")) as {
      devDependencies: Record<string, string>;
    };
    expect(readMe).toContain(`@odoo/o-spreadsheet ${devDependencies["@odoo/o-spreadsheet"]}, LGPL-3.0-or-later`);
    // The very commits, by which the authors' TypeScript files are found.
    const engine = readFileSync("node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.iife.js", "utf8");
    const grid = readFileSync("node_modules/@odoo/owl/dist/owl.iife.js", "utf8");
    const [named, ...more] = [...readMe.matchAll(/from commit ([0-9a-f]{7,})$/gm)].map(([, commit]) => commit);
    expect(more).toHaveLength(1);
    expect(engine.slice(0, 1000)).toContain(`@hash ${named}`);
    expect(grid).toContain(`hash = '${more[0]}'`);
    expect(readMe).toContain("npm run pack");
    // The libraries' own packages hold none of their TypeScript files: that is said, and what to do about it.
    expect(Object.keys(sourceArchive()).filter((name) => /^libraries\/.*\.ts$/.test(name))).toEqual([]);
    expect(readMe).toMatch(/TypeScript files, which the authors keep in\s+the repository/);
    for (const name of readdirSync("src/workbook/engine/patches"))
      expect(readMe).toMatch(
        new RegExp(`^  20\\d\\d-\\d\\d-\\d\\d  gramwright/src/workbook/engine/patches/${name}$`, "m"),
      );
  });

  test("puts the engine and its helper into the page each as a script of its own, unchanged, with the licences of all", async () => {
    const page = await oneFile({ codeJs: "function a() {}", sidebarHtml: "<p>b</p>" });
    const scripts = new Map(
      [...page.matchAll(/<script id="([\w-]+)">([\s\S]*?)<\/script>/g)].map(([, id = "", text = ""]) => [id, text]),
    );
    expect(scripts.get("o-spreadsheet")).toBe(
      readFileSync("node_modules/@odoo/o-spreadsheet/dist/o_spreadsheet.min.iife.js", "utf8"),
    );
    expect(scripts.get("owl")).toBe(readFileSync("node_modules/@odoo/owl/dist/owl.iife.min.js", "utf8"));
    const licences = JSON.parse(
      /<script type="application\/json" id="licence-list">(.*?)<\/script>/.exec(page)?.[1] ?? "",
    ) as string;
    const { packages } = await oneFileScript();
    expect(packages).toContain("exceljs");
    for (const name of [...PACKAGES_IN_PAGE, ...packages]) expect(licences).toMatch(new RegExp(`^${name} \\d`, "m"));
    for (const title of ["GNU LESSER GENERAL PUBLIC LICENSE", "GNU GENERAL PUBLIC LICENSE", "SIL OPEN FONT LICENSE"])
      expect(licences).toContain(title);
  });

  test("prints for a Workspace domain the manifest that is pushed", () => {
    const manifest = readFileSync("src/add-on/appsscript.json", "utf8");
    expect(workspaceText(manifest)).toContain(manifest.trim());
    expect(JSON.parse(manifest)).not.toHaveProperty("addOns");
  });

  test("makes equal archives of equal files, whatever the day and the time zone", () => {
    const files = { "Code.js": Buffer.from("function a() {}") };
    vi.useFakeTimers({ now: new Date("2026-03-01T10:00:00Z") });
    const archive = zipArchive(files);
    vi.setSystemTime(new Date("2031-12-31T23:00:00Z"));
    vi.stubEnv("TZ", "Pacific/Auckland");
    expect(Buffer.from(zipArchive(files)).equals(archive)).toBe(true);
    vi.unstubAllEnvs();
    vi.useRealTimers();
  });
});

describe("the install page", () => {
  const page = readFileSync("src/build/install/index.html", "utf8");
  const steps = [...page.matchAll(/<h3>([^<]+)<\/h3>/g)].map(([, heading]) => heading);

  test("speaks only of steps that it has, and each step has its box to tick", () => {
    const spoken = [...page.matchAll(/\bsteps? ((?:\d+(?:, | and | to )?)+)/g)].flatMap(([, numbers = ""]) =>
      [...numbers.matchAll(/\d+/g)].map(([number]) => Number(number)),
    );
    expect(spoken.length).toBeGreaterThan(10);
    for (const number of spoken) expect(steps[number - 1], `step ${number}`).toBeDefined();
    expect(page.match(/type="checkbox"/g)).toHaveLength(steps.length);
    expect([steps[2], steps[3], steps[4]].join()).toMatch(/Code\.gs.*second text.*appsscript\.json/);
  });

  test("names the file of the editor that each text goes into, and begins with what could be lost", () => {
    for (const [text, file] of [
      ["first", "Code.gs"],
      ["second", "sidebar.html"],
      ["third", "appsscript.json"],
    ])
      expect(page).toMatch(new RegExp(`data-file="${file?.replace(".", "\\.")}">Copy the ${text} text</button>`));
    expect(page.indexOf("If other text stands in it, stop:")).toBeLessThan(page.indexOf("Copy the first text"));
    // The script begins with its name, which tells it from somebody else's.
    expect(readFileSync("dist/Code.js", "utf8").split("\n").slice(0, 3).join()).toContain("Gramwright");
  });
});

describe("the list of packages", () => {
  const listed = new Map(
    [...readFileSync("src/build/packages.md", "utf8").matchAll(/^\| ([^|]+) \| ([^|]+) \| \S[^|]*\|$/gm)].flatMap(
      ([, names = "", licence = ""]) => names.split(", ").map((name) => [name.trim(), licence.trim()] as const),
    ),
  );
  const manifest = JSON.parse(readFileSync("package.json", "utf8")) as { devDependencies: Record<string, string> };

  const statedBy = (name: string) =>
    (JSON.parse(readFileSync(`node_modules/${name}/package.json`, "utf8")) as { license: string }).license;

  test.each(Object.keys(manifest.devDependencies))("names %s with the licence it states", (name) => {
    expect(listed.get(name)).toBe(statedBy(name));
  });

  test("names every package whose files the local workbook serves", () => {
    const server = readFileSync("src/workbook/http/files.ts", "utf8");
    const served = [...server.matchAll(/"node_modules\/((?:@[\w-]+\/)?[\w-]+)\//g)].map(([, name = ""]) => name);
    expect(served.length).toBeGreaterThan(2);
    for (const name of served) expect(listed.get(name), name).toBe(statedBy(name));
  });

  test("names every licence that an installed package states, in the table or in the sentence for the rest", () => {
    const page = readFileSync("src/build/packages.md", "utf8");
    const rest = /What else is installed with these packages states ([^.]*(?:\.\d[^.]*)*)\./.exec(page)?.[1] ?? "";
    const forAll = rest.split(/,\s|\sor\s/).map((one) => one.trim());
    const lock = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
      packages: Record<string, { license?: string }>;
    };
    for (const [path, { license }] of Object.entries(lock.packages)) {
      const name = path.replace(/^.*node_modules\//, "");
      if (license === undefined || path === "" || listed.get(name) === license) continue;
      for (const one of license.replace(/[()]/g, "").split(/ (?:AND|OR) /))
        expect(forAll, `${name}: ${one}`).toContain(one);
    }
  });

  test("names every installed package that states no licence in the form npm reads", () => {
    const lock = JSON.parse(readFileSync("package-lock.json", "utf8")) as {
      packages: Record<string, { license?: string }>;
    };
    const silent = Object.entries(lock.packages).filter(([, { license }]) => license === undefined);
    expect(silent.length).toBeGreaterThan(0);
    for (const [path] of silent)
      expect(listed.get(path.replace(/^.*node_modules\//, "")), path).toMatch(/^none stated/);
  });
});
