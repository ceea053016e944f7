/**
 * Which varieties a photo is of: those its sidecar names; else the one its folder is called after (photos/varieties/crown-prince),
 * and those whose names stand in its file name or its caption. A name that two varieties bear, or a bed too, says nothing.
 */
import type { Records } from "../model.ts";
import { normaliseName } from "../records/index.ts";

/** The folder below photos/ whose folders are called after varieties. */
const varietiesFolder = "varieties";

/** Words shorter than this are found by themselves in too many names and captions: "red", "mint". */
const leastLetters = 5;

/** Before a name these say that it is not in the picture, or only beside it. */
const notThis = /(?:^| )(?:not?|never|without|unlike|than|instead of|after|before|where)(?: (?:the|a|an|my|our))*$/;

export class VarietyNames {
  /** Varieties by normal name; undefined where more than one thing is called so. */
  readonly #byName: Map<string, string | undefined> = new Map();
  readonly #hasBedOfFolder: boolean;

  constructor({ varieties, beds }: Pick<Records, "varieties" | "beds">) {
    for (const { id, title, alsoSpelled } of varieties.values())
      for (const name of [id, title, ...alsoSpelled].map(normaliseName)) {
        const known = this.#byName.has(name) ? this.#byName.get(name) : id;
        this.#byName.set(name, known === id ? id : undefined);
      }
    const bedNames = [...beds.values()].flatMap((bed) => [
      bed.id,
      bed.title,
      ...bed.alsoCalled,
      ...bed.viewpoints.map(({ name }) => name),
    ]);
    for (const name of bedNames.map(normaliseName)) if (this.#byName.has(name)) this.#byName.set(name, undefined);
    this.#hasBedOfFolder = bedNames.some((name) => normaliseName(name) === normaliseName(varietiesFolder));
  }

  /** What folders may be called. */
  get ids(): readonly string[] {
    return [...new Set([...this.#byName.values()].filter((id) => id !== undefined))];
  }

  /** The folder that should be called after a variety, where there is one. */
  folder(path: string): string | undefined {
    const [first = "", second, ...rest] = path.split("/").slice(1);
    return rest.length > 0 && first.toLowerCase() === varietiesFolder && !this.#hasBedOfFolder ? second : undefined;
  }

  called(name: string): string | undefined {
    return this.#byName.get(normaliseName(name));
  }

  shown(path: string, caption: string | undefined): readonly string[] {
    const folder = this.folder(path);
    const byFolder = folder === undefined ? undefined : this.called(folder);
    const file = (path.split("/").at(-1) ?? "").replace(/\.[^.]*$/, "").replaceAll("_", " ");
    return [...new Set([byFolder ?? [], ...this.#in(file), ...this.#in(caption ?? "")].flat())];
  }

  /** Names in a text, the longest first, so that "Crown" is not found in "Crown Prince". */
  #in(text: string): readonly string[] {
    let words = ` ${normaliseName(text)} `;
    const found: string[] = [];
    const inOrder = [...this.#byName].sort(([a], [b]) => b.length - a.length || (a < b ? -1 : 1));
    for (const [name, id] of inOrder) {
      if (name.length < leastLetters) continue;
      const at = words.indexOf(` ${name} `);
      if (at < 0) continue;
      if (id !== undefined && !notThis.test(words.slice(0, at))) found.push(id);
      words = words.replaceAll(` ${name} `, " | ");
    }
    return found;
  }
}
