// Which source files a piece of work runs through, by V8's own count of calls, over sources that were put together unminified.
import { Session } from "node:inspector";
import { createContext, runInContext } from "node:vm";
import { build } from "esbuild";

/** The sources under `exports` as one text that puts what they export into the global `program`. */
export async function bundled(exports: string): Promise<string> {
  const { outputFiles } = await build({
    stdin: { contents: exports, resolveDir: process.cwd(), loader: "ts" },
    bundle: true,
    write: false,
    format: "iife",
    globalName: "program",
    charset: "utf8",
  });
  return outputFiles[0]?.text ?? "";
}

/** Runs it in a global scope of its own. */
export function runBundle<T>(code: string, filename: string, globals: object): T {
  const context = createContext(globals);
  runInContext(code, context, { filename });
  return context.program as T;
}

export type FilesRun = ReadonlyMap<string, readonly string[]>;

/** Counts from now on; what it gives ends the count: the functions that ran of each source file of the texts, by file name. */
export function countFiles(texts: Readonly<Record<string, string>>): () => FilesRun {
  const session = new Session();
  session.connect();
  session.post("Profiler.enable");
  session.post("Profiler.startPreciseCoverage", { callCount: true, detailed: false });
  return () => {
    const files = new Map<string, string[]>();
    session.post("Profiler.takePreciseCoverage", (_, { result }) => {
      for (const { url, functions } of result) {
        const text = texts[url];
        if (text === undefined) continue;
        const starts = [...text.matchAll(/^ *\/\/ (\S+\.[cm]?[jt]s)$/gm)];
        for (const { functionName, ranges } of functions) {
          const [whole] = ranges;
          if (whole === undefined || whole.count === 0) continue;
          const file = starts.findLast(({ index }) => index <= whole.startOffset)?.[1];
          if (file !== undefined && !file.includes("node_modules"))
            files.set(file, [...(files.get(file) ?? []), functionName || "(nameless)"]);
        }
      }
    });
    session.post("Profiler.stopPreciseCoverage");
    session.disconnect();
    return files;
  };
}
