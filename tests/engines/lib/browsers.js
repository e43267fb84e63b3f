// Browsers from the distribution, set up so that what they lay out can be compared with real numbers.
import puppeteer from 'puppeteer-core';

// Without the first, advances are hinted to whole pixels on Linux; the rest keeps the browser off the network.
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

/** Width of Chromium's classic scrollbar in CSS px, which Firefox is told to take too. */
export const classicBar = 15;
const firefoxBars = {'widget.gtk.overlay-scrollbars.enabled': false, 'widget.non-native-theme.scrollbar.size.override': classicBar};

// A machine that builds something else meanwhile takes its time.
const patience = {timeout: 600_000, protocolTimeout: 600_000};

/** Which break profile of Tenter's stands for which engine. */
export const profileOf = {chromium: 'blink', firefox: 'gecko'};

/**
 * @param engine chromium or firefox; `program` is its path.
 * @param ratio device px to a CSS px. A frame's width snaps to whole device px; one set later, in a running browser,
 *   would not change that.
 * @param bars whether what scrolls has a classic scrollbar, `classicBar` wide.
 */
export function launch(engine, program, ratio = 1, bars = false) {
  const defaultViewport = ratio === 1 ? {width: 2000, height: 900} : null;
  const common = {executablePath: program, headless: true, defaultViewport, ...patience};
  if (engine === 'chromium') return puppeteer.launch({...common, ignoreDefaultArgs: bars ? ['--hide-scrollbars'] : [], args: [...chromiumFlags, `--force-device-scale-factor=${ratio}`]});
  const preferences = {...firefoxPreferences, ...(bars ? firefoxBars : {}), 'layout.css.devPixelsPerPx': ratio.toFixed(1)};
  if (engine === 'firefox') return puppeteer.launch({...common, browser: 'firefox', extraPrefsFirefox: preferences});
  throw new Error(`${engine}: no such engine; chromium and firefox are known`);
}
