/** What a tap on a question asks of whoever keeps the records. */
import type { Sent, TapAnswer } from "./workbench.ts";

export interface AnsweringAsk {
  readonly file: string;
  readonly line: number;
  /** The words of the line, as the page shows them. */
  readonly text: string;
  /** What stood in the file when the page was made. */
  readonly state: string;
  /** Which of its readings; undefined says that it holds no fact. */
  readonly reading?: number | undefined;
}

export interface QuestionAnswering {
  answer(ask: AnsweringAsk): Promise<TapAnswer>;
}

/** What a page of our own sent; undefined when it is anything else. */
export function answeringAsk({ file, line, text, state, reading }: Sent): AnsweringAsk | undefined {
  if (typeof file !== "string" || typeof text !== "string" || typeof state !== "string") return undefined;
  if (!isIndex(line) || (reading !== undefined && !isIndex(reading))) return undefined;
  return { file, line, text, state, reading };
}

function isIndex(number: unknown): number is number {
  return Number.isSafeInteger(number) && (number as number) >= 0;
}
