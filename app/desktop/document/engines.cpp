#include "document/engines.h"

#include "document/wording.h"

namespace tenter::desktop {

QString engineTitle(const text::BreakProfile& profile) {
    if (profile.name() == "blink") return QStringLiteral("Chromium’s family");
    if (profile.name() == "gecko") return QStringLiteral("Firefox");
    return QString::fromUtf8(profile.name().data(), static_cast<qsizetype>(profile.name().size()));
}

QString linesTitle(std::size_t lines) {
    return lines == 1 ? QStringLiteral("1 line") : figure(static_cast<double>(lines), 0) + " lines";
}

}  // namespace tenter::desktop
