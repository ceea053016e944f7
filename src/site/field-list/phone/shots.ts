/** The shots of a stop: a tap ticks, a hold asks for another take, and a sheet does both and the rest for every hand. */
import type { Keeping } from "./keeping.ts";
import { announce, at, onTap, sheet } from "./page.ts";
import { clockOf, dayOf } from "./plan-clock.ts";
import type { ListedShot, ListedStop, Tick } from "./shapes.ts";
import { counted, filmed, sayTick, skipped, tapped, tickOf, toRetake, untouched, withTick } from "./ticks.ts";

/** Milliseconds until a press is a hold. */
const HOLD = 550;
/** Pixels a finger may tremble during a hold. */
const TREMBLE = 12;
/** Milliseconds in which a second touch of one shot is the same touch: gloves bounce. */
const BOUNCE = 350;

interface Row {
  readonly element: HTMLElement;
  readonly stop: ListedStop;
  readonly shot: ListedShot;
}

export function showShots(keeping: Keeping): void {
  const rows: Row[] = keeping.list.stops.flatMap((stop) =>
    stop.shots.map((shot) => ({ element: at(`shot-${shot.id.replace(".", "-")}`), stop, shot })),
  );
  const tick = ({ stop, shot }: Row) => tickOf(keeping.kept(), stop, shot);

  function set(row: Row, change: (tick: Tick, at: string) => Tick): void {
    const now = new Date();
    const kept = keeping.kept();
    const next = withTick(kept, row.stop, row.shot, change(tick(row), clockOf(now)));
    // The first tick starts the clock: who has a camera in one hand forgets a button for it.
    keeping.change({ ...next, day: kept.day ?? dayOf(now), started: kept.started ?? now.getTime() });
    announce(`${row.shot.id}: ${sayTick(tick(row)) || "not filmed"}`);
  }

  function draw(): void {
    for (const row of rows) {
      const now = tick(row);
      row.element.dataset.state = now.state;
      (row.element.querySelector(".state") as HTMLElement).textContent = sayTick(now);
    }
  }

  const openSheet = shotSheet(set, tick);
  for (const row of rows) {
    const button = row.element.querySelector(".tick") as HTMLButtonElement;
    touchable(button, {
      tap: () => set(row, tapped),
      hold: () => {
        set(row, toRetake);
        navigator.vibrate?.(40);
      },
    });
    row.element.querySelector(".more")?.addEventListener("click", () => openSheet(row));
  }
  keeping.onChange(draw);
  draw();
}

function touchable(button: HTMLElement, acts: { readonly tap: () => void; readonly hold: () => void }): void {
  let timer: ReturnType<typeof setTimeout> | undefined;
  let held = false;
  let last = 0;
  let from = { x: 0, y: 0 };
  const stop = () => {
    clearTimeout(timer);
    timer = undefined;
  };
  button.addEventListener("pointerdown", (event) => {
    held = false;
    if (event.button !== 0) return;
    from = { x: event.clientX, y: event.clientY };
    timer = setTimeout(() => {
      held = true;
      last = Date.now();
      acts.hold();
    }, HOLD);
  });
  button.addEventListener("pointermove", (event) => {
    if (Math.hypot(event.clientX - from.x, event.clientY - from.y) > TREMBLE) stop();
  });
  for (const end of ["pointerup", "pointercancel", "pointerleave"]) button.addEventListener(end, stop);
  // A hold would open the browser's own menu.
  button.addEventListener("contextmenu", (event) => event.preventDefault());
  button.addEventListener("click", (event) => {
    const byPointer = event.detail > 0;
    if (byPointer && (held || Date.now() - last < BOUNCE)) return;
    last = Date.now();
    acts.tap();
  });
}

function shotSheet(
  set: (row: Row, change: (tick: Tick, at: string) => Tick) => void,
  tick: (row: Row) => Tick,
): (row: Row) => void {
  const dialog = sheet("shot-sheet");
  const reason = at<HTMLInputElement>("reason");
  let open: Row | undefined;

  function draw(): void {
    if (open === undefined) return;
    at("shot-name").textContent = open.shot.id;
    at("shot-text").textContent = open.shot.text;
    at("shot-state").textContent = sayTick(tick(open));
    at("takes").textContent = String(tick(open).takes);
  }
  function change(to: (tick: Tick, at: string) => Tick, stay = false): void {
    if (open !== undefined) set(open, to);
    if (stay) draw();
    else dialog.close();
  }

  onTap("shot-filmed", () => change((now, time) => (now.state === "filmed" ? now : filmed(now, time))));
  onTap("shot-again", () => change(toRetake));
  onTap("shot-clear", () => change((_, time) => ({ ...untouched, at: time })));
  onTap("more-takes", () => change((now, time) => counted(now, now.takes + 1, time), true));
  onTap("fewer-takes", () => change((now, time) => counted(now, now.takes - 1, time), true));
  onTap("shot-skip", () => change((now, time) => skipped(now, reason.value.trim(), time)));
  for (const button of dialog.querySelectorAll<HTMLElement>("[data-reason]")) {
    button.addEventListener("click", () => change((now, time) => skipped(now, button.dataset.reason ?? "", time)));
  }
  return (row) => {
    open = row;
    reason.value = tick(row).reason ?? "";
    draw();
    dialog.showModal();
  };
}
