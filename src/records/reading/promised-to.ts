/**
 * "Promised Beau's nan I'd show the beans": to whom a promise was made. One made to viewers is the film's debt; one made to
 * somebody else may be that too, a thing to do, or nobody's business here: the person is asked.
 */

const told =
  /^(?:i |we )?promised (?!to\b|that\b|me\b|myself\b)(.{2,40}?) (?:that )?(?:i|we)(?:(?:['’](?:d|ll))| would| will) (.+)$/is;
/** "Promised agogo a basin of sweet potatoes": whom, and what, which begins as things do. */
const given =
  /^(?:i |we )?promised (?!(?:to|that|me|myself|an?|some|another|more|for|again)\b)((?:(?:the|my|our|her|his|their) )?(?!(?:show|film|tell|weigh)\b)[\p{L}'’]+(?: (?!(?:of|with|for|in|on|at|from|to|by|and)\b)[\p{L}'’]+)?) ((?:an?|some|the|my|our|one|two|three|half|more|\d+)\b.+)$/iu;
const viewers = /^(?:you|you all|y['’]all|you lot|everyone|everybody|the viewers|viewers|folks|the comments)$/i;

export interface PromisedTo {
  readonly isToViewers: boolean;
  readonly what: string;
}

export function promisedTo(text: string): PromisedTo | undefined {
  const [, whom = "", what = ""] = told.exec(text.trim()) ?? [];
  if (whom !== "" && !/[:;.]/.test(whom)) return { isToViewers: viewers.test(whom.trim()), what: what.trim() };
  const [, to = "", thing = ""] = given.exec(text.trim()) ?? [];
  if (to === "" || /(?:ing|of|the|that)$/i.test(to)) return undefined;
  const isToViewers = viewers.test(to);
  return { isToViewers, what: isToViewers ? thing.trim() : `${thing.trim()} for ${to}` };
}
