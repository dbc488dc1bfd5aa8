// Speaks stories and hears them, into the cache: npx tsx scripts/hearing/hear-stories.ts [--corpus FOLDER] [--voices WORDS]
// [--aside] [--noise NOISE:DECIBELS] [--first N] [--memos N]
import { HearingCache } from './heard-talk.ts';
import type { Noise } from './noise.ts';
import { storiesToSpeak } from './texts.ts';
import { VOICES } from './voices.ts';

const after = (name: string) => {
  const at = process.argv.indexOf(name);
  return at < 0 ? undefined : process.argv[at + 1];
};
const { learned, aside } = storiesToSpeak(after('--corpus'));
const stories = (process.argv.includes('--aside') ? aside : learned).slice(0, Number(after('--first') ?? 99));
const [noise, decibels] = after('--noise')?.split(':') ?? [];
const level = noise ? { noise: noise as Noise, decibels: Number(decibels) } : undefined;
const wanted = after('--voices')?.split(',');
const cache = new HearingCache();
for (const voice of VOICES.filter(({ name }) => !wanted || wanted.includes(name))) {
  let sound = 0;
  let hearing = 0;
  for (const story of stories) {
    for (const memo of story.memos.slice(0, Number(after('--memos') ?? 99))) {
      const { soundSeconds, hearingSeconds } = await cache.hear(memo.text, voice, level);
      sound += soundSeconds;
      hearing += hearingSeconds;
    }
  }
  console.log(`${voice.name}: ${sound.toFixed(0)} s heard in ${hearing.toFixed(0)} s`);
}
