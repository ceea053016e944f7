/** Why the system would not let a file be read or written, in words. */

const REASONS: Readonly<Record<string, string>> = {
  ENOSPC: "the disk is full",
  EDQUOT: "your share of the disk is used up",
  EROFS: "the disk can only be read from",
  EACCES: "the system does not allow it",
  EPERM: "the system does not allow it",
  EIO: "the disk reports a fault",
  ENOENT: "it is not there",
  ENOTDIR: "a part of the path is a file, not a folder",
  EEXIST: "something of that name is there already",
  EISDIR: "it is a folder",
  EBUSY: "another program is using it",
  EMFILE: "too many files are open",
  ENFILE: "too many files are open",
  ENAMETOOLONG: "its name is too long for this disk",
  EFBIG: "it is larger than a file may be here",
  ENOTFILE: "it is neither a file nor a folder",
};

/** One sentence; undefined for an error that the system did not report. */
export function sayRefused(error: unknown): string | undefined {
  const { code, path, dest, syscall } = error as NodeJS.ErrnoException & { readonly dest?: string };
  if (code === undefined || syscall === undefined || (path === undefined && REASONS[code] === undefined))
    return undefined;
  const what = dest ?? path;
  return `Could not ${what === undefined ? "write a file" : `use ${what}`}: ${REASONS[code] ?? "the system would not"} (${code}). Nothing in your records was left half changed.`;
}
