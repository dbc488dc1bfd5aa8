/** What a task, a deed or a snag is called in a list: its work first, with the thing in place of "it" and "one". */
import { describe, expect, test } from 'vitest';
import { readMemo } from '../../src/language/pipeline.ts';

const CONTEXT = { units: 'metric', region: 'GB', recordedAt: '2026-06-10T18:00:00+01:00' } as const;
const notesOf = (text: string) => readMemo(text, CONTEXT).notes;

describe('a task begins with its work', () => {
  test.each([
    ['I should really check the flue before winter.', 'Check the flue'],
    ['Must remember to buy more sandpaper.', 'Buy more sandpaper'],
    ["I've still got to drill the sill for the vent.", 'Drill the sill for the vent'],
    ['Need to remember to drain the boiler.', 'Drain the boiler'],
    ["Can't cut the roof hole till I have the fan in hand.", 'Cut the roof hole'],
    ['I gotta call the glazier about the rooflight.', 'Call the glazier about the rooflight'],
    ['Next job is bedding the cleats.', 'Bed the cleats'],
    ['Nothing goes down till the pipes have been tested.', 'Whatever goes down'],
    ["I won't coat the rail until it's above twelve degrees.", 'Coat the rail'],
    ["I'm not sealing the seam until the moisture's down to 12 percent.", 'Seal the seam'],
    ['We will not close the wall until the wiring has passed.', 'Close the wall'],
    ['First thing tomorrow is getting all the seats out.', 'Get all the seats out'],
    ['We need a bigger pump.', 'Get a bigger pump'],
    ["I'm taking the gearbox back tomorrow.", 'Take the gearbox back'],
  ])('"%s": %s', (said, gist) => {
    expect(notesOf(said).tasks.map((task) => task.gist)).toEqual([gist]);
  });

  test.each([
    ['The gate post needs setting in concrete.', 'The gate post needs setting in concrete'],
    ['The wiring has to be tested by Friday.', 'The wiring has to be tested by Friday'],
  ])('a thing that needs it stays at the head: "%s"', (said, gist) => {
    expect(notesOf(said).tasks.map((task) => task.gist)).toEqual([gist]);
  });
});

describe('what "it", "that" and "one" are', () => {
  test.each([
    // Of a name it is spelt out, and once named it is "the".
    ["There's a cracked joist by the door. It'll need replacing.", 'The cracked joist will need replacing'],
    ['The gate hinge has cracked, so I need a new one.', 'Get a new hinge'],
    ["The fan's noisy, it's rubbing on the duct. I'll shim it tomorrow.", 'Shim the fan'],
    // Customers and dates are no things to order or to make.
    [
      'Customer went for the green wool, six metres of it, I need to order that tonight.',
      'Order the green wool',
    ],
    [
      "Bearings are due on the eighteenth. The half nut is worn, I'll have to make a new one.",
      'Make a new nut',
    ],
    ["The oil seal at the back is leaking, I'll order one tonight.", 'Order an oil seal'],
    ["I've run out of twine so I'll have to get some.", 'Get some twine'],
    ["The copings haven't come. I'll ring them in the morning.", 'Ring them in the morning'],
  ])('"%s": %s', (said, gist) => {
    expect(notesOf(said).tasks.map((task) => task.gist)).toEqual([gist]);
  });

  test.each([
    ['Belt came this morning and I fitted it.', 'Fitted the belt'],
    ['Took the back leg apart, cleaned it up.', 'Cleaned the back leg up'],
    [
      'The kiln shelves came. Two of them four props are cemented in.',
      'Two of them four props are cemented in',
    ],
    [
      'Rang about the harness. Got the gate hung on them strap hinges.',
      'Got the gate hung on them strap hinges',
    ],
    ['The battens came and I gave them two coats.', 'Gave the battens two coats'],
  ])('in a deed: "%s": %s', (said, gist) => {
    expect(notesOf(said).done.map((deed) => deed.gist)).toContain(gist);
  });

  test('words that name the thing themselves keep their pronoun', () => {
    const { problems } = notesOf("I did the certificate. The fan's noisy, it's rubbing on the duct.");
    expect(problems.map(({ gist }) => gist)).toEqual(["The fan's noisy, it's rubbing on the duct"]);
  });
});

