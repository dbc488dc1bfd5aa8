/** Raw 32-bit floats from a byte stream whose chunks break anywhere. */

const BYTES = Float32Array.BYTES_PER_ELEMENT;

export async function* floatsFrom(input: AsyncIterable<Buffer>): AsyncGenerator<Float32Array> {
  let rest: Uint8Array = new Uint8Array();
  for await (const bytes of input) {
    const all = rest.length > 0 ? Buffer.concat([rest, bytes]) : bytes;
    const whole = all.length - (all.length % BYTES);
    // Copied, because floats must begin at a multiple of four bytes.
    if (whole > 0) yield new Float32Array(Uint8Array.from(all.subarray(0, whole)).buffer);
    rest = all.subarray(whole);
  }
}
