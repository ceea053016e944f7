/** Talks and films whose promises are marked, as the reader of promises hears them: words with the rules' opinion, and spans. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import type { IsLater } from "../../src/wrap/promise-model.ts";
import type { Spoken } from "../../src/wrap/promise-rules.ts";
import type { HeardWord } from "../../src/wrap/promise-words.ts";
import { heardWords, isLaterIn } from "../../src/wrap/promises-heard.ts";
import { type Cue, readCaptions } from "../../src/wrap/read-captions.ts";
import { type Speech, spokenWords } from "../../src/wrap/spoken-words.ts";
import { statementsOf } from "../../src/wrap/statements.ts";
import { demoGarden, labelledFilm } from "../mis-hearing/labelled-films.ts";

/** A promise; words that tempt and are none; what may be either, counted neither way. */
export type SpanKind = "promise" | "none" | "either";

export interface Span {
  /** First word, and after the last. */
  readonly from: number;
  readonly to: number;
  readonly kind: SpanKind;
  readonly text: string;
}

export interface Talk {
  /** Nobody's talk is learned from and judged at once. */
  readonly speaker: string;
  readonly marked: boolean;
  readonly words: readonly HeardWord[];
  readonly spans: readonly Span[];
  readonly isLater: IsLater;
  readonly speech: Speech;
  readonly spoken: Spoken;
}

const kinds: Readonly<Record<string, SpanKind>> = { P: "promise", N: "none", E: "either", W: "either" };
/** Milliseconds from one word to the next, and after a sentence. */
const [PACE, BREATH] = [380, 500];
/** Words of a caption. */
const LINE = 8;

/** Each talk of a folder twice: as it is written, and as a machine writes it down, without capitals and marks. */
export function talksIn(folder: string): readonly Talk[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith(".txt"))
    .sort()
    .flatMap((file) => {
      const text = readFileSync(path.join(folder, file), "utf8");
      return [talkOf(file, text, true), talkOf(file, text, false)];
    });
}

function talkOf(file: string, text: string, marked: boolean): Talk {
  const head = text.slice(0, text.indexOf("\n\n"));
  const day = /^date: (\d{4}-\d{2}-\d{2})/m.exec(head)?.[1];
  if (day === undefined) throw new Error(`${file} has no date in its head`);
  const marks: { readonly start: number; readonly end: number; readonly kind: SpanKind }[] = [];
  let said = "";
  let read = head.length;
  for (const match of text.matchAll(/\[\[([A-Z])[^|\]]*\|\s*([^\]]*)\]\]/g)) {
    const [whole, letter = "", words = ""] = match;
    said += text.slice(read, match.index);
    const kind = kinds[letter];
    if (kind === undefined) throw new Error(`${file} has the mark ${letter}`);
    marks.push({ start: said.length, end: said.length + words.length, kind });
    said += words;
    read = match.index + whole.length;
  }
  said += text.slice(read);
  const { speech, starts } = captioned(said, marked);
  const wordAt = (offset: number) => {
    const at = starts.findIndex((start) => start >= offset);
    return at < 0 ? starts.length : at;
  };
  const spans = marks.map(({ start, end, kind }) => ({
    from: wordAt(start),
    to: wordAt(end),
    kind,
    text: said.slice(start, end).trim(),
  }));
  const southern = /^garden: .*\bsouthern\b/m.test(head);
  return { speaker: file, marked, spans, ...heard(speech, { day, southern }) };
}

/** A text as captions at an even pace, and where each of its words stands in it. */
function captioned(text: string, marked: boolean): { readonly speech: Speech; readonly starts: readonly number[] } {
  const tokens = [...text.matchAll(/\S+/g)];
  const cues: Cue[] = [];
  const offsets: number[] = [];
  let at = 0;
  for (let first = 0; first < tokens.length; first += LINE) {
    const line = tokens.slice(first, first + LINE);
    const start = at;
    for (const [token] of line) at += PACE + (/[.?!]["”)]*$/.test(token) ? BREATH : 0);
    const words = line.map(([token]) =>
      marked
        ? token
        : token
            .toLowerCase()
            .replace(/[^\p{L}\p{N}'’-]+/gu, " ")
            .trim(),
    );
    cues.push({
      start,
      end: at,
      text: words.join(" "),
      pieces: [],
      settings: "",
      place: { file: "talk", line: 1, column: 1 },
    });
    offsets.push(...line.map(({ index }) => index));
  }
  const speech = spokenWords(cues);
  // A token may hold several words ("side-by-side", "40—no"), or none.
  const starts: number[] = [];
  let token = 0;
  let rest = "";
  for (const word of speech.words) {
    const plain = word.text.toLowerCase();
    while (!rest.toLowerCase().includes(plain) && token < tokens.length) {
      rest = tokens[token]?.[0] ?? "";
      token += 1;
    }
    rest = rest.slice(rest.toLowerCase().indexOf(plain) + plain.length);
    starts.push(offsets[token - 1] ?? 0);
  }
  return { speech, starts };
}

function heard(speech: Speech, spoken: Spoken): Pick<Talk, "words" | "isLater" | "speech" | "spoken"> {
  const { words } = heardWords(speech, statementsOf(speech), spoken);
  return { words, isLater: isLaterIn(speech, spoken), speech, spoken };
}

const filmKinds: Readonly<Record<string, SpanKind>> = { promise: "promise", "no promise": "none", either: "either" };

const southernFilms = new Set(["new-zealand", "tasmania", "tropical-queensland", "adelaide", "christchurch"]);

/** The films of a folder, by clean captions and by automatic ones. */
export function filmsIn(folder: string): readonly Talk[] {
  return readdirSync(folder)
    .sort()
    .flatMap((name) => {
      const labels = JSON.parse(readFileSync(path.join(folder, name, "labels.json"), "utf8")) as {
        readonly day: string;
        readonly spans: readonly {
          readonly kind: string;
          readonly at: number;
          readonly to: number;
          readonly said: string;
        }[];
      };
      return ["clean.vtt", "auto.vtt"].map((file): Talk => {
        const speech = spokenWords(readCaptions(file, readFileSync(path.join(folder, name, file), "utf8")).cues);
        const wordAt = (seconds: number) => {
          const at = speech.words.findIndex((word) => word.at >= seconds * 1000 - 60);
          return at < 0 ? speech.words.length : at;
        };
        const spans = labels.spans.flatMap(({ kind, at, to, said }) => {
          const is = filmKinds[kind];
          const from = wordAt(at);
          return is === undefined ? [] : [{ from, to: Math.max(from + 3, wordAt(to)), kind: is, text: said }];
        });
        const southern = southernFilms.has(name);
        return { speaker: name, marked: speech.punctuated, spans, ...heard(speech, { day: labels.day, southern }) };
      });
    });
}

/** Films of the demo garden: long stretches of talk that promise nothing. */
export async function demoFilms(ids: readonly string[]): Promise<readonly Talk[]> {
  const garden = await demoGarden();
  return ids.flatMap((id) => {
    const { episode, clean, automatic, promises } = labelledFilm(garden, id);
    return [clean, automatic].map(({ speech }): Talk => {
      const wordAt = (seconds: number) => {
        const at = speech.words.findIndex((word) => word.at >= seconds * 1000 - 60);
        return at < 0 ? speech.words.length : at;
      };
      const spans = promises.map(({ at, to, said }) => ({
        from: wordAt(at),
        to: wordAt(to) + 1,
        kind: "promise" as const,
        text: said,
      }));
      return { speaker: id, marked: speech.punctuated, spans, ...heard(speech, { day: episode.day, southern: false }) };
    });
  });
}
