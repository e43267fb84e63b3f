// The browsers on this computer that a row can be compared with.
#pragma once

#include <QString>
#include <QStringList>
#include <QUrl>
#include <vector>

#include "text/profile.h"

namespace tenter::desktop::compare {

struct Browser {
    enum class Kind { Chromium, Firefox };
    Kind kind = Kind::Chromium;
    QString title;    ///< `Chromium`
    QString program;  ///< path of its executable
    /// The break profile that Tenter's layout uses in a comparison with this browser.
    [[nodiscard]] const text::BreakProfile& profile() const;
};

/// The browsers on the search path, at most one of each kind.
std::vector<Browser> installedBrowsers();
/// Text for a computer without a browser: what Tenter looks for and how to install one.
QString noBrowserText();
/// Why a run of `browser` was stopped: no answer for `seconds`.
QString noResponseText(const Browser& browser, int seconds);
/// Why `browser` was not started: no free network port.
QString noPortText(const Browser& browser);

/// Command-line arguments with which `browser` opens `page` without a window, with its profile in `folder`.
QStringList arguments(const Browser& browser, const QString& folder, const QUrl& page);
/// Writes the browser's preferences into the empty folder `folder`; false if that fails.
bool prepareFolder(const Browser& browser, const QString& folder);

}  // namespace tenter::desktop::compare
