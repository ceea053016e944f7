/** Where in a bed a thing stands, from the near or left end to the far or right one, by the spots of the notes. */

const near = /\b(?:near|front|left|door|gate|first|entrance|house|path)\b/i;
const middle = /\b(?:middle|cent(?:re|er)|between|among)\b/i;
const far = /\b(?:far|back|right|behind|other|end|wall|hedge|last)\b/i;

/** A number that rises along the bed; undefined where the spot tells no order. */
function along(spot: string | undefined): number | undefined {
  if (spot === undefined) return undefined;
  const numbered = /\b(?:rows?|pots?|tubs?|blocks?|trays?)\s+(\d+)/i.exec(spot)?.[1];
  if (numbered !== undefined) return Number(numbered) + (far.test(spot.slice(spot.indexOf(numbered))) ? 0.5 : 0);
  if (/\bfar\b/i.test(spot)) return 900;
  if (near.test(spot)) return 0;
  if (middle.test(spot)) return 50;
  return far.test(spot) ? 800 : undefined;
}

/** In order along the bed when at least two tell where they stand; what tells nothing stays behind its neighbour. */
export function leftToRight<Thing extends { readonly spot?: string | undefined }>(
  things: readonly Thing[],
): readonly Thing[] {
  const places = things.map(({ spot }) => along(spot));
  if (places.filter((place) => place !== undefined).length < 2) return things;
  let last = 0;
  const placed = things.map((thing, at) => {
    last = places[at] ?? last;
    return { thing, at, place: last };
  });
  return placed.toSorted((a, b) => a.place - b.place || a.at - b.at).map(({ thing }) => thing);
}
