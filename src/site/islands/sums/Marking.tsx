import type { MarkingRule } from '../../../trade/marking.ts';
import { marking } from '../../calculators/marking.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Marking(props: SumProps<MarkingRule>) {
  return <SumSheet sum={marking} {...props} />;
}
