/** Lays a run out beside the page, so that the page goes on and the work can be stopped. */
import { type LayoutResult, layout } from '../../run/layout/layout.ts';
import type { Run } from '../../run/types.ts';
import { type Fault, GivenError } from '../../trade/given.ts';
import { type RunData, worldOf } from './workOut.ts';

export interface LayoutAsked {
  readonly run: Run;
  readonly data: RunData;
}
export type LayoutTold =
  | { readonly told: 'laid'; readonly result: LayoutResult }
  | { readonly told: 'faults'; readonly faults: readonly Fault[] };

addEventListener('message', ({ data: { run, data } }: MessageEvent<LayoutAsked>) => {
  const { catalogue, tables } = worldOf(data);
  const tell = (told: LayoutTold) => postMessage(told);
  try {
    tell({ told: 'laid', result: layout(run, catalogue, tables).result });
  } catch (cause) {
    if (!(cause instanceof GivenError)) throw cause;
    tell({ told: 'faults', faults: cause.faults });
  }
});
