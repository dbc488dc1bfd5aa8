/** Makes models/ complete; resolves to the names of the files written. */
export function prepareWeights(): Promise<string[]>;
