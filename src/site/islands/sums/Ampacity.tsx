import type { AmpacityTable } from '../../../trade/ampacity.ts';
import { ampacity } from '../../calculators/ampacity.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Ampacity(props: SumProps<AmpacityTable>) {
  return <SumSheet sum={ampacity} {...props} />;
}
