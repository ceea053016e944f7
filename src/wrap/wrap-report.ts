/** The wrap as Markdown to read through after filming: what to decide first, what was made after. */
import { sayDay, sayPlural, sayShare } from "../language/index.ts";
import type { Day, Garden } from "../model.ts";
import { disclosureCaution, missingSources } from "./disclosures.ts";
import { APPLY_FROM } from "./names-heard.ts";
import { reshootLines, takeLines } from "./takes.ts";
import type { PlateFrame, Wrap } from "./wrap.ts";

export function wrapReport(wrap: Wrap, garden: Garden, plates: readonly PlateFrame[] = []): string {
  const title = (bed: string | undefined) => (bed === undefined ? undefined : (garden.beds.get(bed)?.title ?? bed));
  const sections: readonly (readonly [heading: string, lines: readonly string[]])[] = [
    [
      "Before you upload",
      wrap.beforeUpload
        .filter(({ isDone }) => !isDone)
        .map(
          ({ what, lines }) =>
            `Not yet: ${what.charAt(0).toLowerCase()}${what.slice(1)} (${lines.length}; before-upload.md)`,
        ),
    ],
    ["About the captions", wrap.problems.map(({ file, line, what, fix }) => `${what} ${fix} (${file}:${line})`)],
    ["Promises heard", promises(wrap, garden, title)],
    ["Questions and doubts", wrap.questions.map(({ time, said, kind }) => `${time} ${quote(said)} (${kind})`)],
    [
      "Said otherwise than recorded",
      wrap.disagreements.map(({ time, said, records }) => `${time} ${quote(said)} ${records}`),
    ],
    ["Held against the records", claimsHeld(wrap)],
    ["Names to check", names(wrap, false)],
    ["Names set right", names(wrap, true)],
    ["Shots to go back for", reshootLines(wrap, title)],
    ["Missed, and could be picked up", wrap.coverage.toPickUp],
    ["Put off again, or kept back", answered(wrap, title)],
    ["Perhaps shown: too unsure to say", wrap.coverage.perhapsShown.map((bed) => `${title(bed)}`)],
    ["Not planned, and shown", wrap.coverage.unplanned.map(({ time, what }) => `${time} ${what}`)],
    ["Growing there, never named", neverNamed(wrap, title)],
    ["To say about where things came from", provenance(wrap)],
    ["Viewers asked", answers(wrap)],
    [
      "Chapters",
      wrap.noChapters === undefined || wrap.captions === undefined
        ? wrap.chapters.map(({ time, title: name }) => `${time} ${name}`)
        : [wrap.noChapters],
    ],
    ["Takes", takeLines(wrap, title)],
    ["How sure the stops are", stops(wrap, title)],
    [
      "Photos for a thumbnail",
      wrap.thumbnails.map(({ bed, photo, why }) => `${title(bed)}: ${photo === undefined ? "" : `${photo}, `}${why}`),
    ],
    ["Pictures for plates, out of the film", plateLines(plates)],
    ["Left out of the description", wrap.description.cut],
  ];
  const head = `# After filming: ${wrap.title}\n\nFilmed on ${sayDay(wrap.day, { language: garden.settings.language })}.${summary(wrap)}\n`;
  const body = sections
    .filter(([, lines]) => lines.length > 0)
    .map(([heading, lines]) => `## ${heading}\n\n${lines.map((line) => `- ${line}`).join("\n")}\n`);
  return [head, ...body].join("\n");
}

function summary({ captions, coverage, corrections, followUps }: Wrap): string {
  if (captions === undefined) return " There are no captions yet, so this is what the records tell.";
  const applied = corrections.filter(({ sort, applied: done }) => sort === "spelling" && done).length;
  const parts = [
    `${sayPlural(coverage.named.length, "variety", "varieties")} named`,
    `${sayPlural(applied, "name", "names")} set right`,
    `${sayPlural(followUps.filter(({ recorded }) => !recorded).length, "promise", "promises")} to take or leave`,
  ];
  return ` ${parts.join(", ")}.`.replace(/^ (.)/, (_, first: string) => ` ${first.toUpperCase()}`);
}

function plateLines(plates: readonly PlateFrame[]): readonly string[] {
  const lines = plates.map(
    ({ title, time, file, variety }) => `${title}, at ${time}: ${file} → photos/varieties/${variety}/`,
  );
  return lines.length === 0
    ? []
    : [
        ...lines,
        "None of them is on any page. Look whether it shows the variety, and copy it to where the arrow leads.",
      ];
}

function quote(said: string): string {
  return `“${said}”`;
}

