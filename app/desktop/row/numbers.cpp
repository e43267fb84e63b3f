#include "row/numbers.h"

#include "units/number.h"

namespace tenter::desktop::row {

QString decimal(double value, int decimals) {
    QString text = QString::fromStdString(units::number(value, decimals));
    const qsizetype point = text.indexOf(QLatin1Char('.'));
    const qsizetype first = text.startsWith(QLatin1Char('-')) ? 1 : 0;
    for (qsizetype i = (point < 0 ? text.size() : point) - 3; i > first; i -= 3)
        text.insert(i, QChar(0x202F));
    return text;
}

}  // namespace tenter::desktop::row
