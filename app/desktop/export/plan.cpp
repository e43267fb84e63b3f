#include "export/plan.h"

#include "document/wording.h"

namespace tenter::desktop::exporting {

QString bytesTitle(qint64 bytes) {
    const auto amount = static_cast<double>(bytes);
    if (amount < 1000) return QString("%1\u00A0bytes").arg(bytes);
    if (amount < 999'500) return figure(amount / 1e3, 0) + "\u00A0kB";
    return figure(amount / 1e6, 1) + "\u00A0MB";
}

QString filesTitle(std::size_t count) {
    return count == 1 ? "1\u00A0file" : QString("%1\u00A0files").arg(count);
}

}  // namespace tenter::desktop::exporting
