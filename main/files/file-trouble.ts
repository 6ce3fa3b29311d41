/** What the computer said when a file could not be written, with a way out. */
export class FileTrouble extends Error {
  readonly file: string;
  readonly remedy: string;

  constructor(file: string, says: string, remedy: string, cause?: unknown) {
    super(says, { cause });
    this.name = 'FileTrouble';
    this.file = file;
    this.remedy = remedy;
  }
}

const TOLD: Readonly<Record<string, readonly [says: string, remedy: string]>> = {
  ENOSPC: ['The disk is full.', 'Free some space and try again.'],
  EDQUOT: ['Your share of the disk is full.', 'Free some space and try again.'],
  EACCES: ['There is no right to write there.', 'Choose another folder, or give yourself the right to write there.'],
  EPERM: ['There is no right to write there.', 'Choose another folder, or give yourself the right to write there.'],
  EROFS: ['That disk can only be read.', 'Choose a folder on another disk.'],
  ENOENT: ['The folder is not there.', 'Choose another folder, or connect the disk it lies on.'],
  ENOTDIR: ['A file lies where a folder should be.', 'Move that file away, or choose another folder.'],
  EEXIST: ['A file lies where a folder should be.', 'Move that file away, or choose another folder.'],
  EISDIR: ['A folder lies where the file should be.', 'Choose another name.'],
  EBUSY: ['Another program holds the file.', 'Close it there and try again.'],
  ETXTBSY: ['Another program holds the file.', 'Close it there and try again.'],
  ENAMETOOLONG: ['The path is too long.', 'Choose a folder nearer to the top.'],
};

/** The system's error as a file trouble. `file` is what was to be written. */
export function tellFileTrouble(error: unknown, file: string): FileTrouble {
  if (error instanceof FileTrouble) return error;
  const code = (error as NodeJS.ErrnoException | undefined)?.code ?? '';
  const [says, remedy] = TOLD[code] ?? [
    `The computer could not write it${code === '' ? '' : ` (${code})`}.`,
    'Choose another folder and try again.',
  ];
  return new FileTrouble(file, says, remedy, error);
}
