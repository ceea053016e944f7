/** Gear that a question asks about: looked at before plants, because what was given free must not be answered with a seed. */

import { cropOf } from "../crop-of.ts";
import { noticeLine, noticesOf, theGear } from "../language/index.ts";
import type { Gear } from "../model.ts";
import { commonWords } from "./common-words.ts";
import { gearDisclosure } from "./disclosures.ts";
import type { FilmingDay } from "./filming-day.ts";
import type { About, AnswerFound } from "./plants-asked.ts";
import { plainWord } from "./spoken-words.ts";
import { openSource } from "./variety-lines.ts";

const asksFrom =
  /\bwhere\b|\bfrom\b|\b(?:get|got|buy|bought|source|links?|pay|paid|sent|free|sell|sponsor(?:ed)?|build|built|made|kit)\b/i;
const asksWhat = /\b(?:what|which)\b|\b(?:kind|make|brand|name|called)\b/i;
/** After these a plant is asked about, whatever it stands in. */
const ofPlants = /\b(?:seeds?|plants?|variety|varieties|plugs?|sets?|tubers?|cuttings?)\b/i;

/** `plantAt`: where the question first names a plant, in its words; undefined where it names none. */
export function gearAsked(
  question: string,
  words: readonly string[],
  plantAt: number | undefined,
  about: About,
): AnswerFound | undefined {
  const { day } = about;
  const found = gearNamed(words, day);
  if (found === undefined) return undefined;
  const { at, isWhole } = found;
  const isAsked = asksFrom.test(question) || asksWhat.test(question);
  // "Did the net work": nothing but its whole name says that a thing is meant.
  if (!isAsked && !isWhole) return undefined;
  const gear = overPlants(found.gear, about);
  // "The tomato cages" are cages; the tomatoes in the pots are tomatoes.
  const isOfPlant = plantAt !== undefined && plantAt < at - 1;
  if (isOfPlant || (ofPlants.test(question) && plantAt !== undefined)) return undefined;
  const told = gear.flatMap((one) => howItCame(one, day) ?? []);
  return {
    text: told.length === 0 ? undefined : told.join(" "),
    sources: gear.flatMap(({ place }) => place ?? []),
    asks: gear.length > 1 ? whichIsMeant(gear.map(({ title }) => title)) : undefined,
    ...(!isAsked && {
      guess: "This is how it came to you; whether it answers the question is for you to say.",
    }),
  };
}

/** "The net over the cabbages": of several things those at beds where the plants grow that the question names. */
function overPlants(gear: readonly Gear[], { lots, day }: About): readonly Gear[] {
  if (gear.length < 2 || lots.length === 0) return gear;
  const crops = new Set(lots.map((lot) => cropOf(day.garden, lot)?.id));
  const there = new Set(
    [...day.beds.values()].flatMap(({ living, state }) =>
      living.some((lot) => crops.has(cropOf(day.garden, lot)?.id)) ? state.gear : [],
    ),
  );
  const over = gear.filter(({ id }) => there.has(id));
  return over.length > 0 ? over : gear;
}

/** "Which is meant: A, B or C?" */
export function whichIsMeant(names: readonly string[]): string {
  return `Which is meant: ${names.slice(0, -1).join(", ")} or ${names.at(-1)}?`;
}

function howItCame(gear: Gear, { garden }: FilmingDay): string | undefined {
  const { settings } = garden;
  const { obtained, giver, from, link, title } = gear;
  const { beside } = gearDisclosure(gear);
  const notice = noticeLine([theGear(title)], { obtained, giver, from }, noticesOf(settings));
  const plain =
    beside ??
    (obtained === undefined
      ? from && openSource({ name: from }, garden)
      : [from, obtained].filter((part) => part !== undefined).join(", "));
  const text = notice ?? (plain === undefined ? undefined : `${title}: ${plain}.`);
  return text === undefined ? undefined : `${text}${link === undefined ? "" : ` ${link}`}`;
}

/** By its whole name, else by the last word of it: "the net". Of several, those that were up that day. */
function gearNamed(
  words: readonly string[],
  { garden, beds }: FilmingDay,
): { readonly gear: readonly Gear[]; readonly at: number; readonly isWhole: boolean } | undefined {
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
  const byWords = byName.length > 0 || byHead.length > 0 ? [] : describedBy(open, asked);
  const isWhole = byName.length > 0;
  const found = isWhole && longest > 1 ? byName : isWhole ? [...byName, ...byHead] : [...byHead, ...byWords];
  const [first] = found;
  if (first === undefined) return undefined;
  const up = new Set([...beds.values()].flatMap(({ state }) => state.gear));
  const gear = [...new Set(found.map((one) => one.gear))];
  const there = gear.filter(({ id }) => up.has(id));
  return { gear: there.length > 0 ? there : gear, at: first.at, isWhole };
}

/** "Those glass bell things": a word of the name and another of what its file says of it. */
function describedBy(gear: readonly Gear[], asked: readonly string[]): readonly { gear: Gear; at: number }[] {
  return gear.flatMap((one) => {
    const own = (text: string) => new Set(text.split(/[^\p{L}]+/u).map((word) => stem(plainWord(word))));
    const [name, body] = [own([one.title, ...one.alsoCalled].join(" ")), own(one.body)];
    const told = asked.filter((word) => word.length > 2 && !commonWords.has(word));
    const at = asked.findIndex((word) => word.length > 2 && !commonWords.has(word) && name.has(word));
    return at >= 0 && told.some((word) => body.has(word) && !name.has(word)) ? [{ gear: one, at }] : [];
  });
}

/** "Cages" is "cage" and "arches" is "arch": what one and several of a thing have in common. */
function stem(word: string): string {
  return word.replace(/(?<=ss|x|z|ch|sh)es$|(?<=[^su])s$/, "");
}
