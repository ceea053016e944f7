/**
 * The sentences of a recap in German. As in the other German tables, what a person wrote stands after a colon or in brackets,
 * so that it needs no case, and names of beds and plants stand without articles.
 */
import type { Day, GardenSettings } from "../../model.ts";
import { capital, fullStop, germanPieces, type Speech, speechOf } from "../../timeline/index.ts";
import { type HarvestSum, isUnnamed, sayHarvestIn } from "../../tour/index.ts";
import type { RecapWords } from "./english.ts";
import type { HeatFacts, Plants } from "./facts.ts";

const { number, many, list } = speechOf({ language: "de", units: "metric" });

/** Families as they are called after "nach den letzten", and what builds up in the soil: the twin of the table of rotation rules. */
const families: Readonly<Record<string, { readonly name: string; readonly after: string; readonly reason: string }>> = {
  Brassicaceae: {
    name: "Kohlgewächse",
    after: "Kohlgewächsen",
    reason: "Kohlhernie und Kohlfliege reichern sich im Boden an",
  },
  Solanaceae: {
    name: "Nachtschattengewächse",
    after: "Nachtschattengewächsen",
    reason: "Kartoffelzystennematoden und Verticillium-Welke bleiben im Boden",
  },
  Amaryllidaceae: {
    name: "Zwiebelgewächse",
    after: "Zwiebelgewächsen",
    reason: "die Mehlkrankheit der Zwiebeln bleibt im Boden",
  },
  Apiaceae: {
    name: "Doldenblütler",
    after: "Doldenblütlern",
    reason: "die Möhrenfliege überwintert im Boden, und der Wurzelkrebs der Pastinaken bleibt dort",
  },
  Fabaceae: { name: "Hülsenfrüchte", after: "Hülsenfrüchten", reason: "Wurzelfäulen reichern sich im Boden an" },
  Cucurbitaceae: {
    name: "Kürbisgewächse",
    after: "Kürbisgewächsen",
    reason: "Wurzelfäulen und Welken reichern sich im Boden an",
  },
  Amaranthaceae: {
    name: "Rübengewächse",
    after: "Rübengewächsen",
    reason: "Rübenzystennematoden und Blattflecken überdauern im Boden",
  },
  Asteraceae: {
    name: "Korbblütler",
    after: "Korbblütlern",
    reason: "Wurzelläuse und Stängelfäule überdauern im Boden",
  },
};

/** Diseases of the soil and what is advised, by their name in the table: the same advice, no more and no less. */
const diseases: Readonly<Record<string, { readonly name: string; readonly advice: string }>> = {
  clubroot: {
    name: "Kohlhernie",
    advice:
      "Die ganze Kohlfamilie sieben Jahre oder länger von diesem Boden fernhalten, auch Senf und Radieschen, und die Erde nicht an Stiefeln oder Werkzeug weitertragen; Kalk bis etwa pH 7,2 hält sie nieder und tötet sie nicht.",
  },
  "onion white rot": {
    name: "Mehlkrankheit der Zwiebeln",
    advice: "Zwiebeln, Lauch und Knoblauch acht Jahre oder länger von diesem Boden fernhalten.",
  },
  "potato eelworm": {
    name: "Kartoffelzystennematoden",
    advice: "Kartoffeln und Tomaten sechs Jahre von diesem Boden fernhalten und widerstandsfähige Sorten suchen.",
  },
};

/** In the order of the table of what comes through the air. */
const throughTheAir = [
  () => "Echter Mehltau kommt durch die Luft, ein anderes Beet hilft also nicht dagegen.",
  () =>
    "Kraut- und Braunfäule kommt durch die Luft, ein anderes Beet hilft also nicht dagegen; alte Knollen und Früchte entfernen, denn mit ihnen überdauert sie.",
  (causes: readonly string[]) =>
    `${capital(list(causes))}: Das kommt geflogen, ein Netz zur rechten Zeit hilft mehr als ein anderes Beet.`,
];

const millimetresPerInch = 25.4;
const alike = 2;
const noNews = 0.04;

const days = (n: number) => many(n, "ein Tag", "Tage");
const daysAfter = (n: number) => many(n, "einem Tag", "Tagen");
const plantsOf = (n: number) => many(n, "eine Pflanze", "Pflanzen");
const pickings = (n: number) => many(n, "einer Ernte", "Ernten");

