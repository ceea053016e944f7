/**
 * What gardeners say was done or seen, and the kinds of event it may mean, the likeliest first. A word of several kinds
 * proposes them all: what it was done to, and the rest of the line, decide between them.
 *
 * A row is "kinds: forms". Of a regular verb only the base form stands and its other forms are made ("net*" doubles its
 * last letter, "/" sets irregular forms apart); forms of several words, and those in quotation marks, stand as they are.
 */
import type { EventKind } from "../../model.ts";

export interface Lemma {
  /** Words of the form in lower case, without accents and apostrophes. */
  readonly words: readonly string[];
  readonly kinds: readonly EventKind[];
  /** "plant", "nets": also a noun, and a verb only where a verb can stand. */
  readonly bare: boolean;
}

const rows = `
sowed: sow/sowed/sown/sowing, seeded, direct sow/sowed/sown, broadcast/broadcasted/broadcasting, drill/drilled/drilling, resow/resowed/resown, re sow/sowed/sown, undersow/undersowed/undersown, oversow/oversown, seeds in, seed in, seed sown, seeds started, sown in, started off, start off, set off, started from seed, soak/soaked and sow/sowed, chit and sow, first sowing, second sowing, third sowing, last sowing, sowing of, succession sowing, sprinkled, scattered, direct seeded, direct seed, station sown, chucked in some, threw some, threw in, tossed in, surface sown, seed pressed, pushed in
sowed planted: start/started/starting, pop*/popped in, popped, poke/poked in, put down, put in, stuck in, stick in, bung/bunged in, got in, get in, went in, go in, gone in, going in, going into, went into, are in, is in, now in, all in, in they went, in they go, in it went, in goes, in go, in today, into the ground, in the ground, in ground, set/set in, laid in, drop/dropped in, shove/shoved in, tucked in, tuck/tucked, push/pushed in, pressed in, pressed into, interplant/interplanted, succession, dibbed, dib*/dibbed in, dibbled in, dibbled
planted: plant/planted/planting, plant/planted out, planted up, transplant/transplanted/transplanting, set/set out, setting out, plugged in, plugged, bed*/bedded out, bedded in, replant/replanted, underplant/underplanted, lined out, heel/heeled in, put out, gone out, went out, go out, going out, out now, plugs in, sets in, slips in, tubers in, bulbs in, bare roots in, crowns in, corms in, cloves in, homed, into their final, in their final, final spacing, final home, final pots, xplanted, transpl, tp'd, settled in, in situ, popped out, knocked in
potted on: pot*/potted, pot/potted on, pot/potted up, repot*/repotted, re pot/potted, prick/pricked out, pricked off, bump/bumped up, up pot/potted, uppotted, move/moved up, stepped up, upgraded to, p on, pricking out, potting on, potting up, bigger pots, into bigger pots, into larger pots
up: germinate/germinated/germinating, germ, germination, emerge/emerged/emerging, sprout/sprouted/sprouting, come/came/coming up, come up, popped up, popping up, poking up, poke up, poking through, poked through, poking thru, pushing up, through, are up, is up, all up, up already, now up, just up, up and, up today, up now, appearing, now appearing, over ground, above ground, came out, come out, coming out, looking out, cracked the soil, breaking ground, breaking the surface, broke the surface, showing, shewing, seedlings up, first seedlings, hatched, cracked the soil, nosing up, hooped, looping up, risen, through the soil, out of the ground, pipped, chitting
came back up: back, back again, came back, come back, coming back, returned, returning, overwintered, over wintered, survived, survived the winter, made it through, came through, come through, through the winter, through again, up again, resprouted, re sprouted, reshooting, shooting, reshot, leafing out, leafed out, leafing up, breaking bud, breaking dormancy, budding up, buds breaking, budbreak, bud break, alive after all, not dead, is alive, are alive, showing again, waking up, woke up, woken up, nosing through, noses, red noses, nose showing, buds swelling, shooting from the base, green at the base, growing again, sprouting from, lives
flowered: first open, 1st open, flower/flowered/flowering, flwr, flwrs, flrs, flr, in flwr, in flr, make flowers, flowers open, blossom open, bloom/bloomed/blooming, blossom/blossomed/blossoming, first flower, first flowers, first bloom, first blooms, first blossom, in flower, in bloom, in blossom, into flower, into bloom, full flower, full bloom, flowers open, flower open, open today, opened, opening, has opened, have opened, out in flower, buds open, buds opening, first truss out, in full, flowers on, blooms on, flowers out, blossom out, blossom on, tassels, tasselling, tasseling, silking, in silk, first tassel
fruited flowered: set/sets/set fruit, setting fruit, fruit set, fruit setting, first truss set, truss set, has set, have set, set well, setting, first fruit, first fruits, first fruit set, first pod, first pods, pods forming, podding, podding up, swelling, first tomato showing, first baby, bulbing, bulbing up, hearting, hearting up, heading up, heads forming, first cob, curds forming, colouring, coloring, colouring up, turning red, blushing, first blush, fruitlets, first green tomatoes, tiny fruit, baby fruit, fruiting, fruited, marble sized
picked: pick/picked/picking, plucked, first ones, hvst, harv, hvstd, pkd, pick/picked off, harvest/harvested/harvesting, gather/gathered/gathering, collected, foraged, first picking, first pick, last picking, second picking, third picking, last pick, final pick, first harvest, first cut, second cut, third cut, last cut, last of the, first of the, first haul, haul, haul of, haul today, yield, yielded, brought in, came in at, brought home, carried in, tipped the scales, weighed in at, weighed in, weighed out, totals, totalled, basket of, harvest of, robbed, robbing, bandicooted, furtled, snapped off, twisted off, twist/twisted, twisted out, snip*/snipped, cut and come again, ate, eaten, eating, had for tea, for tea, for dinner, for supper, for lunch, into the kitchen, reaped, reap/reaped, plucked, pluck/plucked, stripped, shelled, husked, shucked, podded, on the scales, off the plants, first ripe, ripe today, windfalls, windfall
picked did cleared: cut/cut/cutting, cuts, lift/lifted/lifting, dug/dug/digging, dig/dug up, dug out, pull/pulled/pulling, pulled up, took/taken, took off, took the, taken off, off today, off the, off already, off
thinned: thin*/thinned/thinning, thin/thinned out, singled, made single, culled, rogued, thinned to, down to
cleared: clear/cleared/clearing, clear/cleared out, grub*/grubbed up, grubbed out, rip*/ripped out, rip/ripped up, yank/yanked, yank/yanked out, tear/tore/torn out, took out, taken out, pull/pulled out, hauled out, chopped down, on the compost, to the compost, on the heap, to the heap, compost heap, composted the, composted, finished and out, finished and, over and out, out and composted, gone to compost, dug in, mown off, mowed off, are out, all out, is out, out now, out they came, are finished, is finished, has finished, have finished, are done, all done, is over, are over, gone over, came out, come out, come away, called it, called time on, stripped out, evicted, retired, binned, bin bag, up and out, out to the heap
lost trouble: lost, lose/lost/losing, die/died/dying, died off, died back, dead, killed, kill/killed, kilt, perished, didnt make it, did not make it, not made it, failed to germinate, failed, fail, no show, no shows, nothing came up, never came up, never germinated, rotted off, rotted, drowned, fried, cooked, crispy, toast, gone, all gone, goners, gonner, vanished, disappeared, casualty, casualties, RIP, deceased, written off, snapped off, snapped, flattened, blown over, blew over, laid flat, trampled, dug up by, taken by, took by, pinched by, nicked by, eaten by, ate by, eaten off, eaten down, had the lot, have had the, had them, had em, had the, got the, got into, got at, took the lot, wiped out, croaked, croke, kaput, cactus, carked it, karked it, snuffed it, popped its clogs, conked out, bit the dust, bought the farm, winterkilled, winter killed, blackened, mush, to mush, cut down by, chewed off, chewed down, felled, decapitated, beheaded, razed, stripped by, cleaned out, cleaned out by, scoffed, munched, demolished, massacred, damped off, damping off, keeled over, collapsed, fell over, withered, dried up, shrivelled, shriveled, frosted, frosted off, zapped, nipped, burnt off, yote
trouble: trouble, spotted, found, noticed, discovered, saw, seen, first signs of, signs of, infested, infested with, attacked, attacking, chew/chewed/chewing, nibble/nibbled/nibbling, munching, eating, damaged, damage, hit by, struck, down with, riddled with, full of, covered in, crawling with, smothered in, hooching with, loupin wi, bolt/bolted/bolting, gone to seed, going to seed, run to seed, running to seed, ran to seed, shot to seed, yellowing, yellow leaves, going yellow, gone yellow, wilt/wilted/wilting, rotting, split/splitting, splitting, cracked, dropping, dropping buds, curling, scorched, sunburnt, sunburned, sunscald, holes in, full of holes, spots on, spot on, mildewed, blighted, rusty, mouldy, moldy, stung, leggy, chlorotic, stunted, galled, tunnelled, mined, burrowing, been at, back on the, on the underside, under the leaves, webbing, frass, sticky leaves
cured: cured, cleared up, all clear, clear of, free of, clean again, all gone, quite gone, have gone, has gone, is gone, are gone, gone from, recovered, recovering, grown out of, got over, over it, no new cases, no more, not a single, not one left, not an, under control, beaten, seen off, sorted, finished off, back to health, perked up, bounced back
gave away: give/gave/given, gave away, given away, giving away, hand/handed over, handed to, hand/handed, donate/donated, dropped off, drop off, sent, sent home with, passed on, passed to, pass/passed, went to, gone to, off to, go to, goes to, to the food bank, food bank, foodbank, swapped, swap*/swapped, traded, trade/traded, left on the doorstep, took round, took over to, taken to, shared, shared out, distributed, pressed on, pressed into, foisted, rehomed, surplus to, spares to, took to the, to the neighbours, delivered, deliver/delivered, presented
sold: sold, sell/sold/selling, sold out, sold off, honesty box, farm stand, farmstand, market stall, box scheme, restaurant order, florist took, went for, fetched, takings
acquired: bought, buy/bought, buying, purchase/purchased, got from, got off, got some, got a, got the, got in, picked up, arrived, arrive/arrived, delivered, came today, came in the post, came in the mail, in the post, in the mail, turned up, has come, have come, seed order, seeds arrived, box came, order came, order arrived, swapped for, swapped with, was given, were given, been given, gifted, gift/gifted, given by, given me, gave me, gave us, sent me, sent us, brought me, brought us, brought round, brought over, brought me over, handed me, passed me, a present from, present from, from the swap, seed swap, plant sale, plant swap, freebie, freebies, scored, scrounged, blagged, cadged, begged, bummed, scavenged, rescued, salvaged, inherited, borrow/borrowed, lent, lent me, lent us, on loan, loan of, ordered in, received, receive/received, off the school, off the, collected from, new shears, treated myself, splashed out, home with, got given, had off, won a, won
volunteer: volunteer/volunteered, volunteers, self sown, self seeded, self seeding, selfsown, self seeders, self seeder, selfset, self set, self sets, seeded itself, seeded themselves, sown itself, sowed itself, sowed alone, came itself, came by itself, come by itself, come up by itself, come alone, planted itself, planted themselves, nobody planted, not planted by me, not planted, nobody sowed, sown by nobody, came up on its own, on its own, by itself, rogue, random, uninvited, appeared, popped up in, coming up in the, from last years, dropped seed, from the compost, out of the compost, by the compost, gatecrasher, gatecrashers, freeloader, surprise, pop up, popped up from, naturalised, spread itself
doing: has finished flowering, have finished flowering, has finished blooming, have finished blooming, are finished flowering, is finished flowering, finished flowering, done flowering, stopped flowering, finished blooming, done blooming, stopped blooming, doing well, doing fine, doing great, doing ok, doing okay, doing nicely, doing, not doing, looking, look/looks/looking good, look/looks, looking well, thrive/thrived/thriving, struggling, sulk/sulking/sulks, sulked, romping, romp/romping away, romping, bursting, going great guns, going mad, going strong, going well, going nuts, growing well, growing away, growing, grown, filling out, filling in, filling up, fattening, fattening up, lush, healthy, happy, smug, strong, sturdy, vigorous, weak, weaker than, poor, patchy, wretched, miserable, sad, pathetic, spindly, limp, pale, thick, huge, massive, enormous, tall as, as tall as, taller than, bigger than, over the top of, knee high, waist high, head high, shoulder high, past the, touching the, reached the, reached, climbing, putting on, put on, on the move, taken, took well, taken well, have taken, settled, bedding in, hardened, coming along, coming on, come on, getting there, getting on, not much happening, nothing doing, stalled, stuck, slow, behind, ahead of, better than, worse than, holding, holding on, hanging on, hanging in, clinging on, not happy, unhappy, perky, greening up, branching, bushing out, bushy, laden, loaded, heavy, dripping with, ripening, nearly ready, almost ready, ready, ready soon, a week off, best ever, never better, first class, grand, magnificent, champion, cracking, flourishing, rampant, still green, still going, still cropping, still flowering, putting out, leafy, in leaf, up to my, took off, taking off
preserved: can/canned/canning, jar/jarred/jarring, bottle/bottled/bottling, freeze/froze/frozen/freezing, dry/dried/drying, dehydrate/dehydrated, dehydrator, pickle/pickled/pickling, ferment/fermented/fermenting, jam/jammed, preserve/preserved, blanched and, in the freezer, into the freezer, for the freezer, to the freezer, freezer, put up, put by, laid down, jelly, chutney, jars of, jar of, pints of, quarts of, passata, sauerkraut, kraut, kimchi, relish, salsa, cordial, smoked, hung to dry, hung up to dry, to dry, strung up, strung, plaited, braided, braids, cured on, curing, to cure, stored, store/stored, storing, clamped, in the clamp, in damp sand, in sand, into store, into storage, laid on straw, vac packed, salted, brined, juiced, pressed, turned into, made into, cooked down, rendered, boiled down, put away, in the cellar
saved seed: save/saved/saving, saved seed, saved seeds, seed saved, seed saving, seeds saved, collected seed, collected seeds, seed collected, saving seed, kept for seed, keep for seed, keep back, kept back, left for seed, thresh/threshed/threshing, winnow/winnowed/winnowing, cleaned seed, seed cleaned, seed off, seeds off, seed from, scooped, fermenting, drying on a plate, drying on the, for next year, seed for next, bagged seed, seed stock, dry for seed, seeds drying, rubbed out, stripped seed
measured: tallest, biggest, measure/measured/measuring, measures, height, tall, tall now, high now, long now, round already, girth, diameter, circumference, across, is now, are now, stands at, standing at, clocked, clocking, comes to, up to, has reached, have reached, soil temp, soil temperature, compost temp, inches tall, cm tall, ft tall, feet tall
soil test: ph, soil test, soil tested, test strip, tested, dipsticked, soil ph, soil results, soil sample, npk, acidity, lab results, extension test
did: prune/pruned/pruning, pinch/pinched/pinching, pinch/pinched out, pinched back, tips out, nip*/nipped out, stake/staked/staking, tie/tied/tying, tie/tied in, tied up, tied back, train/trained/training, trellis/trellised, feed/fed/feeding, water/watered/watering, watered in, soak/soaked/soaking, drench/drenched, irrigate/irrigated, mulch/mulched/mulching, weed/weeded/weeding, handweeded, hoe/hoed/hoeing, rake/raked/raking, cage/caged, earth/earthed up, hill/hilled, hill/hilled up, ridge/ridged up, spray/sprayed/spraying, dust/dusted, deadhead/deadheaded/deadheading, dead head/headed, disbud*/disbudded, cut back, cut down, cut off, trim*/trimmed/trimming, clip*/clipped/clipping, shear/sheared, top*/topped, stop*/stopped, side shooted, sideshooted, side shoots, sideshoots, armpits, suckered, sucker, layer/layered, dig/dug over, turn/turned, turned over, turned in, fork/forked, fork/forked over, broadfork/broadforked, loosened, till/tilled, rototilled, rotavated, rotovated, double dug, edged, level/levelled/leveled, prep*/prepped, prepare/prepared, cultivate/cultivated, compost/composted/composting, manure/manured, muck/mucked, lime/limed/liming, fertilise/fertilised, fertilize/fertilized, side dress/dressed, top dress/dressed, topped up, top up, fill/filled/filling, spread/spreading, harden/hardened off, hardening off, shade/shaded, ventilate/ventilated, vent/vented, air/aired, support/supported, prop*/propped, prop/propped up, string/strung up, hand pollinate/pollinated, hand pollinating, pollinate/pollinated, divide/divided/dividing, split up, graft/grafted/grafting, bud/budded, blanch/blanched, firm/firmed in, label/labelled/labeled, picked off, hand picked, squash/squashed, squish/squished, rubbed off, wash/washed, scrub*/scrubbed, clean/cleaned/cleaning, tidy/tidied, sweep/swept, solarise/solarised, tarp*/tarped, chop/chopped and dropped, chop and drop, lay/laid, add/added/adding, apply/applied, remove/removed/removing, rub/rubbed, chit*/chitted, disinfect/disinfected, repair/repaired, mend/mended, paint/painted, drain/drained, flood/flooded, swap/swapped, bonfire, strim*/strimmed, scythe/scythed, mow/mowed/mown, coppice/coppiced, lop*/lopped, saw/sawed, fleece/fleeced, cover/covered/covering, uncover/uncovered, inoculate/inoculated, soak/soaked, scarify/scarified, stratify/stratified, bury/buried, take/took cuttings, cuttings, collars on, barrowed, cart/carted, shovel/shovelled, spread out, leaf mould, sheet mulch/mulched, sheetmulched, bring/brought in, brought inside, into the house, lift/lifted off, fog/fogged, release/released, trap*/trapped, traps set, bait/baited, nematodes, biological control, beer traps, picked over, relayed, straw under, strawed, debudded, leafed, stripped leaves, lower leaves
put up: put/put up, set up, erect/erected, install/installed, put on, put over, rig*/rigged up, rigged, assemble/assembled, build/built/building, net*/netted, mesh/meshed, net on, nets on, netting on, mesh on, fleece on, fleece over, netting over, cover on, covers on, cloches on, cloche on, cloche over, cloches over, strings up, canes up, poles up, hoops up, hoops on, tunnel up, netting up, net up, nets up, up went, went up, going up, goes up, cloth on, cloth over, lid on, fence up, over the, pegged over, pegged down, strung two, knocked in, hammered in, banged in, hurdles up, wigwam, tepee, teepee, wired, stretched, hung, rolled out, zip tied, sheet over, sheets over, plastic on, plastic over, row cover on, fixed, caged, cage on
took down: take/took/taken down, take/took off, taken off, dismantle/dismantled, covers down, cover down, nets down, net down, net off, nets off, netting off, mesh off, fleece off, cover off, covers off, cloches off, canes down, canes in, strings down, poles down, strings cut, down came, came down, lifted the net, rolled up, rolled back, sheets off, cloth off, hoops off, hoops down, hoops out, unnetted, tunnel down, fence down, put away, plastic off, hurdles down, panel down, tarp off, uncovered, cage off
moved: move/moved/moving, relocate/relocated, transfer*/transferred, shift/shifted/shifting, bring/brought in, brought inside, brought into, brought indoors, brought out, carried out, carried in, taken into, took inside, into the greenhouse, into the house, onto the deck, out of the greenhouse, down to, up to, over to, from the, swapped round, replanted in, lifted and, dug and moved, wheeled, trundled, rehoused
to do: to do, todo, need/needs/needed, need to, needs to, must, must remember, remember to, dont forget, do not forget, remind me, must get, should, have to, got to, gotta, next job, jobs, action, ring, tomorrow, order more, chase, check the, buy, get more, before the, by friday
promised: promise/promised/promising, told viewers, told you, said id, ive told, i told, told, i said, owe, owed, pledged, vowed, will show, ill show, i'll show, well show, will film, come back to, next video, follow up
asked: ask/asked/asks/asking, viewer asked, viewers asked, question, wants to know, wanted to know, want to know, someone asked, comment asks, comments ask, in the comments, how do i, how do you, can you, can i, can ya, q
plan: next year, next yr, next season, next spring, next time, plan/planned/planning, plan is, intend, intention, going to, gonna, want to, thinking of, thinking about, for 2027, for 2026, im going to, will try, shall try, will grow, shall grow, will have, never again, not again, no more of, in future, from now on
`;

