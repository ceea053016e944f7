/** Perennials, bulbs, roses, climbers, shrubs, trees and grasses for ornament, by family. Families and who stands for years: from memory of standard floras. */
import { grown } from "./grown.ts";

export const lastingFlowers = grown(
  "flower",
  `
Asteraceae, perennial:
dahlia, dahlias, dalia, dahliah
chrysanthemum, chrysanthemums, chrysanths, chrysant, crysanthemum, spray chrysanthemum, shevanti
aster, asters, Michaelmas daisy, New England aster, aromatic aster, symphyotrichum
rudbeckia, rudbeckias, black-eyed Susan, brown-eyed Susan, rudbekia, gloriosa daisy
echinacea, echinaceas, coneflower, purple coneflower, pale purple coneflower
yarrow, =, achillea
feverfew, =, tanacetum parthenium, matricaria
globe thistle, globe thistles, echinops
Shasta daisy, Shasta daisies, leucanthemum, ox-eye daisy, oxeye daisy, marguerite, argyranthemum
gaillardia, gaillardias, blanket flower
helenium, heleniums, sneezeweed
heliopsis, =, false sunflower
erigeron, erigerons, fleabane, Mexican daisy
liatris, =, blazing star, gayfeather
Joe-Pye weed, =, eupatorium, eutrochium
ironweed, =, vernonia
goldenrod, goldenrods, solidago
centaurea, centaureas, knapweed, perennial cornflower
ratibida, =, prairie coneflower, Mexican hat
doronicum, =, leopard’s bane
inula, inulas
ligularia, ligularias
cirsium, cirsiums, plume thistle
stokesia, stokesias, Stokes aster
boltonia, boltonias
silphium, =, cup plant
pearly everlasting, =, anaphalis
edelweiss, =
dusty miller, =
leucophyta, =
Fabaceae, perennial:
lupin, lupins, lupine, lupinus
wisteria, wisterias, wistaria
baptisia, baptisias, false indigo
everlasting pea, everlasting peas, perennial sweet pea
laburnum, laburnums
cytisus, =, broom shrub
wattle tree, wattle trees, acacia, mimosa tree
redbud, redbuds, Judas tree, cercis
clianthus, =, kaka beak
kowhai, =, sophora
indigofera, =
Plantaginaceae, perennial:
penstemon, penstemons, pentstemon, beardtongue, beard tongue
veronica, veronicas, speedwell
veronicastrum, veronicastrums, Culver’s root
hebe, hebes
chelone, chelones, turtlehead
Ranunculaceae, perennial:
delphinium, delphiniums, delphs
aquilegia, aquilegias, columbine, granny’s bonnet, aquelegia
hellebore, hellebores, Christmas rose, Lenten rose, helleborus, hellibore
clematis, clematises
Japanese anemone, Japanese anemones
monkshood, =, aconitum
thalictrum, thalictrums, meadow rue
trollius, =, globeflower
winter aconite, winter aconites, eranthis
marsh marigold, marsh marigolds, kingcup, caltha
actaea, actaeas, bugbane, cimicifuga
pasque flower, pasque flowers, pulsatilla
hepatica, hepaticas
Caryophyllaceae, perennial:
dianthus, =, carnation, clove pink, garden pink, Chinese pink, border carnation
lychnis, =, rose campion, ragged robin, Maltese cross
campion, campions, silene, red campion
snow-in-summer, =, cerastium
Apiaceae, perennial:
sea holly, sea hollies, eryngium
astrantia, astrantias
Caprifoliaceae, perennial:
scabious, =, scabiosa, pincushion flower, sweet scabious, scabi, devil’s bit scabious
honeysuckle, honeysuckles, lonicera
weigela, weigelas
red valerian, =, centranthus
knautia, knautias
abelia, abelias
snowberry, snowberries
cephalaria, =, giant scabious
Lamiaceae, perennial:
lavender, =, lavenders, lavendar, lavandula, English lavender, French lavender
salvia, salvias, clary, clary sage, blue sage, autumn sage, mealycup sage, painted sage, pineapple sage, annual clary, scarlet sage
agastache, agastaches, anise hyssop, hummingbird mint
monarda, monardas, bee balm, bergamot, wild bergamot
nepeta, nepetas, catmint, catnip
lamb’s ear, lamb’s ears, stachys
Russian sage, =, perovskia
phlomis, =, Jerusalem sage
ajuga, ajugas, bugleweed
lamium, lamiums, dead-nettle
obedient plant, obedient plants, physostegia
caryopteris, =, bluebeard
westringia, westringias, coastal rosemary
spurflower, spurflowers, plectranthus
chaste tree, chaste trees, vitex
Iridaceae, perennial:
gladiolus, gladioli, gladiola, gladioluses, gladdies, gladioles, acidanthera, gladioluses
iris, irises, flag iris, bearded iris, Dutch iris, Siberian iris, reticulata iris, blue flag iris
crocus, crocuses, spring crocus, snow crocus
crocosmia, crocosmias, montbretia
sisyrinchium, =, blue-eyed grass
dierama, =, angel’s fishing rod
ixia, ixias, corn lily
sparaxis, =, harlequin flower
tigridia, tigridias
watsonia, watsonias
dietes, =, African iris
libertia, libertias
hesperantha, hesperanthas, schizostylis, kaffir lily
babiana, babianas
Liliaceae, perennial:
tulip, tulips, species tulip
lily, lilies, Asiatic lily, Oriental lily, trumpet lily, tiger lily, regal lily, lilium, Madonna lily, lillies
fritillary, fritillaries, fritillaria, snake’s head fritillary, crown imperial
erythronium, erythroniums, dog’s tooth violet, trout lily
toad lily, toad lilies, tricyrtis
Amaryllidaceae, perennial:
daffodil, daffodils, narcissus, narcissi, jonquil, daff, daffy, paperwhite, daffadil
allium, alliums, ornamental onion, drumstick allium
snowdrop, snowdrops, galanthus
agapanthus, =, African lily, lily of the Nile
amaryllis, =, hippeastrum
nerine, nerines
clivia, clivias
crinum, crinums
snowflake bulb, snowflake bulbs, leucojum, summer snowflake
sternbergia, =
ipheion, =, spring starflower
spider lily, spider lilies, lycoris
rain lily, rain lilies, zephyranthes
Asparagaceae, perennial:
hyacinth, hyacinths, hyacinthus, prepared hyacinth
hosta, hostas, plantain lily
lily of the valley, =, convallaria
grape hyacinth, grape hyacinths, muscari
bluebell, bluebells
scilla, scillas, squill
camassia, camassias, quamash
agave, agaves
yucca, yuccas
cordyline, cordylines, cabbage tree, ti kouka
aspidistra, aspidistras
Solomon’s seal, =, polygonatum
eucomis, =, pineapple lily
galtonia, =, summer hyacinth
chionodoxa, =, glory-of-the-snow
ornithogalum, =, star of Bethlehem, chincherinchee
snake plant, snake plants, sansevieria
asparagus fern, asparagus ferns
chlorophytum, =
liriope, =, lilyturf
mondo grass, =, ophiopogon
dracaena, dracaenas
tuberose, tuberoses, polianthes, rajnigandha
lachenalia, lachenalias
Alstroemeriaceae, perennial:
alstroemeria, alstroemerias, Peruvian lily, alstro, alstromeria
Paeoniaceae, perennial:
peony, peonies, paeony, paeonia, tree peony
Rosaceae, perennial:
rose, roses, rambling rose, climbing rose, rose bush, patio rose, dog rose, shrub rose, tea rose, hybrid tea, floribunda, rugosa, standard rose, rosebush, wild rose
geum, geums, avens
spiraea, spiraeas, spirea
potentilla, potentillas, cinquefoil
aruncus, =, goat’s beard
meadowsweet, =, filipendula
sanguisorba, sanguisorbas, great burnet
cotoneaster, cotoneasters
pyracantha, pyracanthas, firethorn
photinia, photinias
kerria, =
physocarpus, =, ninebark
rowan, rowans, mountain ash, sorbus
cherry laurel, =, laurel hedge
flowering cherry, flowering cherries
Geraniaceae, perennial:
geranium, geraniums, cranesbill, hardy geranium, crane’s bill
Hydrangeaceae, perennial:
hydrangea, hydrangeas, mophead hydrangea, oakleaf hydrangea, lacecap, hydranga, climbing hydrangea
mock orange, mock oranges, philadelphus
deutzia, deutzias
Scrophulariaceae, perennial:
buddleja, buddlejas, buddleia, butterfly bush
Solanaceae, perennial:
brugmansia, brugmansias, angel’s trumpet
Chinese lantern, Chinese lanterns
brunfelsia, =
Brassicaceae, perennial:
aubrieta, aubrietas, aubretia
arabis, =
Gentianaceae, perennial:
gentian, gentians, gentiana
Campanulaceae, perennial:
campanula, campanulas, bellflower, harebell
balloon flower, balloon flowers, platycodon
cardinal flower, cardinal flowers
Onagraceae, perennial:
fuchsia, fuchsias, fuschia, fuchia
gaura, gauras
willowherb, =, epilobium, fireweed
Primulaceae, perennial:
primrose, primroses, primula, polyanthus, auricula, cowslip
cyclamen, cyclamens
lysimachia, lysimachias, creeping jenny
shooting star flower, shooting star flowers, dodecatheon
Crassulaceae, perennial:
sedum, sedums, stonecrop, hylotelephium
houseleek, houseleeks, sempervivum
echeveria, echeverias
kalanchoe, kalanchoes
aeonium, aeoniums
jade plant, jade plants, crassula, money plant
Saxifragaceae, perennial:
heuchera, heucheras, coral bells, coralbells
heucherella, heucherellas
astilbe, astilbes
bergenia, bergenias
saxifrage, saxifrages
tiarella, tiarellas, foamflower
rodgersia, rodgersias
Acanthaceae, perennial:
acanthus, =, bear’s breeches
Papaveraceae, perennial:
Oriental poppy, Oriental poppies
bleeding heart, bleeding hearts, dicentra, lamprocapnos
corydalis, =
Himalayan blue poppy, Himalayan blue poppies, meconopsis, Welsh poppy
plume poppy, plume poppies
Plumbaginaceae, perennial:
armeria, armerias, sea pink, sea thrift
plumbago, plumbagos
Polygonaceae, perennial:
persicaria, persicarias, bistort
Polemoniaceae, perennial:
Jacob’s ladder, =, polemonium
Montiaceae, perennial:
lewisia, lewisias
Boraginaceae, perennial:
pulmonaria, pulmonarias, lungwort
brunnera, brunneras
anchusa, anchusas
Virginia bluebells, =, mertensia
Verbenaceae, perennial:
lantana, lantanas
Apocynaceae, perennial:
milkweed, milkweeds, asclepias, butterfly weed, swamp milkweed, common milkweed, butterfly milkweed
periwinkle, periwinkles, vinca
oleander, oleanders
amsonia, amsonias, bluestar
mandevilla, mandevillas
frangipani, frangipanis, plumeria
star jasmine, star jasmines, trachelospermum
carissa, =, num-num
Malvaceae, perennial:
hibiscus, hibiscuses, rose of Sharon, rose mallow
sidalcea, sidalceas, prairie mallow
abutilon, abutilons
Euphorbiaceae, perennial:
euphorbia, euphorbias, spurge
poinsettia, poinsettias
Colchicaceae, perennial:
colchicum, colchicums, autumn crocus
gloriosa lily, gloriosa lilies, flame lily
Melanthiaceae, perennial:
trillium, trilliums
Asphodelaceae, perennial:
daylily, daylilies, day lily, hemerocallis
red hot poker, red hot pokers, kniphofia, torch lily
phormium, phormiums, New Zealand flax, harakeke
foxtail lily, foxtail lilies, eremurus
asphodel, asphodels
bulbine, =
Araceae, perennial:
calla lily, calla lilies, arum lily, zantedeschia
arum, arums
caladium, caladiums
elephant ear, elephant ears, alocasia
monstera, monsteras, Swiss cheese plant
peace lily, peace lilies, spathiphyllum
philodendron, philodendrons
anthurium, anthuriums
Zingiberaceae, perennial:
ginger lily, ginger lilies, hedychium
Cannaceae, perennial:
canna, cannas, canna lily
Ericaceae, perennial:
rhododendron, rhododendrons, rhodie, rhodo
azalea, azaleas
heather, heathers, calluna
pieris, =
kalmia, =, mountain laurel
gaultheria, =, wintergreen
Theaceae, perennial:
camellia, camellias, camelia
Oleaceae, perennial:
lilac, lilacs, syringa
forsythia, forsythias
jasmine, jasmines, winter jasmine, mogra
privet, =, ligustrum
osmanthus, =
Grossulariaceae, perennial:
flowering currant, flowering currants
Rutaceae, perennial:
choisya, choisyas, Mexican orange blossom
skimmia, skimmias
boronia, boronias
dittany, =, dictamnus
Myrtaceae, perennial:
bottlebrush, =, callistemon
eucalyptus, =, gum tree, eucalypt
myrtle, myrtles
leptospermum, =, manuka, tea tree
waxflower, waxflowers, Geraldton wax
Proteaceae, perennial:
protea, proteas
leucadendron, leucadendrons
leucospermum, =, pincushion protea
grevillea, grevilleas
banksia, banksias
waratah, waratahs
Lythraceae, perennial:
crape myrtle, crape myrtles, crepe myrtle, lagerstroemia
loosestrife, =, purple loosestrife, lythrum
cuphea, cupheas
Viburnaceae, perennial:
viburnum, viburnums, guelder rose, snowball bush
Cornaceae, perennial:
dogwood, dogwoods, cornus
Hamamelidaceae, perennial:
witch hazel, =, hamamelis
Magnoliaceae, perennial:
magnolia, magnolias
tulip tree, tulip trees, liriodendron
Aquifoliaceae, perennial:
holly, hollies, ilex, winterberry
Araliaceae, perennial:
ivy, ivies, hedera
fatsia, fatsias
Taxaceae, perennial:
yew, yews, taxus
Cupressaceae, perennial:
juniper, junipers
cypress, cypresses, leylandii, leyland cypress
thuja, thujas, arborvitae
Pinaceae, perennial:
pine tree, pine trees
Christmas tree, Christmas trees
Salicaceae, perennial:
willow tree, willow trees, pussy willow, salix, osier, weeping willow
poplar, poplars
aspen, aspens
Sapindaceae, perennial:
Japanese maple, Japanese maples, acer, maple tree, sugar maple
Betulaceae, perennial:
birch tree, birch trees, silver birch
hornbeam, hornbeams
alder tree, alder trees
Fagaceae, perennial:
oak tree, oak trees
beech hedge, beech hedges, beech tree, copper beech
Berberidaceae, perennial:
mahonia, mahonias, Oregon grape
epimedium, epimediums, barrenwort
nandina, =, heavenly bamboo
Buxaceae, perennial:
boxwood, =, box hedge, buxus, box ball, box hedging
sarcococca, =, sweet box, Christmas box
Celastraceae, perennial:
euonymus, =, spindle tree
Rhamnaceae, perennial:
ceanothus, =, California lilac, Californian lilac
Cistaceae, perennial:
cistus, =, rock rose
helianthemum, helianthemums
Thymelaeaceae, perennial:
daphne, daphnes
Garryaceae, perennial:
garrya, =
aucuba, =
Bignoniaceae, perennial:
trumpet vine, trumpet vines, campsis
jacaranda, jacarandas
catalpa, catalpas
Strelitziaceae, perennial:
bird of paradise, =, strelitzia
Heliconiaceae, perennial:
heliconia, heliconias
Orchidaceae, perennial:
orchid, orchids, phalaenopsis, cymbidium
Nymphaeaceae, perennial:
water lily, water lilies, waterlily
Haemodoraceae, perennial:
kangaroo paw, kangaroo paws
Pittosporaceae, perennial:
pittosporum, pittosporums
Griseliniaceae, perennial:
griselinia, =
Ginkgoaceae, perennial:
ginkgo, ginkgos
Altingiaceae, perennial:
liquidambar, =, sweet gum
Anacardiaceae, perennial:
smoke bush, smoke bushes, cotinus, smoke tree
Vitaceae, perennial:
Virginia creeper, =, Boston ivy, parthenocissus
Passifloraceae, perennial:
passion flower, passion flowers, passionflower, passiflora
Nyctaginaceae, perennial:
bougainvillea, bougainvilleas
Rubiaceae, perennial:
gardenia, gardenias
ixora, ixoras
Cactaceae, perennial:
cactus, cacti
Christmas cactus, Christmas cacti
Tamaricaceae, perennial:
tamarisk, =
Dryopteridaceae, perennial:
fern, ferns, tree fern, dryopteris, shield fern, lady fern
Arecaceae, perennial:
palm tree, palm trees, windmill palm
Bromeliaceae, perennial:
bromeliad, bromeliads
Escalloniaceae, perennial:
escallonia, escallonias
Poaceae, perennial:
ornamental grass, ornamental grasses
miscanthus, =, maiden grass
pennisetum, pennisetums, fountain grass
stipa, stipas, feather grass, needle grass
switchgrass, =, switch grass, panicum
bluestem, bluestems, little bluestem, big bluestem, schizachyrium, andropogon
pampas grass, =, cortaderia
festuca, festucas, blue fescue
feather reed grass, =, calamagrostis
deschampsia, deschampsias, tufted hair grass
molinia, molinias, moor grass
hakonechloa, =, Japanese forest grass
sea oats, =, chasmanthium
prairie dropseed, =, sporobolus
sideoats grama, =, blue grama
ornamental bamboo, =, black bamboo, golden bamboo, phyllostachys, fargesia
Cyperaceae, perennial:
sedge, sedges, carex
papyrus, =
Typhaceae, perennial:
bulrush, bulrushes, cattail
Balsaminaceae, perennial:
New Guinea impatiens, =
Musaceae, perennial:
ensete, ensetes
Hypoxidaceae, perennial:
rhodohypoxis, =
Loranthaceae, perennial:
mistletoe, =
`,
);
