/** Goes onto every proposal. The same as in package.json, which a test compares. */
export const PROGRAM_VERSION = '0.1.0';
