/** A table of crops as it is written down: one crop a line, under the family it belongs to. */
import type { Crop } from "../../model.ts";

/**
 * "Solanaceae:" or "Rosaceae, perennial:" heads the crops of a family; each is its name, its plural ("=" when that is the
 * same), then the other names people use. The id is the name in kebab-case. Plain text, because every browser that reads
 * notes loads it.
 */
export function grown(use: Crop["use"], table: string): Crop[] {
  let family = "";
  let perennial = false;
  return table
    .trim()
    .split("\n")
    .flatMap((line): Crop[] => {
      if (line.endsWith(":")) {
        perennial = line.endsWith(", perennial:");
        family = line.slice(0, perennial ? -", perennial:".length : -1);
        return [];
      }
      const [name = "", plural = "", ...alsoCalled] = line.split(", ");
      const id = name.toLowerCase().replace(/’/g, "").replace(/ /g, "-");
      return [{ id, name, plural: plural === "=" ? name : plural, alsoCalled, family, perennial, use }];
    });
}
