/**
 * People whom a person gave to or was given by: nobody asked them whether viewers may know their names. What they gave is told,
 * who they are only where the records say so ("thank by name"), and of sellers.
 */
import { whoseName } from "../facts/index.ts";
import { namedGiver } from "../language/index.ts";
import type { Event, Gear, Records, Source, Variety } from "../model.ts";
import { peopleNamed } from "../records/index.ts";

type Sources = Parameters<typeof whoseName>[1];
type Thanked = Pick<Variety, "thankByName">;

/** A gift keeps its year, and what has to be said of it where nobody told whether a seller gave it. */
export function withoutGiver<Some extends Variety>(variety: Some, garden: Sources): Some {
  const { source, thankByName } = variety;
  if (source === undefined || isSaid(source.name)) return variety;
  const whose = whoseName(source.name, garden);
  if (whose === "may be named") return variety;
  if (source.obtained === undefined)
    return whose === "somebody" && thankByName !== true ? { ...variety, source: undefined } : variety;
  if (namedGiver({ ...source, from: source.name }, thankByName) !== undefined) return variety;
  const unnamed: Source = { ...source, name: source.obtained === "lent" ? "a loan" : "a gift", link: undefined };
  return { ...variety, source: source.giver === "a person" ? { ...unnamed, obtained: undefined } : unnamed };
}

export function gearWithoutGiver(gear: Gear, garden: Sources): Gear {
  if (gear.from === undefined || isSaid(gear.from) || whoseName(gear.from, garden) === "may be named") return gear;
  if (namedGiver(gear, gear.thankByName) !== undefined) return gear;
  return { ...gear, from: undefined, link: undefined };
}

/** `sellers` are names of sources that viewers may know. */
export function eventWithoutPeople(event: Event, of: Thanked | undefined, sellers: ReadonlySet<string>): Event {
  const { kind, from, plantsFrom, detail } = event;
  const isParting = kind === "gave away" || kind === "sold";
  const hasGiver =
    from !== undefined &&
    plantsFrom !== "bought" &&
    !isSaid(from) &&
    !sellers.has(from.toLowerCase()) &&
    of?.thankByName !== true;
  const by = isParting || of?.thankByName === true ? undefined : GIVER.exec(detail ?? "")?.[1];
  const saysGiver = by !== undefined && !sellers.has(by.toLowerCase());
  if (!isParting && !hasGiver && !saysGiver) return event;
  const keepsDetail = isParting ? detail !== undefined && isPlace(detail) : !saysGiver;
  return {
    ...event,
    text: "",
    more: [],
    from: hasGiver ? undefined : from,
    detail: keepsDetail ? detail : undefined,
  };
}

/** "from Wilf"; but "from seed", "from the greenhouse". */
const GIVER =
  /^(?:(?:a )?(?:gift|present) (?:from|of)|given by|from|thanks to|swapped with) ((?:my |our |old )?\p{Lu}.*)$/u;

/** "A neighbour", "a viewer": nobody's name. */
function isSaid(name: string): boolean {
  return /^(?:an?|some) \p{Ll}/u.test(name);
}

const PLACES =
  /^(?:to|for|at|on|from|in) (?:the |a |our |my )?(?:(?:local|village|primary|harvest|garden|plant|community|farm) )*(?:food ?bank|school|market|show|church|club|charity|library|hospice|fair|f[eê]te|gate|stall|shop|swap|neighbours?|friends?|family|viewers?|pub|caf[eé])$/iu;

/** A place or people of whom nobody learns who they are; anything else may be a name, whatever letter it begins with. */
function isPlace(detail: string): boolean {
  return PLACES.test(detail.trim());
}

/**
 * Says whether a text names somebody of whom no record says that viewers may know. Who is named once for sure is meant wherever
 * the name stands. What records are called, sellers, and what "may be named" lists are nobody's names here.
 */
export function namesSomebody(records: Records): (text: string) => boolean {
  const { settings, sites, beds, varieties, gear, trials, crops, notes, events } = records;
  const said = [
    settings.name,
    ...(settings.mayBeNamed ?? []),
    ...[sites, beds, gear, trials].flatMap((kind) => [...kind.values()].map(({ title }) => title)),
    ...[...varieties.values()].flatMap(({ title, alsoSpelled, source }) => [title, ...alsoSpelled, source?.name ?? ""]),
    ...[...gear.values()].map(({ from }) => from ?? ""),
    ...[...crops.values()].flatMap(({ name, plural, alsoCalled }) => [name, plural, ...alsoCalled]),
  ];
  const known = new Set(said.flatMap((name) => name.toLowerCase().match(/\p{L}[\p{L}\p{M}-]*/gu) ?? []));
  const inText = (text: string) => peopleNamed(text, (word) => known.has(word));
  const texts = [...notes.flatMap(({ story }) => story), ...events].map(({ text }) => text);
  const people = new Set(texts.flatMap(inText));
  return (text) =>
    (text.match(/\p{Lu}[\p{L}\p{M}-]*/gu) ?? []).some((word) => people.has(word)) || inText(text).length > 0;
}

/** A line without the words that name somebody; nothing is left of one whose fact does. */
export function eventNamingNobody(event: Event, names: (text: string) => boolean): readonly Event[] {
  const bare = (text: string | undefined) => (text !== undefined && names(text) ? undefined : text);
  if ([event.what, event.cause].some((text) => text !== undefined && names(text))) return [];
  const { text, detail, spot, reason, more } = event;
  if (![text, detail, spot, reason, ...more].some((said) => said !== undefined && names(said))) return [event];
  return [
    {
      ...event,
      text: bare(text) ?? "",
      ...{ detail: bare(detail), spot: bare(spot), reason: bare(reason) },
      more: more.filter((said) => !names(said)),
    },
  ];
}
