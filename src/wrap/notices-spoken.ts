/**
 * Whether viewers were told in the film itself of what a seller gave, lent or paid for: guidance everywhere asks for it there,
 * and not only below the film. Looked for near the places where the thing is named.
 */
import { isNotice, isUndecided } from "../language/index.ts";
import type { Notices, Obtained } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import type { Disclosure, Moment, NoticeSpoken } from "./wrap.ts";

/** Words around a thing's name in which its notice is looked for. */
const BEFORE = 30;
const AFTER = 45;

/** Plain words, as speech is compared: small, without apostrophes. */
const telling: Partial<Readonly<Record<Obtained, RegExp>>> = {
  "paid promotion": /\b(?:paid|sponsor(?:ed|ing)?|adverts?|advertisement|ad|paying)\b/g,
  "own product": /\b(?:i|we) (?:make|made|sell)\b|\bmy own (?:product|business|shop|company|nursery)\b/g,
  "family business":
    /\bmy (?:mother|mum|mom|father|dad|sister|brother|son|daughter|cousin|uncle|aunt|wife|husband|partner|friend|family)s?\b/g,
  "commission link": /\bcommission\b|\b(?:i|we) (?:earn|get (?:a |something|paid))/g,
  gifted:
    /\b(?:sent|gave|given|supplied)(?: (?:it|this|them|these|that))?(?: to)? (?:me|us)\b|\b(?:came|come|was|were) free\b(?! (?:draining|range|of|standing|flowering))|\b(?:me|us|it|this|them|these|for) free\b(?! (?:draining|range|of|from|standing|flowering))|\bfree of charge\b|\bfor nothing\b|\b(?:didnt|never) (?:pay|paid)\b|\ba (?:gift|freebie)\b/g,
  discounted: /\bdiscount(?:ed)?\b|\bless than (?:the|its|their) price\b|\bcheaper\b|\bhalf price\b|\breduced\b/g,
  lent: /\b(?:lent|loan|loaned|borrow|borrowed|borrowing)\b/g,
};

/** Words that regulators call unclear: in the US these two, elsewhere bare "gifted" too. */
const unclear: Readonly<Record<"us" | "elsewhere", RegExp>> = {
  us: /\b(?:collab|collaboration|spon)\b/,
  elsewhere: /\b(?:gifted|collab|collaboration|spon|affiliate)\b/,
};

const denied = /\b(?:not|never|no|isnt|wasnt|werent|arent|havent|hasnt|nobody|nothing)(?: \w+){0,2} ?$/;

export function noticesSpoken(
  { speech: { words }, names }: FilmHeard,
  disclosures: readonly Disclosure[],
  notices: Notices,
): readonly NoticeSpoken[] {
  const due = disclosures.filter((one) => isNotice(one) || isUndecided(one));
  return due.map(({ thing, record, kind, obtained }): NoticeSpoken => {
    const pattern = obtained === undefined ? undefined : telling[obtained];
    const mentions = names.filter(
      ({ name, confidence }) => name.kind === kind && name.record === record && confidence >= APPLY_FROM,
    );
    const [first] = mentions;
    const shown = first === undefined ? undefined : at(words, first.from);
    let unclearWord: string | undefined;
    for (const { from, to } of mentions) {
      const begins = Math.max(0, from - BEFORE);
      const near = words.slice(begins, to + AFTER).map(({ plain }) => plain);
      const text = near.join(" ");
      for (const found of pattern === undefined ? [] : text.matchAll(pattern)) {
        const said = found[0].startsWith("didnt") || found[0].startsWith("never") || found[0].endsWith("nothing");
        if (!said && denied.test(text.slice(0, found.index))) continue;
        const word = text.slice(0, found.index).split(" ").length - 1;
        return { thing, record, kind, shown, spoken: at(words, begins + word) };
      }
      unclearWord ??= unclear[notices === "us" ? "us" : "elsewhere"].exec(text)?.[0];
    }
    return { thing, record, kind, shown, unclear: unclearWord };
  });
}

function at(words: FilmHeard["speech"]["words"], index: number): Moment {
  return moment(words[index]?.at ?? 0);
}
