/**
 * Whose the name of a source is, as far as the records tell: of one beside which nothing says how a thing was obtained nobody
 * knows whether it is a shop or a person. Asked by the site and by what goes to platforms, so that both keep back the same.
 */
import type { Garden } from "../model.ts";
import { normaliseName, peopleNamed } from "../records/index.ts";

/** `somebody`: a person of whom no record says that viewers may know. `unknown` may be a shop as well. */
export type WhoseName = "seller" | "may be named" | "somebody" | "unknown";

export function whoseName(
  name: string,
  { varieties, gear, settings }: Pick<Garden, "varieties" | "gear" | "settings">,
): WhoseName {
  const own = normaliseName(name);
  if ((settings.mayBeNamed ?? []).some((one) => isNamed(own, normaliseName(one)))) return "may be named";
  const sells = (from: string | undefined, obtained: string | undefined) =>
    from !== undefined && normaliseName(from) === own && sold.has(obtained ?? "");
  const isSeller =
    [...varieties.values()].some(({ source }) => sells(source?.name, source?.obtained)) ||
    [...gear.values()].some(({ from, obtained }) => sells(from, obtained));
  if (isSeller) return "seller";
  return peopleNamed(name, () => false).length > 0 ? "somebody" : "unknown";
}

const sold: ReadonlySet<string> = new Set(["bought", "discounted", "commission link"]);

/** "Wilf" where "Wilf two plots up" is the source. */
function isNamed(name: string, may: string): boolean {
  return may !== "" && ` ${name} `.includes(` ${may} `);
}
