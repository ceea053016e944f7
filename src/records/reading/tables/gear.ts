/** Structures, covers, supports, watering and tools, in the words people use; by the thing they name. */
import { keyOf, rowsOf } from "./rows.ts";

export type GearKind = "structure" | "cover" | "support" | "water" | "tool" | "container";

export interface GearWord {
  readonly name: string;
  readonly kind: GearKind;
}

let table: ReadonlyMap<string, GearWord> | undefined;

/** The gear by the key of each form; made when first asked for. */
export function gearTable(): ReadonlyMap<string, GearWord> {
  table ??= new Map(
    Object.entries(gearRows).flatMap(([kind, rows]) =>
      rowsOf(rows).flatMap(([name, forms]) =>
        [name, ...forms].map((form) => [keyOf(form), { name, kind: kind as GearKind }] as const),
      ),
    ),
  );
  return table;
}

export const gearRows: Readonly<Record<GearKind, string>> = {
  structure: `
polytunnel: poly tunnel, tunnel, hoop house, hoophouse, high tunnel, caterpillar tunnel, polythene tunnel, growing tunnel, tunnel house
polytunnel cover: tunnel cover, tunnel plastic, polythene cover, tunnel skin
tunnel hoop: poly tunnel hoop, hoop, hoops and mesh, wire hoop, pipe hoop, alkathene hoop, blue pipe, conduit hoop, low tunnel, mini tunnel, low hoops
greenhouse: glass house, glasshouse frame, green-house, lean-to greenhouse, plastic greenhouse, pop-up greenhouse, geodesic dome, walk-in greenhouse
cold frame: coldframe, garden frame, frame lid, frame light, Dutch light, glazing
hotbed: hot bed, manure hotbed
raised bed: raised bed frame, bed frame, raised bed kit, sleepers, railway sleeper, scaffold board, bed edging, bed sides, corrugated bed, sleeper edging, hugelkultur mound, hugel
fruit cage: cage frame, walk-in cage, brassica cage, veg cage, berry cage, bird cage over fruit, netted cage
arch: garden arch, metal arch, squash arch, rose arch, cattle panel arch, moon gate
pergola: arbour, arbor, gazebo, ramada
obelisk: garden obelisk, metal obelisk, willow obelisk, tuteur
fence: fencing, picket fence, rabbit fence, deer fence, chicken fence, deer fencing, rabbit fencing, post and rail, windbreak, wind break, hurdle, wattle hurdle, chain link, boma fence, stock fence, gopher wire, hardware cloth, rabbit wire
electric fence: electric netting, electric wire, hot wire, poultry netting, energiser
gate: side gate, garden gate
wall: dry stone wall, retaining wall, gabion
shed: potting shed, tool shed, garden shed, toolshed, garden store, summerhouse
compost bin: compost heap, composter, compost bay, compost pile, dalek bin, hot bin, tumbler, compost tumbler, worm bin, wormery, worm farm, bokashi bin, leaf bin, leaf mould cage, leaf cage, pallet bin
pond: wildlife pond, duck pond, bog garden
bug hotel: insect hotel, log pile, bee hotel, hedgehog house, hive, beehive
hen house: chicken coop, coop, hen run, chicken run, chook pen, chook tractor, chicken tractor, duck house
nest box: bird box, nestbox, bird feeder, bird bath, birdbath, bird table
staging: greenhouse staging unit, greenhouse shelving, potting bench frame, slatted bench
path: paving, slab, paving slab, stepping stone, woodchip path, brick path, bark path, gravel path
steps: terrace, terracing, patio, decking, deck
shade house: shadehouse frame, shade structure, shade tunnel
lean-to: carport, porch frame`,
  cover: `
netting: net, bird netting, bird net, butterfly netting, butterfly net, pigeon net, pigeon netting, pea net cover, fruit netting, fruit net, debris netting, scaffold netting, anti-bird net, soft netting, brassica net, brassica netting, deer netting, fruit fly netting
mesh: insect mesh, insect netting, fine mesh, bug netting, insect net, scaffold mesh, fly mesh, bug net, carrot fly mesh, exclusion netting, mossie net, mesh cover, mesh tunnel, mosquito net
fleece: horticultural fleece, garden fleece, frost fleece, double fleece, layer of fleece, fleece jacket, fleece tunnel, fleece bag
row cover: floating row cover, agrofabric
frost cloth: frost blanket, frost cover, frost protection cloth, old sheet, bed sheet, old curtain, bubble wrap, bubblewrap, hessian, burlap, blanket
shade cloth: shadecloth, shade net, shade netting, shade cover, shading, greenhouse shading, whitewash, shade paint, sun shade, umbrella
cloche: bell cloche, glass cloche, tunnel cloche, bottle cloche, plastic bottle cloche, cut-off bottle, plastic bottle, pop bottle, milk jug cloche, hot cap, water wall, bell jar, barn cloche
mulch film: plastic mulch, black plastic, black polythene, plastic sheet, polythene, silage sheet, silage tarp, silage plastic, biodegradable film, mulch mat, landscape fabric, weed membrane, membrane, weed fabric, weed mat, weedmat, woven ground cover, groundcover fabric, geotextile, weed suppressant, weed control fabric, fabric pins
tarp: tarpaulin, black tarp, occultation tarp
clear plastic: clear polythene, solarisation sheet, polythene sheet, greenhouse plastic, cling film, clingfilm, plastic wrap, plastic bag cover
cardboard: card, cardboard boxes, cardboard sheet, newspaper, corrugated cardboard
bird scarer: scarecrow, scare crow, bird scare, CDs on string, old CDs, flash tape, humming line, bird tape, scare tape, scary owl, decoy owl, plastic owl, hawk kite, gas gun, windmill bird scarer, shiny things, dummy snake, rubber snake, rattle
collar: brassica collar, cabbage collar, root fly collar, slug collar, tree guard, tree collar, spiral guard, rabbit guard, tree shelter, tree tube guard, bottle collar, cutworm collar, copper collar
copper tape: copper ring, copper mesh
slug trap: beer trap, slug pub, slug tape, wool barrier
trap: mouse trap, mousetrap, rat trap, mole trap, gopher trap, live trap, wasp trap, pheromone trap, codling moth trap, sticky trap, yellow sticky trap, fly trap, fruit fly trap, earwig trap, snare, cage trap, sticky card
grease band: glue band, sticky band
fruit bag: organza bag, exclusion bag, paper bag over fruit, fruit sleeve, mesh bag, pollination bag`,
  support: `
cane: bamboo cane, bamboo, garden cane, bamboo pole, bamboo stake, split cane, 8ft cane
beanpole: bean pole, pole, hazel pole, hazel rod, hazel stick, bean frame, bean row, bean stick, runner bean frame, bean structure
pea stick: peasticks, twiggy sticks, brushwood, birch twigs, pea brush, twigs, prunings as supports
wigwam: teepee, tepee, tipi, cane wigwam, bean teepee, tripod, bean wigwam, A-frame, pyramid
trellis: trellising, trellis panel, fan trellis, expanding trellis, lattice, cattle panel, hog panel, stock panel, reo mesh, reo, remesh, concrete mesh, weldmesh, livestock panel, trelis
pea netting: pea net, bean net, bean netting, trellis net, trellis netting, jute net, climbing net, plant netting, support netting, flower netting, pea fence, chicken wire, wire netting
stake: tree stake, dahlia stake, wooden stake, metal stake, tomato stake, star picket, T-post, steel post, fence post, rebar, grow through support, spiral stake, tomato spiral, star dropper, steel spiral
tomato cage: cage, wire cage, peony cage, peony ring, plant ring, grow-through ring, plant support, half hoop, linking stakes, tomato ladder
training wires: wire, vine eyes, espalier wires, espalier frame, tensioner, galvanised wire, galvanized wire, fan wires, wire trellis
string: twine, garden twine, jute twine, jute, sisal, tomato string, Florida weave, baler twine, raffia, binder twine, ball of string
tie: plant tie, tree tie, soft tie, rubber tie, twist tie, cable tie, zip tie, plant clip, tomato clip, clips, old tights, clothes pegs, strips of cloth, tomato roller
grafting clip: grafting tape
corral: string corral, dahlia corral, post and string
hook: S hook, bracket, screw eye, pulley`,
  water: `
water butt: waterbutt, rain barrel, rainbarrel, water barrel, rainwater tank, water tank, IBC, IBC tank, tank, cistern, butt, downpipe, diverter, dipping tank, rain tank
hose: hosepipe, hose pipe, garden hose, garden hosepipe, hose reel, hose pipe end, spray gun, hose nozzle, lance, watering wand, hose trigger
soaker hose: leaky hose, seep hose, porous hose, weeping hose, leaky pipe, seephose, soaker
drip line: dripline, drip irrigation, drip tape, drippers, drip hose, drip system, irrigation line, irrigation system, irrigation, drip kit, bottle drip, emitters, micro irrigation
sprinkler: oscillating sprinkler, misting system, mister, overhead sprinkler, impact sprinkler
watering can: metal can
timer: water timer, irrigation timer, hose timer, tap timer, water computer
self-watering system: capillary matting, capillary mat, wicking mat, wick, reservoir, olla, buried pot, sunken bottle, upturned bottle
sprayer: spray bottle, knapsack sprayer, backpack sprayer, pump sprayer, mist sprayer, pressure sprayer
pump: solar pump, submersible pump, borehole, treadle pump, standpipe, tap, spigot, outside tap
rain gauge: raingauge, moisture meter, soil moisture meter
drain: land drain, soakaway, swale, ditch, French drain, bund, zai pit`,
  tool: `
spade: shovel, border spade, trenching spade, ladies’ spade, irish spade
fork: garden fork, digging fork, border fork, hand fork, potato fork, manure fork, pitchfork
broadfork: broad fork, two-handled fork
hoe: Dutch hoe, oscillating hoe, wheel hoe, onion hoe, stirrup hoe, draw hoe, swan neck hoe, collinear hoe, hula hoe, jembe, swoe, chillington hoe, mattock, azada, hori hori, panga, cutlass, machete
rake: garden rake, landscape rake, leaf rake, lawn rake, bow rake, thatch rake
trowel: hand trowel, copper trowel
dibber: dibbler, dibble, bulb planter, bulb auger
secateurs: pruners, pruning shears, snips tool, bypass pruners, secaturs, flower snips, clippers
loppers: long-reach pruner, pole pruner, pruning saw, saw, bow saw, chainsaw, pruning knife, budding knife, grafting knife
shears: hedge trimmer, hedge cutter, hedgetrimmer, hedge shears, edging shears, sheep shears
strimmer: line trimmer, weed whacker, whipper snipper, brushcutter, brush cutter, scythe, sickle, weed eater, slasher
mower: lawnmower, lawn mower, mulching mower
rotavator: rototiller, rotovator, tiller, power harrow, walking tractor, tractor, cultivator, rotary hoe
wheelbarrow: barrow cart, garden cart, wheel barrow, trolley
seeder: seed drill, seed sower, precision seeder, push seeder, jab planter, seed dibber board, wheel seeder
soil blocker: block maker, blocking tool, paper pot maker
sieve: riddle, soil sieve, compost sieve, garden sieve
line: garden line, planting line, planting board, yardstick, row marker, tape measure
label: plant label, plant tag, plant marker, lolly stick, slate label, row label, marker pen
glove: gardening gloves, knee pads, kneeler, kneeling mat
thermometer: max-min thermometer, min-max thermometer, soil thermometer, weather station, min max
heater: greenhouse heater, paraffin heater, fan heater, candle heater, propane heater, tea light heater, gas heater
heat mat: heated mat unit, soil warming cable, heating cable, seedling heat mat
grow light: growlight, LED light, LED grow light, fluorescent tubes, light unit
propagator: propagator lid, heated propagator unit, vented lid
pH meter: soil test kit, soil testing kit, ph kit
chipper: shredder, wood chipper, garden shredder, mulcher
fan: circulation fan, extractor fan, auto vent, automatic vent, vent opener, louvre
incinerator: flame weeder, weed burner, flame gun
weed puller: daisy grubber, weed wrench, dandelion weeder, crack weeder, grubber
ladder: stepladder, tripod ladder, orchard ladder, fruit picker, apple picker, picking pole
camera: trail camera, wildlife camera, trail cam
pruning paint: wound paint`,
  container: `
bucket and trug: trug tub, flexi-tub, tub trug, tubtrug
pots: stack of pots, module trays, seed trays, terracotta pots, fabric pots, pot feet, saucer, pot stand, drip tray
planter: wooden planter kit, trough unit, planter box, balcony box planter
window box: windowbox bracket
hanging basket: hanging basket bracket, basket liner
grow bag: growbags, grow bag tray, gro bag, growhouse
storage box: apple store, potato sack rack, clamp, root cellar, onion rack, drying rack, drying screen, dehydrator`,
};
