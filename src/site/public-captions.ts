/**
 * What films say, as viewers may read it. A film that is out can be heard by anybody; its page still says nothing of what
 * the records keep back, whatever was said aloud: captions that name it, that speak at a private bed, or that hold a
 * private line's own words are left out before anything is made from them.
 */
import type { Episode, Garden } from "../model.ts";
import {
  type CaptionFile,
  filmingDay,
  type GlossaryWord,
  hearFilm,
  openCaptions,
  writeCaptions,
} from "../wrap/index.ts";
import { coordinatesIn } from "./privacy/coordinates.ts";
import { type KeptBackNames, keptBackNameIn, lettersOf, namesKeptBack } from "./privacy/kept-back-names.ts";
import { type PrivatePhrases, privatePhrases, wordsOf } from "./privacy/private-phrases.ts";

/** A caption file beside an episode's record. */
export interface EpisodeCaptions {
  /** Relative to the records folder. */
  readonly file: string;
  readonly bytes: Uint8Array;
}

/** What the sites are told of films beside their records. */
export interface FilmTexts {
  /** By episode id. */
  readonly captions: ReadonlyMap<string, EpisodeCaptions>;
  /** The person's own words and how they are heard. */
  readonly glossary?: readonly GlossaryWord[] | undefined;
}

/** `open` is what `publicGarden` let through of the garden. */
export function publicCaptions(garden: Garden, open: Garden, { captions, glossary = [] }: FilmTexts): FilmTexts {
  if (captions.size === 0 && glossary.length === 0) return { captions, glossary };
  const keptBack = namesKeptBack(garden, open);
  const { some: someKeptBack, byLetters } = keptBack;
  const names: ReadonlySet<string> = new Set(byLetters.keys());
  const phrases = privatePhrases(garden);
  const films = [...captions].flatMap(([id, file]) => {
    const episode = garden.episodes.get(id);
    return episode === undefined || !open.episodes.has(id) ? [] : [{ id, file, episode }];
  });
  const secrets = { garden, open, someKeptBack, keptBack, names, phrases, glossary };
  return {
    captions: new Map(films.map(({ id, file, episode }) => [id, withoutSecrets(file, episode, secrets)])),
    glossary: glossary.filter(({ name }) => !names.has(lettersOf(name))),
  };
}

interface Secrets {
  readonly garden: Garden;
  readonly open: Garden;
  /** Whether any record is, beside notes. */
  readonly someKeptBack: boolean;
  readonly keptBack: KeptBackNames;
  /** Letters and digits of each name, without spaces: "thiefproofbed". */
  readonly names: ReadonlySet<string>;
  readonly phrases: PrivatePhrases;
  readonly glossary: readonly GlossaryWord[];
}

/** The file as it is where nothing has to go. */
function withoutSecrets(file: EpisodeCaptions, episode: Episode, secrets: Secrets): EpisodeCaptions {
  const opened = openCaptions(file.file, file.bytes);
  const said = saidIn(opened);
  const gone = new Set([
    ...cuesNaming(said, secrets.names),
    ...cuesRepeating(said, secrets.phrases),
    ...cuesTelling(opened, secrets.keptBack),
    ...(secrets.someKeptBack ? cuesAbout(opened, episode, secrets) : []),
  ]);
  if (gone.size === 0) return file;
  const kept = opened.cues.filter((_, cue) => !gone.has(cue));
  return { file: `${file.file}.vtt`, bytes: new TextEncoder().encode(writeCaptions(kept, "vtt")) };
}

/** One word as it is compared, with the captions that show it. */
interface Said {
  readonly word: string;
  readonly cues: readonly number[];
}

function saidIn({ speech }: CaptionFile): readonly Said[] {
  return speech.words.flatMap((spoken) => {
    const cues = [spoken.cue, ...spoken.again.map(({ cue }) => cue)];
    return wordsOf(spoken.text).map((word) => ({ word, cues }));
  });
}

/** However the words of a name are parted, and with an "s" after it. */
function* cuesNaming(said: readonly Said[], names: ReadonlySet<string>): Generator<number> {
  const longest = Math.max(0, ...[...names].map(({ length }) => length));
  for (let from = 0; from < said.length; from += 1) {
    let run = "";
    for (let to = from; to < said.length && run.length <= longest; to += 1) {
      run += said[to]?.word;
      if (names.has(run) || (run.endsWith("s") && names.has(run.slice(0, -1)))) yield* cuesOf(said, from, to + 1);
    }
  }
}

/** What looks like a position, or a private name with a slip in it, also where one caption begins it and the next ends it. */
function* cuesTelling({ cues }: CaptionFile, names: KeptBackNames): Generator<number> {
  const tells = (text: string) => coordinatesIn(text) !== undefined || keptBackNameIn(text, names) !== undefined;
  for (const [at, { text }] of cues.entries()) {
    if (tells(text)) yield at;
    const next = cues[at + 1]?.text;
    if (next !== undefined && !tells(text) && !tells(next) && tells(`${text} ${next}`)) yield* [at, at + 1];
  }
}

function* cuesRepeating(said: readonly Said[], phrases: PrivatePhrases): Generator<number> {
  for (let from = 0; from + 1 < said.length; from += 1) {
    for (const { words } of phrases.get(`${said[from]?.word} ${said[from + 1]?.word}`) ?? []) {
      if (words.every((word, index) => said[from + index]?.word === word))
        yield* cuesOf(said, from, from + words.length);
    }
  }
}

function* cuesOf(said: readonly Said[], from: number, to: number): Generator<number> {
  for (const { cues } of said.slice(from, to)) yield* cues;
}

const RECORDS = { variety: "varieties", gear: "gear", bed: "beds" } as const;

/** Captions spoken at a private bed, and those that mean a private name though they spell it as it sounds. */
function* cuesAbout({ speech, cues }: CaptionFile, episode: Episode, secrets: Secrets): Generator<number> {
  const { garden, open, names, glossary } = secrets;
  const isSecretBed = (bed: string | undefined) => bed !== undefined && garden.beds.has(bed) && !open.beds.has(bed);
  const timed = episode.stops
    .flatMap(({ bed, at }) => (at === undefined ? [] : [{ bed, at: at * 1000 }]))
    .sort((a, b) => a.at - b.at);
  for (const [index, { bed, at }] of timed.entries()) {
    const until = timed[index + 1]?.at ?? Number.POSITIVE_INFINITY;
    if (isSecretBed(bed)) yield* cues.flatMap(({ start, end }, cue) => (start < until && end > at ? [cue] : []));
  }
  const plan = [...new Set(episode.stops.map(({ bed }) => bed))];
  const film = hearFilm({ speech, day: filmingDay(garden, episode), plan, glossary, times: timed });
  const meant = film.names.filter(({ name: { kind, record } }) =>
    kind === "word" ? names.has(lettersOf(record)) : !open[RECORDS[kind]].has(record),
  );
  for (const { from, to } of [...meant, ...film.stretches.filter(({ bed }) => isSecretBed(bed))]) {
    for (const { cue, again } of speech.words.slice(from, to)) yield* [cue, ...again.map((shown) => shown.cue)];
  }
}
