/** Snags that are found, run out of, or done by mischance: "found the stud's gone to powder", "ran out of staples", "broke three". */
import { neighbour, type StatementRule } from './draft.ts';
import type { Found } from './phrase.ts';
import { has, problem, subjectIsThing } from './snag.ts';
import type { Said } from './words.ts';

const GONE_TO =
  '(?: powder | dust | mush | pulp | nothing | rust | lace | cheese | porridge | crumbs | bits | pieces | mud )';
const STATE = `(?: <faulty> | gone | mush | swiss cheese | rotten | scrap | shot | soaking | ${GONE_TO} | full of | missing )`;

/** "The cable's run out to the shed", "the rope is run out": laid along, and not used up. */
const RUNS_ALONG = /^(?:cables?|hoses?|ropes?|lines?|chains?|tapes?|leads?|wires?|fences?|rails?)$/;
/** Of these nobody runs out but by the clock, and "out of true" is a state. */
const NO_GOODS =
  /^(?:time|day|daylight|light|steam|puff|road|true|patience|energy|ideas|excuses|words|breath|hours|wind|weekend|sight|reach|here|it|them|work|shape)$/;

/** Said in words that mean nothing else, and so not weighed. */
const plainly = (name: string, pattern: string, guard: Guard = () => true): StatementRule =>
  problem(name, pattern, (found, said) => guard(found, said) && { plain: true });
type Guard = (found: Found, said: Said) => boolean;

/** Asked before the plain faults, which are weighed: of so many things it is told in so many words. */
export const COUNTED_TROUBLE: readonly StatementRule[] = [
  plainly(
    '<number> of <things> are <broken>',
    "^<lead>* (?: about | at least | only | and | <adverb> )* <number> (?: of (?: the | them | those | my | these )* )? (?<subject> <plain>{0,3}? ) (?: is | are | 're | was | were | came | arrived | turned up ) <adverb>* (?: broken | cracked | smashed | missing | rotten | damaged | chipped | dented | warped | twisted | perished | seized | snapped | shattered | rotted | delaminated | waterlogged | mouldy | scrap | useless | duds | dud | the wrong <any>{1,4} ) (?<rest> <any>{0,5} ) $",
    (found) => !has(found.words, 'N') && !has(found.part('subject'), 'J') && !has(found.part('subject'), 'U'),
  ),
];

