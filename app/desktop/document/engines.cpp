#include "document/engines.h"

#include "document/wording.h"

namespace tenter::desktop {

QString engineTitle(const text::BreakProfile& profile) {
    const std::string_view title = profile.title();
    return QString::fromUtf8(title.data(), static_cast<qsizetype>(title.size()));
}

QString linesTitle(std::size_t lines) {
    return lines == 1 ? QStringLiteral("1 line") : figure(static_cast<double>(lines), 0) + " lines";
}

}  // namespace tenter::desktop