function promises(
  wrap: Wrap,
  garden: Garden,
  title: (bed: string | undefined) => string | undefined,
): readonly string[] {
  const said = (day: Day) => sayDay(day, { language: garden.settings.language, near: wrap.day });
  const open = wrap.followUps.map(({ number, time, said: words, what, bed, due, kept, putsOff, recorded }) => {
    const day = due === undefined ? "no day given" : `due by ${said(due)}`;
    const when = kept === undefined ? day : `kept in this film, at ${kept.time}`;
    const instead =
      putsOff === undefined ? undefined : `puts off ${quote(putsOff.what)}, promised on ${said(putsOff.promisedOn)}`;
    const about = [title(bed), when, instead].filter((part) => part !== undefined).join(", ");
    return `${number}. ${time} ${quote(words)} → ${what} (${about}${recorded ? "; already in the record" : ""})`;
  });
  const numbers = wrap.followUps.filter(({ recorded }) => !recorded).map(({ number }) => number);
  return numbers.length === 0
    ? open
    : [...open, `To take them into the record: \`plotreel wrap ${wrap.episode} --accept ${numbers.join(" ")}\``];
}

function names({ corrections }: Wrap, applied: boolean): readonly string[] {
  return corrections
    .filter((one) => one.sort === "spelling" && one.applied === applied)
    .map(
      ({ time, heard, name, confidence, why }) =>
        `${time} ${quote(heard)} → ${name}, ${sayShare(confidence)} sure${applied ? "" : `; less than ${sayShare(APPLY_FROM)}, so it is left to you`}. ${why}`,
    );
}

function neverNamed({ coverage }: Wrap, title: (bed: string | undefined) => string | undefined): readonly string[] {
  const byBed = new Map<string, string[]>();
  for (const { bed, title: name } of coverage.neverNamed) byBed.set(bed, [...(byBed.get(bed) ?? []), name]);
  return [...byBed].map(([bed, all]) => `${title(bed)}: ${all.join(", ")}`);
}

function answered({ coverage }: Wrap, title: (bed: string | undefined) => string | undefined): readonly string[] {
  return coverage.things
    .filter(({ covered }) => covered === "put off again" || covered === "not shown, as told")
    .map(({ time, id, bed, covered, text }) => `${time ?? ""} ${title(bed)}, ${id}, ${covered}: ${text}`.trim());
}

/** How much of what was claimed was compared at all: what the records do not tell is not agreed with. */
function claimsHeld({ claims: { heard, compared, agreed, differed, notCompared } }: Wrap): readonly string[] {
  if (heard === 0) return [];
  const rest =
    notCompared.length === 0
      ? ""
      : ` Of the other ${notCompared.length} the records tell nothing, which is no agreement:`;
  const sum = `${heard} ${heard === 1 ? "claim" : "claims"} about plants heard, ${compared} compared: ${agreed} agreed, ${differed} differed.${rest}`;
  return [sum, ...notCompared.map(({ time, said, about }) => `${time} ${quote(said)}, of ${about}`)];
}

function provenance({ disclosures }: Wrap): readonly string[] {
  const lines = [
    ...disclosures.filter(({ beside }) => beside !== undefined).map(({ thing, beside }) => `${thing}: ${beside}.`),
    ...missingSources(disclosures),
  ];
  return lines.length === 0 ? [] : [...lines, disclosureCaution];
}

function answers(wrap: Wrap): readonly string[] {
  return wrap.answers.map(({ question, answer, asks, guess, sources }) => {
    const from = sources.map(({ file, line }) => `${file}:${line}`).join(", ");
    const told =
      answer === undefined ? (asks === undefined ? ["The records do not tell."] : []) : [`${answer} (${from})`];
    const more = [asks, guess === undefined || answer === undefined ? undefined : `A guess: ${guess}`];
    return [quote(question), ...told, ...more.filter((part) => part !== undefined)].join(" ");
  });
}

function stops({ stops: all }: Wrap, title: (bed: string | undefined) => string | undefined): readonly string[] {
  return all.map(({ time, bed, confidence, restsOn, planned, guess }) => {
    const on = restsOn.length === 0 ? "" : `: ${restsOn.join(", ")}`;
    const extra = bed !== undefined && !planned ? "; not planned" : "";
    if (guess === true)
      return `${time} perhaps ${title(bed)}: a guess (${sayShare(confidence)}), and nothing else rests on it`;
    return `${time} ${title(bed) ?? "at no bed"} (${sayShare(confidence)}${extra})${on}`;
  });
}
