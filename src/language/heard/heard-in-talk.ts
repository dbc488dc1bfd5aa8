/**
 * What the bundled recogniser wrote for words of the trade in whole stories that synthetic voices spoke. Lines
 * "heard>meant count,meant count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const HEARD_IN_TALK = `
a son>sawn 1
able>gable 1
adapter>adaptor 1
afters>rafters 1
all>wall 1
alley>ali 1
altar>water 1
and>end 5,cant 2
and and>engine 1
and its>nuts 1
angered>anchor 1
atchets>ratchet 1
backs>bags 1
band>bent 1
bank>bag 1
banks up>benchtop 1
baper>vapour 1
bards>boards 1
barred>bored 1,board 2
barrier>bearer 1
base>bays 1
bates>bed 1
bats>batts 1
batteries>batterys 2
batterns>battens 1
battons>battens 1
bean>beam 1
bedroom>batten 1
bell>belt 1
bells>barrels 1
bend>bed 1
bending>bedding 1
berlins>purlins 1
bessel>bezel 1
betons>battens 1
bill>bilge 1
bills>bilge 1
bit>bed 2
blammed>gland 1
blank>plank 1
blessed>glass 1
blind>line 1
blisters>balusters 1
board>bore 1
boat>vault 1
bodies>bodys 2
bogg>bob 1
boil or>boiler 1
book head>bulkhead 3
bookheads>bulkheads 1
bored>boards 1
bottle can>bulkhead 1
bottom is>bottoms 1
boughs>bows 1
bout>bow 2
brain>grain 1
brains>drains 1
break>brick 1
breaks>bricks 1
breasted>dressed 1
build>bolt 1
built>bilge 1
bullets>bolts 1
bump>bob 1
bumped>bunk 1
bumps>bunks 1
bungle lows>bungalows 1
burths>berths 1
busber>busbar 1
buttons>battens 1
butts>boards 1
cable>gable 1
cap in>cabin 1
caracine>kerosene 1
carboard>garboard 1
cartil>carvel 1
casters>castors 3
catered van>caravan 1
changed>chains 1,changes 1
chef>shaft 2
chin knees>chimneys 1
choists>joists 1
clamp>kingplank 1
claw>crawl 1
clean>plane 1
clears>cures 1
clock>cork 2
clocking>caulking 1
coarse>course 1
cocking>caulking 1
code is>coats 1
cold>hold 2
color>collar 1
combing>coaming 1
comings>coamings 1
cook>coat 1
corbors>corners 1
coroner>corner 1
coronus>cornice 1
could>cut 4
country is>gantrys 1
countrys>gantrys 1
covered>cupboard 1
covers>cupboards 1
crack>rack 1
cummered>cured 1
cup>cupped 1
cut>cupped 1,cant 1
dark>top 1
date>gate 1
day doh>dado 1
dead>bed 2
dear docs>gearbox 1
dench>bench 1
dex>decks 1
dick>deck 1
dickers>diggers 1
do being>tubings 1
dot um>bottom 1
draft>draught 1
drain keep>drainpipe 1
drapes>drips 1
dropped>drop 1
drought>drawer 1
drunk>drawing 1
duck>duct 1
ducked>duct 1
ducking>decking 1
ducks>decks 1
due>tube 1
earned>run 1
earth at>earthed 1
elbos>elbows 1
end is>ends 1
ernest>runners 1
eve>eave 2
ex giviter>excavator 1
exals>axles 1
excellence>axles 1
exults>axles 1
failed>felt 1
fan>van 1
fared>faired 1
feared>faired 1
feel>fill 1
fees>fuse 1
feet>feed 2
few>fuse 2
films>foams 1
flappers>clappers 1
flew>flue 2
flint>flange 1
floor is>floors 1
flora>floor 1
flour>floor 1
flower>floor 1
flowers>floors 2
flu>flue 5
fly>ply 1
for>fore 1
formula>sawmill 1
foul>fall 1
four>fall 1
frings>firrings 1
furnish>varnish 1
gandway>gangway 1
gas cap>gasket 1
gear bucks>gearbox 1
glitter>clear 1
golden>holders 1
good>cut 1
good human>bitumen 1
got>cut 1
got us>gutters 1
grain>crane 1
grays>greys 2
great>crate 1
greece>grease 1
grew>glue 1
growers>drawers 1
gunwolds>gunwales 1
had>head 1
hand holes>handles 1
handing>hanging 1
handstock>headstock 1
head stuck>headstock 1
head tox>headstocks 1
hey room>headroom 1
hip sucks>headstocks 1
hop>top 2
hops>tops 1
hose>holes 1
house>halls 1
houses>hoses 1
huddle>hull 1
in>tin 1
inverted>inverters 1
it>wood 1
it stares>upstairs 1
jam>jamb 1
jog>dog 1
joyce>joists 4
joystick>joists 1
kelson>keelson 1
key>keel 1
kielsen>keelson 1
knaves>naves 1
knot>nut 1
lamb mating>laminating 1
land>gland 1
lands>lens 1
large>larch 1
last>glass 2
late>lead 1
law>floor 1
lay>lathe 1
leanted>linseed 1
leaves>leads 1
letters>ladders 1
like>light 2
line>lime 3
links>zincs 1
lipings>lippings 1
lit>lead 2
little>lintel 4,lintels 1
locke>log 1
loo>glue 1
lord>log 1
lore>lorry 1
low>load 1
lower>blower 1
lunch>launch 1
lynx eve>linseed 1
mad>mat 1
make>rake 1
malast raid>balustrade 1
mans>vans 1
mantle>bandsaw 1
maris>bearers 1
marnish>varnish 1
mcargan inn>mahogany 1
meant>vent 1
melting>matting 1
men>bend 1
mess>mast 1
mike>bike 1
milk head>bulkhead 1
ming>awning 1
mirrors>bearers 1
mod is>bodies 1
mode>mold 1
mold>vault 2
mortal>mortar 1
motor>mortar 1
mountain pipe>downpipe 1
mutt>nut 2
my grandmother>micrometer 1
native>nave 1
natives>naves 1
nod>dog 3
nor>door 1
nosegames>nosings 1
oakham>oakum 1
of>loft 1
of emperor>bumper 1
oil>wall 1
oils>walls 2
old>cold 1,mold 1
ole>wall 1
on>run 1,sawn 1
oon its>units 1
or as>rust 1
other>auger 1
pad of>paddock 1
paddens>battens 1
pain>pane 1
paind>paint 1
pains>panes 3
panelled>panels 1
part>pot 1
parties>partys 1
parts>spots 1
past>bath 1
path>bath 1
patter in>batterys 1
paws>pawls 1
pecks>backs 1
pen>pan 2
pence>pins 1
pendle>panel 1
people>gable 1
perch>birch 1
pergo it>pergola 1
pets>pads 1
pets tox>headstocks 1
phone>foam 1
picks>pex 1
piddle pit>pulpit 1
pidge>pitch 1
pine door>pintle 1
pink>paint 1
plain>planed 3,plane 1
plained>planed 1
plainer>planer 2
plancs>planks 1
plans>planks 1
planting>planking 2
plants>clamps 2,planks 1
plasterbirds>plasterboards 1
plate is>plates 1
play>plate 2,ply 1,plane 1
plies>plys 2
plight>ply 1
plum>plumb 2
plums>plumbs 1
poi>point 1
poke>oak 1
polly carbonate>polycarbonate 1
poor foes>portholes 1
pop>top 1
pops>tops 1
pork cuts>pockets 1
porsche>porch 1
porthos>portholes 1
pose>posts 1
powered>port 1
precious or>pressure 1
pro pain>propane 1
pull>pulley 1
pulls>poles 1
pulse>pawls 1
pure>cure 1
purple>bubble 1
pushing>bushing 1
put>cut 1
put all>pull 1
quarter>corner 1
rabbit>rabbet 1
rabbits>rabbets 1
racked>racks 1
raffles>gravels 1
raft or>rafter 1
rain>grain 1
rampant>rabbet 1
ran>rammed 1
rangel>angle 1
rapes>ribs 1
rare afters>rafters 1
reels>wheels 1
relief>roof 1
rent>vent 1
rest>rust 1
rich>ridge 1
riddle>rule 1
rids>ribs 1
right>dry 1
rim>ribs 1
rings>springs 1
rips>drips 1
rises>risers 1
roof>groove 2
roofs>grooves 1
round>run 1
rounder>runner 1
roystes>joists 1
ruler>router 1
ruling>drilling 1
rumours>runners 1
run>rung 2
ryes>rise 1
sail>sill 1
sails>sills 2,cells 1
sales>sills 1
sap were>sapwood 1
sashas>sashes 1
sat>set 1
sate>slate 1
screen is>screens 1
screened>screed 1
sea>seat 1
seaters>cedars 1
seed>seat 1
seeds>seats 2
sells>cells 1
shade>shed 1
shaped>shake 1
she is>shes 1
sheckles>shackles 1
sheer>shears 1
shell of>shelf 1
shocks>shops 1
shoot>shoe 1
shrogs>shrouds 1
sight>side 1
silk>sill 1
sites>sides 1
skin>scale 1
slap>slab 1
slaps>slabs 1
slew>sloop 1
slide>slate 1
slides>slats 1
slight>slide 1
sloped>slope 1
sly>slat 1
so>saw 1
so at>saw 1
soal>sole 1
sole mill>sawmill 1
sown>sawn 1
spot>saw 1
stamped chin>stanchion 1
steals>steels 1
steds>studs 1
stemmed>stand 1
still>stove 1,sill 1
stingless>stainless 1
stone>stove 1
stones>stoves 1
streamers>stringers 1
strikes>strakes 1
strip>skip 1
stripes>strips 1
stuck>stock 1
stumps>studs 1
style>stiles 1
summel>sawmill 1
sun>sawn 1
swall>saw 1
swaned>sawn 1
table>staple 1
tales tops>tailstocks 1
tap>tarp 1
tarot>tar 1
tarpaulence>tarpaulin 1
tarpolin>tarpaulin 1
ten and>tenon 1
ten room>headroom 1
tent>tank 2
that>slats 1
the halts>bolts 1
third>faired 1
tie>die 1
tint>tin 1
to silicon>silicone 1
tone>stone 2
towing>drawing 1
trance um>transom 1
transome>transom 1
trembles>trunnels 1
troke>truck 1
trust>truss 1
turn>tongue 1
up>top 1
us>rust 1
ush>ash 1
v>vee 2
vails>valves 1
verbal>bubble 1
village>bilge 1
vim>van 1
voila>boiler 1
volts>bolts 1
wait>weight 1
waits>weights 1
wall>wool 1
we all>well 1
weams>beams 1
weld it>welded 1
well>wool 2,wall 2
well beaten>welded 1
well did>welded 1
well to>welded 1
welles>walls 1
wet end>wagon 1
whale>well 1
whereafter>rafter 1
while not>walnut 1
whirl>wall 1
white>weight 1
will>wool 1
works>books 1
world>walls 1,weld 1,wool 1,wood 1
worlds>bolts 1
yarn>yard 1
yokes>oaks 1
`;
