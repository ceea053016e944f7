/**
 * Pests, diseases, disorders and weather as people write them, with the cause they mean. From memory of garden and
 * extension handbooks of Britain, North America, Australia, Africa, India and the Caribbean.
 *
 * A row is the cause, then its other forms. Forms are compared by key, so a regular plural needs no form of its own;
 * "flies", "mice" and "leaves" do.
 */
import { keyOf, rowsOf } from "./rows.ts";

export type PestKind = "pest" | "disease" | "disorder" | "weather";

export interface Pest {
  /** What the trouble is called: "slugs", "potato blight". */
  readonly cause: string;
  readonly kind: PestKind;
}

let table: ReadonlyMap<string, Pest> | undefined;

/** The troubles by the key of each of their forms; made when first asked for. */
export function pestTable(): ReadonlyMap<string, Pest> {
  table ??= new Map(
    Object.entries(pestRows).flatMap(([kind, rows]) =>
      rowsOf(rows).flatMap(([cause, forms]) =>
        [cause, ...forms].map((form) => [keyOf(form), { cause, kind: kind as PestKind }] as const),
      ),
    ),
  );
  return table;
}

export const pestRows: Readonly<Record<PestKind, string>> = {
  pest: `
slugs: slug damage, slugged, keeled slug, slug trail, slug eaten
snails: snail damage, snail trail, giant African snail
caterpillars: caterpiller, loopers, webworm, tent caterpillar, grubs on leaves
cabbage white butterflies: cabbage white, cabbage butterfly, white butterfly, cabbage white caterpillar, cabbage worm, cabbageworm, imported cabbageworm, cabbage looper, cabbage moth
diamondback moth: DBM
whitefly: cabbage whitefly, white fly, white flies, glasshouse whitefly, silverleaf whitefly
blackfly: black fly, black flies, black bean aphid, black aphid
greenfly: green fly, green flies, rose aphid
aphids: aphis, woolly aphid, mealy aphid, root aphid, grey aphid, cabbage aphid, lettuce root aphid, mealy cabbage aphid, plum aphid, peach aphid, plant lice, plant louse
thrips: western flower thrip, onion thrip, thunderfly, thunderbug
red spider mite: spider mite, two-spotted mite, two-spotted spider mite, red spider, fruit tree red spider mite, spidermite
mites: broad mite, gall mite, russet mite, blister mite, big bud, big bud mite, bud mite, cyclamen mite, pear leaf blister mite
vine weevil: weevil, black vine weevil, vine weevil grub, weevil grub, vine weevil larvae, strawberry root weevil
pea and bean weevil: pea weevil, bean weevil, bean seed beetle
pea moth: pea maggot
flea beetle: cabbage flea beetle
pollen beetle
carrot fly: carrot flies, carrot root fly, carrot root flies, carrot rust fly, carrot rust flies, root fly damage
cabbage root fly: cabbage root flies, root fly, root flies, cabbage maggot, cabbage fly, root maggot
onion fly: onion flies, onion maggot
bean seed fly: bean seed flies, seedcorn maggot, bean fly, bean flies
leek moth: leek moth caterpillar, leek moth grub
allium leaf miner: allium leafminer, allium leaf mining fly, allium leaf mining flies
leaf miner: leafminer, beet leaf miner, beet leafminer, chrysanthemum leaf miner, spinach leaf miner, citrus leaf miner, leaf mine
asparagus beetle
lily beetle: red lily beetle, scarlet lily beetle
rosemary beetle
viburnum beetle
raspberry beetle: raspberry maggot, raspberry fruitworm
gooseberry sawfly: sawfly, sawfly larvae, sawfly caterpillar
apple sawfly
plum sawfly
rose sawfly: rose slug
Solomon’s seal sawfly
pear slug: pear slugworm, pear midge
codling moth: coddling moth, codlin moth, apple maggot, apple maggot fly, apple worm
plum moth: plum fruit moth, plum maggot
winter moth: winter moth caterpillar
box tree moth: box moth, box caterpillar, box tree caterpillar
tomato moth: tomato fruit worm, tomato fruitworm, corn earworm, earworm, bollworm, budworm, American bollworm
tomato leafminer: tuta absoluta, tuta
capsid bug: capsid, tarnished plant bug, lygus bug, common green capsid
shield bug: shieldbug, stink bug, stinkbug, green shield bug, green vegetable bug, brown marmorated stink bug, harlequin bug
squash bug
squash vine borer: vine borer, SVB, borer
hornworm: tomato hornworm, tobacco hornworm
Japanese beetle
cucumber beetle: striped cucumber beetle, spotted cucumber beetle
Colorado beetle: Colorado potato beetle, potato beetle, CPB
Mexican bean beetle: bean beetle, bean leaf beetle
28-spotted ladybird: hadda beetle, leaf-eating ladybird, epilachna beetle, potato ladybird
pumpkin beetle: red pumpkin beetle, melon fly, melon flies
chafer grubs: chafer, cockchafer, white grub, curl grub, June bug, June beetle, rose chafer, lawn grub, grubs, black beetle grub
Christmas beetle
leafhopper: leaf hopper, potato leafhopper, jassid, sharpshooter
froghopper: spittlebug, cuckoo spit
psyllid: potato psyllid, tomato potato psyllid, TPP, pear sucker, bay sucker, citrus psylla
scale: scale insect, soft scale, cottony scale, citrus scale
mealybug: mealy bug, pink hibiscus mealybug, papaya mealybug
cutworm: cut worm
wireworm: wire worm
leatherjackets: cranefly larvae, crane fly, crane flies
millipedes
woodlice: woodlouse, woodlice damage, slater, pill bug, pillbug, sowbug, rolypoly
roly-polies
earwigs
insects: bugs, creepy crawly, insect damage
ants: leafcutter ant, fire ant, ants nest, sugar ant
termites: white ant
grasshoppers
crickets
locusts
mole crickets
bush crickets
fungus gnats: sciarid fly, sciarid flies, sciarid, compost fly, compost flies
fruit fly: fruit flies, Queensland fruit fly, Queensland fruit flies, QFF, Mediterranean fruit fly, spotted wing drosophila, SWD
stem borer: stalk borer, maize stalk borer, corn borer, European corn borer
shoot and fruit borer: fruit borer, brinjal borer, pod borer, shoot borer
fall armyworm: armyworm, army worm, fall army worm, African armyworm, FAW
sweet potato weevil
banana weevil
citrus gall wasp: gall wasp
wasps: yellow jacket
hornets
nematodes: nematode damage, root knot, root knot nematode, rootknot, harmful nematode
eelworm: potato cyst eelworm, potato eelworm, cyst nematode, stem eelworm
narcissus fly: narcissus flies, narcissus bulb fly
swift moth: swift moth caterpillar
pigeons: woodpigeon, wood pigeon, pigeon damage, pidgeon, pigeon pecked
birds: bird damage, bird pecked, pecked by birds
blackbirds
sparrows: house sparrow
starlings
mynahs
mynas
bullfinches
jays
crows
rooks
jackdaws
magpies
ravens
pheasants
partridges
guinea fowl
parrots
cockatoos
galahs
corellas
rosella parrots
lorikeets
parakeets
king parrots
bulbuls
mousebirds
silvereyes
waxeyes
bowerbirds
hens: chicken, chook
cockerels
roosters
the girls
ducks
geese: goose
turkeys: brush turkey, wild turkey, bush turkey, scrub turkey
peacocks: peafowl
mice: mouse, field mouse, field mice, mouse damage, mouse eaten
voles: bank vole, water vole, pine vole, meadow vole
rats: roof rat, rat damage, cane rat
moles: mole run, molehill, mole hill
gophers: pocket gopher
groundhogs: woodchuck, whistle pig, marmot
ground squirrels
squirrels: grey squirrel, red squirrel
chipmunks
rabbits: rabbit damage, cottontail
bunnies
hares
jackrabbits
deer: roe deer, roebuck, deer damage, white-tailed deer, browsing deer, mule deer
muntjac
moose
elk
badgers
foxes: fox cub
hedgehogs
cats: cat poo, kitten
dogs: puppy
raccoons: racoon, coon
skunks
opossums: possum, brushtail possum
armadillos
porcupines: quill pig
wallabies
kangaroos
roos
pademelons
wombats
bandicoots
flying foxes: fruit bat, bats in fruit
monkeys: vervet, vervet monkey, langur
baboons
mongooses: mongoose damage
bush pigs: bushpig, wild pig, feral pig, pigs in garden
wild boars
warthogs
duikers
bushbucks
antelopes
steenboks
elephants
hippos
goats
sheep
cows
cattle
ponies
llamas
iguanas
land crabs
agoutis: agouti
leafcutter bees: leafcutter bee damage, leaf-cutter bee`,
  disease: `
blight: blighted, potato blight, tomato blight, late blight, early blight, phytophthora infestans, blight on
fire blight: fireblight
box blight: box blighted
chocolate spot: choc spot
powdery mildew: white mildew, mildewed leaves, powdery mildewed
downy mildew: downey mildew
mildew: mildewed, mildewy
rust: rusty leaves, leek rust, garlic rust, bean rust, mint rust, rose rust, hollyhock rust, pear rust, plum rust, raspberry rust, coffee rust, rusted
myrtle rust: guava rust
white blister: white rust
black spot: blackspot, rose black spot, citrus black spot
leaf spot: leafspot, septoria, septoria leaf spot, beet leaf spot, strawberry leaf spot, cercospora, alternaria, leaf blotch, bacterial spot, angular leaf spot
bacterial leaf spot: bacterial speck
anthracnose: anthracnose of beans
grey mould: gray mold, botrytis, grey mold, gray mould, ghost spot
tulip fire: tulip blight
peony wilt: peony blight
mould: mold, mouldy, moldy, mould on, leaf mold disease, tomato leaf mould
sooty mould: sooty mold
damping off: damped off, dampening off, damp off
root rot: rootrot, phytophthora, phytophthora root rot, pythium, rhizoctonia, avocado root rot, dieback root rot
foot rot: stem rot, crown rot, collar rot, basal rot, neck rot, onion neck rot, southern blight
brown rot: monilia, blossom wilt
soft rot: bacterial soft rot
white rot: onion white rot, allium white rot
clubroot: club root, finger and toe
white mould: sclerotinia, white mold
scab: common scab, potato scab, apple scab, pear scab, powdery scab, scabby, citrus scab
blackleg: black leg
ring rot: dry rot, gangrene
canker: apple canker, bacterial canker, parsnip canker, citrus canker
silver leaf: silverleaf disease
peach leaf curl: leaf curl, curly leaf, peach curl
honey fungus: armillaria
coral spot: dieback
fairy ring: toadstool
wilt: verticillium, verticillium wilt, fusarium, fusarium wilt, bacterial wilt, clematis wilt, tomato wilt, fusarium yellows, aster wilt
Panama disease: sigatoka, black sigatoka, bunchy top, banana bunchy top
mosaic virus: mosaic, cucumber mosaic virus, CMV, tobacco mosaic virus, TMV, mosaic disease, cassava mosaic, bean mosaic, zucchini yellow mosaic
virus: viral disease, tomato spotted wilt, spotted wilt virus, leaf curl virus, tomato leaf curl virus, yellow leaf curl, curly top, leafroll, potato virus, brown streak, rose rosette, tomato brown rugose, dahlia virus
reversion: reversion virus
citrus greening: huanglongbing, HLB
aster yellows: phytoplasma
crown gall: leafy gall, galls
pocket plum: plum pocket
bitter pit
shothole: shot hole
hellebore black death: black death
smut: corn smut, onion smut
violet root rot: cavity spot
foot and root rot: root disease
lettuce big vein: big vein
walnut blight: walnut leaf blotch
quince leaf blight: quince blight
fungus: fungal disease, fungal infection
disease: diseased, bacterial disease
halo blight: bean halo blight
purple blotch: leek white tip
ergot: dodder`,
  disorder: `
blossom end rot: BER, bottom rot, end rot
tip burn: tipburn, brown tips, leaf tip burn
sunscald: sun scald, sunburn, sunburnt, sun scorch, sun burn, sunscorch
scorch: leaf scorch, scorching
splitting: split fruit, fruit split, split skin, splits
cracking: fruit cracking, cracked fruit
bolting: bolted, bolt to seed, gone to seed, going to seed, went to seed, run to seed, ran to seed, running to seed, gone over to flower, premature flowering, bolters
buttoning: buttoned, small curds
blown sprouts: blown buttons
chlorosis: chlorotic, yellow veins, interveinal chlorosis, iron deficiency, lime-induced chlorosis
magnesium deficiency: magnesium shortage
nitrogen deficiency: lack of nitrogen, nitrogen starved
calcium deficiency: lack of calcium
potassium deficiency: potash deficiency
boron deficiency: hollow stem
nutrient deficiency: deficiency, starved, hungry plants
blossom drop: flower drop, blossom dropping, bud drop, flower abortion
fruit drop: June drop, fruitlet drop, aborted fruit, fruit abortion
poor pollination: poor fruit set, no fruit set, not pollinated, unpollinated
forking: forked, forked roots, fanging, fanged
greening: green potato, green shoulders, greenback
ghost fruit: catfacing, cat-facing, zippering, malformed fruit
leaf roll: leaf rolling, rolled leaves, oedema, edema, leaf curling from cold
internal browning: hollow heart
transplant shock: transplant check, checked by transplanting
herbicide damage: herbicide drift, weedkiller damage, spray drift, aminopyralid, contaminated manure, weedkiller
overwatering: overwatered, over-watering, over-watered, too much water
underwatering: underwatered, under-watering, lack of water, not watered, want of water
neglect: neglected, forgotten
poor germination: no germination, failed to germinate, did not germinate, old seed
drawn seedlings: etiolated, etiolation, drawn
overcrowding: overcrowded, crowded out
pot bound: potbound, rootbound, root-bound
poor soil: compaction, compacted soil, soil too acid
competition: tree roots, swamped by weeds, smothered by weeds, weed competition
die-back: reverted, winter die-back
old age: exhausted plants, worn out plants
trampled: trodden on, trampling, stood on, kicked by a football, squashed underfoot
strimmer damage: strimmed, mown over, hoed off by mistake
theft: stolen, pinched by thieves, vandalism, vandals, nicked`,
  weather: `
frost: frosted, late frost, air frost, ground frost, hard frost, frost damage, frost bitten, frostbitten, killing frost, spring frost, black frost, first frost
freeze: frozen, deep freeze, hard freeze, froze, big freeze, polar vortex
cold: cold snap, cold spell, chill, cold nights, cold weather, winter cold
snow: heavy snow, snow load, snow damage, blizzard
ice: ice storm, ice damage, icy
hail: hailstorm, hailstones, hail storm, hail damage, hailed
wind: gale, high winds, strong wind, wind rock, windrock, wind burn, windburn, wind damage, gusts, blown over, blew over, blown down, blown away, north-easter, south-easter, flattened by wind, salt wind
storm: thunderstorm, stormy, storm damage, hurricane, cyclone, tornado, typhoon, derecho, monsoon storm, tropical storm
rain: heavy rain, downpour, deluge, torrential rain, rain damage, too much rain, cloudburst, rained out, flattened by rain, long rains, monsoon rain
wet: wet winter, wet weather, wet summer, winter wet, damp weather, too wet
flooding: flood, flooded, under water, flash flood
waterlogging: waterlogged, water logging, water-logged, waterlogged soil, sodden, boggy
drought: dry spell, drought stress, droughted, lack of rain, no rain, water restrictions, hosepipe ban, dry weather, dry summer
heat: heatwave, heat wave, heat stress, hot spell, hot weather, extreme heat, heat damage, heat dome, too hot, cooked in greenhouse
strong sun: too much sun, hot sun, scorching sun, baked
low light: lack of light, poor light, gloom, dull weather, not enough light
fog: mist, humidity, muggy weather
lightning: lightning strike
smoke: wildfire smoke, bushfire, wildfire, fire damage
salt damage: salt spray`,
};
