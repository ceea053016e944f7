import { exactLength } from "../films/index.ts";
import { dayOnly, mentions, say, sayNumber, theBed, type Voice } from "../language/index.ts";
import type { Episode, Garden } from "../model.ts";
import type { Check } from "./brief.ts";
import { speaksOf, type Weighed } from "./candidates/candidate.ts";
import { check } from "./checks.ts";
import type { Choice, Offer } from "./plan/choose.ts";
import type { Plan } from "./plan/plan.ts";
import { showValues } from "./show-values.ts";
import type { StopOrder } from "./stop-order.ts";
import type { Wishes } from "./wishes.ts";

export interface Planned {
  readonly garden: Garden;
  readonly episode: Episode | undefined;
  readonly order: StopOrder;
  readonly offers: readonly Offer[];
  readonly choice: Choice;
  readonly plan: Plan;
  readonly wishes: Wishes;
  readonly voice: Voice;
}

export function planChecks(planned: Planned): readonly Check[] {
  return [
    ...stopChecks(planned),
    ...lengthCheck(planned),
    ...wishChecks(planned),
    ...weightChecks(planned),
    ...(planned.plan.reorder === undefined ? [] : [check("stop", planned.plan.reorder)]),
  ];
}

function stopChecks({ garden, episode, order, choice, voice }: Planned): readonly Check[] {
  const none =
    choice.stops.length > 0
      ? []
      : [
          check(
            "stop",
            say(
              order.beds.length === 0
                ? "No bed of this tour is in use on that day: there is nothing to stop at."
                : "Nothing of this tour fits into the film.",
              [episode],
            ),
          ),
        ];
  const unknown = order.unknown.map((name) =>
    check("stop", say(`The episode stops at “${name}”, which no record describes.`, [episode])),
  );
  const ends = [
    { id: episode?.firstStop, at: 0, says: "begins" },
    { id: episode?.lastStop, at: -1, says: "ends" },
  ].flatMap(({ id, at, says }) => {
    const bed = garden.beds.get(id ?? "");
    if (bed === undefined) return [];
    const isIn = choice.stops.some(({ here }) => here.bed === bed);
    if (isIn && (!order.listed || order.beds.at(at) === bed)) return [];
    const why = isIn ? `its list of stops, which holds, ${says} elsewhere` : "it is no stop of this tour";
    return [check("stop", say(`The episode ${says} at ${theBed(bed)}; ${why}.`, [episode, bed]))];
  });
  const listed = new Set(episode?.stops.map(({ bed }) => bed) ?? []);
  const unused = order.passed
    .filter(({ bed, why }) => why === "not in use" && listed.has(bed.id))
    .map(({ bed }) => {
      const over = bed.inUseUntil !== undefined && bed.inUseUntil < voice.day;
      const since = over
        ? `not in use any more since ${dayOnly(bed.inUseUntil ?? voice.day, voice)}`
        : "not in use yet";
      return check(
        "stop",
        say(`The episode stops at ${theBed(bed)}, which is ${since}; it was left out.`, [episode, bed]),
      );
    });
  return [...none, ...unknown, ...ends, ...unused];
}

/** The musts stay, whatever they cost; the person hears by how much they are over. */
function lengthCheck({ episode, choice }: Planned): readonly Check[] {
  const { over } = choice;
  if (over <= 0) return [];
  const musts = choice.stops.flatMap(({ show }) => show).length;
  const what =
    musts === 1 ? "What must be shown is one thing, and it" : `What must be shown, ${sayNumber(musts)} things,`;
  return [
    check(
      "target",
      say(
        `${what} takes ${exactLength(over)} more than the film should last. All of it was kept; lengthen the film or skip something.`,
        [episode],
      ),
    ),
  ];
}

function wishChecks({ episode, offers, wishes }: Planned): readonly Check[] {
  const all = offers.flatMap(({ here, candidates }) => candidates.map((candidate) => ({ here, candidate })));
  const found = (name: string) =>
    all.some(({ candidate }) => speaksOf(candidate, name)) ||
    offers.some(({ here }) => here.growing.some((lot) => mentions(lot.variety?.title ?? "", [name])));
  const tell = (kind: "must" | "wish", text: string) => check(kind, say(text, [episode]));
  const skippedOwed = all.filter(
    ({ candidate }: { candidate: Weighed }) => candidate.kind === "owed" && candidate.wish === "skip",
  );
  return [
    ...wishes.must
      .filter((name) => !found(name))
      .map((name) => tell("must", `You marked “${name}” as a must, and no stop shows it.`)),
    ...wishes.keep
      .filter((name) => !found(name))
      .map((name) => tell("wish", `You said keep “${name}”, and nothing in this tour speaks of it.`)),
    ...wishes.skip
      .filter((name) => !found(name))
      .map((name) => tell("wish", `You said skip “${name}”, and nothing in this tour speaks of it.`)),
    ...wishes.contradictions.map((name) => tell("wish", `The episode both wants and skips “${name}”; it was skipped.`)),
    ...skippedOwed.map(({ candidate }) => tell("wish", `You skip ${candidate.about}, which viewers are waiting for.`)),
  ];
}

function weightChecks({ garden }: Planned): readonly Check[] {
  const kinds = Object.keys(showValues);
  return Object.keys(garden.settings.weights)
    .filter((kind) => !kinds.includes(kind))
    .map((kind) =>
      check(
        "weight",
        say(`garden.md weighs “${kind}”, which is no kind of thing to show. The kinds are: ${kinds.join(", ")}.`, [
          { place: { file: "garden.md", line: 1, column: 1 } },
        ]),
      ),
    );
}
