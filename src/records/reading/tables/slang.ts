/**
 * Short forms of crops that are also ordinary words: "runners" are runner beans only where something is sown, picked or
 * counted, "mums" only among flowers. All are weak evidence.
 */
import { keyOf, rowsOf } from "./rows.ts";

export interface Slang {
  /** Crop id. */
  readonly crop: string;
  readonly weak: true;
}

let table: ReadonlyMap<string, Slang> | undefined;

/** The crops by the key of each word; made when first asked for. */
export function slangTable(): ReadonlyMap<string, Slang> {
  table ??= new Map(
    rowsOf(slangRows).flatMap(([crop, words]) => words.map((word) => [keyOf(word), { crop, weak: true }] as const)),
  );
  return table;
}

export const slangRows = `
runner-bean: runners
broad-bean: broads, broadies
french-bean: dwarfs, Frenchies
blueberry: blues
chrysanthemum: mums
gladiolus: glads
dahlia: dahls, dahlies
tomato: maters, tommies, tomatas, tomats
pumpkin: punkin, pumkin, pumpkns
chilli: bonnit, bonnets
potato: tates
pepper: caps, bells
chilli: habs
cabbage: cabs
sprouting-broccoli: sprouting
lettuce: cos, gems
potato: earlies, chats, praties
sweetcorn: cobs
pumpkin: pumps
parsnip: snips
apple: cookers, eaters, crabs
blackcurrant: currants
bay-tree: bay
lime-tree: lime
orange-tree: orange
date-palm: dates
hazelnut: hazel
elderberry: elder
willow-tree: willow, withies
ornamental-bamboo: bamboo
boxwood: box
cytisus: broom
dianthus: pinks
nasturtium: nasties
gypsophila: gyp
snapdragon: snaps
cornflower: bluebottles
clematis: clems
pelargonium: pelargs
armeria: thrift
snowflake-bulb: snowflake
birch-tree: birch
oak-tree: oak
beech-hedge: beech
pine-tree: pine
alder-tree: alder
coffee-plant: coffee
tea-plant: tea
wild-garlic: ramps
lisianthus: lizzies
sunflower: sunnies
moringa: drumstick`;
