/** The sentences that page data is said in, in German. What a person wrote stands in brackets or after a colon, so that it needs no case. */
import type { Obtained, Stage } from "../../model.ts";
import { capital, fullStop, germanPieces, type PieceWords, speechOf } from "../../timeline/index.ts";
import type { Disclosure, Sentences } from "./english-sentences.ts";

const {
  number,
  many,
  list,
  count: sayCount,
  ordinal,
  age,
  ageAfter,
  ageLong,
} = speechOf({
  language: "de",
  units: "metric",
});

/** Among weights a bunch is a measure ("drei Bund"), beside them a thing. */
const UNITS: PieceWords = { ...germanPieces, bunch: ["ein Bund", "Bunde"] };

const COMPASS = [
  ...["nach Norden", "nach Nordosten", "nach Osten", "nach Südosten"],
  ...["nach Süden", "nach Südwesten", "nach Westen", "nach Nordwesten"],
];

/** Words that say a doing take the year at once, others after a comma. */
function doing(words: string, mustSay: boolean): Disclosure {
  return { words, mustSay, in: (year) => `${year} ${words}`, by: (giver) => `${giver}, ${words}` };
}

function fact(words: string, mustSay: boolean): Disclosure {
  return { words, mustSay, in: (year) => `${year}, ${words}`, by: (giver) => `${giver}, ${words}` };
}

const DISCLOSURES: Readonly<Record<Obtained, Disclosure>> = {
  bought: doing("gekauft", false),
  swapped: doing("getauscht", false),
  saved: fact("eigenes Saatgut", false),
  gifted: doing("kostenlos erhalten", true),
  lent: doing("kostenlos geliehen", true),
  "paid promotion": fact("bezahlte Werbung", true),
  "commission link": fact("Werbelink: Bei einem Kauf verdient dieser Garten mit", true),
  "own product": fact("eigenes Produkt", true),
};

const STANDING: Readonly<Record<Stage, (since: string) => string>> = {
  sown: () => "",
  up: (since) => `Aufgelaufen am ${since}.`,
  growing: () => "",
  flowering: (since) => `In Blüte seit dem ${since}.`,
  fruiting: (since) => `Mit Fruchtansatz seit dem ${since}.`,
  picking: (since) => `In Ernte seit dem ${since}.`,
  finished: (since) => `Vorbei seit dem ${since}.`,
  lost: (since) => `Verloren am ${since}.`,
};

/** The spots that notes name in English words; all others stay as they are written. */
function spotIn(spot: string): string {
  return spot.replace(/^rows?\b/iu, (word) => (word.toLowerCase() === "row" ? "Reihe" : "Reihen"));
}

function once(n: number): string {
  return n === 1 ? "einmal" : `${number(n)}-mal`;
}

const inYear = (n: number) => (n <= 12 ? `im ${ordinal(n)}n Jahr` : `im ${ordinal(n)} Jahr`);

