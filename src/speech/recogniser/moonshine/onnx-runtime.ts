/**
 * Runs ONNX models with the runtime library that sherpa-onnx brings, through its public C interface
 * (`onnxruntime_c_api.h`, whose table of functions only ever grows). sherpa-onnx itself tells only the likeliest words;
 * here the chances of all others can be had too.
 */
import { existsSync, readdirSync } from 'node:fs';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';

/** A pointer of the runtime. */
type Handle = unknown;
interface Native {
  (...args: readonly unknown[]): unknown;
  /** The same in a thread of its own; the last argument is called with the result. */
  async(...args: readonly unknown[]): void;
}

/** The table that is asked for: that of version 1.17, which every later runtime has. */
const API_VERSION = 17;
const WARN_FATAL_ONLY = 4;
const ALL_OPTIMISATIONS = 99;
const POINTER_BYTES = 8;

/** Element types of the interface. */
const TYPES = [
  [Float32Array, 1],
  [BigInt64Array, 7],
  [Uint8Array, 9],
] as const;

/** Place of each function in the table, and what it takes. */
const FUNCTIONS = {
  message: [2, 'const char* GetErrorMessage(void* status)'],
  createEnv: [3, 'void* CreateEnv(int level, const char* id, _Out_ void** out)'],
  createSession: [
    8,
    'void* CreateSessionFromArray(void* env, const void* model, size_t bytes, void* options, _Out_ void** out)',
  ],
  run: [
    9,
    'void* Run(void* session, void* options, const char** names, void** values, size_t inputs, const char** wanted, size_t outputs, _Inout_ void** results)',
  ],
  createOptions: [10, 'void* CreateSessionOptions(_Out_ void** out)'],
  noPatterns: [17, 'void* DisableMemPattern(void* options)'],
  noArena: [19, 'void* DisableCpuMemArena(void* options)'],
  optimise: [23, 'void* SetSessionGraphOptimizationLevel(void* options, int level)'],
  threads: [24, 'void* SetIntraOpNumThreads(void* options, int count)'],
  createTensor: [
    49,
    'void* CreateTensorWithDataAsOrtValue(void* memory, void* data, size_t bytes, const int64_t* shape, size_t sizes, int type, _Out_ void** out)',
  ],
  dataOf: [51, 'void* GetTensorMutableData(void* value, _Out_ void** out)'],
  sizeOf: [64, 'void* GetTensorShapeElementCount(void* shape, _Out_ size_t* out)'],
  shapeOf: [65, 'void* GetTensorTypeAndShape(void* value, _Out_ void** out)'],
  cpuMemory: [69, 'void* CreateCpuMemoryInfo(int allocator, int type, _Out_ void** out)'],
  releaseStatus: [93, 'void ReleaseStatus(void* status)'],
  releaseValue: [96, 'void ReleaseValue(void* value)'],
  releaseShape: [99, 'void ReleaseTensorTypeAndShapeInfo(void* shape)'],
  releaseOptions: [100, 'void ReleaseSessionOptions(void* options)'],
  configure: [130, 'void* AddSessionConfigEntry(void* options, const char* key, const char* value)'],
} as const;

/** Numbers in the runtime's memory, or in ours for as long as the tensor is held. */
export interface Tensor {
  readonly value: Handle;
  readonly data?: Float32Array | BigInt64Array | Uint8Array;
}

type Inputs = Readonly<Record<string, Tensor>>;

export interface Session {
  /**
   * Runs the model in a thread of its own: several runs may go on at once. The first results are written into the tensors
   * of `into`; those that come back are the others, and must be released.
   */
  run(inputs: Inputs, wanted: readonly string[], into?: readonly Tensor[]): Promise<readonly Tensor[]>;
}

type Functions = Readonly<Record<keyof typeof FUNCTIONS, Native>>;
type View = (pointer: Handle, bytes: number) => ArrayBuffer;

export class OnnxRuntime {
  readonly #call: Functions;
  readonly #view: View;
  readonly #env: Handle;
  readonly #memory: Handle;
  /** Held: a library that nobody holds is unloaded with all its functions. */
  readonly library: unknown;

  private constructor(library: unknown, call: Functions, view: View) {
    this.library = library;
    this.#call = call;
    this.#view = view;
    this.#env = this.#made('createEnv', WARN_FATAL_ONLY, 'hearwright');
    this.#memory = this.#made('cpuMemory', 1, 0);
  }

  static #loaded: Promise<OnnxRuntime> | undefined;

  /** One for a process. Throws where the library or the means to call it is missing. */
  static load(): Promise<OnnxRuntime> {
    OnnxRuntime.#loaded ??= OnnxRuntime.#load();
    return OnnxRuntime.#loaded;
  }

