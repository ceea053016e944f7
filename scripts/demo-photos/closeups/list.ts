/** Which varieties have close-ups: when and where each was taken, and what stands below it. */

import { randomFrom } from "../random.ts";
import { fileName, phoneFacts } from "../schedule.ts";
import type { CloseUp, Subject } from "./close-up.ts";
import * as beets from "./subjects/beets.ts";
import * as bushFruit from "./subjects/bush-fruit.ts";
import * as carrots from "./subjects/carrots.ts";
import * as courgettes from "./subjects/courgettes.ts";
import * as cutSquashes from "./subjects/cut-squashes.ts";
import * as dahlias from "./subjects/dahlias.ts";
import * as daisies from "./subjects/daisies.ts";
import * as dryBeans from "./subjects/dry-beans.ts";
import * as garlic from "./subjects/garlic.ts";
import * as leaves from "./subjects/leaves.ts";
import * as leeks from "./subjects/leeks.ts";
import * as onions from "./subjects/onions.ts";
import * as peaFlowers from "./subjects/pea-flowers.ts";
import * as peppers from "./subjects/peppers.ts";
import * as pods from "./subjects/pods.ts";
import * as potatoes from "./subjects/potatoes.ts";
import * as squashes from "./subjects/squashes.ts";
import * as strawberries from "./subjects/strawberries.ts";
import * as tomatoes from "./subjects/tomatoes.ts";
import * as tulips from "./subjects/tulips.ts";

function close(slug: string, taken: string, bed: string, subject: Subject, caption: string): CloseUp {
  const [day, minute] = taken.split(" ") as [string, string];
  const random = randomFrom(`close-up ${slug} ${taken}`);
  const time = `${minute}:${String(Math.floor(random() * 60)).padStart(2, "0")}`;
  return {
    ...subject,
    path: `varieties/${slug}/${fileName(day, time)}`,
    day,
    time,
    facts: phoneFacts(random, day, time, 1, bed),
    sidecar: `---\nbed: ${bed}\ncaption: "${caption}"\n---\n`,
  };
}

