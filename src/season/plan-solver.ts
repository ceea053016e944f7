/**
 * Puts wishes into beds at least cost: every choice is tried where there are few of them, and where there are many a search
 * improves a first draft until no single move and no exchange of two makes it better.
 */

export interface Wish {
  readonly crop: string;
  readonly family?: string | undefined;
  readonly plants?: number | undefined;
  /** Square metres. */
  readonly area: number;
  readonly sun: boolean;
  /** Grew under cover. */
  readonly cover: boolean;
  /** Bed the person wants it in. */
  readonly pinned?: string | undefined;
  /** Bed it grew in. */
  readonly from: string;
}

export interface Place {
  readonly bed: string;
  /** Square metres that are free; undefined when the bed has no size, and then anything fits. */
  readonly area?: number | undefined;
  readonly shady: boolean;
  readonly cover: boolean;
  readonly onlyPerennials: boolean;
  readonly pots: boolean;
}

export interface Assignment {
  /** Index of the place of each wish; undefined when no place can take it. */
  readonly placeOf: readonly (number | undefined)[];
  readonly cost: number;
  readonly exact: boolean;
}

/** A garden of more wishes or beds is searched only; and of a smaller one so many partial drafts are looked at before that. */
const small = { wishes: 40, places: 24 } as const;
const mostLooks = 10_000;
const mostRounds = 60;

/** `tooFull` is the cost of a bed filled to twice its size; it grows with what is over. */
export function assignBeds(
  wishes: readonly Wish[],
  places: readonly Place[],
  costOf: (wish: Wish, place: Place) => number,
  tooFull: number,
): Assignment {
  const cost = wishes.map((wish) => places.map((place) => costOf(wish, place)));
  const full = (place: number, area: number): number => {
    const there = places[place]?.area;
    if (there === undefined || area <= there) return 0;
    return there <= 0 ? tooFull * (1 + area) : (tooFull * (area - there)) / there;
  };
  const draft = improve(first(wishes, cost, places, full), wishes, cost, places, full);
  const few = wishes.length <= small.wishes && places.length <= small.places;
  const exact = few ? everyChoice(wishes, cost, places, full, draft.cost) : undefined;
  return exact ?? { ...draft, exact: false };
}

type Costs = readonly (readonly number[])[];
type Full = (place: number, area: number) => number;

/** Largest first, each into the cheapest place for it. */
function first(wishes: readonly Wish[], cost: Costs, places: readonly Place[], full: Full): (number | undefined)[] {
  const placeOf: (number | undefined)[] = wishes.map(() => undefined);
  const taken = places.map(() => 0);
  const order = wishes
    .map((_, index) => index)
    .sort((a, b) => (wishes[b]?.area ?? 0) - (wishes[a]?.area ?? 0) || a - b);
  for (const wish of order) {
    let best: { place: number; cost: number } | undefined;
    const costs = cost[wish] ?? [];
    for (let place = 0; place < places.length; place += 1) {
      const own = costs[place] ?? Number.POSITIVE_INFINITY;
      // What a bed is filled by makes it only dearer.
      if (!Number.isFinite(own) || (best !== undefined && own >= best.cost)) continue;
      const [before, area] = [taken[place] ?? 0, wishes[wish]?.area ?? 0];
      const added = own + full(place, before + area) - full(place, before);
      if (best === undefined || added < best.cost) best = { place, cost: added };
    }
    if (best === undefined) continue;
    placeOf[wish] = best.place;
    taken[best.place] = (taken[best.place] ?? 0) + (wishes[wish]?.area ?? 0);
  }
  return placeOf;
}

function total(
  placeOf: readonly (number | undefined)[],
  wishes: readonly Wish[],
  cost: Costs,
  places: readonly Place[],
  full: Full,
): number {
  const taken = places.map(() => 0);
  let sum = 0;
  for (const [wish, place] of placeOf.entries()) {
    if (place === undefined) continue;
    sum += cost[wish]?.[place] ?? 0;
    taken[place] = (taken[place] ?? 0) + (wishes[wish]?.area ?? 0);
  }
  return taken.reduce((all, area, place) => all + full(place, area), sum);
}

