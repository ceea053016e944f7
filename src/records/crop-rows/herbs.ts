/** Herbs, spices and medicinal plants, by family. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const herbs = grown(
  "herb",
  `
Apiaceae:
parsley, =, flat-leaf parsley, curly parsley, parsely, continental parsley, Italian parsley
dill, =
coriander, =, cilantro, corriander, dhania, dania
chervil, =
caraway, =
anise, =, aniseed
cumin, =, jeera
ajwain, =, carom
culantro, =, chadon beni, shado beni, sawtooth coriander
mitsuba, =, Japanese parsley
Apiaceae, perennial:
lovage, =, luvage
angelica, angelicas
sweet cicely, =
Amaryllidaceae, perennial:
chive, chives, cives, onion chive
garlic chive, garlic chives, Chinese chive, nira, kow choi
society garlic, =, tulbaghia
Lamiaceae:
basil, =, Thai basil, sweet basil, purple basil, cinnamon basil, Greek basil, bush basil, lime basil, lettuce-leaf basil
summer savory, =, savory
shiso, =, perilla, beefsteak plant, egoma
tulsi, =, holy basil
za’atar, =
Lamiaceae, perennial:
mint, =, spearmint, peppermint, apple mint, garden mint, Moroccan mint, pudina, pineapple mint, water mint, ginger mint
sage, =, purple sage, garden sage, common sage, golden sage
thyme, =, lemon thyme, creeping thyme, common thyme, orange thyme
rosemary, =, rosmary, trailing rosemary, salvia rosmarinus
oregano, =, marjoram, sweet marjoram, pot marjoram, Greek oregano, golden marjoram, origanum
lemon balm, =
hyssop, =, hyssopus
winter savory, =
Cuban oregano, =, broadleaf thyme, Spanish thyme, Mexican mint, Indian borage, thick-leaf thyme
horehound, =
germander, =
self-heal, =, prunella, heal-all
skullcap, =
motherwort, =
mountain mint, =, pycnanthemum
patchouli, =
wood betony, =, betony
Asteraceae, perennial:
tarragon, =, French tarragon
wormwood, =
tansy, =
curry plant, curry plants
santolina, santolinas, cotton lavender
elecampane, =
alecost, =, costmary
mugwort, =
Mexican tarragon, =
arnica, =
pyrethrum, =
Asteraceae:
chamomile, =, camomile, German chamomile, Roman chamomile, lawn chamomile, chamomille
stevia, =
huacatay, =
milk thistle, milk thistles
Boraginaceae:
borage, =, starflower, borrage
Boraginaceae, perennial:
comfrey, =, russian comfrey, bocking
Lauraceae, perennial:
bay tree, bay trees, bay laurel, sweet bay, laurus, bay bush
Poaceae, perennial:
lemongrass, =, lemon grass, fever grass, mchaichai
vetiver, =
citronella grass, =
Amaranthaceae:
epazote, =
Rosaceae, perennial:
salad burnet, =
lady’s mantle, =, alchemilla
Rutaceae, perennial:
curry leaf, =, curry leaf plant, curry leaf tree, curry patta, kadi patta
rue, =
buchu, =
Sichuan pepper, =, Szechuan pepper
Verbenaceae, perennial:
lemon verbena, =, aloysia
Polygonaceae:
Vietnamese coriander, =, Vietnamese mint, laksa leaf
Zingiberaceae, perennial:
ginger, =, adrak, ginger root
turmeric, =, haldi, manjano
galangal, =
cardamom, =
myoga, =
Iridaceae, perennial:
saffron, =, saffron crocus
Cannabaceae, perennial:
hop, hops, hop vine, hop bine
Caprifoliaceae, perennial:
valerian, =
Malvaceae, perennial:
marsh mallow, marsh mallows, marshmallow plant
Hypericaceae, perennial:
St John’s wort, =, hypericum
Rubiaceae, perennial:
sweet woodruff, =
madder, =
Fabaceae, perennial:
liquorice, =, licorice
rooibos, =
Pandanaceae, perennial:
pandan, =
Piperaceae, perennial:
black pepper vine, =, pepper vine
betel, =
Orchidaceae, perennial:
vanilla orchid, vanilla orchids, vanilla vine
Myrtaceae, perennial:
lemon myrtle, lemon myrtles
Solanaceae, perennial:
ashwagandha, =
Brassicaceae:
woad, =
Caryophyllaceae, perennial:
soapwort, =, saponaria
Asphodelaceae, perennial:
aloe vera, =, aloe
Scrophulariaceae, perennial:
mullein, mulleins, verbascum
`,
);
