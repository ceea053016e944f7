/** A note line told as a sentence by itself, for lines that change no bed: sowings indoors, seedlings potted on. */
import type { Event, EventKind, Records } from "../model.ts";
import { type Names, namesOf } from "./names.ts";
import { type ChangeSentences, sentencesIn } from "./sentences.ts";

type Tell = (say: ChangeSentences, names: Names, event: Event) => string;

/** What can be told without knowing the plantings. */
const tellings: Readonly<Partial<Record<EventKind, Tell>>> = {
  sowed: (say, names, event) => say.sown(names, event, event),
  up: (say, names, event) => say.up(names, event, []),
  "potted on": (say, names, event) => say.pottedOn(names, event, []),
  thinned: (say, names, event) => say.thinned(names, event, []),
  flowered: (say, names, event) => say.flowered(names, event, []),
  fruited: (say, names, event) => say.fruited(names, event, []),
  measured: (say, names, event) => say.measured(names, event, []),
  acquired: (say, names, event) => say.acquired(names, event),
  "came back": (say, names, event) => say.cameBack(names, event, []),
  preserved: (say, _names, event) => say.preserved(event),
  "gave away": (say, names, event) => say.givenAway(names, event, event, "given away"),
  sold: (say, names, event) => say.givenAway(names, event, event, "sold"),
};

/** Sentences in the garden's language; undefined for a line that makes no sense without its bed. */
export function eventTeller(records: Records): (event: Event) => string | undefined {
  const { language } = records.settings;
  const names = namesOf(records, language);
  const say = sentencesIn(language);
  return (event) => {
    const told = tellings[event.kind]?.(say, names, event);
    return told === undefined || event.reason === undefined ? told : say.because(told, event.reason);
  };
}
