/** Soft fruit, tree fruit, citrus, nuts and the fruit of warm gardens, by family. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const fruit = grown(
  "fruit",
  `
Cucurbitaceae:
melon, melons, muskmelon, cantaloupe, cantaloupe melon, honeydew, rockmelon, rock melon, spanspek, sweet melon, canteloupe, charentais, galia melon, cantelope
watermelon, watermelons, water melon, tarbooz
Rosaceae, perennial:
strawberry, strawberries, strawbs, alpine strawberry, wild strawberry, everbearing strawberry, June-bearing strawberry, strawbries
raspberry, raspberries, autumn raspberry, summer raspberry, rasps, razzes, rasberry, black raspberry, golden raspberry, blackcap
blackberry, blackberries, bramble, marionberry, dewberry
loganberry, loganberries, tayberry, boysenberry, hybrid berry, tummelberry, sunberry
apple, apples, crab apple, cooking apple, eating apple, cider apple, crabapple, cordon apple, espalier apple
pear, pears, Asian pear, nashi, perry pear, nashi pear
plum, plums, damson, gage, greengage, mirabelle, cherry plum, bullace, myrobalan, Japanese plum
cherry, cherries, sour cherry, sweet cherry, tart cherry, acid cherry
peach, peaches, nectarine, donut peach, flat peach
apricot, apricots
quince, quinces, true quince
medlar, medlars
almond, almonds, almond tree
wineberry, wineberries, Japanese wineberry
serviceberry, serviceberries, saskatoon, juneberry, amelanchier, saskatoon berry
aronia, aronias, chokeberry
loquat, loquats, Japanese medlar, Japanese plum loquat
sloe, sloes, blackthorn
hawthorn, hawthorns, quickthorn
cloudberry, cloudberries
salmonberry, salmonberries
thimbleberry, thimbleberries
chokecherry, chokecherries
Japanese quince, Japanese quinces, flowering quince, chaenomeles
Ericaceae, perennial:
blueberry, blueberries, highbush blueberry, rabbiteye blueberry
cranberry, cranberries
lingonberry, lingonberries, cowberry
huckleberry, huckleberries
bilberry, bilberries, whinberry, blaeberry, fraughan
strawberry tree, strawberry trees, arbutus
Grossulariaceae, perennial:
blackcurrant, blackcurrants, black currant, blackcurrent
redcurrant, redcurrants, red currant, whitecurrant, white currant, pinkcurrant, redcurrent
gooseberry, gooseberries, jostaberry, goosegog, goosegob, worcesterberry, goosberry
Caprifoliaceae, perennial:
honeyberry, honeyberries, haskap, haskap berry, blue honeysuckle, edible honeysuckle
Vitaceae, perennial:
grape, grapes, grapevine, grape vine, muscadine, scuppernong, vine grape, table grape, wine grape
Moraceae, perennial:
fig, figs, brown fig
mulberry, mulberries, black mulberry, white mulberry
jackfruit, jackfruits
breadfruit, =, breadfruit tree
Actinidiaceae, perennial:
kiwi, kiwis, kiwi fruit, kiwi berry, kiwifruit, hardy kiwi, kiwi vine, actinidia
Rutaceae, perennial:
lemon, lemons, lemon tree, nimbu
citrus, =, citrus tree
orange tree, orange trees, sweet orange, navel orange, blood orange, Seville orange, Valencia orange
mandarin, mandarins, clementine, satsuma, tangerine, naartjie, mandarin orange, kinnow
lime tree, lime trees, key lime, Persian lime, Tahitian lime, kaffir lime, makrut lime, makrut
grapefruit, grapefruits, grapefruit tree
pomelo, pomelos
kumquat, kumquats, cumquat
calamondin, calamondins
yuzu, yuzus
finger lime, finger limes
citron, citrons, Buddha’s hand
white sapote, white sapotes
Myrtaceae, perennial:
feijoa, feijoas, pineapple guava
guava, guavas
Chilean guava, Chilean guavas, ugni, ugniberry
lilly pilly, lilly pillies, riberry
Surinam cherry, Surinam cherries, pitanga
jaboticaba, jaboticabas
jamun, jamuns, java plum
rose apple, rose apples, Otaheite apple, Malay apple
Betulaceae, perennial:
hazelnut, hazelnuts, cobnut, filbert, hazel nut, hazel tree, hazel bush, cob nut, corylus
Juglandaceae, perennial:
walnut, walnuts, walnut tree
pecan, pecans, pecan tree
hickory, hickories
Fagaceae, perennial:
chestnut, chestnuts, sweet chestnut, chestnut tree
Oleaceae, perennial:
olive, olives, olive tree
Lythraceae, perennial:
pomegranate, pomegranates
Ebenaceae, perennial:
persimmon, persimmons, kaki, sharon fruit
Passifloraceae, perennial:
passion fruit, =, passionfruit, granadilla, passion fruit vine, passion vine, maracuja, lilikoi, banana passionfruit
Elaeagnaceae, perennial:
sea buckthorn, =
goumi, goumis, goumi berry
autumn olive, autumn olives, elaeagnus
Viburnaceae, perennial:
elderberry, elderberries, elderflower, elder tree, elder bush, sambucus
highbush cranberry, highbush cranberries
Schisandraceae, perennial:
schisandra, =, magnolia vine
Lardizabalaceae, perennial:
akebia, =, chocolate vine
Annonaceae, perennial:
American pawpaw, American pawpaws, asimina
cherimoya, cherimoyas
custard apple, custard apples, sugar apple, sitaphal, sweetsop
soursop, soursops, graviola
Lauraceae, perennial:
avocado, avocados, avocado pear, avo, avocado tree
Anacardiaceae, perennial:
mango, mangoes, mango tree
cashew, cashews, cashew tree
pistachio, pistachios
golden apple, golden apples, June plum, ambarella, pommecythere
Sapindaceae, perennial:
lychee, lychees, litchi
longan, longans
rambutan, rambutans
ackee, ackees
guinep, guineps, Spanish lime, chenette
Caricaceae, perennial:
papaya, papayas, pawpaw, paw paw, papaw
babaco, babacos
Bromeliaceae, perennial:
pineapple, pineapples
Cactaceae, perennial:
dragon fruit, =, pitaya, dragonfruit, pitahaya
prickly pear, prickly pears, nopal, opuntia, cactus pear
Proteaceae, perennial:
macadamia, macadamias, macadamia nut
Arecaceae, perennial:
date palm, date palms
coconut palm, coconut palms, coconut tree
Musaceae, perennial:
banana, bananas, banana plant, matoke, cooking banana, musa, banana tree
plantain, plantains
Sapotaceae, perennial:
sapodilla, sapodillas, chiku, naseberry, chikoo
star apple, star apples, caimito
Oxalidaceae, perennial:
carambola, carambolas, star fruit, starfruit
Phyllanthaceae, perennial:
Indian gooseberry, Indian gooseberries, amla
Rhamnaceae, perennial:
jujube, jujubes, Chinese date
Malpighiaceae, perennial:
acerola, acerolas, Barbados cherry, West Indian cherry
Solanaceae, perennial:
goji berry, goji berries, goji, wolfberry
tamarillo, tamarillos, tree tomato
naranjilla, naranjillas
Solanaceae:
pepino, pepinos, pepino melon
Fabaceae, perennial:
tamarind, tamarinds
carob, carobs
inga, =, ice cream bean
Cornaceae, perennial:
cornelian cherry, cornelian cherries
Berberidaceae, perennial:
barberry, barberries, berberis
Santalaceae, perennial:
quandong, quandongs
Rubiaceae, perennial:
coffee plant, coffee plants, coffee bush, coffee tree
Theaceae, perennial:
tea plant, tea plants, tea bush
Malvaceae, perennial:
cacao, =, cocoa tree
`,
);
