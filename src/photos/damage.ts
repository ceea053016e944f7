/** What a decoder's refusal means for the person. */
import type { Problem } from "../model.ts";
import { pixelLimit } from "./copy-recipe.ts";
import { NoHeicDecoder } from "./heic-pictures.ts";
import { photoProblem } from "./photo-problems.ts";

/**
 * The problem for a photo that could not be opened or read. Failures that are no fault of the photo, such as a full
 * disk under the cache, are thrown on.
 */
export function damageProblem(photo: string, error: unknown): Problem {
  if (error instanceof NoHeicDecoder) return photoProblem("photo/no-heic-decoder", photo);
  const code = (error as NodeJS.ErrnoException).code;
  if (code === "ENOSPC" || code === "EDQUOT" || code === "EROFS") throw error;
  if (code !== undefined) return photoProblem("photo/unreadable", photo);
  const said = error instanceof Error ? error.message : String(error);
  if (/pixel limit/i.test(said)) return photoProblem("photo/too-large", photo, { limit: String(pixelLimit / 1e6) });
  return photoProblem("photo/damaged", photo, { why: reason(said) });
}

const reasons: readonly (readonly [RegExp, string])[] = [
  [/premature end|unexpected end|truncated|end of (stream|file)|read error|not enough/i, "it ends too early"],
  [/unsupported image format|unknown/i, "it is of a kind that is not known"],
];

function reason(said: string): string {
  return reasons.find(([pattern]) => pattern.test(said))?.[1] ?? "its bytes are damaged";
}
