import { type SpanData, span } from '../../calculators/span.ts';
import { type SumProps, SumSheet } from '../SumSheet.tsx';

export default function Span(props: SumProps<SpanData>) {
  return <SumSheet sum={span} {...props} />;
}
