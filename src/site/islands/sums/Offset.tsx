import { offset } from '../../calculators/offset.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Offset(props: SumProps<undefined>) {
  return <SumSheet sum={offset} {...props} />;
}
