/** The shots of a stop: a tap ticks, a hold asks for another take, and the sheet does both and the rest for every hand. */
import type { Keeping } from "./keeping.ts";
import { announce, at } from "./page.ts";
import { clockOf, dayOf } from "./plan-clock.ts";
import type { ListedShot, ListedStop, Tick } from "./shapes.ts";
import { openShotSheet } from "./shot-sheet.ts";
import { sayTick, stateOf, tapped, tickOf, toRetake, withTick } from "./ticks.ts";

/** Milliseconds until a press is a hold. */
const HOLD = 550;
/** Pixels a finger may tremble during a hold. */
const TREMBLE = 12;
/** Milliseconds in which a second touch of one shot is the same touch: gloves bounce. */
const BOUNCE = 350;

export interface Row {
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
      row.element.dataset.state = stateOf(now);
      (row.element.querySelector(".state") as HTMLElement).textContent = sayTick(now);
    }
  }

  const openSheet = openShotSheet(set, tick);
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
