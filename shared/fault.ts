/**
 * Something wrong in what was given: where it stands, what is wrong, what would be right.
 * `path` is written as in a job file: `rooms[0].openings[1].treatments[0].return`.
 */
export interface Fault {
  readonly path: string;
  readonly wrong: string;
  readonly right: string;
}

/** Something unlikely that is priced all the same, said to the decorator and never mended silently. */
export interface Warning {
  readonly path: string;
  readonly says: string;
}

/** The one line in which a fault is told on standard error: `path: what is wrong; what would be right`. */
export function sayFault(fault: Fault): string {
  return `${fault.path === '' ? '(file)' : fault.path}: ${fault.wrong}; ${fault.right}`;
}

/**
 * A path with one more step: `at('rooms', 0)` gives `rooms[0]`, `at('rooms[0]', 'name')` gives `rooms[0].name`. Several
 * steps may be given with dots between: `at('cloth[0]', 'repeat.vertical')`.
 */
export function at(path: string, step: string | number): string {
  if (typeof step === 'number') return `${path}[${step}]`;
  const plain = /^[A-Za-z_][\w-]*(\.[A-Za-z_][\w-]*)*$/.test(step);
  if (!plain) return `${path}[${JSON.stringify(step)}]`;
  return path === '' ? step : `${path}.${step}`;
}

/** Ends a `switch` over a union: the compiler names every place that must answer for a new member. */
export function exhaustive(never: never): never {
  throw new Error(`unexpected variant ${JSON.stringify(never)}`);
}
