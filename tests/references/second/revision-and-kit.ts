import { given, type SecondOpinion } from './told.ts';

/** Each paper against the register, each part of the kit against the channel (common practice, no source). */
const work: SecondOpinion = (told) => {
  const revision = (id: string) => /revision ([A-F])/.exec(given(told, id).text)?.[1];
  const part = (id: string) => /(\d) in, (.+)$/.exec(given(told, id).text)?.slice(1) ?? [];
  const current = revision('current');
  const [card, drawing] = ['card', 'drawing'].map((id) => revision(id) !== current);
  const [width, metal] = part('kit').map((one, i) => one !== part('tray')[i]);
  const count = [card, drawing, width, metal].filter((one) => one === true).length;
  return {
    papers: card && drawing ? 'both' : card ? 'card' : drawing ? 'drawing' : 'none',
    kit: width && metal ? 'both' : metal ? 'metal' : width ? 'width' : 'fits',
    count,
    next: count === 0 ? 'go-on' : 'report',
  };
};
export default work;
