import type { Drawing } from '../../drawing/types.ts';

interface Props {
  /** The same view drawn for phone and desk (and paper, where it has its own); the page shows the one that fits. */
  readonly drawings: readonly Drawing[];
  readonly caption?: string;
}

/** A figure in its forms. Without a paper form the desk form is printed. */
export function Figure({ drawings, caption }: Props) {
  const own = drawings.some(({ form }) => form === 'paper');
  const classOf = (form: Drawing['form']) => (form === 'desk' && !own ? 'at-desk at-paper' : `at-${form}`);
  return (
    <figure className="figure">
      {drawings.map(({ form, svg }) => (
        // biome-ignore lint/security/noDangerouslySetInnerHtml: src/drawing escapes every text; it is no reader's input
        <div key={form} className={classOf(form)} dangerouslySetInnerHTML={{ __html: svg }} />
      ))}
      {caption !== undefined && <figcaption>{caption}</figcaption>}
    </figure>
  );
}
