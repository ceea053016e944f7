/**
 * What pages save while `watch` runs, through the same doors and without a server, so that it can be killed at any change.
 * The states that a page was made from stand in a file beside the records: a page that asks again after a crash sends them too.
 */
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { type Effects, realEffects } from "../../src/cli/effects.ts";
import { loadGarden } from "../../src/cli/load-garden.ts";
import { openWorkbench } from "../../src/cli/open-workbench.ts";
import type { Garden } from "../../src/model.ts";
import { readTyped, typedGarden, typedNames } from "../../src/records/index.ts";
import type { TapAnswer, Workbench } from "../../src/site/index.ts";
import { asked, sentFile } from "../../src/site/workbench.ts";

const today = "2026-07-18";
const statesFile = "page-states.json";
const asking = "notes/2026-05-24.md";
const going = "notes/2026-06-20.md";
const newest = `notes/${today}.md`;
const photo = "photos/long-bed/2026-06-30.jpg";

type Save = (workbench: Workbench, garden: Garden, states: Readonly<Record<string, string>>) => Promise<unknown>;

/** By the word that stands for a command. */
export const pageSaves: Readonly<Record<string, Save>> = {
  "@write": (workbench, garden, states) => write(workbench, garden, going, states),
  "@begin": (workbench, garden, states) => write(workbench, garden, newest, states),
  "@settle": async (workbench, garden, states) => {
    const question = garden.readings.find(({ as, place }) => as === "question" && place.file === asking);
    // Answered by the run before.
    if (question === undefined) return {};
    return asked(workbench, "@settle", {
      file: asking,
      line: question.place.line,
      text: question.text,
      state: states[asking],
      reading: 0,
    });
  },
  "@name": async (workbench, _garden, states) =>
    asked(workbench, "@name", { photo, state: states[photo], as: "caption", name: "The leeks at noon" }),
  "@photo": async (workbench) => {
    const bytes = readFileSync("card/IMG_20260601_120000.jpg");
    const said = new URLSearchParams({ bed: "squash-bed", name: "IMG_1.jpg", modified: "1780000000000" });
    return sentFile(workbench, "@photo", said, bytes);
  },
  "@undo": async (workbench, garden) => {
    const { undo } = (await write(workbench, garden, going, { [going]: workbench.stateOf(going) })) as TapAnswer;
    return undo === undefined ? {} : asked(workbench, "@undo", { id: undo });
  },
};

/** Ends with 3 where no answer came at all. */
export async function savedByPage(word: string): Promise<number> {
  const { workbench, garden } = await opened(realEffects());
  const states = JSON.parse(readFileSync(statesFile, "utf8")) as Record<string, string>;
  try {
    const answer = (await pageSaves[word]?.(workbench, garden, states)) as TapAnswer | undefined;
    process.stdout.write(`${answer?.told ?? ""}\n`);
    return answer === undefined ? 3 : 0;
  } catch (error) {
    // The server of `watch` answers with the same words.
    process.stdout.write(`${(error as Error).message}\n`);
    return 3;
  }
}

/** Keeps what pages made now would know of the files. */
export async function keepStates(cwd: string): Promise<void> {
  const { workbench } = await opened({ ...realEffects(), cwd, cacheFor: () => path.join(cwd, "cache") });
  const states = Object.fromEntries([asking, going, newest].map((file) => [file, workbench.stateOf(file)]));
  writeFileSync(path.join(cwd, statesFile), JSON.stringify({ ...states, [photo]: workbench.stateBeside(photo) }));
}

async function opened(effects: Effects) {
  const loaded = await loadGarden({ records: "content", today }, effects);
  return {
    garden: loaded.garden,
    workbench: openWorkbench(loaded.garden, today, loaded.recordsDir, { ...effects, err: () => undefined }),
  };
}

async function write(
  workbench: Workbench,
  garden: Garden,
  file: string,
  states: Readonly<Record<string, string>>,
): Promise<unknown> {
  const lines = ["watered Long Bed", "a wren in the leeks"];
  const day = file.slice("notes/".length, -".md".length);
  const data = typedGarden(garden);
  const shown = readTyped(lines.join("\n"), { garden: data, names: typedNames(data), day, beds: [] });
  return asked(workbench, "@write", {
    ...{ id: "save-0123456789", day, file, state: states[file], lines },
    shown: shown.map(({ as, says }) => ({ as, says })),
  });
}
