#include "compare/wording.h"

#include <cmath>

#include "document/wording.h"

namespace tenter::desktop::compare {

namespace {

using What = judge::Difference::What;

QString count(std::size_t number, const QString& one, const QString& several) {
    return figure(static_cast<double>(number), 0) + ' ' + (number == 1 ? one : several);
}

QString sideTitle(What what) {
    switch (what) {
        case What::X:
            return QStringLiteral("left edge");
        case What::Y:
            return QStringLiteral("top edge");
        case What::Width:
            return QStringLiteral("width");
        default:
            return QStringLiteral("height");
    }
}

QString placeTitle(const Comparison& comparison, const judge::Difference& difference) {
    if (!difference.card) return QStringLiteral("row");
    if (!difference.part) return "card " + QString::number(*difference.card + 1);
    return partTitle(comparison.project(), *difference.card, *difference.part);
}

}  // namespace

QString differenceTitle(const Comparison& comparison, const judge::Difference& difference) {
    const QString place = placeTitle(comparison, difference) + ": ";
    const QString browser = comparison.browserTitle();
    const auto whole = [](double number) { return static_cast<std::size_t>(std::max(0.0, number)); };
    const auto both = [&](const QString& measured, const QString& computed) {
        return measured + " in " + browser + ", " + computed + " in Tenter";
    };
    switch (difference.what) {
        case What::Lines:
            return place +
                   both(linesTitle(whole(difference.measured)), linesTitle(whole(difference.computed))) +
                   " (slack " + percent(difference.slack, 2) + ')';
        case What::Cards:
            return place + both(count(whole(difference.measured), "card", "cards"),
                                count(whole(difference.computed), "card", "cards"));
        case What::FontSize:
            return place + "font size " + both(pixels(difference.measured), pixels(difference.computed));
        case What::Missing:
            return place + "missing in " + browser;
        case What::Unexpected:
            return place + "only in " + browser + ", not in Tenter";
        default:
            return place + sideTitle(difference.what) + ' ' +
                   both(pixels(difference.measured), pixels(difference.computed));
    }
}

QString headline(const Comparison& comparison) {
    const judge::Summary& summary = comparison.summary();
    const QString browser = comparison.browserTitle();
    if (browser.isEmpty()) return {};
    if (summary.widths == 0)
        return comparison.isRunning() ? browser + " is starting…" : "No width was compared with " + browser;
    const bool whole = summary.widths == comparison.total();
    const QString widths = count(summary.widths, "width", "widths");
    const QString sofar = whole ? QString() : QStringLiteral(" so far");
    if (summary.differingWidths == 0)
        return browser + " agrees with Tenter at " + (whole && summary.widths > 1 ? "all " : "") + widths +
               sofar;
    return browser + " differs from Tenter at " + figure(static_cast<double>(summary.differingWidths), 0) +
           " of " + widths + sofar;
}

QString agreementTitle(const Comparison& comparison) {
    const judge::Summary& summary = comparison.summary();
    if (summary.parts == 0) return {};
    const double share = 1 - static_cast<double>(summary.differingParts) / static_cast<double>(summary.parts);
    return percent(std::floor(share * 1e4) / 1e4, 2) + " of the parts agree";
}

QString verdictTitle(const Comparison& comparison, const judge::Verdict& verdict, std::size_t most) {
    QStringList lines;
    if (verdict.agrees())
        lines << pixels(verdict.width) + ": " + comparison.browserTitle() + " agrees with Tenter";
    else
        lines << pixels(verdict.width) + ": " + comparison.browserTitle() + " differs from Tenter";
    for (const judge::DifferingRun& run : judge::differingRuns({{verdict.width, verdict}})) {
        if (static_cast<std::size_t>(lines.size()) > most) {
            lines << QStringLiteral("and further differences");
            break;
        }
        lines << differenceTitle(comparison, run.worst);
    }
    lines << "Largest box difference: " + smallPixels(verdict.largestBox);
    if (verdict.tightFits > 0)
        lines << count(verdict.tightFits, "tight fit", "tight fits") +
                     " with another line count (not counted as a difference)";
    if (verdict.excluded > 0)
        lines << count(verdict.excluded, "part", "parts") + " not compared: " + comparison.browserTitle() +
                     " uses its own dictionary or font";
    if (!comparison.isFresh()) lines << QStringLiteral("The row has changed since this comparison.");
    return lines.join('\n');
}

QString smallPixels(double value) {
    return value > 0 && value < 0.01 ? "under " + pixels(0.01) : pixels(value);
}

}  // namespace tenter::desktop::compare
