/** Episodes: each in a folder of its own, with its captions beside index.md. */
import type { Problem } from "../model.ts";
import { baseName, head, idOfFileName, type RecordPlace, recordEnding, splitFirst } from "./file-names.ts";
import { problem } from "./problem-rules.ts";

export interface EpisodePlace extends RecordPlace {
  readonly captions: readonly string[];
  /** The export of the field list, when one lies beside the record. */
  readonly fieldList: string | undefined;
  /** The plan that was kept with its brief. */
  readonly plan: string | undefined;
}

const captionEnding = /\.(?:vtt|srt|sbv|ass|ssa|ttml|dfxp)$/i;
/** Kinds that are only text or data are captions when their name says so: a script or a list lies there too. */
const textEnding = /\.(?:txt|md|xml|json)$/i;
const captionWord = /caption|subtitle|transcript/i;
const fieldListName = /\/field-list\.json$/i;
const planName = /\/plan\.json$/i;
/** What a phone makes of the name when it saves the same export twice: "field-list (1).json". */
const nearlyFieldList = /\/field[ _-]?list[^/]*\.(json|txt)$/i;

export function placeEpisodes(files: readonly string[], problems: Problem[]): readonly EpisodePlace[] {
  const byFolder = new Map<string, string[]>();
  for (const file of files) {
    const [folder, inside] = splitFirst(file.slice("episodes/".length));
    if (inside === undefined) problems.push(loose(file));
    else byFolder.set(folder, [...(byFolder.get(folder) ?? []), file]);
  }
  const byId = new Map<string, EpisodePlace>();
  for (const [folder, inside] of byFolder) {
    const index = inside.find((file) => /\/index\.md$/i.test(file));
    const id = idOfFileName(folder);
    const first = byId.get(id);
    if (index === undefined) problems.push(withoutIndex(folder, inside[0] ?? folder));
    else if (first !== undefined) problems.push(sameId(index, first));
    else {
      const beside = inside.filter((file) => isBeside(file, index));
      const fieldList = beside.find((file) => fieldListName.test(file));
      for (const file of beside) {
        if (file !== fieldList && nearlyFieldList.test(file)) problems.push(misnamedFieldList(file, fieldList));
      }
      const plan = beside.find((file) => planName.test(file));
      byId.set(id, { id, file: index, captions: beside.filter((file) => isCaptions(file)), fieldList, plan });
    }
  }
  return [...byId.values()];
}

function isCaptions(file: string): boolean {
  return captionEnding.test(file) || (textEnding.test(file) && captionWord.test(baseName(file)));
}

/** Captions deeper down are a person's drafts and cuts of them. */
function isBeside(file: string, index: string): boolean {
  return file.slice(0, file.lastIndexOf("/")) === index.slice(0, index.lastIndexOf("/"));
}

function loose(file: string): Problem {
  const name = baseName(file).replace(/\.[^.]*$/, "");
  return problem(
    "folder/not-read",
    head(file),
    "This file is not read, because each episode has a folder of its own.",
    `Move it to episodes/${name}/${recordEnding.test(file) ? "index.md" : baseName(file)}.`,
  );
}

function withoutIndex(folder: string, file: string): Problem {
  return problem(
    "folder/not-read",
    head(file),
    `The folder episodes/${folder} has no index.md, so it is not read as an episode.`,
    `Write episodes/${folder}/index.md with the filming day, for example "date: 2026-05-16".`,
  );
}

function sameId(file: string, first: RecordPlace): Problem {
  return problem(
    "folder/same-id",
    head(file),
    `This episode has the same id as ${first.file}, "${first.id}", so it was not read.`,
    "Give one of the two folders another name; small and capital letters make no difference.",
  );
}

function misnamedFieldList(file: string, read: string | undefined): Problem {
  return problem(
    "field-list/file-name",
    head(file),
    `"${baseName(file)}" is not read: the export of a field list is named field-list.json.`,
    read === undefined
      ? "Rename it to field-list.json."
      : "Keep the newer of the two under the name field-list.json, and delete the other.",
  );
}
