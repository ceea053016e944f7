/** One line at a time: bed and verb by taps, the rest typed or spoken, its reading below it; kept at once. */
import type { Day } from "../../../model.ts";
import { readTyped, type TypedLine, typedNames, usualVerbs } from "../../../records/index.ts";
import { at, onTap } from "../../field-list/phone/page.ts";
import { dayOf } from "../../field-list/phone/plan-clock.ts";
import { combobox } from "../../writing/combobox.ts";
import type { Completing } from "../../writing/complete.ts";
import { cleanLine, freshId } from "../../writing/draft.ts";
import { putAtCaret } from "./caret.ts";
import type { QueueStore } from "./queue.ts";
import { sayReading } from "./reading-rows.ts";
import type { OutdoorsData, QueuedLine } from "./shapes.ts";
import { showSpeaking } from "./speaking.ts";

/** Milliseconds without a letter after which the line is read, and after which that is read aloud to those who listen. */
const PAUSE = 60;
const LISTENING = 800;

const KEY = "plotreel outdoors/line";
const DAY = { weekday: "long", day: "numeric", month: "long" } as const;
const KINDS = { verb: "verb", bed: "bed", variety: "variety" } as const;

interface Draft {
  readonly line: string;
  readonly bed: string;
  /** Where it is another than today. */
  readonly day?: Day | undefined;
  /** The entry that is being changed. */
  readonly id?: string | undefined;
}

export interface Writing {
  bed(): string;
  edit(entry: QueuedLine): void;
}

export function showWriting(
  { garden, language, reads, beds }: OutdoorsData,
  store: QueueStore,
  kept: () => void,
): Writing {
  const [line, day] = [at<HTMLInputElement>("line"), at<HTMLInputElement>("day")];
  const more = document.getElementById("more-beds");
  const taps = [...document.querySelectorAll<HTMLButtonElement>("[data-bed]")];
  const names = typedNames(reads);
  const known: readonly Completing[] = [
    ...usualVerbs().map((name) => ({ name, kind: "verb" as const })),
    ...[...reads.beds, ...reads.heard.beds].map(({ title }) => ({ name: title, kind: "bed" as const })),
    ...[...reads.varieties, ...reads.heard.varieties].map(({ title }) => ({ name: title, kind: "variety" as const })),
  ];
  let draft = keptDraft();
  let isKeeping = false;
  let [reading, saying]: (ReturnType<typeof setTimeout> | undefined)[] = [];

  const isBed = (id: string) => beds.some((bed) => bed.id === id);
  const dayNow = () => draft.day ?? dayOf(new Date());

  function read(text: string): TypedLine | undefined {
    const context = { garden: reads, names, day: dayNow(), beds: draft.bed === "" ? [] : [draft.bed] };
    return readTyped(text, context)[0];
  }

  function change(to: Partial<Draft>): void {
    draft = { ...draft, ...to };
    try {
      localStorage.setItem(KEY, JSON.stringify(draft));
    } catch {}
    clearTimeout(reading);
    clearTimeout(saying);
    reading = setTimeout(show, PAUSE);
  }

  function show(): void {
    const typed = cleanLine(draft.line) === "" ? undefined : read(cleanLine(draft.line));
    at("reading").replaceChildren(...(typed === undefined ? [] : sayReading(typed)));
    saying = setTimeout(() => {
      at("heard").textContent = [...at("reading").children].map((row) => row.textContent).join(". ");
    }, LISTENING);
    for (const tap of taps) tap.setAttribute("aria-pressed", String(tap.dataset.bed === draft.bed));
    if (more?.querySelector("[aria-pressed=true]")) showMore(true);
    day.value = dayNow();
    at("other-day").hidden = draft.day === undefined || draft.day === dayOf(new Date());
    at("that-day").textContent = new Date(`${dayNow()}T12:00`).toLocaleDateString(language, DAY);
  }

  function showMore(isShown: boolean): void {
    if (more === null) return;
    more.hidden = !isShown;
    at("more").setAttribute("aria-expanded", String(isShown));
  }

  /** A glove that bounces keeps a line once. */
  async function keep(): Promise<void> {
    if (isKeeping) return;
    isKeeping = true;
    await keepLine();
    isKeeping = false;
  }

  async function keepLine(): Promise<void> {
    const raw = line.value;
    const text = cleanLine(raw);
    if (text === "") {
      tell("Nothing is typed yet.");
      return line.focus();
    }
    const { as, says } = read(text) ?? { as: "story", says: [] };
    const bed = draft.bed === "" ? {} : { bed: draft.bed };
    const id = draft.id ?? freshId();
    const before = (await store.all()).find((entry) => entry.id === id);
    // What left meanwhile may be at home by now: the changed line is then another.
    const isGone = draft.id !== undefined && (before === undefined || before.sent === true || before.inFile === true);
    const entry: QueuedLine = {
      ...{ kind: "line", id: isGone ? freshId() : id, time: before?.time ?? Date.now(), day: dayNow(), garden },
      ...bed,
      text,
      shown: { as, says },
    };
    try {
      await store.put(entry);
    } catch {
      return tell("The phone could not keep it: its room may be full. The line stays here.");
    }
    // What was typed on while the phone wrote belongs to the next line.
    line.value = line.value.startsWith(raw) ? line.value.slice(raw.length) : line.value;
    change({ line: line.value, id: undefined });
    tell(`Kept on this phone: ${text}`);
    box.close();
    line.focus();
    kept();
  }

  function tell(words: string): void {
    at("told").textContent = words;
  }

  const box = combobox(
    line,
    at("options"),
    () => known,
    KINDS,
    () => change({ line: line.value }),
  );
  line.addEventListener("input", () => {
    tell("");
    change({ line: line.value });
    box.look();
  });
  line.addEventListener("keydown", (event) => {
    if (event.isComposing || box.key(event) || event.key !== "Enter") return;
    event.preventDefault();
    void keep();
  });
  onTap("keep", () => void keep());
  for (const tap of taps) {
    tap.addEventListener("click", () => {
      const id = tap.dataset.bed ?? "";
      change({ bed: draft.bed === id ? "" : id });
      show();
    });
  }
  for (const tap of document.querySelectorAll<HTMLButtonElement>("[data-verb]")) {
    // A press would take the caret out of the line, and the keyboard from under the thumb.
    tap.addEventListener("pointerdown", (event) => event.preventDefault());
    tap.addEventListener("click", () => {
      putAtCaret(line, tap.dataset.verb ?? "");
      line.focus();
      change({ line: line.value });
    });
  }
  if (more !== null) onTap("more", () => showMore(more.hasAttribute("hidden")));
  day.addEventListener("change", () => {
    change({ day: day.value === "" || day.value === dayOf(new Date()) ? undefined : day.value });
    show();
  });
  // The page may have lain open overnight.
  document.addEventListener("visibilitychange", show);
  showSpeaking(language, line, () => change({ line: line.value }));

  line.value = draft.line;
  if (!isBed(draft.bed)) draft = { ...draft, bed: "" };
  show();
  return {
    bed: () => draft.bed,
    edit({ id, text, bed = "", day: on }) {
      line.value = text;
      change({ id, line: text, bed: isBed(bed) ? bed : "", day: on === dayOf(new Date()) ? undefined : on });
      show();
      line.focus();
    },
  };
}

function keptDraft(): Draft {
  try {
    const found = JSON.parse(localStorage.getItem(KEY) ?? "null") as Partial<Draft> | null;
    return { bed: "", ...found, line: found?.line ?? "" };
  } catch {
    return { line: "", bed: "" };
  }
}
