/** Wall and processor time of another process with all that it starts. */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";

export interface ChildTime {
  readonly ms: number;
  /** Of all its threads and processes, where the system tells; a busy machine lengthens it less than the wall clock's. */
  readonly cpuMs: number | undefined;
  readonly err: string;
}

export function timeChild(args: readonly string[], cwd: string, env: NodeJS.ProcessEnv): ChildTime {
  const used = childrenSoFar();
  const began = performance.now();
  const { status, stderr } = spawnSync(process.execPath, args, { cwd, env, encoding: "utf8" });
  const ms = performance.now() - began;
  const now = childrenSoFar();
  if (status !== 0) throw new Error(stderr);
  return { ms, cpuMs: used === undefined || now === undefined ? undefined : now - used, err: stderr };
}

/** Processor time of children that have ended, in ms (Linux: proc(5), fields 16 and 17, in hundredths of a second). */
function childrenSoFar(): number | undefined {
  try {
    const [, fields = ""] = readFileSync("/proc/self/stat", "utf8").split(") ");
    const [user, system] = fields.split(" ").slice(13, 15);
    return (Number(user) + Number(system)) * 10;
  } catch {
    return undefined;
  }
}
