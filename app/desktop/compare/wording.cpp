#include "compare/wording.h"

#include <cmath>

#include "document/wording.h"

namespace tenter::desktop::compare {

namespace {

using What = judge::Difference::What;

QString cardsTitle(std::size_t cards) {
    return QObject::tr("%n card(s)", nullptr, static_cast<int>(cards));
}

QString sideTitle(What what) {
    switch (what) {
        case What::X:
            return QObject::tr("left edge");
        case What::Y:
            return QObject::tr("top edge");
        case What::Width:
            return QObject::tr("width", "of a box");
        default:
            return QObject::tr("height", "of a box");
    }
}

QString placeTitle(const Comparison& comparison, const judge::Difference& difference) {
    if (!difference.card) return QObject::tr("row", "place of a difference");
    if (!difference.part) return QObject::tr("card %1").arg(*difference.card + 1);
    return partTitle(comparison.project(), *difference.card, *difference.part);
}

}  // namespace

QString differenceTitle(const Comparison& comparison, const judge::Difference& difference) {
    const QString place = placeTitle(comparison, difference);
    const QString browser = comparison.browserTitle();
    const auto whole = [](double number) { return static_cast<std::size_t>(std::max(0.0, number)); };
    const auto both = [&](const QString& measured, const QString& computed) {
        return QObject::tr("%1 in %2, %3 in Tenter", "measured, browser, computed")
            .arg(measured, browser, computed);
    };
    switch (difference.what) {
        case What::Lines:
            return QObject::tr("%1: %2 (slack %3)", "place, line counts")
                .arg(place,
                     both(linesTitle(whole(difference.measured)), linesTitle(whole(difference.computed))),
                     percent(difference.slack, 2));
        case What::Cards:
            return place + ": " +
                   both(cardsTitle(whole(difference.measured)), cardsTitle(whole(difference.computed)));
        case What::FontSize:
            return QObject::tr("%1: font size %2", "place, sizes")
                .arg(place, both(pixels(difference.measured), pixels(difference.computed)));
        case What::Missing:
            return QObject::tr("%1: missing in %2", "place, browser").arg(place, browser);
        case What::Unexpected:
            return QObject::tr("%1: only in %2, not in Tenter", "place, browser").arg(place, browser);
        default:
            return place + ": " + sideTitle(difference.what) + ' ' +
                   both(pixels(difference.measured), pixels(difference.computed));
    }
}

QString headline(const Comparison& comparison) {
    const judge::Summary& summary = comparison.summary();
    const QString browser = comparison.browserTitle();
    if (browser.isEmpty()) return {};
    if (summary.widths == 0)
        return (comparison.isRunning() ? QObject::tr("%1 is starting…")
                                       : QObject::tr("No width was compared with %1"))
            .arg(browser);
    const bool whole = summary.widths == comparison.total();
    const auto widths = static_cast<int>(summary.widths);
    if (summary.differingWidths == 0 && whole && widths > 1)
        return QObject::tr("%1 agrees with Tenter at all %n width(s)", nullptr, widths).arg(browser);
    if (summary.differingWidths == 0)
        return (whole ? QObject::tr("%1 agrees with Tenter at %n width(s)", nullptr, widths)
                      : QObject::tr("%1 agrees with Tenter at %n width(s) so far", nullptr, widths))
            .arg(browser);
    return (whole ? QObject::tr("%1 differs from Tenter at %2 of %n width(s)", nullptr, widths)
                  : QObject::tr("%1 differs from Tenter at %2 of %n width(s) so far", nullptr, widths))
        .arg(browser, figure(static_cast<double>(summary.differingWidths), 0));
}

QString agreementTitle(const Comparison& comparison) {
    const judge::Summary& summary = comparison.summary();
    if (summary.parts == 0) return {};
    const double share = 1 - static_cast<double>(summary.differingParts) / static_cast<double>(summary.parts);
    return QObject::tr("%1 of the parts agree").arg(percent(std::floor(share * 1e4) / 1e4, 2));
}

QString verdictTitle(const Comparison& comparison, const judge::Verdict& verdict, std::size_t most) {
    QStringList lines;
    lines << (verdict.agrees() ? QObject::tr("%1: %2 agrees with Tenter", "width, browser")
                               : QObject::tr("%1: %2 differs from Tenter", "width, browser"))
                 .arg(pixels(verdict.width), comparison.browserTitle());
    for (const judge::DifferingRun& run : judge::differingRuns({{verdict.width, verdict}})) {
        if (static_cast<std::size_t>(lines.size()) > most) {
            lines << QObject::tr("and further differences");
            break;
        }
        lines << differenceTitle(comparison, run.worst);
    }
    lines << QObject::tr("Largest box difference: %1").arg(smallPixels(verdict.largestBox));
    if (verdict.tightFits > 0)
        lines << QObject::tr("%n tight fit(s) with another line count (not counted as a difference)", nullptr,
                             static_cast<int>(verdict.tightFits));
    if (verdict.excluded > 0)
        lines << QObject::tr("%n part(s) not compared: %1 uses its own dictionary or font", nullptr,
                             static_cast<int>(verdict.excluded))
                     .arg(comparison.browserTitle());
    if (!comparison.isFresh()) lines << QObject::tr("The row has changed since this comparison.");
    return lines.join('\n');
}

QString smallPixels(double value) {
    return value > 0 && value < 0.01 ? QObject::tr("under %1").arg(pixels(0.01)) : pixels(value);
}

}  // namespace tenter::desktop::compare
