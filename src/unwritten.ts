/** Why the system did not let a file or a folder be written, in words for the person. */

/** What stands for the folder in the words, since a person may have named it or not. */
type Folder = 'the folder' | 'the project folder';

/** By the codes of Node's system errors and of SQLite. */
const REASONS: Readonly<Record<string, (folder: Folder) => string>> = {
  EACCES: (folder) => `${folder} may not be written to`,
  EPERM: (folder) => `${folder} may not be written to`,
  EROFS: () => 'the disk may not be written to',
  EEXIST: () => 'a file is in the way',
  ENOTDIR: () => 'a file is in the way',
  EISDIR: () => 'a folder of that name is there',
  ENOENT: () => 'there is no such folder',
  EBUSY: () => 'another program has it open',
  ENAMETOOLONG: () => 'the name is too long',
  ENOSPC: () => 'the disk is full',
  EDQUOT: () => 'the disk is full',
  EFBIG: () => 'the disk takes no file that long',
  SQLITE_FULL: () => 'the disk is full',
};

/** The reason behind a failed write as a clause; where the code is none of the usual ones, the system's own words. */
export function whyUnwritten(error: unknown, folder: Folder = 'the folder'): string {
  const { code = '', message } = error as NodeJS.ErrnoException;
  return REASONS[code]?.(folder) ?? String(message);
}
