/** What beds, spots and gear are called in a sentence. A title is a label ("Long Bed"); in voice it is "the long bed". */
import type { Bed } from "../model.ts";

/** Words of garden ground. A title made of these only is spoken in lower case; any other word may be a name and stays. */
const groundWords = new Set(
  `arch back bag bags balcony barrel barrels basket bay bean beans bed beds berry big blueberry border bottom box boxes brassica
  brassicas bucket buckets bush cage cold compost container containers corner courgette cover crop cucumber cut cutting dahlia dahlias
  deep door dry east end far fence flower flowers frame frames fruit front garlic gate gravel grape green greenhouse half hanging
  hedge herb herbs high hill house inner island keyhole kitchen lean-to leek leeks left legume long low lower main middle mound narrow near
  new north nursery old onion onions orchard outer parsley patch patio path pea peas perennial planter planters pond pool porch
  potato potatoes pot pots pumpkin pumpkins rack railing railings raised raspberry rhubarb right ring root roots rose roses round row
  rows salad sand seed shade shady shed shelf short side sill small south spinach spring square squash staging step steps stock stone
  strawberry strip sunny sweet table tall tank tanks terrace three tomato tomatoes top tower tray trays tree trellis triangle trough troughs tub
  tubs tunnel two upper vegetable vine wall walled west wet wide wild window windowsill winter wood yard`.split(/\s+/),
);

/** A brief names the same few beds in every other sentence. */
const said = new Map<string, string>();

/** "the long bed"; "Tunnel North" is "the tunnel's north side"; names keep their capitals: "Nan's corner". */
export function theBed({ title }: Pick<Bed, "title">): string {
  const known = said.get(title) ?? bedName(title);
  said.set(title, known);
  return known;
}

function bedName(written: string): string {
  const title = written.trim().replace(/^the\s+/i, "");
  const words = title.split(/[\s,]+/).filter((word) => word !== "");
  const side = /^(.+?),? (north|south|east|west|left|right)$/i.exec(title);
  if (side?.[1] !== undefined && side[2] !== undefined)
    return `${theBed({ title: side[1] })}'s ${side[2].toLowerCase()} side`;
  const common = words.every((word) => groundWords.has(word.toLowerCase()) || /^\d+$/.test(word));
  if (common) return /^bed \d+$/i.test(title) ? title.toLowerCase() : `the ${title.toLowerCase()}`;
  const first = words[0] ?? title;
  if (/['’]s$/.test(first)) return title;
  // "Block Two", "Wicking Bed Three": a number makes it a proper name, whatever word it is written with.
  if (numberWord.test(words.at(-1) ?? "") && words.length > 1) return title;
  return /^[A-Z]/.test(first) && groundWords.has((words.at(-1) ?? "").toLowerCase()) ? `the ${title}` : title;
}

/** "in the long bed", "on the tunnel's north side". */
export function inBed(bed: Pick<Bed, "title">): string {
  const name = theBed(bed);
  return `${/(?:side|staging|steps?|shelf|windowsill|balcony|terrace|patio|roof)$/i.test(name) ? "on" : "in"} ${name}`;
}

/** "the tomato pots are", "the long bed is": the verb that goes with a bed's name. */
export function bedVerb(bed: Pick<Bed, "title">, one: string, many: string): string {
  return /[^s]s$/i.test(bed.title.trim()) ? many : one;
}

/** Plants in pots and trays do not stand "in the ground". */
export function isGround(bed: Pick<Bed, "title" | "built">): boolean {
  const words = [bed.title, ...bed.built.map(({ what }) => what)].join(" ");
  return !/\b(?:pots?|tubs?|troughs?|trays?|staging|bags?|buckets?|tanks?|baskets?|barrels?|planters?|containers?|windowsill|shelf)\b/i.test(
    words,
  );
}

const numberWord = /^(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|[ivx]{1,4}|[a-h])$/i;

const numberedSpot = /^(?:rows?|pots?|tubs?|blocks?|trays?|boxe?s?|bags?|rings?)\b|^\d/i;

/** A spot as noted ("row 2", "the corner by the gate") with the word that makes it part of a sentence. */
export function withPreposition(spot: string): string {
  const said = spot.trim().replace(/(?<![.,;\s])[.,;\s]+$/, "");
  if (
    /^(?:in|on|at|by|near|next|beside|between|behind|before|under|below|above|over|along|against|among|around|outside|inside|to|up|down|front)\b/i.test(
      said,
    )
  ) {
    return said;
  }
  if (numberedSpot.test(said)) return `in ${said}`;
  if (/\b(?:end|edge|side|top|bottom|foot|front|back)\b/i.test(said)) return `at ${withThe(said)}`;
  return `in ${withThe(said)}`;
}

/** "Hazel arch" on its label is "the hazel arch" in a sentence. */
export function theGear(title: string): string {
  const said = title.replace(/^the\s+/i, "");
  return `the ${/^[A-Z][a-z]/.test(said) ? said.charAt(0).toLowerCase() + said.slice(1) : said}`;
}

function withThe(said: string): string {
  return /^(?:the|a|an|its|one|each|every|both|all|half|two)\b/i.test(said) ? said : `the ${said}`;
}
