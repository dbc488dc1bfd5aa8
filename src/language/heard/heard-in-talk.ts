/**
 * What the bundled recogniser wrote for words of the trade in whole stories that synthetic voices spoke. Lines
 * "heard>meant count,meant count". Written by scripts/make-heard-as.ts; do not edit by hand.
 */
export const HEARD_IN_TALK = `
adapter>adaptor 1
all you>ali 1
and>end 4
angered>anchor 1
around>run 1
axels>axles 1
bait>bay 1
bank>bunk 2
barred>board 1
base>bays 2
basil>bezel 1
bats>batts 1
batteries>batterys 2
beach>beech 2
bears>gears 1
best>bath 1
beth>bath 1
betterels>barrels 1
board>port 1
boats>bolts 1
bodies>bodys 1
bowl to>bolt 1
brain>drain 1
brains>drains 2
brewer>rear 1
bucks>box 2
build>bolt 1
builds>bilge 1
bults>bolts 1
bump>bob 1
butt>dirt 1
campen>cabin 1
can>cant 1
caracine>kerosene 1
cat>cab 1
caught>cork 1
chicks>chucks 1
cited>sistered 1
clamps>planks 1
codes>coats 1
combings>coamings 1
cooking>caulking 1
could>cut 1,cuts 1
court>cork 1
cream>crane 1
creams>crimps 1
crops>props 2
cut>cupped 1
dream>trim 1
dual>tool 1
earned>run 1
eck>rack 1
ex giviter>excavator 1
exals>axles 1
exel>axle 1
feet>feed 2
flake>fly 1
flats>flags 1
flocks>flags 3
flour>floor 1
flower>floor 1
fome>foam 1
fomes>foams 1
for>fore 1
from>front 1
fumes>fuse 1
furing>furring 1
furings>furrings 1
graves>naves 1
great>gray 1
grew>glue 1
hairroom>headroom 1
head or>headboard 1
hearth>earth 1
hinders>hinges 1
hips>hooks 1
hook>oak 1
hop>top 1
hops>hobs 1
in wets>inlets 1
in whats>inlets 1
jane>chain 1
jog>dog 1
joides>joints 1
joyce>joists 4
kath>bath 1
knaves>naves 1
lail>oil 1
lands>lens 1
leaves>leads 1
leds>leads 1
lentils>lintels 1
letter>ladder 1
line>lime 2
linenow>lino 2
lintle>lintel 1
little>lintel 1
lived>lives 1
locke>log 1
lockered>lockers 1
lot>log 1
lynx eve>linseed 1
mats>nuts 1
overhand>overhang 1
pain>pane 1
pains>panes 4
path>baths 1
pearlings>purlins 1
pell>pile 1
perlings>purlins 1
perlins>purlins 1
phones>foams 1
pine door>pintle 1
plain>plate 1,planed 1
plant>plan 1
plasterbirds>plasterboards 1
platiforms>platforms 1
play it>plate 1
please>pulleys 1
plies>plys 1
plight>ply 1
plum>plumb 1
plus terboard>plasterboard 1
pops>tops 1
pose>poles 1
primarys>primers 1
quotes>coats 1
raft or>rafter 1
ranch>wrench 1
rapes>ribs 1
reds>ribs 1
rich>ridge 1
rupper>rubber 1
said>set 1
sail>sill 1
sails>sills 5
sales>sills 1
sane>sawn 1
scheme>skim 1
screen>screed 1
screened>screed 1
seabers>cedars 1
shaped>shake 1
sheerers>shears 1
shees>shes 1
shins>shims 1
shoots>sheets 1
silk>sill 1
slight>slide 1
solo>sole 1
sommel>sawmill 1
specc>spec 1
stay pulled>staple 1
still>sill 2
strip>skip 1
stuck>stock 1
summel>sawmill 1
swaps>slabs 1
tails hucks>tailstocks 1
take>tape 1
talk>top 1
thinner>veneer 1
third>faired 1
too>tube 1
tooth>tube 1
top>tub 1
towing>drawing 1
trencum>transom 1
trend>treads 1
trust>truss 2
two beams>tubings 1
two being>tubing 1
very>dairy 1
way no>lino 1
well>wheel 1
whipping>lipping 1
white>weight 1
wide>white 2
winter>window 1
wyrings>wirings 1
`;
