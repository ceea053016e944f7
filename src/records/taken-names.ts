/** Beds and varieties that note lines name and no file describes: taken as they are named. */
import type { Bed, Place, Variety } from "../model.ts";
import { onlyCropOf } from "./crops.ts";

export interface Taken {
  readonly beds: readonly Bed[];
  readonly varieties: readonly Variety[];
}

/** What has to be known of such names for them to be found in other lines. */
export interface Heard {
  readonly beds: readonly Pick<Bed, "id" | "title" | "place">[];
  readonly varieties: readonly Pick<Variety, "id" | "title" | "crop" | "place">[];
}

type Mutable<T> = { -readonly [K in keyof T]: T[K] };

export class TakenNames {
  /** Counts what was taken, so that a reader can tell whether a line took anything. */
  count = 0;
  readonly #beds = new Map<string, Bed>();
  readonly #varieties = new Map<string, Mutable<Variety>>();
  /** Ids of varieties whose crop no line says, only what gardens know by such a name. */
  readonly #byName = new Set<string>();
  /** What takes each taking back, in order. */
  readonly #undo: (() => void)[] = [];

  /** A state to go back to: a line may be read one way and then not be taken so. */
  mark(): number {
    return this.#undo.length;
  }

  backTo(mark: number): void {
    while (this.#undo.length > mark) {
      this.#undo.pop()?.();
      this.count -= 1;
    }
  }

  bed(id: string, title: string, place: Place): void {
    if (this.#beds.has(id)) return;
    this.count += 1;
    this.#undo.push(() => this.#beds.delete(id));
    this.#beds.set(id, {
      ...undescribed(id, title, place),
      alsoCalled: [],
      shade: [],
      built: [],
      filled: [],
      viewpoints: [],
    });
  }

  /** A later line may say the crop that the first one left out. */
  variety(id: string, title: string, crop: string | undefined, place: Place): void {
    const known = this.#varieties.get(id);
    if (known === undefined) {
      this.count += 1;
      const byName = crop === undefined ? onlyCropOf(title)?.id : undefined;
      this.#undo.push(() => {
        this.#varieties.delete(id);
        this.#byName.delete(id);
      });
      if (byName !== undefined) this.#byName.add(id);
      this.#varieties.set(id, {
        ...undescribed(id, title, place),
        crop: crop ?? byName,
        alsoSpelled: [],
        perennial: undefined,
      });
    } else if (crop !== undefined && this.saidCropOf(id) === undefined) {
      this.count += 1;
      const before = known.crop;
      const wasByName = this.#byName.delete(id);
      this.#undo.push(() => {
        known.crop = before;
        if (wasByName) this.#byName.add(id);
      });
      known.crop = crop;
    }
  }

  cropOf(variety: string): string | undefined {
    return this.#varieties.get(variety)?.crop;
  }

  /** The crop that a line gave the variety. */
  saidCropOf(variety: string): string | undefined {
    return this.#byName.has(variety) ? undefined : this.cropOf(variety);
  }

  title(kind: string, id: string): string | undefined {
    return kind === "bed" ? this.#beds.get(id)?.title : kind === "variety" ? this.#varieties.get(id)?.title : undefined;
  }

  all(): Taken {
    return { beds: [...this.#beds.values()], varieties: [...this.#varieties.values()] };
  }
}

function undescribed(id: string, title: string, place: Place) {
  return { id, title, private: false, body: "", place, described: false };
}
