// Speaks stories and hears them, into the cache: npx tsx scripts/hearing/hear-stories.ts [--corpus FOLDER] [--voices WORDS]
// [--aside] [--noise NOISE:DECIBELS] [--first N] [--memos N] [--turns] [--folder CACHE]
import { HearingCache } from './heard-talk.ts';
import type { Noise } from './noise.ts';
import { storiesToSpeak } from './texts.ts';
import { VOICES, type Voice } from './voices.ts';

const after = (name: string) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const { learned, aside } = storiesToSpeak(after('--corpus'));
const stories = (process.argv.includes('--aside') ? aside : learned).slice(0, Number(after('--first') ?? 99));
const [noise, decibels] = after('--noise')?.split(':') ?? [];
const level = noise ? { noise: noise as Noise, decibels: Number(decibels) } : undefined;
const wanted = after('--voices')?.split(',');
const cache = new HearingCache(after('--folder'));
const voices = VOICES.filter(({ name }) => !wanted || wanted.includes(name));
const most = Number(after('--memos') ?? 99);

/** What is heard, in order: voice by voice, or each memo by one voice in turn, first a memo of every story. */
function* inOrder(): Generator<readonly [Voice, string]> {
  if (!process.argv.includes('--turns')) {
    for (const voice of voices)
      for (const { memos } of stories) for (const { text } of memos.slice(0, most)) yield [voice, text];
    return;
  }
  for (let at = 0; at < Math.min(most, 12); at++)
    for (const [number, { memos }] of stories.entries()) {
      const [memo, voice] = [memos[(at + number) % memos.length], voices[(at + number) % voices.length]];
      if (memo && voice && at < memos.length) yield [voice, memo.text];
    }
}

let sound = 0;
let hearing = 0;
let count = 0;
for (const [voice, text] of inOrder()) {
  const { soundSeconds, hearingSeconds } = await cache.hear(text, voice, level);
  sound += soundSeconds;
  hearing += hearingSeconds;
  if (++count % 10 === 0)
    console.log(
      `${count} memos, ${sound.toFixed(0)} s heard in ${hearing.toFixed(0)} s, last by ${voice.name}`,
    );
}
console.log(`${count} memos: ${sound.toFixed(0)} s heard in ${hearing.toFixed(0)} s`);
