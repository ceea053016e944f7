/**
 * Loaded before a command (`node --import`): counts what it changes on the disk, and at one of these changes kills it or lets
 * the disk fail. What to do stands in TRUST_AT: "17:before", "17:after", "17:half" kill; "17:ENOSPC" fails from then on, as a
 * full disk does. TRUST_LOG names a file that gets the number of changes, the milliseconds until the first, and every state in
 * which a file of the records was put in its place.
 */
import fs from "node:fs";
import { syncBuiltinESMExports } from "node:module";
import path from "node:path";
import { isMainThread } from "node:worker_threads";
import { stateOf } from "./snapshot.ts";

const [at = 0, how = ""] = (process.env.TRUST_AT ?? "")
  .split(":")
  .map((part, index) => (index === 0 ? Number(part) : part)) as [number, string];
let changes = 0;
let first = 0;

/** Whether this change fails, is cut in half, or ends everything when it is done. */
function next(name: string, target: unknown): "whole" | "half" | "last" {
  if (!isOurs(target)) return "whole";
  changes += 1;
  if (changes === 1) first = performance.now();
  if (how.startsWith("E")) {
    if (at > 0 && changes >= at && !/^(?:rm|unlink|rmdir)/.test(name)) {
      throw Object.assign(new Error(`${how}: injected, ${name} '${String(target)}'`), {
        code: how,
        syscall: name.replace("Sync", ""),
        path: String(target),
      });
    }
    return "whole";
  }
  if (changes !== at) return "whole";
  if (how === "before") die();
  return how === "half" ? "half" : "last";
}

/** Node's own cache of compiled code is none of the command's work. */
function isOurs(target: unknown): boolean {
  return !String(target).startsWith(process.env.NODE_COMPILE_CACHE ?? "\0");
}

function die(): never {
  process.kill(process.pid, "SIGKILL");
  // The signal is under way; nothing more may happen.
  for (;;);
}

type Call = (...given: unknown[]) => unknown;

function half(content: unknown): unknown {
  const bytes = typeof content === "string" ? Buffer.from(content) : (content as Uint8Array);
  return bytes.subarray(0, Math.floor(bytes.length / 2));
}

function counted(name: string, call: Call, self: unknown, contentAt: number | undefined): Call {
  return (...given) => {
    const kind = next(name, given[0]);
    if (kind === "whole") {
      const done = call.apply(self, given);
      if (name !== "rename" && name !== "link") return done;
      return done instanceof Promise ? done.then(() => put(given[1])) : put(given[1]);
    }
    const used =
      kind === "half" && contentAt !== undefined
        ? given.map((one, index) => (index === contentAt ? half(one) : one))
        : given;
    const done = call.apply(self, used);
    return done instanceof Promise ? done.then(die) : die();
  };
}

const log = process.env.TRUST_LOG;
const steps: [string, string][] = [];

function put(target: unknown): void {
  const name = path.relative(process.cwd(), String(target));
  if (log !== undefined && /^(?:content|begun)[\\/]/u.test(name)) steps.push([name, stateOf(String(target))]);
}

const CHANGING = [
  "rename",
  "link",
  "symlink",
  "rm",
  "unlink",
  "mkdir",
  "rmdir",
  "chmod",
  "chown",
  "utimes",
  "copyFile",
  "cp",
  "truncate",
];

if (isMainThread) {
  const promises = fs.promises as unknown as Record<string, Call>;
  const sync = fs as unknown as Record<string, Call>;
  for (const name of CHANGING) {
    if (promises[name]) promises[name] = counted(name, promises[name], promises, undefined);
    if (sync[`${name}Sync`]) sync[`${name}Sync`] = counted(`${name}Sync`, sync[`${name}Sync`] as Call, sync, undefined);
  }
  promises.writeFile = counted("writeFile", promises.writeFile as Call, promises, 1);
  sync.writeFileSync = counted("writeFileSync", sync.writeFileSync as Call, sync, 1);
  const handle = await fs.promises.open(process.execPath, "r");
  const prototype = Object.getPrototypeOf(handle) as Record<string, Call>;
  await handle.close();
  for (const name of ["writeFile", "write", "truncate"]) {
    const call = prototype[name] as Call;
    prototype[name] = function (this: unknown, ...given: unknown[]) {
      const kind = next(name, "an open file");
      if (kind === "whole") return call.apply(this, given);
      // The system ends one call before the process dies; only a file written in several is ever cut in half.
      const used = kind === "half" && name === "writeFile" ? [half(given[0]), ...given.slice(1)] : given;
      return (call.apply(this, used) as Promise<unknown>).then(die);
    };
  }
  syncBuiltinESMExports();
  const write = fs.writeSync;
  const open = fs.openSync;
  if (log !== undefined) process.on("exit", () => write(open(log, "w"), JSON.stringify({ changes, first, steps })));
}
