/** What a title block says of its sheet, besides the title. */
export interface Block {
  readonly number: string;
  readonly revision: number;
  readonly dated: string;
  readonly works: string;
  readonly status: string;
}
