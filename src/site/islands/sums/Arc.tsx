import { arc } from '../../calculators/arc.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Arc(props: SumProps<undefined>) {
  return <SumSheet sum={arc} {...props} />;
}
