/**
 * "Promised Beau's nan I'd show the beans": to whom a promise was made. One made to viewers is the film's debt; one made to
 * somebody else may be that too, a thing to do, or nobody's business here: the person is asked.
 */

const told =
  /^(?:i |we )?promised (?!to\b|that\b|me\b|myself\b)(.{2,40}?) (?:that )?(?:i|we)(?:(?:['’](?:d|ll))| would| will) (.+)$/is;
const viewers = /^(?:you|you all|y['’]all|you lot|everyone|everybody|the viewers|viewers|folks|the comments)$/i;

export interface PromisedTo {
  readonly isToViewers: boolean;
  readonly what: string;
}

export function promisedTo(text: string): PromisedTo | undefined {
  const [, whom = "", what = ""] = told.exec(text.trim()) ?? [];
  if (whom === "" || /[:;.]/.test(whom)) return undefined;
  return { isToViewers: viewers.test(whom.trim()), what: what.trim() };
}
