/** The commands that write, how they are run in a folder of their own, and what each may leave. */
import { execFileSync, spawn } from "node:child_process";
import { once } from "node:events";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { keepStates, pageSaves } from "./page-saves.ts";
import { type Snapshot, snapshotOf } from "./snapshot.ts";
import { writeTrialRecords } from "./trial-records.ts";

export interface TrialCommand {
  readonly name: string;
  readonly argv: readonly string[];
  /** Codes a run may end with that finds its work done already. */
  readonly again: readonly number[];
  /** Codes of the slower of two at the same time: it says what it left as it is. */
  readonly alsoAtOnce?: readonly number[];
  /** What a person is told to give when a next run ends with 3, as it would not do the work a second time. */
  readonly thenGiven?: readonly string[];
}

const today = ["--records", "content", "--today", "2026-07-18"];

export const trialCommands: readonly TrialCommand[] = [
  { name: "ingest", argv: ["ingest", "card", ...today], again: [0] },
  { name: "publish", argv: ["publish", "--hold-back", ...today], again: [0] },
  { name: "wrap --accept", argv: ["wrap", "june", "--accept", "1", ...today], again: [0] },
  { name: "settle", argv: ["settle", ...today], again: [0] },
  { name: "new", argv: ["new", "note", "Long Bed", ...today], again: [0, 3] },
  // A garden that is there already is not begun again; photos that are still on the card are brought in by `ingest`.
  {
    name: "start",
    argv: [
      ...[
        "start",
        "--records",
        "begun",
        "--today",
        "2026-07-18",
        "--name",
        "Begun",
        "--place",
        "skip",
        "--units",
        "metric",
      ],
      ...["--time-zone", "Europe/London", "--photos", "card", "--no-open"],
    ],
    again: [0, 3],
    thenGiven: ["ingest", "card", "--records", "begun", "--today", "2026-07-18"],
  },
  { name: "ingest FILE --write", argv: ["ingest", "orders.csv", "--write", ...today], again: [0], alsoAtOnce: [1] },
  {
    name: "ingest DIARY --write",
    argv: ["ingest", "diary.txt", "--date", "2019", "--write", ...today],
    again: [0],
    alsoAtOnce: [1],
  },
  { name: "names --join", argv: ["names", "--join", "Harbinger", "Red Harbinger", "--write", ...today], again: [0, 2] },
  ...Object.keys(pageSaves).map((word) => ({ name: `a page's ${word}`, argv: [word], again: [0] })),
];

export interface Ran {
  /** Null when it was killed. */
  readonly exitCode: number | null;
  readonly said: string;
  readonly ms: number;
}

export interface RunOptions {
  readonly env?: Readonly<Record<string, string>>;
  /** Milliseconds from its start. */
  readonly killAfter?: number;
  /** Milliseconds after which it hangs. */
  readonly limit?: number;
  /** Shell words before the command, such as a limit of the system. */
  readonly shell?: string;
  readonly uid?: number;
  /** Called with each piece of what it says. */
  readonly onSaid?: (said: string, kill: () => void) => void;
}

const here = import.meta.dirname;

export class Trials {
  readonly work = mkdtempSync(path.join(tmpdir(), "plotreel-trust-"));
  /** The folder each trial begins with; `publish` finds an older site there. */
  readonly base = path.join(this.work, "base");
  #number = 0;

  async begin(): Promise<void> {
    mkdirSync(this.base);
    await writeTrialRecords(this.base);
    const first = await this.run(this.base, trialCommands[1]?.argv ?? []);
    if (first.exitCode !== 0) throw new Error(`The records of the trials cannot be published: ${first.said}`);
    writeFileSync(path.join(this.base, "content/notes/2026-06-20.md"), "- planted 3 Harbinger tomato in Squash Bed\n");
    writeFileSync(path.join(this.base, "content/notes/2026-06-28.md"), "- lost 1 Harbinger tomato to slugs\n");
    await keepStates(this.base);
  }

  /** A copy of the base, its links and rights kept. */
  fresh(): string {
    const cwd = path.join(this.work, `trial-${this.#number++}`);
    execFileSync("cp", ["-a", this.base, cwd]);
    return cwd;
  }

  drop(cwd: string): void {
    rmSync(cwd, { recursive: true, force: true });
  }

  end(): void {
    rmSync(this.work, { recursive: true, force: true });
  }

  async run(cwd: string, argv: readonly string[], options: RunOptions = {}): Promise<Ran> {
    const began = performance.now();
    const node = [
      process.execPath,
      "--import",
      path.join(here, "disk-faults.ts"),
      path.join(here, "child.ts"),
      ...argv,
    ];
    const [program = "", ...given] =
      options.shell === undefined ? node : ["/bin/sh", "-c", `${options.shell}; exec "$@"`, "sh", ...node];
    const child = spawn(program, given, {
      cwd,
      env: {
        ...process.env,
        PLOTREEL_CACHE: path.join(cwd, "cache"),
        NODE_COMPILE_CACHE: path.join(this.work, "compiled"),
        ...options.env,
      },
      stdio: ["ignore", "pipe", "pipe"],
      ...(options.uid === undefined ? {} : { uid: options.uid, gid: options.uid }),
    });
    const kill = () => void child.kill("SIGKILL");
    const timers = [options.killAfter, options.limit ?? 120_000].map((ms) =>
      ms === undefined ? undefined : setTimeout(kill, ms),
    );
    let said = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.setEncoding("utf8").on("data", (text: string) => {
        said += text;
        options.onSaid?.(said, kill);
      });
    }
    // Not its "close": a program that it started, and that ends a moment later, holds the same outputs.
    const [exitCode] = (await once(child, "exit")) as [number | null];
    await new Promise((resolve) => setTimeout(resolve, 20));
    for (const timer of timers) clearTimeout(timer);
    return { exitCode, said, ms: performance.now() - began };
  }
}

/** What is a person's own: records, the other name of one of them, the card, a garden that is begun. */
export function ownFiles(cwd: string): Snapshot {
  return new Map(
    ["content", "backup", "card", "begun"].flatMap((folder) =>
      [...snapshotOf(path.join(cwd, folder))].map(([name, state]) => [`${folder}/${name}`, state] as const),
    ),
  );
}

/** Half-made things in what is derived. */
export function litterIn(cwd: string): readonly string[] {
  return ["out", "cache"].flatMap((folder) =>
    [...snapshotOf(path.join(cwd, folder)).keys()]
      .filter((name) => /\.part$|(?:^|\/)(?:work-|\.publishing)|\.(?:next|last)(?:\/|$)/u.test(name))
      .map((name) => `${folder}/${name}`),
  );
}

/** A stack trace, or a word that no person can use. */
export function saidBadly({ said }: Ran): string | undefined {
  return /^\s+at .*(?:node:|\.ts:\d+)/mu.exec(said)?.[0] ?? /\[object Object\]|\bundefined\b|\bNaN\b/u.exec(said)?.[0];
}
