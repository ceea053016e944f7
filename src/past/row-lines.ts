/** Note lines of what a row of a table says was sown, planted or came: the events that are meant, and the lines that say so. */
import type { Event, Place } from "../model.ts";
import { type Names, printEvent } from "../records/index.ts";
import type { Told } from "./new-file.ts";
import type { RowFacts } from "./row-facts.ts";

/** The part of an event that a row can tell. */
export type MeantEvent = Pick<
  Event,
  "kind" | "day" | "variety" | "crop" | "bed" | "count" | "nursery" | "from" | "price" | "spot"
>;

export interface MeantLine {
  readonly row: number;
  readonly private: boolean;
  readonly meant: MeantEvent;
  readonly line: string;
}

const raisedElsewhere =
  /^(?:indoors?|inside|in ?doors|under (?:glass|cover|lights?)|trays?|modules?|cells?|pots?|root ?trainers|propagator|windowsill|windowsill|greenhouse bench|nursery|seed ?trays?)$/i;
const inPlace = /^(?:outdoors?|outside|direct|in situ|in place|in the ground|where (?:they|it) grows?)$/i;

/** `names` know the varieties that the table itself brings. */
export function linesOfRow(
  facts: RowFacts,
  names: Names,
  place: Place,
): { readonly lines: readonly MeantLine[]; readonly told: readonly Told[] } {
  const told: Told[] = [];
  const tell = (what: string) => void told.push({ line: facts.line, what });
  const plant = plantNamed(facts, names, place);
  const bed = facts.bed === undefined ? undefined : bedCalled(facts.bed, names, place);
  const meant: MeantEvent[] = [];
  const { sown, planted, ordered } = facts;
  if (plant === undefined) {
    if (sown ?? planted ?? ordered) tell("says no plant, so its days were left out");
    return { lines: [], told };
  }
  if (ordered !== undefined) {
    const from = facts.source;
    meant.push({
      kind: "acquired",
      day: ordered,
      ...plant,
      ...(from !== undefined && { from }),
      ...(facts.price !== undefined && { price: facts.price }),
    });
  } else if (facts.price !== undefined)
    tell(`the price ${facts.price} belongs to no day on which it was paid, so it was left out`);
  if (sown !== undefined) {
    const count = facts.numberSown ?? (planted === undefined ? facts.number : undefined);
    const where = placeSown(facts, bed);
    if (where === undefined) tell(`was sown on ${sown}, and nothing says in which bed or whether indoors`);
    else meant.push({ kind: "sowed", day: sown, ...plant, ...(count !== undefined && { count }), ...where });
  }
  if (planted !== undefined) {
    if (bed === undefined) tell(`was planted on ${planted}, and nothing says in which bed`);
    else {
      const { number: count, spot } = facts;
      meant.push({
        kind: "planted",
        day: planted,
        ...plant,
        ...(count !== undefined && { count }),
        bed,
        ...(spot !== undefined && { spot: /^\d/.test(spot) ? `row ${spot}` : spot }),
      });
    }
  }
  const lines = meant.map((one) => ({
    row: facts.line,
    private: facts.private,
    meant: one,
    line: printed(one, names),
  }));
  return { lines, told };
}

/** "the long bed" is called long bed. */
function bedCalled(written: string, names: Names, place: Place): string | undefined {
  return names.find("bed", written) ?? names.takeBed(written.replace(/^the (?=\S)/i, ""), place);
}

function plantNamed(
  { variety, crop }: RowFacts,
  names: Names,
  place: Place,
): { readonly variety: string } | { readonly crop: string } | undefined {
  const known = crop === undefined ? undefined : names.find("crop", crop);
  if (variety !== undefined) {
    const id = varietyCalled(variety, known, names) ?? names.takeVariety(variety, known, place);
    return id === undefined ? undefined : { variety: id };
  }
  return known === undefined ? undefined : { crop: known };
}

/** The variety of that name and crop: the aubergine Black Beauty is not the courgette. */
export function varietyCalled(title: string, crop: string | undefined, names: Names): string | undefined {
  const id = names.find("variety", title);
  if (id === undefined) return undefined;
  const own = names.cropOf(id);
  return own === undefined || crop === undefined || own === crop ? id : undefined;
}

/** What is planted out later was not sown where it was planted. */
function placeSown({ sownIn, planted }: RowFacts, bed: string | undefined) {
  if (sownIn !== undefined && raisedElsewhere.test(sownIn)) return { nursery: true };
  if (sownIn !== undefined && !inPlace.test(sownIn)) return undefined;
  if (planted !== undefined && sownIn === undefined) return { nursery: true };
  return bed === undefined ? undefined : { bed };
}

function printed(meant: MeantEvent, names: Names): string {
  return printEvent(
    { ...meant, id: "", verb: "", text: "", place: { file: "", line: 1, column: 1 }, private: true, more: [] },
    names,
  );
}

/** Whether an event says all that was meant and nothing else. */
export function isMeant(event: Event, meant: MeantEvent): boolean {
  return (
    sameFact(event, meant) &&
    event.count?.value === meant.count?.value &&
    event.nursery === meant.nursery &&
    event.from === meant.from &&
    event.price === meant.price &&
    event.spot === meant.spot &&
    event.detail === undefined &&
    event.reason === undefined
  );
}

/** Whether a note tells it: a table that knows only "planted" means a sowing too. */
export function isTold(there: MeantEvent, meant: MeantEvent): boolean {
  const inBed = ({ kind, nursery }: MeantEvent) => kind === "planted" || (kind === "sowed" && nursery !== true);
  return sameFact(there, meant) || (inBed(meant) && inBed(there) && sameFact({ ...there, kind: meant.kind }, meant));
}

/** Whether two say the same of one day: the number may have been put right since. */
export function sameFact(a: MeantEvent, b: MeantEvent): boolean {
  return (
    a.kind === b.kind &&
    a.day === b.day &&
    a.variety === b.variety &&
    (a.crop === b.crop || a.variety !== undefined) &&
    a.bed === b.bed
  );
}
