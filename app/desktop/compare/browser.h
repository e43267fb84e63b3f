// Browsers of this machine that a row can be compared with.
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
    QString program;  ///< its file
    /// The break profile that it is judged by.
    [[nodiscard]] const text::BreakProfile& profile() const;
};

/// Those on the search path, at most one of a kind.
std::vector<Browser> installedBrowsers();
/// What to do where there is none.
QString howToGetOne();

/// Arguments with which `browser` opens `page` without a window, keeping its profile in `folder`.
QStringList arguments(const Browser& browser, const QString& folder, const QUrl& page);
/// Puts what the browser reads at its start into the empty folder `folder`; false if it cannot be written.
bool prepareFolder(const Browser& browser, const QString& folder);

}  // namespace tenter::desktop::compare
