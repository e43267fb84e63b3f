#include "export/plan.h"

#include <QObject>

#include "document/wording.h"

namespace tenter::desktop::exporting {

QString bytesTitle(qint64 bytes) {
    const auto amount = static_cast<double>(bytes);
    if (amount < 1000)
        return QObject::tr(
            "%n\u00A0"
            "byte(s)",
            nullptr, static_cast<int>(bytes));
    if (amount < 999'500) return figure(amount / 1e3, 0) + "\u00A0kB";
    return figure(amount / 1e6, 1) + "\u00A0MB";
}

QString filesTitle(std::size_t count) {
    return QObject::tr(
        "%n\u00A0"
        "file(s)",
        nullptr, static_cast<int>(count));
}

}  // namespace tenter::desktop::exporting
