/** All tests make their folders below one, which goes when they have run: a thousand were left behind in a day of work. */
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";

export default function makeTemporaryFolder(): () => void {
  const folder = mkdtempSync(path.join(tmpdir(), "plotreel-tests-"));
  process.env.TMPDIR = folder;
  return () => rmSync(folder, { recursive: true, force: true, maxRetries: 3 });
}
