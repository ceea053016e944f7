/**
 * What the program needs beside its code: compiled templates, the phone's scripts, style sheets, lettering. All of it is made by
 * scripts/build/prepare.ts. It lies beside the code that is shipped; in the clone it is made when it is first asked for after
 * a change of the sources.
 */
import { execFileSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";
import { sourcesDigest } from "./tool-version.ts";

const SHIPPED = path.join(import.meta.dirname, "prepared");
const CLONE = path.join(import.meta.dirname, "..", "..");

let folder: string | undefined;

/** Absolute. */
export function preparedFolder(): string {
  folder ??= existsSync(SHIPPED) ? SHIPPED : preparedInClone();
  return folder;
}

/** A text among it: "styles/tokens.css". */
export function preparedText(file: string): string {
  return readFileSync(path.join(preparedFolder(), file), "utf8");
}

function preparedInClone(): string {
  const made = path.join(CLONE, ".cache", "prepared", sourcesDigest());
  if (!existsSync(made))
    execFileSync(process.execPath, [path.join(CLONE, "scripts", "build", "prepare.ts")], {
      stdio: ["ignore", "ignore", "inherit"],
    });
  return made;
}
