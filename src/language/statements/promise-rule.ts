/** What all rules for promises share: when a word to viewers promises nothing. */
import { type Draft, isReason, isSubordinate, phraseRule, type Scene, type StatementRule } from './draft.ts';
import type { Found, Phrase } from './phrase.ts';
import { has } from './snag.ts';
import type { Said } from './words.ts';

/** "As promised": a word that is kept and not given. */
export const KEPT = / (?:as|like)\/\w* (?:i\/\w* )?promised\//;

/** A rule for one way of promising something to viewers. */
export const forViewers = (
  name: string,
  pattern: Phrase | string,
  guard: (found: Found, said: Said, scene: Scene) => boolean | Partial<Omit<Draft, 'kind' | 'rule'>>,
): StatementRule =>
  phraseRule('promise', name, pattern, (found, said, scene) => {
    if (scene.unreal.has(said.index) || isSubordinate(said) || isReason(said)) return false;
    if (has(found.words, 'N') || KEPT.test(said.code)) return false;
    return guard(found, said, scene);
  });
