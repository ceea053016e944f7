/**
 * Common cultivar names of the gardens of many countries, by crop: what "24 Musselburgh" are when the garden has no file
 * for it. From memory of seed lists, nursery lists and registers; no list is whole.
 *
 * "~" marks a name that is also an ordinary word, a person or a place ("Music", "Stella", "Bristol"): alone it proves
 * nothing. A name that several crops have stands under each.
 */
import { keyOf, rowsOf } from "./rows.ts";

export interface Cultivar {
  /** Crop id. */
  readonly crop: string;
  readonly title: string;
  /** Whether the name needs a crop word, a capital or a plant's place beside it. */
  readonly weak: boolean;
}

let table: ReadonlyMap<string, readonly Cultivar[]> | undefined;

/** The cultivars by the key of their name; made when first asked for. */
export function cultivarTable(): ReadonlyMap<string, readonly Cultivar[]> {
  table ??= build();
  return table;
}

function build(): ReadonlyMap<string, readonly Cultivar[]> {
  const byKey = new Map<string, Cultivar[]>();
  for (const [crop, names] of rowsOf(cultivars)) {
    for (const name of names) {
      const weak = name.startsWith("~");
      const title = weak ? name.slice(1) : name;
      const key = keyOf(title);
      const known = byKey.get(key);
      if (known === undefined) byKey.set(key, [{ crop, title, weak }]);
      else known.push({ crop, title, weak });
    }
  }
  return byKey;
}

