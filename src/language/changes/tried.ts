/** What was done against a trouble: as the person said it, or that gear was put up. */
import type { Tried } from "../../model.ts";
import { type Named, namesOf } from "../names.ts";

export function sayTried(tried: readonly Tried[], garden: Named): readonly string[] {
  const names = namesOf(garden);
  return tried.map((one) => ("gear" in one ? `put up ${names.gear(one.gear)}` : one.what));
}
