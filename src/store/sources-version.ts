/** Stands for a program as it is now, so that what another version of it kept is left aside and nobody raises a number. */
import { createHash } from "node:crypto";
import { readdirSync, statSync } from "node:fs";
import path from "node:path";

/** By size and time of every file below `sources` and of each of `beside`, and by the Node that runs it. */
export function sourcesVersion(sources: string, beside: readonly string[] = []): string {
  const files = readdirSync(sources, { recursive: true, encoding: "utf8" }).sort();
  const stamps = [...files.map((file) => path.join(sources, file)), ...beside].map((file) => {
    const of = statSync(file, { throwIfNoEntry: false });
    return `${path.relative(sources, file)} ${of?.isFile() === true ? `${of.size} ${of.mtimeMs}` : ""}`;
  });
  return createHash("sha256")
    .update([process.version, ...stamps].join("\n"))
    .digest("base64url");
}
