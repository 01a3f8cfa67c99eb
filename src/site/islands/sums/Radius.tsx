import type { RadiusTable } from '../../../trade/radius.ts';
import { radius } from '../../calculators/radius.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Radius(props: SumProps<RadiusTable>) {
  return <SumSheet sum={radius} {...props} />;
}
