/** Before you film: what is missing, doubtful or overdue; what must be said; what needs care; what stays private. */
import { describe, expect, test } from "vitest";
import { makeBrief } from "../../src/tour/index.ts";
import { dossierOf, type Files, gardenOf, photoOf } from "./garden-of.ts";

const files: Files = {
  "beds/cold-frame.md": "---\ntitle: Cold Frame\nin use since: 2025-01-01\n---\n",
  "beds/tunnel-north.md": "---\ntitle: Tunnel North\nin use since: 2025-01-01\n---\n",
  "varieties/boltardy.md": "---\ntitle: Boltardy\ncrop: beetroot\nsource: Drift Lane Seeds\n---\n",
  "varieties/nero-di-toscana.md": "---\ntitle: Nero di Toscana\ncrop: kale\nsource: Pebble & Pod\n---\n",
  "varieties/white-volunteer.md": "---\ntitle: White Volunteer\ncrop: courgette\n---\n",
  "varieties/timperley-early.md":
    "---\ntitle: Timperley Early\ncrop: rhubarb\nperennial: true\nsource: {name: Old Ropewalk Nursery, obtained: gifted}\n---\n",
  "varieties/matucana.md":
    "---\ntitle: Matucana\ncrop: sweet pea\nsource: own seed\ncaution: the seeds are poisonous\n---\n",
  "gear/fine-mesh.md": "---\ntitle: Fine mesh\nobtained: given by a seller\nfrom: the maker\n---\n",
  "trials/mesh.md":
    "---\ntitle: Mesh or none\nquestion: Does mesh keep the beetroot clean?\narms: [{name: mesh, bed: cold-frame}, {name: no mesh, bed: cold-frame}]\nmeasure: marks\nstatus: running\nstarted: 2026-04-01\nverdict due: 2026-06-01\n---\n",
  "notes/2026-03-01.md": `---
bed: cold-frame
---

- planted 2 Timperley Early
- sowed 20 Boltardy
- sowed 5 Matucana
- put up fine mesh
`,
  "notes/2026-05-01.md": `---
bed: cold-frame
---

The label in Cold Frame says Detroit. These look like Boltardy to me. Rain all day.

- planted 3 White Volunteer by the door
- planted 4 Nero di Toscana in Tunnel North
- planted 6 lettuces in Tunnel North
- to do by 15 June: net the kale
- asked: which variety is the red lettuce?
- did: sprayed with soap, all of it
`,
  "episodes/june/index.md":
    "---\ntitle: June tour\ndate: 2026-06-19\nstatus: planned\ntarget: 1 min\nstops: [cold-frame, tunnel-north]\nmust: [Boltardy, Golden Ball]\n---\n",
};

const photos = [photoOf("photos/cold-frame/a.jpg", "2026-06-03", "cold-frame")];
const garden = await gardenOf(files, "2026-06-19", photos);
const brief = makeBrief(garden, { episode: "june", today: "2026-06-19" });
const [frame] = brief.stops;

test("checks, each with its place", () => {
  expect(brief.checks.map(({ kind, text }) => [kind, text])).toEqual([
    [
      "target",
      "What must be shown, six things, takes 62 seconds more than the film should last. All of it was kept; lengthen the film or skip something.",
    ],
    ["must", "You marked “Golden Ball” as a must, and no stop shows it."],
    ["source", "Where did the White Volunteer courgettes by the door in the cold frame come from?"],
    ["say it as", "How is Nero di Toscana said?"],
    ["unnamed", "Which variety are the lettuces on the tunnel's north side?"],
    // The line "- The label in Cold Frame says Detroit" is read as a question.
    ["unread", "One line of your notes about these stops is still a question; “plotreel settle” asks."],
    ["task", "Due since Monday: net the kale."],
    ["doubt", "A doubt in your notes on 1 May: “The label in Cold Frame says Detroit.”"],
    ["doubt", "A doubt in your notes on 1 May: “These look like Boltardy to me.”"],
    ["photo", "No photo of the cold frame for 16 days."],
    ["photo", "No photo yet of the tunnel's north side."],
    ["trial", "Mesh or none: the verdict was due on 1 June."],
  ]);
  expect(brief.checks.find(({ kind }) => kind === "source")?.sources[0]?.file).toBe("varieties/white-volunteer.md");
});

test("what the person marked must is must, whatever it is", () => {
  expect(frame?.show.filter(({ level }) => level === "must").some(({ text }) => text.includes("Boltardy"))).toBe(true);
});

test("care and disclosure are short and defer", () => {
  expect(frame?.cautions.map(({ text }) => text)).toEqual([
    "Matucana: the seeds are poisonous.",
    "Only rhubarb stalks are eaten: the leaves are poisonous, cooked too, and frozen stalks are suspect; call a poison centre if eaten.",
    "Sweet peas are not garden peas: their pods and seeds are poisonous; call a poison centre if eaten.",
    "Name the product, follow its label (days to harvest, bees, pond, gloves), and use only what is allowed where you are. Some are only for people licensed for them.",
    "A home-made spray is a pesticide too: in Britain it isn't legal, elsewhere it may scorch plants and skin; label the bottle, keep it from children. Ask your regulator.",
  ]);
  expect(frame?.disclosures.map(({ text }) => text)).toEqual([
    // Nobody said whether the nursery gave it as a seller: it is asked about, and not named.
    "Timperley Early came free: say so when you show it.",
    "The fine mesh came free from the maker: say so when you show it.",
  ]);
});

test("a viewer's question is shown where it was asked", () => {
  const whole = makeBrief(garden, { day: "2026-06-19", today: "2026-06-19" });
  expect(whole.stops.flatMap(({ show }) => show).map(({ text }) => text)).toContain(
    "A viewer asks: “which variety is the red lettuce?”",
  );
});

describe("private things", () => {
  const secret: Files = {
    ...files,
    "varieties/secret.md": "---\ntitle: Trial Forty\ncrop: tomato\nsource: X\nprivate: true\n---\n",
    "notes/2026-06-10.md":
      "---\nbed: tunnel-north\nprivate: true\n---\n\n- planted 3 Trial Forty\n- promised: show the thief\n- to do: find the thief\n",
  };

  test("are known to the brief and never offered to be said", async () => {
    const told = makeBrief(await gardenOf(secret, "2026-06-19"), { episode: "june", today: "2026-06-19" });
    const tunnel = told.stops[1];
    const said = [...told.opening, ...(tunnel?.show ?? [])].map(({ text }) => text).join(" ");
    expect(said).not.toMatch(/Trial Forty|thief/);
    expect(tunnel?.varieties.find(({ title }) => title === "Trial Forty")?.private).toBe(true);
    expect(told.followUps.find(({ what }) => what === "show the thief")?.private).toBe(true);
    const markdown = dossierOf(told, garden);
    for (const line of markdown.split("\n").filter((each) => /Trial Forty|thief/i.test(each))) {
      expect(line).toMatch(/private/);
    }
  });
});
