/** Questions to the person at the terminal: one key, or one line. */
import { isCancel, selectKey, text } from "@clack/prompts";

export interface Key {
  /** One letter. */
  readonly key: string;
  readonly means: string;
}

/** Undefined when the person ends the asking, by Escape or Ctrl-C. */
export async function askKey(question: string, keys: readonly Key[]): Promise<string | undefined> {
  const options = keys.map(({ key, means }) => ({ value: key, label: means }));
  const answer = await selectKey({ message: question, options, withGuide: false });
  return isCancel(answer) ? undefined : answer;
}

/** Undefined when the person ends the asking; may be empty. */
export async function askLine(question: string): Promise<string | undefined> {
  const answer = await text({ message: question, withGuide: false });
  return isCancel(answer) ? undefined : (answer ?? "");
}
