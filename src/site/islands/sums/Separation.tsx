import type { SeparationRule } from '../../../trade/separation.ts';
import { separation } from '../../calculators/separation.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Separation(props: SumProps<SeparationRule>) {
  return <SumSheet sum={separation} {...props} />;
}
