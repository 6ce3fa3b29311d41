/** Where a shipped value comes from; what nobody measured is called typical and assumed until she enters her own. */
export const TYPICAL = 'typical, assumed';
export type Provenance = typeof TYPICAL | (string & {});