export const germanSentences: Sentences = {
  pieces: (n, unit) => many(n, ...UNITS[unit]),

  planting: {
    beginning({ count, spot, sown, planted, plantsFrom, asPlants, from, selfSown, yearOfLife, noted }) {
      const place = spot === undefined ? "" : ` (${spotIn(spot)})`;
      const one = count?.value === 1 && count.upTo === undefined;
      const plants =
        count === undefined
          ? ""
          : `${one ? `${count.approx ? "Etwa eine" : "Eine"} Pflanze` : `${capital(sayCount(count))} Pflanzen`}${place}`;
      const told = (text: string) => (plants === "" ? `${capital(text)}.` : `${plants}, ${text}.`);
      if (yearOfLife !== undefined) return told(`${inYear(yearOfLife)} hier`);
      const when = [
        sown === undefined ? undefined : `gesät am ${sown}`,
        planted === undefined ? undefined : `${sown === undefined ? "" : "aus"}gepflanzt am ${planted}`,
      ].filter((part) => part !== undefined);
      if (selfSown === true) return told(`von selbst aufgegangen, zuerst notiert am ${noted}`);
      if (when.length === 0) return told(`zuerst notiert am ${noted}`);
      const source = from === undefined ? "" : ` (Herkunft: ${from})`;
      const came =
        plantsFrom === undefined
          ? ""
          : `${asPlants === false ? "" : `als ${one ? "Pflanze" : "Pflanzen"} `}${plantsFrom === "bought" ? "gekauft" : "geschenkt"} und `;
      return told(`${came}${when.join(" und ")}${plants === "" ? place : ""}${source}`);
    },
    standing: (stage, since) => STANDING[stage](since),
    takenToBeOver: (since) => `Seit dem ${since} als vorbei angenommen.`,
    lastPicked: (day) => `Zuletzt geerntet am ${day}.`,
    measured: (length, day) => `Gemessen am ${day}: ${length}.`,
    picked: (amount, goesOn) => `${goesOn ? "Bisher" : "Insgesamt"} ${amount} geerntet.`,
    pickedTimes: (n) => `${capital(once(n))} geerntet.`,
    lost: (n) => `${capital(many(n, "eine Pflanze", "Pflanzen"))} verloren.`,
  },

  result: {
    picked: (amount, first, n) =>
      amount === ""
        ? `${capital(once(n))} geerntet, ${n === 1 ? "am" : "seit dem"} ${first}.`
        : n === 1
          ? `Am ${first} ${amount} geerntet.`
          : `In diesem Jahr bisher ${amount} geerntet, seit dem ${first}.`,
    flowering: (bed, since) => `In Blüte seit dem ${since}. Beet: ${bed}.`,
    fruiting: (bed, since) => `Mit Fruchtansatz seit dem ${since}, noch nichts geerntet. Beet: ${bed}.`,
    sown: (bed, day) => `Gesät am ${day}, noch nicht aufgelaufen. Beet: ${bed}.`,
    standing: (bed, days) => `Steht seit ${ageAfter(days)}. Beet: ${bed}.`,
    growing: (beds, since) => `Wächst seit dem ${since}. ${beds.length === 1 ? "Beet" : "Beete"}: ${list(beds)}.`,
    waiting: (sown) => `Gesät am ${sown}, noch nicht ausgepflanzt.`,
    never: "Hier noch nicht angebaut.",
    last(year, amount, wasLost) {
      const when = year === undefined ? "Früher in diesem Jahr" : `Zuletzt im Jahr ${year}`;
      if (wasLost && amount === "") return `${when} angebaut und verloren.`;
      return `${when} angebaut${amount === "" ? "" : `: ${amount} geerntet`}.`;
    },
  },

  where: {
    waiting: "Gesät, noch nicht ausgepflanzt",
    never: "Noch nicht angebaut",
    over: "Für dieses Jahr vorbei",
    last: (year) => `Zuletzt ${year} angebaut`,
  },
  alsoWritten: (spellings) => `Auch geschrieben: ${list(spellings, "or")}.`,

  bed: {
    unnamed: "Ohne Namen",
    noLongerUsed: "Nicht mehr in Gebrauch.",
    empty: "Zurzeit leer.",
    more: (n) => many(n, "eine weitere", "weitere"),
    size: (length, width) => `${length} mal ${width}`,
    facing: (degrees) => `${COMPASS[Math.round(degrees / 45) % 8]} ausgerichtet`,
    inUseSince: (when) => `In Gebrauch seit ${when}.`,
    built: (what, when) => `Gebaut: ${what}${when === undefined ? "" : `, ${when}`}.`,
    filled: (what, when) => `Gefüllt: ${what}${when === undefined ? "" : `, ${when}`}.`,
    soil: (soil) => fullStop(`Boden: ${soil}`),
    ph: (ph, day) => `Boden-pH ${ph}, gemessen am ${day}.`,
    standing: (gear) => `Darin steht: ${list(gear)}.`,
  },

  age: {
    of: (plants, how) => `${plants}: ${how}`,
    planted: (days) => (days === 0 ? "am Tag der Pflanzung" : `${ageLong(days)} nach der Pflanzung`),
    sown: (days) => (days === 0 ? "am Tag der Aussaat" : `${ageLong(days)} nach der Aussaat`),
    noted: (days) => (days === 0 ? "an diesem Tag zuerst notiert" : `${ageLong(days)} vorher zuerst notiert`),
    inYear: (year) => `${inYear(year)} hier`,
    otherCrops: (n) => `und ${number(n)} weitere Pflanzenarten`,
  },

  green: {
    went: (from, to, of) => `${of === "bed" ? "Bedeckung" : "Grün im Foto"}: von ${from} auf ${to}`,
    stayed: (at, of) => `${of === "bed" ? "Bedeckung" : "Grün im Foto"}: unverändert bei etwa ${at}`,
    between: (said, from, to) => `${said}, vom ${from} bis zum ${to}.`,
    highest: (day, share) => `Am höchsten am ${day}: ${share}.`,
    title: (bed, of, spot) =>
      `${bed}: ${of === "photo" ? "wie grün das Foto ist" : "wie viel davon grün ist"}${spot === undefined ? "" : `, Standpunkt „${capital(spot)}“`}`,
    method: (spot, of) =>
      of === "bed"
        ? `Gemessen in den Fotos vom Standpunkt „${capital(spot)}“: wie viel vom Beet grüne Blätter bedecken. Blüten, reife Früchte und rote Blätter zählen nicht.`
        : `Gemessen in den Fotos vom Standpunkt „${capital(spot)}“: wie viel vom Foto grün ist.`,
    heads: (of) => ["Tag", of === "bed" ? "Bedeckung" : "Grün", "Änderung je Woche"],
    points: (n) => many(n, "ein Prozentpunkt", "Prozentpunkte"),
  },

  change: {
    none: "keine Änderung",
    more: (amount) => `${amount} mehr`,
    less: (amount) => `${amount} weniger`,
  },

  heights: {
    title: "Gemessene Höhe oder Länge",
    withRule: "Mit dem Meterstab gemessen.",
    offPhotos:
      "Offene Punkte sind aus Fotos abgelesen, an einem Stab bekannter Länge; der Strich zeigt, wie sicher sie sind.",
    heads: (several) => ["Tag", ...(several ? ["Was"] : []), "Höhe oder Länge", "Änderung je Woche"],
    giveOrTake: (length, unsure) => `${length}, plus oder minus ${unsure}`,
    on: (what, length, day) => `${what}: ${length} am ${day}.`,
    fromTo: (what, from, on, to, until) => `${what}: ${from} am ${on}, ${to} am ${until}.`,
    planted: (day) => `gepflanzt ${day}`,
    sown: (day) => `gesät ${day}`,
    noted: (day) => `notiert ${day}`,
  },

  compared: {
    spot: (viewpoint) => `Vom Standpunkt „${capital(viewpoint)}“`,
    apart: (days) => `Abstand: ${age(days)}.`,
    method: "Beide zeigen den Ausschnitt, den alle Fotos dieser Stelle gemeinsam haben; ihr Licht ist angeglichen.",
    longMethod:
      "Die Fotos einer Stelle liegen übereinander und zeigen nur, was auf allen zu sehen ist; keines ist künstlich gedehnt. Helligkeit und Farbstimmung sind für den Vergleich angeglichen, und zwar an dem, was keine Pflanze ist: Boden, Bretter, Mauern und Wege. Fotos, die nicht über die anderen passen, fehlen.",
    now: "heute",
    tour: (day, until) => `Der Rundgang vom ${day} und ${until}`,
    sameWeek: (years, until) =>
      `Dieselbe Woche ${years === 1 ? "im Vorjahr" : `vor ${number(years)} Jahren`} und ${until}`,
    span: (from, to) => `${from} bis ${to}`,
  },

  photo: {
    garden: "Der Garten",
    from: (what, viewpoint) => `${what}, Standpunkt „${capital(viewpoint)}“`,
    in: (plants, bed) => `${plants}, Beet: ${bed}`,
    nth: (n) => `${ordinal(n)}${n <= 12 ? "s" : ""} Foto`,
  },

  film: {
    on: (day) => `Gefilmt am ${day}`,
    walk: (beds) => `Stationen: ${list(beds)}.`,
    moreBeds: (n) => many(n, "ein weiteres Beet", "weitere Beete"),
    feed: (garden) => `${garden}: Filme und Gartenjahre.`,
  },

  source: {
    none: "Herkunft nicht notiert",
    disclosures: DISCLOSURES,
  },

  csv: {
    heads: [
      "Sorte",
      "Pflanzenart",
      "Familie",
      "botanischer Name",
      "Aussprache",
      "Herkunft",
      "wie erhalten",
      "Jahr der Herkunft",
      "Link",
      "jetzt in",
      "neu in diesem Jahr",
      "in diesem Jahr geerntet",
      "Seite",
    ],
    yes: "ja",
  },
};
