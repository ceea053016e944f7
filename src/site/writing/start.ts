/** The box to write in: lines of a day with their readings, as they are typed, into the note of that day. */
import type { Day } from "../../model.ts";
import { readTyped, type TypedGarden, type TypedLine, typedNames, usualVerbs } from "../../records/index.ts";
import type { NoteOfDay, WritingAnswer } from "../note-writing.ts";
import type { WritingWords } from "../words/writing-words.ts";
import { answerByTap } from "./answering.ts";
import { askByTap } from "./asking.ts";
import { combobox } from "./combobox.ts";
import type { Completing } from "./complete.ts";
import { cleanLine, freshId, keepDraft, keptDraft } from "./draft.ts";
import { takeDrops } from "./dropping.ts";
import { send } from "./send.ts";
import { undoBar } from "./undo-bar.ts";

const MARKS = { facts: "=", question: "?", story: "–" } as const;

/** Milliseconds without a letter after which a reading is read aloud to those who listen. */
const PAUSE = 800;

const at = <Kind extends HTMLElement = HTMLElement>(id: string) => document.getElementById(id) as Kind;

const form = document.getElementById("write-form");
if (form instanceof HTMLFormElement) void start(form);

async function start(form: HTMLFormElement): Promise<void> {
  const words = JSON.parse(form.dataset.words ?? "{}") as WritingWords["live"];
  const [day, bed, note] = [
    at<HTMLInputElement>("write-day"),
    at<HTMLSelectElement>("write-bed"),
    at<HTMLSelectElement>("write-note"),
  ];
  const line = at<HTMLInputElement>("write-line");
  const [list, reading, heard, told, asks] = [
    at("write-lines"),
    at("write-reading"),
    at("write-heard"),
    at("write-told"),
    at("write-asks"),
  ];
  const showWritten = undoBar(at("undo-bar"));
  answerByTap(showWritten, words.notReached);
  askByTap(showWritten, words.notReached);
  takeDrops(showWritten, words.notReached);
  const today = day.value;
  const kept = keptDraft();
  let id = kept?.id ?? freshId();
  let lines: readonly string[] = kept?.lines ?? [];
  let notes: readonly NoteOfDay[] = [];
  let garden: TypedGarden | undefined;
  let names: ReturnType<typeof typedNames> | undefined;
  let known: readonly Completing[] = [];
  let isNewer = false;
  let saying: ReturnType<typeof setTimeout> | undefined;

  const asked = new URLSearchParams(location.search).get("bed");
  if (kept !== undefined) [day.value, bed.value, line.value] = [kept.day, kept.bed, kept.line];
  if (asked !== null && lines.length === 0 && line.value === "") bed.value = asked;
  // A bed that is gone since.
  if (bed.selectedIndex < 0) bed.value = "";

  const all = () => [...lines, cleanLine(line.value)].filter((one) => one !== "");
  const noteOf = () => notes.find(({ file }) => file === note.value) ?? notes[0];

  function read(texts: readonly string[]): readonly TypedLine[] {
    if (garden === undefined || names === undefined) return texts.map((text) => ({ text, as: "story", says: [] }));
    const beds = bed.value === "" ? (noteOf()?.beds ?? []) : [bed.value];
    return readTyped(texts.join("\n"), { garden, names, day: day.value as Day, beds });
  }

  function keep(): void {
    keepDraft({ id, day: day.value, bed: bed.value, lines, line: line.value });
  }

  /** The reading of every line, the one that is being typed last. */
  function show(): void {
    keep();
    const readings = read(all());
    list.replaceChildren(...lines.map((text, index) => rowOf(text, index, readings[index])));
    const current = cleanLine(line.value) === "" ? undefined : readings.at(-1);
    reading.replaceChildren(...(current === undefined ? [] : saidRows(current)));
    clearTimeout(saying);
    saying = setTimeout(() => {
      heard.textContent = current === undefined ? "" : saidOf(current).join(". ");
    }, PAUSE);
  }

  function saidOf({ as, says }: TypedLine): readonly string[] {
    if (as === "question") return [words.question, ...says];
    return says.length === 0 ? [words.story] : says;
  }

  function saidRows(typed: TypedLine): readonly HTMLElement[] {
    return saidOf(typed).map((said, index) => {
      const row = document.createElement("li");
      row.className = `is-${typed.as}`;
      row.textContent = `${typed.as === "question" && index > 0 ? words.or : MARKS[typed.as]} ${said}`;
      return row;
    });
  }

  function rowOf(text: string, index: number, typed: TypedLine | undefined): HTMLElement {
    const row = document.createElement("li");
    const [written, says, change, drop] = [
      document.createElement("p"),
      document.createElement("ul"),
      document.createElement("button"),
      document.createElement("button"),
    ];
    written.textContent = text;
    says.append(...(typed === undefined ? [] : saidRows(typed)));
    change.type = drop.type = "button";
    change.textContent = words.change;
    drop.textContent = words.leaveOut;
    change.ariaLabel = `${words.change}: ${text}`;
    drop.ariaLabel = `${words.leaveOut}: ${text}`;
    const without = () => lines.filter((_, other) => other !== index);
    change.addEventListener("click", () => {
      const typing = cleanLine(line.value);
      lines = typing === "" ? without() : [...without(), typing];
      line.value = text;
      show();
      line.focus();
    });
    drop.addEventListener("click", () => {
      lines = without();
      show();
      line.focus();
      settled();
    });
    row.append(written, says, change, drop);
    return row;
  }

  /** Nothing is being written any more: a garden that has changed meanwhile may be shown. */
  function settled(): void {
    if (isNewer && all().length === 0) location.reload();
  }

  async function notesOfDay(): Promise<void> {
    const answer = await send<{ notes: readonly NoteOfDay[] }>("/@day", { day: day.value });
    if (answer === undefined) return;
    notes = answer.notes;
    note.replaceChildren(...notes.map(({ file }) => new Option(file, file)));
    at("write-note-row").hidden = notes.length < 2;
    sayFile();
    show();
  }

  function sayFile(): void {
    const goal = noteOf();
    const file = goal?.file ?? "";
    at("write-file").textContent =
      file === "" ? "" : (goal?.state === "" ? words.begins : words.goesTo).replace("{file}", file);
  }

  function nextLine(): void {
    const typed = cleanLine(line.value);
    if (typed === "") return;
    lines = [...lines, typed];
    line.value = "";
    show();
    line.scrollIntoView({ block: "nearest" });
  }

  async function save(shown?: WritingAnswer["reads"], state?: string): Promise<void> {
    const texts = all();
    const goal = noteOf();
    if (texts.length === 0) {
      told.textContent = words.nothing;
      line.focus();
      return;
    }
    if (goal === undefined) {
      told.textContent = words.notReached;
      return;
    }
    const answer = await send<WritingAnswer>("/@write", {
      id,
      day: day.value,
      file: goal.file,
      state: state ?? goal.state,
      ...(bed.value !== "" && { bed: bed.value }),
      lines: texts,
      shown: shown ?? read(texts).map(({ as, says }) => ({ as, says })),
    });
    asks.hidden = true;
    told.textContent = answer?.undo === undefined ? (answer?.told ?? words.notReached) : "";
    if (answer?.asks !== undefined) {
      const { state: agreed, text } = answer.asks;
      ask(text === "" ? words.nothingThere : text, () => void save(shown, agreed));
    }
    if (answer?.reads !== undefined) {
      const { reads } = answer;
      const text = reads
        .map(({ as, says }, index) => saidOf({ text: texts[index] ?? "", as, says }).join("; "))
        .join("\n");
      ask(text, () => void save(reads, state));
    }
    if (answer?.undo === undefined) return;
    id = freshId();
    lines = [];
    line.value = "";
    showWritten(answer);
    show();
    line.focus();
    if (isNewer) location.reload();
    else await notesOfDay();
  }

  function ask(text: string, agreed: () => void): void {
    (asks.querySelector("pre") as HTMLElement).textContent = text;
    const [yes, no] = asks.querySelectorAll("button") as unknown as [HTMLButtonElement, HTMLButtonElement];
    yes.onclick = agreed;
    no.onclick = () => {
      asks.hidden = true;
      line.focus();
    };
    asks.hidden = false;
    yes.focus();
  }

  const box = combobox(line, at("write-options"), () => known, words.kinds, show);
  line.addEventListener("input", () => {
    show();
    box.look();
  });
  line.addEventListener("keydown", (event) => {
    if (event.isComposing || box.key(event) || event.key !== "Enter") return;
    event.preventDefault();
    if (event.ctrlKey || event.metaKey || cleanLine(line.value) === "") void save();
    else nextLine();
  });
  line.addEventListener("paste", (event) => {
    const pasted = (event.clipboardData?.getData("text/plain") ?? "").split(/\r\n?|\n/u);
    if (pasted.length < 2) return;
    event.preventDefault();
    lines = [...all(), ...pasted.map(cleanLine).filter((one) => one !== "")];
    line.value = "";
    show();
  });
  at("write-next").addEventListener("click", () => {
    nextLine();
    line.focus();
  });
  bed.addEventListener("change", show);
  note.addEventListener("change", () => {
    sayFile();
    show();
  });
  day.addEventListener("change", () => {
    if (day.value === "") day.value = today;
    void notesOfDay();
  });
  form.addEventListener("submit", (event) => {
    event.preventDefault();
    void save();
  });
  addEventListener("newer", (event) => {
    if (all().length === 0) return;
    event.preventDefault();
    isNewer = true;
  });

  show();
  await notesOfDay();
  garden = (await (await fetch("/@names.json")).json()) as TypedGarden;
  names = typedNames(garden);
  known = [
    ...usualVerbs().map((name) => ({ name, kind: "verb" as const })),
    ...[...garden.beds, ...garden.heard.beds].map(({ title }) => ({ name: title, kind: "bed" as const })),
    ...[...garden.varieties, ...garden.heard.varieties].map(({ title }) => ({ name: title, kind: "variety" as const })),
  ];
  show();
  form.dataset.ready = "";
}
