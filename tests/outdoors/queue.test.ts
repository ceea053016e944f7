/** The queue on the phone: whatever breaks off, nothing kept is lost, and nothing is written twice. */
import { describe, expect, test } from "vitest";
import { readHomeFile } from "../../src/past/index.ts";
import { withWords } from "../../src/site/outdoors/phone/caret.ts";
import { homeFile, takeIn } from "../../src/site/outdoors/phone/home-file.ts";
import {
  againCalled,
  agreed,
  type Deliver,
  lineToSend,
  type QueueStore,
  sendHome,
} from "../../src/site/outdoors/phone/queue.ts";
import { inMemory } from "../../src/site/outdoors/phone/queue-store.ts";
import type { Queued, QueuedLine, QueuedPhoto } from "../../src/site/outdoors/phone/shapes.ts";

const garden = "Test Garden";
const line = (id: string, text: string, time = 0): QueuedLine => ({
  ...{ kind: "line", id, time, day: "2026-07-18", garden, bed: "left-bed", text },
  shown: { as: "facts", says: [`${text} from Left bed`] },
});
const photo: QueuedPhoto = {
  ...{ kind: "photo", id: "photo-000", time: 9, day: "2026-07-18", garden, bed: "left-bed", viewpoint: "gate" },
  ...{ name: "left-bed__gate__2026-07-18T09-15-00.jpg", modified: 1_784_362_500_000, size: 3 },
};

async function filled(...entries: readonly Queued[]): Promise<QueueStore> {
  const store = inMemory();
  for (const entry of entries)
    await store.put(entry, entry.kind === "photo" ? Uint8Array.of(0xff, 0xd8, 0xff).buffer : undefined);
  return store;
}

/** A computer that writes what it has not written yet. */
function home() {
  const written: string[] = [];
  const take = (entry: Queued) => {
    if (!written.includes(entry.id)) written.push(entry.id);
    return { told: "It stands in notes/2026-07-18.md.", done: true } as const;
  };
  return { written, take };
}

const idsIn = async (store: QueueStore) => (await store.all()).map(({ id }) => id);

describe("what was kept", () => {
  test("goes home the oldest first, with the bytes of a photo, and leaves the phone when it is there", async () => {
    const store = await filled(line("line-0002", "watered", 2), line("line-0001", "picked 400 g", 1), photo);
    const seen: unknown[] = [];
    const sent = await sendHome(store, garden, async (entry, bytes) => {
      seen.push([entry.id, bytes?.byteLength]);
      return { told: "", done: true };
    });
    expect(seen).toEqual([
      ["line-0001", undefined],
      ["line-0002", undefined],
      ["photo-000", 3],
    ]);
    expect(sent).toEqual({ taken: 3, refused: 0, isReached: true });
    expect(await store.all()).toEqual([]);
  });

  test("stays, under its id, when the answer does not come: and is not changed any more", async () => {
    const store = await filled(line("line-0001", "watered", 1), line("line-0002", "weeded", 2));
    const { isReached } = await sendHome(store, garden, async () => undefined);
    expect(isReached).toBe(false);
    expect((await store.all()).map(({ id, sent }) => [id, sent])).toEqual([
      ["line-0001", true],
      ["line-0002", undefined],
    ]);
  });

  test("stays with the reason when it is refused, is not sent again by itself, and then as was agreed", async () => {
    const store = await filled(line("line-0001", "watered", 1), line("line-0002", "weeded", 2));
    const reads = { as: "question", says: ["watered leeks"] } as const;
    await sendHome(store, garden, async ({ id }) =>
      id === "line-0001" ? { told: "These lines say something else there.", reads } : { told: "", done: true },
    );
    const [kept] = await store.all();
    expect(kept).toMatchObject({ id: "line-0001", refused: { told: "These lines say something else there.", reads } });
    expect(kept?.sent).toBeUndefined();
    expect(await sendHome(store, garden, async () => ({ told: "", done: true }))).toMatchObject({ taken: 0 });
    const again = agreed(kept as Queued, garden) as QueuedLine;
    expect(again).toMatchObject({ id: "line-0001", shown: reads });
    expect(again.refused).toBeUndefined();
    expect(lineToSend(again)).toEqual({
      id: "line-0001",
      day: "2026-07-18",
      bed: "left-bed",
      text: "watered",
      shown: reads,
    });
    const twice = { ...line("line-0003", "watered"), refused: { told: "", stands: true } } as const;
    expect([againCalled(twice.refused), lineToSend(agreed(twice, garden) as QueuedLine)]).toMatchObject([
      "It happened again",
      { again: true },
    ]);
  });

  test("for another garden is not sent to this one, unless the person says that it is the same", async () => {
    const store = await filled({ ...line("line-0001", "watered"), garden: "Old name" });
    const asked: string[] = [];
    const deliver: Deliver = async ({ id }) => {
      asked.push(id);
      return { told: "", done: true };
    };
    await sendHome(store, garden, deliver);
    expect(asked).toEqual([]);
    const [kept] = await store.all();
    expect(kept?.refused?.told).toBe("It was kept for “Old name”.");
    await store.put(agreed(kept as Queued, garden));
    await sendHome(store, garden, deliver);
    expect(asked).toEqual(["line-0001"]);
  });

  test("is at home once, wherever page, network and computer break off, two thousand times", async () => {
    let state = 19;
    // Park and Miller's minimal standard: the same cases in every run.
    const chance = () => {
      state = (state * 48_271) % 2_147_483_647;
      return state / 2_147_483_647;
    };
    for (let round = 0; round < 2000; round += 1) {
      const kept = Array.from({ length: 3 }, (_, at) => line(`line-000${at}`, `picked ${at}`, at));
      const store = await filled(...kept);
      const { written, take } = home();
      for (let tries = 0; tries < 20 && (await store.all()).length > 0; tries += 1) {
        const breaksAt = Math.floor(chance() * 6);
        let step = 0;
        const broken = () => {
          step += 1;
          if (step === breaksAt) throw new Error("the page is closed");
        };
        const frail: QueueStore = {
          ...store,
          async put(entry, bytes) {
            broken();
            await store.put(entry, bytes);
          },
          async drop(id) {
            broken();
            await store.drop(id);
          },
        };
        const isTold = chance() < 0.6;
        await sendHome(frail, garden, async (entry) => {
          broken();
          const answer = take(entry);
          return isTold ? answer : undefined;
        }).catch(() => undefined);
        // At any moment each is on the phone or at home.
        const here = await idsIn(store);
        expect(kept.filter(({ id }) => !here.includes(id) && !written.includes(id))).toEqual([]);
      }
      await sendHome(store, garden, async (entry) => take(entry));
      expect(written.toSorted()).toEqual(["line-0000", "line-0001", "line-0002"]);
      expect(await idsIn(store)).toEqual([]);
    }
  });
});

