/** Every kind of change in German, read whole: as a garden diary has it, with nothing that a case or an article could get wrong. */
import { describe, expect, test } from "vitest";
import { grow, type Line, type Said } from "./small-garden.ts";

const gear = { "hazel-arch": { title: "Haselbogen" } };

/** The sentence of the last line, in a garden with some plants in Long Bed. */
function said(kind: Line[1], what: Said, before: readonly Line[] = []): string | undefined {
  const day = "2026-07-10";
  const lines: readonly Line[] = [...before, [day, kind, { bed: "long-bed", ...what }]];
  const garden = grow({ gear, settings: { language: "de" }, lines: [...lines] });
  return garden.changes
    .get("long-bed")
    ?.findLast((change) => change.day === day)
    ?.text.replaceAll("\u00a0", " ");
}

const leeks: Line = [
  "2026-05-30",
  "planted",
  { variety: "musselburgh", bed: "long-bed", count: 24, plantsFrom: "bought" },
];
const squash: Line = ["2026-05-24", "planted", { variety: "crown-prince", bed: "long-bed", count: 11 }];
const tomato: Line = ["2026-05-24", "planted", { variety: "ailsa-craig", bed: "long-bed", count: 1 }];
const beetroot: Line = ["2026-06-12", "sowed", { variety: "boltardy", bed: "long-bed" }];
const sowing: Line = ["2026-04-21", "sowed", { variety: "crown-prince", nursery: true, count: 12 }];
const picked: Line = ["2026-07-01", "picked", { variety: "musselburgh", bed: "long-bed", grams: 100 }];

