import mdx from '@astrojs/mdx';
import react from '@astrojs/react';
import { defineConfig } from 'astro/config';
import { sound } from './src/setup/sound.ts';

export default defineConfig({
  site: 'https://trayhand.example',
  base: process.env['SITE_BASE'] ?? '/',
  srcDir: './src/site',
  trailingSlash: 'always',
  build: { format: 'directory', inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false },
  vite: {
    build: {
      assetsInlineLimit: 0,
      rolldownOptions: {
        // Every MDX file carries a directive that only Astro reads; the bundler's warning about it says nothing new.
        onLog: (level, log, tell) => {
          if (log.code !== 'MODULE_LEVEL_DIRECTIVE') tell(level, log);
        },
      },
    },
  },
  integrations: [mdx(), react(), sound()],
  // One language now; the address carries it from the first day so that the second moves no page.
  i18n: {
    locales: ['en'],
    defaultLocale: 'en',
    routing: { prefixDefaultLocale: true, redirectToDefaultLocale: false },
  },
  security: {
    csp: {
      algorithm: 'SHA-256',
      directives: [
        "default-src 'none'",
        "img-src 'self' data:",
        "font-src 'self'",
        "connect-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "form-action 'self'",
        "base-uri 'none'",
        "object-src 'none'",
      ],
      scriptDirective: { resources: ["'self'"] },
      styleDirective: { resources: ["'self'"] },
    },
  },
});
