/** A note in a word for its kind and what it says: the rows of what was heard, and what is heard just now. */
import { subjectOf } from './finding-text.ts';
import { recordWords } from './memo-list.ts';
import { type KeptNote, otherReadings } from './note-doubts.ts';
import { boundedText } from './quantity-text.ts';

/** `['to do', 'Order more screws']`. The words are as they were said: they are cleaned where they leave. */
export function wordsOfNote(note: KeptNote): readonly [kind: string, what: string] {
  switch (note.kind) {
    case 'figure':
      return ['figure', [subjectOf(note), boundedText(note), otherReadings(note)].filter(Boolean).join(' ')];
    case 'decision':
      return ['decided', note.gist];
    case 'task':
      return ['to do', note.due ? `${note.gist}, by ${note.due}` : note.gist];
    case 'done':
      return ['done', note.gist];
    case 'arrival':
      return [
        note.received ? 'here' : 'coming',
        note.expected ? `${note.item}, ${note.expected}` : note.item,
      ];
    case 'problem':
      return ['snag', note.gist];
    case 'promise':
      return ['promise', note.gist];
    case 'correction':
      return ['put right', note.gist];
    default:
      return ['on record', recordWords(note)];
  }
}
