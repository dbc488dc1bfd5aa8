/**
 * The head of a recording: WAV, 16 kHz, 16 bit, one channel, with the time of its beginning. Pure.
 * Sources: Microsoft's RIFF WAVE description; EBU Tech 3285, broadcast audio extension chunk, version 0.
 */
import { SAMPLE_RATE } from '../recogniser/sample-rate.ts';

const BYTES = 2;
const EXTENSION = 602;
const FORMAT = 16;
/** Where each chunk begins, its own head of 8 bytes included. */
const EXTENSION_AT = 12;
const FORMAT_AT = EXTENSION_AT + 8 + EXTENSION;
const DATA_AT = FORMAT_AT + 8 + FORMAT;

/** Bytes before the first sample. */
export const HEADER_BYTES = DATA_AT + 8;

/** `startedAt` is wall time without zone, `2026-05-03T16:00:00`; `samples` is how many follow. */
export function waveHeader(startedAt: string, samples: number): Uint8Array {
  const bytes = new Uint8Array(HEADER_BYTES);
  const view = new DataView(bytes.buffer);
  const text = (at: number, words: string) => bytes.set(new TextEncoder().encode(words), at);
  text(0, 'RIFF');
  text(8, 'WAVE');
  text(EXTENSION_AT, 'bext');
  view.setUint32(EXTENSION_AT + 4, EXTENSION, true);
  // Originator, date and time stand behind 256 bytes of description; the date's own separators are free.
  text(EXTENSION_AT + 8 + 256, 'hearwright');
  text(EXTENSION_AT + 8 + 320, startedAt.slice(0, 10));
  text(EXTENSION_AT + 8 + 330, startedAt.slice(11, 19));
  text(FORMAT_AT, 'fmt ');
  view.setUint32(FORMAT_AT + 4, FORMAT, true);
  view.setUint16(FORMAT_AT + 8, 1, true);
  view.setUint16(FORMAT_AT + 10, 1, true);
  view.setUint32(FORMAT_AT + 12, SAMPLE_RATE, true);
  view.setUint32(FORMAT_AT + 16, SAMPLE_RATE * BYTES, true);
  view.setUint16(FORMAT_AT + 20, BYTES, true);
  view.setUint16(FORMAT_AT + 22, BYTES * 8, true);
  text(DATA_AT, 'data');
  for (const { at, value } of lengthFields(samples)) view.setUint32(at, value, true);
  return bytes;
}

/** The two places of the header that hold the length, little-endian, with what belongs there. */
export function lengthFields(samples: number): readonly { readonly at: number; readonly value: number }[] {
  const data = samples * BYTES;
  return [
    { at: 4, value: HEADER_BYTES - 8 + data },
    { at: DATA_AT + 4, value: data },
  ];
}

/** Whether these first bytes of a file are such a header, whatever lengths it states. */
export function isOwnHeader(head: Uint8Array): boolean {
  const mark = (at: number) => new TextDecoder('latin1').decode(head.subarray(at, at + 4));
  return (
    head.length >= HEADER_BYTES &&
    mark(0) === 'RIFF' &&
    mark(8) === 'WAVE' &&
    mark(EXTENSION_AT) === 'bext' &&
    mark(FORMAT_AT) === 'fmt ' &&
    mark(DATA_AT) === 'data'
  );
}
