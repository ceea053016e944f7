/** What plants are sown into and stand in, and the loose amounts a picking is told in. */
import { keyOf, rowsOf } from "./rows.ts";

export interface Container {
  readonly name: string;
  /** Whether plants in it are meant to be planted out later. A tub or a grow bag is where they stay. */
  readonly nursery: boolean;
}

let containers: ReadonlyMap<string, Container> | undefined;
let amounts: ReadonlyMap<string, string> | undefined;

/** The containers and raising places by the key of each form; made when first asked for. */
export function containerTable(): ReadonlyMap<string, Container> {
  containers ??= new Map([...formsOf(nurseryRows, true), ...formsOf(stayingRows, false)]);
  return containers;
}

/** Units of loose amounts as they are said, by the key of each form; made when first asked for. */
export function looseAmountTable(): ReadonlyMap<string, string> {
  amounts ??= new Map(
    rowsOf(looseAmountRows).flatMap(([unit, forms]) => [unit, ...forms].map((form) => [keyOf(form), unit] as const)),
  );
  return amounts;
}

function formsOf(rows: string, nursery: boolean): (readonly [string, Container])[] {
  return rowsOf(rows).flatMap(([name, forms]) =>
    [name, ...forms].map((form) => [keyOf(form), { name, nursery }] as const),
  );
}

/** Of these, a plant goes on to its bed. */
export const nurseryRows = `
tray: seed tray, seedtray, half tray, quarter tray, gravel tray, propagating tray, 1020 tray, cell tray, traylet, starter tray
module: module tray, modular tray, 84-module tray
plug tray: plug, plug pot, plug cell
cell: cell pack, cellpack, six-pack, four-pack, inserts, 72-cell tray, cell flat, seedling cell
pot: small pot, 3 inch pot, 9cm pot, nine centimetre pot, four inch pot, starter pot, 7cm pot, plant pot, square pot
deep pot: long tom, tall pot, deep cell, deepots, tree pot, tree tube
fibre pot: peat pot, coir pot, biodegradable pot, newspaper pot, paper pot, cow pot
paper chain pot: chain pot
soil block: block, soilblock, potting block, blocker
pellet: coir pellet, peat pellet, peat plug
loo roll: toilet roll, toilet roll tube, loo roll tube, cardboard tube, kitchen roll tube, bog roll, loo roll inner, TP roll, toilet paper roll, toilet paper tube
root trainer: roottrainer
gutter: guttering, length of gutter, length of guttering, drainpipe
flat: seed flat, nursery flat
egg box: egg carton, eggbox, egg shell, eggshell
yoghurt pot: yogurt pot, yoghurt tub, plastic cup, paper cup, margarine tub, takeaway tub, fruit punnet, mushroom tray, ice cream tub, milk jug, milk carton, tin can
jar: jam jar, damp kitchen paper, wet paper towel, paper towel, baggie, zip bag, freezer bag
poly bag: polythene tube, poly tube, planter sleeve, potting sleeve, polybag
seed pan: pan, half pot, deep seed pan
propagator: heated propagator, unheated propagator, propagating case, prop, propagation unit, humidity dome, dome, mini greenhouse, seed starter
heat mat: heating mat, heated mat, seedling mat, soil cable, heated bench, hot bench
windowsill: sill, window ledge, kitchen windowsill, bathroom windowsill, bedroom windowsill, windowsil, sunny window, south window
airing cupboard: hot press, boiler cupboard, top of the fridge, top of the boiler
conservatory: sunroom, sun room, porch, lean-to, sun porch, garden room
greenhouse: glasshouse, green house, hothouse, hot house, under glass
greenhouse staging: staging, potting bench, greenhouse bench, bench, shelf, shelving
cold frame: coldframe, nursery frame
nursery bed: seed bed, seedbed, nursery row, holding bed, standing-out ground, hardening off area
light shelf: grow light, under lights, light rack, grow tent, growlight, light stand, basement lights
spare room: kitchen, utility room, back bedroom, kitchen table, laundry, garage, basement, indoors, in the house
shade house: shadehouse, net house, nethouse, lath house, shade nursery
winter sowing jug: winter sowing, winter-sown jug`;

