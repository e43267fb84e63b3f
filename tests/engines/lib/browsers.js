// Browsers from the distribution, configured so that their layouts can be compared with real numbers.
import puppeteer from 'puppeteer-core';

// The first option prevents hinting of advances to whole pixels on Linux; the others prevent network access.
const chromiumFlags = [
  '--font-render-hinting=none',
  '--no-sandbox',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

const firefoxPreferences = {
  'app.normandy.enabled': false,
  'app.update.enabled': false,
  'browser.safebrowsing.malware.enabled': false,
  'browser.safebrowsing.phishing.enabled': false,
  'network.captive-portal-service.enabled': false,
  'network.connectivity-service.enabled': false,
};

/** Width of Chromium's classic scrollbar in CSS px; Firefox is configured to the same width. */
export const classicBar = 15;
const firefoxBars = {'widget.gtk.overlay-scrollbars.enabled': false, 'widget.non-native-theme.scrollbar.size.override': classicBar};

// Long, because the machine may be building at the same time.
const patience = {timeout: 600_000, protocolTimeout: 600_000};

/** The break profile of each engine. */
export const profileOf = {chromium: 'blink', firefox: 'gecko'};

/**
 * @param engine `chromium` or `firefox`; `program` is its path.
 * @param ratio device px in a CSS px. It must be set at the start, because the width of a frame snaps to whole device px
 *   of the browser's own ratio.
 * @param bars true if scrolling boxes have a classic scrollbar, `classicBar` wide.
 */
export function launch(engine, program, ratio = 1, bars = false) {
  const defaultViewport = ratio === 1 ? {width: 2000, height: 900} : null;
  const common = {executablePath: program, headless: true, defaultViewport, ...patience};
  if (engine === 'chromium') return puppeteer.launch({...common, ignoreDefaultArgs: bars ? ['--hide-scrollbars'] : [], args: [...chromiumFlags, `--force-device-scale-factor=${ratio}`]});
  const preferences = {...firefoxPreferences, ...(bars ? firefoxBars : {}), 'layout.css.devPixelsPerPx': ratio.toFixed(1)};
  if (engine === 'firefox') return puppeteer.launch({...common, browser: 'firefox', extraPrefsFirefox: preferences});
  throw new Error(`${engine}: unknown engine; use chromium or firefox`);
}
