/**
 * Short rings through many points: 2-opt (Croes, Operations Research 6:791-812, 1958) and Or-opt (Or, thesis,
 * Northwestern University, 1976) over the nearest neighbours of each point, then the same again after small kicks, as
 * iterated local search does. No chance in it: the same points give the same ring.
 */

/** Neighbours looked at from each point; more cost time and gave no shorter ring on 60 random points. */
const NEIGHBOURS = 8;

/** Kicks are spent by size: many points leave no time for them, and few need none. */
const kicksFor = (size: number) => Math.min(150, Math.floor(300_000 / size ** 2));

/** Order of the points 0 to size - 1; `metres` is a square matrix, row by row, the same both ways. */
export function shortRing(metres: Float64Array, size: number): number[] {
  const near = nearest(metres, size);
  const every = Array.from({ length: size }, (_, point) => point);
  let ring = settle(greedy(metres, size), every, metres, near);
  let length = lengthOf(ring, metres);
  let chance = 1;
  for (let kick = kicksFor(size); kick > 0 && size >= 8; kick -= 1) {
    // Numerical Recipes' quick generator (Press et al., 2nd ed., 7.1): good enough to spread the kicks.
    chance = (Math.imul(chance, 1664525) + 1013904223) >>> 0;
    const { tried, parted } = kicked(ring, chance);
    const found = settle(tried, parted, metres, near);
    const foundLength = lengthOf(found, metres);
    if (foundLength < length - 1e-9) {
      ring = found;
      length = foundLength;
    }
  }
  return ring;
}

function nearest(metres: Float64Array, size: number): Int32Array[] {
  const most = Math.min(NEIGHBOURS, size - 1);
  return Array.from({ length: size }, (_, a) => {
    const found = new Int32Array(most).fill(-1);
    for (let b = 0; b < size; b += 1) {
      if (b === a) continue;
      const apart = metres[a * size + b] as number;
      let at = most;
      while (at > 0) {
        const other = found[at - 1] as number;
        if (other >= 0 && (metres[a * size + other] as number) <= apart) break;
        if (at < most) found[at] = other;
        at -= 1;
      }
      if (at < most) found[at] = b;
    }
    return found;
  });
}

function greedy(metres: Float64Array, size: number): number[] {
  const used = new Uint8Array(size);
  const ring = [0];
  used[0] = 1;
  for (let here = 0; ring.length < size; ) {
    let next = -1;
    let least = Number.POSITIVE_INFINITY;
    for (let b = 0; b < size; b += 1) {
      const apart = metres[here * size + b] as number;
      if (used[b] === 0 && apart < least) {
        least = apart;
        next = b;
      }
    }
    used[next] = 1;
    ring.push(next);
    here = next;
  }
  return ring;
}

/** Swaps two neighbouring stretches somewhere on the ring: a change that 2-opt cannot undo in one step. */
function kicked(ring: readonly number[], chance: number): { readonly tried: number[]; readonly parted: number[] } {
  const size = ring.length;
  const span = Math.min(size - 1, 30);
  const at = chance % size;
  const turned = [...ring.slice(at), ...ring.slice(0, at)];
  const first = 1 + ((chance >>> 9) % (span - 2));
  const second = first + 1 + ((chance >>> 17) % (span - first - 1));
  const tried = [
    ...turned.slice(0, first),
    ...turned.slice(second, span),
    ...turned.slice(first, second),
    ...turned.slice(span),
  ];
  const parted = [first - 1, first, second - 1, second, span - 1, span].map((index) => turned[index % size] as number);
  return { tried, parted };
}

