import { mitre } from '../../calculators/mitre.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Mitre(props: SumProps<undefined>) {
  return <SumSheet sum={mitre} {...props} />;
}
