#include "sheet/plot_layout.h"

#include <algorithm>
#include <cmath>

#include "units/quantities.h"
#include "wording/say.h"

namespace tenter::sheet {

namespace {

struct Scale {
    double least = 0, most = 1;  // values
    double from = 0, to = 1;     // places
    [[nodiscard]] double at(double value) const {
        return from + (value - least) / (most - least) * (to - from);
    }
};

/// The next of 1, 2, 5, 10, … that divides `range` into at most `count` steps.
double stepFor(double range, int count) {
    const double raw = std::max(range, 1e-9) / count;
    const double power = std::pow(10, std::floor(std::log10(raw)));
    for (const double factor : {1.0, 2.0, 5.0})
        if (factor * power >= raw * (1 - 1e-9)) return factor * power;
    return 10 * power;
}

/// How series differ: by ink and dashes, so that they differ without colour, too.
struct SeriesLook {
    Ink ink;
    std::vector<double> dashes;
};
SeriesLook lookOf(std::size_t index) {
    static const std::vector<SeriesLook> looks{{Ink::Text, {}},
                                               {Ink::Accent, {}},
                                               {Ink::Text, {5, 2.5}},
                                               {Ink::Accent, {5, 2.5}},
                                               {Ink::Quiet, {1, 2}}};
    return looks[index % looks.size()];
}

/// Moves places apart so that neighbours are at least `distance` apart, inside a range.
void moveApart(std::vector<double>& places, double distance, double from, double to) {
    std::vector<std::size_t> order(places.size());
    for (std::size_t i = 0; i < order.size(); ++i)
        order[i] = i;
    std::ranges::sort(order, {}, [&](std::size_t i) { return places[i]; });
    double next = from;
    for (const std::size_t i : order) {
        places[i] = std::max(places[i], next);
        next = places[i] + distance;
    }
    double last = to;
    std::for_each(order.rbegin(), order.rend(), [&](std::size_t i) {
        places[i] = std::min(places[i], last);
        last = places[i] - distance;
    });
}

class Layouter {
public:
    Layouter(const Plot& plot, double width, double height, double textSize) : plot_(plot) {
        out_.width = width;
        out_.height = height;
        out_.textSize = textSize;
        std::size_t longest = 0;
        for (const Series& series : plot.series)
            longest = std::max(longest, series.name.size());
        const double names = textSize * (0.58 * static_cast<double>(longest) + 0.8);
        x_ = {plot.least, plot.most, textSize * 2.4, width - names};
        double most = 0;
        double least = 1e9;
        for (const Series& series : plot.series)
            for (const sweep::Vertex& vertex : series.curve) {
                most = std::max(most, vertex.value);
                least = std::min(least, vertex.value);
            }
        for (const Limit& limit : plot.limits)
            most = std::max(most, limit.value);
        const double step = stepFor(most - std::min(least, most * 0.5), 5);
        y_ = {std::floor(least / step) * step, std::ceil(most / step) * step, height - textSize * 2.9,
              textSize * 3.2};
        if (y_.most <= y_.least) y_.most = y_.least + step;
        step_ = step;
    }

    PlotLayout layOut() && {
        axes();
        marks();
        series();
        return std::move(out_);
    }

private:
    void line(std::vector<PlotPoint> points, Ink ink, double width, std::vector<double> dashes = {}) {
        out_.lines.push_back({std::move(points), ink, width, std::move(dashes)});
    }
    void label(double x, double y, Anchor anchor, std::string text, Ink ink = Ink::Quiet) {
        out_.labels.push_back({{x, y}, anchor, std::move(text), ink});
    }

