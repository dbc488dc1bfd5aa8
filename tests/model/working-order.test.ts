import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type Step, workingOrder } from '../../src/model/working-order.ts';

const step = (id: string, needs: readonly string[] = [], more: Partial<Step> = {}): Step => ({
  id,
  needs,
  waits: needs.length > 0,
  ...more,
});

/** Random steps; needs and hand order may point anywhere, also at themselves and at nothing. */
const steps = fc.integer({ min: 0, max: 14 }).chain((size) => {
  const id = fc.integer({ min: 0, max: size + 1 }).map((n) => `t${n}`);
  const one = fc.record({
    needs: fc.array(id, { maxLength: 3 }),
    ahead: fc.array(id, { maxLength: 2 }),
    due: fc.option(fc.integer({ min: 10, max: 28 }), { nil: undefined }),
  });
  return fc.array(one, { minLength: size, maxLength: size }).map((list) =>
    list.map(
      ({ needs, ahead, due }, index): Step => ({
        ...step(`t${index}`, needs, { ahead }),
        ...(due === undefined ? {} : { due: `2026-05-${due}` }),
      }),
    ),
  );
});

/** Everything that a step needs, near and far. */
function allNeeds(list: readonly Step[], id: string): ReadonlySet<string> {
  const byId = new Map(list.map((one) => [one.id, one]));
  const seen = new Set<string>();
  const left = [id];
  for (let at = left.pop(); at !== undefined; at = left.pop()) {
    for (const need of byId.get(at)?.needs ?? []) {
      if (need === at || !byId.has(need) || seen.has(need)) continue;
      seen.add(need);
      left.push(need);
    }
  }
  return seen;
}

test('every step comes once, and after all that it needs unless they need each other', () => {
  fc.assert(
    fc.property(steps, (list) => {
      const { order } = workingOrder(list);
      expect([...order].sort()).toEqual(list.map(({ id }) => id).sort());
      const place = new Map(order.map((id, index) => [id, index]));
      for (const { id } of list) {
        for (const need of allNeeds(list, id)) {
          if (allNeeds(list, need).has(id)) continue;
          expect(place.get(need)).toBeLessThan(place.get(id) as number);
        }
      }
    }),
  );
});

test('each knot of steps that need each other gives one circle, and nothing else does', () => {
  fc.assert(
    fc.property(steps, (list) => {
      const { cycles } = workingOrder(list);
      const knotted = new Set(list.map(({ id }) => id).filter((id) => allNeeds(list, id).has(id)));
      const seen = cycles.flat();
      expect(new Set(seen).size).toBe(seen.length);
      for (const path of cycles) {
        path.forEach((id, index) => {
          const next = path[(index + 1) % path.length] as string;
          expect(list.find((one) => one.id === id)?.needs).toContain(next);
        });
      }
      const covered = [...knotted].filter((id) =>
        cycles.some(
          ([first = '']) => id === first || (allNeeds(list, id).has(first) && allNeeds(list, first).has(id)),
        ),
      );
      expect(covered.length).toBe(knotted.size);
    }),
  );
});

test('the order of speech decides nothing when the steps say enough, and is kept when they do not', () => {
  fc.assert(
    fc.property(steps, (list) => {
      expect(workingOrder(list)).toEqual(workingOrder(list.map((one) => ({ ...one }))));
    }),
  );
  const plain = ['c', 'a', 'b'].map((id) => step(id));
  expect(workingOrder(plain).order).toEqual(['c', 'a', 'b']);
});

test('an earlier date first, also that of what needs it; then what unblocks most; ready before waiting', () => {
  const list = [
    step('plane the door'),
    step('oil the sill'),
    step('cut the joists'),
    step('lay the floor', ['cut the joists'], { due: '2026-05-09' }),
    step('fit the skirting', ['lay the floor']),
    step('dig the drain', [], { due: '2026-05-20' }),
    step('pour the slab', ['dig the drain']),
    step('order glass', [], { due: '2026-05-12' }),
    step('bolt the sill', ['oil the sill']),
  ];
  const { order, dueBy, unblocks } = workingOrder(list);
  expect(order).toEqual([
    'cut the joists',
    'order glass',
    'dig the drain',
    'oil the sill',
    'plane the door',
    'lay the floor',
    'fit the skirting',
    'pour the slab',
    'bolt the sill',
  ]);
  expect(dueBy.get('cut the joists')).toEqual({ due: '2026-05-09', of: 'lay the floor' });
  expect(unblocks.get('cut the joists')).toEqual(['lay the floor', 'fit the skirting']);
});

test('a person`s order holds, unless what must come first speaks against it', () => {
  const list = [step('a'), step('b'), step('c', ['b'])];
  const placed = (id: string, ahead: string) =>
    workingOrder(list.map((one) => (one.id === id ? { ...one, ahead: [ahead] } : one))).order;
  expect(placed('b', 'a')).toEqual(['b', 'a', 'c']);
  expect(placed('c', 'b')).toEqual(['b', 'a', 'c']);
  expect(placed('c', 'a')).toEqual(['b', 'c', 'a']);
});

test('two thousand steps in a row and in a ring are ordered without a loop or a full stack', () => {
  const row = Array.from({ length: 2000 }, (_, n) => step(`t${n}`, n === 0 ? [] : [`t${n - 1}`]));
  expect(workingOrder(row).order.at(-1)).toBe('t1999');
  const ring = row.map((one, n) => (n === 0 ? step('t0', ['t1999']) : one));
  expect(workingOrder(ring).cycles.map((path) => path.length)).toEqual([2000]);
});
