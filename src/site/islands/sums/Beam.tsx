import { beam } from '../../calculators/beam.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Beam(props: SumProps<undefined>) {
  return <SumSheet sum={beam} {...props} />;
}
