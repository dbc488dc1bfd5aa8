/** Reads story files, and says of a file that is none what is wrong with it and where. */
import { readFileSync } from 'node:fs';
import { z } from 'zod';
import { ATTRIBUTES, BOUNDS, DIMENSIONS } from '../../src/language/notes.ts';
import { readMarkedTalk } from './marked-talk.ts';
import type { Story } from './story.ts';

const said = z.looseObject({ quote: z.string(), gist: z.string() });
const quantity = z.object({ value: z.number(), unit: z.string() });
const figure = z.looseObject({
  quote: z.string(),
  item: z.string(),
  attribute: z.enum(ATTRIBUTES),
  bound: z.enum(BOUNDS),
  value: z.number(),
  unit: z.string(),
  dimension: z.enum(DIMENSIONS),
  high: z.number().nullish(),
  plusMinus: z.number().nullish(),
  plusMinusUnit: z.string().nullish(),
});
const conflict = z.looseObject({
  item: z.string(),
  attribute: z.enum(ATTRIBUTES),
  was: quantity,
  now: quantity,
  kind: z.string(),
});
const memo = z.looseObject({
  id: z.string(),
  recordedAt: z.string(),
  text: z.string(),
  figures: z.array(figure).optional(),
  decisions: z.array(said).optional(),
  tasks: z.array(said.extend({ id: z.string(), due: z.string().nullish() })).optional(),
  done: z.array(said.extend({ closes: z.string().nullish() })).optional(),
  arrivals: z.array(z.looseObject({ quote: z.string(), item: z.string() })).optional(),
  problems: z.array(said).optional(),
  promises: z.array(said).optional(),
  conflicts: z.array(conflict).optional(),
});
const storyShape = z.looseObject({
  story: z.string(),
  units: z.enum(['metric', 'us', 'mixed']),
  region: z.string().optional(),
  memos: z.array(memo),
  openAtEnd: z.array(z.string()).optional(),
});

/** Throws an Error that names the file and each fault by its place: "memos.2.figures.0.bound: ...". */
export function readStoryFile(file: string): Story {
  let json: unknown;
  try {
    const source = readFileSync(file, 'utf8');
    json = file.endsWith('.talk') ? readMarkedTalk(source) : JSON.parse(source);
  } catch (error) {
    throw new Error(`${file} cannot be read as a story: ${(error as Error).message}`);
  }
  const { success, error } = storyShape.safeParse(json);
  if (success) return json as Story;
  const faults = error.issues.map(({ path, message }) => `  ${path.join('.') || 'the file'}: ${message}`);
  throw new Error(`${file} is no story:\n${faults.join('\n')}`);
}
