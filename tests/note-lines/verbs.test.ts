/** The verb table: every form begins a line of its kind, every example reads as what it stands for. */
import { expect, test } from "vitest";
import { verbTable } from "../../src/records/index.ts";
import { factsOf, readLine } from "./a-garden.ts";

const kinds = [
  ...[
    "sowed",
    "up",
    "potted on",
    "planted",
    "thinned",
    "did",
    "flowered",
    "fruited",
    "picked",
    "measured",
    "soil test",
  ],
  ...["trouble", "cured", "lost", "gave away", "cleared", "moved", "put up", "took down", "to do", "done", "promised"],
  ...["asked", "saved seed", "acquired", "volunteer", "came back", "doing", "preserved", "sold", "plan"],
];

test("every kind of event has its row", () => {
  expect(verbTable.map(({ kind }) => kind).toSorted()).toEqual(kinds.toSorted());
});

test("no form stands in two rows", () => {
  const forms = verbTable.flatMap((verb) => [...verb.forms, ...Object.values(verb.guarded ?? {}).flat()]);
  expect(forms.length).toBeGreaterThan(250);
  // Taking off a net is one thing and taking off leaves another.
  expect(forms.filter((form, at) => forms.indexOf(form) !== at)).toEqual(["removed", "took off"]);
  expect(forms.filter((form) => form !== form.toLowerCase().trim())).toEqual([]);
});

const examples = verbTable.flatMap((verb) => verb.examples.map((line) => [line, verb.kind] as const));

test.each(examples)("%s", (line, kind) => {
  const read = readLine(line);
  expect(read?.events.length).toBeGreaterThan(0);
  // "pulled" tells of a picking when it comes by the bunch; no example of a row is another row's.
  expect(read?.events.map((event) => event.kind)).toEqual(read?.events.map(() => kind));
});

/** What each shape of line needs behind its verb to be read at all. */
const rest = {
  plants: "12 Musselburgh in Long Bed",
  work: "Musselburgh in Long Bed",
  trouble: "blackfly on Musselburgh in Long Bed",
  gear: "mesh in Long Bed",
  soil: "pH 6.4 in Long Bed",
  words: "show Musselburgh in Long Bed",
  goods: "12 Musselburgh in Long Bed",
  state: "Musselburgh in Long Bed, thriving",
  stores: "2 jars of Musselburgh in Long Bed",
};
const lines = verbTable.flatMap((verb) =>
  [...verb.forms, ...Object.values(verb.guarded ?? {}).flat()].flatMap((form) =>
    [`${form}: ${rest[verb.shape]}`, `${form.toUpperCase()}: ${rest[verb.shape]}`].map(
      (line) => [line, verb.kind, form] as const,
    ),
  ),
);

test.each(lines)("%s", (line, kind, form) => {
  const event = readLine(line)?.events[0];
  expect([event?.kind, event?.verb]).toEqual([kind, form]);
  expect(event?.bed).toBe("long-bed");
  const about = factsOf(event as NonNullable<typeof event>);
  expect(about.variety ?? about.gear ?? about.ph).toBeDefined();
});

test("hyphens in a verb make no difference", () => {
  for (const line of [
    "direct-sowed 12 Boltardy in Long Bed",
    "to-do: net Long Bed",
    "re-potted 3 Sungold",
    "top-dressed Long Bed",
  ]) {
    expect([line, readLine(line)?.events.length]).toEqual([line, 1]);
  }
});
