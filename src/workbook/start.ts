import { existsSync, mkdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, resolve } from "node:path";
import * as esbuild from "esbuild";
import { DEMO_FRONT } from "../../templates/demo/shop.ts";
import { build } from "../build/build.ts";
import { openBrowser } from "./browser.ts";
import { demoToday } from "./demo.ts";
import { textTable } from "./engine/table.ts";
import { openKeeper } from "./file/keeper.ts";
import { type Lock, lockFile } from "./file/lock.ts";
import { targetOf } from "./file/write-file.ts";
import { openWorkbook, type WorkbookHost } from "./host.ts";
import { serve } from "./server.ts";
import { WORKBOOK_NAME } from "./service/sheets.ts";
import { toXlsx } from "./xlsx/xlsx.ts";

type PageWish = { readonly port: number | undefined; readonly file: string; readonly opens: boolean };
type Wish = { readonly save: string } | PageWish;

const USAGE = "npm start -- [--port N] [--file FILE.json] [--no-open] | --save FILE.xlsx";
/** Where what is typed is kept, unless told otherwise; not part of what is published. */
const KEPT = join(".gramwright", "workbook.json");

/** Opens the local workbook in a browser's reach, or writes it to a file. */
export async function run(args: readonly string[]): Promise<void> {
  try {
    const wish = wishOf(args);
    if ("save" in wish) await saveTo(wish.save);
    else await openPage(wish);
  } catch (error) {
    console.error((error as Error).message);
    process.exitCode = 1;
  }
}

function wishOf(args: readonly string[]): Wish {
  if (args[0] === "--save") {
    if (args.length > 2) throw new Error(`Too many arguments: ${args.slice(2).join(" ")}. Usage: ${USAGE}`);
    return { save: checkedPath("--save", args[1], ".xlsx") };
  }
  let port: number | undefined;
  let file = resolve(KEPT);
  const paired = args.filter((arg) => arg !== "--no-open");
  for (let at = 0; at < paired.length; at += 2) {
    const [option, value] = [paired[at], paired[at + 1]];
    if (option === "--port") port = checkedPort(value);
    else if (option === "--file") file = checkedPath("--file", value, ".json");
    else throw new Error(`Unknown argument ${option}. Usage: ${USAGE}`);
  }
  return { port, file, opens: paired.length === args.length };
}

function checkedPort(value: string | undefined): number {
  const port = Number(value);
  if (!/^\d+$/.test(value ?? "") || port < 1 || port > 65535)
    throw new Error(`--port needs a number from 1 to 65535. Usage: ${USAGE}`);
  return port;
}

/** The file's whole path, seen from where the command was given. */
function checkedPath(option: string, value: string | undefined, ending: ".xlsx" | ".json"): string {
  if (value === undefined || value === "")
    throw new Error(`${option} needs a file name that ends in ${ending}. Usage: ${USAGE}`);
  if (!value.toLowerCase().endsWith(ending)) throw new Error(`The file name must end in ${ending}: ${value}`);
  const path = resolve(process.env.INIT_CWD ?? process.cwd(), value);
  const folder = dirname(path);
  if (!existsSync(folder) || !statSync(folder).isDirectory())
    throw new Error(`There is no folder ${folder}; make it first, or choose another.`);
  if (existsSync(path) && statSync(path).isDirectory()) throw new Error(`${path} is a folder; give a file name.`);
  return path;
}

async function saveTo(path: string): Promise<void> {
  await build();
  const book = openWorkbook({
    codeJs: readFileSync("dist/Code.js", "utf8"),
    sidebarHtml: readFileSync("dist/sidebar.html", "utf8"),
  });
  const sheets = demoToday().map((question) => (book.answer(question) as { sheet: string }).sheet);
  writeWhole(path, await toXlsx(book.engine));
  const first = sheets.find((sheet) => sheet === DEMO_FRONT);
  if (first !== undefined) console.log(`\n${first}\n\n${asText(book, first)}\n`);
  console.log(`${WORKBOOK_NAME}: ${sheets.join(", ")} – saved to ${path}`);
}

/** Beside the file first, then in its place: a full disk or a broken run leaves the old file whole. */
function writeWhole(path: string, bytes: Buffer): void {
  const beside = join(dirname(path), `.${process.pid}-${Date.now()}.xlsx.part`);
  try {
    writeFileSync(beside, bytes, { flag: "wx" });
    renameSync(beside, path);
  } catch (error) {
    rmSync(beside, { force: true });
    throw new Error(`${path} could not be written: ${(error as Error).message}`);
  }
}

function asText(book: WorkbookHost, sheet: string): string {
  const range = book.usedRange(sheet);
  const values = book.values(sheet, range);
  return textTable(
    book
      .shownTexts(sheet, range)
      .map((row, down) => row.map((text, across) => ({ text, isNumber: typeof values[down]?.[across] === "number" }))),
  );
}

async function openPage({ port, file, opens }: PageWish): Promise<void> {
  mkdirSync(dirname(targetOf(file)), { recursive: true });
  const lock = lockFile(targetOf(file));
  releaseAtEnd(lock);
  await build();
  const codeJs = readFileSync("dist/Code.js", "utf8");
  const keeper = openKeeper(file, (data) => void openWorkbook({ codeJs, data }), lock);
  const { data, says } = keeper.load();
  const bundled = await esbuild.build({
    entryPoints: ["src/workbook/page/page.ts"],
    bundle: true,
    write: false,
    format: "iife",
    target: "es2022",
    logLevel: "warning",
  });
  const pageJs = bundled.outputFiles[0]?.text ?? "";
  const { address } = await serve({ root: process.cwd(), pageJs, keeper, ...(port === undefined ? {} : { port }) });
  if (says !== undefined) console.log(says);
  console.log(`${WORKBOOK_NAME} is open at ${address}\nStop it with Ctrl+C.`);
  const keeping = data === undefined ? "What you type is kept" : "As it was left, and what you type is kept,";
  console.log(`${keeping} in ${file}; delete that file to start again.`);
  if (opens) await openBrowser(address);
}

/** Also where the server is stopped by Ctrl+C or its window is closed; a killed one's lock is taken over by the next. */
function releaseAtEnd(lock: Lock): void {
  process.once("exit", () => lock.release());
  for (const signal of ["SIGINT", "SIGTERM", "SIGHUP"] as const) process.once(signal, () => process.exit());
}
