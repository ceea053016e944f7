/**
 * People whom a person gave to or was given by: nobody asked them whether viewers may know their names. What they gave is told,
 * who they are only where the records say so ("thank by name"), and of sellers.
 */
import { namedGiver } from "../language/index.ts";
import type { Event, Gear, Source, Variety } from "../model.ts";

type Thanked = Pick<Variety, "thankByName">;

/** A gift keeps its year, and what has to be said of it where nobody told whether a seller gave it. */
export function withoutGiver<Some extends Variety>(variety: Some): Some {
  const { source, thankByName } = variety;
  if (source?.obtained === undefined || isSaid(source.name)) return variety;
  if (namedGiver({ ...source, from: source.name }, thankByName) !== undefined) return variety;
  const unnamed: Source = { ...source, name: source.obtained === "lent" ? "a loan" : "a gift", link: undefined };
  return { ...variety, source: source.giver === "a person" ? { ...unnamed, obtained: undefined } : unnamed };
}

export function gearWithoutGiver(gear: Gear): Gear {
  if (gear.from === undefined || isSaid(gear.from) || namedGiver(gear, gear.thankByName) !== undefined) return gear;
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
