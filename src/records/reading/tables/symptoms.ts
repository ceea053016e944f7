/** What a plant looks like when something is wrong with it, in the words people use; by the sign they are words for. */
import { keyOf, rowsOf } from "./rows.ts";

let table: ReadonlyMap<string, string> | undefined;

/** The sign by the key of each form; made when first asked for. */
export function symptomTable(): ReadonlyMap<string, string> {
  table ??= new Map(
    rowsOf(symptomRows).flatMap(([sign, forms]) => [sign, ...forms].map((form) => [keyOf(form), sign] as const)),
  );
  return table;
}

export const symptomRows = `
yellowing: yellowed, yellow leaves, yellow leaf, turning yellow, gone yellow, going yellow, yellowy, pale leaves, yellow patches, yellow lower leaves, yellowish
browning: browned, brown leaves, going brown, gone brown, turning brown, brown patches, brown edges, brown spots, brown marks, browned off
blackening: blackened, black leaves, gone black, black stems, black patches, turned black
purpling: purple leaves, gone purple, purpled, purple tinge
reddening: red leaves, reddened
silvering: silvered, silvery leaves, silver leaves
bleaching: bleached, bleached leaves
wilting: wilted, wilty, droopy, drooping, drooped, flopped, flopping, floppy, flagging, flagged, limp, collapsed, collapsing, keeled over, keeling over, sulking, sulked, sulky
holes in leaves: holes in leaf, holes in the leaves, holey, full of holes, holey leaves, riddled, riddled with holes, tiny holes, lacy leaves, like lace, laced, pinholes, holed
chewed: chewed up, chewed leaves, gnawed, chomped, munched, chewing, gnawing
nibbled: nibbling, nibbles, nibbled at, pecked, pecked at, shredded, ragged leaves, tattered
eaten: eaten off, eaten down, eaten back, eaten to stumps, half eaten, stripped, stripped bare, defoliated, skeletonised, skeletonized, skeletons, decimated, devastated, demolished, mown down, mowed down, grazed, browsed, razed, munched to stumps
bitten off: nipped off, cut off at the base, felled, snapped off at ground, toppled, severed
dug up: scraped up, scratched up, scratched out, uprooted, rooted up, pulled out of the ground
rotted: rotting, rotten, rot, gone rotten, rotted off, rotted away, mushy, gone mushy, slimy, soggy, gone to mush, gone soft, turned to mush
furry mould: mouldy leaves, fluffy mould, fuzzy mould, furry, fuzzy, mildewy leaves, white powder, powdery leaves, powdery coating, dusty leaves, white bloom
spotted: spotty, spots on leaves, speckled, blotched, blotchy, blotches, mottled, mottling, pitted, pockmarked, warty, lesions
curled: curling, curled leaves, leaf curl up, curled up, rolled up, crinkled, puckered, puckering, cupped, distorted, twisted, deformed, contorted, crinkly
sticky: stickiness, honeydew on leaves, sticky leaves
webbing: webbed, webs, cobwebby, fine webs
tunnelled: tunneled leaves, tunneled, tunnels in leaf, mined, mined leaves, squiggly lines, trails in leaves, maggoty, maggots, wormy, frass
scorched: singed, crisped, crispy, crisp leaves, frazzled, fried, burnt, burned, burnt tips, toasted, crispy edges, sunbleached
stunted: stunting, dwarfed, runty, runts, tiny plants, not growing, stalled, checked, puny, weedy plants, no growth, stopped growing, standing still, slow growing
leggy: lanky, spindly, stretched, drawn up, straggly, gangly, etiolated look
thin: sparse, patchy, gappy, gaps, gaps in row, patchy germination, poor germ, patchily
weak: feeble, weakly, sickly, poorly, sick, ailing, struggling, unhappy, miserable, sad looking, looking sad, sorry looking, looking sorry for itself, peaky, off colour, manky, ropey, pathetic, hanging on, touch and go, on its last legs, ratty
shrivelled: shriveled, shrivelling, withered, withering, shrunken, dried up, dried out, dried to a crisp, desiccated, crispy brown, parched
dropping leaves: leaf drop, leaf fall, dropped leaves, lost leaves, losing leaves, shedding leaves, bare stems, dropped its leaves
dropping fruit: dropped fruit, windfalls, shedding fruit, dropped buds, dropping flowers
split open: splitting open, cracked, cracks, burst, burst open, crazed skin
misshapen: wonky, lumpy, knobbly, stumpy, malformed, mis-shapen, gnarled, bent, curly fruit, hairy roots
woody: pithy, stringy, tough, fibrous, hollow, spongy, mealy texture, cottony
bitter: bitter taste, bitter tasting, tasteless, watery, hot and bitter
gone over: past it, past its best, going over, over the hill, finished flowering, blown
snapped: snapped off, broken, broken stem, broken off, broken branch, split branch, flattened, lodged, fallen over, fell over, leaning, flat on the ground, battered, smashed, bruised, torn, crushed, trampled look
blind: gone blind, no flowers, no flower buds, blind bulbs, all leaf, all leaf and no flower, all leaf and no fruit, no fruit, no heads, not hearting
bare patch: bald patch, missing plants, vanished, disappeared, gone missing, all gone, not a trace
infested: infestation, covered in, crawling with, smothered in, plagued, riddled by, overrun, swarming with
damaged: damage, hammered, clobbered, ravaged, wrecked, hit hard, knocked back, set back, cut back by frost, nipped, caught by frost, touched by frost
dying: dying off, dying back, died back, dying from the top, dead tips, half dead, on the way out, dead leaves`;
