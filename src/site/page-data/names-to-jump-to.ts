/** Names of varieties with every way they are written or said, for the search's jump. */
import type { Named } from "../components/search/close-names.ts";
import type { View } from "./view.ts";

export function namesToJumpTo(view: View): string {
  const names: readonly Named[] = [...view.garden.varieties.values()]
    .map(({ id, title, alsoSpelled, sayAs }) => ({
      name: title,
      href: view.links.variety(id),
      also: [...alsoSpelled, ...(sayAs === undefined ? [] : [sayAs])],
    }))
    .sort((a, b) => view.compare(a.name, b.name) || (a.href < b.href ? -1 : 1));
  return `${JSON.stringify(names)}\n`;
}
