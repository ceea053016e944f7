/** What an answer to a question worth asking asks of whoever keeps the records. */
import type { Sent, TapAnswer } from "./workbench.ts";

export interface ThingAsk {
  /** Of the question, as the page had it. */
  readonly id: string;
  readonly text: string;
  /** What was tapped or typed; undefined says that it is not to be asked again. */
  readonly answer?: string | undefined;
}

export interface ThingAsking {
  answerThing(ask: ThingAsk): Promise<TapAnswer>;
}

const LONGEST = 1000;

/** What a page of our own sent; undefined when it is anything else. */
export function thingAsk({ id, text, answer }: Sent): ThingAsk | undefined {
  if (!isText(id) || !isText(text)) return undefined;
  return answer === undefined || isText(answer) ? { id, text, answer } : undefined;
}

function isText(sent: unknown): sent is string {
  return typeof sent === "string" && sent.length <= LONGEST;
}
