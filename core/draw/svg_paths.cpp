// Path data of boxes and glyphs. SVG 2 § 9.3.
#include "draw/svg_painter.h"
#include "units/number.h"

namespace tenter::draw {

namespace {

/// Appends numbers and commands of path data.
class Path {
public:
    explicit Path(int decimals) : decimals_(decimals) {}
    Path& command(char letter) {
        out_ += letter;
        follows_ = false;
        return *this;
    }
    Path& number(double value) {
        const std::string text = units::number(value, decimals_);
        if (follows_ && text.front() != '-') out_ += ' ';
        out_ += text;
        follows_ = true;
        return *this;
    }
    Path& point(double x, double y) { return number(x).number(y); }
    /// A quarter of a circle to the right.
    Path& arc(double radius, double x, double y) {
        if (radius <= 0) return *this;
        return command('A').point(radius, radius).number(0).number(0).number(1).point(x, y);
    }
    [[nodiscard]] std::string text() && { return std::move(out_); }

private:
    int decimals_;
    std::string out_;
    bool follows_ = false;
};

}  // namespace

std::string boxPath(double x, double y, double width, double height, const Corners& corners) {
    const Corners fit = corners.fitted(width, height);
    const double right = x + width;
    const double bottom = y + height;
    Path path(2);
    path.command('M').point(x + fit.topLeft, y).command('H').number(right - fit.topRight);
    path.arc(fit.topRight, right, y + fit.topRight).command('V').number(bottom - fit.bottomRight);
    path.arc(fit.bottomRight, right - fit.bottomRight, bottom).command('H').number(x + fit.bottomLeft);
    path.arc(fit.bottomLeft, x, bottom - fit.bottomLeft).command('V').number(y + fit.topLeft);
    path.arc(fit.topLeft, x + fit.topLeft, y).command('Z');
    return std::move(path).text();
}

std::string glyphPath(const GlyphOutline& outline, double size, double x, double y, double skew,
                      int decimals) {
    Path path(decimals);
    const OutlinePoint* next = outline.points.data();
    const auto points = [&](char letter, int count) {
        path.command(letter);
        for (int i = 0; i < count; ++i, ++next)
            path.point(x + (next->x + skew * next->y) * size, y - next->y * size);
    };
    for (const GlyphOutline::Verb verb : outline.verbs) {
        switch (verb) {
            case GlyphOutline::Verb::Move:
                points('M', 1);
                break;
            case GlyphOutline::Verb::Line:
                points('L', 1);
                break;
            case GlyphOutline::Verb::Quadratic:
                points('Q', 2);
                break;
            case GlyphOutline::Verb::Cubic:
                points('C', 3);
                break;
            case GlyphOutline::Verb::Close:
                path.command('Z');
                break;
        }
    }
    return std::move(path).text();
}

}  // namespace tenter::draw
