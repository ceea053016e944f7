/** Green manures and cover crops, by family. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const coverCrops = grown(
  "cover",
  `
Fabaceae:
clover, =, crimson clover, red clover, white clover, Persian clover, berseem, subclover, subterranean clover, sweet clover, alsike clover, Dutch clover
vetch, =, tares, winter tares, hairy vetch, common vetch, woollypod vetch
field bean, field beans, winter field bean, bell bean, small-seeded fava
field pea, field peas, Austrian winter pea
fenugreek, =, methi, methi leaves, kasuri methi
lucerne, =, alfalfa, lucern
sunn hemp, =, crotalaria
velvet bean, velvet beans, mucuna
jack bean, jack beans
fodder lupin, fodder lupins, bitter lupin, bitter blue lupin
yellow trefoil, =, black medic
desmodium, =
Poaceae:
rye, =, grazing rye, winter rye, cereal rye, Hungarian rye, Hungarian grazing rye, rye grain, green rye, Elbon rye, forage rye
oat, oats, winter oats, black oats, forage oats, cover oats
wheat, =, winter wheat, spring wheat
barley, =
ryegrass, =, Westerwolds ryegrass
sudangrass, =, sorghum-sudangrass, Sudan grass
triticale, =
Japanese millet, =
teff, =
Brassicaceae:
mustard, =, white mustard, caliente mustard, yellow mustard, brown mustard, biofumigant mustard, black mustard, green-manure mustard
fodder radish, =, tillage radish, oilseed radish, forage radish, daikon tillage radish
oilseed rape, =, fodder rape, canola
camelina, =
Polygonaceae:
buckwheat, =, kasha buckwheat
Boraginaceae:
phacelia, =, phacilia, scorpion weed, lacy phacelia, phaecelia
Linaceae:
flax, =, linseed, blue flax, linum
Fabaceae, perennial:
sainfoin, =
bird’s-foot trefoil, =
tagasaste, =, tree lucerne
Poaceae, perennial:
Napier grass, =, elephant grass
`,
);
