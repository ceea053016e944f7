/** Milliseconds of processor time and of the clock that some work takes; the first is what a loaded machine disturbs less. */
export interface Took {
  readonly cpuMs: number;
  readonly ms: number;
}

export function took(work: () => unknown): Took {
  const used = process.cpuUsage();
  const began = performance.now();
  work();
  const ms = performance.now() - began;
  const { user, system } = process.cpuUsage(used);
  return { cpuMs: (user + system) / 1000, ms };
}

/** The run that took the least processor time. */
export function least(all: readonly Took[]): Took {
  return all.reduce((best, one) => (one.cpuMs < best.cpuMs ? one : best));
}

/** "88 ms of processor time, 120 on the clock" */
export function sayTook({ cpuMs, ms }: Took): string {
  return `${cpuMs.toFixed(0)} ms of processor time, ${ms.toFixed(0)} on the clock`;
}