describe('no task, no choice, no snag', () => {
  test.each(['First fix in the kitchen today.', 'Second coat on the door by Friday.'])('"%s"', (said) => {
    expect(notesOf(said).tasks.filter(({ gist }) => /^(?:fix|coat)/i.test(gist))).toEqual([]);
  });
  test.each([
    'Picked up a driver bit at the hardware store.',
    'Picked up the butyl tape on the way.',
    'Mike dropped off the jigsaw.',
    'Found the fault in the hall, a loose neutral.',
    'I fitted a new valve so that has stopped weeping.',
  ])('"%s"', (said) => {
    expect(notesOf(said).decisions).toEqual([]);
    expect(notesOf(said).problems).toEqual([]);
  });
  test.each(['I picked the oak.', 'We went with the grey tiles.'])('"%s" is still a choice', (said) => {
    expect(notesOf(said).decisions).toHaveLength(1);
  });
  test.each(['The trim dropped off.', "The bilge pump's stopped working."])(
    '"%s" is still a snag',
    (said) => {
      expect(notesOf(said).problems).toHaveLength(1);
    },
  );
});

describe('what is waited for', () => {
  test.each([
    ['The converter has to sit for forty eight hours before I prime it.', /^Prime/, ['forty eight hours']],
    ['The screed needs to dry for three weeks before we tile it.', /^Tile|^We tile/, ['three weeks']],
    // What comes first is work of its own, and waits for nothing.
    ['I want to get the motor tested before I put it back together.', /^Get the motor tested/, []],
    ['Lovely day for it, but I need to run the wires first.', /^Run the wires/, []],
  ] as const)('"%s"', (said, gist, waitsFor) => {
    const [task] = notesOf(said).tasks;
    expect(task?.gist).toMatch(gist);
    expect(task?.waitsFor).toEqual(waitsFor);
  });
  test('a question inside the work belongs to it', () => {
    const { tasks, problems } = notesOf(
      'I need to figure out where the windows are leaking from before the lining goes in.',
    );
    expect(tasks.map(({ gist }) => gist)).toEqual(['Figure out where the windows are leaking from']);
    expect(problems).toEqual([]);
  });
});

describe('goods', () => {
  test.each([
    ['Bath and basin arrived.', ['Bath and basin']],
    ['Mike dropped off the jigsaw.', ['jigsaw']],
    ['The new spring arrived.', ['spring']],
    ['The door seal came in today.', ['door seal']],
  ])('"%s"', (said, items) => {
    expect(notesOf(said).arrivals.map(({ item, received }) => (received ? item : `${item}?`))).toEqual(items);
  });
  test.each([
    ['Bricks came too, but only six hundred, the other two hundred are coming on Friday.', 'bricks'],
    [
      "The merchant came back with a hundred and forty for the board so I've ordered it. It'll be here Thursday.",
      'board',
    ],
    ['Steel should be here by the end of the week.', 'Steel'],
  ])('expected: "%s"', (said, item) => {
    expect(
      notesOf(said)
        .arrivals.filter(({ received }) => !received)
        .map((one) => one.item),
    ).toEqual([item]);
  });
  test('water that came in is no delivery', () => {
    expect(notesOf('Rain came in over the sill.').arrivals).toEqual([]);
  });
});

describe('a snag that is taken back in the same breath', () => {
  test.each([
    "The crate was dented but it's fine.",
    "One slat is split but it'll do.",
    "The rim is scratched but it won't show.",
  ])('"%s" is none', (said) => {
    expect(notesOf(said).problems).toEqual([]);
  });
  test.each(["The door is warped but the frame's fine.", "The plank is split but it's good oak."])(
    '"%s" is one',
    (said) => {
      expect(notesOf(said).problems).toHaveLength(1);
    },
  );
});

test.each([
  ['Need to order the rope and ring Maria about the mast.', ['Order the rope', 'Ring Maria about the mast']],
  ['I have to fetch the ladder and order screws.', ['Fetch the ladder', 'Order screws']],
  ["I've to ring the yard and grovel.", ['Ring the yard and grovel']],
])('"%s" is so many jobs', (said, jobs) => {
  expect(notesOf(said).tasks.map(({ gist }) => gist)).toEqual(jobs);
});

test('a first job and what comes after it are two', () => {
  const { tasks } = notesOf("First job's rip the old ply out, then seal the roof hatch.");
  expect(tasks.map(({ gist }) => gist)).toEqual(['Rip the old ply out', 'Seal the roof hatch']);
});
