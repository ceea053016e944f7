/**
 * What a planting went through up to a day: raised elsewhere, standing in other beds before it was moved, standing in its own bed,
 * picked, over. Ribbons, strips and calendars draw the same life from it.
 */
import { type Book, bookOf } from "../garden/index.ts";
import type { Day, Garden, Planting } from "../model.ts";
import type { Fact } from "./fact.ts";

/** From one day to another, both included. */
export interface Span {
  readonly from: Day;
  readonly to: Day;
}

export interface Life {
  readonly sown?: Day | undefined;
  /** Set out, into whichever bed came first; undefined when it grew where it was sown. */
  readonly planted?: Day | undefined;
  /** In pots, trays or a seedbed, until it came into its own bed. */
  readonly raised?: Span | undefined;
  /** In other beds, before it was moved to its own, oldest first; no bed where the notes do not show it. */
  readonly before: readonly (Span & { readonly bed?: string | undefined })[];
  /** The bed it was moved from, whether it was raised there or stood there. */
  readonly movedFrom?: { readonly bed?: string | undefined } | undefined;
  /** In its own bed. */
  readonly stood: Span;
  readonly pickings: readonly Day[];
  readonly over?: Ending | undefined;
}

export interface Ending {
  readonly day: Day;
  readonly by: "move" | "loss" | "end";
  /** The planting that goes on with it in another bed. */
  readonly into?: Planting | undefined;
}

/** `planting` as it stands on the day, or stood at the end of its life. */
export function lifeOf(garden: Garden, planting: Planting, on: Day): Fact<Life> {
  const book = bookOf(garden);
  const { sown, planted, since } = planting;
  const line = cameFrom(book, planting);
  const raised =
    sown !== undefined && planted !== undefined && sown < planted ? { from: sown, to: planted } : undefined;
  const before = bedsBefore(planting, line, raised);
  // Plants that stood elsewhere before anybody wrote of them were moved that day, not planted.
  const isSetOut = planted !== sown && (planting.movedFrom === undefined || raised !== undefined || planted !== since);
  const pickings = book.pickingsOf(planting).filter(({ day }) => day <= on);
  const first = book.event((line[0] ?? planting).firstEvent);
  return {
    value: {
      sown,
      planted: isSetOut ? planted : undefined,
      raised: before.length === 0 ? raised : undefined,
      before,
      movedFrom: planting.movedFrom === undefined ? undefined : { bed: line.at(-1)?.bed },
      stood: { from: since, to: endedBy(planting, on) ?? on },
      pickings: pickings.map(({ day }) => day),
      over: endingOf(book, planting, on),
    },
    sources: [...(first === undefined ? [] : [first.place]), ...pickings.map(({ note }) => note)],
    private: [planting, ...line, ...pickings].some((part) => part.private),
    day: on,
  };
}

/** The plantings it was before it was moved, oldest first, each as it stood when the plants left it. */
function cameFrom(book: Book, { movedFrom, since }: Planting): readonly Planting[] {
  if (movedFrom === undefined) return [];
  const from = book.standing({ id: movedFrom }, since);
  return from === undefined ? [] : [...cameFrom(book, from), from];
}

function bedsBefore(planting: Planting, line: readonly Planting[], raised: Span | undefined): Life["before"] {
  const { planted, since, movedFrom } = planting;
  if (movedFrom === undefined) return [];
  // Nobody shows the bed they left; that they were planted before they came is known.
  if (line.length === 0) return planted !== undefined && planted < since ? [{ from: planted, to: since }] : [];
  const whole = [...line, planting];
  return line.flatMap(({ bed, since: from }, index) => {
    const to = whole[index + 1]?.since ?? since;
    // A seedbed is where they were raised.
    return raised !== undefined && to <= raised.to ? [] : [{ bed, from, to }];
  });
}

function endedBy({ ended }: Planting, on: Day): Day | undefined {
  return ended !== undefined && ended <= on ? ended : undefined;
}

function endingOf(book: Book, planting: Planting, on: Day): Ending | undefined {
  const day = endedBy(planting, on);
  if (day === undefined) return undefined;
  if (planting.stage === "lost") return { day, by: "loss" };
  const into = book.movedOn(planting).find(({ since }) => since === day);
  return into === undefined ? { day, by: "end" } : { day, by: "move", into };
}