/** In these, a plant stays. */
export const stayingRows = `
tub: patio tub, half barrel, barrel planter, whisky barrel, whiskey barrel, big tub
planter: patio planter, wooden planter, trough planter, vertical planter, self-watering planter, Belfast sink, old sink, sink, raised planter, stackable planter, strawberry planter, strawberry pot, strawberry tower
container: patio container, big container
grow bag: growbag, gro-bag, growing bag, grobag, fabric pot, fabric grow bag, grow sack, gunny bag, sack garden
bag of compost: compost bag, sack, potato bag, potato sack, builder’s bag, dumpy bag, bulk bag, feed sack, potato grow bag
big pot: large pot, terracotta pot, patio pot, glazed pot, clay pot, ceramic pot, urn, final pot, ten-inch pot, 30 cm pot, 5 gallon pot, chimney pot, ring culture pot
bucket: old bucket, flexi tub, flexible tub, dustbin, trash can, ring pot, five gallon bucket, 5-gallon bucket, paint bucket
trough: window box, windowbox, window trough, trug planter, manger, cattle trough, stock tank, horse trough, balcony box
hanging basket: basket hanging, wall basket, wall pot
crate: wooden crate, apple crate, wine box, wine crate, fruit box, bath, old bath, bathtub, tyre, tyres stack, wheelbarrow planter, old boot
quad pot: quadpot, hydroponic tower, wicking bed, wicking pot, ollas pot`;

/** As said: none of these has a size. */
export const looseAmountRows = `
handful: hand full, fistful, fist full, couple of handfuls, good handful
armful: arm full, arm load, armload, lapful, apronful, shirtful
pocketful: pocket full, hatful, capful
bunch: bundle, bouquet, posy, sheaf, tied bunch
punnet: small punnet, clamshell, flat of berries
pint punnet: quart basket, pint basket, half pint
bowl: bowlful, bowl full, salad bowl, mixing bowl, washing-up bowl, pudding bowl, ice cream bowl, big bowl, large bowl, soup bowl
colander: colander full, colanderful, sieve, sieveful, sieve full
basket: basketful, basket full, shopping basket, bushel basket, harvest basket, half basket, kikapu, debe
trug: trugful, trug full, trug load, sussex trug
bucket: bucketful, bucket full, half a bucket, five-gallon bucket, pail, pailful, 10 litre bucket
tub: tubful, ice cream tub full, margarine tub full, tub full
box: boxful, box full, shoebox, veg box, fruit box full, banana box
crate: crate full, crateful, lug, flat full, tray full, trayful, apple crate full
bag: bagful, bag full, carrier bag, carrier bag full, shopping bag, sandwich bag, freezer bag full, plastic bag full, tote bag, paper bag full, salad bag, rubble sack
sack: sackful, sack full, gunia, half sack, paper sack
barrow: barrowful, barrow full, barrow load, barrowload, wheelbarrow, wheelbarrow load, wheelbarrow full
load: carload, trailer load, trailer full, bootful, pickup load, truckload
jar: jarful, jar full, jam jar full
jug: jugful, vase, vaseful, vase full
plate: plateful, plate full, platter, dishful
meal: portion, serving, helping, dinner, salad, enough for tea, enough for dinner, enough for a meal, enough for supper, enough for lunch, potful, panful, pan full, mess
mouthful: taste, nibble, couple of mouthfuls, snack
cup: mugful, mug, cup full, cupful of berries
spoonful: teaspoon, tablespoon, thimbleful, spoon
pinch: sprinkle, sprinkling, smidge
packet: pack, sachet, pkt, packet of seed, packets full, half packet
row: half row, whole row, full row
tray: whole tray, half tray
head: heart, big head, small head, curd, crown
hand: hand of bananas, bunch of bananas
truss: cluster, vine truss
stem: stalk, stick, spear, spike, sprig, bloom, flower head, flowerhead, cut stem
leaf: leaves, frond, outer leaf, outer leaves
pod: shell, beans in pod
cob: ear, corn cob
root: finger of root
bulb: clove
fruit: single fruit, windfall
string: plait, rope, braid, onion string, garlic plait
dozen: half a dozen, couple of dozen
lot: tons, heaps, masses, oodles, stacks, piles, plenty, good lot, great many, bumper crop, a ton, shedload, no end, whole load
few: a few, couple, a couple, several, some, a handful or so, half a handful, small amount`;
