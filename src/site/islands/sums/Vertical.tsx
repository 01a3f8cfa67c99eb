import { vertical } from '../../calculators/vertical.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Vertical(props: SumProps<undefined>) {
  return <SumSheet sum={vertical} {...props} />;
}
