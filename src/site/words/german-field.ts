/** What the private field pages say around their data, in German. No letter ß, as in german.ts. */
import { capital, speechOf } from "../../timeline/index.ts";
import type { FieldWords } from "./english-field.ts";

const { many, list, ageAfter } = speechOf({ language: "de", units: "metric" });

const SEVERITIES = {
  error: ["Fehler", "ein Fehler", "Fehler"],
  warning: ["Warnung", "eine Warnung", "Warnungen"],
  hint: ["Hinweis", "ein Hinweis", "Hinweise"],
} as const;

export const germanField: FieldWords = {
  title: "Arbeitsseiten",
  briefs: "Drehpläne",
  noBrief: "Hier steht der Drehplan der nächsten geplanten Folge.",
  fieldList: "Liste zum Abhaken beim Filmen",
  owed: "Dem Publikum versprochen",
  noneOwed: "Alle Versprechen sind eingelöst.",
  toDo: "Zu tun",
  noneToDo: "Nichts ist mehr zu tun.",
  beds: "Beete",
  cameras: "Kameras",
  sameSpots: "Fotos von denselben Stellen",
  recaps: "Rückblicke",
  recapOf: (name) => `Rückblick ${name}`,
  inRecords: "In den Aufzeichnungen",
  private: "privat",
  privateBed: "privat: dieses Beet sieht das Publikum nie",
  troubles: "Sorgen",
  camera: "Wo die Kamera steht",
  twoMonths: "Die letzten zwei Monate",
  noneNoted: "Hier wurde nichts notiert.",
  notes: "Aus den Notizen",
  viewpoints: "Standpunkte",
  noViewpoint: "Nenne in der Datei eines Beets einen Standpunkt, dann steht hier seine Kameraseite.",
  readNotes: "Notizen, Zeile für Zeile",
  noNotes: "Hier steht eine Seite für jede Notiz.",
  lineByLine: "Zeile für Zeile",
  noLines: "In dieser Notiz steht noch nichts.",
  story: "Erzählung",
  noFact: "Keine Tatsache.",
  openQuestion: "Frage",
  settleIt: "„plotreel settle“ fragt und schreibt die Antwort unter die Zeile.",
  howRead: (facts, questions, stories) => {
    const said = [
      { n: facts, as: "Tatsachen" },
      { n: questions, as: "Fragen" },
      { n: stories, as: "Erzählung" },
    ].filter(({ n }) => n > 0);
    return said.length === 0
      ? "Nichts zu lesen."
      : said.map(({ n, as }) => `${as}: ${many(n, "eine Zeile", "Zeilen")}.`).join(" ");
  },
  openQuestions: (n) =>
    n === 0
      ? ""
      : `${capital(many(n, "eine Zeile ist eine Frage", "Zeilen sind Fragen"))} an dich: „plotreel settle“ stellt sie.`,

  due: {
    today: "Heute fällig.",
    past: (day) => `Überfällig seit ${day}.`,
    coming: (day) => `Fällig am ${day}.`,
  },
  promised: (day, film) => `Versprochen am ${day}${film === undefined ? "" : ` in „${film}“`}.`,
  shade: (shade) => `Schatten: ${shade}`,
  seenOn: (day) => `Gesehen am ${day}.`,
  noPhotoYet: "Noch kein Foto.",
  photoToday: "Heute fotografiert.",
  lastPhotoAgo: (days) => `Letztes Foto vor ${ageAfter(days)}.`,

  nothingToMend: "Nichts auszubessern.",
  severity: (severity) => SEVERITIES[severity][0],
  inAll: (counts) =>
    `${capital(list(counts.map(([severity, n]) => many(n, SEVERITIES[severity][1], SEVERITIES[severity][2]))))} in den Aufzeichnungen.`,
  andMore: (n) => `Und ${many(n, "ein weiterer Eintrag", "weitere")}: „plotreel check“ zählt alle auf.`,

  shot: {
    video: "Das Bild der Kamera",
    taken: "Das eben gemachte Foto",
    last: (day) => `Das letzte Foto ist vom ${day}.`,
    byHand: "Mach das Foto mit der Kamera des Telefons und leg es in den Ordner",
    strength: "Wie stark das letzte Foto durchscheint",
    start: "Kamera starten",
    take: "Foto machen",
    pick: "Kamera des Telefons nehmen",
    keep: "Behalten",
    again: "Noch einmal",
    live: {
      blink: "Abwechselnd zeigen",
      stopBlinking: "Nicht mehr wechseln",
      saved: "Gespeichert als {name}. „plotreel ingest“ legt es an seinen Platz.",
      noCamera: "Die Kamera lässt sich nicht starten. Erlaube sie für diese Seite oder nimm die Kamera des Telefons.",
      turnUpright: "Dreh das Telefon: Das letzte Foto war hochkant.",
      turnLying: "Dreh das Telefon: Das letzte Foto war quer.",
      move: "Beweg dich, bis das letzte Foto über dem Bild liegt.",
      notSaved: "Das Foto lässt sich nicht speichern. Nimm die Kamera des Telefons.",
      notShown: "Dieser Browser kann das Foto nicht zeigen. Behalten kannst du es trotzdem.",
      turns: "Das neue Foto und das letzte wechseln sich ab. Was springt, hat sich bewegt.",
      needsHttps:
        "Das laufende Bild braucht eine https-Adresse oder dieses Gerät selbst. Hier macht die Kamera des Telefons das Foto, und diese Seite hält es gegen das letzte.",
      onPhone: "Diese Seite ist jetzt auf dem Telefon und geht auch ohne Netz.",
      notOnPhone: "Diese Seite liegt noch nicht auf dem Telefon: Öffne sie hier, solange es Netz gibt.",
    },
  },

  own: {
    levels: { must: "Muss", should: "Soll", could: "Kann" },
    leftOut: "Passt nicht in diese Länge",
    readBy: "Zum Lesen der Tabellen",
    losses: "Verluste und Sorgen",
    forecasts: "Aussichten",
    windows: "Zeiträume für das, was noch kommt",
    windowHeads: ["Pflanzung", "Von", "Wahrscheinlich", "Bis"],
    wanted: "Für nächstes Jahr gewünscht",
    draft: (year) => `Ein Entwurf für ${year}`,
    whoGoesWhere: "Wer wohin kommt",
    draftHeads: ["Beet", "Pflanzenarten", "Noch nicht"],
    pinned: (crop) => `${crop} (fest)`,
    notBefore: (crop, year) => `${crop} vor ${year}`,
    seeds: "Saatgutbestellung",
    bySource: "Nach Herkunft",
    seedHeads: ["Sorte", "Von", "Wie", "Eigenes Saatgut", "Zu bedenken"],
    sayIt: "Dazu sagen",
    care: "Vorsicht",
    moreLines: (n) => `und ${many(n, "eine weitere Zeile", "weitere Zeilen")}`,
  },
};
