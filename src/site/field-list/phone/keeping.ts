/** The ticks and notes of one tour, kept on the phone under the tour's key after every touch. */
import { fromBefore, type KeptBefore } from "./kept-before.ts";
import type { Kept, ListData } from "./shapes.ts";
import { nothingKept } from "./ticks.ts";

export interface Keeping {
  readonly list: ListData;
  kept(): Kept;
  change(next: Kept): void;
  /** Called after every change, wherever it was made. */
  onChange(draw: () => void): void;
  /** False when this browser keeps nothing, so that ticks last only as long as the page. */
  lasts(): boolean;
}

export function openKeeping(list: ListData): Keeping {
  const key = `plotreel field list/${list.garden}/${list.tour}`;
  const draws: (() => void)[] = [];
  let lasting = true;
  let kept = read();
  // Whether anything stays is known by trying, before there is anything to lose.
  store(`${key} (try)`, "");

  function read(): Kept {
    try {
      const text = localStorage.getItem(key);
      const found = text === null ? undefined : (JSON.parse(text) as Kept | KeptBefore);
      if (found?.version === 1) return fromBefore(found);
      return found?.version === 2 ? found : nothingKept;
    } catch {
      lasting = false;
      return nothingKept;
    }
  }

  function store(name: string, text: string): void {
    try {
      localStorage.setItem(name, text);
      lasting = true;
    } catch {
      lasting = false;
    }
  }

  // The same list may be open twice; what one of them ticks, the other must not undo.
  addEventListener("storage", (event) => {
    if (event.key !== key) return;
    kept = { ...read(), stop: kept.stop };
    for (const draw of draws) draw();
  });

  return {
    list,
    kept: () => kept,
    change(next) {
      kept = next;
      store(key, JSON.stringify(next));
      for (const draw of draws) draw();
    },
    onChange: (draw) => void draws.push(draw),
    lasts: () => lasting,
  };
}
