import type { JumperTable } from '../../../trade/jumper.ts';
import { jumper } from '../../calculators/jumper.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Jumper(props: SumProps<JumperTable>) {
  return <SumSheet sum={jumper} {...props} />;
}
