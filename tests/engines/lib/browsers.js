// Browsers from the distribution, set up so that what they lay out can be compared with real numbers.
import puppeteer from 'puppeteer-core';

// Without the first, advances are hinted to whole pixels on Linux; the rest keeps the browser off the network.
const chromiumFlags = [
  '--font-render-hinting=none',
  '--no-sandbox',
  '--force-device-scale-factor=1',
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
  'layout.css.devPixelsPerPx': '1.0',
};

// A machine that builds something else meanwhile takes its time.
const patience = {timeout: 600_000, protocolTimeout: 600_000};

/** Which break profile of Tenter's stands for which engine. */
export const profileOf = {chromium: 'blink', firefox: 'gecko'};

/** @param engine chromium or firefox; `program` is its path. */
export function launch(engine, program) {
  const common = {executablePath: program, headless: true, defaultViewport: {width: 2000, height: 900}, ...patience};
  if (engine === 'chromium') return puppeteer.launch({...common, args: chromiumFlags});
  if (engine === 'firefox') return puppeteer.launch({...common, browser: 'firefox', extraPrefsFirefox: firefoxPreferences});
  throw new Error(`${engine}: no such engine; chromium and firefox are known`);
}
