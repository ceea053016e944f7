/**
 * Names as people shorten them: the beginning of a word ("courgs", "caulis"), one word of several ("Krim"), initials ("BBs").
 * A short form stands for something only when it can mean one thing alone, in this garden before all crops there are.
 */
import { distance } from "fastest-levenshtein";
import type { Crop, Variety } from "../model.ts";
import { lowerForm, singular, wordsOf } from "./line-words.ts";

/** What a short form may stand for. */
export interface Shortened {
  readonly variety?: string | undefined;
  readonly crop?: string | undefined;
}

export class ShortNames {
  readonly #byWord = new Map<string, Set<string>>();
  readonly #byInitials = new Map<string, Map<string, Shortened>>();
  readonly #ownCrops = new Map<string, string>();
  /** Names of one word, without their plural, by first letter. */
  readonly #singles = new Map<string, (readonly [name: string, id: string])[]>();
  /** Names of one word of what is eaten: the only ones that people shorten without having them. */
  readonly #eaten: readonly (readonly [name: string, id: string])[];
  readonly #meant = new Map<string, { readonly crop: string; readonly name: string } | undefined>();
  readonly #own = new Set<string>();
  readonly #begun = new Map<string, string | undefined>();

  constructor(crops: ReadonlyMap<string, Crop>, varieties: Iterable<Variety>) {
    for (const crop of crops.values()) {
      for (const name of [crop.name, ...crop.alsoCalled]) {
        const word = singular(lowerForm(name));
        if (word.includes(" ") || word.includes("-")) continue;
        const first = word[0] ?? "";
        const sameLetter = this.#singles.get(first);
        if (sameLetter === undefined) this.#singles.set(first, [[word, crop.id]]);
        else sameLetter.push([word, crop.id]);
      }
    }
    this.#eaten = [...crops.values()]
      .filter(({ name, use }) => (use === "vegetable" || use === "fruit") && !name.includes(" "))
      .map(({ name, id }) => [lowerForm(name), id] as const);
    for (const variety of varieties) {
      const words = wordsOf(variety.title).filter(({ kind }) => kind === "word");
      if (words.length > 1) for (const { key } of words) this.#note(key, variety.id);
      this.#initial(variety.title, { variety: variety.id, crop: variety.crop });
      const crop = variety.crop === undefined ? undefined : crops.get(variety.crop);
      if (crop === undefined) continue;
      this.#own.add(crop.id);
      for (const name of [crop.name, ...crop.alsoCalled]) {
        this.#ownCrops.set(lowerForm(name), crop.id);
        this.#initial(name, { crop: crop.id });
      }
    }
  }

  /** The one described variety whose title has this word among others: "Krim" of Black Krim. */
  varietyWithWord(key: string): string | undefined {
    const ids = this.#byWord.get(key);
    return ids?.size === 1 ? [...ids][0] : undefined;
  }

  /** Whether some described variety is of this crop. */
  isOwnCrop(id: string): boolean {
    return this.#own.has(id);
  }

  /** "BBs" are the broad beans, or the Black Beauty, of a garden that has one of them only. */
  withInitials(written: string): Shortened | undefined {
    const found = this.#byInitials.get(written.replace(/s$/, ""));
    return found?.size === 1 ? [...found.values()][0] : undefined;
  }

  /** The crop whose name begins like this word: of the garden's own first, then the only one of all. "Plants" are no plantains. */
  cropBeginning(lower: string, own: boolean): string | undefined {
    const start = lower.replace(/(?:ies|ie|s|y)$/, "");
    if (start.length < 4 || start === "plant") return undefined;
    const key = `${own} ${start}`;
    if (!this.#begun.has(key)) this.#begun.set(key, this.#find(start, own));
    return this.#begun.get(key);
  }

  /** The crop a misspelt word was meant to be: "punkin", "tomatas". Only when one alone is close. */
  cropSpelledLike(lower: string): { readonly crop: string; readonly name: string } | undefined {
    if (!this.#meant.has(lower)) this.#meant.set(lower, this.#like(lower));
    return this.#meant.get(lower);
  }

  #like(lower: string): { readonly crop: string; readonly name: string } | undefined {
    const word = singular(lower);
    if (word.length < 6) return undefined;
    let best = word.length >= 8 ? 3 : 2;
    let ids = new Map<string, string>();
    for (const [other, id] of this.#singles.get(word[0] ?? "") ?? []) {
      if (Math.abs(other.length - word.length) > 2) continue;
      const far = distance(word, other);
      if (far < best) {
        best = far;
        ids = new Map([[id, other]]);
      } else if (far === best && ids.size > 0) ids.set(id, other);
    }
    const [one] = ids;
    return one === undefined || ids.size > 1 ? undefined : { crop: one[0], name: one[1] };
  }

  #find(start: string, own: boolean): string | undefined {
    const ids = new Set<string>();
    for (const [name, id] of own ? this.#ownCrops : this.#eaten) {
      // Only of what the garden has is every word of a name taken, not the first alone.
      if (own ? beginsWord(name, start) : name.length > start.length && name.startsWith(start)) ids.add(id);
      if (ids.size > 1) return undefined;
    }
    return [...ids][0];
  }

  #note(key: string, id: string): void {
    const ids = this.#byWord.get(key) ?? new Set();
    ids.add(id);
    this.#byWord.set(key, ids);
  }

  #initial(name: string, of: Shortened): void {
    const words = wordsOf(name).filter(({ kind }) => kind === "word");
    if (words.length < 2) return;
    const initials = words.map(({ text }) => (text[0] ?? "").toUpperCase()).join("");
    const known = this.#byInitials.get(initials) ?? new Map<string, Shortened>();
    known.set(of.variety ?? `crop ${of.crop}`, of);
    this.#byInitials.set(initials, known);
  }
}

/** Whether a longer word of the name begins with these letters. */
function beginsWord(name: string, start: string): boolean {
  if (!name.includes(start)) return false;
  return name.split(" ").some((word) => word.length > start.length && word.startsWith(start));
}
