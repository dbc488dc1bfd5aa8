/** Kept equal to package.json by a test, so that no file has to be read to say it. */
export const VERSION = '0.1.0';
