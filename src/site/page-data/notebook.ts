/** What the notes say about each variety, in the person's own words. */
import { capital, fullStop, localeOf } from "../../language/index.ts";
import type { Day, Garden } from "../../model.ts";
import { escapeHtml } from "../escape-html.ts";
import { storyHtml } from "../story-html.ts";
import type { NotebookDay } from "./shapes.ts";

/** A name shorter than this is found in too many other words. */
const SHORTEST_NAME = 4;

/** Marks of Markdown that may stand within a name: looking for names by parsing every story would take longer than all pages. */
const MARKS = /[*_`[\]]/gu;

type Days = Map<Day, Set<string>>;

/** Log lines and story paragraphs by the variety they name, newest first. Pickings have a table of their own. */
export function notebooks(garden: Garden): ReadonlyMap<string, readonly NotebookDay[]> {
  const found = new Map<string, Days>();
  const add = (variety: string, day: Day, html: string) => {
    const days = found.get(variety) ?? new Map<Day, Set<string>>();
    found.set(variety, days.set(day, (days.get(day) ?? new Set()).add(html)));
  };
  for (const event of garden.events) {
    if (event.variety === undefined || event.kind === "picked" || event.text === "") continue;
    const lines = [event.text, ...event.more].map((text) => escapeHtml(fullStop(capital(text))));
    add(event.variety, event.day, `<p>${lines.join(" ")}</p>`);
  }
  const named = namesByFirstWord(garden);
  for (const note of garden.notes) {
    for (const { text } of note.story) {
      const plain = text.replace(MARKS, "").toLowerCase();
      for (const word of new Set(wordsOf(plain))) {
        for (const { id, name } of named.get(word) ?? []) if (plain.includes(name)) add(id, note.day, storyHtml(text));
      }
    }
  }
  return new Map([...found].map(([variety, days]) => [variety, newestFirst(days, garden)]));
}

/** Names by their first word, so that a story is read once and not once for every variety. */
function namesByFirstWord(
  garden: Garden,
): ReadonlyMap<string, readonly { readonly id: string; readonly name: string }[]> {
  const named = new Map<string, { id: string; name: string }[]>();
  for (const { id, title } of garden.varieties.values()) {
    const name = title.toLowerCase();
    const first = wordsOf(name)[0];
    if (first !== undefined && name.length >= SHORTEST_NAME)
      named.set(first, [...(named.get(first) ?? []), { id, name }]);
  }
  return named;
}

function wordsOf(text: string): readonly string[] {
  return text.split(/[^\p{L}\p{N}]+/u).filter((word) => word !== "");
}

function newestFirst(days: Days, garden: Garden): readonly NotebookDay[] {
  return [...days]
    .sort(([a], [b]) => (a < b ? 1 : -1))
    .map(([iso, htmls]) => ({ iso, day: localeOf(garden.settings).day(iso), html: [...htmls].join("\n") }));
}
