/** Vegetables of the temperate and the warm world, by family. Families of common vegetables follow extension rotation tables (WVU Extension 2025; UC Master Gardener Handbook) with today's names. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const vegetables = grown(
  "vegetable",
  `
Solanaceae:
tomato, tomatoes, toms, cherry tomato, plum tomato, beefsteak tomato, tommy toe, bush tomato, cordon tomato, grape tomato, slicing tomato, tamatar
pepper, peppers, sweet pepper, bell pepper, capsicum, hoho, pimento pepper, banana pepper, seasoning pepper, shimla mirch, frying pepper
chilli, chillies, chillis, chilis, chili, chile, chilli pepper, chili pepper, hot pepper, chilies, chile pepper, chille, scotch bonnet, bird pepper, mirch, pilipili, ghost pepper, cayenne pepper, jalapeño pepper, habanero pepper, scotch bonnet pepper
aubergine, aubergines, eggplant, brinjal, aubs, melongene, baingan, egg plant
potato, potatoes, spud, new potato, seed potato, maincrop potato, early potato, tatties, taters, aloo, Irish potato, first early potato, second early potato, first earlies, second earlies, maincrops, salad potato, maincrop spud, white potato
tomatillo, tomatillos, tomatilla
ground cherry, ground cherries, cape gooseberry, physalis, goldenberry, groundcherry, husk cherry, Inca berry, husk tomato
garden egg, garden eggs, African eggplant, scarlet eggplant, ngogwe, nyanya chungu, bitter tomato, ntula, African aubergine
African nightshade, =, managu, black nightshade greens, osuga
garden huckleberry, garden huckleberries
litchi tomato, litchi tomatoes, sticky nightshade
Brassicaceae:
cabbage, cabbages, red cabbage, savoy cabbage, spring cabbage, pointed cabbage, spring greens, summer cabbage, winter cabbage, Savoy, patta gobhi
Chinese cabbage, Chinese cabbages, napa cabbage, Chinese leaf, wombok, wong bok, Chinese leaves
broccoli, =, broccolis, calabrese, heading broccoli, brocc, brocco, broccolli, brocolli, brocoli, green broccoli
sprouting broccoli, =, purple sprouting broccoli, purple sprouting, PSB, white sprouting broccoli, white sprouting, early purple sprouting, purple broccoli
cauliflower, cauliflowers, cauli, caulis, gobi, gobhi, romanesco, cauliflour, colliflower, phool gobhi, romanesco broccoli
Brussels sprout, Brussels sprouts, sprouts, brussels
kale, =, borecole, curly kale, black kale, Russian kale, cavolo nero, lacinato kale, dinosaur kale, Tuscan kale, palm kale
collard, collards, collard greens, sukuma wiki, sukuma, collie greens
kohlrabi, =, kohlrabis, kohl rabi, kolrabi, knol-khol, cole rabi
radish, radishes, salad radish, raddish
mooli, =, daikon, winter radish, Japanese radish, mullangi, rettich, watermelon radish, white radish
turnip, turnips, turnip greens
swede, swedes, rutabaga, neep, turnip swede, rutabega, Swedish turnip
mustard greens, =, leaf mustard, oriental mustard, mustard leaf, mustard leaves, sarson, Chinese mustard, Japanese mustard, giant mustard
mizuna, =, mibuna
pak choi, =, pak chois, bok choy, bok choi, pac choi, bok choi, pok choy, bokchoy, pakchoi, patchoi, celery mustard
rocket, =, arugula, rucola, wild rocket, roquette, salad rocket
cress, =, garden cress, land cress, curly cress, pepperwort, American cress
watercress, =
tatsoi, =, tat soi, rosette pak choi
komatsuna, =, mustard spinach
choy sum, =, flowering cabbage, yu choy
Chinese broccoli, =, gai lan, kai lan, kailan, Chinese kale
rapini, =, broccoli raab, cima di rapa, broccoli rabe
flower sprout, flower sprouts, kale sprout
salad leaves, =, mixed salad leaves, mesclun, cut-and-come-again salad, baby leaf salad, saladini, mixed leaves
oriental greens, =, Asian greens, oriental salad
winter cress, =
Brassicaceae, perennial:
horseradish, =, horse radish
sea kale, =
perennial kale, =, Daubenton kale, tree kale, tree collard, walking stick kale
wasabi, =
Turkish rocket, =
perennial broccoli, =, nine-star broccoli
Cucurbitaceae:
cucumber, cucumbers, cuke, cucs, cue cumber, Lebanese cucumber, English cucumber, slicing cucumber, Armenian cucumber, kheera
gherkin, gherkins, pickling cucumber, cornichon, pickler, pickling cuke
squash, =, squashes, winter squash, butternut squash, butternut, acorn squash, kabocha, onion squash, gem squash, kamokamo, butternut pumpkin, carnival squash
summer squash, =, summer squashes, patty pan, pattypan, crookneck squash, patty pan squash, pattypan squash, yellow squash, straightneck squash, scallop squash, crookneck
courgette, courgettes, zucchini, zucchinis, courgs, zukes, zucs, zukkini, zuchini, zucchinni, baby marrow, corgette, courgete, cousa
marrow, marrows, vegetable marrow
pumpkin, pumpkins, calabaza, kaddu
fluted pumpkin, fluted pumpkins, ugu
gourd, gourds, ornamental gourd, loofah, luffa, birdhouse gourd, sponge gourd, dipper gourd
bitter gourd, bitter gourds, bitter melon, karela, carilley
bottle gourd, bottle gourds, calabash, lauki, dudhi, doodhi, opo squash, cucuzza
ridge gourd, ridge gourds, turai, tori, Chinese okra, luffa gourd, angled luffa
snake gourd, snake gourds, chichinda
wax gourd, wax gourds, winter melon, ash gourd, petha
tinda, tindas, apple gourd, Indian round gourd
cucamelon, cucamelons, mouse melon, Mexican sour gherkin
achocha, achochas, caigua
kiwano, kiwanos, horned melon
fig-leaf gourd, fig-leaf gourds, shark fin melon, chilacayote
Fabaceae:
pea, peas, garden pea, English pea, shelling pea, pea shoots, petit pois, marrowfat pea, matar, podding pea, pea tips, soup pea
mangetout, =, snow pea, mange tout, snowpea, sugar pea
sugar snap, sugar snaps, sugar snap pea, snap pea, sugarsnap
bean, beans, dried bean, dry bean, shell bean, kidney bean, black bean, pinto bean, navy bean, drying bean, rajma, cannellini, cannellini bean, maharagwe, rose coco
broad bean, broad beans, fava bean, fava, faba bean
runner bean, runner beans, scarlet runner, scarlet runner bean, runnerbean
French bean, French beans, green bean, snap bean, string bean, dwarf bean, dwarf French bean, climbing French bean, climbing bean, pole bean, bush bean, haricot, borlotti bean, borlotti, wax bean, haricot vert, filet bean, stringless bean, yellow bean, purple bean, Romano bean, dwarf French, climbing French, bushbean
lima bean, lima beans, butter bean, limas, butterbean, Madagascar bean
soya bean, soya beans, soybean, edamame, soy bean, soya, edamame bean
cowpea, cowpeas, southern pea, black-eyed pea, crowder pea, purple hull pea, kunde, lobia, black-eyed bean, black eye pea, blackeye
chickpea, chickpeas, garbanzo, chick pea, chana, garbanzo bean
peanut, peanuts, groundnut, ground nut, monkey nut
long bean, long beans, yard-long bean, yardlong bean, asparagus bean, bodi, bodi bean, snake bean, Chinese long bean, barbati
hyacinth bean, hyacinth beans, lablab, dolichos, njahi, sem bean, bonavist, Indian bean
winged bean, winged beans
mung bean, mung beans, green gram, moong, ndengu, moong bean
adzuki bean, adzuki beans, azuki bean
black gram, =, urad, urad bean
cluster bean, cluster beans, guar
asparagus pea, asparagus peas
lentil, lentils, masoor
jicama, jicamas, yam bean
Bambara groundnut, Bambara groundnuts, njugu mawe, Bambara nut, jugo bean
tepary bean, tepary beans
horse gram, =
sword bean, sword beans
Amaryllidaceae:
onion, onions, red onion, bulb onion, overwintering onion, Japanese onion, sweet onion, pyaz
spring onion, spring onions, scallion, green onion, salad onion, bunching onion, escallion, syboe, sibie, eschalot onion, Japanese bunching onion
shallot, shallots, banana shallot, eschalot, échalote, French shallot, grey shallot, griselle
leek, leeks
garlic, =, hardneck garlic, softneck garlic, elephant garlic, garlick, wet garlic, green garlic, lehsun
Amaryllidaceae, perennial:
Welsh onion, Welsh onions, walking onion
tree onion, tree onions, Egyptian onion, Egyptian walking onion
wild garlic, =, ramsons, bear’s garlic, wild leek
Babington leek, Babington leeks, perennial leek
potato onion, potato onions, multiplier onion
Amaranthaceae:
beetroot, =, beet, red beet, baby beet
chard, =, Swiss chard, silverbeet, silver beet, ruby chard, seakale beet, spinach chard
perpetual spinach, =, spinach beet, leaf beet
spinach, =, palak, true spinach, spinnach, spinich
amaranth, =, love-lies-bleeding, callaloo, mchicha, terere, chaulai, morogo, efo, Chinese spinach, amaranthus, imifino
orach, =, orache, red orach, mountain spinach, atriplex
quinoa, =
fat hen, =, lamb’s quarters, bathua, goosefoot greens
tree spinach, =, magenta spreen
strawberry spinach, =, strawberry blite
agretti, =, barba di frate, saltwort, monk’s beard
mangel-wurzel, mangel-wurzels, mangold, mangelwurzel, fodder beet
sugar beet, sugar beets
marsh samphire, =, samphire, glasswort, salicornia
Apiaceae:
carrot, carrots, carrott, gajar
parsnip, parsnips, parsnp
celery, =, leaf celery, cutting celery, trench celery, Chinese celery
celeriac, =, celery root
fennel, =, Florence fennel, bulb fennel, bronze fennel, herb fennel, finocchio, saunf
Hamburg parsley, =, root parsley
skirret, skirrets
arracacha, arracachas
turnip-rooted chervil, =
Asteraceae:
lettuce, lettuces, cos lettuce, romaine, butterhead, romaine lettuce, lettice, lettuse, letuce, loose-leaf lettuce, looseleaf, oak leaf lettuce, oakleaf, crisphead, batavia, batavian lettuce, butterhead lettuce, cut-and-come-again lettuce
endive, endives, escarole, frisée, curly endive
chicory, =, radicchio, witloof, chicon, witlof, Belgian endive, puntarelle, sugarloaf chicory, red chicory
salsify, =, oyster plant, vegetable oyster
scorzonera, =, black salsify
celtuce, =, stem lettuce, asparagus lettuce
chop suey greens, =, shungiku, chrysanthemum greens, crown daisy, edible chrysanthemum, tong ho
burdock, =, gobo
sow thistle greens, =, puha
black-jack greens, =
Asteraceae, perennial:
globe artichoke, globe artichokes, artichoke
Jerusalem artichoke, Jerusalem artichokes, sunchoke, fartichoke, sunroot, topinambour
cardoon, cardoons, cardone
yacon, yacons, yakon
Okinawa spinach, =, longevity spinach, gynura
dandelion, dandelions, dandelion greens
Poaceae:
sweetcorn, =, sweet corn, corn, maize, popcorn, corn on the cob, mielie, mealie, field corn, popping corn, baby corn, corncob, mahindi, flint corn, dent corn, makai
sorghum, =, mtama, broomcorn, broom corn, jowar
millet, =, finger millet, pearl millet, foxtail millet, bajra, ragi
rice, =, upland rice, paddy rice
Convolvulaceae:
sweet potato, sweet potatoes, kumara, kumera, sweetpotato, sweet spud, kaukau, shakarkandi, viazi vitamu
water spinach, =, kangkong, ong choy, kang kong, morning glory greens
Malvaceae:
okra, =, lady’s fingers, ochro, bhindi, gumbo okra, ladyfinger
jute mallow, =, molokhia, mrenda, mlenda, ewedu, Egyptian spinach
roselle, =, rosella, Jamaican sorrel, red sorrel, Caribbean sorrel, hibiscus sabdariffa
Polygonaceae, perennial:
rhubarb, =, rubarb
sorrel, =, French sorrel, broad-leaved sorrel, buckler-leaf sorrel, red-veined sorrel
Asparagaceae, perennial:
asparagus, =, sparrowgrass, asparagas
Bath asparagus, =
Caprifoliaceae:
corn salad, =, lamb’s lettuce, mâche
Montiaceae:
winter purslane, =, claytonia, miner’s lettuce
Portulacaceae:
purslane, =, summer purslane
Aizoaceae:
New Zealand spinach, =, warrigal greens, tetragonia, kokihi
ice plant greens, =
Oxalidaceae:
oca, =, New Zealand yam, NZ yam
Cucurbitaceae, perennial:
chayote, chayotes, choko, christophene, chocho, mirliton, chow chow, christophine
ivy gourd, ivy gourds, tindora, kundru, tendli
pointed gourd, pointed gourds, parwal
Fabaceae, perennial:
pigeon pea, pigeon peas, gungo pea, gungo, toor, arhar, congo pea, mbaazi
apios, =, American groundnut, hopniss
Amaranthaceae, perennial:
Good King Henry, =
saltbush, =, old man saltbush
Apiaceae, perennial:
rock samphire, =
Alexanders, =, black lovage
Basellaceae:
Malabar spinach, =, Ceylon spinach, basella, poi saag, Indian spinach, vine spinach
ulluco, =, ulluku
Tropaeolaceae:
mashua, =
Cleomaceae:
African spider plant, African spider plants, saget, chinsaga, spider plant greens
Talinaceae:
waterleaf, =, Surinam spinach, talinum, Ceylon purslane
Poaceae, perennial:
sugar cane, =, sugarcane
edible bamboo, =, bamboo shoots
Araceae, perennial:
taro, =, dasheen, eddo, cocoyam, amadumbe, madumbi, arvi, arbi, nduma, colocasia
tannia, tannias, yautia, malanga, new cocoyam
Dioscoreaceae, perennial:
yam, yams, yellow yam, white yam, air potato, Chinese yam, water yam, winged yam
Euphorbiaceae, perennial:
cassava, =, manioc, yuca, mihogo, muhogo, tapioca plant, mogo
chaya, =, tree spinach chaya
Marantaceae, perennial:
arrowroot, =
Moringaceae, perennial:
moringa, =, drumstick tree, horseradish tree, drumstick leaves
Cannaceae, perennial:
achira, =, edible canna
Cyperaceae, perennial:
water chestnut, water chestnuts
tiger nut, tiger nuts, chufa
Nelumbonaceae, perennial:
lotus, =, lotus root
Araliaceae, perennial:
udo, =
Asphodelaceae, perennial:
edible daylily, edible daylilies
Dennstaedtiaceae, perennial:
fiddlehead, fiddleheads, fiddlehead fern, ostrich fern
Caryophyllaceae:
chickweed greens, =
Plantaginaceae:
buck’s horn plantain, =, minutina, erba stella
`,
);
