#include "compare/wording.h"

#include <cmath>

#include "document/engines.h"
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
    const QString in = " in " + comparison.browserTitle() + ", ";
    const auto whole = [](double number) { return static_cast<std::size_t>(std::max(0.0, number)); };
    switch (difference.what) {
        case What::Lines:
            return place + linesTitle(whole(difference.read)) + in + figure(difference.computed, 0) +
                   " computed, slack " + figure(difference.slack * 100, 2) + " %";
        case What::Cards:
            return place + count(whole(difference.read), "card", "cards") + in +
                   figure(difference.computed, 0) + " computed";
        case What::FontSize:
            return place + "size " + pixels(difference.read, 3) + in + pixels(difference.computed, 3) +
                   " computed";
        case What::Unread:
            return place + "not on " + comparison.browserTitle() + "’s page";
        case What::Unexpected:
            return place + "only on " + comparison.browserTitle() + "’s page";
        default:
            return place + sideTitle(difference.what) + ' ' + pixels(difference.read, 2) + in +
                   pixels(difference.computed, 2) + " computed";
    }
}

QString headline(const Comparison& comparison) {
    const judge::Summary& summary = comparison.summary();
    const QString browser = comparison.browserTitle();
    if (browser.isEmpty()) return {};
    if (summary.widths == 0)
        return comparison.isRunning() ? browser + " is starting …" : browser + ": nothing was compared";
    const bool whole = summary.widths == comparison.total();
    const QString widths = count(summary.widths, "width", "widths");
    const QString sofar = whole ? QString() : QStringLiteral(" so far");
    if (summary.differingWidths == 0)
        return browser + " agrees at " + (whole && summary.widths > 1 ? "all " : "") + widths + sofar;
    return browser + " differs at " + figure(static_cast<double>(summary.differingWidths), 0) + " of " +
           widths + sofar;
}

QString verdictTitle(const Comparison& comparison, const judge::Verdict& verdict, std::size_t most) {
    QStringList lines;
    if (verdict.agrees())
        lines << pixels(verdict.width) + ": " + comparison.browserTitle() + " agrees";
    else
        lines << pixels(verdict.width) + ": " + comparison.browserTitle() + " differs";
    for (const judge::DifferingRun& run : judge::differingRuns({{verdict.width, verdict}})) {
        if (static_cast<std::size_t>(lines.size()) > most) {
            lines << QStringLiteral("and more");
            break;
        }
        lines << differenceTitle(comparison, run.worst);
    }
    lines << "boxes within " + pixels(verdict.largestBox, 2);
    if (verdict.tightFits > 0)
        lines << count(verdict.tightFits, "tight fit", "tight fits") + " that may go either way";
    if (verdict.apart > 0)
        lines << count(verdict.apart, "part", "parts") +
                     " not compared: the browser has a dictionary or font of its own";
    if (!comparison.isFresh()) lines << QStringLiteral("of the row as it was then");
    return lines.join('\n');
}

}  // namespace tenter::desktop::compare
