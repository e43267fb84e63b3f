#include "panels/bands_table.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QPainter>
#include <QStyle>
#include <algorithm>
#include <cmath>

#include "controls/glyphs.h"
#include "controls/text_scale.h"
#include "document/wording.h"
#include "panels/row_parts.h"
#include "panels/setting_help.h"

namespace tenter::desktop::panels {

namespace {

constexpr int extentWidth = 40;
// Range of a breakpoint, CSS px.
constexpr double narrowest = 1;
constexpr double widest = 10000;

}  // namespace

/// The width of the word after a number of columns, px.
int unitWidth(const QFontMetrics& metrics) {
    // One px more, because advances are rounded.
    int width = controls::scaled(56);
    for (const int columns : {1, 2, 12})
        width = std::max(
            width, metrics.horizontalAdvance(QObject::tr("column(s)", "after their number", columns)) + 1);
    return width;
}

/// One band: its upper end, its column count, and a button that removes it.
struct BandsTable::Line : QWidget {
    explicit Line(QWidget* parent)
        : QWidget(parent),
          extent(new QLabel(this)),
          upTo(new controls::NumberEditor(controls::numberKind(narrowest, widest, 1, 2, "px"), this)),
          columns(new controls::NumberEditor(controls::numberKind(1, 12, 1, 0), this)),
          unit(new QLabel(this)),
          remove(new QToolButton(this)) {
        auto* box = new QHBoxLayout(this);
        box->setContentsMargins(12, 0, 0, 0);
        box->setSpacing(4);
        extent->setMinimumWidth(controls::scaled(extentWidth));
        unit->setFixedWidth(unitWidth(unit->fontMetrics()));
        columns->setFixedWidth(controls::scaled(48));
        for (QLabel* label : {extent, unit})
            label->setForegroundRole(QPalette::PlaceholderText);
        upTo->field().setAlwaysFilled(true);
        remove->setAutoRaise(true);
        remove->setFixedSize(buttonSide, buttonSide);
        remove->setIconSize({14, 14});
        remove->setIcon(controls::glyph(controls::Glyph::Remove));
        box->addWidget(extent);
        box->addWidget(upTo, 1);
        box->addWidget(columns);
        box->addWidget(unit);
        box->addWidget(remove);
    }
    void paintEvent(QPaintEvent*) override {
        if (!current) return;
        QPainter painter(this);
        painter.fillRect(QStyle::visualRect(layoutDirection(), rect(), QRect(0, 4, 3, height() - 8)),
                         palette().color(QPalette::Highlight));
    }
    QLabel* extent;
    controls::NumberEditor* upTo;
    controls::NumberEditor* columns;
    QLabel* unit;
    QToolButton* remove;
    bool current = false;
};

BandsTable::BandsTable(Context& context, QWidget* parent)
    : QWidget(parent),
      context_(context),
      lines_(new QVBoxLayout),
      add_(new QPushButton(QObject::tr("Add breakpoint"), this)) {
    auto* box = new QVBoxLayout(this);
    box->setContentsMargins(0, 0, 0, 0);
    box->setSpacing(8);
    lines_->setSpacing(4);
    box->addLayout(lines_);
    auto* foot = new QHBoxLayout;
    foot->setContentsMargins(12, 0, 24, 0);
    foot->addWidget(add_, 1);
    box->addLayout(foot);
    setWhatsThis(whatsThisText(QObject::tr("Breakpoints"), propertyHelp(QObject::tr("Breakpoints")), {}));
    add_->setIcon(controls::glyph(controls::Glyph::Add));
    connect(add_, &QPushButton::clicked, this, &BandsTable::addBreakpoint);
}

void BandsTable::build(std::size_t count) {
    while (built_.size() > count) {
        built_.back()->deleteLater();
        built_.pop_back();
    }
    while (built_.size() < count) {
        auto* line = new Line(this);
        const std::size_t band = built_.size();
        lines_->addWidget(line);
        connect(line->columns, &controls::Editor::edited, this,
                [this, line, band] { setColumns(band, line->columns->value().get<int>()); });
        connect(line->columns, &controls::Editor::cleared, this, [this, band] { setColumns(band, 0); });
        connect(line->upTo, &controls::Editor::edited, this,
                [this, line, band] { moveBreakpoint(band, line->upTo->value().get<double>()); });
        for (controls::NumberEditor* editor : {line->columns, line->upTo}) {
            connect(editor, &controls::Editor::finished, this,
                    [this] { context_.session.document.endGesture(); });
            connect(editor, &controls::Editor::reverted, this, [this, line, band, editor] {
                if (editor == line->columns)
                    setColumns(band, line->columns->value().get<int>());
                else
                    moveBreakpoint(band, line->upTo->value().get<double>());
                context_.session.document.endGesture();
            });
            connect(editor, &controls::Editor::rejected, this, [this, line, editor](const QString& why) {
                context_.showError(
                    editor == line->columns ? QObject::tr("Columns") : QObject::tr("Breakpoint"), why);
            });
        }
        connect(line->remove, &QToolButton::clicked, this, [this, band] { removeBand(band); });
        built_.push_back(line);
    }
}

void BandsTable::refresh() {
    const Session& session = context_.session;
    const project::Variant& variant = session.shown.project().row().variants[session.view.variant()];
    const auto& bands = variant.bands;
    build(bands.size());
    for (std::size_t i = 0; i < bands.size(); ++i) {
        Line& line = *built_[i];
        const bool last = !bands[i].upTo;
        const double below = i == 0 ? narrowest : bands[i - 1].upTo.value_or(narrowest);
        line.upTo->setVisible(!last);
        line.extent->setMaximumWidth(
            last ? QWIDGETSIZE_MAX
                 : std::max(controls::scaled(extentWidth),
                            line.extent->fontMetrics().horizontalAdvance(QObject::tr("up to")) + 1));
        line.extent->setSizePolicy(last ? QSizePolicy::Expanding : QSizePolicy::Preferred,
                                   QSizePolicy::Preferred);
        line.extent->setText(last ? bandWidths(variant, i) : QObject::tr("up to"));
        if (!last) {
            const double above = i + 1 < bands.size() ? bands[i + 1].upTo.value_or(widest) : widest;
            line.upTo->field().setLimits(i == 0 ? narrowest : below + 1, above - 1);
            line.upTo->setValue(*bands[i].upTo);
        }
        line.upTo->setName(QObject::tr("Breakpoint %1").arg(i + 1));
        const int columns = session.layouts.row().settings(i).row.columns.value_or(1);
        line.columns->setValue(columns);
        line.columns->setMarked(bands[i].set.row.columns.has_value());
        line.columns->setName(QObject::tr("Columns, %1", "widths of a band").arg(bandWidths(variant, i)));
        line.unit->setText(QObject::tr("column(s)", "after their number", columns));
        line.remove->setVisible(bands.size() > 1);
        line.remove->setAccessibleName(
            QObject::tr("Remove band, %1", "widths of a band").arg(bandWidths(variant, i)));
        line.remove->setToolTip(
            last ? QObject::tr("Remove this band. The next narrower band then covers its widths.")
                 : QObject::tr("Remove this band. The next wider band then covers its widths."));
    }
    refreshWidth();
}

void BandsTable::refreshWidth() {
    const Session& session = context_.session;
    add_->setText(QObject::tr("Add breakpoint at %1").arg(pixels(std::round(session.view.width()))));
    const std::size_t band = session.layouts.band();
    for (std::size_t i = 0; i < built_.size(); ++i) {
        built_[i]->current = i == band && built_.size() > 1;
        built_[i]->update();
    }
}

void BandsTable::setColumns(std::size_t band, int columns) {
    const std::size_t variant = context_.session.view.variant();
    context_.edit(
        QObject::tr("Change columns"),
        [&](project::Project& project) {
            auto& set = project.row().variants[variant].bands[band].set.row.columns;
            if (columns > 0)
                set = columns;
            else
                set.reset();
        },
        QString("columns/%1").arg(band));
}

void BandsTable::moveBreakpoint(std::size_t band, double width) {
    const std::size_t variant = context_.session.view.variant();
    context_.edit(
        QObject::tr("Move breakpoint"),
        [&](project::Project& project) {
            auto& bands = project.row().variants[variant].bands;
            if (bands[band].upTo) bands[band].upTo = width;
        },
        QString("breakpoint/%1").arg(band));
}

void BandsTable::addBreakpoint() {
    const std::size_t variant = context_.session.view.variant();
    const double width = std::round(context_.session.view.width());
    const auto& bands = context_.session.document.project().row().variants[variant].bands;
    if (std::any_of(bands.begin(), bands.end(), [&](const project::Band& b) { return b.upTo == width; })) {
        context_.showMessage(QObject::tr("There is already a breakpoint at %1.").arg(pixels(width)));
        return;
    }
    context_.edit(QObject::tr("Add breakpoint"), [&](project::Project& project) {
        project::Variant& edited = project.row().variants[variant];
        const std::size_t band = project::bandAt(edited, width);
        project::Band below = edited.bands[band];
        below.upTo = width;
        edited.bands.insert(edited.bands.begin() + static_cast<std::ptrdiff_t>(band), below);
    });
}

void BandsTable::removeBand(std::size_t band) {
    const std::size_t variant = context_.session.view.variant();
    context_.edit(QObject::tr("Remove band"), [&](project::Project& project) {
        auto& bands = project.row().variants[variant].bands;
        if (bands.size() < 2) return;
        bands.erase(bands.begin() + static_cast<std::ptrdiff_t>(band));
        bands.back().upTo.reset();
    });
}

}  // namespace tenter::desktop::panels