  static async #load(): Promise<OnnxRuntime> {
    const { default: koffi } = await import('koffi');
    const library = koffi.load(libraryFile());
    const at = (table: Handle, place: number, proto: string): Native =>
      koffi.decode(koffi.decode(table, place * POINTER_BYTES, 'void *'), koffi.proto(proto));
    const base = library.func('void* OrtGetApiBase()')();
    const table = at(base, 0, 'void* GetApi(uint32_t version)')(API_VERSION);
    if (!table) throw new Error('the runtime is older than is needed');
    const call = Object.fromEntries(
      Object.entries(FUNCTIONS).map(([name, [place, proto]]) => [name, at(table, place, proto)]),
    ) as Functions;
    return new OnnxRuntime(library, call, (pointer, bytes) => koffi.view(pointer, bytes));
  }

  /** Loads a model from the content of its file, which must have been checked: a damaged one ends the process. */
  session(model: Uint8Array, threads: number): Session {
    const options = this.#made('createOptions');
    this.#do('threads', options, threads);
    this.#do('optimise', options, ALL_OPTIMISATIONS);
    // Sound is hardly ever of the same length twice: patterns would be kept of each and used for none, and an arena would
    // keep what the longest took.
    this.#do('noPatterns', options);
    this.#do('noArena', options);
    // Weights that are stored as bytes are made numbers once, not at each run.
    this.#do('configure', options, 'session.disable_quant_qdq', '1');
    const session = this.#made('createSession', this.#env, model, model.byteLength, options);
    this.#call.releaseOptions(options);
    return { run: (inputs, wanted, into) => this.#run(session, inputs, wanted, into) };
  }

  #run(
    session: Handle,
    inputs: Inputs,
    wanted: readonly string[],
    into: readonly Tensor[] = [],
  ): Promise<readonly Tensor[]> {
    const names = Object.keys(inputs);
    const values = Object.values(inputs).map(({ value }) => value);
    const results: Handle[] = wanted.map((_, k) => into[k]?.value ?? null);
    const args = [session, null, names, values, names.length, wanted, wanted.length, results];
    return new Promise((resolve, reject) => {
      this.#call.run.async(...args, (error: Error | null, status: Handle) => {
        try {
          if (error) throw error;
          this.#check(status);
          resolve(results.slice(into.length).map((value) => ({ value })));
        } catch (fault) {
          reject(fault);
        }
      });
    });
  }

  /** Lends numbers to the runtime: they must not be changed while the tensor is used. */
  tensor(data: Float32Array | BigInt64Array | Uint8Array, shape: readonly number[]): Tensor {
    const type = TYPES.find(([kind]) => data instanceof kind)?.[1];
    const value = this.#made('createTensor', this.#memory, data, data.byteLength, shape, shape.length, type);
    return { value, data };
  }

  /** The numbers of a tensor of floats, in the runtime's own memory: gone once it is released. */
  floats(tensor: Tensor): Float32Array {
    const shape = this.#made('shapeOf', tensor.value);
    const count = Number(this.#made('sizeOf', shape));
    this.#call.releaseShape(shape);
    return new Float32Array(this.#view(this.#made('dataOf', tensor.value), count * 4));
  }

  release(tensors: Iterable<Tensor>): void {
    for (const { value } of tensors) this.#call.releaseValue(value);
  }

  #made(name: keyof typeof FUNCTIONS, ...args: readonly unknown[]): Handle {
    const out: Handle[] = [null];
    this.#do(name, ...args, out);
    return out[0];
  }

  #do(name: keyof typeof FUNCTIONS, ...args: readonly unknown[]): void {
    this.#check(this.#call[name](...args));
  }

  #check(status: unknown): void {
    if (!status) return;
    const message = String(this.#call.message(status));
    this.#call.releaseStatus(status);
    throw new Error(message);
  }
}

/** The runtime library beside sherpa-onnx's own, as its package for this system brings it. */
function libraryFile(): string {
  const require = createRequire(import.meta.url);
  const system = process.platform === 'win32' ? 'win' : process.platform;
  const beside = dirname(dirname(require.resolve('sherpa-onnx-node')));
  const folder = join(beside, `sherpa-onnx-${system}-${process.arch}`);
  const name = existsSync(folder)
    ? readdirSync(folder).find((file) => /^(?:lib)?onnxruntime(?:\.[\d.]+)?\.(?:so|dylib|dll)$/.test(file))
    : undefined;
  if (!name) throw new Error(`no runtime library in ${folder}`);
  return join(folder, name);
}
