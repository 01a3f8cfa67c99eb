import { section } from '../../calculators/section.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Section(props: SumProps<undefined>) {
  return <SumSheet sum={section} {...props} />;
}
