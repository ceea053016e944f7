/** Finding the verb that a line begins with, and telling it from ordinary English. */
import type { Word } from "./line-words.ts";
import type { Names } from "./names.ts";
import { type Proof, type Verb, verbTable } from "./verb-table.ts";

/** Phrases that begin like a verb and are none: the longer one wins, and the line stays story. */
const ordinaryEnglish = (
  "picked up|picked my|picked a day|set out to|set out for|set out early|set up camp|up early|up late|up at|up to|up and|up before|" +
  "cut short|cut grass|cut the grass|cut the lawn|cut the hedge|lost my|lost our|lost track|lost count|lost power|moved on|moved in|" +
  "moved house|started to|started with|started by|started the day|died down|over the|put up with|put in a|put in an|put on a|put on my|" +
  "dug out|dug deep|fed up|fed the cat|fed the dog|fed the hens|fed the chickens|turned out|turned up|turned cold|turned warm|turned to|" +
  "turned on|turned off|covered in|filled in|filled up|filled with|first thing|first time|first day|first of|gave up|gave in|gave the|" +
  "gave it|showing off|height of|question of|stopped by|stopped at|stopped raining|stopped for|spread out|spread to|took off for|" +
  "took off at|took away from|cleaned up nicely|pulled a muscle|pulled over|saved the|saved my|removed my|swapped notes"
).split("|");

/** Whether a word begins some verb of the table, or ordinary English that is known to look like one. */
export function beginsVerb(lower: string): boolean {
  return formsByFirstWord.has(lower);
}

/** A verb form found at the start of a line. */
export interface FoundVerb {
  readonly verb: Verb;
  /** As the table has it. */
  readonly form: string;
  readonly proof?: Proof | undefined;
  /** The word after the form. */
  readonly end: number;
  /** The second half of a form that goes around its object: "took the arch down". */
  readonly particle?: number | undefined;
}

interface Form {
  readonly words: readonly string[];
  /** Undefined for ordinary English. */
  readonly verb?: Verb | undefined;
  readonly form: string;
  readonly proof?: Proof | undefined;
}

/** Forms by their first word, the longest first. */
const formsByFirstWord = indexForms();

function indexForms(): ReadonlyMap<string, readonly Form[]> {
  const forms: Form[] = ordinaryEnglish.map((form) => ({ form, words: form.split(" ") }));
  for (const verb of verbTable) {
    for (const form of verb.forms) forms.push({ form, words: form.split(/[ -]/), verb });
    for (const [proof, guarded] of Object.entries(verb.guarded ?? {})) {
      for (const form of guarded) forms.push({ form, words: form.split(/[ -]/), verb, proof: proof as Proof });
    }
  }
  const byFirst = new Map<string, Form[]>();
  for (const form of forms) {
    const first = form.words[0] ?? "";
    byFirst.set(first, [...(byFirst.get(first) ?? []), form]);
  }
  for (const list of byFirst.values()) {
    list.sort(
      (a, b) => b.words.length - a.words.length || Number(a.proof === undefined) - Number(b.proof === undefined),
    );
  }
  return byFirst;
}

/** Every form of every verb, for spelling. */
export const verbForms: readonly string[] = verbTable.flatMap((verb) => [
  ...verb.forms,
  ...Object.values(verb.guarded ?? {}).flat(),
]);

/**
 * The verbs a line may begin with, the longest form first, and of the same form first the one that has to be proven;
 * none when it begins with ordinary English that only looks like a verb.
 */
export function verbsAt(words: readonly Word[]): readonly FoundVerb[] {
  const first = words[0];
  const verbs: FoundVerb[] = [];
  if (first === undefined) return verbs;
  for (const form of formsByFirstWord.get(first.lower) ?? []) {
    const end = endOfForm(words, form.words);
    if (end === undefined) continue;
    if (form.verb === undefined) break;
    verbs.push({ verb: form.verb, form: form.form, proof: form.proof, end });
  }
  return verbs;
}

/** "took the arch down", "put the mesh up": gear between the two halves of a verb. */
export function gearVerbAt(words: readonly Word[], names: Names): FoundVerb | undefined {
  const first = words[0]?.lower;
  const kind = first === "took" || first === "taken" ? "took down" : first === "put" ? "put up" : undefined;
  const gear = kind === undefined ? undefined : names.at("gear", words, words[1]?.lower === "the" ? 2 : 1);
  const particle = words[gear?.end ?? 0]?.lower ?? "";
  const fits = kind === "put up" ? /^(?:up|on|over|back)$/ : /^(?:down|off|away|out)$/;
  const verb = verbTable.find((row) => row.kind === kind);
  if (gear === undefined || verb === undefined || !fits.test(particle)) return undefined;
  // "put the mesh over Long Bed": the word belongs to the bed as well.
  const own = particle === "on" || particle === "over" || particle === "off" ? undefined : gear.end;
  return { verb, form: `${first} ${particle}`, end: 1, particle: own };
}

/** The word after a form that begins the line, passing over hyphens between its words. */
function endOfForm(words: readonly Word[], form: readonly string[]): number | undefined {
  let at = 0;
  for (const [index, part] of form.entries()) {
    if (index > 0 && words[at]?.text === "-") at += 1;
    if (words[at]?.lower !== part) return undefined;
    at += 1;
  }
  return at;
}
