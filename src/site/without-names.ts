/**
 * Public records in which a person named something that they keep back: the sentence that names it is left out, and what
 * it says of public things stays.
 */
import type { Bed, Episode, Event, Photo, Problem, Records } from "../model.ts";
import { problem } from "../records/index.ts";
import { type KeptBackNames, keptBackNameIn } from "./privacy/kept-back-names.ts";

interface Public {
  readonly records: Records;
  readonly photos: readonly Photo[];
}

export function withoutNames({ records, photos }: Public, names: KeptBackNames): Public {
  if (names.byLetters.size === 0) return { records, photos };
  const isSilent = (text: string | undefined) => text === undefined || keptBackNameIn(text, names) === undefined;
  const unless = (text: string | undefined) => (isSilent(text) ? text : undefined);
  const body = <T extends { readonly body: string }>(record: T): T => ({
    ...record,
    body: paragraphsOf(record.body).filter(isSilent).join("\n\n"),
  });
  const each = <T>(kind: ReadonlyMap<string, T>, change: (record: T) => T) =>
    new Map([...kind].map(([id, record]) => [id, change(record)]));
  const bed = (record: Bed): Bed => ({
    ...body(record),
    soil: unless(record.soil),
    built: record.built.filter(({ what }) => isSilent(what)),
    filled: record.filled.filter(({ what }) => isSilent(what)),
  });
  const episode = (record: Episode): Episode => ({
    ...body(record),
    promised: record.promised.filter(({ what }) => isSilent(what)),
  });
  const trials = [...records.trials].filter(([, { question, measure, arms }]) =>
    [question, measure, ...arms.map(({ name }) => name)].every(isSilent),
  );
  return {
    photos: photos.map((photo) => ({ ...photo, caption: unless(photo.caption) })),
    records: {
      ...records,
      settings: body(records.settings),
      sites: each(records.sites, (site) => ({ ...body(site), placeName: unless(site.placeName) })),
      beds: each(records.beds, bed),
      varieties: each(records.varieties, body),
      gear: each(records.gear, (thing) => ({ ...body(thing), from: unless(thing.from) })),
      trials: new Map(trials.map(([id, trial]) => [id, { ...body(trial), verdict: unless(trial.verdict) }])),
      episodes: each(records.episodes, episode),
      notes: records.notes.map((note) => ({
        ...note,
        title: unless(note.title),
        story: note.story.filter(({ text }) => isSilent(text)),
      })),
      events: records.events.flatMap((event) => eventWithout(event, isSilent)),
    },
  };
}

/** An event about the thing itself goes; one that only mentions it keeps its facts and loses those words. */
function eventWithout(event: Event, isSilent: (text: string | undefined) => boolean): readonly Event[] {
  const { text, what, cause, detail, reason, from, spot, more } = event;
  if ([text, what, cause, detail, reason, from, spot, ...more].every(isSilent)) return [event];
  if (!isSilent(what) || !isSilent(cause)) return [];
  return [
    {
      ...event,
      text: "",
      detail: isSilent(detail) ? detail : undefined,
      reason: isSilent(reason) ? reason : undefined,
      from: isSilent(from) ? from : undefined,
      spot: isSilent(spot) ? spot : undefined,
      more: more.filter(isSilent),
    },
  ];
}

/** What viewers are not shown, and why, for the person who wrote it. `open` is what they may see before it is left out. */
export function namedInPublic(open: Records, names: KeptBackNames): readonly Problem[] {
  if (names.byLetters.size === 0) return [];
  const kinds = [open.beds, open.sites, open.varieties, open.gear, open.trials, open.episodes];
  const said = [
    ...open.notes.flatMap(({ story }) => story),
    ...open.events,
    ...kinds.flatMap((kind) =>
      [...kind.values()].flatMap(({ body, place }) =>
        place === undefined ? [] : paragraphsOf(body).map((text) => ({ text, place })),
      ),
    ),
  ];
  const found = said.flatMap(({ text, place }) => {
    const name = keptBackNameIn(text, names);
    return name === undefined ? [] : [{ name, place }];
  });
  const once = new Map(found.map((one) => [JSON.stringify(one), one]));
  return [...once.values()].map(({ name, place }) =>
    problem(
      "privacy/named",
      place,
      `This names "${name}", which is private, so viewers are not shown these words.`,
      "Name it in a private note instead, or write around it.",
    ),
  );
}

function paragraphsOf(markdown: string): readonly string[] {
  return markdown.split(/\n[ \t]*\n/u);
}