/** Base forms that are nouns or other words as well. */
const alsoNouns = new Set(
  (
    "plant plants seed seeds cut cuts net nets set sets water waters mulch frost feed spray sprays lime compost manure cage stake label flower flowers bloom " +
    "blossom fruit pot pots drill bolt split harvest pick yield haul top stop bud weed weeds string cover support shade tie train rake fork prop clip can jar " +
    "hand pass trade present receive bottle jam pickle freeze dry save thin move start back found saw look looks need needs must should back show plan ask promise told question lift turn fill " +
    "spread dust cure dig pull drop damage cold heat ring buy traps trap top squash clean light open ready slow poor pale strong thick heavy"
  ).split(" "),
);

function formsOf(lemma: string): readonly string[] {
  if (lemma.includes("/")) {
    const [head = "", ...others] = lemma.split("/");
    const tail = /\s.*$/.exec(others.at(-1) ?? "")?.[0] ?? "";
    // "cut/cut back" and "dig/dug over" share what follows the verb.
    const words = [head, ...others.map((other) => other.replace(/\s.*$/, ""))];
    const base = head.replace("*", "");
    const spaced = base.includes(" ") ? base.slice(0, base.lastIndexOf(" ") + 1) : "";
    const all = words.flatMap((word, index) => {
      const whole = index === 0 ? base : spaced + word;
      return [whole + tail];
    });
    if (others.length === 1 && tail !== "" && !base.includes(" ")) all.push(`${ing(head)}${tail}`);
    return [...new Set(all)];
  }
  return [lemma.replace("*", "")];
}

