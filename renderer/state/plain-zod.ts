/**
 * Tells zod not to compile its checks with `new Function`: the page's policy forbids it and would report every try.
 * Imported before anything that makes a schema.
 */
const holder = globalThis as { __zod_globalConfig?: { jitless?: boolean } };
holder.__zod_globalConfig = { ...holder.__zod_globalConfig, jitless: true };

export {};
