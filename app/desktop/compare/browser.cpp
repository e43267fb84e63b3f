#include "compare/browser.h"

#include <QDir>
#include <QFile>
#include <QStandardPaths>

#ifdef Q_OS_UNIX
#include <unistd.h>
#endif

namespace tenter::desktop::compare {

namespace {

/// Chromium's sandbox refuses to run as root.
bool isRoot() {
#ifdef Q_OS_UNIX
    return geteuid() == 0;
#else
    return false;
#endif
}

// Switches off start pages, updates, reports and dialogs, and sets one device pixel per CSS px.
constexpr const char* firefoxPreferences = R"(user_pref("app.normandy.enabled", false);
user_pref("app.update.enabled", false);
user_pref("browser.aboutwelcome.enabled", false);
user_pref("browser.safebrowsing.malware.enabled", false);
user_pref("browser.safebrowsing.phishing.enabled", false);
user_pref("browser.shell.checkDefaultBrowser", false);
user_pref("browser.startup.homepage_override.mstone", "ignore");
user_pref("datareporting.healthreport.uploadEnabled", false);
user_pref("datareporting.policy.dataSubmissionEnabled", false);
user_pref("layout.css.devPixelsPerPx", "1.0");
user_pref("network.captive-portal-service.enabled", false);
user_pref("network.connectivity-service.enabled", false);
user_pref("network.proxy.type", 0);
user_pref("toolkit.telemetry.reportingpolicy.firstRun", false);
)";

}  // namespace

const text::BreakProfile& Browser::profile() const {
    const text::BreakProfile* own = text::profileOfBrowser(title.toStdString());
    return own != nullptr ? *own : text::defaultProfile();
}

std::vector<Browser> installedBrowsers() {
    struct Known {
        Browser::Kind kind;
        QString title;
        QStringList programs;
    };
    const std::vector<Known> known{
        {Browser::Kind::Chromium, "Chromium", {"chromium", "chromium-browser", "google-chrome"}},
        {Browser::Kind::Firefox, "Firefox", {"firefox", "firefox-esr"}},
    };
    std::vector<Browser> found;
    for (const Known& one : known)
        for (const QString& name : one.programs) {
            const QString program = QStandardPaths::findExecutable(name);
            if (program.isEmpty()) continue;
            found.push_back({one.kind, one.title, program});
            break;
        }
    return found;
}

QString noBrowserText() {
    return QObject::tr(
        "No browser was found. Install Chromium (sudo apt install chromium) or Firefox (sudo apt install "
        "firefox-esr), then choose Search again.");
}

QString noResponseText(const Browser& browser, int seconds) {
    return QObject::tr(
               "%1 did not respond for %n second(s) and was stopped. Try again when the computer is "
               "less busy.",
               nullptr, seconds)
        .arg(browser.title);
}

QString noPortText(const Browser& browser) {
    return QObject::tr(
               "No free network port was found on this computer to show the page to %1. Try again later.")
        .arg(browser.title);
}

QStringList arguments(const Browser& browser, const QString& folder, const QUrl& page) {
    if (browser.kind == Browser::Kind::Firefox)
        return {"--headless", "--no-remote", "--profile", folder, page.toString()};
    // Without --font-render-hinting=none, glyph advances are rounded to whole pixels on Linux.
    QStringList list{"--headless=new",
                     "--user-data-dir=" + folder,
                     "--font-render-hinting=none",
                     "--force-device-scale-factor=1",
                     "--no-first-run",
                     "--no-proxy-server",
                     "--disable-background-networking",
                     "--disable-component-update",
                     "--disable-default-apps",
                     "--disable-sync",
                     "--password-store=basic"};
    if (isRoot()) list << "--no-sandbox";
    return list << page.toString();
}

bool prepareFolder(const Browser& browser, const QString& folder) {
    if (browser.kind != Browser::Kind::Firefox) return true;
    QFile file(QDir(folder).filePath("user.js"));
    return file.open(QIODevice::WriteOnly) && file.write(firefoxPreferences) > 0;
}

}  // namespace tenter::desktop::compare
