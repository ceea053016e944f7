/** Gear that a question asks about: looked at before plants, because what was given free must not be answered with a seed. */
import { noticeLine, noticesOf, theGear } from "../language/index.ts";
import type { Gear } from "../model.ts";
import type { AnswerFound } from "./answers.ts";
import { gearDisclosure } from "./disclosures.ts";
import type { FilmingDay } from "./filming-day.ts";
import { plainWord } from "./spoken-words.ts";

const asksFrom = /\bwhere\b|\bfrom\b|\b(?:get|got|buy|bought|source|link)\b/i;
const asksWhat = /\b(?:what|which)\b|\b(?:kind|make|brand|name)\b/i;
/** After these a plant is asked about, whatever it stands in. */
const ofPlants = /\b(?:seeds?|plants?|variety|varieties|plugs?|sets?|tubers?|cuttings?)\b/i;

/** `plantAt`: where the question first names a plant, in its words; undefined where it names none. */
export function gearAsked(
  question: string,
  words: readonly string[],
  plantAt: number | undefined,
  day: FilmingDay,
): AnswerFound | undefined {
  if (!(asksFrom.test(question) || asksWhat.test(question))) return undefined;
  const found = gearNamed(words, day);
  if (found === undefined) return undefined;
  const { gear, at } = found;
  // "The tomato cages" are cages; the tomatoes in the pots are tomatoes.
  const isOfPlant = plantAt !== undefined && plantAt < at - 1;
  if (isOfPlant || (ofPlants.test(question) && plantAt !== undefined)) return undefined;
  const told = gear.flatMap((one) => howItCame(one, day) ?? []);
  return {
    text: told.length === 0 ? undefined : told.join(" "),
    sources: gear.flatMap(({ place }) => place ?? []),
    asks: gear.length > 1 ? whichIsMeant(gear.map(({ title }) => title)) : undefined,
  };
}

/** "Which is meant: A, B or C?" */
export function whichIsMeant(names: readonly string[]): string {
  return `Which is meant: ${names.slice(0, -1).join(", ")} or ${names.at(-1)}?`;
}

function howItCame(gear: Gear, { garden: { settings } }: FilmingDay): string | undefined {
  const { obtained, giver, from, link, title } = gear;
  const { beside } = gearDisclosure(gear);
  const notice = noticeLine([theGear(title)], { obtained, giver, from }, noticesOf(settings));
  const plain =
    beside ?? (obtained === undefined ? from : [from, obtained].filter((part) => part !== undefined).join(", "));
  const text = notice ?? (plain === undefined ? undefined : `${title}: ${plain}.`);
  return text === undefined ? undefined : `${text}${link === undefined ? "" : ` ${link}`}`;
}

/** By its whole name, else by the last word of it: "the net". Of several, those that were up that day. */
function gearNamed(
  words: readonly string[],
  { garden, beds }: FilmingDay,
): { readonly gear: readonly Gear[]; readonly at: number } | undefined {
  const asked = words.map(stem);
  const open = [...garden.gear.values()].filter((one) => !one.private);
  const names = open.flatMap((gear) =>
    [gear.title, ...gear.alsoCalled].map((name) => ({
      gear,
      parts: name
        .replace(/^(?:the|a|an)\s+/i, "")
        .split(/[^\p{L}\p{N}'’]+/u)
        .map((part) => stem(plainWord(part)))
        .filter((part) => part !== ""),
    })),
  );
  const whole = names.flatMap(({ gear, parts }) => {
    const at = asked.findIndex(
      (_, from) => parts.length > 0 && parts.every((part, index) => asked[from + index] === part),
    );
    return at < 0 ? [] : [{ gear, at, length: parts.length }];
  });
  const longest = Math.max(0, ...whole.map(({ length }) => length));
  const byName = whole.filter(({ length }) => length === longest);
  const byHead = names.flatMap(({ gear, parts }) => {
    const head = parts.at(-1) ?? "";
    const at = head.length < 3 ? -1 : asked.indexOf(head);
    return at < 0 ? [] : [{ gear, at }];
  });
  const found = byName.length > 0 && longest > 1 ? byName : byName.length > 0 ? [...byName, ...byHead] : byHead;
  const [first] = found;
  if (first === undefined) return undefined;
  const up = new Set([...beds.values()].flatMap(({ state }) => state.gear));
  const gear = [...new Set(found.map((one) => one.gear))];
  const there = gear.filter(({ id }) => up.has(id));
  return { gear: there.length > 0 ? there : gear, at: first.at };
}

function stem(word: string): string {
  return word.replace(/(?:es|s)$/, "");
}
