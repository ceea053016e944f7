/**
 * How a name sounds to an English ear, roughly: two spellings of one sound come out alike, so that a name that was only heard
 * is found. Rules in order; each is common in how English is spelled (from memory), and none knows a language by name.
 */
const RULES: readonly (readonly [spelled: RegExp, sounds: string])[] = [
  [/sch|sh|tch/gu, "ch"],
  [/ph/gu, "f"],
  [/qu/gu, "kw"],
  [/x/gu, "ks"],
  [/ck/gu, "k"],
  [/c(?=[eiy])/gu, "s"],
  [/c(?!h)/gu, "k"],
  [/gh/gu, "g"],
  [/z/gu, "s"],
  [/w(?=[aeiou])/gu, "v"],
  [/ee|ea|ie|ei|y/gu, "i"],
  [/oo|ou|ew/gu, "u"],
  [/ai|ay|ae/gu, "e"],
  [/(.)\1+/gu, "$1"],
  [/(?<!c)h/gu, ""],
  [/e\b/gu, ""],
];

/** `text` in small letters without accents, as `plain` leaves it. */
export function soundOf(text: string): string {
  return RULES.reduce((said, [spelled, sounds]) => said.replace(spelled, sounds), text);
}
