/** Addresses of pages under the site's base; every page's address carries its language and ends with a stroke. */
import type { Lang } from './words.ts';

const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');

/** `pageAt('en', 'install/cut')` is `/en/install/cut/`; an empty path is the home of the language. */
export const pageAt = (lang: Lang, path = ''): string => `${base}${lang}/${path === '' ? '' : `${path}/`}`;

/** A file of public/. */
export const fileAt = (name: string): string => `${base}${name}`;
