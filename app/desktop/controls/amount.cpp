#include "controls/amount.h"

#include <QRegularExpression>

#include "document/wording.h"
#include "language/language.h"
#include "units/number.h"

namespace tenter::desktop::controls {

namespace {

/// With an ASCII minus sign and the decimal point of the window's language.
QString plainNumber(double value, int decimals) {
    return QString::fromStdString(units::number(value, decimals)).replace('.', language::decimalPoint());
}

/// `em, rem or px`.
QString oneOf(const QStringList& words) {
    if (words.size() < 2) return words.value(0);
    return QObject::tr("%1 or %2").arg(words.mid(0, words.size() - 1).join(", "), words.last());
}

/// A keyword as the field shows it. `auto` has its name in every language.
QString keywordTitle(const QString& keyword) {
    return keyword == "none" ? QObject::tr("none", "no limit") : keyword;
}

}  // namespace

QString requirement(const AmountKind& kind) {
    const QString text = (kind.decimals == 0 ? QObject::tr("enter a whole number from %1 to %2")
                                             : QObject::tr("enter a number from %1 to %2"))
                             .arg(figure(kind.least, kind.decimals), figure(kind.most, kind.decimals));
    const QString inUnits =
        kind.units.isEmpty() ? text : QObject::tr("%1 in %2", "number in units").arg(text, oneOf(kind.units));
    QStringList keywords;
    for (const QString& keyword : kind.keywords)
        keywords << keywordTitle(keyword);
    return keywords.isEmpty() ? inUnits
                              : QObject::tr("%1, or %2", "number or keyword").arg(inUnits, oneOf(keywords));
}

Reading read(const QString& typed, const AmountKind& kind, const Amount& before) {
    using State = Reading::State;
    QString text = typed.trimmed().toLower();
    text.replace(',', '.');
    text.replace(QChar(0x2212), '-');
    if (text.isEmpty()) return {State::Empty, {}, {}};
    for (const QString& keyword : kind.keywords) {
        // The word of CSS can be typed in every language.
        const QString title = keywordTitle(keyword).toLower();
        if (text == keyword || text == title) return {State::Acceptable, {0, keyword}, {}};
        if (keyword.startsWith(text) || title.startsWith(text)) return {State::Intermediate, {}, {}};
    }
    static const QRegularExpression shape("^([+-]?)(\\d*)(\\.?)(\\d*)\\s*([a-z%]*)$");
    const auto match = shape.match(text);
    if (!match.hasMatch()) return {State::Invalid, {}, requirement(kind)};
    QString unit = match.captured(5);
    const bool digits = !match.captured(2).isEmpty() || !match.captured(4).isEmpty();
    const bool dangling = !match.captured(3).isEmpty() && match.captured(4).isEmpty();
    if (!digits || dangling) {
        const bool start = unit.isEmpty() && (kind.least < 0 || match.captured(1) != "-");
        return {start ? State::Intermediate : State::Invalid, {}, requirement(kind)};
    }
    if (unit == kind.suffix) unit.clear();
    if (unit.isEmpty() && !(kind.plain && (before.unit.isEmpty() || kind.units.isEmpty())))
        unit = kind.units.contains(before.unit) ? before.unit : kind.units.value(0);
    else if (!unit.isEmpty() && !kind.units.contains(unit)) {
        for (const QString& known : kind.units)
            if (known.startsWith(unit)) return {State::Intermediate, {}, {}};
        if (kind.suffix.startsWith(unit)) return {State::Intermediate, {}, {}};
        return {State::Invalid, {}, requirement(kind)};
    }
    const double value = units::rounded(
        (match.captured(1) + match.captured(2) + match.captured(3) + match.captured(4)).toDouble(),
        kind.decimals);
    if (value < kind.least || value > kind.most) return {State::Invalid, {}, requirement(kind)};
    return {State::Acceptable, {value, unit}, {}};
}

QString formatted(const Amount& amount, const AmountKind& kind) {
    if (kind.keywords.contains(amount.unit)) return keywordTitle(amount.unit);
    const QString unit = amount.unit.isEmpty() ? kind.suffix : amount.unit;
    const QString number = plainNumber(amount.value, kind.decimals);
    return unit.isEmpty() ? number : number + ' ' + unit;
}

double stepOf(const Amount& amount, const AmountKind& kind) {
    if (amount.unit == "em" || amount.unit == "rem") return 0.05;
    if (amount.unit == "vw" || amount.unit == "cqi") return 0.25;
    return kind.step;
}

}  // namespace tenter::desktop::controls
