/** Earlier films to point to from a stop: those that speak of what is shown there, with the moment at which they do. */

import { dayOnly, say } from "../language/index.ts";
import type { Episode } from "../model.ts";
import { type BedOnTheDay, voiceOf } from "./bed-on-the-day.ts";
import type { PointTo } from "./camera.ts";
import type { Weighed } from "./candidates/candidate.ts";
import type { Named, ShownBefore } from "./shown-before.ts";

/** More than two pointers at a stop are not made. */
const mostPointed = 2;

interface Match {
  readonly episode: Episode;
  readonly about: string;
  readonly at: number | undefined;
  readonly place: Named["place"] | undefined;
  /** A thing shown here, a thing that grows here, gear, work, the bed as such: the more specific the higher. */
  readonly closeness: number;
}

export function pointersAt(here: BedOnTheDay, show: readonly Weighed[], shown: ShownBefore): readonly PointTo[] {
  const found = shown.films.flatMap((episode) => bestMatch(episode, here, show, shown) ?? []);
  const voice = voiceOf(here);
  return found
    .toSorted((a, b) => b.closeness - a.closeness || (a.episode.day < b.episode.day ? 1 : -1))
    .slice(0, mostPointed)
    .map(({ episode, about, at, place }) => {
      const text = `${episode.title}, ${dayOnly(episode.day, voice)}${at === undefined ? "" : `, at ${filmClock(at)}`}`;
      return {
        ...say(text, [place === undefined ? episode : { place }]),
        episode: episode.id,
        title: episode.title,
        day: episode.day,
        link: episode.link,
        at,
        about,
      };
    });
}

/** Verbs of work that viewers look up, with the words they are said in. */
const techniques: readonly (readonly [did: RegExp, words: readonly string[], about: string])[] = [
  [/^(?:pruned|pinched)/, ["prune", "pruned", "pruning", "pinch out", "side shoots"], "pruning"],
  [/^(?:staked|tied)/, ["stake", "stakes", "tie in", "tied in", "tying in"], "tying in"],
  [/^netted/, ["net", "netting", "netted"], "netting"],
  [/^earthed up/, ["earth up", "earthed up", "earthing up"], "earthing up"],
  [/^(?:mulched|fed)/, ["mulch", "mulched", "feed", "fed"], "feeding and mulching"],
  [/^saved/, ["save seed", "saved seed", "saving seed", "my own seed"], "saving seed"],
];

function bestMatch(
  episode: Episode,
  here: BedOnTheDay,
  show: readonly Weighed[],
  { firstSaid }: ShownBefore,
): Match | undefined {
  const shownLots = new Set(show.flatMap(({ lots }) => lots));
  const matches: Match[] = [];
  const put = (closeness: number, about: string, named: Named | undefined) => {
    if (named !== undefined) matches.push({ episode, about, at: named.at, place: named.place, closeness });
  };
  for (const lot of here.growing) {
    const { variety } = lot;
    if (variety === undefined || variety.private) continue;
    put(shownLots.has(lot) ? 5 : 3, variety.title, firstSaid(episode, [variety.title, ...variety.alsoSpelled]));
  }
  for (const id of here.now.gear) {
    const gear = here.index.garden.gear.get(id);
    if (gear !== undefined && !gear.private) put(2, gear.title, firstSaid(episode, [gear.title, ...gear.alsoCalled]));
  }
  for (const { verb } of here.news) {
    const technique = techniques.find(([did]) => did.test(verb));
    if (technique !== undefined) put(2, technique[2], firstSaid(episode, technique[1]));
  }
  const stop = episode.stops.find(({ bed }) => bed === here.bed.id);
  if (stop !== undefined) {
    matches.push({ episode, about: here.bed.title, at: stop.at, place: undefined, closeness: 1 });
  }
  return matches.reduce<Match | undefined>(
    (best, one) => (best === undefined || one.closeness > best.closeness ? one : best),
    undefined,
  );
}

/** "6:40", "1:06:40" */
function filmClock(seconds: number): string {
  const [hours, minutes, rest] = [Math.floor(seconds / 3600), Math.floor(seconds / 60) % 60, Math.floor(seconds % 60)];
  const padded = (value: number) => String(value).padStart(2, "0");
  return hours === 0 ? `${minutes}:${padded(rest)}` : `${hours}:${padded(minutes)}:${padded(rest)}`;
}
