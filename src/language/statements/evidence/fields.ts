/** What a draft made by evidence alone knows beside its words: goods, gates, reasons. */
import { grammarOf } from '../clause-grammar.ts';
import { type Draft, neighbour, type Scene } from '../draft.ts';
import { supportOf } from '../support.ts';
import { dayAfter, dayIn } from '../tasks.ts';
import type { Said, Word } from '../words.ts';
import type { Kind } from './kinds.ts';

type Fields = Partial<Omit<Draft, 'kind' | 'rule'>>;

export function fieldsOf(kind: Kind, said: Said, scene: Scene): Fields {
  switch (kind) {
    case 'arrival':
      return goods(said, scene);
    case 'task':
      return gate(said, scene);
    case 'decision': {
      const { reason, turnedDown } = supportOf(said, scene);
      return { ...(reason ? { reason } : {}), ...(turnedDown ? { turnedDown } : {}) };
    }
    default:
      return {};
  }
}

/** Words of goods that are still to come. */
const TO_COME =
  / (?:order|ordered|coming|due|expect|expecting|expected|promised|will|'ll|should|on\/\S* the\/\S* way|waiting|until|till|weeks?|months?|fortnight|lead|going|gonna|supposed|soon|ship|ships|shipping)\//;

function goods(said: Said, scene: Scene): Fields {
  const ahead =
    TO_COME.test(said.code) || dayIn(said, scene) !== undefined || dayAfter(said, scene) !== undefined;
  const words = thingIn(said);
  const first = words[0];
  const last = words.at(-1);
  return {
    received: !ahead,
    ...(first && last ? { item: scene.text.slice(first.start, last.end) } : {}),
  };
}

/** The subject where that is a thing, else the first noun phrase after the verb. */
function thingIn(said: Said): readonly Word[] {
  const grammar = grammarOf(said);
  if (!grammar) return [];
  if (grammar.doer === 'thing' && grammar.subject.length <= 6) return grammar.subject;
  const { rest } = grammar;
  const from = rest.findIndex(({ classes }) => !/[ALNOCV]/.test(classes));
  if (from < 0) return [];
  let to = from;
  while (to < rest.length && to - from < 6 && !/[SHMRLDO]/.test((rest[to] as Word).classes.replace('T', '')))
    to++;
  return rest.slice(from, to);
}

/** "..., once the paint is dry": what the work waits for is told in the clause beside it. */
function gate(said: Said, scene: Scene): Fields {
  for (const step of [1, -1]) {
    const beside = neighbour(scene, said, step);
    if (!beside || beside.words.length < 2) continue;
    const holds = step === 1 ? /\b(?:until|till|once|soon as)\b/ : /\b(?:once|soon as)\b/;
    if (!holds.test(beside.opener)) continue;
    return {
      waitsFor: [scene.text.slice(beside.start, beside.end)],
      aside: [beside.index],
    };
  }
  return {};
}
