// The browser comes from BENCHLEAF_BROWSER, the machine, or @sparticuz/chromium; see src/print/browser.ts.
module.exports = { skipDownload: true };
