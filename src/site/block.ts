/** What a title block says of its sheet, besides the title. */
export interface Block {
  readonly number: string;
  readonly revision: number;
  /** Left out on a page of this device; empty where the page says it once it stands. */
  readonly dated?: string | undefined;
  readonly works: string;
  readonly status: string;
}
