/** What the style page says, in German. No letter ß, as in german.ts. */
import type { LookWords } from "./english-looks.ts";

export const germanLooks: LookWords = {
  description: "Woraus das Aussehen dieser Seiten besteht, und warum.",
  idea: [
    "Ein Pflanzenschild, in die Erde gesteckt: Zinkgrau, Bleistiftschwarz, viel Weiss und eine einzige Blütenfarbe, nur für Neues und, auf Arbeitsseiten, für Fragen. Die Fotos tragen die Seite; alles andere bleibt still daneben.",
    "Gelesen wird das alles draussen: auf dem Telefon in der prallen Sonne, mit nassen Händen oder auf einem Blatt Papier in der Tasche. Darum sind die Buchstaben gross und die Zeilen wenige, Text hebt sich im Verhältnis 7 zu 1 oder mehr von seinem Grund ab, nichts sagt nur eine Farbe, und kein Zeichen muss gelernt werden.",
    "Farben, Schriftgrössen und Abstände stehen in src/site/styles/tokens.css und nirgends sonst: Ein Test schlägt an, wenn anderswo einer steht. Was hier folgt, besteht aus den Teilen aller Seiten, mit den Aufzeichnungen dieses Gartens.",
  ],
  letters: "Schrift",
  lettersWhy:
    "Eine Familie, Alegreya Sans, in zwei Stärken und einer Schräge: Sie behält den Strich der Feder, wie die Schrift auf einem Schild. Namen sind am grössten, denn ihretwegen kommen die Leute. Die Schriftdateien liegen bei den Seiten, niemand sonst wird danach gefragt; bis sie da sind, stehen die eigenen Buchstaben des Geräts gleich breit und gleich hoch an ihrer Stelle, damit sich nichts verschiebt.",
  colours: "Farben",
  coloursWhy:
    "Zink ist für Schilder, Stäbe, Kanten und Linien, Bleistift für alles Geschriebene. Text erreicht auf seinem Grund 7 zu 1, Kanten von allem, was man drücken kann, 3 zu 1, so wie WCAG 2.2 es berechnet; die Zahlen kommen jedes Mal aus dem Stylesheet, wenn diese Seiten entstehen.",
  schemes: {
    light: "Bei Tag",
    dark: "Bei Nacht",
    field: "Arbeitsseiten bei Tag",
    fieldDark: "Arbeitsseiten bei Nacht",
  },
  pair: (on, ground) => `${on} auf ${ground}`,
  contrast: (ratio, least) => `${ratio} zu 1; verlangt ${least}`,
  distances: "Abstände",
  distancesWhy:
    "Was zusammengehört, steht beisammen: ein kleiner Schritt innerhalb einer Sache, ein grosser zwischen den Sachen. Ein Schritt, der zwischen den Teilen einer Seite, wächst mit dem Bildschirm.",
  label: "Schild und Stab",
  labelWhy:
    "Der Name der Seite steht auf einem Zinkschild. Folgt ein Foto, so geht der Stab hinein; gehören Zeilen zum Namen, so stehen sie am Stab entlang: was es ist, wie es gelang, woher es kam, alles im ersten Bild eines Telefons.",
  list: "Liste",
  listWhy:
    "Ein Name je Zeile, so gross wie eine Überschrift, und darunter in leisen Buchstaben, was die Liste weiss. Neu sagt ein Wort; die Farbe hilft nur. In alles, was länger als drei Bildschirme ist, führen Buchstaben.",
  controls: "Bedienung",
  controlsWhy:
    "Eckig, mit Kante und nie niedriger, als ein Daumen im Handschuh es braucht. Ein Kreuz, wie man es mit dem Bleistift macht, sagt, dass etwas gewählt ist.",
  photo: "Foto",
  photoWhy:
    "So gross wie möglich, und nichts liegt darüber als sein eigenes Schild. Darunter stehen Ort und Tag, dann was jemand dazu schrieb, dann wer es aufnahm.",
  comparison: "Vergleich",
  comparisonWhy:
    "Dieselbe Stelle an zwei Tagen unter einem Stab. Der Regler ist der des Browsers, also bewegen ihn Tasten, Finger und Vorleseprogramme; ohne Skripte stehen zwei Bilder nebeneinander.",
  chart: "Kurve",
  chartWhy:
    "Mit Bleistift gezeichnet: kräftig, worum es geht, leicht und gestrichelt, was dahinter steht, die Namen an den Linien und keine Legende. Ein Satz sagt, was zu sehen ist, und dieselben Zahlen stehen dahinter als Tabelle.",
  days: "Tage",
  daysWhy:
    "Das Jahr eines Beets an seinem Stab entlang, das Neueste zuerst. Ältere Tage sind eingeklappt; eine Seite, die man am Zaun öffnet, soll nicht lang sein.",
  reading: "Zeilen und Lesarten",
  readingWhy:
    "Was jemand geschrieben hat, bleibt, wie es ist; daneben steht in kräftigeren Buchstaben, was daraus gelesen wird. Erzählung bleibt still. Eine Frage sagt das mit einem Wort in der Blütenfarbe und zeigt ihre Lesarten.",
  empty: "Leere Stellen",
  emptyWhy: "Eine Stelle, an der nichts steht, sagt, was dort stehen wird und was es dorthin bringt.",
  mark: "Das Zeichen privater Seiten",
  markWhy:
    "Ein gelbes Band bleibt oben, das Papier ist Manila, und das Wort selbst läuft am linken Rand von oben bis unten: Welcher Teil einer Arbeitsseite auch fotografiert oder ausgeschnitten wird, er sagt, dass er privat ist.",
  paper: "Papier",
  paperWhy:
    "Auf Papier ist alles schwarz, was man drücken kann, fehlt, und die Adresse der Seite kommt dazu. Aus der Sortenliste wird ein Handzettel: zwei Spalten, zwei Blätter für einen Garten mit hundert Sorten.",
  motion: "Bewegung",
  motionWhy:
    "Nichts bewegt sich von selbst. Von Seite zu Seite darf der Browser überblenden; wer sein Gerät um weniger Bewegung gebeten hat, sieht auch das nicht.",
  none: "Sobald der Garten eines hat, steht es hier.",
};
