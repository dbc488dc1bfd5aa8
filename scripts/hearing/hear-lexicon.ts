// Speaks the words of the trade and hears them, into the cache:
// node --expose-gc --import tsx scripts/hearing/hear-lexicon.ts VOICE:one|many ...
import { HearingCache } from './heard-talk.ts';
import { lexiconTalks } from './lexicon-talk.ts';
import { VOICES } from './voices.ts';

const cache = new HearingCache();
for (const asked of process.argv.slice(2)) {
  const [name, form] = asked.split(':');
  const voice = VOICES.find((one) => one.name === name);
  if (!voice || (form !== 'one' && form !== 'many')) throw new Error(`no such voice or form: ${asked}`);
  for (const talk of lexiconTalks(form)) await cache.hear(talk, voice);
}
