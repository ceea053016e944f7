/** What the person wrote, line by line, with the crops each line speaks of: a thread follows a thing through them. */
import { cropOf } from "../../crop-of.ts";
import { finderOf, isQuotable, ownLinesOf } from "../../garden/index.ts";
import { plainWords, sentencesOf } from "../../language/index.ts";
import type { Day, Event, Garden, Place } from "../../model.ts";
import { compare } from "../../order.ts";
import { withoutPrice } from "../../records/index.ts";

export interface OwnLine {
  readonly text: string;
  readonly day: Day;
  readonly place: Place;
  /** Nobody knows yet what it says: a question to the person. */
  readonly asks: boolean;
  /** Of a line that holds facts. */
  readonly event?: Event | undefined;
  /** Crop ids. */
  readonly crops: ReadonlySet<string>;
  readonly bed?: string | undefined;
  /** Its words that carry meaning, levelled. */
  readonly words: ReadonlySet<string>;
}

/** By garden, for viewers and for the person: each year of it is told from the same lines. */
const made = { viewers: new WeakMap<Garden, readonly OwnLine[]>(), person: new WeakMap<Garden, readonly OwnLine[]>() };

/** In order of day, without what is private; viewers get none that is still a question. */
export function ownLines(garden: Garden, until: Day, forViewers: boolean): readonly OwnLine[] {
  const kept = forViewers ? made.viewers : made.person;
  let lines = kept.get(garden);
  if (lines === undefined) {
    lines = allLines(garden, forViewers);
    kept.set(garden, lines);
  }
  return lines.filter(({ day }) => day <= until);
}

function allLines(garden: Garden, forViewers: boolean): readonly OwnLine[] {
  const cropsIn = cropFinder(garden);
  const facts = garden.events
    .filter((event) => !event.private)
    .map((event): OwnLine => {
      const { text } = withoutPrice(event.text);
      const crop = cropOf(garden, event)?.id;
      return {
        text,
        day: event.day,
        place: event.place,
        asks: false,
        event,
        crops: crop === undefined ? cropsIn(text) : new Set([crop]),
        bed: event.bed,
        words: contentWords(text),
      };
    });
  const lines = [...facts, ...(forViewers ? stories(garden, cropsIn) : unread(garden))];
  return lines
    .filter(({ text }) => isQuotable(text))
    .sort((a, b) => compare(a.day, b.day) || compare(a.place.file, b.place.file) || a.place.line - b.place.line);
}

/** Of viewers' gardens the notes alone are let through; the lines as they were read are the person's own. */
function stories(garden: Garden, cropsIn: (text: string) => ReadonlySet<string>): readonly OwnLine[] {
  return garden.notes
    .filter((note) => !note.private)
    .flatMap((note) =>
      note.story
        .filter((part) => part.asks !== true && part.private !== true && !/^[#>|]/.test(part.text))
        .flatMap(({ text, place }) =>
          text
            .split(/\n[ \t]{0,8}[-*][ \t]|\n\n/)
            .map((line) => sentencesOf(line.replace(/^\s*[-*]\s+/, "")).join(" "))
            .filter((line) => line !== "")
            .map((line) => lineOf(line, note.day, place, note.beds.length === 1 ? note.beds[0] : undefined)),
        ),
    );

  function lineOf(text: string, day: Day, place: Place, bed: string | undefined): OwnLine {
    return { text, day, place, asks: false, crops: cropsIn(text), bed, words: contentWords(text) };
  }
}

/** What no fact holds: questions and story. */
function unread(garden: Garden): readonly OwnLine[] {
  return ownLinesOf(garden)
    .filter(({ isFact }) => !isFact)
    .map(({ text, day, place, asks, crops, beds, events }) => ({
      text,
      day: events[0]?.day ?? day,
      place,
      asks,
      crops: new Set(crops),
      bed: beds.length === 1 ? beds[0] : undefined,
      words: contentWords(text),
    }));
}

/** Which crops a text names, by any name of theirs or of their varieties. */
function cropFinder(garden: Garden): (text: string) => ReadonlySet<string> {
  const find = finderOf(garden);
  return (text) => {
    const plain = plainWords(text);
    const ofVarieties = find.varieties(plain).flatMap((id) => garden.varieties.get(id)?.crop ?? []);
    return new Set([...find.crops(plain), ...ofVarieties]);
  };
}

/** Words that stand in any line. */
const common = new Set(
  `about after again against all also always and another because been before being both but can could does done down each
  early even every fall first from garden give given gives going have into just last late later less like long make many more most
  much never next none not nothing off once only onto other over plan plant planted plants put row rows same season seed
  several should since some sowed sown spring still summer than that the their them then there these they thing things this those
  time till today too two under until very want wants was well went were what when where which while will winter with would year
  years bed beds autumn take takes took taken come comes came work works left right back hold held days goes keep kept look looks`.split(
    /\s+/,
  ),
);

/** Words of four letters and more that carry meaning, without the plural's s. */
export function contentWords(text: string): ReadonlySet<string> {
  return new Set(
    plainWords(text)
      .trim()
      .split(" ")
      .filter((word) => word.length >= 4 && !common.has(word) && !/^\d+$/.test(word))
      .map((word) => (word.length > 4 ? word.replace(/(?<=[^s])s$/, "") : word)),
  );
}

export function shared(a: ReadonlySet<string>, b: ReadonlySet<string>): number {
  let count = 0;
  for (const word of a) if (b.has(word)) count += 1;
  return count;
}

/** A line without the bed it names at its beginning, or with "in", "from" or "on" before it: the card is of that bed already. */
export function withoutBeds(text: string, garden: Garden): string {
  let left = text;
  for (const { title } of garden.beds.values()) {
    const at = left.toLowerCase().indexOf(title.toLowerCase());
    if (at < 0) continue;
    const [before, after] = [left.slice(0, at), left.slice(at + title.length)];
    const joint = / (?:in|from|on) (?:the )?$/i.exec(before);
    if (joint !== null) left = `${before.slice(0, joint.index)}${after}`;
    else if (before.trim() === "" && after.startsWith(":")) left = after.slice(1).trim();
  }
  return left;
}
