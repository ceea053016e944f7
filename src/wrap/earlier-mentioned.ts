/** Earlier films the speaker speaks of: "I said in June I'd show you this bed again", "last time". */
import { monthNumber } from "../calendar.ts";
import type { Episode } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import type { Wrap } from "./wrap.ts";

const saidBefore =
  /\b(?:i|we) (?:said|told you|promised|showed you|filmed|asked you|owe you)\b|\b(?:i|we)(?:'ve| have) not forgotten\b|\blast (?:time|film|tour)\b|\bsame time last\b/;
const months =
  /\b(?:in|last|since|back in|from last) (january|february|march|april|may|june|july|august|september|october|november|december)\b/;

export function earlierMentioned(film: FilmHeard): Wrap["earlier"] {
  const { garden, episode, day } = film.day;
  const before = [...garden.episodes.values()]
    .filter((one) => one.id !== episode.id && one.day < day && one.status === "published")
    .sort((a, b) => (a.day < b.day ? 1 : -1));
  const found = new Map<string, Wrap["earlier"][number]>();
  for (const { text, at, from, to } of film.statements) {
    if (!saidBefore.test(text)) continue;
    const bed = film.stretches.find((stretch) => from >= stretch.from && to <= stretch.to)?.bed;
    const meant = episodeMeant(text, bed, before);
    if (meant !== undefined && !found.has(meant.id)) found.set(meant.id, { episode: meant.id, ...moment(at) });
  }
  return [...found.values()];
}

/** The newest film of the month said; "last time" the newest that showed the bed; otherwise none. */
function episodeMeant(text: string, bed: string | undefined, before: readonly Episode[]): Episode | undefined {
  const month = months.exec(text)?.[1];
  if (month !== undefined) return before.find((one) => Number(one.day.slice(5, 7)) === monthNumber(month));
  if (/\blast (?:time|film|tour)\b/.test(text))
    return before.find((one) => one.stops.some((stop) => stop.bed === bed)) ?? before[0];
  return before.find((one) => one.promised.some((promise) => promise.bed === bed && bed !== undefined));
}