    void axes() {
        const double small = out_.textSize;
        const int steps = static_cast<int>(std::lround((y_.most - y_.least) / step_));
        for (int i = 0; i <= steps; ++i) {
            const double value = y_.least + i * step_;
            const double y = y_.at(value);
            line({{x_.from, y}, {x_.to, y}}, i == 0 ? Ink::Line : Ink::Faint, 0.5);
            label(x_.from - small * 0.5, y + small * 0.35, Anchor::End, units::figure(value));
        }
        label(0, small, Anchor::Start, plot_.unit);
        // Round numbers stay away from the ends, which have labels of their own.
        const double step = stepFor(plot_.most - plot_.least, out_.width > 320 ? 6 : 4);
        const double bottom = y_.from;
        const auto tick = [&](double width) {
            line({{x_.at(width), bottom}, {x_.at(width), bottom + small * 0.35}}, Ink::Line, 0.5);
            label(x_.at(width), bottom + small * 1.4, Anchor::Middle, units::figure(width, 0));
        };
        tick(plot_.least);
        tick(plot_.most);
        const int last = static_cast<int>(std::ceil(plot_.most / step));
        for (int i = static_cast<int>(std::floor(plot_.least / step)); i <= last; ++i) {
            const double width = i * step;
            const double clear = small * 2.4;
            if (x_.at(width) - x_.from > clear && x_.to - x_.at(width) > clear) tick(width);
        }
        label((x_.from + x_.to) / 2, bottom + small * 2.7, Anchor::Middle,
              wording::say("viewport width, px"));
    }

    void marks() {
        for (const double at : plot_.breakpoints) {
            line({{x_.at(at), y_.from}, {x_.at(at), y_.to - out_.textSize * 0.5}}, Ink::Line, 0.5, {2, 2});
            label(x_.at(at), y_.to - out_.textSize * 0.8, Anchor::Middle, units::figure(at));
        }
        for (const Limit& limit : plot_.limits) {
            const double y = y_.at(limit.value);
            line({{x_.from, y}, {x_.to, y}}, Ink::Quiet, 0.5, {1, 1.5});
            const double below = y + out_.textSize * 1.05;
            const bool isAtStart =
                crossings(limit.label, Anchor::Start, below) < crossings(limit.label, Anchor::End, below);
            if (isAtStart)
                label(x_.from + out_.textSize * 0.4, below, Anchor::Start, limit.label);
            else
                label(x_.to, below, Anchor::End, limit.label);
        }
    }

    /// How much of a label at an end of the plot the series cross, as a number of places.
    [[nodiscard]] int crossings(const std::string& text, Anchor end, double baseline) const {
        constexpr int places = 24;
        const double width = out_.textSize * 0.5 * static_cast<double>(text.size());
        const double from = end == Anchor::Start
                                ? plot_.least
                                : plot_.most - width * (plot_.most - plot_.least) / (x_.to - x_.from);
        const double step = width * (plot_.most - plot_.least) / (x_.to - x_.from) / places;
        int count = 0;
        for (int i = 0; i <= places; ++i)
            for (const Series& series : plot_.series) {
                const double y = y_.at(sweep::valueAt(series.curve, std::min(from + i * step, plot_.most)));
                count += y > baseline - out_.textSize * 1.1 && y < baseline + out_.textSize * 0.4 ? 1 : 0;
            }
        return count;
    }

    void series() {
        std::vector<double> ends;
        for (std::size_t i = 0; i < plot_.series.size(); ++i) {
            const SeriesLook look = lookOf(i);
            std::vector<PlotPoint> points;
            const auto finish = [&] {
                if (points.size() > 1) line(points, look.ink, 1.4, look.dashes);
                points.clear();
            };
            double before = -1;
            for (const sweep::Vertex& vertex : plot_.series[i].curve) {
                // A jump at a breakpoint is a gap.
                if (vertex.width == before) finish();
                points.push_back({x_.at(vertex.width), y_.at(vertex.value)});
                before = vertex.width;
            }
            finish();
            ends.push_back(y_.at(sweep::valueAt(plot_.series[i].curve, plot_.most)) + out_.textSize * 0.35);
        }
        moveApart(ends, out_.textSize * 1.2, y_.to, y_.from);
        for (std::size_t i = 0; i < ends.size(); ++i)
            label(x_.to + out_.textSize * 0.6, ends[i], Anchor::Start, plot_.series[i].name, lookOf(i).ink);
    }

    const Plot& plot_;
    PlotLayout out_;
    Scale x_, y_;
    double step_ = 1;
};

}  // namespace

PlotLayout layOutPlot(const Plot& plot, double width, double height, double textSize) {
    return Layouter(plot, width, height, textSize).layOut();
}

}  // namespace tenter::sheet
