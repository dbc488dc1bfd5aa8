// Word, number and note errors by voice and noise, before and after repair:
// npm run bench:speech -- --words [--corpus FOLDER] [--stories N] [--memos N] [--heard]
// --heard takes only what was heard before (hear-stories.ts) and hears nothing itself.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Story } from '../../tests/kit/story.ts';
import { type HeardTalk, HearingCache, hearSound, textOf } from './heard-talk.ts';
import { HearingMeasure } from './measure.ts';
import { makeNoise, NOISES, type NoiseLevel } from './noise.ts';
import { storiesToSpeak } from './texts.ts';
import { VOICES, type Voice, whyNoVoice } from './voices.ts';

/** The two voices that the goals are set for; noise is put over these. */
const GOAL_VOICES = ['flite rms', 'festival slt-hts'];
const DECIBELS = [20, 10, 5];

export interface WordsAsked {
  readonly corpus?: string;
  readonly stories: number;
  readonly memos: number;
  /** Whether to take only what was heard before. */
  readonly heardOnly: boolean;
}

export async function measureWords({ corpus, stories, memos, heardOnly }: WordsAsked): Promise<void> {
  const cache = new HearingCache();
  const all = storiesToSpeak(corpus);
  const heardOf = async (story: Story, voice: Voice, noise?: NoiseLevel) => {
    const texts = new Map<string, HeardTalk>();
    for (const { text } of story.memos.slice(0, memos)) {
      const heard = heardOnly ? cache.find(text, voice.name, noise) : await cache.hear(text, voice, noise);
      if (heard) texts.set(text, heard);
    }
    return texts;
  };
  const measure = async (label: string, set: readonly Story[], voice: Voice, noise?: NoiseLevel) => {
    const measured = new HearingMeasure();
    for (const story of set.slice(0, stories)) {
      const texts = await heardOf(story, voice, noise);
      measured.add(story, (text) => texts.get(text));
    }
    const line = measured.line();
    if (line) console.log(`${label}: ${line}`);
  };
  for (const voice of VOICES) {
    const why = whyNoVoice(voice);
    if (why) {
      console.log(`${voice.name}: skipped, ${why}`);
      continue;
    }
    const name = `${voice.name} (${voice.accent}, ${voice.learned ? 'learned from' : 'kept aside'})`;
    await measure(`${name}, stories kept aside`, all.aside, voice);
    if (voice.learned) await measure(`${name}, stories learned from`, all.learned, voice);
    if (!GOAL_VOICES.includes(voice.name)) continue;
    for (const noise of NOISES)
      for (const decibels of DECIBELS)
        await measure(`${name}, ${noise} noise ${decibels} dB below, stories kept aside`, all.aside, voice, {
          noise,
          decibels,
        });
  }
  await measureReaders(cache, heardOnly);
  if (!heardOnly) await measureNoiseAlone();
}

/** People: LibriVox readers and read playing cards, of Debian's pocketsphinx-testdata. */
async function measureReaders(cache: HearingCache, heardOnly: boolean): Promise<void> {
  const data = '/usr/share/pocketsphinx/test/data';
  if (!existsSync(data)) return console.log('people: skipped, no pocketsphinx-testdata');
  if (heardOnly) return;
  for (const [folder, list] of [
    ['librivox', 'transcription'],
    ['cards', 'cards.transcription'],
  ] as const) {
    const lines = readFileSync(join(data, folder, list), 'utf8').split('\n');
    const measured = new HearingMeasure();
    for (const clip of readdirSync(join(data, folder)).filter((name) => name.endsWith('.wav'))) {
      const line = lines.find((one) => one.includes(`(${clip.slice(0, -4)})`));
      if (!line) continue;
      const heard = textOf(await cache.hearFile(join(data, folder, clip)));
      measured.addText(line.replace(/<\/?s>|\(.*\)/g, ''), heard);
    }
    console.log(`people, ${folder}: ${measured.line()}`);
  }
}

async function measureNoiseAlone(): Promise<void> {
  for (const noise of NOISES) {
    const sound = makeNoise(noise, 60 * 16_000).map((sample) => sample * 0.2);
    const { utterances } = await hearSound(sound);
    console.log(`${noise} noise alone, one minute: ${utterances.length} utterances`);
  }
}
