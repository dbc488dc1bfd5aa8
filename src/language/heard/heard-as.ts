/**
 * What the bundled recogniser wrote for words of the trade that synthetic voices spoke. Lines "heard>meant count,meant
 * count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const HEARD_AS = `
acetyl>acetal 1
adapter>adaptor 1
alley>ali 1
alloys>alis 1
amps>abs 1
angel nooks>inglenooks 1
annex>annexe 1
antennae>antenna 1
antiffl>antifoul 1
antiffling>antifouling 1
arbor>arbour 1
archers>arches 1
archetrack>architrave 1
archetraves>architraves 1
ass atone>acetone 1
assetals>acetals 1
augury>aga 1
band do>bamboo 1
banjoist>bandjoist 1
bar>bore 1
barred>barb 1
bars>bores 1
battle>bottle 1,barrel 1
beach>beech 1
beans>deckbeams 1
bear>bearer 1
bears>bearers 1
beat>bead 1
bell works>bulwarks 1
bench or>banister 1
bet>batt 1
bethdub>bathtub 1
bets>batts 3
bill nos>bullnose 1
bills>bilge 1
billwork>bulwark 1
binocular>binnacle 1
biscune>visqueen 1
biter>byre 1
black work>blockwork 1
blister>baluster 1
blisters>balusters 1
blust rate>balustrade 1
boat hole>bolthole 1
boot case>bookcase 1
boreho>borehole 1
bosser>bowser 1
bot>bog 1
bottle cat>bulkhead 1
bottlers>bollards 1
boughs prayed>bowsprit 1
brain peep>drainpipe 1
brat>brad 1
break>brake 1
breast humors>bressumers 1
breast sewer>bressumer 1
breast summer>bressummer 1
bubble>bevel 1
bumphalode>bungalow 1
bus>boss 1
busber>busbar 1
buses>busbars 1
butrum>bootroom 1
butter>gutter 1
buttering>guttering 1
button>batten 1
butts>box 1
by dit>bidet 1
byaxial>biaxial 1
calipers>callipers 1
camchaft>camshaft 1
camperman>campervan 1
canceled>cants 1
canelf>kennel 1
caping>capping 1
caracine>kerosene 1
card boy>carboy 1
cardboard>garboard 1
caroline>carlin 1,carline 1
carpins>carbons 1
caskets>gaskets 1
caster>castor 1
casters>castors 1
catch>ketch 1
center line>centreline 1
chaletxes>celotexes 1
charter>charger 1
chefs>shafts 1
cherry comb>jerrycan 1
chimes>chines 1
chin>chine 1
chords>cords 1
chuck>shock 1
city>settee 1
clan>clamp 1
cling plant>kingplank 1
clog>cog 1
clowch roof>coachroof 1
clue>clew 1
cluttings>claddings 1
cobble>coble 1
cock>caulk 1
cockbend>cockbead 1
coming>coaming 1
comings>coamings 1
compo>cobble 1
conrad>conrod 1
cool bucks>coolbox 1
cord>chord 1
counter burrs>counterbores 1
counter sync>countersink 1
coup>coop 1
coverts>culverts 1
cramp>crank 1
crank cheft>crankshaft 1
crigoteds>corrugateds 1
crosber>crossbar 1
crut>cruck 1
crux>crucks 1
curate>crib 1
curtain>corten 1
cutie>cuddy 1
dadozo>dados 1
dagger barred>daggerboard 1
damage on>demijohn 1
damp up>downpipe 1
dartboards>bargeboards 1
day dollar>dado 1
deck being>deckbeam 1
del ring>delrin 1
deself>diesel 1
die>dye 1
dipper>digger 1
disc>disk 1
discs>disks 1
dobbler>doubler 1
drinks>strips 1
duck>duct 1,dock 1
ducking>ducting 1
ducks>ducts 1
duct tail>dovetail 1
dug flaps>dogflaps 1
dullerins>delrins 1
dwan>dwang 1
dwaryl>toerail 1
earth>earthing 1
earth things>earthings 1
elections>lexans 1
elf>valve 1
empty freeze>antifreeze 1
ensued>ensuite 1
exhibitor>excavator 1
extra golf>astragal 1
exultary>axletree 1
eyeballed>eyebolt 1
fadox>futtocks 1
fascius>fascias 1
fellow>felloe 1
ferring>fairing 1
feshchu>fascia 1
fiberglass>fibreglass 1
field>feed 1
filet>fillet 1
finil>finial 1
fiolder>folder 1
fivers>fibers 1
flax>flags 1
flax tone>flagstone 1
flew>flue 1
flexy>flexi 1
flip>fluepipe 1
flowers we>floors 1
foot hot>futtock 1
forpeak>forepeak 1
four foot>forefoot 1
fouts>felts 1
fraying work>framework 1
fur>fir 1
furing>furring 1
gage>gauge 1
gal coat>gelcoat 1
gandway>gangway 1
gear bucks>gearbox 1
gray water>greywater 1
grills>grilles 1
grimettes>grommets 1
ground>grout 1
grummet>grommet 1
grunites>granites 1
gubblers>doublers 1
guesingek>gooseneck 1
gunwale>gunnel 1
gunwills>gunnels 1
gunwolds>gunwales 1
guys are>geyser 1
had liner>headliner 1
had rail>headrail 1
hand>hanger 1
hand break>handbrake 1
hard pores>hardcores 1
headpip>headpipe 1
heat bites>heatpipes 1
heat pip>heatpipe 1
hell eared>halyard 1
hell years>halyards 1
hill saw>holesaw 1
hing>hinge 1
hob>hub 1
hoe suppits>hosepipes 1
hoofs up>hosepipe 1
horse bucks>horsebox 1
hot>hut 1
how>hall 1
hug>hog 1
i looks>eyelets 1
ice buck>icebox 1
if in>fin 1
infil>infill 1
jam>jamb 1
joynter>jointer 1
kebbers>kevlars 1
kelps in>keelson 1
kem shafts>camshafts 1
kevler>kevlar 1
kicked plates>kickplates 1
kill>keel 1
kills>keels 1
knitting>netting 1
knock>nock 1
kraal space>crawlspace 1
lacheft>layshaft 1
lad>lag 1
lance at>lancet 1
lances>lancets 1
land>gland 1
laughs>laths 1
lead>led 1
lead strip>ledstrip 1
lee know>lino 1
left>lath 1,luff 1
lemonets>laminates 1
lever>leather 1
lexin>lexan 1
lh shafts>layshafts 1
lie>eye 1
life>live 1
limey coat>limecoat 1
lineature>linisher 1
lipings>lippings 1
little little>lintels 1
livers>louvres 1
locked height>loctite 1
lodder>lugger 1
loons>looms 1
lot>log 1
lou>loo 1
loud building>outbuilding 1
low coat>loco 1
lumbers>limbers 1
lunch>launch 1,ledge 1
luncheon>engine 1
lynchier baiter>incubator 1
mackerel bards>daggerboards 1
mad>mat 1
mail it>mallet 1
mandal>mangle 1
mantle>mantel 1
masks>masts 1
matureator>macerator 1
medals>metals 1
melamins>melamines 1
micro way>microwave 1
mill russ>millrace 1
millimene>melamine 1
minuscule>minisplit 1
mitre>miter 1
mold>mould 1
mortise or>mortiser 1
moulding>molding 1
mountain>muntin 1
mud flip>mudflap 1
mug art>mudguard 1
mullein>mullion 1
my crummeter>micrometer 1
my lawns>nylons 1
mystery>mitre 1
naggin>noggin 1,nogging 1
nest butts>nestbox 1
netvings>nettings 1
newle>newel 1
noun tubes>downtubes 1
nudge>notch 1
nuzzle>nozzle 1
oil>aisle 1
oil lock>oarlock 1
osps>osbs 1
owls>aisles 1
p v>pvc 1
paddlelithons>polythenes 1
pain>pane 1
pains>panes 1
palace tyring>polystyrene 1
palatine>polythene 1
palling>paling 1
panel>pail 1
paper>paver 1
papers>pavers 1
parlor>parlour 1
passant ways>passageways 1
patterns>battens 1
paw>pawl 1
pearl in>purlin 1
pen>pan 1
penis>pinnace 1
percola>pergola 1
pet>spec 1
pigotu>pagoda 1
pill>pull 1
pills>poles 1
pine tall>pintle 1
pipe so>pipes 1
plague>ply 1
plague would>plywood 1
plain>plane 1
plainer>planer 1
plains>plinth 1
plan gains>plankings 1
planting>planking 1
plantrume>plantroom 1
polic carbonates>polycarbonates 1
poor foe>porthole 1
pork holes>portholes 1
pork lights>portlights 1
portions>cortens 1
pot>pod 1
powerless tires>polystyrenes 1
preferations>perforations 1
preparation>perforation 1
proof for>proofer 1
prylins>purlins 1
pun tune>pontoon 1
purse picks>perspex 1
purter>girder 1
quarard>cord 1
rabbits>rabbets 1
rampant>rabbet 1
rat>rad 1
ravings>mattings 1
rcd oh>rcbo 1
ridding>rigging 1
riff point>reefpoint 1
rise>riser 1
rivers>rubbers 1
rockwell>rockwool 1
roll plug>rawlplug 1
rollock>rowlock 1
rondels>rundles 1
roofer>roofrack 1
room>rim 1
rope>rollpin 1
rose>rolls 1
rotometer>rotavator 1
rows>rose 1
rub braille>rubrail 1
ruler>rule 1
ruling>drilling 1
sale>sail 1
samb horse>sawhorse 1
sats crew>setscrew 1
scene>seam 1
scotch>scotia 1
screen>screed 1
sea>seal 1
seal>sill 1,cill 1
seat bucks>seatbox 1
seaver>cedar 1
sepo>sapele 1
sew>sole 1
sewboard>soleboard 1
share>sheer 1,shear 1
share line>sheerline 1
sheavings>sheetings 1
sheep>sheave 1
shevings>sheathings 1
shields>steels 1
shimm>shim 1
shipboard>chipboard 1
shudder>shutter 1
sick afflex>sikaflex 1
sight>site 1
sikomores>sycamores 1
silenceer>silencer 1
sills>cills 1
sip it>subboard 1
sip less>sapeles 1
siphon>syphon 1
siphons>syphons 1
sky>sty 1
sledge>sled 1
sleuth>sluice 1
slidway>slideway 1
slotboards>slatboards 1
smug>snug 1
snortle>snorkel 1
soft fits>soffits 1
south and>solvent 1
spits>spigots 1
spresses>spruces 1
sprickets>sprockets 1
sprucca>sprocket 1
stain was>stainless 1
stainlessus>stainlesses 1
stare>stair 1
staring>steering 1
stave>stay 1
stenchings>stanchions 1
stenchion>stanchion 1
stenpept>standpipe 1
stop>stock 1
stove epip>stovepipe 1
stove equipts>stovepipes 1
streamer>strimmer 1
stress we>straws 1
strike>strake 1
style>stile 1
styles>stiles 1
suffet>soffit 1
suftwood>softwood 1
summel>sawmill 1
summits>cements 1
supreme>subframe 1
swingal tree>swingletree 1
table>stable 1
tail as>tails 1
tail plate>tailgate 1
tailings>tilings 1
tailpipe so>tailpipes 1
tap at>tappet 1
tapper knackle>tabernacle 1
tarpalans>tarpaulins 1
tart>tarp 1
teat>teak 1
thin lights>fanlights 1
thinsat>thinset 1
threadlet>threadlock 1
threads>treads 1
ticks>teaks 1
tire>tyre 1
tramps since>transoms 1
tranceome>transom 1
trimmer and>trimaran 1
trunk dings>trunkings 1
tube being>tubing 1
tune>tin 1
turmoil>terminal 1
turnbichel>turnbuckle 1
type>tub 1
vault meter>voltmeter 1
vessel>bezel 1
vet>vat 1
vex>decks 1
vice>vise 1
vindals>vinyls 1
vinyl esther>vinylester 1
wacker>whacker 1
wail>wale 1
whale>well 1
whale had>wellhead 1
wharpe>warp 1
whole way>hallway 1
wilder>welder 1
winch was>windlass 1
window>winder 1
wings>dwangs 1
with what>wingnut 1
wood>wool 1
wooden screens>windscreens 1
woods tory>woodstore 1
woods tow>woodstove 1
woolls>wools 1
worry>wherry 1
year>ear 1
yel>yawl 1
yet>yurt 1
`;
