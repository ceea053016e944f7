/** Captions of a film that is out already, as an episode of its day, with what is named in them. */
import type { Day, Episode, Garden } from "../model.ts";
import { filmingDay, type GlossaryWord, hearFilm, openCaptions, sayTime } from "../wrap/index.ts";
import { FreeNames, type NewFile, type Part, partOf, recordOf, slugOf } from "./new-file.ts";

export interface FilmToBring {
  readonly bytes: Uint8Array;
  /** File name. */
  readonly name: string;
  readonly garden: Garden;
  readonly glossary: readonly GlossaryWord[] | undefined;
  readonly day: Day;
  readonly files: readonly string[];
  readonly isPublic: boolean;
  /** Hashes of parts that were brought in before, and of captions that lie beside episodes. */
  readonly known: ReadonlySet<string>;
}

export interface NamedInFilm {
  readonly kind: "variety" | "bed" | "gear";
  readonly name: string;
  /** Milliseconds, where it is first said. */
  readonly at: number;
  readonly times: number;
  /** False where the captions have other words, which sound like it. */
  readonly right: boolean;
}

export interface BroughtFilm {
  /** Record and captions; none when the film is there already. */
  readonly files: readonly NewFile[];
  readonly named: readonly NamedInFilm[];
  readonly captions: number;
  /** Records of films of that day without captions, of which this may be one. */
  readonly sameDay: readonly string[];
  readonly parts: readonly Part[];
}

export function bringFilm({ bytes, name, garden, glossary, day, files, isPublic, known }: FilmToBring): BroughtFilm {
  const opened = openCaptions(name, bytes);
  const named = opened.cues.length === 0 ? [] : namedIn(opened.speech, garden, glossary, day);
  if (opened.cues.length === 0 || known.has(partOf(bytes, "").hash))
    return { files: [], named, captions: opened.cues.length, sameDay: [], parts: [] };
  const sameDay = [...garden.episodes.values()].flatMap((episode) =>
    episode.day === day && episode.captions.length === 0 ? (episode.place?.file ?? []) : [],
  );
  const folders = new Set(files.map((file) => file.split("/").slice(0, 2).join("/")));
  const slug = slugOf(name).replace(new RegExp(`^${day}-?`), "");
  const folder = new FreeNames(folders).take(`episodes/${day}${slug === "" ? "" : `-${slug}`}`);
  const index = `${folder}/index.md`;
  const front = [`date: ${day}`, "status: filmed", ...(isPublic ? [] : ["private: true"])];
  const record = { file: index, content: recordOf(front, remarkOf(named)) };
  const ending = /\.[a-z]+$/i.exec(name)?.[0].toLowerCase() ?? ".vtt";
  const captions = { file: `${folder}/captions${ending}`, content: bytes };
  return { files: [record, captions], named, captions: opened.cues.length, sameDay, parts: [partOf(bytes, index)] };
}

function namedIn(
  speech: ReturnType<typeof openCaptions>["speech"],
  garden: Garden,
  glossary: readonly GlossaryWord[] | undefined,
  day: Day,
): readonly NamedInFilm[] {
  const heard = hearFilm({ speech, day: filmingDay(garden, unnamed(day)), plan: [], glossary });
  const found = new Map<string, NamedInFilm>();
  for (const { name, from, right } of heard.names) {
    if (name.kind === "word") continue;
    const key = `${name.kind} ${name.record}`;
    const before = found.get(key);
    const title = titleOf(name.kind, name.record, garden);
    const at = speech.words[from]?.at ?? 0;
    found.set(
      key,
      before === undefined
        ? { kind: name.kind, name: title, at, times: 1, right }
        : { ...before, times: before.times + 1, right: before.right || right },
    );
  }
  return [...found.values()].sort((a, b) => a.at - b.at);
}

function titleOf(kind: NamedInFilm["kind"], id: string, { varieties, beds, gear }: Garden): string {
  return (kind === "variety" ? varieties : kind === "bed" ? beds : gear).get(id)?.title ?? id;
}

function unnamed(day: Day): Episode {
  return {
    id: "",
    title: "",
    private: true,
    body: "",
    described: true,
    day,
    status: "published",
    stops: [],
    promised: [],
    must: [],
    keep: [],
    skip: [],
    captions: [],
  };
}

/** What was heard is a machine's word: it stands in a remark, which no viewer sees. */
function remarkOf(named: readonly NamedInFilm[]): string {
  const right = named.filter((one) => one.right).map(({ name, at }) => `- ${name} (${sayTime(at)})`);
  return right.length === 0 ? "" : `<!-- Named in it:\n${right.join("\n")}\n-->\n`;
}
