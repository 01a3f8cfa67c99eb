import type { OpenGapRule } from '../../../trade/transition.ts';
import { transition } from '../../calculators/transition.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Transition(props: SumProps<OpenGapRule>) {
  return <SumSheet sum={transition} {...props} />;
}