describe("the file to take home", () => {
  test("is read by the records as it was kept, and by another page, where nothing comes twice", async () => {
    const store = await filled(line("line-0001", "picked 400 g \u201cAquadulce\u201d", 1), photo);
    const file = await homeFile(store, garden, new Date());
    expect((await store.all()).every(({ inFile }) => inFile === true)).toBe(true);
    const read = readHomeFile(new Uint8Array(await file.arrayBuffer()));
    expect(read?.garden).toBe(garden);
    expect(read?.told).toEqual([]);
    expect(read?.entries).toMatchObject([
      {
        kind: "line",
        id: "line-0001",
        line: 2,
        day: "2026-07-18",
        bed: "left-bed",
        text: "picked 400 g \u201cAquadulce\u201d",
      },
      { kind: "photo", id: "photo-000", line: 3, bed: "left-bed", viewpoint: "gate", name: photo.name },
    ]);
    expect(read?.entries[1]).toMatchObject({ bytes: Buffer.from([0xff, 0xd8, 0xff]) });
    const other = inMemory();
    expect(await takeIn(file, other)).toBe(2);
    expect(await takeIn(file, other)).toBe(0);
    expect(await idsIn(other)).toEqual(["line-0001", "photo-000"]);
    expect((await other.bytesOf("photo-000"))?.byteLength).toBe(3);
    expect(await takeIn(new Blob(["date,what\n"]), other)).toBeUndefined();
  });

  test("that is broken off, or not of ours, loses what is broken and no more", async () => {
    const whole = new Uint8Array(
      await (await homeFile(await filled(line("line-0001", "watered"), photo), garden, new Date())).arrayBuffer(),
    );
    const cut = readHomeFile(whole.subarray(0, whole.length - 20));
    expect(cut?.entries.map(({ id }) => id)).toEqual(["line-0001"]);
    expect(cut?.told).toEqual([{ line: 3, what: "is no entry that is understood: the file may be cut off here" }]);
    for (const other of ["", "{}", '{"plotreel":"field list"}', "2026-07-18\n- watered\n"])
      expect(readHomeFile(Buffer.from(other)), other).toBeUndefined();
    const head = '{"plotreel":"outdoors","version":1,"garden":"Test Garden"}\n';
    const bad = [
      '{"kind":"line","id":"line-0001","day":"2026-07-18","text":"two\\nlines"}',
      '{"kind":"line","id":"../../etc","day":"2026-07-18","text":"watered"}',
      '{"kind":"line","id":"line-0001","day":"2026-02-30","text":"watered"}',
      '{"kind":"photo","id":"line-0001","day":"2026-07-18","name":"a.jpg","modified":1,"bytes":""}',
      "[]",
      "null",
    ];
    for (const one of bad) expect(readHomeFile(Buffer.from(`\ufeff${head}${one}\n`))?.entries, one).toEqual([]);
  });
});

test("a verb stands at the caret, apart from its neighbours", () => {
  expect(withWords("", 0, "picked")).toEqual({ text: "picked ", caret: 7 });
  expect(withWords("1 kg Boltardy", 0, "picked")).toEqual({ text: "picked 1 kg Boltardy", caret: 7 });
  expect(withWords("rain, then", 10, "watered")).toEqual({ text: "rain, then watered ", caret: 19 });
});
