// Disks and folders that take nothing, or are gone.
import { chmodSync, readFileSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { expect } from "vitest";
import { beside, fileOf, revisionAt, servedText, type, typedIn } from "../one-cell.ts";
import { canBeNobody, canMount, startServer } from "../server-process.ts";
import type { Accident } from "./accident.ts";

const LONG = "x".repeat(200_000);

export const DISKS: readonly Accident[] = [
  {
    accident: "a full disk: the file keeps what it held, no part is left, and with room again all is kept",
    typed: ["fits", LONG, "fits again"],
    found: "fits again",
    told: /^workbook\.json could not be written\. The disk is full\. Make room on it\.$/,
    isPossible: canMount,
    async happens(file, [fits = "", long = "", again = ""]) {
      const { says: at } = await startServer(file, { mounts: `mount -t tmpfs -o size=64k none '${dirname(file)}'` });
      await type(at, fits);
      const { status, says } = await type(at, long);
      expect(status).toBe(507);
      expect(await servedText(at)).toBe(fits);
      expect((await type(at, again)).status).toBe(200);
      // The disk is seen by this server alone.
      writeFileSync(file, fileOf(await servedText(at)));
      return says;
    },
  },
  {
    accident: "a disk that takes no larger file: likewise",
    typed: ["fits", LONG, "fits again"],
    found: "fits again",
    told: /^workbook\.json could not be written\. The disk takes no larger file\. Choose another with --file\.$/,
    async happens(file, [fits = "", long = "", again = ""]) {
      const { says: at } = await startServer(file, { limit: "ulimit -f 8" });
      await type(at, fits);
      const { status, says } = await type(at, long);
      expect(status).toBe(500);
      expect(typedIn(file)).toBe(fits);
      expect(beside(file).filter((name) => name.endsWith(".part"))).toEqual([]);
      expect((await type(at, again)).status).toBe(200);
      return says;
    },
  },
  {
    accident: "a read-only folder: no server starts",
    typed: ["of the last time"],
    found: "of the last time",
    told: /^workbook\.json\.lock could not be written\. You may not write in that folder\. Allow it, or choose another with --file\.$/,
    isPossible: canBeNobody,
    async happens(file, [old = ""]) {
      writeFileSync(file, fileOf(old));
      chmodSync(dirname(file), 0o555);
      const { says } = await startServer(file, { isNobody: true });
      chmodSync(dirname(file), 0o755);
      expect(beside(file)).toEqual(["workbook.json"]);
      return says;
    },
  },
  {
    accident: "a folder that becomes read-only: the file keeps what it held, and with the right given back all is kept",
    typed: ["allowed", "not allowed", "allowed again"],
    found: "allowed again",
    told: /^workbook\.json could not be written\. You may not write in that folder\. Allow it, or choose another with --file\.$/,
    isPossible: canBeNobody,
    async happens(file, [allowed = "", not = "", again = ""]) {
      const folder = dirname(file);
      chmodSync(folder, 0o777);
      const { says: at } = await startServer(file, { isNobody: true });
      await type(at, allowed);
      chmodSync(folder, 0o555);
      const { status, says } = await type(at, not);
      expect(status).toBe(500);
      expect(await servedText(at)).toBe(allowed);
      chmodSync(folder, 0o777);
      expect((await type(at, again)).status).toBe(200);
      return says;
    },
  },
  {
    accident: "a disk that can only be read: no server starts",
    typed: ["of the last time"],
    found: "of the last time",
    told: /^workbook\.json\.lock could not be written\. The disk can only be read\. Choose another with --file\.$/,
    isPossible: canMount,
    async happens(file, [old = ""]) {
      writeFileSync(file, fileOf(old));
      const folder = `'${dirname(file)}'`;
      return (
        await startServer(file, { mounts: `mount --bind ${folder} ${folder}; mount -o remount,bind,ro ${folder}` })
      ).says;
    },
  },
  {
    accident: "a folder that is gone, a file in its place: nothing is called kept, and with the folder back all is",
    typed: ["kept", "not kept", "kept again"],
    found: "kept again",
    told: /^workbook\.json could not be written\. Its folder is gone\. Put it back, or choose another with --file\.$/,
    async happens(file, [kept = "", not = "", again = ""]) {
      const { says: at } = await startServer(file);
      await type(at, kept);
      const [known, folder] = [await revisionAt(at), dirname(file)];
      renameSync(folder, `${folder}-moved`);
      expect((await fetch(`${at}revision`)).status).toBe(500);
      writeFileSync(folder, "a file");
      const { status, says } = await type(at, not, known);
      expect(status).toBe(500);
      expect(readFileSync(folder, "utf8")).toBe("a file");
      rmSync(folder);
      renameSync(`${folder}-moved`, folder);
      expect((await type(at, again, known)).status).toBe(200);
      return says;
    },
  },
];
