/**
 * Protocol Buffers messages field by field, without their schema (wire types 0, 1, 2 and 5): read as they lie in memory, and
 * put together. Source: the encoding as published with Protocol Buffers.
 */

/** A field as it lies in its message: with its tag, and its content alone. */
export interface Field {
  readonly number: number;
  readonly whole: Uint8Array;
  readonly content: Uint8Array;
}

/** Reads numbers from bytes. */
export class Cursor {
  at = 0;
  readonly #bytes: Uint8Array;
  constructor(bytes: Uint8Array) {
    this.#bytes = bytes;
  }

  /** A number in groups of seven bits, lowest first; undefined where the bytes end before it does. */
  varint(): number | undefined {
    let value = 0;
    for (let shift = 0; shift < 70; shift += 7) {
      const byte = this.#bytes[this.at++];
      if (byte === undefined) return undefined;
      value += (byte & 127) * 2 ** shift;
      if (byte < 128) return value;
    }
    return undefined;
  }

  /** How many bytes a value of this wire type takes; the cursor stands at its first one afterwards. */
  lengthOf(wireType: number): number | undefined {
    if (wireType === 0) return this.varint() === undefined ? undefined : 0;
    if (wireType === 1) return 8;
    if (wireType === 2) return this.varint();
    return wireType === 5 ? 4 : undefined;
  }
}

/** The fields of a message, in order, as far as it is one. Nothing is copied. */
export function* fieldsOf(bytes: Uint8Array): Generator<Field> {
  const cursor = new Cursor(bytes);
  while (cursor.at < bytes.length) {
    const begin = cursor.at;
    const tag = cursor.varint();
    const length = tag === undefined ? undefined : cursor.lengthOf(tag % 8);
    if (tag === undefined || length === undefined) return;
    const from = cursor.at;
    cursor.at += length;
    yield {
      number: Math.floor(tag / 8),
      whole: bytes.subarray(begin, cursor.at),
      content: bytes.subarray(from, cursor.at),
    };
  }
}

export const asText = ({ content }: Field): string => Buffer.from(content).toString('utf8');

/** The text in the first field of this number; empty where there is none. */
export function textIn(message: Uint8Array, number: number): string {
  for (const field of fieldsOf(message)) if (field.number === number) return asText(field);
  return '';
}

/** A field that holds a message, or the bytes of a text. */
export function fieldWith(number: number, parts: readonly Uint8Array[]): Field {
  const length = parts.reduce((bytes, part) => bytes + part.length, 0);
  const head = [...varintBytes(number * 8 + 2), ...varintBytes(length)];
  const whole = Buffer.concat([Uint8Array.from(head), ...parts]);
  return { number, whole, content: whole.subarray(head.length) };
}

export const textField = (number: number, text: string): Uint8Array =>
  fieldWith(number, [Buffer.from(text)]).whole;

function varintBytes(value: number): readonly number[] {
  const bytes: number[] = [];
  let left = value;
  for (; left > 127; left = Math.floor(left / 128)) bytes.push((left % 128) + 128);
  return [...bytes, left];
}