/** Moves one wish, or exchanges two, while that makes the draft cheaper. */
function improve(
  start: readonly (number | undefined)[],
  wishes: readonly Wish[],
  cost: Costs,
  places: readonly Place[],
  full: Full,
): { readonly placeOf: readonly (number | undefined)[]; readonly cost: number } {
  const placeOf = [...start];
  const taken = places.map(() => 0);
  const area = (wish: number) => wishes[wish]?.area ?? 0;
  for (const [wish, place] of placeOf.entries())
    if (place !== undefined) taken[place] = (taken[place] ?? 0) + area(wish);
  const at = (place: number) => taken[place] ?? 0;
  const own = (wish: number, place: number) => cost[wish]?.[place] ?? Number.POSITIVE_INFINITY;
  const over = taken.map((there, place) => full(place, there));
  const fill = (place: number, there: number) => {
    taken[place] = there;
    over[place] = full(place, there);
  };
  const whisker = 1e-9;
  for (let round = 0, better = true; better && round < mostRounds; round += 1) {
    better = false;
    for (let wish = 0; wish < wishes.length; wish += 1) {
      const here = placeOf[wish];
      if (here === undefined) continue;
      const costs = cost[wish] ?? [];
      const most = own(wish, here) + full(here, at(here)) - full(here, at(here) - area(wish));
      for (let there = 0; there < places.length; there += 1) {
        if (there === here || !((costs[there] ?? Number.POSITIVE_INFINITY) < most)) continue;
        const gain =
          own(wish, here) +
          full(here, at(here)) +
          full(there, at(there)) -
          (own(wish, there) + full(here, at(here) - area(wish)) + full(there, at(there) + area(wish)));
        if (gain <= whisker) continue;
        fill(here, at(here) - area(wish));
        fill(there, at(there) + area(wish));
        placeOf[wish] = there;
        better = true;
        break;
      }
    }
    for (let a = 0; a < wishes.length; a += 1) {
      const costs = cost[a] ?? [];
      for (let b = a + 1; b < wishes.length; b += 1) {
        const here = placeOf[a];
        const there = placeOf[b];
        if (here === undefined || there === undefined || here === there) continue;
        const after = (costs[there] ?? Number.POSITIVE_INFINITY) + own(b, here);
        const now = (costs[here] ?? Number.POSITIVE_INFINITY) + own(b, there);
        // At most the two beds are no longer too full.
        if (!(after < now + (over[here] ?? 0) + (over[there] ?? 0))) continue;
        const change = area(b) - area(a);
        const gain =
          own(a, here) +
          own(b, there) +
          full(here, at(here)) +
          full(there, at(there)) -
          (after + full(here, at(here) + change) + full(there, at(there) - change));
        if (gain <= whisker) continue;
        fill(here, at(here) + change);
        fill(there, at(there) - change);
        placeOf[a] = there;
        placeOf[b] = here;
        better = true;
      }
    }
  }
  return { placeOf, cost: total(placeOf, wishes, cost, places, full) };
}

/** Branch and bound: undefined when there are too many choices to look at all. */
function everyChoice(
  wishes: readonly Wish[],
  cost: Costs,
  places: readonly Place[],
  full: Full,
  atMost: number,
): Assignment | undefined {
  const order = wishes
    .map((_, index) => index)
    .sort((a, b) => (wishes[b]?.area ?? 0) - (wishes[a]?.area ?? 0) || a - b);
  const cheapest = order.map((wish) =>
    Math.min(...(cost[wish] ?? []).filter(Number.isFinite), Number.POSITIVE_INFINITY),
  );
  /** Least cost of the wishes from a position on; a wish that no place takes costs nothing. */
  const rest = [...cheapest, 0];
  for (let at = order.length - 1; at >= 0; at -= 1) {
    const own = cheapest[at] ?? 0;
    rest[at] = (rest[at + 1] ?? 0) + (Number.isFinite(own) ? own : 0);
  }
  const taken = places.map(() => 0);
  const placeOf: (number | undefined)[] = wishes.map(() => undefined);
  let best: { placeOf: (number | undefined)[]; cost: number } | undefined;
  let bound = atMost + 1e-9;
  let looks = 0;

  const choose = (at: number, sum: number): boolean => {
    looks += 1;
    if (looks > mostLooks) return false;
    if (at === order.length) {
      if (sum <= bound) {
        best = { placeOf: [...placeOf], cost: sum };
        bound = sum - 1e-9;
      }
      return true;
    }
    const wish = order[at] ?? 0;
    const area = wishes[wish]?.area ?? 0;
    const options = places
      .map((_, place) => {
        const own = cost[wish]?.[place] ?? Number.POSITIVE_INFINITY;
        const before = taken[place] ?? 0;
        return { place, added: own + full(place, before + area) - full(place, before) };
      })
      .filter(({ added }) => Number.isFinite(added))
      .sort((a, b) => a.added - b.added || a.place - b.place);
    if (options.length === 0) {
      placeOf[wish] = undefined;
      return choose(at + 1, sum);
    }
    for (const { place, added } of options) {
      if (sum + added + (rest[at + 1] ?? 0) > bound) break;
      placeOf[wish] = place;
      taken[place] = (taken[place] ?? 0) + area;
      const done = choose(at + 1, sum + added);
      taken[place] = (taken[place] ?? 0) - area;
      if (!done) return false;
    }
    return true;
  };
  const whole = choose(0, 0);
  return whole && best !== undefined ? { placeOf: best.placeOf, cost: best.cost, exact: true } : undefined;
}
