/** One stop as a card: what is said in at most sixty words, what is done, and what did not fit. */

import { cropOf } from "../../crop-of.ts";
import {
  cardLimits,
  countWords,
  fits,
  type Spoken,
  spokenParts,
  toSixty,
  type Way,
  type Wording,
} from "../../films/index.ts";
import { cropName, dayOnly, type Sentence, say, sayList } from "../../language/index.ts";
import type { Site } from "../../model.ts";
import { voiceOf } from "../bed-on-the-day.ts";
import type { Stop } from "../brief.ts";
import type { OwedLine } from "../candidates/candidate.ts";
import { wasBare } from "../last-seen.ts";
import type { PlannedStop } from "../plan/plan-tour.ts";
import type { PhotosByBed } from "../spot.ts";
import type { Card } from "./card.ts";
import { cardShots } from "./card-shots.ts";
import { figuresAt } from "./figure.ts";
import { mustSay, namesToSay } from "./must-say.ts";
import { nextWays } from "./next-words.ts";
import { alongTheBed, nowPhrases, type Shown } from "./now-words.ts";
import { openingOf } from "./opening-words.ts";
import { gearWords, goalWords, storyWords, varietiesHere, varietyWords, wordsOf } from "./own-words.ts";
import { quotedAt, quotedNow, toldWithMore } from "./quoted.ts";
import { rememberedAt } from "./remembered.ts";
import { reasonsAt } from "./why.ts";

export interface Telling {
  readonly wording: Wording;
  readonly photos: PhotosByBed;
  /** Where the walk comes to it here. */
  readonly site?: Site | undefined;
  /** Of this stop. */
  readonly owed: readonly OwedLine[];
  /** Gear and varieties of which the film has said how they came. */
  readonly disclosed: Set<string>;
}

export function cardOf(
  { here, show: all }: PlannedStop,
  stop: Stop,
  { wording, photos, owed, disclosed, site }: Telling,
): Card {
  const show = all.filter(({ sentence }) => !sentence.private);
  const remembered = rememberedAt(here);
  const opening = openingOf({ here, show, owed, remembered }, wording);
  const now = nowPhrases(here, show, owed, wording);
  const figures = figuresAt(here, show, photos);
  const reasons = reasonsAt(here, show, remembered);
  const told = here.growing.length === 0 ? quotedNow(here, cardLimits.now).map((line) => ({ ...line, lots: [] })) : [];
  const shown = [...now, ...told].slice(0, cardLimits.nowPhrases);
  const why = chooseIn(
    reasons.map((ways) => ways.filter(({ text }) => !shown.some((phrase) => text.startsWith(phrase.text)))),
    wording,
    cardLimits.why,
  );
  const spoken: Spoken<Shown> = {
    opening,
    before: seenThen(stop, here),
    now: shown,
    figure: figures[0],
    why,
    next: chooseIn(nextWays(here, show), wording, cardLimits.next),
  };
  const dropped = toSixty(spoken);
  const said = spokenParts(spoken);
  const lots = here.growing;
  const quoted = quotedAt(here);
  return {
    id: stop.id,
    number: stop.number,
    bed: stop.bed,
    title: stop.title,
    seconds: stop.seconds,
    begins: stop.begins,
    light: stop.light,
    opening,
    before: spoken.before,
    now: alongTheBed(spoken.now).map(({ text, sources, private: hidden, hand }) => ({
      text,
      sources,
      private: hidden,
      hand,
    })),
    figure: spoken.figure,
    why: spoken.why,
    names: namesToSay(here, said.map(({ text }) => text).join(" ")),
    aloud: mustSay(here, owed, { told: disclosed, wording }),
    next: spoken.next,
    words: said.reduce((sum, { text }) => sum + countWords(text), 0),
    shots: cardShots(stop),
    further: onceEach(
      [
        ...dropped,
        // What the hand would have done is no loss.
        ...now.slice(cardLimits.nowPhrases).filter(({ hand }) => hand === undefined),
        ...reasons.flatMap(([first]) =>
          first === undefined || first.text.includes("“") ? [] : [say(first.text, first.grounds)],
        ),
        ...figures.slice(1),
        ...varietiesHere(here).flatMap(varietyWords),
        ...gearWords(here),
        ...wordsOf(here.bed),
        ...(site === undefined ? [] : wordsOf(site)),
        ...goalWords(here),
        ...toldWithMore(here, remembered),
        ...storyWords(here, lots),
      ],
      [...said, ...quoted],
    ),
    quoted,
  };
}

function chooseIn(groups: readonly (readonly Way[])[], wording: Wording, words: number): Sentence | undefined {
  for (const ways of groups) {
    const found = wording.choose(ways, words);
    if (found !== undefined && !found.private) return found;
  }
  return undefined;
}

/** "13 June: cabbages and kale"; of a bed no film has shown there is no then. */
function seenThen({ since }: Stop, here: PlannedStop["here"]): Sentence | undefined {
  if (since.episode === undefined) return undefined;
  const day = dayOnly(since.day, voiceOf(here));
  const record = here.index.garden.episodes.get(since.episode);
  const plants = here.past.filter(({ private: hidden }) => !hidden);
  if (plants.length === 0) return wasBare(here) ? say(`${day}: bare`, [record]) : undefined;
  const names = [
    ...new Set(
      plants.flatMap((planting) => {
        const crop = cropOf(here.index.garden, planting);
        return crop === undefined ? [] : [cropName(crop, 2)];
      }),
    ),
  ];
  for (let most = names.length; most > 0; most -= 1) {
    const list = most === names.length ? sayList(names) : `${names.slice(0, most).join(", ")}, more`;
    if (fits(`${day}: ${list}`, cardLimits.before))
      return say(`${day}: ${list}`, [record, ...plants.map(({ lastNote }) => ({ place: lastNote }))]);
  }
  return undefined;
}

/** What the card says already is not said again, however it is marked. */
function onceEach(lines: readonly Sentence[], said: readonly Sentence[]): readonly Sentence[] {
  const bare = (text: string) =>
    text
      .toLowerCase()
      .replace(/[“”.:]/g, "")
      .trim();
  const heard = new Set(said.map(({ text }) => bare(text)));
  const all = lines.map(({ text }) => bare(text));
  return lines
    .filter(({ text }) => {
      const words = bare(text);
      // The beginning of what stands whole further down.
      if (all.some((other) => other.length > words.length && other.startsWith(words))) return false;
      if ([...heard].some((other) => other === words || other.endsWith(words) || words.endsWith(other))) return false;
      heard.add(words);
      return true;
    })
    .map(({ text, sources, private: hidden }) => ({ text, sources, private: hidden }));
}
