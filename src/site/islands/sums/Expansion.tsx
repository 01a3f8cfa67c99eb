import type { ExpansionTable } from '../../../trade/expansion.ts';
import { expansion } from '../../calculators/expansion.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Expansion(props: SumProps<ExpansionTable>) {
  return <SumSheet sum={expansion} {...props} />;
}
