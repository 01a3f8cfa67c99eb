import { equivalent } from '../../calculators/equivalent.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Equivalent(props: SumProps<undefined>) {
  return <SumSheet sum={equivalent} {...props} />;
}
