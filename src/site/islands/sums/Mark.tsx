import { mark } from '../../calculators/mark.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Mark(props: SumProps<undefined>) {
  return <SumSheet sum={mark} {...props} />;
}