function nameOf({ variety, crop }: Plants, speech: Speech, count?: number): string {
  return crop !== undefined && isUnnamed({ variety, crop })
    ? speech.crop(crop, count)
    : speech.variety(variety, crop, count);
}

function harvest(sum: HarvestSum, settings: GardenSettings): string | undefined {
  const { weight, volume } = speechOf(settings);
  return sayHarvestIn(sum, { weight, volume, list, pieces: (n, unit) => many(n, ...germanPieces[unit]) });
}

function rainIn(millimetres: number, settings: GardenSettings): string {
  const { digits, units } = speechOf(settings);
  if (units === "us") return `${digits(Math.round((millimetres / millimetresPerInch) * 10) / 10)} Zoll`;
  return `${digits(millimetres < 10 ? millimetres : Math.round(millimetres))} mm`;
}

function heatIn(degreeDays: number, settings: GardenSettings): string {
  const { digits, units } = speechOf(settings);
  return digits(Math.round(units === "us" ? degreeDays * 1.8 : degreeDays));
}

/** ", sechs Tage nach dem üblichen Tag" */
function againstUsual(apart: number | undefined): string {
  if (apart === undefined) return "";
  if (apart === 0) return ", dem üblichen Tag";
  return `, ${many(Math.abs(apart), "einen Tag", "Tage")} ${apart > 0 ? "nach" : "vor"} dem üblichen Tag`;
}

function heatApart({ heat, lastYear = 0, daysAhead }: HeatFacts): string {
  if (daysAhead === undefined)
    return heat > lastYear ? "mehr als im Vorjahr bis dahin" : "weniger als im Vorjahr bis dahin";
  if (Math.abs(daysAhead) <= alike) return "gleichauf mit dem Vorjahr";
  return `${many(Math.abs(daysAhead), "einen Tag", "Tage")} ${daysAhead > 0 ? "vor" : "hinter"} dem Vorjahr`;
}

function shareOf(share: number): string {
  const fractions: readonly (readonly [number, string])[] = [
    [0.075, "ein Zwanzigstel"],
    [0.14, "ein Zehntel"],
    [0.22, "ein Sechstel"],
    [0.29, "ein Viertel"],
    [0.41, "ein Drittel"],
    [0.6, "die Hälfte"],
  ];
  return fractions.find(([most]) => share < most)?.[1] ?? `${Math.round(share * 100)} %`;
}

function causeOf(causes: readonly string[]): string {
  return causes.length === 0 ? "" : ` (${list(causes)})`;
}

