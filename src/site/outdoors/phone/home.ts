/** What waits on this phone, and its way home: to the workbench where that is reached, or as one file. */
import { announce, at, onTap, sheet } from "../../field-list/phone/page.ts";
import { dayOf } from "../../field-list/phone/plan-clock.ts";
import { type AtHome, canAsk, deliver, whoIsThere } from "./going-home.ts";
import { homeFile, takeIn } from "./home-file.ts";
import { againCalled, agreed, type QueueStore, sendHome } from "./queue.ts";
import { sayReading } from "./reading-rows.ts";
import type { OutdoorsData, Queued, QueuedLine } from "./shapes.ts";

const NOT_THERE: Readonly<Record<Exclude<AtHome, "there">, string>> = {
  nobody: "Your computer does not answer here. What you kept stays on this phone.",
  "asks for a code": "Your computer asks for the code of its terminal first. What you kept stays here meanwhile.",
  "another garden": "The computer that answers here has another garden, so nothing was sent.",
};

export interface Home {
  /** Something was kept, sent or left out: shown again, and sent where it can be. */
  changed(): void;
}

export function showHome(data: OutdoorsData, store: QueueStore, edit: (entry: QueuedLine) => void): Home {
  const dialog = sheet("home-sheet");
  const titles = new Map(data.beds.map(({ id, title }) => [id, title]));
  let sending = false;
  let isAgain = false;

  async function draw(): Promise<void> {
    const all = await store.all();
    at("home").textContent = all.length === 0 ? "Home" : `Home ${all.length}`;
    at("home").setAttribute("aria-label", all.length === 0 ? "Home" : `Home, ${counted(all)} waiting`);
    at("waiting").replaceChildren(...all.toReversed().map(rowOf));
    at("how-many").textContent =
      all.length === 0 ? "Nothing waits on this phone." : `${counted(all)} kept on this phone.`;
    at("save-file").toggleAttribute("disabled", all.length === 0);
    at("clear").hidden = !all.some(({ inFile }) => inFile === true);
  }

  async function send(): Promise<void> {
    isAgain = sending;
    if (sending) return;
    sending = true;
    try {
      const waiting = (await store.all()).filter(({ refused }) => refused === undefined);
      if (waiting.length === 0) return;
      const there = await whoIsThere(data.garden);
      if (there !== "there") {
        at("sent").textContent = canAsk() ? NOT_THERE[there] : "";
        at("give-code").hidden = there !== "asks for a code";
        return;
      }
      at("give-code").hidden = true;
      const { taken, refused, isReached } = await sendHome(store, data.garden, deliver);
      const said = [
        ...(taken > 0 ? [`${taken === 1 ? "One is" : `${taken} are`} in your records.`] : []),
        ...(refused > 0 ? [`${refused === 1 ? "One stays" : `${refused} stay`} here: see why below.`] : []),
        ...(isReached ? [] : ["Then your computer did not answer any more."]),
      ].join(" ");
      at("sent").textContent = said;
      announce(said);
    } finally {
      sending = false;
      await draw();
    }
    if (isAgain) await send();
  }

  function rowOf(entry: Queued): HTMLLIElement {
    const row = document.createElement("li");
    const [what, where, says, acts] = ["p", "p", "ul", "p"].map((tag) => document.createElement(tag));
    if (what === undefined || where === undefined || says === undefined || acts === undefined) return row;
    what.className = "kept";
    what.textContent =
      entry.kind === "line"
        ? entry.text
        : `Photo${entry.viewpoint === undefined ? "" : ` from ${entry.viewpoint.replaceAll("-", " ")}`}`;
    where.className = "quiet";
    where.textContent = [
      entry.bed === undefined ? undefined : (titles.get(entry.bed) ?? entry.bed),
      `${dayCalled(entry.day)}, ${new Date(entry.time).toTimeString().slice(0, 5)}`,
      ...(entry.kind === "photo" ? [`${(entry.size / 1e6).toFixed(1)} MB`] : []),
      ...(entry.sent === true ? ["sent, not answered yet"] : []),
      ...(entry.inFile === true ? ["in a file"] : []),
    ]
      .filter((part) => part !== undefined)
      .join(" · ");
    says.className = "reading";
    if (entry.kind === "line") says.append(...sayReading(entry.refused?.reads ?? entry.shown));
    acts.className = "pair";
    const name = entry.kind === "line" ? entry.text : "the photo";
    if (entry.refused !== undefined) acts.append(button(againCalled(entry.refused), name, () => again(entry)));
    if (entry.kind === "line" && entry.sent !== true && entry.inFile !== true)
      acts.append(
        button("Change", name, () => {
          dialog.close();
          edit(entry);
        }),
      );
    acts.append(button("Leave out", name, () => leaveOut(entry)));
    row.append(what, where, ...(entry.kind === "line" ? [says] : []));
    if (entry.refused !== undefined) {
      const why = document.createElement("p");
      why.className = "care";
      why.textContent = entry.refused.told;
      row.append(why);
    }
    row.append(acts);
    return row;
  }

  async function again(entry: Queued): Promise<void> {
    await store.put(agreed(entry, data.garden));
    changed();
    at("home-name").focus();
  }

  async function leaveOut(entry: Queued): Promise<void> {
    const back = entry.kind === "photo" ? await store.bytesOf(entry.id) : undefined;
    await store.drop(entry.id);
    await draw();
    at("undo").hidden = false;
    at("undo-said").textContent = "Left out.";
    at("undo-tap").onclick = async () => {
      await store.put(entry, back);
      at("undo").hidden = true;
      await draw();
      at("home-name").focus();
    };
    at("undo-tap").focus();
  }

  async function saveFile(): Promise<void> {
    const file = await homeFile(store, data.garden, new Date());
    const link = document.createElement("a");
    link.href = URL.createObjectURL(file);
    link.download = `${dayOf(new Date())}-outdoors.jsonl`;
    link.click();
    setTimeout(() => URL.revokeObjectURL(link.href), 60_000);
    at("sent").textContent = `${link.download} is saved with the phone’s downloads. All stays here until you clear it.`;
    await draw();
  }

  async function clear(): Promise<void> {
    for (const { id, inFile } of await store.all()) if (inFile === true) await store.drop(id);
    at("clear-sure").hidden = true;
    await draw();
    at("home-name").focus();
  }

  async function takeFile(chooser: HTMLInputElement): Promise<void> {
    const [file] = chooser.files ?? [];
    chooser.value = "";
    if (file === undefined) return;
    const taken = await takeIn(file, store);
    at("sent").textContent =
      taken === undefined
        ? `${file.name} is no file of this page.`
        : `${taken === 1 ? "One was" : `${taken} were`} new here.`;
    changed();
  }

  function changed(): void {
    void draw().then(send);
  }

  onTap("home", () => {
    at("undo").hidden = true;
    at("clear-sure").hidden = true;
    at("sent").textContent = "";
    dialog.showModal();
    dialog.scrollTop = 0;
    changed();
  });
  onTap("send", changed);
  onTap("save-file", () => void saveFile());
  onTap("clear", () => {
    at("clear-sure").hidden = false;
    at("clear-all").focus();
  });
  onTap("clear-all", () => void clear());
  const chooser = at<HTMLInputElement>("take-file");
  chooser.addEventListener("change", () => void takeFile(chooser));
  for (const part of document.querySelectorAll<HTMLElement>("[data-by-network]")) part.hidden = !canAsk();
  addEventListener("online", changed);
  document.addEventListener("visibilitychange", () => document.visibilityState === "visible" && changed());
  return { changed };

  function dayCalled(day: string): string {
    if (day === dayOf(new Date())) return "today";
    return new Date(`${day}T12:00`).toLocaleDateString(data.language, { day: "numeric", month: "long" });
  }
}

function button(words: string, of: string, act: () => unknown): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = words;
  made.ariaLabel = `${words}: ${of}`;
  made.addEventListener("click", () => void act());
  return made;
}

function counted(all: readonly Queued[]): string {
  const photos = all.filter(({ kind }) => kind === "photo").length;
  const lines = all.length - photos;
  return [
    ...(lines > 0 ? [`${lines} ${lines === 1 ? "line" : "lines"}`] : []),
    ...(photos > 0 ? [`${photos} ${photos === 1 ? "photo" : "photos"}`] : []),
  ].join(" and ");
}
