import { describe, expect, test } from 'vitest';
import { InHand } from '../../../src/speech/recogniser/in-hand.ts';

/** A job that ends when it is told to. */
function job<T>() {
  let end: (value: T) => void = () => {};
  let fail: (error: Error) => void = () => {};
  const result = new Promise<T>((resolve, reject) => {
    end = resolve;
    fail = reject;
  });
  return { work: () => result, end, fail };
}
const soon = () => new Promise((resolve) => setImmediate(resolve));

describe('work in hand', () => {
  test('what is done first waits for what was begun first', async () => {
    const hand = new InHand<string>();
    const [slow, quick] = [job<string>(), job<string>()];
    hand.start(100, slow.work);
    hand.start(900, quick.work);
    quick.end('second');
    await soon();
    expect([hand.count, hand.from, hand.isNextDone]).toEqual([2, 100, false]);
    slow.end('first');
    await soon();
    expect(hand.isNextDone).toBe(true);
    expect(await hand.next()).toBe('first');
    expect([hand.count, hand.from, hand.isNextDone]).toEqual([1, 900, true]);
    expect(await hand.next()).toBe('second');
    expect([hand.count, hand.from, hand.isNextDone]).toEqual([0, undefined, false]);
  });

  test('a failure is told to whoever takes it, and leaves the others', async () => {
    const hand = new InHand<string>();
    const [bad, good] = [job<string>(), job<string>()];
    hand.start(0, bad.work);
    hand.start(1, good.work);
    bad.fail(new Error('no such word'));
    good.end('well');
    await soon();
    expect(hand.isNextDone).toBe(true);
    await expect(hand.next()).rejects.toThrow('no such word');
    expect(await hand.next()).toBe('well');
  });

  test('nothing can be taken where nothing was begun', async () => {
    await expect(new InHand<string>().next()).rejects.toThrow('nothing is in hand');
  });
});
