/**
 * The decoder's file holds two graphs behind one switch: one for the first step, which works out keys and values of what
 * was heard, and one for all later steps. Behind the switch each step would carry the keys of the sound through, some
 * nine megabytes; here they are parted, and each keeps only what leads to the results that are wanted of it.
 * Source: ONNX's `onnx.proto` (ModelProto 7 graph; GraphProto 1 node, 5 initializer, 11 input, 12 output; NodeProto
 * 1 input, 2 output, 4 op_type, 5 attribute; AttributeProto 1 name, 6 g; TensorProto 8 name; ValueInfoProto 1 name).
 */
import { asText, type Field, fieldsOf, fieldWith, textField, textIn } from '../../protobuf.ts';

const GRAPH = 7;
const NODE = 1;
const INITIALIZER = 5;
const INPUT = 11;
const OUTPUT = 12;

/** The two graphs, each as a model of its own. */
export interface SplitDecoder {
  /** Keys and values of what was heard, from `encoder_hidden_states`. */
  readonly keys: Uint8Array;
  /** One step or several: scores, keys and values of what was said, from those before and those of what was heard. */
  readonly steps: Uint8Array;
  /** What the first gives to the second, by the name it has in each. */
  readonly heard: readonly { readonly given: string; readonly taken: string }[];
}

const HEARD = 'encoder_hidden_states';

/** Parts the decoder's file. Throws where it has no such switch. */
export function splitDecoder(file: Uint8Array): SplitDecoder {
  const model = [...fieldsOf(file)];
  const graph = [...fieldsOf(model.find(({ number }) => number === GRAPH)?.content ?? new Uint8Array())];
  const ofHeard = (name: string) => name.includes('.encoder.');
  const [first, later] = [branchIn(graph, 'else_branch').map(batchOfHeard), branchIn(graph, 'then_branch')];
  const turned = later.filter(turnsKeys);
  const results = turned.map((node) => textIn(node.content, 2));
  const values = first.filter((field) => field.number === OUTPUT).map((field) => textIn(field.content, 1));
  const unturned = values.filter((name) => ofHeard(name) && name.endsWith('.value'));
  const before = [...first, ...turned.map(ofPresent), ...results.map((name) => floats(OUTPUT, name))];
  const after = [...graph, ...results.map((name) => floats(INPUT, name))];
  return {
    keys: modelOf(model, graph, before, (name) => unturned.includes(name) || results.includes(name)),
    steps: modelOf(
      model,
      after,
      later.filter((field) => !turned.includes(field)),
      (name) => !ofHeard(name),
    ),
    heard: [
      ...results.map((name) => ({ given: name, taken: name })),
      ...unturned.map((name) => ({ given: name, taken: name.replace('present', 'past_key_values') })),
    ],
  };
}

/** The keys of what was heard are turned in each step, and are the same in each: that is done once, where they are made. */
const turnsKeys = (field: Field): boolean =>
  field.number === NODE &&
  textIn(field.content, 4) === 'Transpose' &&
  /^past_key_values\.\d+\.encoder\.key$/.test(textIn(field.content, 1));

/** A node that takes what the same graph gives. Its own name (NodeProto 3) is another node's there. */
function ofPresent(node: Field): Field {
  const fields = [...fieldsOf(node.content)].filter(({ number }) => number !== 3);
  const parts = fields.map((field) =>
    field.number === 1 ? textField(1, asText(field).replace('past_key_values', 'present')) : field.whole,
  );
  return fieldWith(NODE, parts);
}

/** Numbers that go into a graph or come out of it, of any shape (TypeProto 1 tensor_type, in it 1 elem_type: 1 is float). */
const floats = (number: number, name: string): Field =>
  fieldWith(number, [textField(1, name), Uint8Array.of(0x12, 4, 0x0a, 2, 0x08, 1)]);

/** One branch as a model that gives the `wanted` results; what does not lead to them is left out. */
function modelOf(
  model: readonly Field[],
  graph: readonly Field[],
  branch: readonly Field[],
  wanted: (result: string) => boolean,
): Uint8Array {
  const results = branch.filter((field) => field.number === OUTPUT && wanted(textIn(field.content, 1)));
  const needed = new Set(results.map((field) => textIn(field.content, 1)));
  const nodes = nodesFor(branch, needed);
  const given = graph.filter(
    (field) =>
      (field.number === INPUT && needed.has(textIn(field.content, 1))) ||
      (field.number === INITIALIZER && needed.has(textIn(field.content, 8))),
  );
  const named = graph.filter(({ number }) => number === 2);
  const parts = [...nodes, ...named, ...given, ...results].map(({ whole }) => whole);
  const others = model.filter(({ number }) => number !== GRAPH).map(({ whole }) => whole);
  return Buffer.concat([...others, fieldWith(GRAPH, parts).whole]);
}

/** The fields of the branch's graph, where the graph is a switch and nothing else. */
function branchIn(graph: readonly Field[], branch: string): readonly Field[] {
  const [node, ...others] = graph.filter(({ number }) => number === NODE);
  const attributes =
    node && others.length === 0 && textIn(node.content, 4) === 'If' ? fieldsOf(node.content) : [];
  for (const attribute of attributes) {
    if (attribute.number !== 5 || textIn(attribute.content, 1) !== branch) continue;
    for (const inner of fieldsOf(attribute.content))
      if (inner.number === 6) return [...fieldsOf(inner.content)];
  }
  throw new Error(`the decoder has no ${branch}`);
}

/**
 * Keys and values of what was heard need of the words only how many are worked on side by side (`Shape`, of which the
 * first number is taken): as many as were heard. So the words need not be worked out for them.
 */
function batchOfHeard(field: Field): Field {
  if (field.number !== NODE || textIn(field.content, 4) !== 'Shape') return field;
  const parts = [...fieldsOf(field.content)].map(({ number, whole }) =>
    number === 1 ? textField(1, HEARD) : whole,
  );
  return fieldWith(NODE, parts);
}

/** The nodes that lead to the results in `needed`, in their order; what these take in is added to it. */
function nodesFor(graph: readonly Field[], needed: Set<string>): readonly Field[] {
  const kept: Field[] = [];
  // Nodes stand behind those whose results they take.
  for (const node of graph.filter(({ number }) => number === NODE).reverse()) {
    const fields = [...fieldsOf(node.content)];
    if (!fields.some((field) => field.number === 2 && needed.has(asText(field)))) continue;
    for (const field of fields) if (field.number === 1) needed.add(asText(field));
    kept.unshift(node);
  }
  return kept;
}
