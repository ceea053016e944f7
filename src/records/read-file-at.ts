/** Reading a file that may have become something else since it was found. */
import { closeSync, constants, fstatSync, openSync, readFileSync } from "node:fs";

/** Throws at once when it is a pipe, which would be waited for until somebody writes into it. */
export function readFileAt(file: string): Buffer<ArrayBuffer> {
  // Windows has no such flag, and no pipes among files.
  const handle = openSync(file, constants.O_RDONLY | (constants.O_NONBLOCK ?? 0));
  try {
    const found = fstatSync(handle);
    if (found.isFile() || found.isDirectory()) return readFileSync(handle);
  } finally {
    closeSync(handle);
  }
  throw Object.assign(new Error("it is neither a file nor a folder"), {
    code: "ENOTFILE",
    syscall: "open",
    path: file,
  });
}
