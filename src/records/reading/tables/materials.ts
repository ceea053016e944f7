/**
 * Feeds, mulches, composts and treatments, in the words people use; by the thing they name. What is listed is what people
 * write, not advice: of sprays and treatments the product's label and local rules hold.
 */
import { keyOf, rowsOf } from "./rows.ts";

export type MaterialKind = "feed" | "mulch" | "compost" | "treatment";

export interface Material {
  readonly name: string;
  readonly kind: MaterialKind;
}

let table: ReadonlyMap<string, Material> | undefined;

/** The materials by the key of each form; made when first asked for. */
export function materialTable(): ReadonlyMap<string, Material> {
  table ??= new Map(
    Object.entries(materialRows).flatMap(([kind, rows]) =>
      rowsOf(rows).flatMap(([name, forms]) =>
        [name, ...forms].map((form) => [keyOf(form), { name, kind: kind as MaterialKind }] as const),
      ),
    ),
  );
  return table;
}

export const materialRows: Readonly<Record<MaterialKind, string>> = {
  feed: `
comfrey tea: comfrey feed, comfrey liquid, comfrey juice, comfrey brew, comfrey leaves, comfrey pellets
nettle tea: nettle feed, nettle liquid, nettle brew, stinging nettle tea
seaweed feed: seaweed, seaweed extract, liquid seaweed, seaweed solution, seaweed tonic, kelp, kelp meal, seaweed meal, liquid kelp
tomato feed: tomato food, tomato fertiliser, tomato fertilizer, tom feed, high potash feed, liquid tomato feed
liquid feed: liquid fertiliser, liquid fertilizer, plant food, plant feed, liquid food, general feed, foliar feed, half strength feed, weak feed, dilute feed, high nitrogen feed, balanced feed, fertigation
fish emulsion: fish feed, fish fertiliser, fish fertilizer, liquid fish, fish hydrolysate, fish and kelp, fish meal
blood fish and bone: fish blood and bone, BFB, FBB, blood and bone, fish blood bone, blood bone and fish, blood fish bone
bonemeal: bone meal
blood meal: dried blood
hoof and horn: feather meal, horn meal
chicken manure pellets: chicken pellets, poultry pellets, poultry manure pellets, pelleted chicken manure, chook poo pellets, pelleted manure, hen pellets
general fertiliser: fertiliser, fertilizer, granular fertiliser, granular fertilizer, slow release fertiliser, slow release fertilizer, controlled release fertiliser, NPK, 10-10-10, balanced fertiliser, balanced fertilizer, artificial fertiliser, fert, plant fertiliser, DAP, top dressing, 5-10-10
sulphate of potash: potash, sulphate potash, potassium sulphate, sulfate of potash, muriate of potash, potassium
sulphate of ammonia: ammonium sulphate, urea, nitrate, calcium nitrate, nitrogen
superphosphate: rock phosphate, triple superphosphate, phosphate
Epsom salts: magnesium sulphate, magnesium
sequestered iron: chelated iron, iron chelate, iron feed, iron sulphate
ericaceous feed: acid feed, azalea feed, rhododendron feed
rose feed: rose food, citrus feed, citrus food, fruit feed, bulb feed, orchid feed, lawn feed
worm tea: worm juice, worm wee, worm castings tea, vermicast tea, wormery liquid, worm liquid
compost tea: aerated compost tea, manure tea, manure feed, jeevamrut, jeevamrit, panchagavya, bokashi juice, bokashi liquid, plant tea, fermented plant juice
wood ash: ash, bonfire ash, stove ash
rock dust: basalt dust, greensand, volcanic rock dust
mycorrhizal fungi: mycorrhiza, mycorrhizae, micorrhizal, root powder, mycorrhizal powder
inoculant: rhizobium, legume inoculant, pea inoculant
urine: pee, diluted urine, wee
alfalfa meal: soybean meal, cottonseed meal, neem cake, mustard cake, oil cake, cake fertiliser, coffee grounds feed
sugar beet molasses: molasses`,
  mulch: `
wood chip: woodchip, wood chippings, chippings, arborist chips, ramial chip, woodchip mulch
bark: bark chip, bark mulch, bark chippings, composted bark, pine bark, bark nuggets, shredded bark
straw: barley straw, straw bale, straw mulch, wheat straw, oat straw, pea straw, lucerne straw, straw round
hay: mulch hay, spoiled hay, old hay, lucerne hay, meadow hay, salt hay, lucerne mulch, alfalfa hay
leaf mould: leafmould, leaf mold, leafmold, rotted leaves
leaves: autumn leaves, fallen leaves, shredded leaves, dead leaves mulch, chopped leaves
grass clippings: grass cuttings, lawn clippings, lawn mowings, mowings, grass mulch, clippings, cut grass, dried grass
pine needles: pine straw, conifer needles
bracken: fern mulch, chopped bracken
gravel: grit mulch, pea shingle, shingle, slate chippings, slate, pebbles, stones, pea gravel, crushed granite
mulch: mulching material, chop and drop, living mulch
sheep wool: wool pellets, wool mulch, sheepswool, wool mat, fleece wool, daggings, dags
cocoa shells: coffee husks, rice hulls, rice husks, groundnut shells, peanut shells, bagasse, sugar cane mulch, sugarcane mulch, cane mulch, buckwheat hulls, coconut husk, coco chips, macadamia husk, maize stover
sawdust: shavings, wood shavings, animal bedding, hemp bedding
straw pellets: mineralised straw
banana leaves: banana trunk, dry grass, thatch grass, vetiver mulch
cardboard mulch: newspaper mulch, shredded paper, paper mulch`,
  compost: `
compost: home compost, homemade compost, home-made compost, garden compost, own compost, good compost, finished compost, sieved compost, kitchen scraps, composted kitchen waste
multipurpose compost: multi-purpose compost, MPC, potting mix, potting compost, potting soil, peat free compost, peat-free, shop bought compost, bagged compost, bought compost, new compost, premium potting mix, bought-in compost
seed compost: seed mix, seed-starting mix, seed raising mix, seedling mix, sowing compost, seed starter, seed and cutting compost, propagation mix
John Innes: John Innes no 2, John Innes no 3, loam-based compost, JI no 3
ericaceous compost: acid compost, lime-free compost, azalea mix
spent compost: old compost, used compost, spent mushroom compost
mushroom compost: mushroom manure, mushroom soil
green waste compost: green waste, municipal compost, council compost, soil improver, soil conditioner, greenwaste compost
manure: well rotted manure, farmyard manure, FYM, horse manure, cow manure, muck, rotted manure, horse muck, stable manure, composted manure, pig manure, sheep manure, goat manure, llama poo, alpaca poo, alpaca manure, rabbit manure, cow dung, dung, gobar, steer manure, boma manure, kraal manure, aged manure, muck heap, fresh manure, zoo poo, cow muck, bull dung, guano, bat guano, chicken manure, poultry manure, chook manure, pigeon manure, duck manure
vermicompost: worm castings, wormcast, worm casts, worm compost, vermicast
bokashi: bokashi bran, bokashi compost
biochar: bio char, charcoal, charcoal fines, terra preta
perlite: pearlite
vermiculite: vermiculite topping, vermic, vermiculite fine
grit: horticultural grit, sharp sand, sand, horticultural sand, silver sand, potting grit, alpine grit, coarse sand, river sand, washed sand, pumice
coir: coco coir, coir brick, coir block, coco peat, cocopeat
peat: peat moss, sphagnum moss, sphagnum, moss peat
topsoil: top soil, loam, soil, garden soil, molehill soil, subsoil, black soil, red soil, clay, three way mix, veggie mix, garden mix, raised bed mix, planting mix
spent hops: brewers grains, spent grain, grape marc, pomace, olive waste, fish waste
coffee grounds: used coffee grounds, tea leaves, eggshells, egg shells, crushed eggshells
green manure: cover crop, catch crop, green manure mix, cover crop mix`,
  treatment: `
lime: garden lime, dolomite lime, dolomite, ground limestone, calcified seaweed, agricultural lime, hydrated lime, ag lime, dolomitic lime, limestone, chalk
gypsum: clay breaker, calcium sulphate
sulphur: sulphur chips, sulfur, sulphur dust, wettable sulphur, flowers of sulphur, elemental sulfur, lime sulphur
neem: neem oil, neem spray, neem drench, azadirachtin
soap spray: insecticidal soap, soft soap, soapy water, soap, washing up liquid spray, washing-up liquid, dish soap, horticultural soap, potassium soap, castile soap, fatty acids, soap solution
pyrethrum spray: pyrethrin, pyrethroid
horticultural oil: dormant oil, winter oil, winter wash, plant oil wash, tar oil wash, white oil, mineral oil, dormant spray, canola oil spray, fish oil spray, fruit tree wash
Bt: BT spray, bacillus thuringiensis, BtK, bt kurstaki
spinosad
beneficial nematodes: nematode drench, slug nematodes, vine weevil nematodes, biological control, parasitic wasps, ladybird larvae, predatory mites, encarsia, phytoseiulus, lacewing larvae, biocontrol, parasitoid, nemotodes
slug pellets: slug bait, ferric phosphate, iron phosphate, organic slug pellets, snail bait, snail pellets, metaldehyde, slug killer, wool slug pellets, ferric phosphate pellets
diatomaceous earth: diatomaceous
kaolin clay: kaolin, kaolin spray
copper spray: copper fungicide, Bordeaux mixture, bordeaux, copper oxychloride, copper, copper sulphate
fungicide: fungicidal spray, systemic fungicide, mancozeb, bicarbonate spray, bicarbonate of soda, baking soda, potassium bicarbonate, bicarb, milk spray, milk and water, milk, horsetail tea, chamomile tea, cinnamon, hydrogen peroxide, rose spray, aspirin water
insecticide: bug spray, bug killer, pesticide, systemic insecticide, ant powder, ant killer, permethrin, malathion, carbaryl, fly spray, spray, acephate
herbicide: weedkiller spray, weed killer, glyphosate, vinegar spray, horticultural vinegar, brush killer
garlic spray: garlic wash, garlic drench, chilli spray, pepper spray, garlic and chilli spray, garlic tea, hot pepper spray, wood ash dusting, nettle spray, tobacco tea, rhubarb leaf spray
deer repellent: repellent, deterrent, rabbit repellent, cat repellent, animal repellent, blood meal repellent, human hair, soap bars, lion dung, predator urine, coyote urine, pepper dust, chilli powder, cayenne dust, citrus peel
rooting powder: rooting hormone, hormone rooting powder, rooting gel, willow water, honey for cuttings, rooting compound
rat poison: rodent bait, mouse bait, rodenticide, warfarin
disinfectant: garden disinfectant, bleach, bleach solution, methylated spirit, rubbing alcohol, isopropyl alcohol
tree wound paint: grafting wax, pruning sealer, whitewash on trunk
boiling water: salt water
sugar soap: greenhouse cleaner, algae cleaner`,
};
