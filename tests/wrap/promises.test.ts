/** Promises, questions and doubts heard, by the one table of rules; and how promises go into the record. */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseDocument } from "yaml";
import { nothing, precision, recall, scorePromises, sum } from "../../scripts/mis-hearing/hearing-scores.ts";
import { demoGarden, heldBack, labelledFilm, tuned } from "../../scripts/mis-hearing/labelled-films.ts";
import { type Accepted, acceptPromises, spokenRules } from "../../src/wrap/index.ts";
import { whatIsPromised } from "../../src/wrap/promise-as-record.ts";
import { wrapOf } from "./small-film.ts";

const heard = async (...lines: string[]) => (await wrapOf(lines)).wrap;

describe("the table of rules", () => {
  it.each(spokenRules.map((rule) => [rule.id, rule] as const))(
    "%s holds for its example and not for the other",
    async (_, rule) => {
      const kinds = { promise: "followUps", question: "questions", doubt: "questions" } as const;
      const found = (wrap: Awaited<ReturnType<typeof heard>>) => wrap[kinds[rule.hears]].map((one) => one.rule);
      expect(found(await heard("The long bed.", rule.example))).toContain(rule.id);
      expect(found(await heard("The long bed.", rule.not))).not.toContain(rule.id);
    },
  );

  it("has names that stay and say what they hear", () => {
    const ids = spokenRules.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
    for (const { id, hears, meaning } of spokenRules) {
      expect(id.startsWith(`${hears}/`)).toBe(true);
      expect(meaning).toMatch(/^[A-Z].*\.$/);
    }
  });
});

describe("a promise", () => {
  // The film is of Sunday 14 June 2026.
  it.each([
    ["I'll show you the leeks again in July.", "show the leeks again in July", "2026-07-31"],
    ["I'll sow some more this week.", "sow some more this week", "2026-06-14"],
    ["I'll plant the garlic in the autumn.", "plant the garlic in the autumn", "2026-11-30"],
    ["I'll dig it over in the fall.", "dig it over in the fall", "2026-11-30"],
    ["I'll try them again next year.", "try them again next year", "2027-12-31"],
    ["I'll come back to it when the pods are dry.", "come back to it when the pods are dry", undefined],
    ["Come August I'll weigh the lot.", "weigh the lot", "2026-08-31"],
    ["You'll see this bed again in September.", "show this bed again in September", "2026-09-30"],
    ["I've yet to net the brassicas.", "net the brassicas", undefined],
    ["We'll see which is first. I'll let you know.", "say which is first", undefined],
  ])("%s", async (said, what, due) => {
    const { followUps } = await heard("The long bed. Leeks here.", said, "Well.");
    expect(followUps.map((one) => [one.what, one.due])).toEqual([[what, due]]);
    expect(followUps[0]).toMatchObject({ number: 1, bed: "long-bed", recorded: false });
  });

  it("is due in the week it names, and by the garden's own order of day and month", async () => {
    const said = [
      "The long bed. Leeks here.",
      "I'll show you them in the last week of October.",
      "I'll weigh them by 9/20.",
    ];
    const garden = "---\nname: Lower Croft\ntime zone: America/New_York\nunits: us\nlanguage: en-US\n---\n";
    const { followUps } = (await wrapOf(said, {}, { "garden.md": garden })).wrap;
    expect(followUps.map(({ due }) => due)).toEqual(["2026-10-31", "2026-09-20"]);
  });

  it("is heard in a run of captions without marks, said with gonna and y'all", async () => {
    const { followUps, questions } = await heard(
      "now here at the long bed",
      "there's twelve musselburgh and they are about four foot tall",
      "i'm gonna show y'all that again when it's taller than me",
      "now over here at the squash bed we've got uchiki kuri",
      "five of em and some weeds in between",
      "and the crown prince has got squash bugs something terrible",
      "next month i'll tell you whether the net did any good",
      "let me know in the comments what y'all do about squash bugs",
    );
    expect(followUps.map(({ what, bed, due }) => [what, bed, due])).toEqual([
      ["show that again when it's taller than me", "long-bed", undefined],
      ["say whether the net did any good", "squash-bed", "2026-07-31"],
    ]);
    expect(questions.map(({ said }) => said)).toEqual(["let me know in the comments what y'all do about squash bugs"]);
  });

  it.each([
    "I'll show you round.",
    "As you'll see, the net is off.",
    "What I will say is water.",
    "I'll see you when I see you.",
    "I said in May I'd show you the leeks.",
    "It'll keep till February.",
    "I'll never know.",
    "We'll begin with the leeks.",
  ])("is not heard in: %s", async (said) => {
    expect((await heard("The long bed. Leeks here.", said)).followUps).toEqual([]);
  });

  it("is about the bed the sentence names, else the one at hand", async () => {
    const { followUps } = await heard(
      "The long bed. Leeks here.",
      "Twelve Musselburgh.",
      "I'll show you the Tomato Pots in July.",
      "Here I'll weigh the leeks in August.",
    );
    expect(followUps.map(({ bed }) => bed)).toEqual(["tomato-pots", "long-bed"]);
  });

  it("names what it points at, and nothing private", async () => {
    const said = ["The long bed.", "Twelve Musselburgh.", "I'll weigh those in October."];
    const what = async (more: Readonly<Record<string, string>>) =>
      (await wrapOf(said, {}, more)).wrap.followUps.map((one) => one.what);
    expect(await what({})).toEqual(["weigh those (Musselburgh) in October"]);
    const hidden = "---\ntitle: Musselburgh\ncrop: leek\nprivate: true\n---\n";
    expect(await what({ "varieties/musselburgh.md": hidden })).toEqual(["weigh those in October"]);
  });

  it("has words that are to be done", () => {
    expect(whatIsPromised("I'll tell you in June which of them flowers first")).toBe(
      "say in June which of them flowers first",
    );
    expect(whatIsPromised("I'll show you this again in July and then you can laugh")).toBe("show this again in July");
    expect(whatIsPromised("I'll get some scales and tell you what they weigh")).toBe(
      "get some scales and say what they weigh",
    );
  });
});