export const TROUBLE_FOUND_RULES: readonly StatementRule[] = [
  problem(
    'hit a snag',
    "^<lead>* (?: i | we )? (?: have | 've )? <adverb>* (?: hit | struck | ran into | run into | came up against | come up against ) (?: a | another | one | my | our | the | first )+ (?: bit of a | big | small | little | slight | minor | real | proper | <adverb> )* (?: snag | problem | hitch | issue | difficulty | setback ) (?<rest> <any>* )",
    (_, said, scene) => {
      // "..., the rib's in the way": what it is is told in the words after.
      const next = neighbour(scene, said, 1);
      const tells = next !== undefined && next.sentence === said.sentence;
      return { plain: true, ...(tells ? { to: next.index, end: next.end } : {}) };
    },
  ),
  plainly(
    '<thing> is <cut> wrong',
    "^<lead>* (?<subject> <plain>{1,7}? ) (?: is | 's | are | 're | was | were | has been | 's been | have been ) <adverb>* (?: <done> | checked | cupped | shaken ) (?: bad | badly | wrong | crooked | upside down | back to front | the wrong way <any>{0,2} ) (?<rest> <any>{0,4} ) $",
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  plainly(
    '<thing> has a <broken> <part>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: has | have | 's | 've | had )? (?: got )? (?: a | an | some | two | three | one | four ) <adverb>* (?: busted | broken | cracked | bent | chipped | damaged | torn | dented | crushed | blown | seized | perished | rotten | missing | worn | stripped | dead | flat | tight | sticky | rough | dud ) (?: <plain>{0,1}? ) (?: corner | corners | edge | edges | end | ends | tooth | teeth | spot | spots | thread | threads | blade | blades | pane | panes | lug | lugs | seal | seals | bearing | bearings | board | boards | hinge | hinges | handle | spring | springs | spoke | spokes | slat | slats | hose | valve | valves | tile | tiles | plank | planks | spindle | cell | cells | joint | joints | tab | tabs | fin | fins | flange | leg | legs | rung | rungs | rib | ribs | bracket | brackets | latch | catch | clip | clips | knob | stud | studs | slate | slates | stave | staves | belt | shaft | lug | wire | switch | terminal | terminals | casing | housing ) (?<rest> <any>{0,7} ) $",
    (found) =>
      subjectIsThing(found) &&
      !has(found.words, 'N') &&
      !has(found.words, 'I') &&
      // "Tom has a broken leg": of a body.
      (!/^legs?$/.test(found.words.at(-1)?.lower ?? '') || has(found.part('subject').slice(0, 1), 'T')),
  ),
  plainly(
    'I am not happy with <thing>',
    "^<lead>* (?: i | we ) (?: 'm | am | 're | are ) not <adverb>* (?: happy | impressed | satisfied | thrilled | pleased ) (?: with | about ) (?<subject> (?: the | this | that | my | those | these | how ) <any>+ )",
    (found) => !has(found.part('subject'), 'J') && !has(found.part('subject'), 'E'),
  ),
  // As it is said in Ireland: it has just happened.
  plainly(
    'I am after <breaking> <thing>',
    "^<lead>* (?: i | we | he | she | they ) (?: 'm | am | 're | are | 's | is ) after (?: breaking | snapping | cracking | dropping | splitting | losing | bending | smashing | shearing | scratching | denting | chipping | tearing | ripping | burning | spilling | cutting through | drilling through | getting | making a (?: bags | hames | mess ) of ) (?<rest> <any>+ )",
    (_, said) =>
      !/ after\/\w* getting\//.test(said.code) ||
      / (?:stuck|jammed|soaked|caught|wrong|bent)\//.test(said.code),
  ),
  plainly(
    'something is wrong with <thing>',
    "(?: something ) (?: 's | is | was )? <adverb>* (?: wrong | amiss | up | off | not <adverb>* right ) (?: with | in | about ) (?<rest> <any>+ )",
    (_, said) => !/ (?:my|your|his|her|me|you|him)\//.test(said.code),
  ),
  plainly(
    'found <thing> <faulty>',
    `^<lead>* (?: i | we )? (?: 've | have )? <adverb>* (?: found | discovered | noticed | see | saw ) (?: that | out )? (?<subject> <plain>{1,7}? ) (?: 's | is | are | 're | was | were | has | have | had | been )+ <adverb>* ${STATE} (?<rest> <any>* )`,
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  plainly(
    'found a <fault>',
    "^<lead>* (?: i | we )? (?: 've | have )? <adverb>* (?: found | discovered | uncovered | hit ) (?: a | an | another | some | two | more | bit of | patch of )+ (?: soft | rotten | bad | wet | damp | hidden | nasty | old | hairline | little | small | big | <adverb> )* (?: rot | rust | damp | woodworm | corrosion | mould | crack | cracks | leak | soft spot | spot of rot | soft patch | wet patch | damp patch | rotten patch | patch of rot | pinhole | pinholes | split | shake | blister | blisters | delamination | bodge | void ) (?<rest> <any>* )$",
    (found) => !has(found.words, 'N'),
  ),
  plainly(
    'there is <thing> in the way',
    "^<lead>* (?: there (?: 's | is | are ) | (?: i | we )? found ) (?: a | an | another | the | some | two | one of the )+ (?<thing> <plain>{1,5}? ) <adverb>* (?: in the way | (?: right | bang | just | exactly | slap ) where ) (?<rest> <any>* )",
    (found) => !has(found.words, 'N'),
  ),
  plainly(
    '<goods> ran out',
    "^<lead>* (?<goods> <plain>{1,4}? ) (?: 's | is | has | have | 've | are )? <adverb>* (?: ran | run | running ) out (?: <day> | again | already | halfway | half way | too )* $",
    (found) => {
      const last = found.part('goods').at(-1)?.lower ?? '';
      return (
        !NO_GOODS.test(last) &&
        !RUNS_ALONG.test(last) &&
        !/[OIJ]/.test(found.part('goods').at(-1)?.classes ?? 'O')
      );
    },
  ),
  plainly(
    'ran out of <goods>',
    "^<lead>* (?: (?: i | we ) (?: 've | have | 'm | are | 're )? )? <adverb>* (?: (?: ran | run | running ) <adverb>* (?: out | short ) of | (?: clean | all | right ) out of ) (?<goods> <plain>{1,5} ) (?<rest> <any>* )",
    (found) => {
      const last =
        found
          .part('goods')
          .filter(({ classes }) => !/[RACD]/.test(classes))
          .at(-1)?.lower ?? '';
      const first = found.part('goods').find(({ classes }) => !/[T]/.test(classes))?.lower ?? '';
      return !NO_GOODS.test(first) && !NO_GOODS.test(last) && !has(found.words, 'M');
    },
  ),
  plainly(
    'broke <so many>',
    "^<lead>* (?: i | we )? (?: 've | have )? (?: broke | broken | cracked | snapped | split | smashed | chipped | ruined | spoiled | spoilt ) (?: <number> | a couple | a few | one | both | another | another one )+ (?: of (?: them | the <plain>{1,3} ) | on me | doing it | already | so far )* $",
  ),
  plainly(
    'blew <thing>',
    "^<lead>* (?: i | we )? (?: 've | have )? (?: blew | blown | burst | bust | busted | sheared | snapped | fried | smashed | chipped ) (?: a | an | another | the | my | two | both | one of the )+ (?<thing> <plain>{1,4} ) (?<rest> <any>* )",
    (_, said) =>
      !/ (?:lines?|photos?|pictures?|dust|air|candle|off|out|down|cover|pattern|together|clean)\//.test(
        said.code,
      ),
  ),
  problem(
    '<thing> has <shape> in it',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: 's | has | have | 've ) (?: got )? <adverb>* (?: a | an | some | two | bit of a )+ (?: <adverb> | <plain> ){0,2} (?: shake | shakes | bow | twist | cup | kink | hump | belly | gouge | dent | bulge | dip | ding | bend | split | crack | kick | flat spot | crease | ridge | wave ) (?: in | along | across ) (?: it | them | that | the | one )",
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  plainly(
    '<thing> is out by <much>',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: (?: 's | is | are | was ) <adverb>* out by | (?: bellies | bulges | bows | leans | sags | hogs | dips ) (?: out | in | over | down )? by ) (?<much> <any>{1,5} )",
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  problem(
    '<thing> works badly',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: (?: 's | is | are ) <adverb>* <doing> | <does> | draws | runs | fits | shuts ) (?: <adverb> )* (?: badly | poorly | something awful | something terrible | terribly )",
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  plainly(
    '<thing> has gone at <place>',
    `^<lead>* (?<subject> <plain>{1,8}? ) (?: 's | has | have | 've ) <adverb>* gone <adverb>* (?: at | along | underneath | where | to ${GONE_TO} ) (?<rest> <any>* )`,
    (found) => subjectIsThing(found) && !has(found.words, 'N'),
  ),
  plainly(
    '<thing> will not last',
    "^<lead>* (?<subject> <plain>{1,6}? ) (?: (?: will | 'll ) not (?: last | survive ) | (?: 's | is | are ) not (?: gonna | going to ) (?: last | hold | survive | do ) ) (?<rest> <any>{0,4} ) $",
    (found) => subjectIsThing(found),
  ),
];
