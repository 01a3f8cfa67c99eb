import { notch } from '../../calculators/notch.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Notch(props: SumProps<undefined>) {
  return <SumSheet sum={notch} {...props} />;
}
