/** What every paper for the workroom says of itself. */
export interface WorkshopPaper {
  readonly form: 1;
  readonly language: string;
  readonly title: string;
  /** ISO date. */
  readonly date: string;
  readonly dated: string;
  readonly letterhead: { readonly name: string };
  readonly client: string;
  readonly reference: string;
}
