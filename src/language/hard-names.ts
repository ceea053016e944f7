/**
 * Names that are easily said wrong on camera.
 *
 * The rule, common practice rather than science: a name looks hard to a reader of English when one of its words
 *  1. has a letter that English does not use (é, ü, ñ, ø, ß …);
 *  2. is a small word of another language: de, du, di, della, von, la, le …;
 *  3. ends as English words seldom end: -o, -i or -u after four letters or more, -eau, -eux, -aise, -ulce, -burgh …;
 *  4. has letters together that English does not say as written: tsch, cz, zz, ij, oeu, gli, cch …;
 *  5. is longer than twelve letters.
 * Crop names and English words that happen to match stand in `easy`.
 */

const foreignLetter = /(?![a-z])\p{L}/u;
const particles = new Set([
  "de",
  "du",
  "des",
  "di",
  "da",
  "del",
  "della",
  "delle",
  "dei",
  "do",
  "dos",
  "von",
  "van",
  "der",
  "la",
  "le",
  "les",
  "el",
  "lo",
  "au",
  "aux",
  "et",
  "og",
  "och",
  "y",
]);
const oddEnding =
  /(?:.{4}[oiu]|.{2}(?:iki|uri|eau|eaux|eux|oux|ault|eur|aise|ais|ois|oise|ier|ulce|uelo|uela|elle|olle|ecke|ichs?|orff|burgh|cester|jaune|ouge|lanc))$/u;
const oddInside =
  /tsch|[^s]sch|^sch|cz|sz|zs|zz|tj|sj|ij|oeu|eui|ouv|illo|gli|cch|cci|ggi|uij|aa|kv|zw|^gn|gn[aoi]|quil|vre/u;
const longerThan = 12;
const easy = new Set([
  "potato",
  "tomato",
  "mango",
  "piano",
  "radio",
  "hello",
  "tango",
  "disco",
  "indigo",
  "bravo",
  "jumbo",
  "volcano",
  "cargo",
  "super",
  "terrier",
  "premier",
  "earlier",
  "frontier",
  "courier",
  "pizza",
  "jazz",
  "fuzzy",
  "dazzler",
  "dazzle",
  "puzzle",
  "rouge",
  "turbo",
  "romeo",
  "mexico",
  "bingo",
  "echo",
  "hero",
  "sumo",
  "silo",
]);

/** Whether the brief should ask for a "say it as" when none is given. */
export function looksHardToSay(name: string): boolean {
  const words = name
    .toLowerCase()
    .normalize("NFC")
    .split(/[\s-]+/u)
    .map((word) => word.replace(/[.,()"“”]/gu, ""));
  return words.some((word) => looksHard(word));
}

function looksHard(word: string): boolean {
  const plain = word.replace(/[’']/gu, "'");
  if (foreignLetter.test(plain)) return true;
  const bare = plain.replace(/'s?$/u, "");
  if (easy.has(bare)) return false;
  if (particles.has(bare) || /^(?:d|l|dell|all)'/u.test(bare)) return true;
  return oddEnding.test(bare) || oddInside.test(bare) || bare.length > longerThan;
}