describe("a change in German", () => {
  test.each<[Line[1], Said, readonly Line[], string]>([
    ["sowed", { variety: "boltardy" }, [], "Rote Bete Boltardy gesät."],
    ["sowed", { variety: "matucana", count: 1 }, [], "Eine Duftwicke Matucana gesät."],
    [
      "sowed",
      { variety: "aquadulce", count: 40, spacingCm: 20, spot: "row 2" },
      [],
      "40 Dicke Bohnen Aquadulce Claudia gesät, 20 cm Abstand, Reihe 2.",
    ],
    [
      "planted",
      { variety: "crown-prince", count: 11, spacingCm: 90 },
      [sowing],
      "Elf Kürbisse Crown Prince ausgepflanzt, 90 cm Abstand, aus der Aussaat vom 21. April.",
    ],
    [
      "planted",
      { variety: "crown-prince", count: { value: 8, upTo: 10, approx: true }, gear: "hazel-arch" },
      [sowing],
      "Acht bis zehn Kürbisse Crown Prince ausgepflanzt, mit Haselbogen, aus der Aussaat vom 21. April.",
    ],
    [
      "planted",
      { variety: "musselburgh", count: 24, plantsFrom: "bought" },
      [],
      "24 Lauch Musselburgh gepflanzt, als Pflanzen gekauft.",
    ],
    [
      "planted",
      { variety: "musselburgh", count: 1, plantsFrom: "given" },
      [],
      "Ein Lauch Musselburgh gepflanzt, geschenkt.",
    ],
    ["up", { variety: "boltardy" }, [beetroot], "Rote Bete Boltardy aufgelaufen, vier Wochen nach der Aussaat."],
    ["potted on", { variety: "musselburgh", verb: "potted on" }, [leeks], "Lauch Musselburgh umgetopft."],
    ["potted on", { variety: "musselburgh", verb: "pricked out" }, [leeks], "Lauch Musselburgh pikiert."],
    ["thinned", { variety: "boltardy", count: 20 }, [beetroot], "Rote Bete Boltardy ausgedünnt auf 20 Pflanzen."],
    ["thinned", { variety: "boltardy", spacingCm: 10 }, [beetroot], "Rote Bete Boltardy ausgedünnt, 10 cm Abstand."],
    [
      "flowered",
      { variety: "crown-prince", verb: "first female flower" },
      [squash],
      "Erste weibliche Blüte: Kürbisse Crown Prince.",
    ],
    ["flowered", { variety: "ailsa-craig", verb: "in flower" }, [tomato], "In Blüte: Tomate Ailsa Craig."],
    ["fruited", { variety: "ailsa-craig", verb: "first truss" }, [tomato], "Erste Rispe: Tomate Ailsa Craig."],
    ["fruited", { variety: "crown-prince", verb: "set fruit" }, [squash], "Fruchtansatz: Kürbisse Crown Prince."],
    [
      "measured",
      { variety: "crown-prince", heightCm: 240, text: "2.4 m long" },
      [squash],
      "Kürbisse Crown Prince: 2,4 m lang.",
    ],
    ["measured", { variety: "crown-prince", grams: 4200 }, [squash], "Kürbisse Crown Prince: 4,2 kg schwer."],
    [
      "picked",
      { verb: "picked", variety: "musselburgh", grams: 1400 },
      [leeks],
      "Erste Ernte: 1,4 kg Lauch Musselburgh.",
    ],
    [
      "picked",
      { verb: "picked", variety: "musselburgh", grams: 1400 },
      [leeks, picked],
      "1,4 kg Lauch Musselburgh geerntet.",
    ],
    [
      "picked",
      { verb: "cut", variety: "musselburgh", count: 3, unit: "bunch" },
      [leeks, picked],
      "Drei Bund Lauch Musselburgh geschnitten.",
    ],
    [
      "picked",
      { verb: "dug up", variety: "musselburgh", count: 1, grams: 300 },
      [leeks, picked],
      "Ein Lauch Musselburgh geerntet, 300 g.",
    ],
    ["picked", { verb: "picked", variety: "musselburgh" }, [leeks, picked], "Lauch Musselburgh geerntet."],
    ["saved seed", { variety: "musselburgh", grams: 30 }, [leeks], "30 g Saatgut gewonnen: Lauch Musselburgh."],
    [
      "lost",
      { variety: "musselburgh", count: 3, cause: "Lauchmotte" },
      [leeks],
      "Drei Lauch Musselburgh verloren, Ursache: Lauchmotte.",
    ],
    ["lost", { variety: "ailsa-craig", count: 1 }, [tomato], "Eine Tomate Ailsa Craig verloren."],
    ["gave away", { variety: "musselburgh", count: 4 }, [leeks], "Vier Lauch Musselburgh verschenkt."],
    ["cleared", { variety: "crown-prince" }, [squash], "Kürbisse Crown Prince geräumt."],
    ["cleared", {}, [squash], "Long Bed geräumt."],
    [
      "moved",
      { variety: "musselburgh", count: 5, toBed: "bean-row" },
      [leeks],
      "Fünf Lauch Musselburgh umgesetzt, neuer Platz: Bean Row.",
    ],
    [
      "did",
      { variety: "musselburgh", verb: "watered", what: "watered Musselburgh" },
      [leeks],
      "Gegossen: Lauch Musselburgh.",
    ],
    [
      "did",
      { crop: "leek", verb: "watered", what: "watered alles, vier Kannen" },
      [leeks],
      "Gegossen: alles, vier Kannen.",
    ],
    ["did", { verb: "did", what: "neue Bretter am Weg" }, [leeks], "Neue Bretter am Weg."],
    ["did", { verb: "weeded", what: "weeded Long Bed" }, [], "Gejätet: Long Bed."],
    [
      "trouble",
      { variety: "musselburgh", cause: "Lauchmotte", detail: "Gänge in jungen Blättern" },
      [leeks],
      "Lauchmotte: Lauch Musselburgh, Gänge in jungen Blättern.",
    ],
    ["trouble", { cause: "Schnecken" }, [], "Schnecken: Long Bed."],
    ["put up", { gear: "hazel-arch" }, [], "Haselbogen aufgebaut."],
    ["soil test", { ph: 6.4 }, [], "Bodenprobe: pH 6,4."],
    [
      "promised",
      { what: "den Lauch im Juli wieder zeigen" },
      [leeks],
      "Dem Publikum versprochen: den Lauch im Juli wieder zeigen.",
    ],
    ["asked", { what: "welche Sorte ist das?" }, [leeks], "Gefragt wurde: welche Sorte ist das?"],
  ])("%s %o", (kind, what, before, text) => expect(said(kind, what, before)).toBe(text));

  test("says what grew since it was last measured", () => {
    const before: Line = ["2026-06-20", "measured", { variety: "crown-prince", bed: "long-bed", heightCm: 30 }];
    expect(said("measured", { variety: "crown-prince", heightCm: 42 }, [squash, before])).toBe(
      "Kürbisse Crown Prince: 42 cm hoch, 12 cm mehr als am 20. Juni.",
    );
  });
});