/** Days on which the notes say that it was picked, lifted or in flower, or the days just after. */
export const closeUps: readonly CloseUp[] = [
  close(
    "gardeners-delight",
    "2025-08-16 09:12",
    "tomato-pots",
    tomatoes.gardenersDelight,
    "A truss, ripening from the top",
  ),
  close(
    "harbinger",
    "2024-08-17 11:40",
    "tomato-pots",
    tomatoes.harbingers,
    "Yellow at the shoulder when it is ready, thin in the skin",
  ),
  close(
    "saint-pierre",
    "2025-08-16 10:31",
    "tunnel-south",
    tomatoes.saintPierres,
    "Whole and cut open: round, smooth, few seeds",
  ),
  close("costoluto-fiorentino", "2024-09-14 11:52", "tunnel-north", tomatoes.costolutos, "Ribbed like a cushion"),
  close(
    "costoluto-fiorentino",
    "2025-08-16 10:36",
    "tunnel-south",
    tomatoes.costolutoCut,
    "Cut open across: a slice looks like a flower",
  ),
  close(
    "noire-de-crimee",
    "2026-07-17 14:22",
    "tomato-pots",
    tomatoes.noireGreen,
    "Still green, dark at the shoulder already",
  ),
  close("crown-prince", "2024-09-28 12:10", "squash-bed", squashes.crownPrinces, "Blue-grey outside"),
  close(
    "crown-prince",
    "2025-11-15 11:20",
    "long-bed",
    cutSquashes.crownPrinceCut,
    "Cut open in November: orange inside",
  ),
  close(
    "uchiki-kuri",
    "2025-10-04 10:25",
    "long-bed",
    squashes.uchikiKuris,
    "The shape of an onion, the size of two fists",
  ),
  close("uchiki-kuri", "2025-11-15 11:26", "long-bed", cutSquashes.uchikiKuriCut, "Cut open: thin skin, thick flesh"),
  close(
    "turks-turban",
    "2024-09-28 12:16",
    "squash-bed",
    squashes.turksTurban,
    "The turban, striped, on its red-orange cushion",
  ),
  close(
    "rouge-vif-detampes",
    "2024-09-14 10:48",
    "squash-bed",
    squashes.rougeVif,
    "Flat and deeply ribbed, by the wall",
  ),
  close("black-beauty", "2026-07-17 18:29", "squash-bed", courgettes.blackBeauties, "Nearly black, straight"),
  close("striato-di-napoli", "2025-07-05 10:50", "long-bed", courgettes.striatos, "Striped from end to end"),
  close(
    "telegraph",
    "2026-07-15 13:05",
    "tunnel-south",
    courgettes.telegraphs,
    "Long and nearly smooth, with a short neck",
  ),
  close(
    "crystal-lemon",
    "2026-07-11 10:12",
    "cold-frame",
    courgettes.crystalLemons,
    "Round and yellow, and a cucumber all the same; one cut open",
  ),
  close("sturon", "2025-08-09 17:30", "bean-row", onions.sturons, "Brown globes, drying"),
  close("red-baron", "2024-08-10 11:15", "onion-bed", onions.redBarons, "Dark red, a little flat"),
  close("red-baron", "2025-08-16 12:05", "bean-row", onions.redBaronCut, "Cut open across: every ring has a red edge"),
  close("ailsa-craig", "2025-08-09 17:36", "bean-row", onions.ailsaCraigs, "Pale straw and very large"),
  close("longor", "2025-07-19 10:30", "bean-row", onions.longors, "Long and copper-coloured"),
  close(
    "germidour",
    "2026-07-11 09:55",
    "onion-bed",
    garlic.germidours,
    "Lifted this morning, purple streaks on white",
  ),
  close(
    "rose-de-lautrec",
    "2025-07-19 10:38",
    "bean-row",
    garlic.roseDeLautrecs,
    "White outside; pull it apart and the cloves are pink",
  ),
  close(
    "musselburgh",
    "2025-11-08 11:02",
    "bean-row",
    leeks.musselburghs,
    "Thick and short in the shaft, broad green flags",
  ),
  close(
    "early-nantes",
    "2026-07-11 09:40",
    "long-bed",
    carrots.earlyNantes,
    "Blunt at the end, the same width all the way, washed",
  ),
  close("chantenay-red-cored", "2025-08-23 10:20", "squash-bed", carrots.chantenays, "Short, with broad shoulders"),
  close("autumn-king", "2024-10-12 14:10", "long-bed", carrots.autumnKings, "The long ones, just dug"),
  close("boltardy", "2026-07-04 17:40", "long-bed", beets.boltardys, "Round, the size of a tennis ball"),
  close("boltardy", "2025-08-30 12:45", "squash-bed", beets.boltardyCut, "Cut open: red all through, faint rings"),
  close(
    "cheltenham-green-top",
    "2024-10-12 14:16",
    "long-bed",
    beets.cheltenhams,
    "Long as a parsnip, for the sand box",
  ),
  close("purple-top-milan", "2025-09-20 13:30", "squash-bed", beets.purpleTops, "Flat, purple above and white below"),
  close("french-breakfast", "2026-05-02 10:31", "long-bed", beets.frenchBreakfasts, "Red with a white tip"),
  close("kerrs-pink", "2024-09-14 11:05", "brassica-bed", potatoes.kerrsPinks, "Round and pink, deep in the eye"),
  close("pink-fir-apple", "2025-09-27 14:20", "squash-bed", potatoes.pinkFirApples, "Long, knobbly, no two alike"),
  close(
    "sharpes-express",
    "2026-07-04 18:05",
    "step-pots",
    potatoes.sharpesExpress,
    "Smooth pale kidneys out of the sack",
  ),
  close("scarlet-emperor", "2026-07-10 18:20", "bean-row", peaFlowers.scarletEmperorFlower, "In flower: all scarlet"),
  close(
    "scarlet-emperor",
    "2025-10-04 15:10",
    "onion-bed",
    dryBeans.scarletEmperorSeed,
    "The seed, saved: purple and black, no two alike",
  ),
  close(
    "painted-lady",
    "2024-07-20 11:12",
    "bean-row",
    peaFlowers.paintedLadyFlower,
    "In flower: red above, white below",
  ),
  close("borlotto-lingua-di-fuoco", "2025-09-06 10:44", "onion-bed", pods.borlottoPods, "Pods, flamed red on cream"),
  close(
    "borlotto-lingua-di-fuoco",
    "2025-10-04 15:22",
    "onion-bed",
    dryBeans.borlottoSeed,
    "The dry beans: seed and supper",
  ),
  close("blauhilde", "2025-08-09 16:50", "tunnel-north", pods.blauhildePods, "Purple pods; they turn green in the pan"),
  close("alderman", "2026-07-11 10:30", "bean-row", pods.aldermanOpen, "A pod opened: nine peas"),
  close(
    "aquadulce-claudia",
    "2026-06-13 10:28",
    "bean-row",
    pods.aquadulceOpen,
    "A pod opened: seven beans in white felt",
  ),
  close(
    "matucana",
    "2026-06-13 10:52",
    "cutting-patch",
    peaFlowers.matucana,
    "In flower: maroon and violet, two to a stem",
  ),
  close("cupani", "2026-06-27 11:20", "cutting-patch", peaFlowers.cupani, "In flower: smaller and darker"),
  close(
    "bishop-of-llandaff",
    "2025-08-16 11:32",
    "cutting-patch",
    dahlias.bishop,
    "Scarlet flower, yellow ring, dark leaf",
  ),
  close("david-howard", "2025-09-06 11:10", "cutting-patch", dahlias.davidHoward, "Orange and full, dark in the leaf"),
  close(
    "cafe-au-lait",
    "2025-08-16 11:36",
    "cutting-patch",
    dahlias.cafeAuLait,
    "A flower as wide as a plate, milky coffee with a blush",
  ),
  close("purity", "2026-07-16 18:30", "cutting-patch", daisies.purity, "White flowers, leaves as fine as dill"),
  close("velvet-queen", "2025-08-16 11:41", "cutting-patch", daisies.velvetQueen, "The flower: dark red, a black eye"),
  close("valentine", "2025-08-16 11:44", "cutting-patch", daisies.valentine, "The flower: pale lemon, a dark eye"),
  close(
    "indian-prince",
    "2026-07-04 18:25",
    "cutting-patch",
    daisies.indianPrince,
    "The flower: orange petals around a dark middle",
  ),
  close("queen-of-night", "2026-05-02 10:41", "cutting-patch", tulips.queenOfNight, "In flower, nearly black"),
  close(
    "nero-di-toscana",
    "2025-08-16 12:20",
    "brassica-bed",
    leaves.nero,
    "The leaf: long, dark, blistered, no frill",
  ),
  close(
    "merveille-des-quatre-saisons",
    "2024-06-22 10:22",
    "long-bed",
    leaves.merveille,
    "Bronze at the edge, green at heart",
  ),
  close("lobjoits-green-cos", "2026-07-05 18:10", "long-bed", leaves.lobjoits, "Tall and green, ready to cut"),
  close(
    "royal-sovereign",
    "2026-06-13 11:02",
    "step-pots",
    strawberries.royalSovereigns,
    "A wedge with a point, red to the neck",
  ),
  close(
    "cambridge-favourite",
    "2026-06-20 16:15",
    "step-pots",
    strawberries.cambridgeFavourites,
    "Rounder and paler at the neck",
  ),
  close("bluecrop", "2025-08-16 12:40", "blueberry-tubs", bushFruit.bluecrops, "Large, with a thick bloom"),
  close("goldtraube", "2025-08-30 13:02", "blueberry-tubs", bushFruit.goldtraubes, "Smaller and darker, little bloom"),
  close("whinhams-industry", "2026-07-04 18:40", "blueberry-tubs", bushFruit.whinhams, "Dark red and hairy"),
  close(
    "hungarian-hot-wax",
    "2025-08-23 13:31",
    "tunnel-south",
    peppers.hungarianHotWax,
    "Yellow wax; one has been left to turn",
  ),
  close("marconi-rosso", "2025-08-23 13:25", "tunnel-south", peppers.marconis, "As long as a hand, sweet, red at last"),
];
