/** Where clean captions say a variety's name: as the records spell it, or the part of it that people say for short. */
import type { Variety } from "../../src/model.ts";
import { plainWord, type Word } from "../../src/wrap/spoken-words.ts";

export interface NameSaid {
  readonly variety: string;
  /** As the captions have it: "Kelvedon's". */
  readonly said: string;
  readonly sayAs: string | undefined;
  /** Index of its first word, and how many there are. */
  readonly word: number;
  readonly words: number;
}

/** What people in these films say for short, by variety. */
const shortForms: Readonly<Record<string, readonly string[]>> = {
  "rouge-vif-detampes": ["Rouge Vif"],
  "kelvedon-wonder": ["Kelvedon"],
  "sharpes-express": ["Sharpe's"],
  "kerrs-pink": ["Kerr's"],
  "pink-fir-apple": ["Pink Fir"],
  "cafe-au-lait": ["Café"],
};

const LONGEST_NAME = 6;

export function namesSaid(words: readonly Word[], varieties: Iterable<Variety>): readonly NameSaid[] {
  const known = new Map<string, { variety: Variety; sayAs: string | undefined }>();
  for (const variety of varieties) {
    for (const form of [...(shortForms[variety.id] ?? []), ...variety.alsoSpelled, variety.title]) {
      const key = joined(form.split(/\s+/));
      for (const ending of ["", "s"]) known.set(key + ending, { variety, sayAs: sayAsOf(variety, form) });
    }
  }
  const found: NameSaid[] = [];
  for (let at = 0; at < words.length; at += 1) {
    for (let length = LONGEST_NAME; length > 0; length -= 1) {
      const window = words.slice(at, at + length);
      const name = known.get(joined(window.map(({ text }) => text)));
      if (name === undefined || window.length < length || !/^[\p{Lu}]/u.test(window[0]?.text ?? "")) continue;
      const said = window.map(({ text }) => text).join(" ");
      found.push({ variety: name.variety.id, said, sayAs: name.sayAs, word: at, words: length });
      at += length - 1;
      break;
    }
  }
  return found;
}

function joined(words: readonly string[]): string {
  return words.map(plainWord).join("");
}

/** The part of "say it as" that belongs to a form: all of it for the title, as many words for a short form. */
function sayAsOf({ title, sayAs, alsoSpelled }: Variety, form: string): string | undefined {
  const parts = sayAs?.split(",")[0]?.split(" ");
  if (parts === undefined) return undefined;
  const [whole, asked] = [title.split(" "), form.split(" ")];
  if (
    joined(whole) === joined(asked) ||
    alsoSpelled.some((other) => other === form && joined([other]) === joined(whole))
  )
    return parts.join(" ");
  return whole.length === parts.length && title.startsWith(form) ? parts.slice(0, asked.length).join(" ") : undefined;
}
