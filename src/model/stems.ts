// The stemmer's file alone: the package's front door costs a second and pulls in database clients.

import porter from 'natural/lib/natural/stemmers/porter_stemmer.js';
import { remembered } from '../remembered.ts';

/** Past forms and plurals that no suffix rule reaches, of verbs and things of the workshop. Base form first. */
const IRREGULAR = `
be is are was were been am 's
become became
begin began begun
bend bent
bind bound
blow blew blown
break broke broken
bring brought
build built rebuilt rebuild rebuilding rebuilds
buy bought
catch caught
choose chose chosen
come came
cut cutting
deal dealt
do did done does doing
draw drew drawn
drill drilled
drive drove driven
dry dried drier
dig dug
fall fell fallen
feed fed
feel felt
find found
fly flew flown
freeze froze frozen
get got gotten getting
give gave given
glue glued gluing
go went gone
grind ground
grow grew grown
hang hung
have has had
hear heard
hide hid hidden
hold held
keep kept
know knew known
lay laid
lead led
leave left leaving
lend lent
let letting
light lit
lie lay lain
lose lost
make made
mean meant
meet met
pay paid
pull pulled
put putting
read reading
ride rode
ring rang rung
rise rose risen
run ran running
saw sawn
say said
see saw seen
sell sold
send sent
set setting
sew sewn
shake shook shaken
shine shone
shoot shot
show showed shown
shrink shrank shrunk
shut shutting
sink sank sunk
sit sat
sleep slept
slide slid
speak spoke spoken
spend spent
spin spun
split splitting
spread spreading
stand stood
stick stuck
strike struck
string strung
strip stripped
sweep swept
swell swollen
take took taken
teach taught
tear tore torn
tell told
think thought
throw threw thrown
try tried tries
undercoat undercoated undercoating
understand understood
wear wore worn
weave wove woven
weld welded
win won
wind wound
write wrote written
shelf shelves
knife knives
leaf leaves
half halves
centre center
sill cill
grey gray
mould mold
aluminium aluminum
fibre fiber
colour color
foot feet
tooth teeth
man men
woman women
child children
`;

const BASE = new Map<string, string>();
for (const line of IRREGULAR.trim().split('\n')) {
  const [base = '', ...forms] = line.split(' ');
  for (const form of forms) if (!BASE.has(form)) BASE.set(form, base);
}
// Nouns of the workshop that look like past forms: a saw, a lead, a wound coil, ground clearance.
for (const noun of ['saw', 'lay', 'ground', 'wound', 'lead', 'bound', 'left', 'found']) BASE.delete(noun);
BASE.set('found', 'find');

/** "Relaid" is "relay" as "laid" is "lay". */
function againOf(word: string): string | undefined {
  const rest =
    word.startsWith('re') && word.length > 4 ? BASE.get(word.slice(2).replace(/^-/, '')) : undefined;
  return rest && `re${rest}`;
}

/** No word has more letters; what does is one of nothing, and is neither stemmed nor taken apart: both cost its square. */
export const LONGEST_WORD = 60;

/** Returns the stem that a word shares with its other forms: "ordered" and "order", "rang" and "ring". */
export const stemOf: (word: string) => string = remembered(20_000, (word) => {
  const base = BASE.get(word) ?? againOf(word) ?? word;
  return base.length <= LONGEST_WORD && /^[a-z]{3,}$/.test(base) ? porter.stem(base) : base;
});
