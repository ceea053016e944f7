/** Exit codes of every command. */
export const EXIT = { done: 0, problemsFound: 1, wrongUse: 2, couldNot: 3 } as const;

/** Stops a command with a sentence for the person and an exit code. */
export class CommandError extends Error {
  readonly exitCode: number;
  constructor(message: string, exitCode: number = EXIT.wrongUse) {
    super(message);
    this.exitCode = exitCode;
  }
}
