/**
 * The usual cautions for what a stop shows: poisonous plants, sprays, ladders, preserving, power tools.
 *
 * Source of every row: common practice. They are short reminders for the person speaking and no advice of their own; they
 * defer to a poisons reference, the product's label, tested recipes and local rules.
 */
import type { Event } from "../model.ts";
import type { Lot } from "./bed-on-the-day.ts";
import type { Sentence } from "./brief.ts";
import { type Ground, say } from "./sentence.ts";

interface PlantCaution {
  /** Matches the crop's id or name, the variety's title or its botanical name, in lower case. */
  readonly plant: RegExp;
  readonly except?: RegExp | undefined;
  readonly text: string;
}

const checkPoisons = "Common practice; check a poisons reference.";

const plantCautions: readonly PlantCaution[] = [
  { plant: /foxglove|digitalis/, text: "Foxglove is poisonous in all its parts." },
  { plant: /rhubarb|rheum/, text: "Rhubarb leaves are poisonous; only the stalks are eaten." },
  {
    plant: /runner.?bean|french.?bean|kidney.?bean|dry.?bean|climbing.?bean|dwarf.?bean|borlotti|^bean$|phaseolus/,
    text: "Beans of the kidney bean kind are poisonous raw; they need thorough boiling.",
  },
  { plant: /monkshood|aconit/, text: "Monkshood is very poisonous, also through the skin; gloves on." },
  { plant: /lily.of.the.valley|convallaria/, text: "Lily of the valley is poisonous in all its parts." },
  {
    plant: /potato|solanum tuberosum/,
    except: /sweet.?potato/,
    text: "Potato leaves, fruits and green tubers are poisonous.",
  },
  { plant: /tomato|solanum lycopersicum/, except: /tomatillo/, text: "Tomato leaves and stems are not for eating." },
  { plant: /daffodil|narciss/, text: "Daffodil bulbs are poisonous and look like onions; the sap irritates skin." },
  { plant: /laburnum/, text: "Laburnum is poisonous, its pods and seeds above all." },
  { plant: /\byew\b|taxus/, text: "Yew is poisonous in nearly all its parts." },
  { plant: /castor|ricin/, text: "Castor bean seeds are very poisonous." },
  { plant: /hellebor/, text: "Hellebores are poisonous; the sap irritates skin." },
  { plant: /delphinium|larkspur|consolida/, text: "Delphinium and larkspur are poisonous in all their parts." },
  { plant: /sweet.?pea|lathyrus/, text: "Sweet pea seeds are poisonous and not to be taken for garden peas." },
  { plant: /euphorbia|spurge/, text: "Spurge sap burns skin and eyes; gloves on." },
  { plant: /lupin/, text: "Garden lupin seeds are poisonous." },
  { plant: /\bricinus\b|oleander/, text: "Oleander is very poisonous in all its parts." },
  { plant: /parsnip|pastinaca/, text: "Parsnip sap can burn skin in sunlight; sleeves and gloves." },
];

interface WorkCaution {
  /** Matches a log line's words. */
  readonly words: RegExp;
  /** Lines of this kind call for it whatever their words. */
  readonly kind?: Event["kind"] | undefined;
  readonly text: string;
}

const workCautions: readonly WorkCaution[] = [
  {
    words: /\bspray(?:s|ed|ing)?\b|insecticide|fungicide|herbicide|weedkiller|slug pellets/i,
    text: "Sprays and pellets: name what was used, and point to the product's label and local rules.",
  },
  { words: /\b(?:step)?ladders?\b/i, text: "Ladder: level ground and someone to hold it; don't film from it." },
  {
    kind: "preserved",
    words: /\b(?:preserv\w+|bottling|bottled|canning|canned|pickl\w+|chutney|jam\b)/i,
    text: "Preserving: point viewers to a tested recipe.",
  },
  {
    words: /chain ?saw|strimmer|brush ?cutter|hedge ?trimmer|rotavator|tiller|shredder/i,
    text: "Power tool: eyes, ears and feet covered; follow the maker's instructions.",
  },
];

/** Plants that are shown, and the lines that are told. */
interface Shown {
  readonly growing: readonly Pick<Lot, "variety" | "crop" | "events">[];
  readonly news: readonly Event[];
}

/** Cautions for one stop, plants first, none twice. */
export function cautionsFor(here: Shown): readonly Sentence[] {
  return [...plantLines(here), ...workLines(here)];
}

function plantLines(here: Shown): Sentence[] {
  const found = new Map<string, Ground | undefined>();
  const put = (text: string, ground: Ground | undefined) => {
    if (!found.has(text)) found.set(text, ground);
  };
  for (const { variety, crop, events } of here.growing) {
    if (variety?.caution !== undefined) {
      put(`${variety.title}: ${variety.caution.replace(/[.\s]+$/, "")}.`, variety);
      continue;
    }
    const names = [crop?.id, crop?.name, variety?.title, variety?.botanical].filter((name) => name !== undefined);
    const known = names.map((name) => name.toLowerCase());
    for (const row of plantCautions) {
      const matches =
        known.some((name) => row.plant.test(name)) && !known.some((name) => row.except?.test(name) === true);
      if (matches) put(`${row.text} ${checkPoisons}`, events[0]);
    }
  }
  return [...found].map(([text, ground]) => say(text, [ground]));
}

function workLines(here: Shown): Sentence[] {
  const lines: Sentence[] = [];
  for (const row of workCautions) {
    const event = here.news.find(({ kind, text }) => kind === row.kind || row.words.test(text));
    if (event !== undefined) lines.push(say(row.text, [event]));
  }
  return lines;
}
