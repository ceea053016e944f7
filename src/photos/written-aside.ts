/** Files that are whole or not there: written under another name beside, then renamed. */
import { randomBytes } from "node:crypto";
import { rename, rm } from "node:fs/promises";

/** `write` makes the file at the path it is given; what it throws is thrown on, and nothing is left behind. */
export async function writeAside(file: string, write: (aside: string) => Promise<unknown>): Promise<void> {
  const aside = `${file}.${randomBytes(4).toString("hex")}.part`;
  try {
    await write(aside);
    await rename(aside, file);
  } catch (error) {
    await rm(aside, { force: true });
    throw error;
  }
}
