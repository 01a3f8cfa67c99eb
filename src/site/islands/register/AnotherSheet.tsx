import { useEffect, useState } from 'react';
import type { Tell } from '../../speak.ts';

/** Says that a sheet which came by link is not opened while another is being answered. */
export function AnotherSheet({ tell }: { readonly tell: Tell }) {
  const [another, setAnother] = useState(false);
  useEffect(() => {
    const look = () => setAnother(window.location.hash.startsWith('#set='));
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);
  if (!another) return null;
  return (
    <p className="message" role="alert">
      <strong>{tell('handing.another')}</strong>
    </p>
  );
}
