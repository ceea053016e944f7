/** A variety as texts under a film name it: its name, when it is shown, where it came from. */
import { cropOf } from "../crop-of.ts";
import { whoseName } from "../facts/index.ts";
import { fromWords, varietyName } from "../language/index.ts";
import type { Garden, Source, Variety } from "../model.ts";
import type { FilmHeard } from "./hear-film.ts";
import { moment } from "./moments.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { viewersEye } from "./viewers-eye.ts";
import { stretchAt } from "./word-ranges.ts";
import type { Disclosure, Moment } from "./wrap.ts";

export interface VarietySaid {
  readonly name: string;
  /** Undefined where no record tells. */
  readonly from?: string | undefined;
  readonly link?: string | undefined;
}

export function varietySaid(garden: Garden, variety: Variety, disclosures: readonly Disclosure[]): VarietySaid {
  const { id, source } = variety;
  const beside = disclosures.find(({ record, kind }) => kind === "variety" && record === id)?.beside;
  return {
    name: varietyName(variety, cropOf(garden, variety)),
    from: source === undefined ? undefined : (beside ?? openSource(source, garden)),
    link: source?.link ?? undefined,
  };
}

/**
 * Where it came from, as viewers may be told. Of a name beside which no record says how it was obtained nobody knows whether it is a
 * shop or a person: it is told only where other records know it for one that sells.
 */
export function openSource(source: Source, garden: Garden): string | undefined {
  if (source.obtained !== undefined) return fromWords(source);
  const whose = whoseName(source.name, garden);
  return whose === "seller" || whose === "may be named" ? fromWords(source) : undefined;
}

/** A time at the beginning of a line would be taken for a chapter. */
export function varietyLine({ name, from, link }: VarietySaid, time: string | undefined): string {
  return [
    name,
    time === undefined ? "" : ` (${time})`,
    from === undefined ? "" : `: ${from}`,
    link === undefined ? "" : ` ${link}`,
  ].join("");
}

/** Public varieties that were named where they grow, each with that first time: what viewers have seen. */
export function varietiesOnScreen({ day, names, speech, stretches }: FilmHeard): readonly (Moment & {
  readonly variety: Variety;
})[] {
  const eye = viewersEye(day.garden);
  const seen = new Map<string, Moment & { readonly variety: Variety }>();
  for (const { name, from, confidence } of names) {
    const variety = name.kind === "variety" ? day.garden.varieties.get(name.record) : undefined;
    if (variety === undefined || confidence < APPLY_FROM || seen.has(variety.id) || !eye.variety(variety.id)) continue;
    const bed = stretchAt(stretches, from)?.bed;
    const grows = day.beds.get(bed ?? "")?.living.some((lot) => lot.variety === variety.id && !lot.private);
    if (grows !== true || !eye.bed(bed)) continue;
    seen.set(variety.id, { ...moment(speech.words[from]?.at ?? 0), variety });
  }
  return [...seen.values()].sort((a, b) => a.at - b.at);
}