describe("a promise in the record", () => {
  it.each([
    ["When they flower I'm going to pinch them out.", "pinch them out, when they flower"],
    ["Once it rains I'll dig the lot, and you can watch.", "dig the lot and let viewers watch, once it rains"],
    ["We'll lift these after Easter, and I'll take you along.", "lift these after Easter and take viewers along"],
    ["I'll graft this in March, and I'll film it.", "graft this in March and film it"],
    ["In July I'll count the pods.", "count the pods"],
  ])("keeps condition and viewers: %s", (said, what) => {
    expect(whatIsPromised(said)).toBe(what);
  });

  it.each([
    ["I'll weigh those in October.", "weigh those (Red Baron) in October"],
    ["I'll pull one next week and see.", "pull one (Red Baron) next week and see"],
    ["I'll show that bed again.", "show that bed again"],
    ["I'll show the leeks again.", "show the leeks again"],
  ])("names what was pointed at: %s", (said, what) => {
    expect(whatIsPromised(said, ["Red Baron"])).toBe(what);
  });
});

describe("the demo's labelled films", () => {
  it.each([
    ["set on", tuned, 14],
    ["held back", heldBack, 10],
  ])("%s: precision 0.9 and recall 0.85, clean and automatic", async (_, ids, labelled) => {
    const garden = await demoGarden();
    const films = ids.map((id) => labelledFilm(garden, id));
    for (const kind of ["clean", "automatic"] as const) {
      const score = films.map((film) => scorePromises(garden, film, film[kind])).reduce(sum, nothing);
      expect(score.right + score.missed).toBe(labelled);
      expect(precision(score)).toBeGreaterThanOrEqual(0.9);
      expect(recall(score)).toBeGreaterThanOrEqual(0.85);
    }
  });
});

const promise = { what: "show the leeks again in July", bed: "long-bed", due: "2026-07-31", at: 83 };
const added = (record: string) => (acceptPromises(record, [promise]) as Accepted).text;
const lines = '  - what: show the leeks again in July\n    bed: long-bed\n    due: 2026-07-31\n    at: "1:23"\n';

describe("accepting", () => {
  it.each([
    [
      "no list yet",
      "---\ntitle: June\nstops: [a]\n---\nWords.\n",
      `---\ntitle: June\nstops: [a]\npromised:\n${lines}---\nWords.\n`,
    ],
    [
      "a list, comments and an odd layout",
      '---\ntitle:   June # mine\npromised:\n  - what: count them\n    at: "0:10"   # said low\n\n# the rest\nlink: https://films.example/x\n---\n',
      `---\ntitle:   June # mine\npromised:\n  - what: count them\n    at: "0:10"   # said low\n${lines}\n# the rest\nlink: https://films.example/x\n---\n`,
    ],
    ["an empty key", "---\npromised:\ntitle: June\n---\n", `---\npromised:\n${lines}title: June\n---\n`],
    ["empty brackets", "---\npromised: []\ntitle: June\n---\n", `---\npromised:\n${lines}title: June\n---\n`],
    [
      "a list without indent",
      "---\npromised:\n- what: count them\ntitle: June\n---\n",
      `---\npromised:\n- what: count them\n${lines.replace(/^ {2}/gm, "")}title: June\n---\n`,
    ],
  ])("adds to %s and leaves the rest as it is", (_, before, after) => {
    expect(added(before)).toBe(after);
  });

  it("keeps the line ends of Windows and a byte-order mark", () => {
    expect(added("\uFEFF---\r\ntitle: June\r\n---\r\n")).toBe(
      `\uFEFF---\r\ntitle: June\r\npromised:\r\n${lines.replaceAll("\n", "\r\n")}---\r\n`,
    );
  });

  it("quotes words that YAML would read as something else", () => {
    const text = (acceptPromises("---\ntitle: June\n---\n", [{ what: 'say: "no" #1', at: 3661 }]) as Accepted).text;
    const { promised } = parseDocument(text.split("---\n")[1] ?? "").toJS() as {
      promised: { what: string; at: string }[];
    };
    expect(promised).toEqual([{ what: 'say: "no" #1', at: "1:01:01" }]);
  });

  it.each([
    ["no front matter", "# June\n"],
    ["front matter that cannot be read", "---\ntitle: [June\n---\n"],
    ["a list that is none", "---\npromised: soon\n---\n"],
  ])("refuses %s and says so", (_, record) => {
    expect(acceptPromises(record, [promise])).toHaveProperty("refused");
  });

  it("any record keeps all its lines, in order", () => {
    const line = fc.constantFrom(
      "title: June",
      "# a remark",
      "",
      "link: https://films.example/x",
      'stops: [a, {bed: b, at: "1:00"}]',
      "must: [x]",
      "date: 2026-06-14",
    );
    fc.assert(
      fc.property(fc.uniqueArray(line, { maxLength: 6 }), fc.boolean(), (rows, has) => {
        const list = has ? ["promised:", "  - what: count them", "    due: 2026-07-01"] : [];
        const record = `---\n${[...rows, ...list].map((row) => `${row}\n`).join("")}---\n\nWords.\n`;
        const result = added(record).split("\n");
        let at = 0;
        for (const row of record.split("\n")) {
          at = result.indexOf(row, at) + 1;
          expect(at).toBeGreaterThan(0);
        }
      }),
    );
  });
});