const cultivars = `
tomato: Gardener’s Delight, Sungold, Sun Gold, Moneymaker, Ailsa Craig, Alicante, ~Shirley, Black Krim, Brandywine, Cherokee Purple, San Marzano, ~Roma, Roma VF, Marmande, Super Marmande, Costoluto Fiorentino, Costoluto Genovese, Tigerella, Sweet Million, Sweet 100, Supersweet 100, Tumbler, Tumbling Tom, Tumbling Tom Red, Tumbling Tom Yellow, Maskotka, Losetto, Red Alert, Black Cherry, Chocolate Cherry, Yellow Pear, Red Pear, Black Plum, Red Fig, Garden Peach, Green Zebra, Black Zebra, ~Big Boy, Better Boy, Early Girl, ~Celebrity, Mortgage Lifter, Amish Paste, ~Juliet, Stupice, Black Russian, Black from Tula, Paul Robeson, Aunt Ruby’s German Green, Mr Stripey, Rutgers, Beefmaster, Big Beef, Big Rainbow, ~Pineapple, Great White, Ox Heart, Oxheart, Cuore di Bue, Coeur de Boeuf, Pantano, Principe Borghese, Opalka, Speckled Roman, Striped German, ~Hillbilly, Kellogg’s Breakfast, Dr Wyche’s Yellow, Rose de Berne, Brandy Boy, Rio Grande, Money Maker, Pusa Ruby, Grosse Lisse, Tommy Toe, Black Beauty
pepper: California Wonder, Bell Boy, Big Bertha, ~Gypsy, ~Ace, King of the North, Yolo Wonder, Corno di Toro, Corno di Toro Rosso, Marconi Rosso, Marconi, Jimmy Nardello, Chocolate Beauty, Purple Beauty, Golden Calwonder
chilli: Cayenne, ~Ring of Fire, Jalapeño, Early Jalapeño, Habanero, Scotch Bonnet, Carolina Reaper, Bhut Jolokia, Trinidad Moruga Scorpion, Trinidad Scorpion, Naga, Dorset Naga, ~Apache, Hungarian Hot Wax, Poblano, Ancho, Anaheim, Serrano, Thai Dragon, Thai Hot, Birds Eye, Prairie Fire, Numex Twilight, ~Big Jim, Basket of Fire, ~Lemon Drop
aubergine: Black Beauty, Moneymaker, Money Maker, Long Purple, Violetta di Firenze, Rosa Bianca, Listada de Gandia, ~Bonica, ~Ophelia, Galine, Jewel Jade, Ping Tung, Ping Tung Long, Ichiban, ~Fairy Tale
potato: ~Charlotte, Maris Piper, Maris Peer, Maris Bard, King Edward, ~Desiree, Pink Fir Apple, Pink Fir, ~Nicola, ~Anya, Estima, Wilja, ~Kestrel, ~Rocket, ~Swift, Arran Pilot, ~Foremost, Red Duke of York, Duke of York, International Kidney, Jersey Royal, Ratte, La Ratte, ~Rooster, Sarpo Mira, Sarpo Axona, Setanta, ~Cara, ~Picasso, ~Vivaldi, Lady Christl, ~Casablanca, ~Winston, Epicure, Sharpe’s Express, Home Guard, British Queen, Golden Wonder, Kerr’s Pink, ~Record, Arran Victory, Edzell Blue, Salad Blue, Highland Burgundy, Shetland Black, Mayan Gold, ~Jazzy, Gemson, ~Athlete, Carolus, Blue Danube, ~Acoustic, ~Orla, ~Colleen, Pentland Javelin, Pentland Crown, Belle de Fontenay, Linzer Delikatess, Juliette, Exquisa, ~Harlequin, Marfona, ~Bambino, ~Nadine, Markies, Cultra, Stemster, ~Valor, ~Romano, Yukon Gold, Russet Burbank, Red Pontiac, Red Norland, Dark Red Norland, Katahdin, German Butterball, Kipfler, Dutch Cream, Sebago, Ilam Hardy, Jersey Benne, Agria, Rua, Mondial, Shangi, Kufri Jyoti
tomatillo: Toma Verde, Purple de Milpa
ground-cherry: Aunt Molly’s, ~Goldie
cabbage: ~Greyhound, Hispi, January King, January King 3, ~Primo, Golden Acre, Wheeler’s Imperial, ~April, Durham Early, ~Duncan, Spring Hero, Offenham, Offenham 2, Flower of Spring, ~Tundra, Holland Winter White, Savoy King, Vertus, Ormskirk, ~Best of All, Cordesa, Serpentine, ~Siberia, January Queen, Red Drumhead, Marner Early Red, Ruby Ball, Kalibos, ~Rodeo
chinese-cabbage: Wong Bok, Michihili, ~Blues, Rubicon, Minuet
broccoli: Belstar, ~Marathon, Ironman, Waltham 29, Waltham, De Cicco, Green Magic, ~Arcadia, Packman, Green Goliath, Calabrese Natalino, Green Sprouting
sprouting-broccoli: Rudolph, ~Claret, ~Bordeaux, Red Arrow, White Eye, ~White Star, Early Purple Sprouting, Late Purple Sprouting, ~Cardinal
cauliflower: ~All the Year Round, ~Snowball, Snowball A, Early Snowball, ~Igloo, Clapton, Candid Charm, Romanesco, ~Graffiti, Purple Graffiti, ~Cheddar, ~Amazing, Snow Crown, Snow Prince, Autumn Giant, ~Mayflower, Aalsmeer
brussels-sprout: Evesham Special, Bedford Fillbasket, Groninger, ~Brodie, Trafalgar, Maximus, ~Brilliant, Rubine, Red Rubine, Red Bull, Crispus, ~Cromwell, Bosworth, Nautic
kale: Nero di Toscana, Black Tuscany, Redbor, Red Russian, Dwarf Green Curled, Winterbor, ~Siberian, ~Scarlet, Curly Scarlet, Vates, Vates Blue Curled, White Russian, ~Premier, Pentland Brig, Hungry Gap
perennial-kale: Taunton Deane, Daubenton
collard: Georgia Southern, ~Georgia, Vates Collard, ~Champion, ~Flash, Morris Heading
kohlrabi: Early Purple Vienna, Purple Vienna, Early White Vienna, White Vienna, Green Delicacy, Purple Delicacy, Superschmelz
radish: French Breakfast, Cherry Belle, Scarlet Globe, ~Sparkler, Rainbow Mix, Easter Egg, Icicle, White Icicle, Rudolf, Rudi, ~Amethyst, Zlata, Pink Slipper, ~Champion, Crimson Giant, Early Scarlet Globe, Plum Purple
mooli: Black Spanish, Black Spanish Round, Round Black Spanish, Long Black Spanish, Minowase, April Cross, China Rose, Mantanghong
turnip: Purple Top Milan, ~Snowball, Golden Ball, Tokyo Cross, Purple Top White Globe, Milan Purple Top, ~Atlantic
swede: ~Marian, ~Invitation, ~Best of All, ~Joan, ~Tweed, ~Ruby
mustard-greens: ~Red Giant, Giant Red, Osaka Purple, ~Green in Snow, Red Frills, Golden Frills, Ruby Streaks, Dragon Tongue
mizuna: ~Kyoto
pak-choi: Joi Choi, Canton White, Baraku, Red Choi, ~Rubi, Mei Qing Choi
rocket: ~Apollo, ~Runway, ~Wasabi, Skyrocket, Sylvetta
cucumber: Marketmore, Marketmore 76, ~Telegraph, Telegraph Improved, Crystal Lemon, Crystal Apple, True Lemon, Burpless Tasty Green, Burpless, ~Carmen, Passandra, Mini Munch, Cucino, La Diva, ~Diva, ~Socrates, Femspot, Straight Eight, Boston Pickling, National Pickling, ~Lemon, White Wonder, ~Swing
gherkin: Diamant, Venlo Pickling, Vert Petit de Paris, Parisian Pickling, ~National
squash: Crown Prince, Uchiki Kuri, Red Kuri, ~Hunter, Harrier, Waltham Butternut, Butternut, Turk’s Turban, ~Buttercup, Burgess Buttercup, Sweet Dumpling, Delicata, Blue Hubbard, Golden Hubbard, Hubbard, Queensland Blue, Jarrahdale, Marina di Chioggia, Musquee de Provence, Table Queen, Table Ace, Honey Bear, Honeynut, ~Spaghetti, Vegetable Spaghetti, Tivoli, Kabocha, ~Sunshine, Winter Sunshine, Black Futsu, Candy Roaster, North Georgia Candy Roaster, Long Island Cheese, Tromboncino, Tahitian Melon, ~Barbara, ~Cobnut, ~Kent, ~Jap
summer-squash: Sunburst, Yellow Crookneck, Early Prolific Straightneck, Early Summer Crookneck, Scallopini, Benning’s Green Tint, White Patty Pan, Custard White
courgette: Black Beauty, ~Defender, ~Ambassador, All Green Bush, Gold Rush, Goldrush, ~Soleil, Atena, Atena Polka, Parador, ~Romanesco, Costata Romanesco, Striato di Napoli, Striato d’Italia, Tondo di Nizza, Ronde de Nice, Nero di Milano, Partenon, Parthenon, ~Venus
marrow: Long Green Bush, Long Green Trailing, Tiger Cross, ~Bush Baby, Badger Cross, Table Dainty
pumpkin: Atlantic Giant, Dill’s Atlantic Giant, Jack O’Lantern, Jack Be Little, ~Munchkin, ~Baby Bear, Small Sugar, New England Pie, Connecticut Field, Howden, ~Cinderella, Hundredweight, ~Mammoth, ~Becky, ~Racer, ~Rocket, Casperita, Lumina
melon: Minnesota Midget, Ogen, ~Emir, ~Sweetheart, Ananas, Charentais, Petit Gris de Rennes, Hale’s Best, Hale’s Best Jumbo, Hearts of Gold, Rocky Ford
watermelon: Sugar Baby, Crimson Sweet, Charleston Gray, Moon and Stars, Black Diamond, Blacktail Mountain, ~Jubilee, ~Congo, Golden Midget
pea: Kelvedon Wonder, Feltham First, ~Meteor, Hurst Greenshaft, Hurst Green Shaft, Early Onward, ~Onward, Douce Provence, ~Alderman, Tall Telephone, ~Ambassador, ~Lincoln, Rondo, Green Arrow, Little Marvel, Wando, Thomas Laxton, Progress No 9, Laxton’s Progress, Lord Leicester, Champion of England, ~Telephone, Blauwschokker, Purple Podded, Ezethas Krombek Blauwschok, Waverex, Greenfeast
mangetout: Oregon Sugar Pod, Oregon Sugar Pod II, Norli, Carouby de Maussane, Golden Sweet, Shiraz, Mammoth Melting Sugar, Snow Wind, Sweet Horizon
sugar-snap: Sugar Ann, Cascadia, Sugar Snap, Super Sugar Snap, Sugar Bon, Sugar Magnolia
bean: Cherokee Wax, Borlotto Lingua di Fuoco, Lingua di Fuoco, Lingua di Fuoco 2, Firetongue, Fire Tongue, Vermont Cranberry, Yin Yang, Calypso, Jacob’s Cattle, Black Turtle, Cannellino, Canadian Wonder, Dutch Brown, ~Czar, ~Orca, ~Soldier, Hidatsa Shield Figure, Rosecoco, Nyayo
broad-bean: Aquadulce, Aquadulce Claudia, Bunyard’s Exhibition, The Sutton, Sutton, Masterpiece Green Longpod, ~Masterpiece, Imperial Green Longpod, Witkiem Manita, Witkiem, Crimson Flowered, Red Epicure, ~Express, ~Stereo, Super Aquadulce
runner-bean: Scarlet Emperor, ~Painted Lady, White Lady, Enorma, Polestar, ~Streamline, Lady Di, ~Moonlight, Firestorm, St George, Wisley Magic, Hestia, ~Desiree, White Emperor, ~Celebration
french-bean: ~Cobra, Blue Lake, Blue Lake 274, Purple Teepee, Purple Tepee, ~Safari, ~The Prince, Tendergreen, Sonesse, ~Speedy, Cosse Violette, ~Hunter, Cherokee Trail of Tears, Neckarkonigin, Neckar Queen, ~Eva, Fasold, Golden Gate, Blauhilde, Kingston Gold, Purple King, Purple Queen, ~Provider, ~Contender, Kentucky Wonder, Royal Burgundy, Bush Blue Lake, ~Rattlesnake, Dragon Tongue, Maxibel, ~Jade, ~Strike, Topcrop, Top Crop, Roma II, Goldmarie, Golden Wax, Gold Rush, Fortex
lima-bean: Fordhook 242, Henderson, Henderson’s Bush, King of the Garden
soya-bean: ~Green Shell, ~Envy, Fiskeby, ~Elena
cowpea: California Blackeye, California Blackeye 5, Purple Hull Pink Eye, Pinkeye Purple Hull, Pink Eye Purple Hull, Mississippi Silver
long-bean: Red Noodle, Chinese Red Noodle, ~Liana
onion: Sturon, Stuttgarter, Stuttgarter Giant, Red Baron, Setton, Centurion, ~Radar, Senshyu, Senshyu Yellow, ~Shakespeare, ~Electric, ~Troy, Ailsa Craig, Kelsae, Bedfordshire Champion, Rijnsburger, ~Hercules, Jet Set, Fen Early, Hytech, Red Brunswick, Brunswick, Rossa Lunga di Firenze, Long Red Florence, Red of Florence, Tropea, Rossa di Tropea, Walla Walla, Texas Early Grano, Texas Supersweet, Yellow Sweet Spanish, ~Candy, Copra, Patterson, Stuttgart, ~Ebenezer, Red Wethersfield, Red Creole, Nasik Red
spring-onion: White Lisbon, White Lisbon Winter Hardy, Ishikura, ~Performer, ~Apache, North Holland Blood Red, ~Guardsman, ~Ramrod, ~Photon, ~Parade, Evergreen White
shallot: Longor, Golden Gourmet, Red Sun, Mikor, Pikant, Jermor, Yellow Moon, ~Banana, Eschalote Grise
leek: Musselburgh, Musselburgh Improved, Bleu de Solaise, Blue Solaise, Giant Musselburgh, American Flag, King Richard, ~Lyon, Lyon 2, The Lyon, Prizetaker, Lyon Prizetaker, Autumn Mammoth, Autumn Giant, ~Bandit, Oarsman, Porbella, ~Toledo, ~Below Zero, ~Atlanta, ~Northern Lights, Siegfried Frost, St Victor
garlic: Solent Wight, Early Purple Wight, Purple Wight, Albigensian Wight, Picardy Wight, Carcassonne Wight, Lautrec Wight, Provence Wight, Bohemian Rose, Germidour, Thermidrome, Messidrome, Messidor, ~Music, German Extra Hardy, German White, German Red, Russian Red, Chesnok Red, Spanish Roja, Inchelium Red, California Early, California Late, Silver White, Silverskin, Nootka Rose, Printanor
beetroot: Boltardy, ~Detroit, Detroit 2, Detroit Dark Red, Chioggia, Barbietola di Chioggia, Burpee’s Golden, Golden Detroit, Albina Vereduna, ~Albino, Bull’s Blood, Cylindra, Cheltenham Green Top, ~Pablo, Wodan, Red Ace, ~Solo, Moneta, Bikores, Forono, Early Wonder
chard: Bright Lights, Fordhook Giant, Rhubarb Chard, Ruby Chard, Ruby Red, Lucullus, Five Colour, ~Rainbow, White Silver
perpetual-spinach: Erbette
spinach: Bloomsdale, Bloomsdale Longstanding, Bloomsdale Long Standing, Medania, Giant Winter, Giant Noble, ~Matador, Viroflay, Monstrueux de Viroflay, Red Kitten, ~Apollo
amaranth: ~Red Army, Hopi Red Dye, Red Leaf, Golden Giant, Tricolor, ~Burgundy, Elephant Head
carrot: Nantes, Nantes 2, Early Nantes, Early Nantes 2, Autumn King, Autumn King 2, Chantenay, Chantenay Red Cored, Red Cored Chantenay, Royal Chantenay, Amsterdam Forcing, ~Amsterdam, Paris Market, ~Parisian, Parmex, Purple Haze, Cosmic Purple, Rainbow Mix, ~Rainbow, Flyaway, Resistafly, ~Maestro, Sytan, ~Eskimo, James Scarlet Intermediate, St Valery, Berlicum, Berlicum 2, Danvers, Danvers 126, Danvers Half Long, Imperator, Little Finger, Scarlet Nantes, Bolero, Mokum, Topweight, Pusa Kesar, Egmont Gold
parsnip: Tender and True, ~Gladiator, Hollow Crown, White Gem, ~Student, The Student, Avonresister, ~Albion, ~Countess, ~Palace, Javelin, Cobham Improved Marrow
celery: Tall Utah, Tall Utah 52-70, ~Utah, Golden Self Blanching, Giant Red, Giant Pascal, Solid Pink, ~Victoria
celeriac: Giant Prague, ~Monarch, Prinz, ~Brilliant, Asterix, Prague Giant
fennel: ~Romanesco, Zefa Fino, Victorio, Sirio, ~Perfection, ~Finale
lettuce: Little Gem, ~Tom Thumb, Lobjoits Green Cos, Lobjoits, Parris Island, Parris Island Cos, Webb’s Wonderful, ~Iceberg, ~All Year Round, ~All the Year Round, Buttercrunch, Lollo Rossa, Lollo Rosso, Lollo Bionda, Lollo Biondo, Salad Bowl, Red Salad Bowl, Oakleaf, Winter Density, Winter Gem, Arctic King, Valdor, Marvel of Four Seasons, Merveille de Quatre Saisons, Quatre Saisons, Black Seeded Simpson, Simpson Elite, Red Sails, ~Jericho, ~Freckles, Flashy Trout’s Back, Forellenschluss, Speckled, Speckled Trout, Rouge d’Hiver, Reine de Glaces, Reine des Glaces, Batavia, Great Lakes, Great Lakes 118, Bibb, ~Boston, Tennis Ball, Deer Tongue, ~Green Ice
endive: Pancalieri, Moss Curled, Green Curled Ruffec, Wallone, Cornet de Bordeaux
chicory: Rossa di Treviso, Treviso, Rossa di Verona, Palla Rossa, Palla Rossa 3, Variegata di Castelfranco, Castelfranco, Sugar Loaf, Pain de Sucre, Zuckerhut, Witloof, Brussels Witloof, Chioggia
salsify: Mammoth Sandwich Island, Sandwich Island
scorzonera: Russian Giant, Duplex
globe-artichoke: Green Globe, Vert de Laon, Violetta di Chioggia, Violetto di Chioggia, Gros Vert de Laon, Purple Globe
jerusalem-artichoke: Fuseau, Dwarf Sunray
cardoon: Gigante di Romagna
sweetcorn: ~Swift, ~Lark, Earlibird, Sundance, Minipop, ~Incredible, Silver Queen, Golden Bantam, Honey and Cream, ~Peaches and Cream, Butter and Sugar, Bodacious, ~Ambrosia, Earlivee, Early Sunglow, Stowell’s Evergreen, Country Gentleman, Kandy Korn, Mirai, Luther Hill, Painted Mountain, Hickory King, Katumani
sweet-potato: Beauregard, Beauregard Improved, Georgia Jet, Centennial, ~Jewel, Carolina Ruby, T65, ~Bonita, ~Evangeline, Erato Orange, ~Orleans, Makatea, Vardaman, Covington, ~Garnet, Owairaka Red
okra: Clemson Spineless, ~Burgundy, Red Burgundy, Annie Oakley, Annie Oakley II, Cajun Jewel, Star of David, ~Emerald, Jambalaya, Arka Anamika, Pusa Sawani
rhubarb: Timperley Early, ~Victoria, ~Champagne, Stockbridge Arrow, Glaskin’s Perpetual, Raspberry Red, Fulton’s Strawberry Surprise, Strawberry Surprise, Hawke’s Champagne, Queen Victoria, Canada Red, MacDonald, Crimson Red
asparagus: Gijnlim, Connover’s Colossal, Mary Washington, Martha Washington, Jersey Knight, Jersey Giant, Jersey Supreme, Purple Passion
corn-salad: Vit, Verte de Cambrai, Large Leaved
strawberry: Cambridge Favourite, Elsanta, Honeoye, Hapil, ~Pegasus, ~Florence, ~Symphony, Mara des Bois, Gariguette, Royal Sovereign, Malwina, Marshmello, ~Christine, ~Sonata, ~Vibrant, ~Rhapsody, Flamenco, ~Albion, Mount Everest, Toscana, ~Snow White, ~Alexandria, Baron Solemacher, ~Mignonette, Yellow Wonder, Red Gauntlet, ~Kent
raspberry: Autumn Bliss, ~Polka, Joan J, Glen Ample, Glen Moy, Glen Prosen, Glen Magna, Glen Fyne, Glen Coe, Glen Dee, Glen Carron, Malling Jewel, Malling Promise, Malling Admiral, Malling Minerva, Malling Juno, Tulameen, ~Heritage, ~Caroline, All Gold, Allgold, Fall Gold, ~Leo, ~Octavia, Cascade Delight, Himbo Top, Willamette, ~Meeker, ~Latham
blackberry: Loch Ness, Oregon Thornless, Merton Thornless, Himalayan Giant, Himalaya Giant, Bedford Giant, Ashton Cross, ~Helen, ~Adrienne, ~Waldo, Karaka Black, ~Chester, Chester Thornless, Triple Crown, Navaho
loganberry: LY 59, LY 654, Buckingham
apple: Bramley, Bramley’s Seedling, Cox’s Orange Pippin, Cox, Egremont Russet, ~Discovery, James Grieve, Worcester Pearmain, ~Katy, Braeburn, ~Gala, Royal Gala, Fuji, Golden Delicious, Red Delicious, Granny Smith, Pink Lady, ~Jazz, Honeycrisp, McIntosh, Cortland, ~Empire, Macoun, ~Liberty, ~Enterprise, Gravenstein, Northern Spy, Rhode Island Greening, Arkansas Black, Winesap, Stayman, ~Jonathan, Jonagold, Idared, Haralson, Zestar, Sweet Sixteen, ~Wealthy, Wolf River, Yellow Transparent, Lodi, Beauty of Bath, Blenheim Orange, Ashmead’s Kernel, Orleans Reinette, Ribston Pippin, Laxton’s Superb, Laxton’s Fortune, Lord Lambourne, Ellison’s Orange, Charles Ross, Howgate Wonder, Newton Wonder, Annie Elizabeth, Grenadier, Rev W Wilks, Reverend W Wilks, Arthur Turner, Golden Noble, Lane’s Prince Albert, Peasgood’s Nonsuch, ~Bountiful, Red Falstaff, Falstaff, ~Greensleeves, ~Sunset, Kidd’s Orange Red, ~Saturn, ~Scrumptious, Red Windsor, ~Spartan, Winter Gem, Pitmaston Pineapple, Court Pendu Plat, D’Arcy Spice, Adams’s Pearmain, St Edmund’s Russet, Rosemary Russet, Brownlees Russet, Court of Wick, Devonshire Quarrenden, Tydeman’s Early, Tydeman’s Late Orange, Cripps Pink
pear: ~Conference, ~Williams, Williams’ Bon Chretien, Doyenne du Comice, Comice, ~Concorde, ~Beth, ~Bartlett, Bosc, Beurre Bosc, Anjou, Beurre d’Anjou, Beurre Hardy, Louise Bonne of Jersey, Catillac, Black Worcester, Packham’s Triumph, Packham, ~Onward, ~Invincible, Seckel
plum: ~Victoria, ~Czar, Marjorie’s Seedling, ~Opal, Santa Rosa, Methley, ~Stanley, ~Burbank, Shiro, ~Satsuma, Mariposa, Damson Merryweather, Merryweather, Shropshire Prune, Prune Damson, Farleigh, Bradley’s King, Denniston’s Superb, Old Green Gage, Reine Claude, Reine Claude de Bavay, Cambridge Gage, Oullins Gage, Oullins Golden Gage, Coe’s Golden Drop
cherry: ~Stella, Morello, Sunburst, Lapins, Lapins Cherokee, Kordia, ~Regina, ~Summer Sun, ~Sylvia, ~Celeste, ~Bing, ~Rainier, Black Tartarian, Royal Ann, ~Van
peach: ~Peregrine, ~Rochester, Duke of York, Avalon Pride, Redhaven, Red Haven, Elberta, ~Reliance, ~Contender, ~Bonanza, Garden Lady, Hale’s Early
apricot: Moorpark, Flavorcot, Tomcot, Goldcot, Blenheim, Royal Blenheim
quince: Vranja, Meech’s Prolific, ~Champion
medlar: Nottingham, ~Royal
blueberry: Bluecrop, ~Duke, ~Chandler, ~Patriot, Earliblue, ~Spartan, ~Herbert, Sunshine Blue, Northland, Top Hat, Pink Lemonade, Goldtraube, Brigitta, Elliott, ~Jersey, Blueray, ~Toro, ~Legend
blackcurrant: Ben Lomond, Ben Sarek, Ben Connan, Ben Hope, Ben Tirran, Ben More, Ben Alder, Ben Nevis, ~Big Ben, ~Ebony, ~Titania
redcurrant: Red Lake, Rovada, Jonkheer van Tets, Laxton’s No 1, Junifer, Stanza, Redstart, White Versailles
gooseberry: Invicta, Hinnonmaki Red, Hinnonmaki Yellow, Hinnonmaki, ~Careless, Leveller, Whinham’s Industry, ~Pax, Rokula, Captivator, Greenfinch
honeyberry: ~Aurora, Indigo Gem, Borealis, ~Tundra, Boreal Beauty, Boreal Blizzard
grape: Black Hamburgh, Black Hamburg, ~Concord, Boskoop Glory, ~Phoenix, Muscat of Alexandria, Bacchus, Madeleine Angevine, ~Brant, Thompson Seedless, Himrod, Canadice, ~Mars, ~Reliance, ~Flame, ~Niagara, Catawba, Interlaken, Siegerrebe, Pinot Noir
fig: Brown Turkey, Brunswick, White Marseilles, Panachee, Rouge de Bordeaux, Violette Dauphine, Dalmatie, ~Celeste, Chicago Hardy, Black Mission, Kadota
kiwi: ~Jenny, ~Hayward, Issai, ~Bruno, Tomuri
lemon: Meyer, Improved Meyer, ~Eureka, ~Lisbon, Garey’s Eureka, Four Seasons
lime-tree: ~Tahiti, Tahitian, Bearss, Kaffir
orange-tree: Washington Navel, ~Valencia, Lane Late, Cara Cara, Moro, Tarocco
mandarin: Satsuma Owari, Imperial Mandarin, ~Emperor, Clementine Nules, Owari, ~Encore
grapefruit: ~Marsh, Ruby Red, Wheeny, Rio Red
kumquat: Nagami, Marumi
mulberry: King James, ~Chelsea, Illinois Everbearing, ~Pakistan
hazelnut: Kentish Cob, Cosford, Nottingham, Pearson’s Prolific, Ennis, ~Butler, Gunslebert
walnut: Broadview, Buccaneer, Franquette, ~Chandler
almond: Robijn, All-in-One, Nonpareil
chestnut: Marron de Lyon, Marigoule, Bouche de Betizac, ~Regal
pecan: ~Pawnee, ~Desirable, ~Stuart, Elliott, Cape Fear
olive: Arbequina, Frantoio, Leccino, Kalamata, Manzanillo, ~Mission, Picual, Koroneiki, Nevadillo Blanco
passion-fruit: Panama Gold, Panama Red, Nellie Kelly, Black Passionfruit, Misty Gem
feijoa: ~Unique, ~Apollo, ~Mammoth, ~Triumph, ~Gemini, ~Duffy
persimmon: Fuyu, Hachiya, Jiro, Rojo Brillante, Dai Dai Maru
avocado: Hass, Fuerte, ~Bacon, ~Reed, Sharwil, Shepard, Pinkerton
mango: Kensington Pride, Bowen, Alphonso, Haden, Tommy Atkins, ~Kent, Keitt, ~Julie, East Indian, ~Bombay, Ataulfo, Nam Doc Mai
banana: ~Cavendish, Dwarf Cavendish, ~Lady Finger, Goldfinger, Musa Basjoo, Basjoo, Gros Michel
parsley: Moss Curled, Moss Curled 2, Giant of Italy, Italian Giant, Gigante d’Italia, Plain Leaved
basil: Sweet Genovese, Genovese, Dark Opal, Purple Ruffles, Purple Delight, Red Rubin, Siam Queen, Mrs Burns Lemon, Mrs Burns, ~Minette, African Blue, Napolitano
coriander: Calypso, Cilantro, ~Leisure, Slow Bolt, Slobolt, Santo
dill: ~Bouquet, ~Mammoth, Fernleaf, Dukat, ~Diana, ~Hercules
mint: ~Swiss, Berries and Cream, ~Chocolate, Mojito, Black Mitcham, Kentucky Colonel
sage: Berggarten, Tricolor, Purpurascens, Icterina, Icterine
thyme: Silver Posie, Doone Valley, Archer’s Gold, Bertram Anderson, Silver Queen, Pink Chintz
rosemary: Miss Jessopp’s Upright, Miss Jessop’s Upright, Tuscan Blue, Severn Sea, Prostratus, Arp, Green Ginger, Foxtail
oregano: Hot and Spicy, Kent Beauty, Rosenkuppel
chive: Forescate, Staro
nasturtium: ~Alaska, Empress of India, Black Velvet, ~Jewel, Jewel Mixed, ~Tom Thumb, Peach Melba, Whirlybird, Milkmaid, Salmon Baby, ~Phoenix, ~Ladybird
dahlia: Café au Lait, Bishop of Llandaff, Bishop of Oxford, Bishop of Canterbury, Bishop of York, Bishop’s Children, ~Cornel, Cornel Bronze, Jowey Winnie, Wizard of Oz, Linda’s Baby, Totally Tangerine, ~Labyrinth, Thomas A. Edison, Thomas Edison, Arabian Night, Karma Choc, David Howard, Moonfire, Honka, Twyning’s After Eight, Sweet Nathalie, Otto’s Thrill, Kelvin Floodlight, Penhill Watermelon, Penhill Dark Monarch, Crème de Cassis, Ivanetti, Jomanda
rose: ~Iceberg, ~Peace, Gertrude Jekyll, Munstead Wood, Graham Thomas, Lady of Shalott, Olivia Rose Austin, Boscobel, The Generous Gardener, Claire Austin, Wollerton Old Hall, Albertine, Zephirine Drouhin, New Dawn, ~Compassion, Madame Alfred Carriere, Mme Alfred Carriere, Rambling Rector, Paul’s Himalayan Musk, Kiftsgate, Félicité Perpétue, American Pillar, Veilchenblau, Malvern Hills, ~Ballerina, ~Bonica, The Fairy, Flower Carpet, Rhapsody in Blue, Margaret Merril, Ingrid Bergman, Just Joey, Double Delight, Mister Lincoln, Mr Lincoln, ~Queen Elizabeth, Ena Harkness, Deep Secret, Arthur Bell, ~Masquerade
sweet-pea: Matucana, Cupani, ~Painted Lady, Mollie Rilstone, ~Gwendoline, Charlie’s Angels, ~Jilly, ~Windsor, ~Beaujolais, Erewhon, ~Black Knight, Almost Black, High Scent, Royal Wedding, Albutt Blue
clematis: Nelly Moser, Jackmanii, Etoile Violette, ~Niobe, ~Montana, Montana Rubens, ~Elizabeth, Mayleen, ~Freda, Armandii, ~Apple Blossom, ~Snowdrift, Ville de Lyon, The President, Dr Ruppel, Rouge Cardinal, Perle d’Azur, Polish Spirit, Arctic Queen, Madame Julia Correvon
tulip: Queen of Night, ~Ballerina, ~Apricot Beauty, ~Spring Green, Black Parrot, Angelique, Abu Hassan, Sarah Raven, La Belle Epoque, Purissima, White Triumphator, Jan Reus, ~Havran, Negrita, Princess Irene, Prinses Irene, Orange Emperor, ~Red Emperor, Apeldoorn, Golden Apeldoorn, Mount Tacoma
daffodil: King Alfred, Tête-à-tête, ~Thalia, Ice Follies, ~Carlton, Dutch Master, February Gold, Jetfire, Minnow, Hawera, ~Actaea, Pheasant’s Eye, Cheerfulness, Yellow Cheerfulness, Mount Hood, W.P. Milner, Jack Snipe
snowdrop: S. Arnott, ~Magnet, Flore Pleno, Atkinsii, Brenda Troyle
crocus: Jeanne d’Arc, Pickwick, Cream Beauty, Ruby Giant, Barr’s Purple, ~Remembrance
hyacinth: Delft Blue, ~Woodstock, ~Carnegie, City of Haarlem, Jan Bos
allium: Purple Sensation, ~Gladiator, Globemaster, Mount Everest, Christophii, Schubertii
gladiolus: Peter Pears, Nova Lux, White Prosperity, Green Star, ~Espresso
lily: Stargazer, Casa Blanca, Regale, Regale Album, Pink Perfection
iris: Jane Phillips, Kent Pride, Black Swan, ~Harmony, ~George, Katharine Hodgkin, ~Pauline
peony: Sarah Bernhardt, Bowl of Beauty, Karl Rosenfield, Duchesse de Nemours, Festiva Maxima, Coral Charm, Coral Sunset
hydrangea: ~Annabelle, ~Limelight, Little Lime, Endless Summer, Vanille Fraise, ~Phantom, Madame Emile Mouillere
lavender: Hidcote, Munstead, Grosso, ~Vera, Imperial Gem, Folgate
geranium: Rozanne, Johnson’s Blue, ~Patricia, Ann Folkard, Kashmir White, Mrs Kendall Clark
pelargonium: Attar of Roses, Lord Bute, Lady Plymouth, Sidoides, Happy Thought
salvia: Hot Lips, ~Amistad, Caradonna, Cardonna, Mainacht, May Night, Black and Blue, Royal Bumble, Nachtvlinder, ~Victoria
penstemon: ~Garnet, Andenken an Friedrich Hahn, Sour Grapes, ~Raven, Husker Red, Alice Hindley, Hidcote Pink
heuchera: Palace Purple, ~Marmalade, ~Obsidian, Plum Pudding, Lime Marmalade
hosta: ~Halcyon, Sum and Substance, ~Patriot, Frances Williams, Blue Angel, Empress Wu, Francee
crocosmia: ~Lucifer, Emily McKenzie, George Davison, Emberglow, Star of the East
delphinium: Pacific Giants, Magic Fountains, ~Black Knight, King Arthur
phlox: ~David, Bright Eyes, Blue Paradise, Starfire, Crème Brûlée, Cherry Caramel
aster: Mönch, Little Carlow, Purple Dome, Andenken an Alma Pötschke
china-aster: King Size, Ostrich Plume
rudbeckia: Goldsturm, Cherry Brandy, Cherokee Sunset, ~Indian Summer, Prairie Sun, ~Sahara, Rustic Dwarfs
echinacea: ~Magnus, White Swan, Cheyenne Spirit, Green Jewel, Green Twister
helenium: Moerheim Beauty, Sahin’s Early Flowerer, Waltraut
sedum: Autumn Joy, Herbstfreude, ~Matrona, Purple Emperor, ~Brilliant
yarrow: ~Moonshine, Terracotta, Gold Plate, Coronation Gold, Cloth of Gold, Cerise Queen
nepeta: Six Hills Giant, Walker’s Low, Junior Walker
monarda: Cambridge Scarlet, Jacob Cline, Raspberry Wine, Prairie Night
agastache: Blue Fortune, Blackadder, Black Adder, Golden Jubilee
astrantia: ~Roma, Hadspen Blood, ~Shaggy
foxglove: ~Excelsior, ~Foxy, Sutton’s Apricot, Pam’s Choice, ~Camelot, ~Alba
lupin: ~Russell, Russell Mixed, The Governor, The Chatelaine
hellebore: Harvington, Anna’s Red, Penny’s Pink, Ivory Prince
aquilegia: Nora Barlow, McKana, McKana Giants, Black Barlow
snapdragon: Madame Butterfly, ~Rocket, Chantilly, Potomac, Black Prince, Liberty Classic, ~Night and Day
sunflower: Russian Giant, Mammoth Russian, ~Teddy Bear, Velvet Queen, Vanilla Ice, Italian White, ProCut, ProCut Orange, ProCut Plum, ProCut White Nite, Sunrich, Sunrich Orange, ~Claret, Moulin Rouge
zinnia: Benary’s Giant, Benary’s Giant Lime, Queen Lime, Queeny Lime Orange, Queen Red Lime, Queeny Lime Red, Queen Lime Blush, ~Envy, ~Oklahoma, Zinderella
cosmos: ~Purity, ~Sensation, ~Dazzler, ~Versailles, ~Double Click, Double Click Cranberries, Sea Shells, ~Seashells, Psyche White, Rubenza, Xanthos, Apricotta, Apricot Lemonade
calendula: Indian Prince, ~Art Shades, Pacific Beauty, ~Neon, Snow Princess, Fiesta Gitana
marigold: Durango, Naughty Marietta, Cinnabar, Strawberry Blonde, Tangerine Gem, Lemon Gem, Golden Gem, Red Gem, ~Crackerjack
cornflower: ~Black Ball, ~Blue Ball, ~Blue Boy, Blue Diadem
larkspur: Giant Imperial, ~Sublime, Frosted Skies, Earl Grey
nigella: Miss Jekyll, Persian Jewels, African Bride, Miss Jekyll Alba
ammi: Graceland, Dara, Green Mist
scabious: ~Black Knight, ~Black Cat, Tall Double, Butterfly Blue, Clive Greaves, Fata Morgana
poppy: ~Ladybird, Danish Flag, Lauren’s Grape, ~Mother of Pearl, ~Pandora, Amazing Grey, Bridal Silk, Angels’ Choir, Black Paeony
oriental-poppy: Patty’s Plum, Beauty of Livermere, Royal Wedding, Perry’s White
stock: Brompton, Ten Week, ~Excelsior, ~Iron
wallflower: Bowles’s Mauve, Bowles Mauve, Fire King, Blood Red, Persian Carpet
sweet-william: Auricula Eyed, ~Sooty, Nigricans, Amazon Neon
dianthus: Mrs Sinkins, ~Doris, Chabaud, Gran’s Favourite, Black and White Minstrels
lisianthus: ~Echo, ~Mariachi, ~ABC, Rosanne
celosia: ~Chief, Pampas Plume, Flamingo Feather, ~Bombay, ~Sunday
statice: QIS, ~Forever
strawflower: Monstrosum, Swiss Giant
phacelia: Balo, Stala
petunia: Surfinia, Supertunia, ~Wave, Easy Wave
nicotiana: Sylvestris, Lime Green, ~Domino, ~Whisper
morning-glory: Heavenly Blue, Grandpa Ott, Flying Saucers
fuchsia: Riccartonii, Hawkshead, ~Genii, Mrs Popple, ~Tom Thumb, Swingtime
begonia: ~Nonstop, Million Kisses, Dragon Wing
viola: ~Sorbet, Bowles Black, Bowles’s Black, Heartsease
buddleja: ~Black Knight, Royal Red, White Profusion, Lochinch
mock-orange: Belle Etoile, Virginal, Manteau d’Hermine
lilac: Madame Lemoine, Palibin, Charles Joly, ~Sensation
magnolia: Stellata, Royal Star, ~Susan, ~Galaxy, Heaven Scent
forsythia: Lynwood
viburnum: Bodnantense Dawn, ~Dawn, Eve Price
honeysuckle: Graham Thomas, ~Serotina, Belgica, Halliana
agapanthus: Northern Star, Midnight Star, Headbourne Hybrids, ~Peter Pan
kangaroo-paw: Bush Gem, ~Big Red
grevillea: Robyn Gordon, ~Superb, ~Moonlight, Honey Gem, ~Peaches and Cream
protea: Pink Ice, ~King
japanese-anemone: Honorine Jobert, September Charm, Prinz Heinrich
anemone: De Caen, St Brigid, White Splendour, Blanda
ranunculus: ~Elegance, Aviv, Tecolote
alstroemeria: ~Indian Summer, Summer Break, Ligtu Hybrids
chrysanthemum: Allouise, Clara Curtis, Mary Stoker, Emperor of China, Bretforton Road
coreopsis: ~Moonbeam, Zagreb, Early Sunrise
gaillardia: ~Burgundy, ~Kobold, ~Goblin
gaura: Whirling Butterflies, Siskiyou Pink, ~Sparkle White
verbena: ~Lollipop, ~Polaris, Homestead Purple
gypsophila: Covent Garden, Bristol Fairy, ~Snowflake
thalictrum: Hewitt’s Double, Black Stockings, ~Elin
persicaria: Firetail, Blackfield, ~Taurus
daylily: Stella de Oro, Stella d’Oro, Happy Returns, Hyperion
astilbe: ~Fanal, Deutschland, Bridal Veil
pulmonaria: Blue Ensign, Sissinghurst White
red-hot-poker: Tawny King, Royal Standard, Bees’ Lemon
miscanthus: Morning Light, Zebrinus, Gracillimus, Kleine Silberspinne, Ferner Osten
feather-reed-grass: Karl Foerster, ~Overdam
pennisetum: Hameln, Little Bunny, Rubrum
bluestem: Standing Ovation, ~The Blues, ~Blaze, ~Carousel
heather: Springwood White, Springwood Pink, Myretoun Ruby
camellia: ~Debbie, ~Donation, Jury’s Yellow, Adolphe Audusson
rhododendron: Percy Wiseman, Nova Zembla, Cunningham’s White
`;
