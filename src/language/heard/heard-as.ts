/**
 * What the bundled recogniser wrote for words of the trade that synthetic voices spoke. Lines "heard>meant count,meant
 * count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const HEARD_AS = `
abstems>upstands 1
acetyl>acetal 1
adapter>adaptor 1
adapters>adaptors 1
addicts>attics 1
all plates>wallplates 1
alley>ali 1
alloys>alis 1
amateurs>ammeters 1
amps>abs 1
angel nooks>inglenooks 1
annex>annexe 1
antennae>antenna 1
antiffl>antifoul 1
antiffling>antifouling 1
antifles>antifouls 1
arbor>arbour 1
arbores>arbours 1
archers>arches 1
archetrack>architrave 1
archetraves>architraves 1
ass atone>acetone 1
assetals>acetals 1
augury>aga 1
axe>lags 1
back dears>backgears 1
band do>bamboo 1
banjoist>bandjoist 1
bar>bore 1
bards>barbs 1
barred>barb 1
bars>bores 1
battle>bottle 1,barrel 1
beach>beech 1
beans>deckbeams 1
bear>bearer 1
bears>bearers 1
beat>bead 1
bell works>bulwarks 1
bells>bellows 1
bench or>banister 1
bend stems>bandstands 1
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
blue trims>bootrooms 1
blust rate>balustrade 1
boat hole>bolthole 1
bobs>bogs 1
boot case>bookcase 1
boots>booths 1
boreho>borehole 1
bosser>bowser 1
bot>bog 1
bottle cat>bulkhead 1
bottlers>bollards 1
boughs prayed>bowsprit 1
bowl works>bulwarks 1
bows pritz>bowsprits 1
brain peep>drainpipe 1
brat>brad 1
brats>brads 1
break>brake 1
breaks>brakes 2
breast humors>bressumers 1
breast looks>breasthooks 1
breast sewer>bressumer 1
breast summer>bressummer 1
bubble>bevel 1
bumphalode>bungalow 1
bun below>bungalows 1
bunt boats>bondcoats 1
bus>boss 1
busber>busbar 1
buses>busbars 1
butrum>bootroom 1
butt cases>bookcases 1
butter>gutter 1
buttering>guttering 1
button>batten 1
butts>box 1
buyers>byres 1
by dit>bidet 1
byaxial>biaxial 1
calar fires>calorifiers 1
calipers>callipers 1
camchaft>camshaft 1
camperman>campervan 1
canceled>cants 1
candles>kennels 1
canelf>kennel 1
caping>capping 1
caracine>kerosene 1
card boy>carboy 1
cardboard>garboard 1
cares all>carousels 1
carishes>curraches 1
caroline>carlin 1,carline 1
carpins>carbons 1
cartridges>carriages 1
caskets>gaskets 1
caster>castor 1
casters>castors 1
castes>gases 1
castle liens>gasolines 1
catch>ketch 1
catches>ketches 1
catstones>padstones 1
center line>centreline 1
central lines>centrelines 1
chain sauce>chainsaws 1
chaletxes>celotexes 1
charter>charger 1
chefs>shafts 1
cherry cans>jerrycans 1
cherry comb>jerrycan 1
chilies>chalets 1
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
cobbles>cobles 1
cock>caulk 1
cockbend>cockbead 1
cogs>caulks 1
coming>coaming 1
comings>coamings 1
compo>cobble 1
conductors>connectors 1
conrad>conrod 1
cool bucks>coolbox 1
cord>chord 1
cords>chords 1
counter burrs>counterbores 1
counter sync>countersink 1
coup>coop 1
coverts>culverts 1
cramp>crank 1
crank cheft>crankshaft 1
craynals>cringles 1
crazzoats>creosotes 1
crigoteds>corrugateds 1
crimp cases>crankcases 1
crosber>crossbar 1
cross pusses>crawlspaces 1
crossbors>crossbars 1
crumbs>prongs 1
crut>cruck 1
crux>crucks 1
cuddies>putties 1
cups>cabs 1
curate>crib 1
curtain>corten 1
cutie>cuddy 1
dadozo>dados 1
dagger barred>daggerboard 1
damage on>demijohn 1
damage zones>demijohns 1
damp up>downpipe 1
dartboards>bargeboards 1
day cachetes>datasheets 1
day dollar>dado 1
deck being>deckbeam 1
del ring>delrin 1
deself>diesel 1
die>dye 1
dins>tins 1
dipper>digger 1
directors>tractors 1
dirt>turps 1
disc>disk 1
discs>disks 1
distemper as>distempers 1
dobbler>doubler 1
doctors>dodgers 1
downstems>downstands 1
drinks>strips 1
drugs>struts 1
duck>duct 1,dock 1
ducking>ducting 1
ducks>ducts 1,tarps 1
ducktails>dovetails 1
duct tail>dovetail 1
dug flaps>dogflaps 1
dullerins>delrins 1
durned bickles>turnbuckles 1
dwan>dwang 1
dwaryl>toerail 1
earth>earthing 1
earth things>earthings 1
eggs its>websites 1
elections>lexans 1
elf>valve 1
elpgs>lpgs 1
emergence we>immersions 1
empty freeze>antifreeze 1
empty freezes>antifreezes 1
ensued>ensuite 1
envelopes>anvils 1
epoxys>epoxies 1
exhibitor>excavator 1
extra golf>astragal 1
exultary>axletree 1
eyeballed>eyebolt 1
eyeballs>eyebolts 1
fadox>futtocks 1
fascius>fascias 1
fellow>felloe 1
fellows>felloes 1
fence>fans 1
ferring>fairing 1
ferrings>fairings 1
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
foothrails>footrails 1
forages>forges 1
forpeak>forepeak 1
four cliffs>forklifts 1
four foot>forefoot 1
fouts>felts 1
framework so>frameworks 1
fraying work>framework 1
fur>fir 1
furing>furring 1
gage>gauge 1
gal coat>gelcoat 1
gandway>gangway 1
gantry>gantries 1
gazbos>gazebos 1
gear bucks>gearbox 1
gray water>greywater 1
grills>grilles 1
grimettes>grommets 1
grimps>crimps 1
grinds>brines 1
ground>grout 1
grubs screws>grubscrews 1
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
hand parts>handcarts 1
hands sauce>handsaws 1
hapses>hasps 1
hard pores>hardcores 1
headpip>headpipe 1
heads talks>headstocks 1
heat bites>heatpipes 1
heat pip>heatpipe 1
hell eared>halyard 1
hell years>halyards 1
hells>hulls 1
hemp breaks>handbrakes 1
henhouse as>henhouses 1
hibs>hoods 1
hill saw>holesaw 1
hing>hinge 1
hob>hub 1
hoe suppits>hosepipes 1
hoofs up>hosepipe 1
horse bucks>horsebox 1
hot>hut 1
hot coats>topcoats 1
hours>outboards 1
how>hall 1
hug>hog 1
hydrators>dehydrators 1
i looks>eyelets 1
ice buck>icebox 1
if in>fin 1
illinishers>linishers 1
infil>infill 1
infils>infills 1
jam>jamb 1
joynter>jointer 1
kebbers>kevlars 1
kelps in>keelson 1
kem shafts>camshafts 1
kevler>kevlar 1
key hives>beehives 1
kicked plates>kickplates 1
kill>keel 1
kills>keels 1
kittamarins>catamarans 1
knitting>netting 1
knock>nock 1
kochifs>coachroofs 1
kraal space>crawlspace 1
lacheft>layshaft 1
lad>lag 1
lads>lathes 1
lance at>lancet 1
lances>lancets 1
land>gland 1
lapse>laps 1
laughs>laths 1
lead>led 1
lead strip>ledstrip 1
lean toads>leantos 1
leaves cause>leadscrews 1
lee know>lino 1
left>lath 1,luff 1
lemonets>laminates 1
letters>ladders 1
letters we>luggers 1
lever>leather 1
lexin>lexan 1
lh shafts>layshafts 1
lie>eye 1
life>live 1
lifts>luffs 1
limey coat>limecoat 1
lineature>linisher 1
lines that>linesets 1
lipings>lippings 1
little little>lintels 1
livers>louvres 1
locked height>loctite 1
locked heights>loctites 1
lodder>lugger 1
looks>legs 1
loons>looms 1
loops>sloops 1
loose>loos 1
lores>lorries 1
lot>log 1
lou>loo 1
loud building>outbuilding 1
low coat>loco 1
lumbers>limbers 1
lunch>launch 1,ledge 1
luncheon>engine 1
lunches>launches 1
lynchier baiter>incubator 1
mackerel bards>daggerboards 1
mad>mat 1
magnetodes>magnetos 1
mail it>mallet 1
mandal>mangle 1
mantle>mantel 1
mantles>mantels 1
masks>masts 1
matureator>macerator 1
matureators>macerators 1
medals>metals 1
melamins>melamines 1
melted fuels>multifuels 1
menace plates>minisplits 1
micro way>microwave 1
miders>mitres 1
mill russ>millrace 1
millimene>melamine 1
minuscule>minisplit 1
mitre>miter 1
mold>mould 1
mortise or>mortiser 1
mortizers>mortisers 1
moulding>molding 1
mountain>muntin 1
mpps>mppts 1
mud flip>mudflap 1
mug art>mudguard 1
mugards>mudguards 1
mullein>mullion 1
my crummeter>micrometer 1
my lawns>nylons 1
mystery>mitre 1
myths>meths 1
naggin>noggin 1,nogging 1
nails>naves 1
named plates>nameplates 1
nest butts>nestbox 1
netvings>nettings 1
newle>newel 1
noun tubes>downtubes 1
nudge>notch 1
nuzzle>nozzle 1
oil>aisle 1
oil lock>oarlock 1
onings>awnings 1
orders>waters 1
osps>osbs 1
ours>parlours 1
overhins>overhands 1
owls>aisles 1
p v>pvc 1
paces>pastes 1
paddlelithons>polythenes 1
pagodus>pagodas 1
pain>pane 1
pains>panes 1
palace tyring>polystyrene 1
palatine>polythene 1
pallets>mallets 1
palling>paling 1
pals>bows 1
panel>pail 1
paper>paver 1
papers>pavers 1
paps>taps 1
parapens>paraffins 1
parlor>parlour 1
passant ways>passageways 1
pastics>mastics 1
patterns>battens 1
paw>pawl 1
pearl in>purlin 1
pel mitzv>pelmets 1
pen>pan 1
penis>pinnace 1
percola>pergola 1
pet>spec 1
petals>pedals 1
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
planter rooms>plantrooms 1
planting>planking 1
plantrume>plantroom 1
pokes>spokes 1
polic carbonates>polycarbonates 1
polyester as>polyesters 1
poor foe>porthole 1
pork holes>portholes 1
pork lights>portlights 1
portions>cortens 1
pot>pod 1
pots>pods 1
pouts>spouts 1
powerless tires>polystyrenes 1
preferations>perforations 1
preparation>perforation 1
proof for>proofer 1
prylins>purlins 1
pulse>pawls 1
pumps>punts 1
pun tune>pontoon 1
purse picks>perspex 1
purter>girder 1
quarard>cord 1
quilts>quills 1
rabbits>rabbets 1
ralled plugs>rawlplugs 1
rampant>rabbet 1
ranches>wrenches 1
rat>rad 1
ravens>rayburns 1
ravings>mattings 1
rcd oh>rcbo 1
real locks>rowlocks 1
ref boids>reefpoints 1
ridding>rigging 1
riders>routers 1
rids>rigs 1
riff point>reefpoint 1
rise>riser 1
rivers>rubbers 1
rockwell>rockwool 1
roles we>rolls 1
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
sacak flexes>sikaflexes 1
sale>sail 1
samb horse>sawhorse 1
sats crew>setscrew 1
scene>seam 1
scissors>cisterns 1
scotch>scotia 1
screen>screed 1
screws>setscrews 1
sea>seal 1
sea sauce>seesaws 1
seal>sill 1,cill 1
seat bucks>seatbox 1
seaver>cedar 1
sepo>sapele 1
sew>sole 1
sewboard>soleboard 1
shader alines>sheerlines 1
share>sheer 1,shear 1
share line>sheerline 1
shearers>shears 1
shears>sheers 1
sheavings>sheetings 1
sheep>sheave 1
shell axe>shellacs 1
shevings>sheathings 1
shields>steels 1
shimm>shim 1
shipboard>chipboard 1
shots>shunts 1
shudder>shutter 1
sick afflex>sikaflex 1
sided walls>sidewalls 1
sight>site 1
sikomores>sycamores 1
silenceer>silencer 1
sills>cills 1
sip it>subboard 1
sip less>sapeles 1
siphon>syphon 1
siphons>syphons 1
skies>sties 1
sky>sty 1
sledge>sled 1
sleuth>sluice 1
slidway>slideway 1
slotboards>slatboards 1
small eyes>slides 1
smug>snug 1
snortle>snorkel 1
snubs>snugs 1
soft fits>soffits 1
solusus>sluices 1
sotomes>acetones 1
south and>solvent 1
space as>spaces 1
spinners>spanners 1
spits>spigots 1
spresses>spruces 1
sprickets>sprockets 1
sprucca>sprocket 1
stain was>stainless 1
stainlessus>stainlesses 1
stare>stair 1
staring>steering 1
stave>stay 1
stems>stands 1
stenchings>stanchions 1
stenchion>stanchion 1
stenpept>standpipe 1
stitches>stages 1
stop>stock 1
stove epip>stovepipe 1
stove equipts>stovepipes 1
streamer>strimmer 1
streamers>strimmers 1
stress we>straws 1
stretches>stretchers 1
strike>strake 1
studies>settees 1
sturfs>sterns 1
style>stile 1
styles>stiles 1
suffet>soffit 1
suftwood>softwood 1
summel>sawmill 1
summits>cements 1
sums>sumps 1
sun reooms>sunrooms 1
supreme>subframe 1
swingal tree>swingletree 1
swingal trees>swingletrees 1
table>stable 1
tables of>tablesaws 1
tail as>tails 1
tail baits>tailgates 1
tail plate>tailgate 1
tailings>tilings 1
tailpipe so>tailpipes 1
tails talks>tailstocks 1
talis>tellies 1
tap at>tappet 1
tapper knackle>tabernacle 1
tarpalans>tarpaulins 1
tart>tarp 1
teat>teak 1
thin eels>finials 1
thin lights>fanlights 1
thinsat>thinset 1
threadlet>threadlock 1
threads>treads 1
ticks>teaks 1
tire>tyre 1
tireless>trellis 1
tires>tars 1
tough rails>taffrails 1
tramps since>transoms 1
tranceome>transom 1
translucers>transducers 1
trimmer and>trimaran 1
trunk dings>trunkings 1
tube being>tubing 1
tune>tin 1
turmerines>trimarans 1
turmoil>terminal 1
turnbichel>turnbuckle 1
turtles>treadles 1
type>tub 1
under coders>undercoaters 1
unistrusts>unistruts 1
vats>baths 1
vault meter>voltmeter 1
vents>dens 1
vessel>bezel 1
vet>vat 1
vets>vats 1
vex>decks 1
vice>vise 1
vices>vises 1
vindals>vinyls 1
vinyl esther>vinylester 1
virtuous>verges 1
voltmatures>voltmeters 1
wacker>whacker 1
wail>wale 1
wash stems>washstands 1
weddings>wagons 1
whale>well 1
whale had>wellhead 1
whales>wales 1
wharpe>warp 1
white rushes>whitewashes 1
whole sauce>holesaws 1
whole way>hallway 1
wig nuts>wingnuts 1
wilder>welder 1
winch was>windlass 1
window>winder 1
windows>winders 1
wings>dwangs 1
with what>wingnut 1
wood>wool 1
wooden screens>windscreens 1
woods tory>woodstore 1
woods tow>woodstove 1
woods towards>woodstores 1
woolls>wools 1
worries>wherries 1
worry>wherry 1
wreckers>whackers 1,wackers 1
writings>riggings 1
year>ear 1
yel>yawl 1
yerks>yurts 1
yet>yurt 1
yols>yawls 1
`;
