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

// Nothing but the page: no first steps, no updates, no reports, no questions; one CSS px to a device pixel.
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
    return kind == Kind::Firefox ? text::gecko() : text::blink();
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

QString howToGetOne() {
    return QStringLiteral(
        "No browser was found that Tenter can ask: it looks for chromium and firefox on the search path. On "
        "Debian and its kin, “sudo apt install chromium” or “sudo apt install firefox-esr” installs one; "
        "then "
        "look again.");
}

QStringList arguments(const Browser& browser, const QString& folder, const QUrl& page) {
    if (browser.kind == Browser::Kind::Firefox)
        return {"--headless", "--no-remote", "--profile", folder, page.toString()};
    // Without the third, advances are hinted to whole pixels on Linux.
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