function ing(head: string): string {
  const base = head.replace("*", "");
  if (head.endsWith("*")) return `${base}${base.at(-1)}ing`;
  return /[^e]e$/.test(base) ? `${base.slice(0, -1)}ing` : `${base}ing`;
}

function compile(): ReadonlyMap<string, readonly Lemma[]> {
  const byForm = new Map<string, EventKind[]>();
  for (const row of rows.trim().split("\n")) {
    const [head = "", forms = ""] = row.split(": ");
    const kinds = kindsOf(head);
    for (const lemma of forms.split(", ")) {
      for (const form of formsOf(lemma.trim())) {
        const known = byForm.get(form) ?? [];
        byForm.set(form, [...known, ...kinds.filter((kind) => !known.includes(kind))]);
      }
    }
  }
  const byFirst = new Map<string, Lemma[]>();
  for (const [form, kinds] of byForm) {
    const words = form.toLowerCase().replace(/'/g, "").split(" ");
    const first = words[0] ?? "";
    const bare = words.length === 1 && alsoNouns.has(first);
    byFirst.set(first, [...(byFirst.get(first) ?? []), { words, kinds, bare }]);
  }
  for (const list of byFirst.values()) list.sort((a, b) => b.words.length - a.words.length);
  return byFirst;
}

const kindNames: readonly EventKind[] = [
  "potted on",
  "came back",
  "gave away",
  "saved seed",
  "soil test",
  "put up",
  "took down",
  "to do",
];

/** "came back up" is "came back" and "up". */
function kindsOf(head: string): readonly EventKind[] {
  const kinds: EventKind[] = [];
  for (let rest = head; rest !== ""; ) {
    const long = kindNames.find((kind) => rest.startsWith(kind));
    const kind = long ?? rest.split(" ")[0] ?? rest;
    kinds.push(kind as EventKind);
    rest = rest.slice(kind.length).trim();
  }
  return kinds;
}

const lemmas = compile();

/** The forms that begin with a word, the longest first. */
export function lemmasFrom(lower: string): readonly Lemma[] {
  return lemmas.get(lower) ?? [];
}