export const german: RecapWords = {
  plants: (plants, settings) => nameOf(plants, speechOf(settings)),
  label(plants, settings) {
    const { variety, crop } = plants;
    const speech = speechOf(settings);
    if (variety === undefined || crop === undefined)
      return nameOf(plants, speech, variety === undefined ? undefined : 1);
    const named = nameOf(plants, speech, 1);
    return named === variety.title || isUnnamed(plants) ? variety.title : `${variety.title}, ${speech.crop(crop, 1)}`;
  },
  harvest,
  nothingPicked: "nichts",
  noAmount: "keine Menge notiert",

  total(facts, { settings }) {
    const speech = speechOf(settings);
    const { grams, stems, from, to, whole, past, finished, lastYearGrams, mean } = facts;
    const day = (of: Day) => speech.day(of, to);
    const head = whole
      ? finished
        ? `Das Gartenjahr ${facts.season}`
        : `Bis ${day(to)}`
      : `Vom ${day(from)} bis ${day(to)}`;
    const gave = finished ? "brachte" : past ? "gab der Garten" : "hat der Garten";
    const end = past || finished ? "" : " gegeben";
    if (facts.pickings === 0) return `${head} ${gave} nichts${end}, was notiert ist.`;
    const parts = [
      ...(grams > 0 ? [speech.weight(grams)] : []),
      ...(stems > 0 ? [many(stems, "einen Blütenstiel", "Blütenstiele")] : []),
    ];
    const amount =
      parts.length === 0
        ? many(facts.pickings, "eine Ernte", "Ernten")
        : `${list(parts)} in ${pickings(facts.pickings)}`;
    const then =
      lastYearGrams === undefined
        ? ""
        : `, gegen ${speech.weight(lastYearGrams)} ${finished ? `im Jahr ${facts.lastYear}` : "am selben Tag des Vorjahrs"}`;
    const average =
      mean === undefined
        ? ""
        : ` und ${speech.weight(mean.grams)} im Mittel von ${number(mean.seasons)} früheren Jahren`;
    return `${head} ${gave} ${amount}${end}${then}${average}.`;
  },

  gaveMost: (said, grams, share, { settings }) =>
    `Am meisten kam von: ${said}, ${speechOf(settings).weight(grams)}${share < 1 ? "" : `, ${share} % von allem Gewogenen`}.`,

  setbacks(taken, open) {
    const lost = taken.map(
      ({ cause, plants, noted }) => `${plantsOf(plants)} (${noted ? capital(cause) : "Ursache nicht notiert"})`,
    );
    const parts = [
      ...(lost.length === 0 ? [] : [`verloren: ${list(lost)}`]),
      ...(open.length === 0 ? [] : [`noch nicht vorbei: ${list(open.map(capital))}`]),
    ];
    return parts.length === 0 ? "" : `${capital(parts.join("; "))}.`;
  },

  trials(settled, running) {
    const parts = [
      ...(settled.length === 0
        ? []
        : [`${many(settled.length, "ein Versuch ist", "Versuche sind")} entschieden: ${list(settled)}`]),
      ...(running.length === 0
        ? []
        : [
            `${many(running.length, "ein Versuch", "Versuche")} ${running.length === 1 ? "läuft" : "laufen"}: ${list(running)}`,
          ]),
    ];
    return `${capital(parts.join("; "))}.`;
  },

  weather: {
    tooFew: (known, all) =>
      `Von ${daysAfter(all)} ${known === 1 ? "steht nur einer" : `stehen nur ${number(known)}`} in den Wetterdateien, zu wenige, um von Frost, Wärme oder Regen zu erzählen.`,
    nights(frosts, hard, soFar) {
      const lead = soFar ? "Bisher gab es" : "Es gab";
      const cold = hard === 0 || frosts === 0 ? "" : `, ${hard === 1 ? "eine" : number(hard)} davon mit strengem Frost`;
      return `${lead} ${many(frosts, "eine Frostnacht", "Frostnächte")}${cold}.`;
    },
    lastFrost: (day, apart, { settings, day: near }) =>
      `Der letzte Frühjahrsfrost war am ${speechOf(settings).day(day, near)}${againstUsual(apart)}.`,
    firstFrost: (day, apart, { settings, day: near }) =>
      `Der erste Herbstfrost war am ${speechOf(settings).day(day, near)}${againstUsual(apart)}.`,
    frostFree: (n) => `Dazwischen lagen ${many(n, "ein frostfreier Tag", "frostfreie Tage")}.`,
    extremes(hottest, coldest, { settings, day: near }) {
      const { day, temperature } = speechOf(settings);
      return `Der wärmste Tag war der ${day(hottest.day, near)} mit ${temperature(hottest.value)}, die kälteste Nacht die vom ${day(coldest.day, near)} mit ${temperature(coldest.value)}.`;
    },
    rain({ millimetres, wetDays, rainDays, dry }, { settings, day: near }) {
      const { day } = speechOf(settings);
      if (wetDays === 0)
        return `Regen wurde nicht gemessen${dry === undefined ? "" : `, an ${daysAfter(rainDays)} nicht`}.`;
      const spell =
        dry === undefined || dry.days < 5
          ? ""
          : `; am längsten trocken war es ${days(dry.days)}, vom ${day(dry.from, near)} bis ${day(dry.to, near)}`;
      return `Es regnete ${rainIn(millimetres, settings)} an ${daysAfter(wetDays)}${spell}.`;
    },
    rainSince(film, millimetres, wetDays, { settings, day: near }) {
      const since = `Seit dem letzten Film am ${speechOf(settings).day(film, near)}`;
      return wetDays === 0
        ? `${since} hat es nicht geregnet.`
        : `${since} hat es ${rainIn(millimetres, settings)} geregnet, an ${daysAfter(wetDays)}.`;
    },
    heat(facts, { settings, day: near }) {
      const { day, temperature } = speechOf(settings);
      const gaps =
        facts.days === undefined
          ? ""
          : ` an den ${number(facts.days.inBoth)} von ${number(facts.days.of)} Tagen, die beide Jahre haben,`;
      const begun = `Seit dem ${day(facts.since, near)} kamen${gaps} ${heatIn(facts.heat, settings)} Gradtage über ${temperature(facts.base)} zusammen`;
      if (facts.lastYear === undefined) return `${begun}.`;
      const then = facts.days === undefined ? "am selben Tag des Vorjahrs" : "an denselben Tagen des Vorjahrs";
      return `${begun}, gegen ${heatIn(facts.lastYear, settings)} ${then}: ${heatApart(facts)}.`;
    },
    gaps: (n) =>
      `Für ${many(n, "einen Tag", "Tage")} dieser Zeit stehen keine Temperaturen in den Dateien; Frost und Wärme können zu niedrig erzählt sein.`,
    short(frost, heat, { settings, day: near }) {
      const parts = [
        ...(frost === undefined
          ? []
          : [`der letzte Frost kam am ${speechOf(settings).day(frost.day, near)}${againstUsual(frost.apart)}`]),
        ...(heat?.lastYear === undefined || heat.daysAhead === undefined
          ? []
          : [`in der Wärme liegt das Gartenjahr ${heatApart(heat)}`]),
      ];
      return parts.length === 0 ? undefined : `${capital(parts.join("; "))}.`;
    },
    source({ station, distanceKm, higherM, days: n }, settings) {
      const { digits, units } = speechOf(settings);
      const away =
        distanceKm === undefined
          ? ""
          : `, ${units === "us" ? `${digits(Math.round(distanceKm / 1.609344))} Meilen` : `${digits(Math.round(distanceKm))} km`} vom Garten`;
      const height =
        higherM === undefined || Math.abs(higherM) < 30
          ? ""
          : ` und ${digits(Math.abs(higherM))} m ${higherM > 0 ? "höher" : "tiefer"}`;
      const from =
        distanceKm === 0
          ? "eine Datei, als im Garten gemessen genommen"
          : `Station ${station ?? "ohne Namen"}${away}${height}`;
      return `${from} (${digits(n)} Tage)`;
    },
    method: (sources, bridged) =>
      `Wetter: tiefste und höchste Temperatur und Regen jedes Tages${sources.length === 0 ? "" : ` aus ${sources.join("; ")}`}; jeder Tag aus der nächsten Quelle, die ihn ganz hat.${bridged === 0 ? "" : ` ${capital(days(bridged))} in Lücken von höchstens drei Tagen ${bridged === 1 ? "liegt" : "liegen"} auf einer geraden Linie zwischen den Nachbarn.`}`,
    heatMethod:
      "Wärme: Gradtage nach dem einfachen Mittel, die Mitte zwischen höchster und tiefster Temperatur des Tages abzüglich 4,4 °C (40 °F), nie unter null (erste Lesart von McMaster und Wilhelm, 1997).",
    frostLeft: (n, frost, { settings, day: near }) =>
      `Bis zum üblichen ersten Frost am ${speechOf(settings).day(frost, near)} ${n === 1 ? "bleibt" : "bleiben"} ${days(n)}.`,
  },

  standing(facts, { settings, day: near }) {
    const speech = speechOf(settings);
    const { now, each, before, lost, causes, otherTroubles } = facts;
    const amount = harvest(now, settings);
    const years = {
      "same days": "in denselben Tagen des Vorjahrs",
      "same day": "am selben Tag des Vorjahrs",
      "whole year": "im Vorjahr",
    };
    const parts: string[] = [];
    if (now.times > 0) {
      const gave =
        amount === undefined
          ? `${number(now.times)}-mal geerntet, keine Menge notiert`
          : `${amount} in ${pickings(now.times)}`;
      const plant =
        each === undefined ? "" : `, ${speech.weight(each.grams)} je Pflanze bei ${number(each.plants)} Pflanzen`;
      const compared = each?.lastYear === undefined && before !== undefined && amount !== undefined;
      const of = (set: number | undefined) =>
        !compared || each !== undefined || facts.set?.before === undefined || set === undefined
          ? ""
          : ` von ${many(set, "einer Pflanze", "Pflanzen")}`;
      const then =
        each?.lastYear !== undefined
          ? `, gegen ${speech.weight(each.lastYear)} im Vorjahr`
          : compared
            ? `, gegen ${harvest(before, settings)}${of(facts.set?.before)} ${years[facts.span]}`
            : "";
      parts.push(
        `${gave === `${number(1)}-mal geerntet, keine Menge notiert` ? "einmal geerntet, keine Menge notiert" : gave}${of(facts.set?.now)}${plant}${then}`,
      );
    }
    if (facts.allLost) parts.push(`alles verloren${causeOf(causes)}`);
    if (lost > 0) {
      const some =
        facts.began === undefined
          ? plantsOf(lost)
          : `${lost === 1 ? "eine" : number(lost)} von ${number(facts.began)} Pflanzen`;
      const end =
        facts.never === undefined
          ? ""
          : facts.never === "not planted"
            ? ", noch vor dem Auspflanzen"
            : `, und nichts geerntet, bis am ${speech.day(facts.never.gone, near)} die letzten weg waren`;
      parts.push(`${some} verloren${causeOf(causes)}${end}`);
    }
    if (otherTroubles.length > 0) parts.push(`daran: ${list(otherTroubles)}`);
    return parts.length === 0 ? undefined : `${capital(nameOf(facts.plants, speech))}: ${parts.join("; ")}.`;
  },

  loss(facts, { settings, day: near }) {
    const speech = speechOf(settings);
    const day = (of: Day) => speech.day(of, near);
    const names =
      facts.moreKinds > 0 ? [...facts.names, many(facts.moreKinds, "eine weitere", "weitere")] : facts.names;
    const what = list(names);
    const when =
      facts.first === facts.last ? `am ${day(facts.first)}` : `zwischen ${day(facts.first)} und ${day(facts.last)}`;
    const told = [
      facts.plants > 0 ? `${plantsOf(facts.plants)} verloren` : facts.all ? "alles verloren" : "gesehen",
      ...(what === "" ? [] : [what]),
      ...(facts.bed === undefined ? [] : [`Beet: ${facts.bed.title}`]),
      when,
      ...(facts.end === undefined
        ? []
        : facts.end === "open"
          ? ["noch nicht vorbei"]
          : facts.end === "open, past"
            ? ["keine Zeile sagt, dass es vorbei war"]
            : [`vorbei am ${day(facts.end.over)}`]),
    ];
    const worse =
      facts.lastYear === undefined
        ? ""
        : ` Im Vorjahr bis dahin: ${facts.lastYear === 0 ? "keine" : number(facts.lastYear)}.`;
    const tried = facts.tried.length === 0 ? "" : ` Versucht: ${facts.tried.join("; ")}.`;
    return `${capital(facts.cause ?? "Ursache nicht notiert")}: ${told.join(", ")}.${worse}${tried}`;
  },

  bedYield({ bed, amount, pickings: times, gramsPerSquareMetre, mostly }, { settings }) {
    const speech = speechOf(settings);
    const squareFoot = 0.3048 ** 2;
    const ground =
      gramsPerSquareMetre === undefined
        ? ""
        : speech.units === "us"
          ? `, ${speech.weight(gramsPerSquareMetre * squareFoot)} je ft²`
          : `, ${speech.weight(gramsPerSquareMetre)} je Quadratmeter`;
    const most =
      mostly === undefined
        ? ""
        : mostly.grams === undefined
          ? `, alles ${speech.crop(mostly.crop)}`
          : `, davon ${speech.weight(mostly.grams)} ${speech.crop(mostly.crop)}`;
    return `${bed.title}: ${amount} in ${pickings(times)}${ground}${most}.`;
  },
  sameHeat(day, then, now, { settings }) {
    const speech = speechOf(settings);
    return `Im Vorjahr war dieselbe Wärme am ${speech.day(day, day)} beisammen, und bis dahin hatte der Garten ${then > 0 ? speech.weight(then) : "nichts Gewogenes"} gegeben; jetzt sind es ${speech.weight(now)}.`;
  },

  photos({ bed, days: taken, span, green }, { settings, day: near }) {
    const speech = speechOf(settings);
    const cover =
      green === undefined
        ? ""
        : `; grün waren erst ${speech.share(green.from)}, dann ${speech.share(green.to)} ${green.of === "bed" ? "vom Beet" : "vom Bild"}`;
    return `${bed.title} von einer Stelle aus, am ${list(taken.map((day) => speech.day(day, near)))}; vom ersten zum letzten Foto ${speech.age(span)}${cover}.`;
  },

  promise({ what, promisedOn, kept, due, standing }, { settings, day: near }) {
    const speech = speechOf(settings);
    const day = (of: Day) => speech.day(of, near);
    const promised = `Versprochen am ${day(promisedOn)}: ${what}${/[?!]$/u.test(what) ? "" : "."}`;
    const end =
      kept !== undefined
        ? `Eingelöst am ${day(kept)}${due !== undefined && kept > due ? ", später als gesagt" : ""}.`
        : standing === "broken" && due !== undefined
          ? `Fällig war es am ${day(due)}, und es steht noch aus.`
          : due === undefined
            ? "Kommt noch."
            : due === near
              ? "Heute ist es fällig."
              : `Fällig am ${day(due)}.`;
    return `${promised} ${end}`;
  },

  forecast(facts, { settings, day: near }) {
    const speech = speechOf(settings);
    const day = (of: Day) => speech.day(of, near);
    const { from, likely, to, expected } = facts;
    const name = capital(nameOf(facts.plants, speech));
    const what = facts.goal === "flower" ? "Blüte" : "Ernte";
    const apart = facts.ratio - 1;
    const crop = facts.plants.crop === undefined ? "solche Pflanzen" : speech.crop(facts.plants.crop);
    const own =
      facts.learnedFrom === 0
        ? ""
        : Math.abs(apart) < noNews
          ? `; ${many(facts.learnedFrom, "eine frühere Pflanzung", "frühere Pflanzungen")} hier ${facts.learnedFrom === 1 ? "hielt" : "hielten"} sich daran`
          : `; ${crop} brauchten hier etwa ${shareOf(Math.abs(apart))} ${apart > 0 ? "länger" : "weniger"}`;
    const basis = `laut Sorte ${days(facts.days)} ab ${facts.counted === "planting" ? "Pflanzung" : "Aussaat"}${own}${facts.byHeat ? "; die Wärme dieses Jahres ist eingerechnet" : ""}`;
    if (expected.by < near)
      return `${name}: ${what} war bis ${day(expected.by)} zu erwarten und ist noch nicht da; was so spät ist, kommt meist bis ${day(to)} (${basis}).`;
    const probably = `am ehesten um den ${day(likely)}`;
    if (expected.from <= near)
      return `${name}: ${what} jederzeit bis ${day(to)} möglich${likely > near ? `, ${probably}` : ""} (${basis}).`;
    return `${name}: ${what} zwischen ${day(from)} und ${day(to)} zu erwarten, ${probably} (${basis}).`;
  },
  planting: (plants, bed, began, on, { settings, day: near }) => {
    const speech = speechOf(settings);
    return `${nameOf(plants, speech)}${bed === undefined ? "" : ` (${bed.title})`}, ${began === "sown" ? "gesät" : "gepflanzt"} am ${speech.day(on, near)}`;
  },
  timeToSow: (rows, { settings, day: near }) =>
    `Noch Zeit zum Säen: ${rows.map(({ crops, by }) => `${list(crops)} bis ${speechOf(settings).day(by, near)}`).join(", ")}.`,

  rotation({ bed, crops, family, gap, years, disease }, settings) {
    const speech = speechOf(settings);
    const { after: relatives, reason } = families[family] ?? { after: family, reason: "" };
    const after = gap === 1 ? "schon im Jahr" : `${number(gap)} Jahre`;
    const wait = `${disease === undefined ? "" : `nach ${diseases[disease]?.name ?? disease} `}${number(years)} Jahre Pause sind ratsam`;
    return `${bed.title}: ${list(crops.map((crop) => speech.crop(crop)))}, ${after} nach den letzten ${relatives}; ${reason}, ${wait}.`;
  },
  family: (family) => families[family]?.name ?? family,
  planned: (what) => fullStop(`Geplant: ${what}`),
  moreRotation: (n) =>
    `${capital(many(n, "ein weiteres Beet oder eine weitere Familie kam", "weitere Beete und Familien kamen"))} zu früh wieder; die Tabelle zeigt sie.`,
  diseaseSeen(disease, beds) {
    const row = diseases[disease];
    return `${row?.name ?? disease} gesehen in: ${list(beds.map(({ title }) => title))}. ${row?.advice ?? ""}`;
  },
  noCure: (row, causes) => throughTheAir[row]?.(causes) ?? "",

  thanks({ to, plants, gear, more, how }, settings) {
    const speech = speechOf(settings);
    const shown = [...plants.map((one) => nameOf(one, speech)), ...gear];
    const words = { lent: "geliehen", gifted: "kostenlos erhalten", swapped: "getauscht" };
    return `Danke an ${to} für: ${list(more > 0 ? [...shown, many(more, "eines mehr", "weitere")] : shown)}${how === undefined ? "" : ` (${words[how]})`}.`;
  },

  remarks: {
    noAmount: (n) =>
      `${capital(many(n, "eine Ernte nennt", "Ernten nennen"))} keine Menge: als ${n === 1 ? "Ernte" : "Ernten"} gezählt, bei den Gewichten nicht dabei.`,
    unassigned: (n) =>
      `${capital(many(n, "eine Ernte sagt", "Ernten sagen"))} nicht, welche von mehreren Pflanzungen geerntet wurde: in den Summen von Beet und Pflanzenart enthalten, bei keiner Pflanzung.`,
    countedOnly: "Was nur gezählt wurde, etwa Stiele und Köpfe, hat kein Gewicht und keinen Teil an den Anteilen.",
  },

  methods: {
    picked:
      "Geerntet: die Notizen der erzählten Tage, zusammengezählt nach Gewicht, nach Volumen und nach Stück, die nie ineinander umgerechnet werden.",
    plant:
      "Ertrag einer Pflanze: alles, was ihre Pflanzung gab, geteilt durch die gesetzten Pflanzen ohne verschenkte, umgesetzte und ausgedünnte.",
    forecasts:
      "Aussichten: die Tage der Sorte, langsamer, solange der Tag kürzer als zehn Stunden ist, mal dem, was die eigenen Pflanzungen dieses Gartens brauchten; wo das Wetter bekannt ist, gemittelt mit demselben in Gradtagen. Der Zeitraum ist so gewählt, dass er in vier von fünf Fällen stimmt, für das, was am Tag der Frage noch nicht da ist; überfällige Pflanzungen lehren mit.",
    trials:
      "Versuche: ein Wert je Reihe, Beet oder Topf, was für sich behandelt wurde, aus Tagen, die alle Gruppen haben; exakter Permutationstest der Differenz ihrer Mittel, zweiseitig, innerhalb von Beet und Jahr, wo dort von jeder gleich viele stehen; der Bereich der Differenz aus demselben Test, 95 %. Reihen nebeneinander gelten als eine, ebenso ein Beet, das eine Gruppe für sich hat. Nötige Zahl: Teststärke 0,8 bei 0,05, mit der gesehenen Streuung.",
    needs:
      "Benötigte Pflanzen: das Ziel durch den eigenen Ertrag beendeter Pflanzungen, die ausgefallenen mitgezählt; sonst die Spanne der Handbücher, aus Reihenerträgen der Kansas State University (MF315) bei engstem und weitestem Abstand und, aus der Erinnerung, solchen Tabellen je Pflanze; Gläser nach dem USDA Complete Guide to Home Canning (AIB 539, 2015).",
    rotation:
      "Fruchtfolge: dieselbe Familie drei Jahre lang nicht im selben Beet, Korbblütler zwei (West Virginia University Extension, 2025), länger nach einer Krankheit, die im Boden bleibt.",
    draft: (season, exact) =>
      `Der Entwurf für ${season} ist ${exact ? "durch Probieren aller Möglichkeiten gefunden" : "durch Suchen gefunden; es kann einen besseren geben"}.`,
  },
};
