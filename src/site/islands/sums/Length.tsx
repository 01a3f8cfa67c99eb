import { length } from '../../calculators/length.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Length(props: SumProps<undefined>) {
  return <SumSheet sum={length} {...props} />;
}
