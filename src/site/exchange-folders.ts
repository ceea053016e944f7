/**
 * Two folders that change places in one step, so that no moment is without either. Linux can (renameat2 with
 * RENAME_EXCHANGE, since kernel 3.15), Node has no call for it, and Perl, which nearly every Linux has, can make any.
 */
import { spawnSync } from "node:child_process";

/** The call's number, from the kernel's tables of system calls. */
const CALL_NUMBERS: Readonly<Record<string, number>> = { x64: 316, arm64: 276 };

/** -100 is AT_FDCWD: paths are whole or begin at the current folder. Flag 2 is RENAME_EXCHANGE. */
const PROGRAM = "exit(syscall($ARGV[0] + 0, -100, $ARGV[1], -100, $ARGV[2], 2) == 0 ? 0 : 1)";

/** False when this system cannot; then both are where they were. */
export function exchangeFolders(one: string, other: string): boolean {
  const number = process.platform === "linux" ? CALL_NUMBERS[process.arch] : undefined;
  if (number === undefined) return false;
  return spawnSync("perl", ["-e", PROGRAM, String(number), one, other], { stdio: "ignore" }).status === 0;
}