/** Both improvements until neither helps, looking first at the points given and then wherever the ring was changed. */
function settle(ring: number[], first: readonly number[], metres: Float64Array, near: readonly Int32Array[]): number[] {
  const size = ring.length;
  const place = new Int32Array(size);
  for (let i = 0; i < size; i += 1) place[ring[i] as number] = i;
  const apart = (a: number, b: number) => metres[a * size + b] as number;
  const at = (index: number) => ring[index < 0 ? index + size : index >= size ? index - size : index] as number;
  const waiting = [...first];
  const isWaiting = new Uint8Array(size);
  for (const point of waiting) isWaiting[point] = 1;
  const look = (...points: readonly number[]) => {
    for (const point of points) {
      if (isWaiting[point] === 1) continue;
      isWaiting[point] = 1;
      waiting.push(point);
    }
  };

  for (let next = 0; next < waiting.length; next += 1) {
    const point = waiting[next] as number;
    isWaiting[point] = 0;
    while (turnAt(point) || moveFrom(point));
  }
  return ring;

  /** 2-opt: joins `a` to a near point and turns the stretch between. */
  function turnAt(a: number): boolean {
    for (const step of [1, -1]) {
      const i = place[a] as number;
      const next = at(i + step);
      const now = apart(a, next);
      for (const b of near[a] as Int32Array) {
        const gained = now - apart(a, b);
        if (gained <= 1e-9) break;
        const after = at((place[b] as number) + step);
        if (b === next || after === a) continue;
        if (gained + apart(b, after) - apart(next, after) <= 1e-9) continue;
        const [from, to] = step === 1 ? [i + 1, place[b] as number] : [place[b] as number, i - 1];
        reverse((from + size) % size, (to + size) % size);
        look(a, next, b, after);
        return true;
      }
    }
    return false;
  }

  /** Or-opt: takes the stretch of one to three points that begins at `a` out and puts it beside a near point. */
  function moveFrom(a: number): boolean {
    const i = place[a] as number;
    for (let count = 1; count <= 3 && count < size - 2; count += 1) {
      for (const step of [1, -1]) {
        const far = at(i + step * (count - 1));
        const [before, after] = [at(i - step), at(i + step * count)];
        const freed = apart(before, a) + apart(far, after) - apart(before, after);
        if (freed <= 1e-9) continue;
        for (const c of near[a] as Int32Array) {
          if (apart(a, c) >= freed) break;
          const inside = (((place[c] as number) - i) * step + size) % size < count;
          if (inside) continue;
          for (const side of [1, -1]) {
            const d = at((place[c] as number) + side);
            if ((((place[d] as number) - i) * step + size) % size < count) continue;
            const added = apart(c, a) + apart(far, d) - apart(c, d);
            if (freed - added <= 1e-9) continue;
            move(i, step, count, c, d);
            look(before, after, far, c, d, a);
            return true;
          }
        }
      }
    }
    return false;
  }

  function reverse(from: number, to: number): void {
    let length = ((to - from + size) % size) + 1;
    let [low, high] = [from, to];
    if (length * 2 > size) {
      // Turning the rest of the ring instead is the same ring, read the other way.
      length = size - length;
      [low, high] = [(to + 1) % size, (from - 1 + size) % size];
    }
    for (let swaps = Math.floor(length / 2); swaps > 0; swaps -= 1) {
      const [one, other] = [ring[low] as number, ring[high] as number];
      ring[low] = other;
      place[other] = low;
      ring[high] = one;
      place[one] = high;
      low = (low + 1) % size;
      high = (high - 1 + size) % size;
    }
  }

  /** The stretch of `count` points from `i` on goes between neighbours `c` and `d`, its first point beside `c`. */
  function move(i: number, step: number, count: number, c: number, d: number): void {
    const stretch = Array.from({ length: count }, (_, k) => at(i + step * k));
    const begin = step === 1 ? i : (i - count + 1 + size) % size;
    const forward = at((place[c] as number) + 1) === d;
    const placed = forward ? stretch : stretch.toReversed();
    const gap = place[forward ? c : d] as number;
    const put = (index: number, point: number) => {
      const slot = ((index % size) + size) % size;
      ring[slot] = point;
      place[point] = slot;
    };
    // Whichever side is nearer is shifted over the place where the stretch was.
    const ahead = (gap - (begin + count - 1) + 2 * size) % size;
    const behind = (begin - (gap + 1) + 2 * size) % size;
    if (ahead <= behind) {
      for (let k = 0; k < ahead; k += 1) put(begin + k, at((begin + count + k) % size));
      for (let k = 0; k < count; k += 1) put(begin + ahead + k, placed[k] as number);
    } else {
      for (let k = 0; k < behind; k += 1) put(begin + count - 1 - k, at((begin - 1 - k + 2 * size) % size));
      for (let k = 0; k < count; k += 1) put(begin - behind + k, placed[k] as number);
    }
  }
}

function lengthOf(ring: readonly number[], metres: Float64Array): number {
  const size = ring.length;
  let length = metres[(ring.at(-1) as number) * size + (ring[0] as number)] as number;
  for (let i = 1; i < size; i += 1) length += metres[(ring[i - 1] as number) * size + (ring[i] as number)] as number;
  return length;
}
